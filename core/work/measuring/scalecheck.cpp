// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/scalecheck.h"

#include "core/measure/uncertainty.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

Mass sizeOf(Mass mass) { return mass < Mass{} ? -mass : mass; }

std::optional<Error> notAbove(const std::optional<Mass>& mass, const char* what)
{
    if (!mass)
        return Error{Refusal::NotThere, what};
    if (!std::isfinite(mass->si()))
        return Error{Refusal::NotFinite, what};
    return mass->si() > 0 ? std::nullopt : std::optional(Error{Refusal::OutOfRange, what});
}

}

Result<ScaleCheck> checked(const ScaleMeasurement& scale)
{
    if (auto wrong = notAbove(scale.step, "scale step"))
        return *wrong;
    if (!scale.empty)
        return Error{Refusal::NotThere, "empty"};
    if (!std::isfinite(scale.empty->si()))
        return Error{Refusal::NotFinite, "empty"};
    if (scale.readings.empty())
        return Error{Refusal::TooFewPoints, "readings"};
    ScaleCheck check;
    check.zero = *scale.empty;
    check.good = true;
    for (std::size_t i = 0; i < scale.readings.size(); ++i) {
        const auto& [known, read] = scale.readings[i];
        const std::string name = "reading " + std::to_string(i + 1);
        if (auto wrong = notAbove(known, name.c_str()))
            return *wrong;
        if (!std::isfinite(read.si()))
            return Error{Refusal::NotFinite, name};
        const Mass off = read - check.zero - known;
        if (i == 0 || sizeOf(off) > sizeOf(check.worst)) {
            check.worst = off;
            check.worstAt = known;
        }
        check.knownUpTo = std::max(check.knownUpTo, known);
        check.good = check.good && sizeOf(off) <= std::max(*scale.step, 0.005 * known) + kilograms(1e-9);
    }
    check.accuracy = std::max(sizeOf(check.worst), 0.5 * *scale.step);
    return check;
}

Result<IronCheck> checked(const WeighedIron& iron)
{
    for (const auto& [mass, what] : {std::pair(iron.marked, "mark"), std::pair(iron.read, "mass"), std::pair(iron.step, "scale step")})
        if (auto wrong = notAbove(mass, what))
            return *wrong;
    const double accuracy = iron.accuracy.value_or(Mass{}).si();
    if (!std::isfinite(accuracy) || accuracy < 0)
        return Error{Refusal::OutOfRange, "accuracy"};
    if (iron.count < 1)
        return Error{Refusal::OutOfRange, "count"};
    IronCheck check;
    check.each = *iron.read / iron.count;
    check.u = kilograms(scaleReadingUncertainty(iron.step->si(), accuracy) / iron.count);
    check.offMark = check.each - *iron.marked;
    check.offShare = check.offMark / *iron.marked;
    check.clear = sizeOf(check.offMark) > coverageFactor95(knownExactly) * check.u;
    return check;
}

}
