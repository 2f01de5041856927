// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/unit.h"
#include "core/measure/units.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace steelyard::journal {

using steelyard::Unit;

/// What a unit measures.
enum class Dimension : std::uint8_t { Mass, Length, Duration, Force, Volume };

/// Nothing for a number that is no unit here.
[[nodiscard]] std::optional<Unit> unitOf(std::uint64_t unitNumber);
[[nodiscard]] Dimension dimensionOf(Unit unit);

/// A quantity as it was typed, and what that comes to in a whole number of mg, µm, ms, mN or mL.
struct Typed {
    std::int64_t baseNumber = 0;
    std::string decimal; ///< "82.5" or "82,5", as typed
    Unit unit = Unit::Kilogram;

    bool operator==(const Typed&) const = default;
};

/// Exact but for rounding to the whole base unit, half away from zero: 1 lb = 453,592.37 mg and 1 in = 25,400 µm (international
/// yard and pound agreement, 1959). Digits with at most one point or comma among or behind them and a sign before, at most 18 digits;
/// nothing for any other text, or past 2^63 base units.
[[nodiscard]] std::optional<Typed> typed(std::string_view decimal, Unit unit);

/// A quantity that nobody typed, to the base unit, with the fewest decimals (a point among them) that come to the same.
/// Nothing where it is not finite, past the range, or of another dimension than the unit.
[[nodiscard]] std::optional<Typed> typed(Mass mass, Unit unit);
[[nodiscard]] std::optional<Typed> typed(Length length, Unit unit);
[[nodiscard]] std::optional<Typed> typed(Force force, Unit unit);
[[nodiscard]] std::optional<Typed> typed(std::chrono::milliseconds duration, Unit unit);
[[nodiscard]] std::optional<Typed> typed(Volume volume, Unit unit);

/// The quantity that counts; nothing where it is of another dimension.
[[nodiscard]] std::optional<Mass> massOf(const Typed& typed);
[[nodiscard]] std::optional<Length> lengthOf(const Typed& typed);
[[nodiscard]] std::optional<Force> forceOf(const Typed& typed);
[[nodiscard]] std::optional<std::chrono::milliseconds> durationOf(const Typed& typed);
[[nodiscard]] std::optional<Volume> volumeOf(const Typed& typed);

}
