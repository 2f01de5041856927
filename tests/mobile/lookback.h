// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keepstatus.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keeplift.h"
#include "core/work/keeping/putright.h"
#include "mobile/bookservice.h"
#include "tests/core/work/memorykeeper.h"

/// Books with something in them to look back at: put right, measured again, said differently by two devices.
namespace lookback {

using namespace steelyard;

/// Three days of body sizes for the first of the people; the middle one was put right.
inline void sizes(BookService& book)
{
    const RecordId who = book.book().athletes().front()->id;
    const auto told = [](const Told&) {};
    const auto keep = [&](int daysAgo, double kg, std::optional<Length> height) {
        keepBodySize(book.keeping(), who, {{}, book.today() - std::chrono::days(daysAgo), kilograms(kg), height}, told);
    };
    keep(400, 71.5, metres(1.78));
    keep(40, 27.4, std::nullopt);
    keep(3, 72.9, std::nullopt);
    BodySize wrong = book.book().athlete(who)->sizes[1];
    wrong.mass = kilograms(72.4);
    putBodySizeRight(book.keeping(), who, wrong, told);
    book.keeping().forget();
}

/// The first of the people with marks for the front squat of a hundred days ago, and taller today than then.
inline void grown(BookService& book)
{
    std::vector<journal::Held> heads;
    for (const auto& entry : book.book().fold().registers())
        heads.insert(heads.end(), entry.second.heads.begin(), entry.second.heads.end());
    keeping::Device device(9);
    device.today = book.today() - std::chrono::days(100);
    device.book.take(heads);
    Athlete athlete = *device.book.athletes().front();
    BarMarks marks;
    marks.bottom = metres(0.72);
    marks.top = metres(1.24);
    athlete.marks[LiftId{2}] = marks;
    keepAthlete(device.keeping, athlete, device.told());
    book.book().take(device.keeper.entries);
    const RecordId who = book.book().athletes().front()->id;
    const auto told = [](const Told&) {};
    keepBodySize(book.keeping(), who, {{}, book.today() - std::chrono::days(300), std::nullopt, metres(1.71)}, told);
    keepBodySize(book.keeping(), who, {{}, book.today(), std::nullopt, metres(1.76)}, told);
    book.keeping().forget();
}

/// What two devices said about the first of the people without knowing of each other: birth year and squad.
inline void saidTwice(BookService& book)
{
    std::vector<journal::Held> heads;
    for (const auto& entry : book.book().fold().registers())
        heads.insert(heads.end(), entry.second.heads.begin(), entry.second.heads.end());
    for (const unsigned number : {7U, 8U}) {
        keeping::Device device(number);
        device.keeper.now += std::chrono::hours(24 * number + number);
        device.book.take(heads);
        Athlete athlete = *device.book.athletes().front();
        athlete.birthYear = std::chrono::year(number == 7 ? 2007 : 2008);
        athlete.squad = number == 7 ? "Marrow Hill lifters" : "Monday rowers, second boat";
        keepAthlete(device.keeping, athlete, device.told());
        book.book().take(device.keeper.entries);
    }
}

/// A lift of the coach's own.
inline void lift(BookService& book, const std::string& name)
{
    keepLift(book.keeping(), {{}, name, LiftId{2}, LiftStart::OwnBottom}, [](const Told&) {});
}

/// What the first of the people is cleared for: one that holds, one that is over, and one that was taken back. She may do some today, by two who
/// said so; a third status is over.
inline void cleared(BookService& book)
{
    const RecordId who = book.book().athletes().front()->id;
    const auto told = [](const Told&) {};
    const auto today = book.today();
    const auto clear = [&](Method method, int daysAgo, int days) {
        Clearance one;
        one.athlete = who;
        one.lift = LiftId{1};
        one.method = method;
        one.who = "the head coach";
        one.day = today - std::chrono::days(daysAgo);
        one.until = one.day + std::chrono::days(days);
        keepClearance(book.keeping(), one, told);
    };
    clear(Method::EccentricRelease, 20, 84);
    clear(Method::IsometricTest, 100, 28);
    clear(Method::MaximalTest, 40, 84);
    takeClearanceBack(book.keeping(), who, LiftId{1}, Method::MaximalTest, {"the doctor in charge of the squad", today - std::chrono::days(2)}, told);
    const auto set = [&](std::set<Method> methods, std::set<LiftGroup> groups, const std::string& text, int daysAgo, int days) {
        DayStatus one;
        one.athlete = who;
        one.fitness = Fitness::Some;
        one.notMethods = std::move(methods);
        one.notGroups = std::move(groups);
        one.text = text;
        one.who = "the physiotherapist";
        one.day = today - std::chrono::days(daysAgo);
        one.until = one.day + std::chrono::days(days);
        keepDayStatus(book.keeping(), one, told);
    };
    set({Method::Jumps}, {}, {}, 60, 14);
    set({Method::Overhead, Method::BandsAbove}, {LiftGroup::Press}, "left shoulder, nothing above the head", 3, 14);
    set({}, {LiftGroup::OneLeg}, {}, 1, 2);
    book.keeping().forget();
}

/// The first thing of the kit measured anew.
inline void measuredAgain(BookService& book)
{
    KitItem item = book.book().kit().front()->item;
    if (auto* chain = std::get_if<ChainMeasurement>(&item.measurement)) {
        chain->wire = metres(0.0155);
        chain->mass = kilograms(8.4);
    }
    else
        std::get<BandMeasurement>(item.measurement).rest = metres(0.53);
    keepKitItem(book.keeping(), item, [](const Told&) {});
    book.keeping().forget();
}

}
