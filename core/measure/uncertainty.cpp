// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/uncertainty.h"

#include "core/measure/boostpolicy.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <vector>

namespace steelyard {

namespace {

constexpr double normal975 = 1.9599639845400542355;

}

double Effect::standard() const
{
    double squares = 0;
    for (const double a : amount)
        squares += a * a;
    return std::sqrt(squares);
}

Uncertainty::Uncertainty() = default;
Uncertainty::Uncertainty(const Uncertainty&) = default;
Uncertainty::Uncertainty(Uncertainty&&) noexcept = default;
Uncertainty& Uncertainty::operator=(const Uncertainty&) = default;
Uncertainty& Uncertainty::operator=(Uncertainty&&) noexcept = default;
Uncertainty::~Uncertainty() = default;

void Uncertainty::add(const Effect& effect)
{
    if (effect.source != ownSource) {
        const auto same = std::find_if(m_effects.begin(), m_effects.end(),
                                       [&](const Effect& e) { return e.source == effect.source; });
        if (same != m_effects.end()) {
            for (std::size_t i = 0; i < Effect::components; ++i)
                same->amount[i] += effect.amount[i];
            same->degreesOfFreedom = std::min(same->degreesOfFreedom, effect.degreesOfFreedom);
            return;
        }
    }
    m_effects.push_back(effect);
}

void Uncertainty::addScaled(const Uncertainty& other, double factor)
{
    for (Effect effect : other.m_effects) {
        for (double& a : effect.amount)
            a *= factor;
        add(effect);
    }
}

double Uncertainty::standard() const
{
    double squares = 0;
    for (const Effect& effect : m_effects)
        for (const double a : effect.amount)
            squares += a * a;
    return std::sqrt(squares);
}

double Uncertainty::degreesOfFreedom() const
{
    double all = 0, sum = 0;
    for (const Effect& effect : m_effects) {
        const auto& [first, second, floor] = effect.amount;
        // the last component is a judged floor, not an estimate from readings
        const double estimated = first * first + second * second;
        all += estimated + floor * floor;
        sum += estimated * estimated / effect.degreesOfFreedom;
    }
    return sum > 0 ? all * all / sum : knownExactly;
}

double Uncertainty::giveOrTake() const
{
    const double u = standard();
    return u > 0 ? coverageFactor95(degreesOfFreedom()) * u : 0;
}

double coverageFactor95(double degreesOfFreedom)
{
    if (!(degreesOfFreedom > 0))
        return std::numeric_limits<double>::infinity();
    // past this the last digit is the normal distribution's: the difference is 2.37/ν
    if (degreesOfFreedom > 1e16)
        return normal975;
    const boost::math::students_t_distribution<double, QuietPolicy> t(degreesOfFreedom);
    return boost::math::quantile(t, 0.975);
}

double coverageFactor95ForPictures(double degreesOfFreedom)
{
    // between ν = 1 and infinity the factor is smooth in 1/ν; 1,024 equal steps keep straight lines within 1e-5
    constexpr std::size_t steps = 1024;
    static const std::vector<double> table = [] {
        std::vector<double> t;
        for (std::size_t i = 0; i <= steps; ++i)
            t.push_back(coverageFactor95(i == 0 ? knownExactly : static_cast<double>(steps) / static_cast<double>(i)));
        return t;
    }();
    if (!(degreesOfFreedom >= 1))
        return coverageFactor95(degreesOfFreedom);
    const double at = static_cast<double>(steps) / degreesOfFreedom;
    const auto below = std::min(static_cast<std::size_t>(at), steps - 1);
    const double share = at - static_cast<double>(below);
    return table[below] * (1 - share) + table[below + 1] * share;
}

double scaleReadingUncertainty(double step, double accuracy)
{
    return std::sqrt(step * step / 12 + accuracy * accuracy / 3);
}

}
