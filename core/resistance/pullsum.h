// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/setup.h"

namespace steelyard {

/// What pulls at one height, side by side.
struct BothSides {
    Force iron, left, right;
    Force alongFloor;
    Stiffness slope;

    [[nodiscard]] Force difference() const { return left > right ? left - right : right - left; }
    /// Of the whole pull, iron among it, whichever way it goes.
    [[nodiscard]] Force size() const
    {
        const Force total = iron + left + right;
        return total < Force{} ? -total : total;
    }
};

/// Everything that pulls on one bar, summed: the ground that readings, warnings and the drawn curve stand on.
class PullSum {
public:
    explicit PullSum(const Setup& setup);

    [[nodiscard]] bool knows(Height h) const;
    [[nodiscard]] Force total(Height h) const;
    [[nodiscard]] BothSides sides(Height h) const;
    [[nodiscard]] Stiffness slope(Height h) const;
    /// The steeper of the slopes just below and just above.
    [[nodiscard]] Stiffness steepest(Height h) const;
    [[nodiscard]] Force mean(Height from, Height to) const;
    [[nodiscard]] Mass movingMass(Height h) const;
    [[nodiscard]] CurveSample sample(Height h) const;

    [[nodiscard]] Reading at(Height h) const;
    [[nodiscard]] Reading meanReading(Height from, Height to) const;
    /// Give-or-take, at 95 %, of the mean of the two ends and of the work between them: a shared measurement counts at both ends with its
    /// sign, each mark for itself; from the marks √(ka² + kb²)/2·u with k the slope at each, of the work √(Fa² + Fb²)·u.
    [[nodiscard]] Force endsGiveOrTake(Height from, Height to) const;
    [[nodiscard]] Energy workGiveOrTake(Height from, Height to) const;

    /// Corners strictly between two heights, in order, each once.
    [[nodiscard]] std::vector<Height> kinksBetween(Height from, Height to) const;
    /// The part of the path, from the bottom up, over which all is known.
    [[nodiscard]] bool knowsAll(Height from, Height to) const;

private:
    template <typename F>
    void each(const F& f) const
    {
        for (const HungItem& item : m_setup.left)
            f(item);
        for (const HungItem& item : m_setup.right)
            f(item);
    }

    /// Of a mean over height, of everything but the marks.
    [[nodiscard]] Uncertainty meanWithoutMarks(Height from, Height to) const;

    struct AtHeight;
    [[nodiscard]] AtHeight lookedAt(Height h) const;
    [[nodiscard]] bool atKink(Height h) const;
    void numberSources();

    /// A source of error, or one that no item shares: the place where its effects add up.
    struct Source {
        SourceId id;
        double degreesOfFreedom = knownExactly;
    };

    const Setup& m_setup;
    Force m_iron;
    std::vector<Height> m_kinks;
    std::vector<Source> m_sources;
    std::vector<std::size_t> m_sourceOf; ///< for each item, left before right
};

/// Why a set-up cannot be worked out at all; nothing where it can.
[[nodiscard]] std::optional<Error> setupFault(const Setup& setup);

/// Warnings of a set-up over its path, in the order of their codes.
[[nodiscard]] std::vector<SetupWarning> setupWarnings(const Setup& setup, const PullSum& sum);

}
