// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/uncertainty.h"
#include "core/measure/units.h"

#include <chrono>
#include <initializer_list>

namespace steelyard {

using Seconds = std::chrono::duration<double>;

/// Between a quantity and its number in SI; a ratio, an angle and a duration have one too.
template <typename Q>
struct Si {
    [[nodiscard]] static constexpr double of(Q quantity) { return quantity.si(); }
    [[nodiscard]] static constexpr Q from(double number) { return Q::fromSi(number); }
};
/// A ratio is its own number.
template <>
struct Si<double> {
    [[nodiscard]] static constexpr double of(double ratio) { return ratio; }
    [[nodiscard]] static constexpr double from(double number) { return number; }
};
/// In radians.
template <>
struct Si<Angle> {
    [[nodiscard]] static constexpr double of(Angle angle) { return angle.radians; }
    [[nodiscard]] static constexpr Angle from(double number) { return Angle{number}; }
};
/// In seconds.
template <>
struct Si<Seconds> {
    [[nodiscard]] static constexpr double of(Seconds time) { return time.count(); }
    [[nodiscard]] static constexpr Seconds from(double number) { return Seconds{number}; }
};

/// A value with what makes it uncertain, kept by source so that results which share a measurement can be added. The effects
/// are in the SI unit of the value. It holds any number: whoever computes with it checks it first.
template <typename Q>
struct Estimate {
    Q value{};
    Uncertainty uncertainty{};

    [[nodiscard]] double number() const { return Si<Q>::of(value); }
    /// Combined standard uncertainty, never negative.
    [[nodiscard]] Q u() const { return Si<Q>::from(uncertainty.standard()); }
    [[nodiscard]] double degreesOfFreedom() const { return uncertainty.degreesOfFreedom(); }
    /// Half-width of the 95 % interval, and its ends.
    [[nodiscard]] Q giveOrTake() const { return Si<Q>::from(uncertainty.giveOrTake()); }
    [[nodiscard]] Q lowest() const { return Si<Q>::from(number() - uncertainty.giveOrTake()); }
    [[nodiscard]] Q highest() const { return Si<Q>::from(number() + uncertainty.giveOrTake()); }
};

/// A value without doubt: defined, or counted.
template <typename Q>
[[nodiscard]] Estimate<Q> exactly(Q value)
{
    return {value, {}};
}

/// A value with its standard uncertainty; estimates of the same source share one error.
template <typename Q>
[[nodiscard]] Estimate<Q> within(Q value, Q u, SourceId source = ownSource, double degreesOfFreedom = knownExactly)
{
    Estimate<Q> estimate{value, {}};
    if (Si<Q>::of(u) != 0)
        estimate.uncertainty.add({source, {Si<Q>::of(u), 0, 0}, degreesOfFreedom});
    return estimate;
}

/// One input of a formula: what makes it uncertain, and the formula's derivative by it, both in SI.
struct Part {
    const Uncertainty& of;
    double sensitivity;
};

/// Law of propagation to first order (JCGM 100:2008, 5.1.2 and 5.2.2): parts that share a source add with their signs, others
/// in squares. An input stands here once: where a formula holds it twice, its derivative does.
[[nodiscard]] inline Uncertainty propagated(std::initializer_list<Part> parts)
{
    Uncertainty sum;
    for (const Part& part : parts)
        sum.addScaled(part.of, part.sensitivity);
    return sum;
}

/// Puts another to a sum, so many times: what they share of their errors adds straight.
template <typename Q>
void addTo(Estimate<Q>& sum, const Estimate<Q>& part, double factor = 1)
{
    sum.value = Si<Q>::from(sum.number() + factor * part.number());
    sum.uncertainty.addScaled(part.uncertainty, factor);
}

/// Two of a kind together.
template <typename Q>
[[nodiscard]] Estimate<Q> sumOf(Estimate<Q> a, const Estimate<Q>& b)
{
    addTo(a, b);
    return a;
}

/// A like one so many times as large, its error with it.
template <typename Q>
[[nodiscard]] Estimate<Q> times(const Estimate<Q>& a, double factor)
{
    return {Si<Q>::from(a.number() * factor), propagated({{a.uncertainty, factor}})};
}

/// Product of two that are measured apart, in the unit that theirs make.
template <typename A, typename B>
[[nodiscard]] auto productOf(const Estimate<A>& a, const Estimate<B>& b)
{
    return Estimate<decltype(a.value * b.value)>{a.value * b.value, propagated({{a.uncertainty, b.number()}, {b.uncertainty, a.number()}})};
}

/// Quotient of two that are measured apart; the divisor is not 0.
template <typename A, typename B>
[[nodiscard]] auto quotientOf(const Estimate<A>& a, const Estimate<B>& b)
{
    const double by = b.number();
    return Estimate<decltype(a.value / b.value)>{a.value / b.value, propagated({{a.uncertainty, 1 / by}, {b.uncertainty, -a.number() / (by * by)}})};
}
/// Distance over time, both above 0.
[[nodiscard]] inline Estimate<Speed> speedOf(const Estimate<Length>& distance, const Estimate<Seconds>& time)
{
    const double d = distance.number(), t = time.number();
    return {Speed::fromSi(d / t), propagated({{distance.uncertainty, 1 / t}, {time.uncertainty, -d / (t * t)}})};
}

}
