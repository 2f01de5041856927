// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

namespace steelyard {

/// How a jump height was had. Heights of the two do not mix: on a published record they lie 2.5 cm apart.
enum class JumpHeightBy : std::uint8_t { Flight, Takeoff };

/// `g·t²/8`: rise of the centre of mass from take-off when it lands as it left. u: `(g·t/4)·u(t)`. Refuses a time below 0 or above 2 s.
[[nodiscard]] Result<Estimate<Length>> heightByFlight(const Estimate<Seconds>& flight, Acceleration gravity = standardGravity);

/// `v²/2g`. u: `(v/g)·u(v)`. Refuses a speed below 0 or above 10 m/s.
[[nodiscard]] Result<Estimate<Length>> heightByTakeoff(const Estimate<Speed>& takeoff, Acceleration gravity = standardGravity);

/// A time counted in frames of a film: n/rate. Either end lies somewhere within its frame, so u = 1/(rate·√6) (two rectangles, JCGM 100:2008,
/// 4.3.7). Refuses a count below 0 or above 100 000, and a rate outside 10–10 000 a second.
[[nodiscard]] Result<Estimate<Seconds>> timeByFrames(int framesCount, Frequency rate);

/// Reactive strength index, jump height over contact time on the ground, in m/s; with time to take-off instead of contact time it is the
/// modified index (Ebben & Petushek 2010). u by relative squares. Refuses a height below 0 and a time not above 0.
[[nodiscard]] Result<Estimate<Speed>> reactiveStrength(const Estimate<Length>& height, const Estimate<Seconds>& contactOrRise);

}
