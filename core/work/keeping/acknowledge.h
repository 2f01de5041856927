// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Keeps that a caution of a kept set-up was looked over, for what hangs in it now. It is a record of that and spares nobody the next
/// look: a caution comes again each time the set-up is opened. It cannot be undone and is none of the deeds; a second look at the same
/// on the same day adds nothing, and its id is that of the first.
void acknowledge(SeasonKeeping& keeping, const RecordId& setup, CautionCode caution, const WhenTold& told);

/// The last day by which each caution that what hangs in it calls for had been looked over, just as it hangs now; nothing where one
/// never was, or where none is called for.
[[nodiscard]] std::optional<std::chrono::sys_days> lastLookedOver(const SeasonBook& book, const SavedSetup& setup);

}
