// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/plates.h"
#include "core/measure/entered.h"
#include "core/season/settings.h"
#include "core/work/numberentry.h"

#include <string_view>

namespace steelyard {

/// What a number of a form is: it decides the unit that it is keyed and shown in.
enum class NumberKind : std::uint8_t {
    Unitless, ///< without a unit
    InMass,   ///< kg or lb
    InLength, ///< cm or in
    InWire,   ///< wires: mm, and in where others are in
};

/// The unit that numbers of a kind are keyed and shown in; kilograms for one without.
[[nodiscard]] Unit unitFor(NumberKind kind, const VaultSettings& settings);

/// How many of the unit a quantity is. 1 lb = 0.45359237 kg and 1 in = 2.54 cm, both exact
/// (international yard and pound agreement, 1959). A unit of another dimension gives not a number.
[[nodiscard]] double ratioIn(Mass mass, Unit unit);
[[nodiscard]] double ratioIn(Length length, Unit unit);

/// A quantity as keyed, to the whole mg or µm, with its digits and unit; nothing for what is no number or a unit of another dimension.
[[nodiscard]] std::optional<Entered<Mass>> massTyped(std::string_view decimal, Unit unit);
[[nodiscard]] std::optional<Entered<Length>> lengthTyped(std::string_view decimal, Unit unit);

/// The same quantity the other way, with its digits.
[[nodiscard]] Entered<Length> opposite(const Entered<Length>& length);
[[nodiscard]] Entered<Mass> opposite(const Entered<Mass>& mass);

/// Limits given in kg, cm or mm, in the unit that is keyed in: the ends move inwards to the last decimal that can be keyed, so that
/// nothing beyond the given ones gets in. Inches take the decimals of a tape: eighths, and sixteenths for wires (our choice).
[[nodiscard]] EntryLimits limitsIn(const EntryLimits& metric, NumberKind kind, const VaultSettings& settings);

/// The load that a keyed number means; none where no plates make it. A load that the unit has no short figure for, as 60 kg of plates
/// in pounds, is meant by its rounding to the decimals keyed, one at least; any other only by its own figure, to a ten-thousandth.
[[nodiscard]] const PlateLoad* loadMeant(const PlateLoads& loads, const Entered<Mass>& keyed);

/// The load that hangs, typed as it was asked for where that meant it.
[[nodiscard]] Entered<Mass> loadAsAskedFor(const Entered<Mass>& wanted, const PlateLoad& load);

/// Whether a figure with two decimals says how many of the unit it is, to a ten-thousandth.
[[nodiscard]] bool isShort(double ratio);

}
