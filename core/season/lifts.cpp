// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/lifts.h"

#include <algorithm>
#include <array>

namespace steelyard {

namespace {

constexpr bool bar = true, noBar = false;
constexpr LiftStart floor = LiftStart::Floor, bottom = LiftStart::OwnBottom;

constexpr std::array lifts = {
    Lift{{1}, "back squat", bar, bottom},
    Lift{{2}, "front squat", bar, bottom},
    Lift{{3}, "split squat", bar, bottom},
    Lift{{4}, "single-leg squat", bar, bottom},
    Lift{{5}, "step-up", bar, bottom},
    Lift{{6}, "bench press", bar, bottom},
    Lift{{7}, "incline press", bar, bottom},
    Lift{{8}, "overhead press", bar, bottom},
    Lift{{9}, "push press", bar, bottom},
    Lift{{10}, "bent-over row", bar, bottom},
    Lift{{11}, "pull-up", noBar, bottom},
    Lift{{12}, "chin-up", noBar, bottom},
    Lift{{13}, "dip", noBar, bottom},
    Lift{{14}, "deadlift", bar, floor},
    Lift{{15}, "hex-bar deadlift", bar, floor},
    Lift{{16}, "Romanian deadlift", bar, bottom},
    Lift{{17}, "hip thrust", bar, floor},
    Lift{{18}, "clean", bar, floor},
    Lift{{19}, "jerk", bar, bottom},
    Lift{{20}, "snatch", bar, floor},
    Lift{{21}, "clean pull", bar, floor},
    Lift{{22}, "snatch pull", bar, floor},
    Lift{{23}, "leg press, two legs", noBar, bottom},
    Lift{{24}, "leg press, one leg", noBar, bottom},
    Lift{{25}, "isometric squat", noBar, bottom},
    Lift{{26}, "isometric mid-thigh pull", noBar, bottom},
    Lift{{27}, "kettlebell swing", noBar, bottom},
    Lift{{28}, "kettlebell clean", noBar, bottom},
    Lift{{29}, "kettlebell press", noBar, bottom},
    Lift{{30}, "log clean and press", noBar, floor},
    Lift{{31}, "keg press", noBar, bottom},
    Lift{{32}, "tyre flip", noBar, floor},
    Lift{{33}, "farmer's carry", noBar, bottom},
    Lift{{34}, "suitcase carry", noBar, bottom},
    Lift{{35}, "yoke carry", noBar, bottom},
    Lift{{36}, "front carry", noBar, bottom},
    Lift{{37}, "overhead carry", noBar, bottom},
    Lift{{38}, "sled tow", noBar, bottom},
    Lift{{39}, "sled push", noBar, bottom},
    Lift{{40}, "jump", noBar, bottom},
    Lift{{41}, "medicine-ball throw", noBar, bottom},
};

}

std::span<const Lift> shippedLifts()
{
    return lifts;
}

const Lift* shippedLift(LiftId id)
{
    const auto at = std::find_if(lifts.begin(), lifts.end(), [id](const Lift& lift) { return lift.id == id; });
    return at == lifts.end() ? nullptr : &*at;
}

}
