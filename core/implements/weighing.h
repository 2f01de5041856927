// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <span>

namespace steelyard {

/// A scale as it reads. Its own error is the same way at every reading, so readings of one scale share it by `id`.
struct Scale {
    Mass step;
    double accuracyShare = 0; ///< half-width of its own error as a share of what it shows
    Mass accuracy{};          ///< and the part of that half-width that is the same at every load
    SourceId id = ownSource;
};

/// One reading: u = √(d²/12 + a²/3), d the step, a = accuracy + share · reading (JCGM 100:2008, 4.3.7).
/// Refuses a reading, step or accuracy below 0 and numbers that are not finite.
[[nodiscard]] Result<Estimate<Mass>> readingOf(const Scale& scale, Mass shown);

/// The mean of several readings of the same thing: their scatter s/√n with n − 1 degrees of freedom, beside step and accuracy,
/// which repeating does not take away. One reading has no scatter; none is refused.
[[nodiscard]] Result<Estimate<Mass>> meanReadingOf(const Scale& scale, std::span<const Mass> shown);

/// A mass as marked, with a tolerance as the half-width of a rectangle: u = m·tolerance/√3. Competition kit within what its
/// rules allow; of unknown gym iron 2 % is this project's choice. Refuses a mass not above 0 and a tolerance outside 0–1.
[[nodiscard]] Result<Estimate<Mass>> markedMass(Mass mark, double toleranceShare, SourceId set = ownSource);

/// What hung beside it taken off again (sling, hook, empty keg): both may be readings of one scale, whose error then partly
/// cancels. Refuses a tare that is not below the whole.
[[nodiscard]] Result<Estimate<Mass>> lessTare(const Estimate<Mass>& whole, const Estimate<Mass>& tare);

/// The pull that a scale in the rope shows as a mass.
[[nodiscard]] Estimate<Force> pullOf(const Estimate<Mass>& shown);

/// One end lifted: what the scale shows, and how far inside that end's own point of support the hook holds.
struct EndLift {
    Estimate<Mass> shown;
    Estimate<Length> inset{};
};

/// A log, a bar or anything long, weighed by one end and then by the other: `M = [R₁(S−s₁) + R₂(S−s₂)]/S`, S the distance of the
/// two points of support, s how far inside them the hook holds. Exact however the mass lies along it; with the hooks at the points
/// of support it is R₁ + R₂, and adding readings taken further in reads high by s/S. Each end is just off the ground, the rope
/// upright. Source: moments about the end that stays down.
/// Refuses readings not above 0, a span not above 0, and a hook outside the span.
[[nodiscard]] Result<Estimate<Mass>> massByEnds(const EndLift& first, const EndLift& second, const Estimate<Length>& span);
/// The same with the hooks where it rests.
[[nodiscard]] Result<Estimate<Mass>> massByEnds(const Estimate<Mass>& first, const Estimate<Mass>& second);

}
