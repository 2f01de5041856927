// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"

#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace steelyard {

/// A smooth curve through points that rises and falls only where they do: piecewise cubic Hermite with the slopes of
/// Fritsch & Butland (SIAM J. Sci. Stat. Comput. 5:300–304, 1984) and shape-keeping three-point slopes at the ends.
/// Exact at the points; between them as smooth as one derivative. Integrals are exact on the pieces.
class MonotoneCurve {
public:
    /// Points in any order. Refuses fewer than two, two with the same x, and numbers that are not finite.
    [[nodiscard]] static Result<MonotoneCurve> through(std::span<const double> x, std::span<const double> y);

    [[nodiscard]] double first() const { return m_x.front(); }
    [[nodiscard]] double last() const { return m_x.back(); }
    [[nodiscard]] const std::vector<double>& knots() const { return m_x; }
    /// Outside the points nothing is known.
    [[nodiscard]] std::optional<double> at(double x) const;
    [[nodiscard]] std::optional<double> slopeAt(double x) const;
    /// Integral from a to b (negative when b < a); unknown when either lies outside the points.
    [[nodiscard]] std::optional<double> integral(double a, double b) const;

private:
    [[nodiscard]] std::size_t pieceOf(double x) const;
    [[nodiscard]] bool covers(double x) const { return x >= first() && x <= last(); }
    [[nodiscard]] double integralWithin(std::size_t i, double to) const;

    std::vector<double> m_x, m_y, m_slope, m_cumulated;
};

}
