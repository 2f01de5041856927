// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/keepathlete.h"
#include "tests/core/work/memorykeeper.h"

/// Athletes of all ages, and what is kept about them.
namespace somebody {

using namespace steelyard;
using keeping::Device;

/// Keeps an athlete born in a year, or in none that is known.
inline RecordId born(Device& device, std::optional<int> year, bool agreed = false)
{
    Athlete athlete;
    athlete.name = "Ida Marrow";
    if (year)
        athlete.birthYear = std::chrono::year(*year);
    if (agreed)
        athlete.agreement = GuardianAgreement{"her mother", keeping::day(2026, 1, 2)};
    keepAthlete(device.keeping, athlete, device.told());
    return device.last.id;
}

inline RecordId adult(Device& device) { return born(device, 1999); }

inline StrengthTest test(const RecordId& athlete, std::chrono::sys_days day, double kg = 80, int reps = 5)
{
    StrengthTest t;
    t.athlete = athlete;
    t.lift = LiftId{1};
    t.day = day;
    t.load = kilograms(kg);
    t.reps = reps;
    return t;
}

inline Clearance clearance(const RecordId& athlete, std::chrono::sys_days day, Method method = Method::EccentricRelease)
{
    Clearance c;
    c.athlete = athlete;
    c.lift = LiftId{1};
    c.method = method;
    c.who = "the head coach";
    c.day = day;
    return c;
}

inline DayStatus status(const RecordId& athlete, std::chrono::sys_days day, Fitness fitness = Fitness::None)
{
    DayStatus s;
    s.athlete = athlete;
    s.day = day;
    s.fitness = fitness;
    s.who = "the physiotherapist";
    return s;
}

inline DayStatus noOverhead(const RecordId& athlete, std::chrono::sys_days day)
{
    DayStatus s = status(athlete, day, Fitness::Some);
    s.notMethods = {Method::Overhead};
    return s;
}

}
