// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/legcheck/sides.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// How often one athlete's better leg was the same one: "right on 4 of 5 days".
struct SameSide {
    std::optional<Leg> leg{}; ///< better on most days; none when both were equally often
    std::size_t sameCount = 0, daysCount = 0;
    /// How probable so many of so many, or more, are on one side when each day is a coin toss: 1 for as many on each.
    double chanceProbability = 1;
};

/// Of the better legs by day; a day without a better one counts as a day and is on no side.
[[nodiscard]] SameSide sameSideOf(std::span<const std::optional<Leg>> betterByDay);

/// Agreement of two sorts of days, over what chance would give.
struct Kappa {
    double coefficient = 0;
    std::optional<double> uCoefficient{}; ///< by the sizes of the counts; none where the table holds shares of 1
};

/// Rows of a table of counts: how many were in category i on one day and in category j on the other.
using CountTable = std::vector<std::vector<double>>;

/// Cohen's unweighted kappa (1960) of a squad between two days, `(p₀ − pₑ)/(1 − pₑ)`; standard error for large samples by Fleiss, Cohen &
/// Everitt (1969). For a squad only: one athlete's few days go by sameSideOf. Nothing where all are in one category and chance alone
/// agrees in full. Refuses a table that is not square from 2 to 50, entries below 0 or not finite, and one that is empty.
[[nodiscard]] Result<std::optional<Kappa>> kappaOf(const CountTable& countTable);

/// Fleiss' kappa (1971, Psychol Bull 76:378–382) of a squad over more days: a row an athlete, a column a category, in it on how many days.
/// Nothing where chance alone agrees in full. Refuses fewer than two days or rows, rows of different sums, and entries below 0.
[[nodiscard]] Result<std::optional<double>> fleissKappaCoefficient(const CountTable& countTable);

}
