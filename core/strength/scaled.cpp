// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/scaled.h"

#include <cmath>

namespace steelyard {

namespace {

template <typename Strength>
Result<ScaledStrength> scaled(const Uncertain<Strength>& strength, const Uncertain<Mass>& body, double exponent)
{
    constexpr double mostExponent = 2;
    if (!strength.isSound() || strength.value < Strength{})
        return Error{Refusal::OutOfRange, "strength"};
    if (!body.isSound() || body.value <= Mass{})
        return Error{Refusal::OutOfRange, "body"};
    if (!(exponent >= 0 && exponent <= mostExponent))
        return Error{Refusal::OutOfRange, "exponent"};
    const double scale = std::pow(body.value.si(), -exponent);
    const double ratio = strength.value.si() * scale;
    return ScaledStrength{ratio, std::hypot(strength.u.si() * scale, ratio * exponent * (body.u / body.value)), exponent};
}

}

Result<ScaledStrength> scaledStrength(const Uncertain<Force>& strength, const Uncertain<Mass>& body, double exponent) { return scaled(strength, body, exponent); }

Result<ScaledStrength> scaledStrength(const Uncertain<Mass>& strength, const Uncertain<Mass>& body, double exponent) { return scaled(strength, body, exponent); }

}
