// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace steelyard {

/// The value that so much of an F distribution lies below, with both degrees of freedom, which need not be whole. Source: Boost.Math,
/// relative error below 1e-12. Not a number for a probability outside 0–1 or degrees of freedom that are not above 0.
[[nodiscard]] double fQuantile(double probability, double degreesAbove, double degreesBelow);

/// The same of χ².
[[nodiscard]] double chiSquaredQuantile(double probability, double degreesOfFreedom);

/// How much of the standard normal distribution lies below z. Not a number for one that is none.
[[nodiscard]] double normalProbability(double z);

}
