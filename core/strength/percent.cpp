// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/percent.h"

#include <cmath>

namespace steelyard {

namespace {

bool isBase(const Uncertain<Mass>& base) { return base.isSound() && base.value > Mass{}; }

}

Result<Uncertain<Mass>> percentOf(double percent, const Uncertain<Mass>& base)
{
    constexpr double most = 300;
    if (!isBase(base))
        return Error{Refusal::OutOfRange, "base"};
    if (!(percent > 0 && percent <= most))
        return Error{Refusal::OutOfRange, "percent"};
    const double share = percent / 100;
    return Uncertain<Mass>{share * base.value, share * base.u};
}

Result<PercentReached> percentReached(const Uncertain<Mass>& load, const Uncertain<Mass>& base)
{
    if (!isBase(base))
        return Error{Refusal::OutOfRange, "base"};
    if (!load.isSound() || load.value < Mass{})
        return Error{Refusal::OutOfRange, "load"};
    const double ratio = load.value / base.value;
    return PercentReached{100 * ratio, 100 * std::hypot(load.u / base.value, ratio * (base.u / base.value))};
}

}
