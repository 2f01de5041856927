// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/ground.h"

#include "tests/mobile/club.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/lookback.h"
#include "tests/mobile/people.h"

#include <algorithm>

Ground::Ground(StandInHouse& house)
    : m_house(house), m_season(seasonfile::all()), m_desk(house.desk.desk().onChanged([this] { ++m_deskChangeCount; })),
      m_drafts(house.desk.desk().onDraftsChanged([this] { ++m_deskChangeCount; }))
{
}

QStringList Ground::faults() const
{
    QStringList faults;
    for (const SeasonSetup& setup : m_season)
        faults << setup.faults;
    return faults;
}

bool Ground::alike(const Stop& a, const Stop& b)
{
    return !a.look && !b.look && !a.news && !b.news && a.season == b.season && a.people == b.people && a.lookback == b.lookback && a.sample == b.sample;
}

bool Ground::liesFor(const Stop& stop) const
{
    return m_laidOutFor && alike(*m_laidOutFor, stop) && m_changesBefore == changes() && m_house.desk.desk().wanted() == steelyard::WantedPulls{};
}

QStringList Ground::layOutFor(const Stop& stop)
{
    m_laidOutFor.reset();
    const auto setup = std::find_if(m_season.begin(), m_season.end(), [&](const SeasonSetup& s) { return s.name == stop.season; });
    if (setup == m_season.end())
        return {QStringLiteral("no set-up ") + stop.season};
    layOut(m_house.book, m_house.desk.desk(), setup->marks, setup->kit, setup->setup);
    if (stop.people > 0)
        people::fill(m_house.book, stop.people);
    if (stop.lookback) {
        lookback::sizes(m_house.book);
        lookback::measuredAgain(m_house.book);
        lookback::lift(m_house.book, "Pin squat");
        lookback::saidTwice(m_house.book);
    }
    QStringList troubles;
    if (stop.sample)
        troubles = club::keep(m_house);
    m_laidOutFor = stop;
    m_changesBefore = changes();
    return troubles;
}

int Ground::changes() const
{
    return m_deskChangeCount + m_house.keeper.askedCount + m_house.keeper.savedCount;
}
