// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/standingview.h"

#include "core/work/keeping/athlete/aboutsomebody.h"
#include "mobile/follow.h"
#include "mobile/gates/standingtexts.h"

#include <algorithm>

using namespace steelyard;

void StandingView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &StandingView::refresh))
        refresh();
}

void StandingView::setAthleteId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString StandingView::name() const
{
    const Athlete* athlete = m_book ? m_book->book().athlete(m_id) : nullptr;
    return athlete ? QString::fromStdString(athlete->name) : QString();
}

void StandingView::refresh()
{
    m_today = m_what = m_cleared = m_waits = QString();
    m_stop = false;
    if (m_book && m_book->book().athlete(m_id)) {
        readStatuses();
        readClearances();
    } else {
        for (auto* list : {&m_inForce, &m_otherDays, &m_clearances})
            list->setRows({});
    }
    Q_EMIT changed();
}

void StandingView::readStatuses()
{
    const auto today = m_book->today();
    std::vector<DayStatus> all;
    std::vector<DatedRow> now, others;
    for (const DayStatus* status : m_book->book().statusesOf(m_id)) {
        all.push_back(*status);
        const QString id = QString::fromStdString(status->id.hex());
        const bool begun = m_book->draft(QStringLiteral("status:%1:%2").arg(athleteId(), id)).has_value();
        DatedRow row{id, standingtexts::status(*status, m_book->book()), begun ? tr("changes not kept") : standingtexts::setBy(*status, today), standingtexts::stateOf(*status, today)};
        (holdsOn(*status, today) ? now : others).insert(holdsOn(*status, today) ? now.begin() : others.begin(), std::move(row));
    }
    const DayStanding standing = standingOn(all, today);
    m_today = standingtexts::today(standing, today);
    m_what = standingtexts::what(standing, m_book->book());
    m_stop = standing.unread || standing.fitness == Fitness::None;
    m_inForce.setRows(std::move(now));
    m_otherDays.setRows(std::move(others));
}

void StandingView::readClearances()
{
    const auto today = m_book->today();
    std::vector<Clearance> all;
    for (const Clearance* clearance : m_book->book().clearancesOf(m_id))
        all.push_back(*clearance);
    std::vector<DatedRow> valid, others;
    for (auto clearance = all.rbegin(); clearance != all.rend(); ++clearance) {
        const ClearanceState state = stateAmong(all, *clearance, today);
        const QString id = QString::fromStdString(clearance->id.hex());
        const bool begun = m_book->draft(QStringLiteral("clearance:%1:%2").arg(athleteId(), id)).has_value();
        (state == ClearanceState::Valid ? valid : others)
            .push_back({id, standingtexts::clearedFor(*clearance, m_book->book()), begun ? tr("changes not kept") : standingtexts::givenBy(*clearance, today),
                        standingtexts::stateOf(*clearance, state, today)});
    }
    m_cleared = valid.empty() ? tr("nothing yet") : tr("%n hold", nullptr, static_cast<int>(valid.size()));
    m_waits = standingtexts::waits(unfitForMore(m_book->keeping(), m_id));
    valid.insert(valid.end(), others.begin(), others.end());
    m_clearances.setRows(std::move(valid));
}
