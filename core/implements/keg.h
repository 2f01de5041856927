// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstdint>

namespace steelyard {

/// Whether a keg still holds gas, as asked of whoever brought it.
enum class KegPressure : std::uint8_t { NotKnown, Holding, Released };

/// Only one whose pressure has been let off by whoever may is lifted, dropped or opened; one that nobody knows of is not.
[[nodiscard]] constexpr bool mayBeLifted(KegPressure pressure) { return pressure == KegPressure::Released; }

/// A vessel that lies on its side, its ends taken as flat: inner radius and length, and how deep the filling stands in the middle.
struct LyingVessel {
    Estimate<Length> radius, length, depth;
};

/// What is in a lying vessel: `L[r² acos((r − h)/r) − (r − h)√(2rh − h²)]`. A third of the depth is not a third of the volume. Where it is
/// all but empty or full the depth's doubt counts by the slope one u inside, since at the end itself it would vanish.
/// Source: the segment of a circle. Refuses sizes not above 0 and a depth outside 0–2r.
[[nodiscard]] Result<Estimate<Volume>> contentLying(const LyingVessel& vessel);

/// The share of a lying vessel that is filled, which needs no length; for one whose capacity is known, domed ends and all.
[[nodiscard]] Result<Estimate<double>> fillShareLying(const Estimate<Length>& radius, const Estimate<Length>& depth);

/// What is in a standing straight-sided vessel, `πr²h`. Refuses a radius not above 0 and a depth below 0.
[[nodiscard]] Result<Estimate<Volume>> contentStanding(const Estimate<Length>& radius, const Estimate<Length>& depth);

/// `capacity · fill`. Refuses a capacity not above 0 and a fill outside 0–1.
[[nodiscard]] Result<Estimate<Volume>> contentByFill(const Estimate<Volume>& capacity, const Estimate<double>& fillShare);

/// Keg, sandbag or anything filled: `tare + V·ρ`, what it weighs empty and what is in it. Kegs are not standardised: weigh an empty one.
/// A keg that is part full sloshes, which no mass says. Refuses a tare or a content below 0 and a density not above 0.
[[nodiscard]] Result<Estimate<Mass>> filledMass(const Estimate<Mass>& tare, const Estimate<Volume>& content, const Estimate<Density>& density);

/// One litre, exact.
inline constexpr Volume litre = Volume::fromSi(1e-3);

}
