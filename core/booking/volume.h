// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/implements/limbs.h"
#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstdint>
#include <optional>
#include <span>

namespace steelyard {

/// The load of a rep over the athlete's own path: its exact mean, and what it is at the bottom and at the top where that is known.
/// Iron alone is the same at all three. Below 0 it helps (a band under the feet), and counts so only where the body is the load.
struct PathLoad {
    Estimate<Mass> mean;
    std::optional<Estimate<Mass>> bottom, top;

    /// The same at every height.
    [[nodiscard]] static PathLoad constant(const Estimate<Mass>& load) { return {load, load, load}; }
};

/// How the body belongs to the load.
enum class BodyInLoad : std::uint8_t {
    No,           ///< the bar is the load
    Whole,        ///< chins, dips, one-leg squats with the rear foot free
    ShareUnknown, ///< part of it is lifted, and nobody knows which: rear foot supported, push-ups
};

/// Reps that came down heavier than they went up.
struct Lowering {
    int reps = 0; ///< those that really were: a release that was missed is none
    PathLoad load;
};

/// One set as it was done.
struct LiftedSet {
    int reps = 0; ///< that went up; each came down with the same load but those in `lowering`
    PathLoad load;
    std::optional<Lowering> lowering; ///< may have more reps than went up: eccentric only
    Limbs legs = Limbs::Both;         ///< left and right are booked apart; both stands for lifts that have no side
    BodyInLoad bodyInLoad = BodyInLoad::No;
    std::optional<Estimate<Mass>> body;
};

/// Reps × load, in kg.
struct Tonnage {
    int reps = 0;
    Estimate<Mass> mean;                                                     ///< by the exact mean of each set: the volume load
    std::optional<Estimate<Mass>> bottom = Estimate<Mass>{}, top = Estimate<Mass>{}; ///< by the ends; unknown when one set's are
};

/// What went up and what came down, never added together; without the body, and with it where it is the load.
struct PhaseVolume {
    Tonnage up, down;
    std::optional<Tonnage> upWithBody = Tonnage{}, downWithBody = Tonnage{}; ///< unknown when one set's body is
};

/// The volume of sets: all of it, and by leg.
struct BookedVolume {
    PhaseVolume all, bothLegs, left, right;
};

/// Books sets: volume load `Σ reps × load` (Haff 2010), body mass inclusive beside it where the body is the load (McBride et al. 2009, whole body
/// mass), each leg apart and all legs together (common practice, no source), up and down apart. Loads that share a measurement add straight.
/// Help counts as no load without the body and is taken off with it. A set of no reps is nothing.
/// Refuses reps below 0 or above 100,000, numbers that are not finite, a body mass not above 0, help where the body is not the load, and help above the body.
[[nodiscard]] Result<BookedVolume> bookedVolume(std::span<const LiftedSet> sets);

}
