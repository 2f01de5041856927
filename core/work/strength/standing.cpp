// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/strength/standing.h"

#include "core/work/gates/setupgate.h"
#include "core/work/records/seasonbook.h"

#include <algorithm>
#include <array>
#include <set>

namespace steelyard {

namespace {

constexpr std::array bodyLifts{LiftId{11}, LiftId{12}, LiftId{13}};
constexpr std::array noBarLifts{LiftId{11}, LiftId{12}, LiftId{13}, LiftId{23}, LiftId{24}, LiftId{29}, LiftId{30}, LiftId{31}};

std::optional<ScaledStrength> scaled(const OneRepMax& max, const std::optional<Mass>& body, double exponent)
{
    if (!body)
        return std::nullopt;
    const auto found = scaledStrength(max.middle, Uncertain<Mass>{*body, uOfBodyMass}, exponent);
    return found ? std::optional(*found) : std::nullopt;
}

/// As it was said with the test, else as it was measured last by then.
std::optional<Mass> bodyAt(const SeasonBook& book, const RecordId& athlete, const StrengthTest& test)
{
    if (test.conditions.bodyMass)
        return test.conditions.bodyMass->quantity();
    const Athlete* known = book.athlete(athlete);
    const auto body = known ? bodyMassOn(*known, test.day) : std::nullopt;
    return body ? std::optional(body->quantity()) : std::nullopt;
}

}

bool hasMaximum(const LiftId& lift)
{
    if (!lift.own.isNone())
        return true;
    const Lift* shipped = shippedLift(lift);
    return shipped && (shipped->onBar || std::find(noBarLifts.begin(), noBarLifts.end(), lift) != noBarLifts.end());
}

bool liftsTheBody(const LiftId& lift)
{
    return std::find(bodyLifts.begin(), bodyLifts.end(), lift) != bodyLifts.end();
}

std::set<Method> hungInTest(const SetupRecord& setup)
{
    std::set<Method> hung;
    for (const Method method : methodsHung(setup))
        if (canHangInTest(method))
            hung.insert(method);
    return hung;
}

LiftStanding standingOn(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, std::chrono::sys_days day)
{
    std::vector<StrengthTest> tests;
    for (const StrengthTest* test : book.testsOf(athlete, lift))
        tests.push_back(*test);
    LiftStanding standing;
    standing.lift = lift;
    standing.maximum = maximumOn(tests, lift, day);
    if (standing.maximum) {
        const auto body = bodyAt(book, athlete, standing.maximum->test);
        standing.isOld = day - standing.maximum->day > book.limits().maximumGoodFor();
        standing.byMass = scaled(standing.maximum->max, body, plainExponent);
        standing.byShape = scaled(standing.maximum->max, body, shapeExponent);
    }
    return standing;
}

std::vector<LiftStanding> standingOn(const SeasonBook& book, const RecordId& athlete, std::chrono::sys_days day)
{
    std::set<LiftId> lifts;
    for (const StrengthTest* test : book.testsOf(athlete))
        if (test->day <= day)
            lifts.insert(test->lift);
    std::vector<LiftStanding> all;
    all.reserve(lifts.size());
    for (const LiftId& lift : lifts)
        all.push_back(standingOn(book, athlete, lift, day));
    return all;
}

}
