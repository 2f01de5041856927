// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/ironload.h"
#include "core/season/marks.h"
#include "core/season/setuprecord.h"

#include <vector>

namespace steelyard {

/// Every load that the bar's plates make, lightest first, with its u and the path that it gives; those that give none are left out.
/// Refuses what `liftPath` and the plates refuse where no load is left.
[[nodiscard]] Result<std::vector<IronLoad>> ironLoads(const BarRecord& bar, const BarMarks& marks);

}
