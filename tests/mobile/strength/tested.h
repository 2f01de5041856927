// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/athlete/keeptest.h"
#include "core/work/keeping/keepathlete.h"
#include "mobile/bookservice.h"

/// Books in which the first of the people was tested.
namespace tested {

using namespace steelyard;

inline StrengthTest set(const BookService& book, int daysAgo, double kg, int reps, std::optional<int> reserve = 1)
{
    StrengthTest test;
    test.athlete = book.book().athletes().front()->id;
    test.lift = LiftId{1};
    test.day = book.today() - std::chrono::days(daysAgo);
    test.load = kilograms(kg);
    test.reps = reps;
    test.repsInReserve = reserve;
    return test;
}

inline StrengthTest tried(const BookService& book, int daysAgo, double kg)
{
    StrengthTest test = set(book, daysAgo, kg, 1, std::nullopt);
    test.maximum = true;
    test.leastJump = Entered<Mass>(kilograms(2.5));
    return test;
}

/// Squats over a hundred days, one with chains, some refused; chins; 70 kg of body mass before any of it.
inline void fill(BookService& book)
{
    const RecordId who = book.book().athletes().front()->id;
    const auto told = [](const Told&) {};
    keepBodySize(book.keeping(), who, {{}, book.today() - std::chrono::days(200), Entered<Mass>(kilograms(70)), std::nullopt}, told);
    std::vector tests{set(book, 100, 90, 5), tried(book, 40, 105), set(book, 40, 105, 5), set(book, 20, 60, 14, 0), set(book, 10, 95, 5), set(book, 5, 85, 5), tried(book, 3, 10)};
    tests[5].conditions.hung = {Method::Chains};
    tests[6].lift = LiftId{12};
    tests[6].conditions.bodyMass = Entered<Mass>(kilograms(70));
    for (const StrengthTest& test : tests)
        keepStrengthTest(book.keeping(), test, told);
    book.keeping().forget();
}

}
