// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keeptest.h"
#include "mobile/bookservice.h"

/// Somebody who may: a plain maximum of the back squat tested the week before, and a clearance by name.
namespace cleared {

inline void tested(BookService& book, const steelyard::RecordId& athlete, double kilograms)
{
    steelyard::StrengthTest test;
    test.athlete = athlete;
    test.lift = steelyard::LiftId{1};
    test.day = book.today() - std::chrono::days(7);
    test.load = steelyard::kilograms(kilograms);
    test.reps = 1;
    test.maximum = true;
    test.leastJump = steelyard::kilograms(2.5);
    keepStrengthTest(book.keeping(), test, book.teller());
}

inline void byName(BookService& book, const steelyard::RecordId& athlete)
{
    steelyard::Clearance clearance;
    clearance.athlete = athlete;
    clearance.lift = steelyard::LiftId{1};
    clearance.method = steelyard::Method::EccentricRelease;
    clearance.who = "the physiotherapist";
    clearance.day = book.today() - std::chrono::days(7);
    clearance.until = book.today() + std::chrono::days(60);
    keepClearance(book.keeping(), clearance, book.teller());
}

}
