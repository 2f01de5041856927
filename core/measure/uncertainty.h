// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <boost/container/small_vector.hpp>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <limits>

namespace steelyard {

/// Infinite degrees of freedom: the uncertainty is known, not estimated from a few readings.
inline constexpr double knownExactly = std::numeric_limits<double>::infinity();

/// Names what was measured once; parts that share a source share its error.
struct SourceId {
    std::uint64_t value = 0;
    constexpr auto operator<=>(const SourceId&) const = default;
};

/// A source that no other part shares.
inline constexpr SourceId ownSource{0};

/// One source's effect on a result: sensitivity × standard uncertainty, with its sign, in the result's unit.
/// A fit with two coefficients has two independent components; the last component is a judged floor, which is not
/// estimated from the readings and so has no degrees of freedom to lose.
struct Effect {
    static constexpr std::size_t components = 3;
    SourceId source;
    std::array<double, components> amount{};
    double degreesOfFreedom = knownExactly;

    [[nodiscard]] double standard() const;
};

/// The uncertainty of one result, kept by source (JCGM 100:2008, 5.1 and 5.2): effects of the same source add with
/// their signs, component by component; different sources add in quadrature. `ownSource` effects never share.
class Uncertainty {
public:
    using Effects = boost::container::small_vector<Effect, 10>;

    // not here, since g++ 12 warns of Boost's moves wherever it inlines them into another's
    Uncertainty();
    Uncertainty(const Uncertainty&);
    Uncertainty(Uncertainty&&) noexcept;
    Uncertainty& operator=(const Uncertainty&);
    Uncertainty& operator=(Uncertainty&&) noexcept;
    ~Uncertainty();

    void add(const Effect& effect);
    void addScaled(const Uncertainty& other, double factor);
    void clear() { m_effects.clear(); }

    /// Combined standard uncertainty, never negative; 0 when nothing was added.
    [[nodiscard]] double standard() const;
    /// Effective degrees of freedom by Welch–Satterthwaite (JCGM 100:2008, G.4.1); infinite when all sources are.
    [[nodiscard]] double degreesOfFreedom() const;
    /// Half-width of the 95 % interval: t95(ν)·u (JCGM 100:2008, G.3.2).
    [[nodiscard]] double giveOrTake() const;
    [[nodiscard]] const Effects& effects() const { return m_effects; }

private:
    Effects m_effects;
};

/// Two-sided 95 % factor of Student's t; 12.706 for ν = 1, 1.959964 for ν infinite. ν need not be whole.
/// ν ≤ 0 or not a number gives infinity: nothing can be said. Source: Boost.Math, relative error below 1e-14.
[[nodiscard]] double coverageFactor95(double degreesOfFreedom);

/// The same factor for pictures, from a table over 1/ν: within 1e-5 for ν ≥ 1 and some hundred times quicker.
[[nodiscard]] double coverageFactor95ForPictures(double degreesOfFreedom);

/// Standard uncertainty of one scale reading, `√(d²/12 + a²/3)`: d the step, a the stated accuracy as a half-width,
/// both rectangular (JCGM 100:2008, 4.3.7). Any unit, the same for all three.
[[nodiscard]] double scaleReadingUncertainty(double step, double accuracy);

}
