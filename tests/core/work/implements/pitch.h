// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/implements/keepsleds.h"
#include "core/work/keeping/athlete/keepcap.h"
#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keeptest.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepvenue.h"
#include "tests/core/work/implements/borrowed.h"
#include "tests/core/work/memorykeeper.h"

/// A device with a pitch, and somebody on it who has deadlifted and pressed.
namespace pitch {

using namespace steelyard;
using std::chrono::days;

inline constexpr LiftId press{8}, farmers{33}, kegPress{31}, frontCarry{36}, tyreFlip{32}, logPress{30};

struct Pitch : keeping::Device {
    Pitch()
    {
        keepVenue(keeping, {{}, "Far pitch", {}}, told());
        venue = last.id;
        keepVenue(keeping, {{}, "Weight room", {}}, told());
        home = last.id;
        Athlete athlete;
        athlete.name = "Somebody";
        athlete.birthYear = std::chrono::year(1999);
        keepAthlete(keeping, std::move(athlete), told());
        who = last.id;
    }

    RecordId item(const std::string& name, const Measured& measured, bool pair = false)
    {
        KitItem thing;
        thing.name = name;
        thing.pair = pair;
        thing.measurement = measured;
        thing.venue = venue;
        keepKitItem(keeping, std::move(thing), told());
        return last.id;
    }

    /// A maximum that was tried out, so that its lowest estimate is the load itself.
    void tried(const LiftId& lift, double kg, int daysAgo = 10)
    {
        StrengthTest test;
        test.athlete = who;
        test.lift = lift;
        test.day = today - days(daysAgo);
        test.load = kilograms(kg);
        test.reps = 1;
        test.maximum = true;
        keepStrengthTest(keeping, test, told());
    }

    void cap(const LiftId& lift, const LiftId& of, int percent) { keepCap(keeping, who, lift, CapRule{of, percent}, told()); }

    RecordId venue, home, who;
};

}
