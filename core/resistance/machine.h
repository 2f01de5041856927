// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/monotonecurve.h"
#include "core/measure/uncertainty.h"
#include "core/measure/units.h"

#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// One reading of an elastic bench aid or a machine: where it stood, and what it pulled or helped there.
struct PositionPull {
    Length position;
    Force pull;
};

/// What makes a measured pull uncertain, as standard uncertainties. Each part is one error that all readings of a measurement share.
struct PullDoubt {
    Force scale{};        ///< of what showed the pull, the same at every reading
    double massShare = 0; ///< of the known masses, as a share of the pull: one set of plates is off one way
    Length place{};       ///< of the tape that said where it stood: the slope makes a pull of it
};

/// A pull known at measured positions and between them (monotone cubic), and nowhere else. Serves the elastic bench
/// aid (help by height above the chest) and the measured machine (pull by travel).
class MeasuredPull {
public:
    /// Refuses fewer than two points, equal positions, numbers that are not finite, and a doubt below 0.
    [[nodiscard]] static Result<MeasuredPull> of(std::span<const PositionPull> points, const PullDoubt& doubt = {}, SourceId measurement = ownSource);

    /// The same, and known to pull nothing from its last point on, this far: with a corner there, where it goes slack.
    [[nodiscard]] MeasuredPull slackPast(Length stretch) const;

    [[nodiscard]] Length first() const { return metres(m_curve.first()); }
    /// Of what is known, slack among it.
    [[nodiscard]] Length last() const { return metres(m_curve.last()) + m_slack; }
    /// Where the curve has its points, and where knowledge ends.
    [[nodiscard]] std::vector<Length> knots() const;
    [[nodiscard]] std::optional<Force> at(Length position) const;
    [[nodiscard]] std::optional<Stiffness> slopeAt(Length position) const;
    /// Standard uncertainty there: the three doubts in squares (JCGM 100:2008, 5.1.2), the tape's by the slope.
    [[nodiscard]] std::optional<Force> uncertaintyAt(Length position) const;
    /// Exact mean between two positions, the first below the second.
    [[nodiscard]] std::optional<Force> mean(Length from, Length to) const;
    [[nodiscard]] const PullDoubt& doubt() const { return m_doubt; }
    [[nodiscard]] SourceId measurement() const { return m_measurement; }

private:
    explicit MeasuredPull(MonotoneCurve curve) : m_curve(std::move(curve)) {}

    MonotoneCurve m_curve;
    Length m_slack;
    PullDoubt m_doubt;
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
    /// Standard uncertainties that all points share: of the radius, and of where the angle was counted from.
    struct Doubt {
        Length radius;
        Angle angle;
    };
    /// Refuses as MeasuredPull does, and radii below 0.
    [[nodiscard]] static Result<CamProfile> of(std::span<const Point> points, const Doubt& doubt = {});

    [[nodiscard]] Angle first() const { return Angle{m_radius.first()}; }
    [[nodiscard]] Angle last() const { return Angle{m_radius.last()}; }
    [[nodiscard]] const Doubt& doubt() const { return m_doubt; }
    [[nodiscard]] std::optional<Length> radius(Angle at) const;
    /// Standard uncertainty of the radius there, the angle's part by the slope.
    [[nodiscard]] std::optional<Length> uncertaintyAt(Angle at) const;
    [[nodiscard]] std::optional<Torque> torque(Mass stack, Angle at) const;
    /// ∫ r dθ: the stack's rise between two angles.
    [[nodiscard]] std::optional<Length> rise(Angle from, Angle to) const;
    /// M·g0·rise, and the mean torque work/(θ₂−θ₁).
    [[nodiscard]] std::optional<Energy> work(Mass stack, Angle from, Angle to) const;
    [[nodiscard]] std::optional<Torque> meanTorque(Mass stack, Angle from, Angle to) const;

private:
    explicit CamProfile(MonotoneCurve radius) : m_radius(std::move(radius)) {}

    MonotoneCurve m_radius;
    Doubt m_doubt;
};

}
