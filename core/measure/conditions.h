// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cmath>
#include <initializer_list>
#include <optional>

namespace steelyard {

/// What has to hold of something that came in, and its name.
struct Condition {
    bool holds;
    const char* what;
};

/// The first condition that does not hold, as a refusal of what it names; none when all hold.
[[nodiscard]] inline std::optional<Error> broken(std::initializer_list<Condition> conditions)
{
    for (const Condition& condition : conditions)
        if (!condition.holds)
            return Error{Refusal::OutOfRange, condition.what};
    return std::nullopt;
}

/// A count that somebody can have counted, so that sums of counts stay what they are.
[[nodiscard]] constexpr bool isCount(int count)
{
    constexpr int most = 100'000;
    return count >= 0 && count <= most;
}

/// A number that is one, with an uncertainty that is one.
template <typename Q>
[[nodiscard]] bool isFinite(const Estimate<Q>& estimate)
{
    return std::isfinite(estimate.number()) && std::isfinite(estimate.uncertainty.standard());
}

/// The same, and above 0.
template <typename Q>
[[nodiscard]] bool isPositive(const Estimate<Q>& estimate)
{
    return isFinite(estimate) && estimate.number() > 0;
}
/// The same, and 0 or above.
template <typename Q>
[[nodiscard]] bool isNotNegative(const Estimate<Q>& estimate)
{
    return isFinite(estimate) && estimate.number() >= 0;
}

}
