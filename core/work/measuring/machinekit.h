// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/machine.h"
#include "core/season/kit.h"

#include <numbers>
#include <optional>
#include <vector>

namespace steelyard {

/// From the axis square to the cable, by ruler, to 2 mm; the angle to a degree; how far the handle came to a centimetre (our choices).
inline constexpr Length uCamRadius = metres(0.002), uTravel = metres(0.01);
inline constexpr Angle uCamAngle = oneDegree;
/// The stack's plates that nobody weighed: 2 % either way, rectangular (our choice).
inline constexpr double uStackShare = 0.02 / std::numbers::sqrt3;

/// The cam that was read by its radius. Refuses what `measured` does of the readings.
[[nodiscard]] Result<CamProfile> camFrom(const MachineMeasurement& measurement);
/// What the machine pulls by travel, read on a scale of its step with its stack on. Refuses a missing step besides.
[[nodiscard]] Result<MeasuredPull> machinePullFrom(const MachineMeasurement& measurement);

/// The readings that have both their numbers, by their index in the list, in the order of angle or travel.
[[nodiscard]] std::vector<std::size_t> machineReadingsThatCount(const MachineMeasurement& measurement);

/// A turning moment with its standard uncertainty.
struct TorqueReading {
    Torque value, u;
};
/// `M·g0·r` at an angle: u of radius, angle and stack in squares (JCGM 100:2008, 5.1.2). Nothing outside the readings.
[[nodiscard]] std::optional<TorqueReading> torqueAt(const CamProfile& cam, Mass stack, Angle at);

/// What a machine comes to with its stack over all of the way that was read. Friction is left out.
struct MachineAnswer {
    std::optional<TorqueReading> meanTorque, greatestTorque; ///< by radius
    Angle greatestAngle;
    std::optional<Force> meanPull, uMeanPull, greatestPull, uGreatestPull; ///< by pull
    Length greatestTravel;
    Energy work, uWork;
    Length rise;                             ///< of the stack, by radius
};

/// The greatest is one of the readings, as the curve rises and falls only where they do. Mean and work over the way, their ends each as uncertain as the angle or the travel: `√((M−Fa)²+(Fb−M)²)/(b−a)·u` for the mean, as for
/// the mean between bar marks, `√(Fa²+Fb²)·u` for the work. Refuses fewer than two readings ("angles" or "travels"), two at one place,
/// numbers below 0 or not finite, and a missing stack; the refusal names the reading, counted from 1.
[[nodiscard]] Result<MachineAnswer> answerOf(const MachineMeasurement& measurement);

/// Where to read a machine next: an angle or a travel, as it is read.
struct MachineAdvice {
    std::optional<Angle> angle;
    std::optional<Length> travel;
};

/// So many readings make a curve, and more are not asked for (our choice).
inline constexpr std::size_t fewestMachineReadingCount = 5, mostMachineReadingCount = 12;

/// The middle of the widest gap while it is more than a quarter of the way, or there are fewer than five readings. Nothing before the first
/// two, which say how far the way goes, and with `mostMachineReadingCount`.
[[nodiscard]] std::optional<MachineAdvice> nextMachineReading(const MachineMeasurement& measurement);

}
