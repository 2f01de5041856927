// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/monotonecurve.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace steelyard {

namespace {

double endSlope(double h0, double h1, double d0, double d1)
{
    const double slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    if (slope * d0 <= 0)
        return 0;
    if (d0 * d1 <= 0 && std::abs(slope) > 3 * std::abs(d0))
        return 3 * d0;
    return slope;
}

double innerSlope(double h0, double h1, double d0, double d1)
{
    if (d0 * d1 <= 0)
        return 0;
    const double w0 = 2 * h1 + h0, w1 = h1 + 2 * h0;
    return (w0 + w1) / (w0 / d0 + w1 / d1);
}

}

Result<MonotoneCurve> MonotoneCurve::through(std::span<const double> x, std::span<const double> y)
{
    if (x.size() != y.size())
        return Error{Refusal::OutOfRange, "y"};
    if (x.size() < 2)
        return Error{Refusal::TooFewPoints, "points"};
    for (std::size_t i = 0; i < x.size(); ++i)
        if (!std::isfinite(x[i]) || !std::isfinite(y[i]))
            return Error{Refusal::NotFinite, "points"};

    std::vector<std::size_t> order(x.size());
    std::iota(order.begin(), order.end(), 0u);
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return x[a] < x[b]; });
    MonotoneCurve curve;
    for (const std::size_t i : order) {
        if (!curve.m_x.empty() && x[i] == curve.m_x.back())
            return Error{Refusal::PointsNotApart, "points"};
        curve.m_x.push_back(x[i]);
        curve.m_y.push_back(y[i]);
    }

    const std::size_t n = curve.m_x.size();
    std::vector<double> h(n - 1), d(n - 1);
    for (std::size_t i = 0; i + 1 < n; ++i) {
        h[i] = curve.m_x[i + 1] - curve.m_x[i];
        d[i] = (curve.m_y[i + 1] - curve.m_y[i]) / h[i];
    }
    curve.m_slope.assign(n, d[0]);
    if (n > 2) {
        curve.m_slope.front() = endSlope(h[0], h[1], d[0], d[1]);
        curve.m_slope.back() = endSlope(h[n - 2], h[n - 3], d[n - 2], d[n - 3]);
        for (std::size_t i = 1; i + 1 < n; ++i)
            curve.m_slope[i] = innerSlope(h[i - 1], h[i], d[i - 1], d[i]);
    }
    curve.m_cumulated.assign(n, 0);
    for (std::size_t i = 0; i + 1 < n; ++i)
        curve.m_cumulated[i + 1] = curve.m_cumulated[i] + curve.integralWithin(i, curve.m_x[i + 1]);
    return curve;
}

std::optional<double> MonotoneCurve::at(double x) const
{
    if (!covers(x))
        return std::nullopt;
    const std::size_t i = pieceOf(x);
    const double h = m_x[i + 1] - m_x[i], t = (x - m_x[i]) / h, s = 1 - t;
    return m_y[i] * (1 + 2 * t) * s * s + m_slope[i] * h * t * s * s + m_y[i + 1] * t * t * (3 - 2 * t) - m_slope[i + 1] * h * t * t * s;
}

std::optional<double> MonotoneCurve::slopeAt(double x) const
{
    if (!covers(x))
        return std::nullopt;
    const std::size_t i = pieceOf(x);
    const double h = m_x[i + 1] - m_x[i], t = (x - m_x[i]) / h;
    const double rise = (m_y[i + 1] - m_y[i]) / h;
    return rise * 6 * t * (1 - t) + m_slope[i] * (1 - t) * (1 - 3 * t) + m_slope[i + 1] * t * (3 * t - 2);
}

std::optional<double> MonotoneCurve::integral(double a, double b) const
{
    if (!covers(a) || !covers(b))
        return std::nullopt;
    const std::size_t i = pieceOf(a), j = pieceOf(b);
    // as the difference of two areas, so that turning it round changes the sign alone
    return (m_cumulated[j] + integralWithin(j, b)) - (m_cumulated[i] + integralWithin(i, a));
}

std::size_t MonotoneCurve::pieceOf(double x) const
{
    const auto after = std::upper_bound(m_x.begin(), m_x.end(), x) - m_x.begin();
    return std::min(static_cast<std::size_t>(std::max<std::ptrdiff_t>(after, 1)) - 1, m_x.size() - 2);
}

double MonotoneCurve::integralWithin(std::size_t i, double to) const
{
    const double h = m_x[i + 1] - m_x[i], t = (to - m_x[i]) / h;
    const double t2 = t * t, t3 = t2 * t, t4 = t3 * t;
    return h * (m_y[i] * (t4 / 2 - t3 + t) + m_y[i + 1] * (t3 - t4 / 2) + m_slope[i] * h * (t4 / 4 - 2 * t3 / 3 + t2 / 2)
                + m_slope[i + 1] * h * (t4 / 4 - t3 / 3));
}

}
