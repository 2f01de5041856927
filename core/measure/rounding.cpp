// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

/// A give-or-take below this is noise of arithmetic.
constexpr double leastGive = 1e-12;

double roundToPlace(double value, int place)
{
    // dividing by a whole power of ten keeps 0.29 from becoming 0.28999…
    if (place < 0) {
        const double p = std::pow(10.0, -place), raised = value * p;
        // a number without room for such places has nothing there to round
        return std::isfinite(raised) ? std::round(raised) / p : value;
    }
    const double p = std::pow(10.0, place);
    return std::round(value / p) * p;
}

}

Rounded roundTogether(double value, double give, int plainDecimals)
{
    if (!std::isfinite(give) || give < leastGive || !std::isfinite(value))
        return {std::isfinite(value) ? roundToPlace(value, -plainDecimals) : value, give, plainDecimals};
    int place = static_cast<int>(std::floor(std::log10(give)));
    if (give / std::pow(10.0, place) < 2)
        --place;
    return {roundToPlace(value, place), roundToPlace(give, place), std::max(0, -place)};
}

}
