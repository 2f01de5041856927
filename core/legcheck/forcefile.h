// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/legcheck/forcerecord.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace steelyard {

/// The units of force that files are read in.
enum class ForceUnit : std::uint8_t { Newton, Kilonewton };

/// What somebody says of a file that does not say it itself. The file is believed before this.
struct ForceFileHints {
    std::optional<Frequency> rate{};
    std::optional<ForceUnit> unit{};
};

/// Vertical force from a file, of one plate or of two.
struct ForceFile {
    Frequency rate;
    std::vector<std::vector<Force>> plates; ///< one or two, of one length; where sides are known left comes first
    bool areSidesKnown = false;             ///< two plates whose headings say left and right

    /// One plate's record, or what both carry together.
    [[nodiscard]] ForceRecord plate(std::size_t index) const { return {rate, plates[index]}; }
    [[nodiscard]] ForceRecord together() const;
};

/// Reads force over time out of a text file of columns: what readNumberTable reads. A heading tells which column is the time (time, zeit,
/// tiempo, t; in s or ms) and which are vertical force by its unit, in brackets or behind the name (N, kN); forces along x and y, and a sum
/// beside two plates, are left out. Without a heading the first of several columns is the time where it rises evenly, and the rest are
/// forces in the unit that is said; units may stand in a line of their own. The rate comes from the time column, from a line above the numbers
/// that names Hz or a rate of sampling and no filter, or is said; none is guessed. Nothing else above the numbers is kept: it often names people.
/// Refuses a unit that is neither said nor known ("unit of" and the heading), no column of force, more than two, no rate, a rate that the
/// file says twice and differently (its times over 1 % off), times that do not go on evenly (a gap: "line 57"), and what faultOf says of the record.
[[nodiscard]] Result<ForceFile> readForceFile(std::string_view text, const ForceFileHints& hints = {});

}
