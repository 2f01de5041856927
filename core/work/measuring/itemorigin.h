// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"

#include <optional>
#include <variant>
#include <vector>

namespace steelyard {

/// What goes into a thing's own number.
enum class ItemInput : std::uint8_t {
    ChainMass, ScaleStep, ScaleError, ChainLength,     ///< a chain on a scale
    Wire, Pitch, InnerWidth, GaugedLength, Method,     ///< a chain by its links; the method's 3 % is for all of it
    BandReadings, FewReadings, BandRest,               ///< a band by known plates; few readings have a floor of 5 % (our choice)
    AidPlates, AidHeight,                              ///< a bench aid: what rests on it, and how high it holds it there
    Stack, Radius, TurnedAngle,                        ///< a machine by its cam
    PullScale, Travel,                                 ///< a machine by its pull
    KnownMass, EmptyRead, KnownRead,                   ///< a scale: what was on it, what it showed without and with it
    IronRead, IronCount, IronMark,                     ///< iron on a scale; step and error of it are a chain's
    LeadLength, LeadMass,                              ///< a strap
    FirstHole, HoleSpacing, AnchorRead,                ///< a rack: lowest hole, hole to hole; an anchor where it has no holes
    MarkTaken, LiftPoint, FarContact, EndSpan,         ///< an implement: its mark, the levers of a tyre, the rests of a log
    SizeLength, SizeAcross, Gravity, Moisture, StuffDensity, Filled, Depth, ///< its size, its stuff, and what is in it
};

/// One of them: how much of the number's u² it makes, or what one step more of the reading would do.
struct ItemInputLine {
    ItemInput input = ItemInput::ChainMass;
    double share = 0;                 ///< of the number's u², 0 to 1; 0 for what is taken as it was read
    /// Change of the number, as a share of it, for one step more: 1 cm, of a link 0.1 mm, of a radius and from hole to hole 1 mm.
    std::optional<double> moreByStepRatio;
    bool operator==(const ItemInputLine&) const = default;
};

/// Mass by length of a chain.
struct ChainNumber {
    LinearDensity value, giveOrTake;
};
/// Pull of a band at the longest length that it was read at.
struct BandNumber {
    Length at;
    Force pull, giveOrTake;
    std::size_t readingCount = 0;
    BandModel model = BandModel::Line;
};
/// Help of a bench aid at the lowest height over the chest that it was read at, where it helps most.
struct AidNumber {
    Length aboveChest;
    Force help, giveOrTake;
    std::size_t readingCount = 0;
};
/// Turning moment of a machine's stack at the angle of its greatest radius.
struct TorqueNumber {
    Angle at;
    Torque value, giveOrTake;
    Length radius;
    std::size_t readingCount = 0;
};
/// Pull of a machine at the travel where it is greatest.
struct TravelNumber {
    Length at;
    Force pull, giveOrTake;
    std::size_t readingCount = 0;
};
/// Greatest error of a scale, what it read minus what was on it, the zero taken off. With its own half-width `accuracy` it goes on
/// into what is weighed.
struct ScaleNumber {
    Mass error, giveOrTake, at, accuracy;
    std::size_t readingCount = 0;
};
/// Mass of one bar or plate.
struct IronNumber {
    Mass each, giveOrTake;
    int count = 1;
};
/// Length of a strap.
struct LeadNumber {
    Length length, giveOrTake;
};
/// Height of a rack's highest hole; without holes, of its lowest anchor.
struct RackNumber {
    int hole = 0; ///< 0 for an anchor
    Height height, giveOrTake;
};
/// Mass of a tyre, log, stone, keg, sled, handle or bell.
struct ImplementNumber {
    Mass mass, giveOrTake;
    bool byMark = false;
};

/// A thing's own number with all that went into it. Give-or-take is for 19 in 20 (JCGM 100:2008).
struct ItemOrigin {
    std::variant<ChainNumber, BandNumber, AidNumber, TorqueNumber, TravelNumber, ScaleNumber, IronNumber, LeadNumber, RackNumber, ImplementNumber> number;
    std::vector<ItemInputLine> lines;
};

/// Where the number of a thing comes from. Chain: `m/L` or `ρ(πd²/4)[2(p−b)+π(b+d)]/p`; band and bench aid: the curve through their
/// readings; machine: `M·g0·r`, or the curve of what a scale read; scale: `read − empty − known`; iron: `read/count`; rack:
/// `lowest + (n−1)·spacing`; an implement as `implementMass` says. A strap, and a rack's heights, count to a centimetre (`uBarMark`).
/// A step more is worked out by reading it so and working the number out again, so it is right for any formula. Nothing where there is
/// no number.
[[nodiscard]] std::optional<ItemOrigin> originOf(const Measured& measured);

}
