// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/weighing.h"

#include "core/measure/conditions.h"

#include <cmath>
#include <numeric>

namespace steelyard {

namespace {

bool notNegative(double number) { return std::isfinite(number) && number >= 0; }

/// A rectangle's half-width and a step's width as standard uncertainties (JCGM 100:2008, 4.3.7).
const double halfWidth = 1 / std::sqrt(3.0), step = 1 / std::sqrt(12.0);

void addScale(Estimate<Mass>& estimate, const Scale& scale)
{
    const double accuracy = scale.accuracy.si() + scale.accuracyShare * estimate.number();
    if (scale.step.si() > 0)
        estimate.uncertainty.add({ownSource, {step * scale.step.si(), 0, 0}});
    if (accuracy > 0)
        estimate.uncertainty.add({scale.id, {halfWidth * accuracy, 0, 0}});
}

/// Of the mean of n ≥ 2 readings.
double standardErrorOf(std::span<const Mass> shown, double mean)
{
    const double squares = std::accumulate(shown.begin(), shown.end(), 0.0,
        [mean](double sum, Mass m) { return sum + (m.si() - mean) * (m.si() - mean); });
    const auto count = static_cast<double>(shown.size());
    return std::sqrt(squares / (count - 1) / count);
}

}

Result<Estimate<Mass>> readingOf(const Scale& scale, Mass shown)
{
    return meanReadingOf(scale, {&shown, 1});
}

Result<Estimate<Mass>> meanReadingOf(const Scale& scale, std::span<const Mass> shown)
{
    if (shown.empty())
        return Error{Refusal::TooFewPoints, "reading"};
    if (const auto wrong = broken({{notNegative(scale.step.si()), "scale step"}, {notNegative(scale.accuracyShare), "scale accuracy"},
                                   {notNegative(scale.accuracy.si()), "scale accuracy"}}))
        return *wrong;
    double sum = 0;
    for (const Mass reading : shown) {
        if (!notNegative(reading.si()))
            return Error{Refusal::OutOfRange, "reading"};
        sum += reading.si();
    }
    Estimate<Mass> mean{kilograms(sum / static_cast<double>(shown.size())), {}};
    addScale(mean, scale);
    if (shown.size() > 1)
        mean.uncertainty.add({ownSource, {standardErrorOf(shown, mean.number()), 0, 0}, static_cast<double>(shown.size() - 1)});
    return mean;
}

Result<Estimate<Mass>> markedMass(Mass mark, double toleranceShare, SourceId set)
{
    if (const auto wrong = broken({{std::isfinite(mark.si()) && mark.si() > 0, "mass"}, {notNegative(toleranceShare) && toleranceShare <= 1, "tolerance"}}))
        return *wrong;
    return within(mark, halfWidth * toleranceShare * mark, set);
}

Result<Estimate<Mass>> lessTare(const Estimate<Mass>& whole, const Estimate<Mass>& tare)
{
    if (const auto wrong = broken({{isPositive(whole), "reading"}, {isNotNegative(tare) && tare.value < whole.value, "tare"}}))
        return *wrong;
    return sumOf(whole, times(tare, -1));
}

Estimate<Force> pullOf(const Estimate<Mass>& shown)
{
    return productOf(shown, exactly(standardGravity));
}

Result<Estimate<Mass>> massByEnds(const EndLift& first, const EndLift& second, const Estimate<Length>& span)
{
    const auto inside = [&span](const EndLift& lift) { return isNotNegative(lift.inset) && lift.inset.value < span.value; };
    if (const auto wrong = broken({{isPositive(first.shown), "first end"}, {isPositive(second.shown), "second end"}, {isPositive(span), "length"},
                                   {inside(first), "first hook"}, {inside(second), "second hook"}}))
        return *wrong;
    const double r1 = first.shown.number(), r2 = second.shown.number(), s = span.number();
    const double arm1 = 1 - first.inset.number() / s, arm2 = 1 - second.inset.number() / s;
    const double bySpan = (r1 * first.inset.number() + r2 * second.inset.number()) / (s * s);
    return Estimate<Mass>{kilograms(r1 * arm1 + r2 * arm2),
                          propagated({{first.shown.uncertainty, arm1}, {second.shown.uncertainty, arm2}, {first.inset.uncertainty, -r1 / s},
                                      {second.inset.uncertainty, -r2 / s}, {span.uncertainty, bySpan}})};
}

Result<Estimate<Mass>> massByEnds(const Estimate<Mass>& first, const Estimate<Mass>& second)
{
    return massByEnds({first, {}}, {second, {}}, exactly(metres(1)));
}

}
