// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/units.h"

#include <compare>

namespace steelyard {

/// One plate as it can be hung: what it weighs, how tall it stands, how much sleeve it takes.
struct PlateType {
    Mass mass;
    Length diameter;
    Length thickness;
    constexpr auto operator<=>(const PlateType&) const = default;
};

/// What a stack weighs at the hand behind a block and tackle: a 2:1 pulley halves the load and doubles the travel.
/// `ratio` is travel of the hand over travel of the stack; friction is left out, so a real pulley pulls a little more
/// on the way up. A ratio of 0 or less gives the stack's own mass. Source: statics.
[[nodiscard]] constexpr Mass behindPulley(Mass stack, double ratio)
{
    return ratio > 0 ? stack / ratio : stack;
}

}
