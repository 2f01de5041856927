// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/mobile/standinhouse.h"
#include "tests/tour/itinerary.h"
#include "tests/tour/seasonfile.h"

/** What lies on the desk and in the book before a hand does anything. */
class Ground {
public:
    explicit Ground(StandInHouse& house);

    /// The faults of the sample season's files.
    [[nodiscard]] QStringList faults() const;
    /// Whether two stops begin alike.
    [[nodiscard]] static bool alike(const Stop& a, const Stop& b);
    /// Whether it still lies as it was laid out for a stop that begins like this.
    [[nodiscard]] bool liesFor(const Stop& stop) const;
    /// What stood in the way; empty when all lies there.
    [[nodiscard]] QStringList layOutFor(const Stop& stop);

private:
    [[nodiscard]] int changes() const;

    StandInHouse& m_house;
    std::vector<SeasonSetup> m_season;
    std::optional<Stop> m_laidOutFor;
    int m_deskChangeCount = 0, m_changesBefore = 0;
    steelyard::Subscription m_desk, m_drafts;
};
