// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/measure/uncertain.h"

#include <optional>
#include <span>

namespace steelyard {

/// How deep she goes: the lowest bar centre, and how it differs from rep to rep.
struct DepthSpread {
    Height lowest;          ///< mean over her reps
    Length uReading;        ///< of the tape or mark, the same for all of them
    Length sd;              ///< from rep to rep
    int repsCount = 0;      ///< that were watched; 0 where there is nothing to differ, as on a box
};

/// From the lowest bar centre of each of her reps: mean and SD (n − 1). Refuses fewer than 3, heights that are not finite or below the
/// floor, and an uncertainty below 0.
[[nodiscard]] Result<DepthSpread> depthSpread(std::span<const Height> lowestOfEach, Length uReading);

/// On a box, or any stop: the same depth each time.
[[nodiscard]] DepthSpread depthOnBox(const Uncertain<Height>& lowest);

/// How far above her bottom the hooks should be free: 2·SD of her own depth, so that about one rep in forty is too shallow. In one squat
/// study the depth differed by 6.6 % of 520 mm from rep to rep, which asks for 7 cm where 3 cm is usual. 0 on a box: give it some of your own.
[[nodiscard]] Length depthMargin(const DepthSpread& depth);

/// Which share of her reps comes below a height: of what is to let go the share that does, of what is to stay clear the share that
/// touches. Student's t for the next of normally spread depths, `P(t(n−1) < (h − mean)/√(SD²(1 + 1/n) + u²))`, with the degrees of
/// freedom of Welch and Satterthwaite; the normal distribution without an SD; 0 or 1 where nothing is uncertain. Source: Boost.Math.
[[nodiscard]] double fractionBelow(const Uncertain<Height>& height, const DepthSpread& depth);

/// What of the bar and the hook decides where it lets go. The drop is tried with an empty bar.
struct HookFit {
    Uncertain<Length> sleeveRadius; ///< from the bar's centre to the top of the sleeve, on which the hook sits
    Uncertain<Length> lipDrop;      ///< how far the bar goes on down, the foot standing, until the lip is clear
};

/// How long the hook must be from its seat to its foot, `bottom + margin + sleeve radius + lip drop`: what is measured from the bar's centre
/// and not from the seat lets go too low, or never. u in squares. Refuses lengths that are not finite, a bottom and a radius not above 0, a
/// margin and a drop below 0.
[[nodiscard]] Result<Uncertain<Length>> hookLength(const Uncertain<Height>& bottom, const Uncertain<Length>& margin, const HookFit& fit);

/// The shortest of the lengths that a hook can be set to which is long enough: longer lets go sooner, shorter perhaps never. Refuses where
/// none is.
[[nodiscard]] Result<Length> hookSetting(Length wanted, std::span<const Length> settings);

/// Where a hook of a length leaves the bar: bar centres on the way down.
struct HookHeights {
    Uncertain<Height> touch; ///< `length − sleeve radius`: its foot stands, and the overload ends
    Uncertain<Height> free;  ///< `touch − lip drop`: the bar can go up without it
};

/// Of a hook as it is set, its length with the u of setting it. u in squares. Refuses a hook too short to be free above the floor, and a
/// fit as hookLength does.
[[nodiscard]] Result<HookHeights> hookHeights(const Uncertain<Length>& length, const HookFit& fit);

/// How much lower one end of the bar is than the other, `spacing·sin(tilt)`: 1° over 1.6 m is 2.8 cm. Either sign of a tilt gives a drop
/// above 0.
[[nodiscard]] Length endDrop(Length spacing, Angle tilt);

/// Where the middle of a tilted bar is when the lower end's hook is free, and when the higher end's is: between the two one side carries
/// its hook and the other does not.
struct TiltedRelease {
    Uncertain<Height> firstFree; ///< `free + drop/2`
    Uncertain<Height> lastFree;  ///< `free − drop/2`; what the margin has to reach
};

/// Refuses a spacing not above 0, and a tilt that is not between −30° and 30°.
[[nodiscard]] Result<TiltedRelease> tiltedRelease(const HookHeights& heights, Length spacing, Angle tilt);

/// What hangs when one side lets go and the other stays on.
struct OneSideOn {
    Uncertain<Mass> heavierBy;  ///< that side, by its hook
    Uncertain<Mass> inAll;      ///< on the bar
    Torque tipping;             ///< about the middle of the bar, `hook·g0·spacing/2`
    Torque uTipping;
    std::optional<Uncertain<Mass>> nearHand, farHand; ///< what each hand holds, where the bar is held by hands
};

/// By statics, bar level and at rest, what lies on the bar in its middle; with hands a grip g apart and hooks s apart the near hand holds
/// `bar/2 + hook(1/2 + s/2g)`, the far one `bar/2 + hook(1/2 − s/2g)`, which may be below 0: it has to pull down. u in squares, lengths as
/// exact. Refuses masses not above 0, and a spacing or grip not above 0.
[[nodiscard]] Result<OneSideOn> oneSideStaysOn(const Uncertain<Mass>& bar, const Uncertain<Mass>& hook, Length spacing, std::optional<Length> grip = std::nullopt);

/// Where the bar's centre may rest on the safeties. Try it with an empty bar.
struct SafetyHeights {
    Uncertain<Height> lowest, highest;
};

/// In a squat 2 to 5 cm below her own bottom (common practice, no source). Reps deeper than the upper end touch them: see fractionBelow.
/// Refuses a bottom that leaves no room above the floor, and numbers that are not finite.
[[nodiscard]] Result<SafetyHeights> squatSafeties(const Uncertain<Height>& bottom);

/// In a bench press the lower side of the bar comes to rest above the throat and below the arched chest, lying as she will lie, both by
/// their give-or-take (common practice, no source): `throat + radius + give` to `chest + radius − give`. Refuses numbers that are not
/// finite, a shaft not above 0, and a chest and throat that leave nothing between them.
[[nodiscard]] Result<SafetyHeights> benchSafeties(const Uncertain<Height>& archedChest, const Uncertain<Height>& throat, Length shaftRadius);

}
