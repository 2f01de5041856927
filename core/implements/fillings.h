// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"

#include <cstdint>

namespace steelyard {

/// Anywhere between two densities, each as likely: the middle, with u = half the width/√3 (JCGM 100:2008, 4.3.7).
[[nodiscard]] Estimate<Density> densityBetween(Density least, Density greatest);

/// What kegs and bags are filled with.
enum class Filling : std::uint8_t { Water, DrySand, WetSand, LeadShot, RubberCrumb };

/// Density of a filling as it lies, in kg/m³: water 994–1000, fresh and from 0 to 35 °C (Tanaka et al. 2001, Metrologia 38:301–309);
/// dry loose sand 1500–1600, wet or packed sand 1900–2000, lead shot 6500–7000, rubber crumb 400–500 (handbook values, from memory).
/// What is in an unknown bag is not known by looking: weigh it.
[[nodiscard]] Estimate<Density> densityOf(Filling filling);

}
