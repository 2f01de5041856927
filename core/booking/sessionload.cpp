// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/booking/sessionload.h"

#include <cmath>
#include <vector>

namespace steelyard {

namespace {

constexpr std::size_t daysOfAWeek = 7;

bool within(double number, double greatest) { return number >= 0 && number <= greatest; }
bool isDoubt(double u) { return std::isfinite(u) && u >= 0; }

/// Monotony and strain of two days or more; nothing where they are all alike.
void judge(WeekLoad& week, const std::vector<Score>& days)
{
    const auto n = static_cast<double>(days.size());
    const double sum = week.load->score, mean = sum / n;
    double squares = 0;
    for (const Score& day : days)
        squares += (day.score - mean) * (day.score - mean);
    const double sd = std::sqrt(squares / (n - 1));
    // compared with rounding, so that a spread which is none does not come out as endless monotony
    if (!(sd > mean * 1e-12))
        return;
    const double monotony = mean / sd;
    double monotonySquares = 0, strainSquares = 0;
    for (const Score& day : days) {
        const double byDay = (1 / n - monotony * (day.score - mean) / ((n - 1) * sd)) / sd;
        monotonySquares += std::pow(byDay * day.uScore, 2);
        strainSquares += std::pow((monotony + sum * byDay) * day.uScore, 2);
    }
    week.monotony = Score{monotony, std::sqrt(monotonySquares)};
    week.strain = Score{sum * monotony, std::sqrt(strainSquares)};
}

}

Result<Score> sessionLoad(double rpe, Minutes lasted, double uRpe, Minutes uLasted)
{
    const double minutes = lasted.count();
    if (!within(rpe, greatestRpe))
        return Error{Refusal::OutOfRange, "rpe"};
    if (!within(minutes, longestSession.count()))
        return Error{Refusal::OutOfRange, "minutes"};
    if (!isDoubt(uRpe) || !isDoubt(uLasted.count()))
        return Error{Refusal::OutOfRange, "uncertainty"};
    return Score{rpe * minutes, std::hypot(minutes * uRpe, rpe * uLasted.count())};
}

Score dayLoad(std::span<const Score> sessions)
{
    Score day;
    for (const Score& session : sessions)
        day = {day.score + session.score, std::hypot(day.uScore, session.uScore)};
    return day;
}

Result<WeekLoad> weekLoad(std::span<const std::optional<Score>> days)
{
    if (days.size() > daysOfAWeek)
        return Error{Refusal::TooMany, "days"};
    std::vector<Score> reported;
    for (const auto& day : days) {
        if (!day)
            continue;
        if (!within(day->score, greatestRpe * longestSession.count()) || !isDoubt(day->uScore))
            return Error{Refusal::OutOfRange, "days"};
        reported.push_back(*day);
    }
    WeekLoad week;
    week.reportedCount = reported.size();
    if (reported.empty())
        return week;
    week.load = dayLoad(reported);
    if (reported.size() > 1)
        judge(week, reported);
    return week;
}

}
