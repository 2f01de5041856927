// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/jumprecord.h"

#include "core/legcheck/jump.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

constexpr Force nearEmpty = newtons(50), mostWhenEmpty = newtons(100), leastThreshold = newtons(10);
constexpr double thresholdSds = 5;
constexpr Seconds shortestFlight{0.1}, weighed{1}, shortWeighed{0.1}, back{0.03}, shortestRecord{0.2};

/// Samples without load, and the first run of them that is a flight.
struct Flight {
    std::vector<bool> loaded;
    std::size_t firstLoadIndex = 0, begin = 0, end = 0;
};

Result<Flight> flightOf(const ForceRecord& record)
{
    const Force least = *std::min_element(record.force.begin(), record.force.end());
    if (!(least < mostWhenEmpty))
        return Error{Refusal::NoFlight, "force"};
    Flight flight;
    for (const Force force : record.force)
        flight.loaded.push_back(force - least > nearEmpty);
    const std::size_t enough = std::max<std::size_t>(2, record.samplesIn(shortestFlight));
    bool stood = false;
    for (std::size_t i = 0; i < flight.loaded.size();) {
        const bool isLoad = flight.loaded[i];
        std::size_t end = i;
        while (end < flight.loaded.size() && flight.loaded[end] == isLoad)
            ++end;
        if (isLoad && !stood && end - i >= enough) {
            stood = true;
            flight.firstLoadIndex = i;
        } else if (!isLoad && stood && end - i >= enough) {
            flight.begin = i;
            flight.end = end;
            return flight;
        }
        i = end;
    }
    return Error{Refusal::NoFlight, "force"};
}

Result<Steady> weighingOf(const ForceRecord& record, std::span<const Force> force, const Flight& flight, std::size_t takeoff, ShortWeighing shortWeighing)
{
    const auto whole = quietest(force, flight.loaded, record.samplesIn(weighed), takeoff);
    if (whole && isStill(*whole))
        return *whole;
    if (shortWeighing == ShortWeighing::No)
        return Error{whole ? Refusal::NotStill : Refusal::TooFewPoints, "weighing"};
    Steady few = steadyOf(force, flight.firstLoadIndex, std::max<std::size_t>(2, record.samplesIn(shortWeighed)));
    few.isShort = true;
    if (!isStill(few))
        return Error{Refusal::NotStill, "weighing"};
    return few;
}

/// ∫(F − weight) dt by trapezoids, both ends among it.
Impulse netImpulse(const ForceRecord& record, std::span<const Force> force, Force weight, std::size_t first, std::size_t last)
{
    double sum = 0;
    for (std::size_t i = first; i < last; ++i)
        sum += (force[i].si() + force[i + 1].si()) / 2 - weight.si();
    return Impulse::fromSi(sum / record.rate.si());
}

void setHeights(ForceJump& jump, const ForceRecord& record, Impulse impulse, Acceleration gravity)
{
    const double mass = jump.body.number(), speed = impulse.si() / mass;
    const double stretch = record.timeAt(static_cast<double>(jump.takeoffIndex - 1 - jump.onsetIndex)).count();
    // v = g·∫F/W − g·T, so a weight that is off acts through both the mass and what is taken off
    const double byMass = -(speed + gravity.si() * stretch) / mass;
    jump.takeoffSpeed = {Speed::fromSi(speed), propagated({{jump.body.uncertainty, byMass}})};
    if (const auto height = heightByTakeoff(jump.takeoffSpeed, gravity); height && speed > 0)
        jump.impulseHeight = *height;
    if (!jump.landing)
        return;
    const auto flight = within(*jump.landing - jump.takeoff, Seconds{1 / (record.rate.si() * std::sqrt(6.0))});
    if (const auto height = heightByFlight(flight, gravity))
        jump.flightHeight = *height;
}

}

Result<ForceJump> forceJump(const ForceRecord& record, ShortWeighing shortWeighing, Acceleration gravity)
{
    if (const auto wrong = faultOf(record, shortestRecord))
        return *wrong;
    if (!(std::isfinite(gravity.si()) && gravity > Acceleration{}))
        return Error{Refusal::OutOfRange, "gravity"};
    const auto flight = flightOf(record);
    if (!flight)
        return flight.error();
    const std::size_t length = flight->end - flight->begin, quarter = length / 4;
    const Steady empty = steadyOf(record.force, flight->begin + quarter, length - 2 * quarter);
    std::vector<Force> force;
    for (const Force sample : record.force)
        force.push_back(sample - empty.mean);
    const Force threshold = std::max(thresholdSds * empty.sd, leastThreshold);
    const auto at = [&](std::size_t index) { return force.begin() + static_cast<std::ptrdiff_t>(index); };
    const auto takeoff = std::find_if(at(flight->begin), at(flight->end), [&](Force sample) { return sample < threshold; });
    if (takeoff == at(flight->end))
        return Error{Refusal::NoFlight, "force"};
    const auto landing = std::find_if(std::max(takeoff, at(flight->begin + length / 2)), force.end(), [&](Force sample) { return sample >= threshold; });

    ForceJump jump;
    jump.offset = empty.mean;
    jump.offsetSd = empty.sd;
    jump.takeoffIndex = static_cast<std::size_t>(takeoff - force.begin());
    jump.takeoff = record.timeAt(static_cast<double>(jump.takeoffIndex));
    if (landing != force.end()) {
        jump.landingIndex = static_cast<std::size_t>(landing - force.begin());
        jump.landing = record.timeAt(static_cast<double>(*jump.landingIndex));
    }
    const auto weighing = weighingOf(record, force, *flight, jump.takeoffIndex, shortWeighing);
    if (!weighing)
        return weighing.error();
    jump.weighing = *weighing;
    const double uWeight = weighing->sd.si() / std::sqrt(static_cast<double>(weighing->samplesCount));
    jump.body = within(weighing->mean / gravity, newtons(uWeight) / gravity, ownSource, static_cast<double>(weighing->samplesCount - 1));
    const auto outside = firstOutsideIndex(force, *weighing, weighing->endIndex(), jump.takeoffIndex);
    if (!outside)
        return Error{Refusal::NoFlight, "force"};
    jump.onsetIndex = *outside - 1 - std::min(*outside - 1, record.samplesIn(back));
    jump.onset = record.timeAt(static_cast<double>(jump.onsetIndex));
    setHeights(jump, record, netImpulse(record, force, weighing->mean, jump.onsetIndex, jump.takeoffIndex - 1), gravity);
    return jump;
}

}
