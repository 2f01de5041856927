// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/measure/uncertain.h"

namespace steelyard {

/// Strength by body mass, plainly: F/M.
inline constexpr double plainExponent = 1;
/// Strength by body mass where both are of one shape: force goes with the cross-section, mass with the volume, F/M^(2/3) (geometric
/// similarity; Jaric 2002, from memory). Measured on lean men 0.66 for force (Folland, Mc Cauley & Williams 2008).
inline constexpr double shapeExponent = 0.67;

/// Strength scaled to body mass: a number of newtons, or of kilograms, by kg to the exponent.
struct ScaledStrength {
    double ratio = 0;
    double uRatio = 0;
    double exponent = plainExponent;
};

/// `F/M^b`, F in newtons or kilograms, M in kilograms: context for one athlete over time, no norm. u by relative squares,
/// `√((u(F)/F)² + (b·u(M)/M)²)`. Refuses a strength below 0, a body not above 0, and exponents below 0 or above 2.
[[nodiscard]] Result<ScaledStrength> scaledStrength(const Uncertain<Force>& strength, const Uncertain<Mass>& body, double exponent);
[[nodiscard]] Result<ScaledStrength> scaledStrength(const Uncertain<Mass>& strength, const Uncertain<Mass>& body, double exponent);

}
