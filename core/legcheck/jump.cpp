// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/jump.h"

#include "core/measure/conditions.h"

#include <cmath>

namespace steelyard {

namespace {

constexpr double longestFlight = 2, fastestTakeoff = 10;

bool isGravity(Acceleration gravity) { return std::isfinite(gravity.si()) && gravity > Acceleration{}; }

}

Result<Estimate<Length>> heightByFlight(const Estimate<Seconds>& flight, Acceleration gravity)
{
    if (const auto wrong = broken({{isNotNegative(flight) && flight.number() <= longestFlight, "flight"}, {isGravity(gravity), "gravity"}}))
        return *wrong;
    const double t = flight.number(), g = gravity.si();
    return Estimate<Length>{metres(g * t * t / 8), propagated({{flight.uncertainty, g * t / 4}})};
}

Result<Estimate<Length>> heightByTakeoff(const Estimate<Speed>& takeoff, Acceleration gravity)
{
    if (const auto wrong = broken({{isNotNegative(takeoff) && takeoff.number() <= fastestTakeoff, "take-off"}, {isGravity(gravity), "gravity"}}))
        return *wrong;
    const double v = takeoff.number(), g = gravity.si();
    return Estimate<Length>{metres(v * v / (2 * g)), propagated({{takeoff.uncertainty, v / g}})};
}

Result<Estimate<Seconds>> timeByFrames(int framesCount, Frequency rate)
{
    constexpr Frequency slowest = hertz(10), fastest = hertz(10'000);
    if (const auto wrong = broken({{isCount(framesCount), "frames"}, {rate >= slowest && rate <= fastest, "rate"}}))
        return *wrong;
    return within(Seconds{framesCount / rate.si()}, Seconds{1 / (rate.si() * std::sqrt(6.0))});
}

Result<Estimate<Speed>> reactiveStrength(const Estimate<Length>& height, const Estimate<Seconds>& contactOrRise)
{
    if (const auto wrong = broken({{isNotNegative(height), "height"}, {isPositive(contactOrRise), "time"}}))
        return *wrong;
    return speedOf(height, contactOrRise);
}

}
