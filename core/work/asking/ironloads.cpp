// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/asking/ironloads.h"

#include "core/work/measuredkit.h"
#include "core/work/weighup.h"

namespace steelyard {

Result<std::vector<IronLoad>> ironLoads(const BarRecord& bar, const BarMarks& marks)
{
    const auto loads = loadsOf(bar);
    if (!loads)
        return loads.error();
    std::vector<IronLoad> out;
    std::optional<Error> refused;
    for (const PlateLoad& load : loads->all()) {
        const auto path = liftPath(marks, load);
        if (path)
            out.push_back({load, ironUncertainty(bar, load), *path});
        else
            refused = path.error();
    }
    if (out.empty())
        return refused.value_or(Error{Refusal::NotThere, "plates"});
    return out;
}

}
