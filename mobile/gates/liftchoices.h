// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"

#include <span>
#include <vector>

/** Lifts to choose from, for something that is said of an athlete. */
struct LiftChoices {
    std::vector<steelyard::LiftId> ids;
    int herCount = 0; ///< so many of the first are hers, or named already

    [[nodiscard]] QStringList names(const steelyard::SeasonBook& book) const;
    /// -1 where it is none of them.
    [[nodiscard]] int placeOf(const steelyard::LiftId& lift) const;
    [[nodiscard]] bool has(int place) const { return place >= 0 && static_cast<std::size_t>(place) < ids.size(); }
};

/// Those that are named, or that she has bar marks for, then those that the coach added, then the others. One that was taken out
/// stands there as long as it is named.
[[nodiscard]] LiftChoices liftChoices(const steelyard::SeasonBook& book, const steelyard::RecordId& athlete, std::span<const steelyard::LiftId> named);
