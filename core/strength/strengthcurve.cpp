// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/strengthcurve.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

constexpr Length oneHeight = metres(0.005);

std::optional<Error> faultOf(const IsometricReading& reading, std::size_t index)
{
    const std::string what = "point " + std::to_string(index + 1);
    if (!std::isfinite(reading.height.si()) || !std::isfinite(reading.pull.si()) || !std::isfinite(reading.uScale.si()))
        return Error{Refusal::NotFinite, what};
    if (reading.height <= Height{} || reading.pull <= Force{} || reading.uScale < Force{})
        return Error{Refusal::OutOfRange, what};
    return std::nullopt;
}

using Tries = std::vector<IsometricReading>;

/// By height, lowest first.
std::vector<Tries> byHeight(std::span<const IsometricReading> readings)
{
    Tries sorted(readings.begin(), readings.end());
    std::stable_sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.height < b.height; });
    std::vector<Tries> heights;
    for (const IsometricReading& reading : sorted) {
        if (heights.empty() || reading.height - heights.back().front().height > oneHeight)
            heights.emplace_back();
        heights.back().push_back(reading);
    }
    return heights;
}

StrengthCurve::Point meanOf(const Tries& tries)
{
    StrengthCurve::Point point;
    point.triesCount = static_cast<int>(tries.size());
    for (const IsometricReading& reading : tries) {
        point.height += reading.height / point.triesCount;
        point.pull += reading.pull / point.triesCount;
        point.u = std::max(point.u, reading.uScale);
    }
    return point;
}

MonotoneCurve through(const std::vector<StrengthCurve::Point>& points)
{
    std::vector<double> x, y;
    for (const auto& point : points) {
        x.push_back(point.height.si());
        y.push_back(point.pull.si());
    }
    return *MonotoneCurve::through(x, y);
}

}

Result<StrengthCurve> StrengthCurve::of(std::span<const IsometricReading> readings)
{
    for (std::size_t i = 0; i < readings.size(); ++i)
        if (const auto fault = faultOf(readings[i], i))
            return *fault;
    const auto heights = byHeight(readings);
    if (heights.size() < leastHeightsCount)
        return Error{Refusal::TooFewPoints, "heights"};
    std::vector<Point> points;
    double squares = 0;
    int repeats = 0;
    for (const Tries& tries : heights) {
        points.push_back(meanOf(tries));
        for (const IsometricReading& reading : tries) {
            const double off = (reading.pull - points.back().pull) / points.back().pull;
            squares += off * off;
        }
        repeats += static_cast<int>(tries.size()) - 1;
    }
    constexpr int enoughRepeats = 3;
    const double own = repeats > 0 ? std::sqrt(squares / repeats) : 0;
    const double spread = repeats >= enoughRepeats ? own : std::max(own, usualSpreadRatio);
    for (Point& point : points)
        point.u = newtons(std::hypot(point.u.si(), spread * point.pull.si() / std::sqrt(point.triesCount)));
    StrengthCurve made(points, through(points));
    made.m_spreadRatio = spread;
    made.m_repeatsCount = repeats;
    return made;
}

std::optional<Force> StrengthCurve::at(Height height) const
{
    const auto pull = m_curve.at(height.si());
    return pull ? std::optional(newtons(*pull)) : std::nullopt;
}

std::optional<Force> StrengthCurve::uAt(Height height) const
{
    const auto here = at(height);
    if (!here)
        return std::nullopt;
    double squares = 0;
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        const double moved = (*withMore(i, m_points[i].u).at(height) - *here).si();
        squares += moved * moved;
    }
    return newtons(std::sqrt(squares));
}

StrengthCurve StrengthCurve::withMore(std::size_t pointIndex, Force more) const
{
    StrengthCurve other = *this;
    if (pointIndex < other.m_points.size()) {
        other.m_points[pointIndex].pull += more;
        other.m_curve = through(other.m_points);
    }
    return other;
}

}
