// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/scalecheck.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <tuple>

namespace steelyard {

namespace {

Mass sizeOf(Mass mass) { return mass < Mass{} ? -mass : mass; }

/// A mass that is missing or no number.
std::optional<Error> notKnown(const std::optional<Entered<Mass>>& mass, const std::string& what)
{
    if (!mass)
        return Error{Refusal::NotThere, what};
    return std::isfinite(mass->si()) ? std::nullopt : std::optional(Error{Refusal::NotFinite, what});
}

std::optional<Error> notAbove(const std::optional<Entered<Mass>>& mass, const std::string& what)
{
    if (auto wrong = notKnown(mass, what))
        return wrong;
    return mass->si() > 0 ? std::nullopt : std::optional(Error{Refusal::OutOfRange, what});
}

IronCheck againstMark(Mass each, Mass u, const std::optional<Entered<Mass>>& marked)
{
    IronCheck check;
    check.each = each;
    check.u = u;
    if (marked) {
        check.offMark = each - marked->quantity();
        check.offShare = check.offMark / marked->quantity();
        check.clear = sizeOf(check.offMark) > coverageFactor95(knownExactly) * u;
    }
    return check;
}

}

Result<ScaleCheck> checked(const ScaleMeasurement& scale)
{
    if (auto wrong = notAbove(scale.step, "scale step"))
        return *wrong;
    if (auto wrong = notKnown(scale.empty, "empty"))
        return *wrong;
    if (scale.readings.empty())
        return Error{Refusal::TooFewPoints, "readings"};
    ScaleCheck check;
    check.zero = *scale.empty;
    check.good = true;
    for (std::size_t i = 0; i < scale.readings.size(); ++i) {
        const std::string name = "reading " + std::to_string(i + 1);
        if (auto wrong = notAbove(scale.readings[i].known, name))
            return *wrong;
        if (auto wrong = notKnown(scale.readings[i].read, name))
            return *wrong;
        const Mass known = *scale.readings[i].known, off = *scale.readings[i].read - check.zero - known;
        if (i == 0 || sizeOf(off) > sizeOf(check.worst)) {
            check.worst = off;
            check.worstAt = known;
        }
        check.knownUpTo = std::max(check.knownUpTo, known);
        check.good = check.good && sizeOf(off) <= std::max<Mass>(*scale.step, 0.005 * known) + kilograms(1e-9);
    }
    check.accuracy = std::max(sizeOf(check.worst), 0.5 * scale.step->quantity());
    return check;
}

ImplementMass massByEnds(const IronMeasurement& iron)
{
    LogMeasurement bar;
    bar.by = LogMeasuring::Ends;
    bar.ends = iron.ends.value_or(BothEnds{});
    bar.whole.step = iron.step;
    bar.whole.accuracy = iron.accuracy;
    return implementMass(iron.ends ? Measured(bar) : Measured(iron));
}

Result<IronCheck> checked(const IronMeasurement& iron)
{
    const bool isByEnds = iron.ends.has_value();
    if (isByEnds && iron.sort == IronSort::Plates)
        return Error{Refusal::OutOfRange, "ends"};
    for (const auto& [mass, what, asked] : {std::tuple(iron.marked, "mark", !isByEnds || iron.marked), std::tuple(iron.read, "mass", !isByEnds), std::tuple(iron.step, "scale step", true)})
        if (auto wrong = asked ? notAbove(mass, what) : std::nullopt)
            return *wrong;
    const double accuracy = iron.accuracy ? iron.accuracy->si() : 0;
    if (!std::isfinite(accuracy) || accuracy < 0)
        return Error{Refusal::OutOfRange, "accuracy"};
    if (iron.count < 1)
        return Error{Refusal::OutOfRange, "count"};
    if (!isByEnds)
        return againstMark(iron.read->quantity() / iron.count, kilograms(scaleReadingUncertainty(iron.step->si(), accuracy) / iron.count), iron.marked);
    if (iron.count != 1)
        return Error{Refusal::OutOfRange, "count"};
    const ImplementMass found = massByEnds(iron);
    if (!found.mass)
        return Error{found.gap == MassGap::DoesNotFit ? Refusal::OutOfRange : Refusal::NotThere, found.what};
    return againstMark(found.mass->value, found.mass->u(), iron.marked);
}

}
