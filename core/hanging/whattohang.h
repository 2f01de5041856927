// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/ironload.h"
#include "core/hanging/level.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace steelyard {

/// What the pull there should be, and how far off it may be.
struct HangTarget {
    TargetPlace place = TargetPlace::Bottom;
    Force wanted;
    Force tolerance;
};

/// One way to hang one thing of the kit, on both sides alike. No two things come from one measurement.
struct WayToHang {
    std::size_t thingIndex = 0;   ///< of the ways of one thing one is taken, or none
    std::uint64_t takenPieces = 0; ///< straps and pegs that it takes up, a bit each: no two ways that are taken share one
    std::vector<HungItem> left, right;
    int pieceCount = 2;
    bool hangsNow = false;        ///< just so, on the bar as it stands
};

/// What is asked: loads and ways to choose from, what should come of it, what must not. With `strength` the pull is to take, besides,
/// the same share of it at every height: how much that share varies counts as a miss of the same part of the mean of what is wanted.
struct HangQuestion {
    std::vector<HangTarget> targets;
    std::vector<IronLoad> loads; ///< lightest first
    std::vector<WayToHang> ways;
    Mass collars;                ///< the bar is what a load weighs besides its plates and these
    Limits limits;
    std::size_t mostThingsCount = 3;           ///< more hang on no bar (our choice)
    std::optional<std::size_t> loadNowIndex;   ///< what hangs as the bar stands
    std::size_t mostLooksCount = 50'000'000;   ///< after so many nothing more is proved
    std::vector<HungItem> wornLeft{}, wornRight{}; ///< what stays whatever hangs, as a bench aid does
    std::optional<StrengthCurve> strength{};
};

/// One answer: which load, which ways, and what comes of it.
struct HangAnswer {
    std::size_t loadIndex = 0;
    std::vector<std::size_t> wayIndex; ///< in the order of their places
    std::vector<Reading> readings;       ///< one for each target
    std::optional<LevelReading> level; ///< where that was asked for
    Force cost;          ///< √Σ(miss² + u²) over the targets: not knowing is never rewarded
    int pieceCount = 0;  ///< plates of both sides and pieces of what hangs
    int changeCount = 0; ///< plates and pieces to take off and to put on
    bool isWithin = false; ///< every target within its tolerance
};

/// The best answer, and the best after it.
struct HangAnswers {
    std::optional<HangAnswer> best, next;
    bool isProved = false;            ///< nothing better exists among the loads and ways, with so many things at most
    Force bound;                      ///< no answer costs less
    std::optional<TargetPlace> failing; ///< where the best is not within: the first target that cannot be met even alone, else the worst met
    std::size_t looksCount = 0;
};

/// Who waits for an answer.
struct HangListener {
    std::function<void(const HangAnswer&)> found{}; ///< told of each answer better than those before
    std::function<bool()> goesOn{};                 ///< asked now and then; false ends the search, which then proves nothing
};

/// Least cost, then fewest pieces, then least change from the bar as it stands; pulls that are not known and limits passed at the
/// unfavourable end are no answers. Branch and bound: a branch ends where the least that its uncertainty and what is still to be hung
/// can leave of the misses, with any load, is more than an answer already found. Costs within a nanonewton count as equal. Nothing where
/// there is no target, no load, a place that the path does not have, or a path that her strength is not known on.
[[nodiscard]] HangAnswers whatToHang(const HangQuestion& question, const HangListener& listener = {});

}
