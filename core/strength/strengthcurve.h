// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/monotonecurve.h"
#include "core/measure/units.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// One isometric pull: the greatest that she pulled or pushed on a bar that could not move, with the bar at this height.
struct IsometricReading {
    Height height;
    Force pull;   ///< on the bar, its own weight among it
    Force uScale; ///< standard uncertainty of what showed it
};

/// How far one pull is off another of the same day at the same height, as a share of the pull, where too few were repeated to tell
/// from her own (our choice).
inline constexpr double usualSpreadRatio = 0.05;

/// What she can hold at each height of a lift, from her own isometric pulls: monotone cubic (Fritsch & Butland 1984) through the means
/// at each height, and nothing known above the highest or below the lowest. Never a curve out of a book.
/// Standard uncertainty of the mean of n pulls at a height: √(scale² + spread²/n), the spread pooled over the heights that were pulled at
/// again, at least `usualSpreadRatio` while fewer than three pulls were repeats; between heights it is carried by how much the curve
/// there moves with each of them (JCGM 100:2008, 5.1.3).
class StrengthCurve {
public:
    /// One height with the mean of what was pulled there.
    struct Point {
        Height height;
        Force pull, u;
        int triesCount = 1;
    };
    static constexpr std::size_t leastHeightsCount = 3;

    /// Pulls within half a centimetre of each other are at one height. Refuses fewer than three heights, a pull or a height that is not
    /// above nothing, an uncertainty below it, and numbers that are not finite.
    [[nodiscard]] static Result<StrengthCurve> of(std::span<const IsometricReading> readings);

    [[nodiscard]] const std::vector<Point>& points() const { return m_points; }
    [[nodiscard]] Height lowest() const { return m_points.front().height; }
    [[nodiscard]] Height highest() const { return m_points.back().height; }
    /// Standard deviation of one pull at one height, as a share of it, and from how many repeats.
    [[nodiscard]] double spreadRatio() const { return m_spreadRatio; }
    [[nodiscard]] int repeatsCount() const { return m_repeatsCount; }
    /// Unknown outside the heights.
    [[nodiscard]] std::optional<Force> at(Height height) const;
    [[nodiscard]] std::optional<Force> uAt(Height height) const;
    /// What the curve is at a height where the pull at one point is so much more.
    [[nodiscard]] StrengthCurve withMore(std::size_t pointIndex, Force more) const;

private:
    StrengthCurve(std::vector<Point> points, MonotoneCurve curve) : m_points(std::move(points)), m_curve(std::move(curve)) {}

    std::vector<Point> m_points;
    MonotoneCurve m_curve;
    double m_spreadRatio = usualSpreadRatio;
    int m_repeatsCount = 0;
};

}
