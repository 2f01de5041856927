// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/eccentricload.h"

#include "core/hanging/platesplit.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

bool isAbove(Mass least, Mass mass) { return mass > least && mass <= heaviestLoad; }

std::optional<Error> targetFault(const EccentricTarget& target)
{
    constexpr double mostRatio = 10;
    if (!isAbove({}, target.concentric))
        return Error{Refusal::OutOfRange, "concentric load"};
    if (target.eccentric.has_value() == target.eccentricRatio.has_value())
        return Error{Refusal::NotThere, "eccentric load"};
    if (target.eccentric ? !isAbove(target.concentric, *target.eccentric) : !(*target.eccentricRatio > 1 && *target.eccentricRatio <= mostRatio))
        return Error{Refusal::OutOfRange, "eccentric load"};
    return std::nullopt;
}

std::optional<Error> kitFault(const EccentricKit& kit)
{
    constexpr double mostMetres = 10;
    if (!kit.base.isSound() || kit.base.value < Mass{} || kit.base.value > heaviestLoad)
        return Error{Refusal::OutOfRange, "bar"};
    if (!kit.frame.isSound() || kit.frame.value < Mass{} || kit.frame.value > heaviestLoad)
        return Error{Refusal::OutOfRange, "hook frame"};
    if (!std::isfinite(kit.platesUShare) || kit.platesUShare < 0)
        return Error{Refusal::OutOfRange, "uncertainty of the plates"};
    for (const auto& room : {kit.sleeve, kit.hookRoom})
        if (room && !(*room >= Length{} && *room < metres(mostMetres)))
            return Error{Refusal::OutOfRange, "room for plates"};
    for (const PlateStock& s : kit.stock) {
        if (!isAbove({}, s.type.mass) || s.type.mass > heaviestPlate)
            return Error{Refusal::OutOfRange, "plate"};
        for (const Length size : {s.type.thickness, s.type.diameter})
            if (!(size >= Length{} && size < metres(mostMetres)))
                return Error{Refusal::OutOfRange, "plate"};
        if (s.count < 0)
            return Error{Refusal::OutOfRange, "count of plates"};
    }
    return std::nullopt;
}

Mass sumOf(const std::vector<PlateType>& plates)
{
    Mass sum;
    for (const PlateType& p : plates)
        sum += p.mass;
    return sum;
}

Mass wantedWith(const EccentricTarget& target, Mass concentric) { return target.eccentric ? *target.eccentric : *target.eccentricRatio * concentric; }

/// Bar and both hooks, from the plates of one side and of one hook.
Uncertain<Mass> eccentricOf(const EccentricKit& kit, Mass side, Mass hook)
{
    const Mass plates = 2 * (side + hook);
    return {kit.base.value + 2 * kit.frame.value + plates, inSquares(kit.base.u, 2 * kit.frame.u, kit.platesUShare * plates)};
}

Uncertain<Mass> hookOf(const EccentricKit& kit, Mass hook) { return {kit.frame.value + hook, inSquares(kit.frame.u, kit.platesUShare * hook)}; }

/// Whether a hook of so many plates passes no limit, with so many on each side of the bar.
std::optional<Error> limitPassed(const EccentricKit& kit, Mass side, Mass hook)
{
    const auto isOver = [](const Uncertain<Mass>& load, const std::optional<Mass>& most) { return most && load.value + load.giveOrTake() > *most; };
    if (isOver({hook, kit.platesUShare * hook}, kit.hookRating))
        return Error{Refusal::OutOfRange, "hook rating"};
    if (isOver(eccentricOf(kit, side, hook), kit.eccentricCap))
        return Error{Refusal::OutOfRange, "cap"};
    return std::nullopt;
}

/// The most plates on a hook that pass no limit, by halving; a hook without plates passes none.
PlateUnits mostOnHook(const EccentricKit& kit, Mass side, PlateUnits enough)
{
    PlateUnits allowed = 0, over = enough + 1;
    while (over - allowed > 1) {
        const PlateUnits middle = allowed + (over - allowed) / 2;
        (limitPassed(kit, side, massOf(middle)) ? over : allowed) = middle;
    }
    return allowed;
}

class Loading {
public:
    Loading(const EccentricKit& kit, const EccentricTarget& target) : m_kit(kit), m_target(target), m_plates(kit.stock, {kit.sleeve, kit.hookRoom}) {}

    Result<EccentricAnswer> run()
    {
        const auto sides = m_plates.nearestSides(unitsOf(m_target.concentric) - unitsOf(m_kit.base.value));
        if (!sides)
            return sides.error();
        std::optional<Error> refused;
        std::optional<EccentricAnswer> answer;
        for (const PlateUnits side : *sides) {
            const auto tried = hooksWith(side);
            if (!tried) {
                refused = tried.error();
                continue;
            }
            if (!answer || isBetter(tried->best, answer->best))
                answer = *tried;
        }
        if (!answer)
            return refused.value_or(Error{Refusal::NotThere, "plates"});
        return *answer;
    }

private:
    /// Lighter bars come first, so that one as good stays.
    static bool isBetter(const EccentricLoad& a, const EccentricLoad& b)
    {
        const PlateUnits missA = std::abs(unitsOf(a.eccentricMiss)), missB = std::abs(unitsOf(b.eccentricMiss));
        return missA != missB ? missA < missB : a.plateCount < b.plateCount;
    }

    Result<EccentricAnswer> hooksWith(PlateUnits side) const
    {
        const Mass bar = massOf(side), concentric = m_kit.base.value + 2 * bar;
        if (const auto over = limitPassed(m_kit, bar, {}))
            return *over;
        // twice what one hook's plates should weigh, so that it is whole
        const PlateUnits wanted = unitsOf(wantedWith(m_target, concentric)) - unitsOf(m_kit.base.value) - 2 * side - 2 * unitsOf(m_kit.frame.value);
        const PlateUnits enough = std::max<PlateUnits>(0, wanted / 2) + 2 * m_plates.heaviest() + 1;
        const PlateUnits most = mostOnHook(m_kit, bar, enough);
        const auto joined = m_plates.hooksBeside(side, most);
        if (!joined)
            return joined.error();
        const auto best = joined->nearest(wanted, 0, most);
        if (!best)
            return Error{Refusal::NotThere, "plates"};
        EccentricAnswer answer{loadOf(*best), {}, {}};
        const PlateUnits hook = best->hook;
        if (const auto lighter = joined->nearest(2 * hook, 0, hook - 1))
            answer.lighter = loadOf(*lighter);
        if (const auto heavier = joined->nearest(2 * hook, hook + 1, most))
            answer.heavier = loadOf(*heavier);
        return answer;
    }

    [[nodiscard]] EccentricLoad loadOf(const PlateSplit& split) const
    {
        EccentricLoad load;
        const Mass side = sumOf(split.onSide), hook = sumOf(split.onHook);
        load.bar = {m_kit.base.value + 2 * side, split.onSide};
        load.onEachHook = split.onHook;
        load.concentric = {load.bar.total, inSquares(m_kit.base.u, m_kit.platesUShare * 2 * side)};
        load.eachHook = hookOf(m_kit, hook);
        load.eccentric = eccentricOf(m_kit, side, hook);
        load.concentricMiss = load.concentric.value - m_target.concentric;
        load.eccentricMiss = load.eccentric.value - wantedWith(m_target, load.concentric.value);
        load.plateCount = 2 * static_cast<int>(split.onSide.size() + split.onHook.size());
        return load;
    }

    const EccentricKit& m_kit;
    const EccentricTarget& m_target;
    PlateHalves m_plates;
};

}

Result<EccentricTarget> eccentricTarget(Mass oneRepMax, double concentricPercent, double eccentricPercent, PercentBase eccentricBase)
{
    if (eccentricBase != PercentBase::OneRepMax && eccentricBase != PercentBase::ConcentricLoad)
        return Error{Refusal::OutOfRange, "base"};
    const auto concentric = percentOf(concentricPercent, {oneRepMax});
    if (!concentric)
        return concentric.error();
    const auto eccentric = percentOf(eccentricPercent, {oneRepMax});
    if (!eccentric)
        return eccentric.error();
    EccentricTarget target{concentric->value, {}, {}};
    if (eccentricBase == PercentBase::ConcentricLoad)
        target.eccentricRatio = eccentricPercent / 100;
    else
        target.eccentric = eccentric->value;
    if (const auto wrong = targetFault(target))
        return *wrong;
    return target;
}

Result<EccentricTarget> eccentricTarget(Mass concentric, Mass eccentric)
{
    const EccentricTarget target{concentric, eccentric, {}};
    if (const auto wrong = targetFault(target))
        return *wrong;
    return target;
}

Mass idealHook(const EccentricTarget& target) { return (wantedWith(target, target.concentric) - target.concentric) / 2; }

Result<EccentricAnswer> eccentricLoad(const EccentricKit& kit, const EccentricTarget& target)
{
    if (const auto wrong = kitFault(kit))
        return *wrong;
    if (const auto wrong = targetFault(target))
        return *wrong;
    return Loading(kit, target).run();
}

}
