// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/setup.h"

namespace steelyard {

/// Everything that pulls on one bar, summed: the ground that readings, warnings and the drawn curve stand on.
class PullSum {
public:
    explicit PullSum(const Setup& setup);

    [[nodiscard]] bool knows(Height h) const;
    [[nodiscard]] Force total(Height h) const;
    [[nodiscard]] Force ofSide(Side side, Height h) const;
    [[nodiscard]] Stiffness slope(Height h) const;
    /// The steeper of the slopes just below and just above.
    [[nodiscard]] Stiffness steepest(Height h) const;
    [[nodiscard]] Force mean(Height from, Height to) const;
    [[nodiscard]] Mass movingMass(Height h) const;
    [[nodiscard]] Force alongFloor(Height h) const;
    [[nodiscard]] CurveSample sample(Height h) const;

    [[nodiscard]] Uncertainty uncertaintyAt(Height h) const;
    [[nodiscard]] Uncertainty meanUncertainty(Height from, Height to) const;
    [[nodiscard]] Reading at(Height h) const;
    [[nodiscard]] Reading meanReading(Height from, Height to) const;

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

    const Setup& m_setup;
    Force m_iron;
    std::vector<Height> m_kinks;
};

/// Warnings of a set-up over its path, in the order of their codes.
[[nodiscard]] std::vector<SetupWarning> setupWarnings(const Setup& setup, const PullSum& sum);

}
