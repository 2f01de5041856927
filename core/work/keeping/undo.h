// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Takes a deed of the list back, all of it, by entries that say the inverse: what stood before stands again, what was added is
/// removed, what was removed is there again. Refused where something newer stands in one of the places: that is undone first.
void undo(SeasonKeeping& keeping, std::size_t index, const WhenTold& told);

/// Whether it could be undone now.
[[nodiscard]] bool canUndo(const SeasonKeeping& keeping, std::size_t index);

}
