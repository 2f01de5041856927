// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstdint>
#include <optional>
#include <span>

namespace steelyard {

/// How a kettlebell is held.
enum class BellGrip : std::uint8_t { OneHand, TwoHands };

/// Whether a bell sits in the hand. It is tried, not computed: a handle and a window in millimetres do not say it.
enum class HandFit : std::uint8_t { NotTried, Fits, DoesNotFit };

/// A kettlebell or a dumbbell, fixed or adjustable. The right mass can be the wrong thing in the hand.
struct Bell {
    Estimate<Mass> mass;
    bool adjustable = false;
    std::optional<Length> handleDiameter, windowWidth; ///< as measured; for whoever chooses, not for a formula
    HandFit oneHand = HandFit::NotTried, twoHands = HandFit::NotTried;

    [[nodiscard]] HandFit fit(BellGrip grip) const { return grip == BellGrip::OneHand ? oneHand : twoHands; }
};

/// An adjustable bell or dumbbell as it is loaded: its shell or handle and what is on it, plates of one set sharing their error.
/// Refuses masses below 0, and nothing at all.
[[nodiscard]] Result<Estimate<Mass>> loadedMass(const Estimate<Mass>& shell, std::span<const Estimate<Mass>> plates);

/// Swings in bouts of equal time or equal intent.
struct SwingsDone {
    int reps = 0;
    Estimate<Mass> volume;                 ///< mass × reps
    std::optional<double> dropOffPercent;  ///< from the best bout to the last, `100(best − last)/best`; of counts, so without doubt
};

/// Works out swings by the reps of each bout. A single bout, or bouts of none, have no drop-off. Refuses a mass not above 0, no bouts, and
/// reps below 0 or above 100,000.
[[nodiscard]] Result<SwingsDone> swingsDone(const Estimate<Mass>& bell, std::span<const int> reps);

}
