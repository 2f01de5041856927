// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/monotonecurve.h"
#include "core/measure/uncertainty.h"
#include "core/measure/units.h"

#include <optional>
#include <span>

namespace steelyard {

/// One reading of an elastic bench aid or a machine: where it stood, and what it pulled or helped there.
struct PositionPull {
    Length position;
    Force pull;
};

/// A pull known at measured positions and between them (monotone cubic), and nowhere else. Serves the elastic bench
/// aid (help by height above the chest) and the measured machine (pull by travel).
class MeasuredPull {
public:
    /// `readingU` is the standard uncertainty that all readings share (the scale's). Refuses fewer than two points,
    /// equal positions, numbers that are not finite, and a u below 0.
    [[nodiscard]] static Result<MeasuredPull> of(std::span<const PositionPull> points, Force readingU = Force{}, SourceId measurement = ownSource);

    [[nodiscard]] Length first() const { return metres(m_curve.first()); }
    [[nodiscard]] Length last() const { return metres(m_curve.last()); }
    [[nodiscard]] const MonotoneCurve& curve() const { return m_curve; }
    [[nodiscard]] std::optional<Force> at(Length position) const;
    [[nodiscard]] Force readingU() const { return m_readingU; }
    [[nodiscard]] SourceId measurement() const { return m_measurement; }

private:
    explicit MeasuredPull(MonotoneCurve curve) : m_curve(std::move(curve)) {}

    MonotoneCurve m_curve;
    Force m_readingU;
    SourceId m_measurement;
};

/// Torque of a stack on a cam, `M·g0·r`, r the perpendicular distance from the axis to the cable. Source: statics.
[[nodiscard]] constexpr Torque camTorque(Mass stack, Length radius)
{
    return Torque{weight(stack).si() * radius.si()};
}

/// A cam by its measured radius over the angle turned: the torque at an angle, how far the stack rises, the work.
class CamProfile {
public:
    struct Point {
        Angle angle;
        Length radius;
    };
    /// Refuses as MeasuredPull does, and radii below 0.
    [[nodiscard]] static Result<CamProfile> of(std::span<const Point> points);

    [[nodiscard]] std::optional<Torque> torque(Mass stack, Angle at) const;
    /// ∫ r dθ: the stack's rise between two angles.
    [[nodiscard]] std::optional<Length> rise(Angle from, Angle to) const;
    /// M·g0·rise, and the mean torque work/(θ₂−θ₁).
    [[nodiscard]] std::optional<Energy> work(Mass stack, Angle from, Angle to) const;
    [[nodiscard]] std::optional<Torque> meanTorque(Mass stack, Angle from, Angle to) const;

private:
    explicit CamProfile(MonotoneCurve radius) : m_radius(std::move(radius)) {}

    MonotoneCurve m_radius;
};

}
