// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/leastsquares.h"

#include <boost/multiprecision/cpp_bin_float.hpp>
#include <boost/multiprecision/eigen.hpp>

#include <Eigen/QR>

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

using Real = boost::multiprecision::number<boost::multiprecision::cpp_bin_float_quad::backend_type, boost::multiprecision::et_off>;
using Matrix = Eigen::Matrix<Real, Eigen::Dynamic, Eigen::Dynamic>;
using Vector = Eigen::Matrix<Real, Eigen::Dynamic, 1>;

bool allFinite(std::span<const double> values)
{
    return std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); });
}

}

std::optional<std::vector<double>> LinearFit::standardErrors() const
{
    if (!residualSd)
        return std::nullopt;
    const std::size_t k = coefficients.size();
    std::vector<double> out(k);
    for (std::size_t i = 0; i < k; ++i)
        out[i] = *residualSd * std::sqrt(unscaledCovariance[i * k + i]);
    return out;
}

double LinearFit::leverage(std::span<const double> row) const
{
    const std::size_t k = coefficients.size();
    double sum = 0;
    for (std::size_t i = 0; i < k; ++i)
        for (std::size_t j = 0; j < k; ++j)
            sum += row[i] * unscaledCovariance[i * k + j] * row[j];
    return std::max(0.0, sum);
}

std::optional<double> LinearFit::standardError(std::span<const double> row) const
{
    if (!residualSd)
        return std::nullopt;
    return *residualSd * std::sqrt(leverage(row));
}

Result<LinearFit> fitLinear(std::span<const double> design, std::size_t columns, std::span<const double> y)
{
    const std::size_t n = y.size();
    if (columns == 0 || design.size() != n * columns)
        return Error{Refusal::OutOfRange, "points"};
    if (!allFinite(design) || !allFinite(y))
        return Error{Refusal::NotFinite, "points"};
    if (n < columns)
        return Error{Refusal::TooFewPoints, "points"};

    const auto rows = static_cast<Eigen::Index>(n);
    const auto cols = static_cast<Eigen::Index>(columns);
    Matrix x(rows, cols);
    Vector right(rows), scale(cols);
    for (Eigen::Index i = 0; i < rows; ++i) {
        right(i) = Real(y[static_cast<std::size_t>(i)]);
        for (Eigen::Index j = 0; j < cols; ++j)
            x(i, j) = Real(design[static_cast<std::size_t>(i * cols + j)]);
    }
    for (Eigen::Index j = 0; j < cols; ++j) {
        scale(j) = x.col(j).norm();
        if (scale(j) == 0)
            return Error{Refusal::PointsNotApart, "points"};
        x.col(j) /= scale(j);
    }
    const Eigen::HouseholderQR<Matrix> qr(x);
    const Matrix r = qr.matrixQR().topRows(cols).triangularView<Eigen::Upper>();
    for (Eigen::Index j = 0; j < cols; ++j)
        if (boost::multiprecision::abs(r(j, j)) < Real(1e-12))
            return Error{Refusal::PointsNotApart, "points"};

    const Vector rotated = qr.householderQ().adjoint() * right;
    const Vector solution = r.triangularView<Eigen::Upper>().solve(Vector(rotated.head(cols)));
    const Matrix inverse = r.triangularView<Eigen::Upper>().solve(Matrix(Matrix::Identity(cols, cols)));
    const Matrix covariance = inverse * inverse.transpose();

    LinearFit fit;
    fit.points = n;
    for (Eigen::Index j = 0; j < cols; ++j)
        fit.coefficients.push_back(static_cast<double>(Real(solution(j) / scale(j))));
    for (Eigen::Index i = 0; i < cols; ++i)
        for (Eigen::Index j = 0; j < cols; ++j)
            fit.unscaledCovariance.push_back(static_cast<double>(Real(covariance(i, j) / (scale(i) * scale(j)))));
    Real squares = 0;
    const Vector residual = right - x * solution;
    for (Eigen::Index i = 0; i < rows; ++i)
        squares += residual(i) * residual(i);
    fit.residualSumOfSquares = static_cast<double>(squares);
    if (n > columns)
        fit.residualSd = std::sqrt(fit.residualSumOfSquares / static_cast<double>(n - columns));
    return fit;
}

Result<PolynomialFit> PolynomialFit::of(std::span<const double> x, std::span<const double> y, int degree, bool throughOrigin)
{
    if (degree < 1 || degree > 5)
        return Error{Refusal::OutOfRange, "degree"};
    if (x.size() != y.size())
        return Error{Refusal::OutOfRange, "y"};
    PolynomialFit out;
    out.m_throughOrigin = throughOrigin;
    out.m_fit.coefficients.resize(static_cast<std::size_t>(degree) + (throughOrigin ? 0 : 1));
    const std::size_t columns = out.m_fit.coefficients.size();
    std::vector<double> design;
    design.reserve(x.size() * columns);
    for (const double at : x) {
        const auto r = out.row(at);
        design.insert(design.end(), r.begin(), r.end());
    }
    auto fit = fitLinear(design, columns, y);
    if (!fit)
        return fit.error();
    out.m_fit = std::move(*fit);
    return out;
}

double PolynomialFit::at(double x) const
{
    double value = 0;
    for (std::size_t i = m_fit.coefficients.size(); i-- > 0;)
        value = value * x + m_fit.coefficients[i];
    return m_throughOrigin ? value * x : value;
}

std::optional<double> PolynomialFit::standardErrorAt(double x) const
{
    return m_fit.standardError(row(x));
}

std::vector<double> PolynomialFit::row(double x) const
{
    std::vector<double> r(m_fit.coefficients.size());
    double power = m_throughOrigin ? x : 1;
    for (double& v : r) {
        v = power;
        power *= x;
    }
    return r;
}

}
