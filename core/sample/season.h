// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/strictobject.h"
#include "core/season/athlete.h"
#include "core/season/clearance.h"
#include "core/season/sledrecords.h"
#include "core/season/savedsetup.h"
#include "core/season/strengthtest.h"
#include "core/season/venue.h"

#include <chrono>
#include <map>

namespace steelyard::sample {

/// A venue with the bar and the plates that lie there.
struct SampleVenue {
    Venue venue;
    BarRecord bar;
    std::chrono::sys_days day{};
};

/// A thing of the kit with all that was measured on it, the earliest first; its own measurement is the last one.
struct SampleItem {
    KitItem item;
    std::optional<std::chrono::sys_days> loanDay{}; ///< when it was borrowed or lent, after its last measuring
    std::vector<std::pair<std::chrono::sys_days, Measured>> measurings;
    std::vector<SledSurface> surfaces{}; ///< that a sled was pulled on
};

/// Somebody invented, as of the day that they joined on; body sizes and tests have days of their own.
struct SamplePerson {
    Athlete athlete;
    std::vector<StrengthTest> tests;
    std::vector<SledRunTimed> runs;
    std::chrono::sys_days day{};
};

/// A set-up with the cautions that were looked over when it was kept.
struct SampleSetup {
    SavedSetup saved;
    std::vector<CautionCode> lookedOver;
};

/// All that the invented club has kept. Ids hold within it: whoever keeps it gives new ones.
struct Season {
    std::vector<SampleVenue> venues;
    std::vector<SampleItem> kit;
    std::vector<SamplePerson> people;
    std::vector<SampleSetup> setups;
    std::vector<Clearance> clearances;
    std::vector<DayStatus> statuses;

    [[nodiscard]] const SampleVenue* venue(const std::string& name) const;
    [[nodiscard]] const SampleItem* item(const std::string& name) const;
    [[nodiscard]] const SamplePerson* person(const std::string& name) const;
};

/// The texts of a season's files by their names: venues.json, kit.json, squad.json, setups.json, clearances.json, statuses.json. What each says stands in the readme
/// beside them.
using SeasonTexts = std::map<std::string, std::string>;
inline const std::vector<std::string> seasonFileNames{"venues.json", "kit.json", "squad.json", "setups.json", "clearances.json", "statuses.json"};

/// The season with its days counted back from `today`, and the ages that its people reach in that year. Strict: a missing file, an
/// unknown key, a wrong type and a name that nothing has are faults; with any of them the season is not to be used.
[[nodiscard]] Season readSeason(const SeasonTexts& texts, std::chrono::sys_days today, Faults& faults);

}
