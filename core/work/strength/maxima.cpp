// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/strength/maxima.h"

#include "core/work/records/seasonbook.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace steelyard {

namespace {

/// What may be compared: the same things hung, in the same kept set-up, with the body or without; plain iron comes first.
using Under = std::tuple<bool, std::set<Method>, RecordId, bool>;

Under underOf(const StrengthTest& test)
{
    return {!test.conditions.isPlainIron(), test.conditions.hung, test.conditions.setup, test.conditions.bodyMass.has_value()};
}

std::optional<DayMaximum> maximumOf(std::chrono::sys_days day, const std::vector<StrengthTest>& tests)
{
    std::vector<StrengthEvidence> evidence;
    evidence.reserve(tests.size());
    for (const StrengthTest& test : tests)
        evidence.push_back(evidenceOf(test));
    const DayEvidence found = bestOfDay(evidence);
    if (!found.best)
        return std::nullopt;
    DayMaximum made{day, found.best->max, tests[found.best->index], found.best->why, found.best->setsShowMore, {}};
    for (const RefusedEvidence& refused : found.refused)
        made.refused.push_back(tests[refused.index]);
    return made;
}

}

Mass loadLifted(const StrengthTest& test)
{
    return test.conditions.bodyMass ? test.load.quantity() + test.conditions.bodyMass->quantity() : test.load.quantity();
}

Result<OneRepMax> oneRepMaxFrom(const StrengthTest& test)
{
    return oneRepMaxFrom(evidenceOf(test));
}

StrengthEvidence evidenceOf(const StrengthTest& test)
{
    if (test.maximum)
        return TestedMax{{loadLifted(test), {}}, test.leastJump ? test.leastJump->quantity() : usualJump};
    RepsSet set;
    set.load = {loadLifted(test), {}};
    set.reps = test.reps;
    set.repsInReserve = test.repsInReserve.value_or(0);
    set.missedReps = test.missed ? 1 : 0;
    return set;
}

std::vector<StrengthDay> strengthHistory(std::span<const StrengthTest> tests, const LiftId& lift)
{
    std::map<std::pair<std::chrono::sys_days, Under>, std::vector<StrengthTest>> days;
    for (const StrengthTest& test : tests)
        if (test.lift == lift)
            days[{test.day, underOf(test)}].push_back(test);
    std::vector<StrengthDay> history;
    const Under* before = nullptr;
    for (auto& [when, those] : days) {
        auto maximum = maximumOf(when.first, those);
        history.push_back({when.first, std::move(those), std::move(maximum), before && *before == when.second});
        before = &when.second;
    }
    return history;
}

std::vector<DayMaximum> maximaByDay(std::span<const StrengthTest> tests, const LiftId& lift)
{
    std::vector<DayMaximum> maxima;
    for (StrengthDay& one : strengthHistory(tests, lift))
        if (one.maximum)
            maxima.push_back(std::move(*one.maximum));
    return maxima;
}

std::optional<DayMaximum> maximumOn(std::span<const StrengthTest> tests, const LiftId& lift, std::chrono::sys_days day)
{
    std::optional<DayMaximum> plain, other;
    for (DayMaximum& one : maximaByDay(tests, lift))
        if (one.day <= day)
            (one.test.conditions.isPlainIron() ? plain : other) = std::move(one);
    return plain ? plain : other;
}

std::optional<KnownMaximum> knownMaximum(std::span<const StrengthTest> tests, const LiftId& lift, std::chrono::sys_days day)
{
    const auto found = maximumOn(tests, lift, day);
    if (!found)
        return std::nullopt;
    const OneRepMax& max = found->max;
    return KnownMaximum{lift, found->test.conditions.isPlainIron(), max.forCaps(), max.middle.value, max.middle.u, found->day, max.isTested};
}

std::optional<KnownMaximum> knownMaximum(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, std::chrono::sys_days day)
{
    std::vector<StrengthTest> tests;
    for (const StrengthTest* test : book.testsOf(athlete, lift))
        tests.push_back(*test);
    return knownMaximum(tests, lift, day);
}

}
