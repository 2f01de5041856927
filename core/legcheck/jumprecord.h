// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/legcheck/forcerecord.h"

namespace steelyard {

/// Whether somebody may be weighed on the first tenth of a second of load where no second of standing still was recorded.
enum class ShortWeighing : std::uint8_t { No, Allowed };

/// A jump as its record of force tells it.
struct ForceJump {
    Steady weighing;                     ///< weight, the plate's offset removed
    Force offset, offsetSd;              ///< what the plate shows with nobody on it, from the flight
    Estimate<Mass> body;
    std::size_t onsetIndex = 0, takeoffIndex = 0;
    std::optional<std::size_t> landingIndex{}; ///< none where the record ends in flight
    Seconds onset{}, takeoff{};          ///< from the start of the record
    std::optional<Seconds> landing{};
    Estimate<Speed> takeoffSpeed;        ///< u: of the weight alone
    std::optional<Estimate<Length>> flightHeight{};  ///< g·t²/8; none without a landing
    std::optional<Estimate<Length>> impulseHeight{}; ///< v²/2g; none where the impulse is not upwards: the weight cannot be right

    /// From onset to take-off, for the modified reactive strength index.
    [[nodiscard]] Seconds timeToTakeoff() const { return takeoff - onset; }
};

/// A jump from standing, in these steps. Unloaded is within 50 N of the record's minimum, itself under 100 N. Flight is the first unloaded
/// run of at least 0.1 s after 0.1 s of load; its middle half gives the plate's offset, removed first, and its SD. Take-off is the first sample of
/// the run below the larger of 5 SD and 10 N, landing the first at or above it after the middle of the run (a plate rings after take-off). Weight is the
/// mean of the second of load before take-off with the least SD, the earliest on ties; above 2 % it is not still; a shorter weighing, the
/// first 0.1 s of load, only when allowed, and marked. Onset is the last sample within weight ± max(5 SD, 1 N) before the first outside,
/// then 30 ms back (after Owen et al. 2014, J Strength Cond Res 28:1552–1558, in part from memory). Impulse is the trapezoid of force less
/// weight from onset to the last loaded sample: 1 % of weight moves the height by 2.4 cm on a published record.
/// u of the flight: each end within its sample, 1/(rate·√6); of the speed: SD of the weighing over its root of n, for as long as it
/// acts, what the weight does to the mass among it. Slow sway and the plate's own scale are in none of them.
/// Refuses what faultOf does (under 0.2 s), a record without a flight, too short a stand to be weighed on, one that is not still, and one
/// without movement before the flight.
[[nodiscard]] Result<ForceJump> forceJump(const ForceRecord& record, ShortWeighing shortWeighing = ShortWeighing::No, Acceleration gravity = standardGravity);

}
