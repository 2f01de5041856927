// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/bandfit.h"

#include "core/measure/leastsquares.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

constexpr std::size_t coefficientsOf(BandModel model) { return model == BandModel::Line ? 1 : 2; }

std::array<double, 2> basisOf(BandModel model, double stretch)
{
    const double s = stretch - 1;
    switch (model) {
    case BandModel::Line: return {s, 0};
    case BandModel::Quadratic: return {s, s * s};
    case BandModel::Rubber: break;
    }
    return {stretch - 1 / (stretch * stretch), 1 - 1 / (stretch * stretch * stretch)};
}

/// A tape is read to this (our choice), so that a point this near to the curve is no odd one.
constexpr Length tape = metres(0.01);

std::string pointName(std::size_t i) { return "point " + std::to_string(i + 1); }

std::optional<Error> fault(Length rest, std::span<const BandPoint> points)
{
    if (!std::isfinite(rest.si()) || rest.si() <= 0)
        return Error{Refusal::OutOfRange, "rest length"};
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!std::isfinite(points[i].length.si()) || !std::isfinite(points[i].pull.si()))
            return Error{Refusal::NotFinite, pointName(i)};
        if (points[i].length <= rest)
            return Error{Refusal::BelowRest, pointName(i)};
        if (points[i].pull.si() < 0)
            return Error{Refusal::OutOfRange, pointName(i)};
    }
    return std::nullopt;
}

Result<LinearFit> fitPoints(BandModel model, Length rest, std::span<const BandPoint> points)
{
    const std::size_t k = coefficientsOf(model);
    std::vector<double> design, pulls;
    for (const BandPoint& p : points) {
        const auto row = basisOf(model, p.length / rest);
        design.insert(design.end(), row.begin(), row.begin() + static_cast<std::ptrdiff_t>(k));
        pulls.push_back(p.pull.si());
    }
    return fitLinear(design, k, pulls);
}

/// The rising curve that lies closest to the points and has two degrees of freedom left: of this model, or of any.
std::optional<BandFit> closest(std::optional<BandModel> model, Length rest, std::span<const BandPoint> points)
{
    std::optional<BandFit> found;
    for (const BandModel candidate : {BandModel::Line, BandModel::Quadratic, BandModel::Rubber}) {
        if (model && *model != candidate)
            continue;
        const auto fit = BandFit::with(candidate, rest, points);
        if (!fit || fit->degreesOfFreedom() < 2 || !fit->rises())
            continue;
        if (!found || *fit->residualSd() < *found->residualSd())
            found = *fit;
    }
    return found;
}

}

Result<BandFit> BandFit::with(BandModel model, Length rest, std::span<const BandPoint> points)
{
    if (auto wrong = fault(rest, points))
        return *wrong;
    const auto linear = fitPoints(model, rest, points);
    if (!linear)
        return linear.error();

    BandFit fit;
    fit.m_model = model;
    fit.m_rest = rest;
    fit.m_count = coefficientsOf(model);
    fit.m_points = points.size();
    const auto [shortest, longest] = std::minmax_element(points.begin(), points.end(), [](auto& a, auto& b) { return a.length < b.length; });
    fit.m_shortest = shortest->length;
    fit.m_longest = longest->length;
    for (std::size_t i = 0; i < fit.m_count; ++i)
        fit.m_coefficients[i] = newtons(linear->coefficients[i]);

    const double n = static_cast<double>(fit.m_points), parameters = static_cast<double>(fit.m_count + 1);
    const auto most = std::max_element(points.begin(), points.end(), [](auto& a, auto& b) { return a.pull < b.pull; });
    const double nothing = 1e-12 * most->pull.si();
    fit.m_exact = linear->residualSumOfSquares <= n * nothing * nothing;
    if (linear->residualSd) {
        const double sd = *linear->residualSd;
        fit.m_residualSd = newtons(sd);
        const auto& c = linear->unscaledCovariance;
        fit.m_root[0] = sd * std::sqrt(c[0]);
        if (fit.m_count == 2) {
            fit.m_root[1] = fit.m_root[0] > 0 ? sd * sd * c[1] / fit.m_root[0] : 0;
            fit.m_root[2] = std::sqrt(std::max(0.0, sd * sd * c[3] - fit.m_root[1] * fit.m_root[1]));
        }
    }
    if (!fit.m_exact && n - parameters - 1 > 0)
        fit.m_aicc = n * std::log(linear->residualSumOfSquares / n) + 2 * parameters + 2 * parameters * (parameters + 1) / (n - parameters - 1);
    // each model's slope is monotone up to a positive factor, so its ends decide
    fit.m_rises = fit.slope(fit.m_shortest).si() >= 0 && fit.slope(fit.m_longest).si() >= 0;
    return fit;
}

Result<BandFit> BandFit::best(Length rest, std::span<const BandPoint> points)
{
    if (points.size() < 5) {
        auto fit = with(BandModel::Rubber, rest, points);
        if (fit && !fit->rises())
            return Error{Refusal::NoRisingFit, "points"};
        return fit;
    }
    std::optional<BandFit> chosen;
    for (const BandModel model : {BandModel::Line, BandModel::Quadratic, BandModel::Rubber}) {
        auto fit = with(model, rest, points);
        if (!fit)
            return fit.error();
        if (!fit->rises())
            continue;
        const auto better = [](const BandFit& a, const BandFit& b) {
            if (a.m_exact || b.m_exact)
                return a.m_exact && !b.m_exact;
            return a.m_aicc && (!b.m_aicc || *a.m_aicc < *b.m_aicc);
        };
        if (!chosen || better(*fit, *chosen))
            chosen = *fit;
    }
    if (!chosen)
        return Error{Refusal::NoRisingFit, "points"};
    return *chosen;
}

bool BandFit::knows(Length length) const
{
    return length.si() <= knownUpTo().si() * (1 + 1e-12);
}

Force BandFit::pull(Length length) const { return at(length).pull; }
Stiffness BandFit::slope(Length length) const { return at(length).slope; }
std::array<Force, 2> BandFit::pullEffects(Length length) const { return at(length).effects; }

BandPull BandFit::at(Length length) const
{
    if (length < m_rest)
        return {};
    const double stretch = length / m_rest, s = stretch - 1;
    Pair curve{s, 0}, rise{1, 0};
    if (m_model == BandModel::Quadratic) {
        curve[1] = s * s;
        rise[1] = 2 * s;
    } else if (m_model == BandModel::Rubber) {
        const double inverse = 1 / stretch, square = inverse * inverse, cube = square * inverse;
        curve = {stretch - square, 1 - cube};
        rise = {1 + 2 * cube, 3 * cube * inverse};
    }
    const Pair e = effects(curve);
    return {newtons(combine(curve)), newtons(combine(rise)) / m_rest, {newtons(e[0]), newtons(e[1])}};
}

Energy BandFit::work(Length length) const
{
    return length <= m_rest ? Energy{} : newtons(combine(basisIntegral(length / m_rest))) * m_rest;
}

std::array<Energy, 2> BandFit::workEffects(Length length) const
{
    if (length <= m_rest)
        return {};
    const Pair e = effects(basisIntegral(length / m_rest));
    return {newtons(e[0]) * m_rest, newtons(e[1]) * m_rest};
}

Force BandFit::uncertainty(Length length) const
{
    const auto e = pullEffects(length);
    return newtons(std::max(std::hypot(e[0].si(), e[1].si()), leastShareOfPull() * std::abs(pull(length).si())));
}

BandFit::Pair BandFit::basisIntegral(double stretch) const
{
    const double s = stretch - 1;
    switch (m_model) {
    case BandModel::Line: return {s * s / 2, 0};
    case BandModel::Quadratic: return {s * s / 2, s * s * s / 3};
    case BandModel::Rubber: break;
    }
    return {stretch * stretch / 2 + 1 / stretch - 1.5, stretch + 1 / (2 * stretch * stretch) - 1.5};
}

BandFit::Pair BandFit::effects(const Pair& g) const
{
    return {m_root[0] * g[0] + m_root[1] * g[1], m_root[2] * g[1]};
}

double BandFit::combine(const Pair& terms) const
{
    return m_coefficients[0].si() * terms[0] + m_coefficients[1].si() * terms[1];
}

std::optional<OddPoint> oddPoint(std::optional<BandModel> model, Length rest, std::span<const BandPoint> points)
{
    const std::size_t n = points.size();
    if (fault(rest, points))
        return std::nullopt;

    double furthest = 0;
    std::optional<OddPoint> odd;
    for (std::size_t i = 0; i < n; ++i) {
        std::vector<BandPoint> others(points.begin(), points.end());
        others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
        const auto curve = closest(model, rest, others);
        if (!curve)
            continue;
        const auto fit = fitPoints(curve->model(), rest, others);
        if (!fit)
            continue;
        const auto row = basisOf(curve->model(), points[i].length / rest);
        const double off = (points[i].pull - curve->pull(points[i].length)).si();
        const double tapeError = std::abs((curve->slope(points[i].length) * tape).si());
        if (std::abs(off) < tapeError)
            continue;
        const double spread = curve->residualSd()->si() * std::sqrt(1 + fit->leverage({row.data(), coefficientsOf(curve->model())}));
        const boost::math::students_t_distribution<double> t(static_cast<double>(curve->degreesOfFreedom()));
        const double limit = boost::math::quantile(boost::math::complement(t, 0.05 / (2 * static_cast<double>(n))));
        // each point has its own limit, since each leaves another curve behind
        const double beyond = std::abs(off) / (limit * spread);
        if (beyond > 1 && beyond > furthest) {
            furthest = beyond;
            odd = OddPoint{i, newtons(off)};
        }
    }
    return odd;
}

}
