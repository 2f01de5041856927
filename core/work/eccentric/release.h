// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/eccentricload.h"
#include "core/resistance/eccentric/eccentricway.h"
#include "core/season/lifts.h"
#include "core/season/marks.h"
#include "core/season/setuprecord.h"
#include "core/work/gates/mayuse.h"
#include "core/work/weighup.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// Standard uncertainty of a length read on a rule that is held to bar or hook (our choice); of the setting of a hook too.
inline constexpr Length uHookLength = metres(0.002);
/// How far a bar may stand askew and be taken for level (our choice): what the last hook needs then is said beside the share of reps.
inline constexpr Angle tiltToAllow = oneDegree;
/// Half of 28 mm, the shaft of a men's bar by the rule of weightlifting (from memory).
inline constexpr Length shaftRadius = metres(0.014);

/// Whether it is done lying under the bar, bench or incline press: then chest and throat say where the safeties go.
[[nodiscard]] bool isLyingPress(const LiftId& alike);

/// What bears on a plan besides the set-up that holds it.
struct ReleaseFacts {
    std::span<const KitItem> kit;
    BarMarks marks;
    LiftId alike;                            ///< the lift that ships and is this one, or is like it; none where nobody has said
    std::optional<Uncertain<Mass>> maximum;  ///< of this lift with plain iron
    HeldTo heldTo{};                         ///< what hangs is weighed as the set-up is
};

/// What is to be hung, and what it comes to.
struct ReleaseLoad {
    PlateLoad bar;
    std::vector<PlateType> onEach;             ///< of hooks, or outermost on each side and lifted off
    Uncertain<Mass> up;                        ///< bar, collars and plates that are lifted
    std::optional<Uncertain<Mass>> each;       ///< what is let go on one side; none of bands, nor of a push
    std::optional<Uncertain<Mass>> down;       ///< all that is lowered, at the top; none where nobody knows it
    Mass upMiss;                               ///< what hangs − what was asked
    std::optional<Mass> downMiss;              ///< none where nothing was asked of the way down, or nobody knows it
    std::optional<Mass> ideal;                 ///< what each side would let go, could anything be hung
    std::optional<Mass> lighterDown, heavierDown; ///< the next that can be made with the same bar
    std::optional<PercentReached> upOfMaximum, downOfMaximum, downOfUp;
};

/// Where hooks let go, of her own depth.
struct ReleaseHeights {
    DepthSpread depth;
    Length margin;
    bool marginIsOwn = false;             ///< the coach's, and not worked out of her spread
    Uncertain<Length> length;             ///< seat to foot, at least
    std::optional<Length> setting;        ///< of those that the hook has
    HookHeights at;                       ///< of the hook as it is set
    double releasedRatio = 0;             ///< share of her reps that come so deep, bar level
    std::optional<TiltedRelease> tilted;  ///< one end `tiltToAllow` lower, where the spacing is known
    std::optional<double> tiltedRatio;    ///< share of her reps that free the last hook then
};

/// Where the bar may rest on the safeties, and how many of her reps touch them.
struct ReleaseSafeties {
    SafetyHeights at;
    std::optional<double> touchedRatio; ///< of the upper end; of a squat only
};

/// All that a plan comes to. What cannot be worked out is absent, with the reason beside it; the rest is there none the less.
struct ReleaseAnswer {
    std::optional<ReleaseLoad> load;
    std::optional<ReleaseHeights> heights;    ///< of hooks only
    std::optional<ReleaseSafeties> safeties;  ///< of squats, bench and incline press
    std::optional<DownAndUp> pulls;
    std::optional<OneSideOn> oneSide;         ///< of hooks and of plates that are lifted off
    std::vector<int> overloadedReps;          ///< the first being 1
    std::optional<LoadAtWorst> worst;         ///< for gates; none where it is not known
    std::optional<Error> noLoad, noHeights, noSafeties, noPulls, noOneSide, setFault;

    /// Whether nothing is wanting that the way down has to be known for before anybody lies or stands under it.
    [[nodiscard]] bool isComplete() const { return load && pulls && !noHeights && !noSafeties && !noOneSide && !setFault; }
};

/// Works out the plan of a set-up (NotThere "release" without one): bar first, then what is let go from the rest of the same stock; hook
/// lengths from her own depth; pulls on the way down with whatever else hangs. Bands from below that hang are what is let go where that is
/// the way, and on the way up they are off. Plates lifted off have to fit the sleeve with the rest. u: plates as in eccentricLoad, of a
/// frame its scale's step/√12, else 2 % either way as of plates that nobody has weighed; dumbbells as plates; a push is exact where it was read.
[[nodiscard]] ReleaseAnswer releaseAnswer(const SetupRecord& setup, const ReleaseFacts& facts);

/// What a plan still wants before its set-up can be ready, gates and cautions apart.
enum class ReleaseWants : std::uint8_t {
    Nothing,
    Measuring, ///< something of the way down is not known
    ItsBar,    ///< another bar hangs than the one that it goes by
    Somebody,  ///< it is for nobody, and nobody's clearance can be looked up
};
/// Of a plan, with the bar as it hangs.
[[nodiscard]] ReleaseWants wantedBy(const ReleaseAnswer& answer, const std::optional<PlateLoad>& hung, bool forSomebody);

}
