// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/venues/freenow.h"

#include <algorithm>

namespace steelyard {

Pieces piecesOf(const KitItem& item, const SetupRecord& setup)
{
    Pieces pieces{item.pair ? 2 : 1, 0};
    for (const HungRecord& hung : setup.hung)
        if (hung.item == item.id)
            // an aid is worn in the middle and is one thing, whatever its sides say
            pieces.hangingCount += hung.on == HungOn::BothSides && !std::holds_alternative<AidPlacing>(hung.placing) ? 2 : 1;
    return pieces;
}

std::optional<HungOn> sidesFree(const KitItem& item, const SetupRecord& setup)
{
    if (!firstPlacing(kindOf(item.measurement)) || !item.isMeasured() || item.isOutOfUse() || item.lent)
        return std::nullopt;
    const int free = piecesOf(item, setup).freeCount();
    if (free == 0)
        return std::nullopt;
    if (free > 1)
        return HungOn::BothSides;
    const bool onTheLeft = std::any_of(setup.hung.begin(), setup.hung.end(), [&item](const HungRecord& hung) {
        return hung.item == item.id && hung.on == HungOn::LeftOnly;
    });
    return onTheLeft ? HungOn::RightOnly : HungOn::LeftOnly;
}

BackState backOn(const OnLoan& loan, std::chrono::sys_days day)
{
    constexpr std::chrono::days soon{7};
    if (!loan.backBy)
        return BackState::NoDay;
    return day > *loan.backBy ? BackState::Past : day + soon >= *loan.backBy ? BackState::Soon : BackState::Later;
}

}
