// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/scalecheck.h"

#include "core/measure/uncertainty.h"

#include <algorithm>
#include <cmath>
#include <string>

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

Result<IronCheck> checked(const IronMeasurement& iron)
{
    for (const auto& [mass, what] : {std::pair(iron.marked, "mark"), std::pair(iron.read, "mass"), std::pair(iron.step, "scale step")})
        if (auto wrong = notAbove(mass, what))
            return *wrong;
    const double accuracy = iron.accuracy ? iron.accuracy->si() : 0;
    if (!std::isfinite(accuracy) || accuracy < 0)
        return Error{Refusal::OutOfRange, "accuracy"};
    if (iron.count < 1)
        return Error{Refusal::OutOfRange, "count"};
    IronCheck check;
    check.each = iron.read->quantity() / iron.count;
    check.u = kilograms(scaleReadingUncertainty(iron.step->si(), accuracy) / iron.count);
    check.offMark = check.each - iron.marked->quantity();
    check.offShare = check.offMark / iron.marked->quantity();
    check.clear = sizeOf(check.offMark) > coverageFactor95(knownExactly) * check.u;
    return check;
}

}
