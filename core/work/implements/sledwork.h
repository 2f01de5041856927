// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/implements/sled.h"
#include "core/implements/sledline.h"
#include "core/season/kit.h"
#include "core/season/sledrecords.h"

#include <span>
#include <vector>

namespace steelyard {

class SeasonBook;

/// How a sled was last pulled on a surface of a venue; nothing where it never was. Surfaces of one name are the same.
[[nodiscard]] const SledSurface* lastSurface(const SeasonBook& book, const RecordId& venue, const RecordId& sled, const std::string& name);
/// The last of each name at a venue, by name.
[[nodiscard]] std::vector<const SledSurface*> surfacesOf(const SeasonBook& book, const RecordId& venue, const RecordId& sled);

/// Sled and what lies on it, plates by their mark (`markToleranceShare`). Refuses a sled whose mass nobody knows (NotThere), and what is
/// below 0.
[[nodiscard]] Result<Estimate<Mass>> sledTotal(const SledMeasurement& sled, Mass added);

/// Angle of the strap, by its length, the height of its hook and that of her belt, each read by tape; level where nobody said how high the
/// belt is. Refuses a belt without strap or hook (NotThere), and what `towAngle` refuses.
[[nodiscard]] Result<Estimate<Angle>> strapAngle(const SledMeasurement& sled, const std::optional<Entered<Height>>& belt);

/// Friction from the pulls that were read on it; see `frictionFromPulls`. Without a step of the scale a reading counts as exact but for the
/// scale's error. Refuses besides what the mass of the sled and the angle of the strap are refused for.
[[nodiscard]] Result<SurfaceFriction> frictionOf(const SledSurface& surface, const SledMeasurement& sled);

/// A sled on a surface behind or before one athlete: towed at the angle of the strap to her belt, pushed at the angle given.
[[nodiscard]] Result<Haul> haulOn(const SurfaceFriction& surface, const SledMeasurement& sled, const std::optional<Entered<Height>>& belt);
[[nodiscard]] Haul pushOn(const SurfaceFriction& surface, const Estimate<Angle>& down);

/// What it takes to move it at a steady pace.
struct SledPull {
    Estimate<Mass> total;
    Estimate<Force> pull;
    bool isNearReadings = false; ///< its mass lies between those that the friction was found with
};
/// Refuses a push that locks, and what the mass is refused for.
[[nodiscard]] Result<SledPull> sledPullAt(const SledMeasurement& sled, Mass added, const SurfaceFriction& surface, const Haul& haul);

/// Runs that belong to one picture of her: same sled, surface and way, within so many days of the last of them (our choice).
inline constexpr std::chrono::days runsTogether{28};
/// Which of an athlete's runs: of which sled, where, and how.
struct RunsOf {
    RecordId sled, venue;
    std::string surface;
    SledWay way = SledWay::Tow;
};
/// Those that count together on a day, the earliest first.
[[nodiscard]] std::vector<SledRunTimed> runsThatCount(std::span<const SledRunTimed* const> runs, const RunsOf& which, std::chrono::sys_days day);

/// Her own line of speed by load: the lane read once by tape, each time by hand with `stopwatchU`. Refuses fewer than three runs and as
/// `LoadSpeedLine::of` does.
[[nodiscard]] Result<LoadSpeedLine> speedLineOf(std::span<const SledRunTimed> runs, const SledMeasurement& sled);

/// A load on a sled: all of it, and what lies on it.
struct SledLoad {
    Estimate<Mass> total, added;
    bool isBetweenRuns = false; ///< past the lightest and the heaviest run it is guessed
};
/// For a speed loss as a share of her own free speed. Refuses a share outside 0 to 1, and one that costs less than the empty sled does
/// ("sled").
[[nodiscard]] Result<SledLoad> loadForSpeedLoss(const LoadSpeedLine& line, const SledMeasurement& sled, double speedLossShare);
/// The load that pulls as hard on another surface or by another strap, there with its own sled; what a load is carried by is its pull.
[[nodiscard]] Result<SledLoad> carriedTo(const SledLoad& load, const Haul& here, const Haul& there, const SledMeasurement& sledThere);

}
