// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/booking/sessionload.h"
#include "tests/probe/parts.h"

namespace steelyard::probe {

namespace {

std::optional<double> numberOf(const std::optional<Score>& score)
{
    return score ? std::optional(score->score) : std::nullopt;
}

Out weekOf(Fields& in)
{
    std::vector<std::optional<Score>> days;
    for (const Json& day : in.list("days")) {
        const std::string name = "days[" + std::to_string(days.size()) + "]";
        days.push_back(day.is_null() ? std::nullopt : std::optional(Score{Fields::checked(day, name, {0, greatestRpe * longestSession.count()})}));
    }
    const auto week = accepted(weekLoad(days));
    return {{"week", orNull(numberOf(week.load))}, {"monotony", orNull(numberOf(week.monotony))}, {"strain", orNull(numberOf(week.strain))},
            {"days_reported", week.reportedCount}};
}

}

Out sessionLoadOf(Fields& in)
{
    if (in.has("days")) {
        if (in.has("rpe") || in.has("minutes"))
            Fields::refuse("days", "and rpe with minutes are two questions");
        return weekOf(in);
    }
    if (!in.has("rpe") && !in.has("minutes"))
        Fields::refuse("rpe", "is missing, or days is missing");
    const double rpe = in.number("rpe", {0, greatestRpe});
    return {{"load", accepted(sessionLoad(rpe, Minutes{in.number("minutes", {0, longestSession.count()})})).score}};
}

}
