// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"

#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// A straight (linear in its coefficients) least-squares fit.
struct LinearFit {
    std::vector<double> coefficients;
    /// (XᵀX)⁻¹, row by row; times residualSd² it is the covariance of the coefficients.
    std::vector<double> unscaledCovariance;
    double residualSumOfSquares = 0;
    /// Residual standard deviation; unknown when there are as many coefficients as points.
    std::optional<double> residualSd;
    std::size_t points = 0;

    [[nodiscard]] std::size_t degreesOfFreedom() const { return points - coefficients.size(); }
    /// Standard errors of the coefficients; unknown with the residual SD.
    [[nodiscard]] std::optional<std::vector<double>> standardErrors() const;
    /// Leverage of a row of the design, gᵀ(XᵀX)⁻¹g.
    [[nodiscard]] double leverage(std::span<const double> row) const;
    /// Standard uncertainty of the fitted mean for a row of the design; unknown with the residual SD.
    [[nodiscard]] std::optional<double> standardError(std::span<const double> row) const;
};

/// Least squares by Householder QR with scaled columns, worked in 113-bit arithmetic, so that the result is the
/// correctly rounded one on every machine for any sensible design. `design` is row by row, `columns` wide.
/// Refuses too few points, numbers that are not finite, and columns that do not differ.
/// Checked against the NIST Statistical Reference Datasets to a relative 1e-9.
[[nodiscard]] Result<LinearFit> fitLinear(std::span<const double> design, std::size_t columns, std::span<const double> y);

/// A polynomial of degree 1 to 5, optionally through the origin (then its coefficients start at the first power).
class PolynomialFit {
public:
    /// Refuses a degree outside 1–5, lists of unequal length, too few points, or too few different x.
    [[nodiscard]] static Result<PolynomialFit> of(std::span<const double> x, std::span<const double> y, int degree, bool throughOrigin);

    [[nodiscard]] const LinearFit& fit() const { return m_fit; }
    [[nodiscard]] double at(double x) const;
    /// Standard uncertainty of the fitted mean at x; unknown when no point is left over.
    [[nodiscard]] std::optional<double> standardErrorAt(double x) const;

private:
    [[nodiscard]] std::vector<double> row(double x) const;

    LinearFit m_fit;
    bool m_throughOrigin = false;
};

}
