// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/athlete/keeptest.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/implements/keepsleds.h"
#include "core/work/keeping/keepvenue.h"
#include "mobile/bookservice.h"

/// An away pitch with what lies there, for whoever shows or tests it.
namespace awaypitch {

using namespace steelyard;

/// Read at one edge: 2.5 times what the scale shows.
inline TyreMeasurement tyre(double shownKg = 60)
{
    TyreMeasurement m;
    m.by = TyreMeasuring::Edge;
    m.drained = true;
    m.edges = {{kilograms(shownKg), metres(0.6), metres(0.4)}};
    m.whole.step = kilograms(0.5);
    m.diameter = metres(1.3);
    m.width = metres(0.4);
    return m;
}

inline TyreMeasurement unknownTyre()
{
    TyreMeasurement m;
    m.by = TyreMeasuring::Unknown;
    return m;
}

/// Of 30 kg, on a scale.
inline KegMeasurement keg(KegPressure pressure)
{
    KegMeasurement m;
    m.by = KegMeasuring::Whole;
    m.whole.read = kilograms(30);
    m.whole.step = kilograms(0.1);
    m.pressure = pressure;
    return m;
}

inline CarryMeasurement handles()
{
    CarryMeasurement m;
    m.whole.read = kilograms(8.5);
    m.whole.step = kilograms(0.1);
    return m;
}

inline BellMeasurement bell()
{
    BellMeasurement m;
    m.whole.marked = kilograms(24);
    m.oneHand = HandFit::Fits;
    m.note = "rough horns";
    return m;
}

/// Adds a thing to a venue; its id.
inline RecordId add(BookService& book, const RecordId& venue, const char* name, const Measured& measured)
{
    KitItem item;
    item.name = name;
    item.pair = false;
    item.measurement = measured;
    item.venue = venue;
    RecordId id;
    keepKitItem(book.keeping(), item, [&id](const Told& told) { id = told.id; });
    return id;
}

inline RecordId venue(BookService& book)
{
    Venue pitch;
    pitch.name = "Away pitch";
    RecordId id;
    keepVenue(book.keeping(), pitch, [&id](const Told& told) { id = told.id; });
    return id;
}

inline void tested(BookService& book, const RecordId& athlete, LiftId lift, double kg)
{
    StrengthTest test;
    test.athlete = athlete;
    test.lift = lift;
    test.day = book.today() - std::chrono::days(7);
    test.load = kilograms(kg);
    test.reps = 1;
    test.maximum = true;
    test.leastJump = kilograms(2.5);
    keepStrengthTest(book.keeping(), test, [](const Told&) {});
}

/// Pulled level with nothing and with 50 kg on it.
inline void pulled(BookService& book, const RecordId& venue, const RecordId& sled, const char* name, double friction)
{
    SledSurface surface;
    surface.day = book.today();
    surface.venue = venue;
    surface.sled = sled;
    surface.name = name;
    surface.readings = {{kilograms(0), kilograms(friction * 25)}, {kilograms(50), kilograms(friction * 75)}};
    surface.scaleStep = kilograms(0.1);
    keepSurface(book.keeping(), surface, [](const Told&) {});
}

inline void ran(BookService& book, const RecordId& athlete, const RecordId& venue, const RecordId& sled, double addedKg, int milliseconds)
{
    SledRunTimed run;
    run.athlete = athlete;
    run.day = book.today();
    run.venue = venue;
    run.sled = sled;
    run.surface = "turf";
    run.added = kilograms(addedKg);
    run.distance = metres(12);
    run.time = std::chrono::milliseconds(milliseconds);
    keepSledRun(book.keeping(), run, [](const Told&) {});
}

/// The pitch with tyres, kegs, handles, a bell, a sled and a log that nobody has measured yet; the first of the people has a deadlift of
/// 130 kg.
inline RecordId fill(BookService& book)
{
    const RecordId pitch = venue(book);
    add(book, pitch, "Car tyre", tyre(8));
    add(book, pitch, "Old tyre", tyre());
    add(book, pitch, "Tractor tyre", unknownTyre());
    add(book, pitch, "Blue keg", keg(KegPressure::NotKnown));
    add(book, pitch, "Water keg", keg(KegPressure::Released));
    add(book, pitch, "Handles", handles());
    add(book, pitch, "Bell 24", bell());
    add(book, pitch, "Log by the gate", LogMeasurement{});
    SledMeasurement sled;
    sled.whole.read = kilograms(25);
    sled.whole.step = kilograms(0.1);
    const RecordId sledId = add(book, pitch, "Sled", sled);
    pulled(book, pitch, sledId, "turf", 0.45);
    pulled(book, pitch, sledId, "wet turf", 0.25);
    if (!book.book().athletes().empty()) {
        const RecordId her = book.book().athletes().front()->id;
        tested(book, her, deadliftId, 130);
        ran(book, her, pitch, sledId, 0, 1852);
        ran(book, her, pitch, sledId, 25, 2174);
        ran(book, her, pitch, sledId, 50, 2592);
    }
    book.keeping().forget();
    return pitch;
}

}
