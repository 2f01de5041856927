// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/anchors.h"

namespace steelyard {

std::optional<WeakAnchor> weakAnchor(const std::string& item, const HungBand& band, std::optional<Mass> heldBy, const LiftPath& path, double holdFactor)
{
    if (!heldBy)
        return std::nullopt;
    Force most;
    // what pulls the bar down pulls the anchor up, and it pulls hardest at an end of the path
    for (const Height h : {path.bottom, path.top}) {
        if (!band.knows(h))
            continue;
        Uncertainty doubt;
        doubt.add(band.effectAt(h));
        Effect twin;
        twin.amount[0] = band.twinUncertaintyAt(h).si();
        doubt.add(twin);
        most = std::max(most, band.verticalPull(h) + newtons(doubt.giveOrTake()));
    }
    if (holdFactor * most <= weight(*heldBy))
        return std::nullopt;
    return WeakAnchor{item, asMass(most), *heldBy, holdFactor};
}

}
