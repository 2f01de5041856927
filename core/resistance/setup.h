// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/hung.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace steelyard {

/// The bar's path for one athlete and lift, every height at the bar's centre line above the floor.
struct LiftPath {
    Height bottom, top;
    std::optional<Height> zoneFrom, zoneTo; ///< her sticking zone: her own or absent, never assumed
    std::optional<Height> rack;             ///< where she takes the bar
    Length uMark;                           ///< standard uncertainty of each mark; marks are independent
};

/// Loads that must not be passed, compared at the unfavourable end (value + give-or-take).
struct Limits {
    std::optional<Mass> cap;           ///< for this athlete and lift
    std::optional<Mass> rackRating;    ///< what the rack's hooks may carry
    std::optional<Mass> safetyRating;  ///< what the safeties may carry
    std::optional<Length> sleeve;      ///< room for plates on one sleeve
};

/// What is hung, for one athlete and lift.
struct Setup {
    Mass bar, collars, plates;        ///< collars and plates of both sides together
    Mass uIron;                       ///< standard uncertainty of bar, collars and plates together
    Length platesThickness;           ///< of one side
    std::vector<HungItem> left, right;
    LiftPath path;
    Limits limits;
};

/// A pull with its give-or-take; `degreesOfFreedom` is Welch–Satterthwaite's.
struct Reading {
    Force value;
    Force u;
    Force giveOrTake;
    double degreesOfFreedom = knownExactly;
    [[nodiscard]] Force unfavourable() const { return value + giveOrTake; }
};

enum class Side : std::uint8_t { Left, Right, Both };

enum class SetupWarningCode : std::uint8_t {
    FirstLinkUp,    ///< a chain starts to leave the floor inside the path
    LastLinkOff,    ///< a chain is off the floor and swings above this height
    BandSlack,      ///< a band is slack up to (anchored below) or from (above) this height
    BeyondMeasured, ///< a pull is unknown past this height: above it, or below it when it ends downwards (anchored above)
    SidesUneven,    ///< left and right differ by more than 2 % of the total; `side` is the heavier
    NotRising,      ///< the total pull falls from this height on
    PulledForward,  ///< bands pull along the floor by more than 3 % of the total
    PulledBack,
    OverCap,
    OverRackRating,
    OverSafetyRating,
    SleeveFull,     ///< more plates than the sleeve holds; without a height
};

/// What to look at before lifting: a code, the side, and the height where it begins.
struct SetupWarning {
    SetupWarningCode code;
    Side side = Side::Both;
    std::optional<Height> height; ///< an exact crossing, not a sample
    bool operator==(const SetupWarning&) const = default;
};

/// One height of the curve: what each part pulls there, both sides together.
struct CurveSample {
    Height height;
    Force iron, chain, band, help;
    Force total;
    Force u, giveOrTake;
    bool known = true;
};

/// What she lifts at every height. A pull that is not known is absent, and then the set-up is not ready.
struct PullCurve {
    std::optional<Reading> rack, bottom, zone, top, mean;
    std::optional<Reading> zoneLeast, zoneGreatest;
    std::optional<Force> twoPointMean;   ///< (bottom + top)/2, the usual shortcut, to stand beside the mean
    std::optional<Energy> work;          ///< mean × travel, at rest
    Mass movingBottom, movingTop;        ///< mass that moves with the bar
    std::optional<Force> anchorPull;     ///< greatest upward pull on one band's anchor on the path
    bool ready = false;
    std::vector<SetupWarning> warnings;
    std::vector<CurveSample> samples;    ///< from bottom to top, at most 200, the corners among them
};

/// Works out a set-up: pulls at the marks, exact mean over height at rest (piecewise integrals), their uncertainty
/// (JCGM 100:2008: mark error by the local slope, the steeper side at a corner; shared measurements with their signs;
/// twins independent), warnings at exact heights. u of a mean M over [a, b] from its marks: √((M−Fa)²+(Fb−M)²)/(b−a)·u.
/// Refuses marks out of order or below the floor, masses below 0, numbers that are not finite.
/// `samples` of 0 leaves the curve out; more than 200 are cut to 200.
[[nodiscard]] Result<PullCurve> pullCurve(const Setup& setup, std::size_t samples = 200);

}
