// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstdint>
#include <span>

namespace steelyard {

enum class SledWay : std::uint8_t {
    Tow,  ///< the strap lifts as it pulls
    Push, ///< the arms press down as they push
};

/// A sled on a surface: its friction while it slides, and the angle to the ground of the strap, or of the push downwards.
struct Haul {
    Estimate<double> friction;
    Estimate<Angle> angle;
    SledWay way = SledWay::Tow;
};

/// Whether pushing harder only presses the sled down harder, `cosα ≤ μ sinα`; with μ at its unfavourable end, so that a push which may
/// lock is said to. Towing never locks.
[[nodiscard]] bool locks(const Haul& haul);

/// Force along strap or arms at a steady pace: `F = μMg/(cosα ± μ sinα)`, + towed, − pushed; M with the sled. To start it takes more
/// (Andre et al. 2013: 0.43 against 0.33), and μ falls somewhat with load. u from mass, friction and angle. Source: Coulomb friction.
/// Refuses a mass not above 0, friction below 0, an angle outside 0 to under 90°, and a push that locks ("push angle").
[[nodiscard]] Result<Estimate<Force>> sledPull(const Estimate<Mass>& total, const Haul& haul);

/// The total mass, sled included, that takes a force: `M = F(cosα ± μ sinα)/(μg)`. Refuses as sledPull does, and no friction.
[[nodiscard]] Result<Estimate<Mass>> sledMassFor(const Estimate<Force>& pull, const Haul& haul);

/// The total that pulls as hard on another surface: a load found on one is carried as its pull, not as its kilograms.
[[nodiscard]] Result<Estimate<Mass>> sameElsewhere(const Estimate<Mass>& total, const Haul& here, const Haul& there);

/// A steady walk with a scale in the strap: total mass with the sled, and the pull.
struct TowReading {
    Estimate<Mass> total;
    Estimate<Force> pull;
};

/// Friction of a surface, and the masses that it was found with: it falls somewhat with load, so it holds near them.
struct SurfaceFriction {
    Estimate<double> friction;
    Mass lightest, heaviest;
    [[nodiscard]] bool covers(Mass total) const { return total >= lightest && total <= heaviest; }
};

/// Friction from one pull, `μ = T cosα/(Mg − T sinα)`. Refuses a mass not above 0, a pull below 0, an angle outside 0 to under 90°, and a
/// pull that would lift the sled.
[[nodiscard]] Result<Estimate<double>> frictionFromPull(const TowReading& reading, const Estimate<Angle>& angle);

/// Friction from pulls at two masses or more: least squares through the origin of T cosα on Mg − T sinα. u is the fit's own (n − 1 degrees of
/// freedom) beside what the readings, the masses and the angle bring; readings of one scale share its error.
/// Refuses as for one pull, fewer than two, and masses that are all the same.
[[nodiscard]] Result<SurfaceFriction> frictionFromPulls(std::span<const TowReading> readings, const Estimate<Angle>& angle);

/// Angle of the strap to the ground: `sinα = (hip − hitch)/strap`, the height of the belt, that of the sled's hook, and the length between.
/// Refuses lengths not above 0, a belt below the hook, and a strap that does not reach.
[[nodiscard]] Result<Estimate<Angle>> towAngle(const Estimate<Length>& strap, const Estimate<Height>& hip, const Estimate<Height>& hitch);

}
