// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

namespace steelyard {

/// Diameter of something round from a tape laid round it, girth/π.
[[nodiscard]] Estimate<Length> diameterFromGirth(const Estimate<Length>& girth);

/// A log or another round length that tapers evenly from one end to the other.
struct TaperedRound {
    Estimate<Length> length, firstDiameter, secondDiameter;
};

/// Volume of the frustum, `πL(r₁² + r₁r₂ + r₂²)/3`; the cylinder of the mean diameter would be low by πL(r₁ − r₂)²/12.
/// Refuses sizes not above 0.
[[nodiscard]] Result<Estimate<Volume>> volumeOf(const TaperedRound& round);

/// Volume of a ball, `πD³/6`: 1 % in the diameter is 3 % in it. Refuses a diameter not above 0.
[[nodiscard]] Result<Estimate<Volume>> volumeOfBall(const Estimate<Length>& diameter);

/// Solid wood: its specific gravity and its moisture. The gravity has to be that at the same moisture (dry mass over the volume it
/// has when so moist).
struct Wood {
    Estimate<double> specificGravity, moisturePercent;
};

/// What single pieces of one species differ by in specific gravity, as a share of it: the coefficient of variation that the Wood
/// Handbook (FPL-GTR-190, chapter 5) gives for clear wood. From memory.
inline constexpr double specificGravityVariationShare = 0.10;

/// A gravity taken from a table of species, with what pieces differ by.
[[nodiscard]] Estimate<double> gravityOfSpecies(double gravityRatio);

/// Density of wood, `1000·G·(1 + MC/100)` kg/m³. Source: Wood Handbook, USDA Forest Products Laboratory FPL-GTR-190 (2010), chapter 4.
/// Refuses a gravity not above 0 or above 1.55 (that of the cell wall itself) and a moisture outside 0–300 %.
[[nodiscard]] Result<Estimate<Density>> densityOf(const Wood& wood);

/// A solid log, by its size and wood; weighing it by both ends is better. Refuses as volume and density do.
[[nodiscard]] Result<Estimate<Mass>> logMass(const TaperedRound& log, const Wood& wood);

/// A round stone, `ρπD³/6`. Refuses a diameter or a density not above 0.
[[nodiscard]] Result<Estimate<Mass>> stoneMass(const Estimate<Length>& diameter, const Estimate<Density>& density);

/// Normal concrete, 2300–2400 kg/m³ as a rectangle (EN 1991-1-1, Annex A; from memory).
[[nodiscard]] Estimate<Density> concreteDensity();

}
