// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/implements/figures.h"

#include "core/work/implements/implementmass.h"
#include "core/work/strength/standing.h"

namespace steelyard {

namespace {

constexpr LiftId swing{27};
constexpr SourceId ofHandle{sourceCountOfOne}, ofPlates{1 + sourceCountOfOne};

template <typename Quantity>
double percentAtWorst(const Estimate<Quantity>& of, Quantity lowest)
{
    return of.highest() / lowest * 100;
}

/// Nothing where it is neither known nor to be known.
Result<Estimate<Mass>> massOr(const ImplementMass& found)
{
    return found.mass ? Result<Estimate<Mass>>(*found.mass) : Error{found.gap == MassGap::DoesNotFit ? Refusal::OutOfRange : Refusal::NotThere, "mass"};
}

}

Result<FlipFigures> flipFigures(const TyreMeasurement& tyre, const std::optional<KnownMaximum>& deadlift)
{
    const auto mass = massOr(implementMass(tyre));
    if (!mass)
        return mass.error();
    if (!tyre.diameter || !tyre.width)
        return Error{Refusal::NotThere, tyre.diameter ? "width" : "diameter"};
    const auto flip = TyreFlip::of({*mass, within(tyre.diameter->quantity(), uTape), within(tyre.width->quantity(), uTape)});
    if (!flip)
        return flip.error();
    FlipFigures figures{*flip, *flip->at(Angle{}), std::nullopt, std::nullopt};
    if (deadlift && deadlift->lowest.si() > 0) {
        figures.startPercent = percentAtWorst(figures.start.vertical, weight(deadlift->lowest));
        figures.massPercent = percentAtWorst(*mass, deadlift->lowest);
    }
    return figures;
}

CarryKind carryKindOf(CarrySort sort)
{
    switch (sort) {
    case CarrySort::Handles: return CarryKind::Farmers;
    case CarrySort::OneHandle: return CarryKind::OneHand;
    case CarrySort::Yoke: return CarryKind::Yoke;
    case CarrySort::HexBar:
    case CarrySort::Frame: break;
    }
    return CarryKind::HexBar;
}

Result<CarryLoad> carryLoad(const CarryMeasurement& carry, Mass added, Limbs hand)
{
    const auto own = massOr(implementMass(carry));
    if (!own)
        return own.error();
    Estimate<Mass> one = weighedOnce(*own, ofHandle);
    if (added != Mass{}) {
        const auto plates = markedMass(added, markToleranceShare, ofPlates);
        if (!plates)
            return plates.error();
        addTo(one, *plates);
    }
    CarryLoad load;
    switch (carryKindOf(carry.sort)) {
    case CarryKind::Farmers: load.left = load.right = one; break;
    case CarryKind::OneHand:
        if (hand == Limbs::Both)
            return Error{Refusal::OutOfRange, "hand"};
        (hand == Limbs::Left ? load.left : load.right) = one;
        break;
    default: load.whole = one;
    }
    return load;
}

Result<CarryFigures> carryFigures(const Carry& carry, const Athlete& athlete, std::chrono::sys_days day, const std::optional<KnownMaximum>& deadlift)
{
    const auto done = carryDone(carry);
    if (!done)
        return done.error();
    CarryFigures figures{*done, std::nullopt, std::nullopt};
    if (const auto body = bodyMassOn(athlete, day))
        if (const auto percent = percentOf(done->load, within(body->quantity(), uOfBodyMass)))
            figures.bodyPercent = *percent;
    if (deadlift)
        if (const auto percent = percentOf(done->load, exactly(deadlift->lowest)))
            figures.deadliftPercent = *percent;
    return figures;
}

BellGrip gripOf(const LiftId& lift)
{
    return lift == swing ? BellGrip::TwoHands : BellGrip::OneHand;
}

}
