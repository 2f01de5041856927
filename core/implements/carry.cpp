// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/carry.h"

#include "core/measure/conditions.h"

namespace steelyard {

namespace {

bool goesWith(CarryKind kind, const CarryLoad& load)
{
    switch (kind) {
    case CarryKind::Farmers: return load.left && load.right && !load.whole;
    case CarryKind::OneHand: return load.left.has_value() != load.right.has_value() && !load.whole;
    case CarryKind::HexBar:
    case CarryKind::Yoke:
    case CarryKind::Front:
    case CarryKind::Overhead: break;
    }
    return load.whole && !load.left && !load.right;
}

std::optional<Error> wrongCarry(const Carry& carry)
{
    if (auto wrong = broken({{goesWith(carry.kind, carry.load), "load"}, {isCount(carry.lapsLeftOut), "laps left out"}}))
        return wrong;
    for (const auto* part : {&carry.load.left, &carry.load.right, &carry.load.whole})
        if (*part && !isPositive(**part))
            return Error{Refusal::OutOfRange, "mass"};
    for (const CarryLap& lap : carry.laps)
        if (auto wrong = broken({{isNotNegative(lap.covered), "distance"}, {!lap.time || isPositive(*lap.time), "time"}, {isCount(lap.drops), "drops"}}))
            return wrong;
    return std::nullopt;
}

}

Result<CarryDone> carryDone(const Carry& carry)
{
    if (const auto wrong = wrongCarry(carry))
        return *wrong;
    CarryDone done;
    done.lapsLeftOut = carry.lapsLeftOut;
    Estimate<Length> timed;
    Estimate<Seconds> time;
    for (const CarryLap& lap : carry.laps) {
        addTo(done.distance, lap.covered);
        done.drops += lap.drops;
        done.lapsGone += lap.covered.number() > 0 ? 1 : 0;
        if (lap.time) {
            addTo(timed, lap.covered);
            addTo(time, *lap.time);
        }
    }
    const auto carried = [&done](const std::optional<Estimate<Mass>>& part, Estimate<MassDistance>& here) {
        if (!part)
            return;
        here = productOf(*part, done.distance);
        addTo(done.load, *part);
    };
    carried(carry.load.left, done.left);
    carried(carry.load.right, done.right);
    carried(carry.load.whole, done.whole);
    // of the whole load: the distance is one measurement for both hands
    done.all = productOf(done.load, done.distance);
    if (time.number() > 0)
        done.speed = speedOf(timed, time);
    return done;
}

Result<Estimate<double>> percentOf(const Estimate<Mass>& load, const Estimate<Mass>& reference)
{
    if (const auto wrong = broken({{isNotNegative(load), "mass"}, {isPositive(reference), "reference"}}))
        return *wrong;
    return times(quotientOf(load, reference), 100);
}

}
