// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Keeps a set-up for an athlete and a lift; without an id a new one is added. The athlete of a kept one stays.
void keepSetup(SeasonKeeping& keeping, SavedSetup setup, const WhenTold& told);

/// The load on the bar when a set-up was last kept for an athlete and a lift: of `opened`, where that is one of them, else of the
/// newest. None where none was kept.
[[nodiscard]] std::optional<Mass> loadLastTime(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, const RecordId& opened);

}
