// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"

#include <cstdint>
#include <optional>

namespace steelyard {

/// Where the other foot is in a lift on one leg.
enum class RearFoot : std::uint8_t {
    Free,      ///< in the air, or it carries nothing: all of the body is lifted
    Supported, ///< on a box or the floor behind: what it carries is not known
};

/// What one leg lifts, body and load together, `E + BM`; nothing when the rear foot is supported, since its share is unknown and differs
/// from rep to rep, and nothing without a body mass.
[[nodiscard]] inline std::optional<Estimate<Mass>> systemLoad(const Estimate<Mass>& external, const std::optional<Estimate<Mass>>& body, RearFoot rearFoot)
{
    if (rearFoot == RearFoot::Supported || !body)
        return std::nullopt;
    return sumOf(external, *body);
}

}
