// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/implements/weighing.h"
#include "core/season/kit.h"
#include "core/season/marks.h"

namespace steelyard {

/// Standard uncertainty of a length read by tape; that of bar marks (our choice).
inline constexpr Length uTape = uBarMark;
/// How far a mark may be off what nobody has weighed, to either side, as a share of it (our choice).
inline constexpr double markToleranceShare = 0.02;
/// How far litres that were poured by jug or can, or are printed on a keg, may be off to either side, as a share of them (our choice).
inline constexpr double litreToleranceShare = 0.02;
/// Standard uncertainty of the moisture of wood, in percent of its dry mass (our choice; a meter with pins is not much better).
inline constexpr double uMoisturePercent = 3;

/// Why nobody knows what a thing weighs.
enum class MassGap : std::uint8_t {
    NotMeasured,    ///< on a list, and nothing of it measured yet
    SaidUnknown,    ///< whoever entered it said so
    NotDrained,     ///< water in it is weighed too, and runs
    ReadingMissing, ///< of a scale
    StepMissing,    ///< of the scale
    LeverMissing,   ///< lift point or far contact
    SizeMissing,
    WoodMissing,    ///< specific gravity or moisture
    DensityMissing,
    FillingMissing, ///< what it is filled with
    EmptyMissing,   ///< what it weighs empty
    ContentMissing, ///< litres, or how deep it stands
    DoesNotFit,     ///< the numbers cannot be those of such a thing
};

/// What would settle it.
enum class MassRemedy : std::uint8_t { Measure, WeighIt, DrainAndWeigh, ReadScale, SayStep, TapeLevers, TapeSize, SayWood, SayDensity, SayFilling, WeighEmpty, SayContent, LookAtNumbers };
[[nodiscard]] MassRemedy remedyFor(MassGap gap);

/// What goes into the mass of such a thing; the sources of its uncertainty are told apart by it.
enum class MassInput : std::uint8_t {
    ScaleStep, ScaleError, Mark, LiftPoint, FarContact, EndSpan, FirstInset, SecondInset, SizeLength, Across, SecondAcross, Gravity, Moisture, StuffDensity, Filled, Depth,
};
inline constexpr std::uint64_t sourceCountOfOne = 32;
/// The source of one input, of a thing whose sources begin at `first`. What a step makes uncertain is each reading's own.
[[nodiscard]] constexpr SourceId sourceOf(MassInput input, SourceId first = SourceId{1}) { return SourceId{first.value + static_cast<std::uint64_t>(input)}; }

/// The mass of one thing, or why there is none.
struct ImplementMass {
    std::optional<Estimate<Mass>> mass; ///< just where there is no gap
    std::optional<MassGap> gap;
    std::string what;                   ///< the entry that is missing or does not fit, for the one who has to put it right
    bool byMark = false;                ///< nobody has weighed it
};

/// What one of it weighs, of a pair of handles one handle, of an adjustable bell its lightest setting. Tyre by the mean of its edges;
/// log by frustum and wood or by both ends; stone; keg and bag by what is in them; all of them, and sleds, handles and bells, whole on a
/// scale. A mark counts only for the last three, with `markToleranceShare`. A scale counts with its step and its own error, which all its
/// readings of one thing share. Two things added up get sources of their own: `first` is `sourceCountOfOne` apart.
/// A kind that is none of these is NotMeasured.
[[nodiscard]] ImplementMass implementMass(const Measured& measured, SourceId first = SourceId{1});

/// What an adjustable bell can be set to, the lightest first, each with what its mark may be off; none for a fixed one. Settings that are
/// not above 0 are left out.
[[nodiscard]] std::vector<Estimate<Mass>> bellSettings(const BellMeasurement& bell, SourceId first = SourceId{1});

/// The same mass with all that makes it uncertain under one source: of a thing that was weighed once and counts several times, the step
/// of the scale is no reading's own.
[[nodiscard]] inline Estimate<Mass> weighedOnce(const Estimate<Mass>& mass, SourceId source) { return within(mass.value, mass.u(), source); }

/// What is in her hands at once: of a pair of handles both, which share the error of whatever weighed the one.
[[nodiscard]] Estimate<Mass> heldAtOnce(const Measured& measured, const Estimate<Mass>& one);

/// The scale that a whole thing was read on; nothing without a step.
[[nodiscard]] std::optional<Scale> scaleOf(const WholeMass& whole, SourceId own);

}
