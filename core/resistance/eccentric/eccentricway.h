// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/uncertain.h"
#include "core/resistance/releasehook.h"
#include "core/resistance/setup.h"

#include <optional>
#include <variant>
#include <vector>

namespace steelyard {

/// Two release hooks that let go near the bottom: each with its frame and plates.
struct HooksReleased {
    Uncertain<Mass> each;
    Uncertain<Height> touch; ///< bar centre where their feet stand
};

/// Partners take plates off at the bottom, both sides together.
struct PartnerLiftsOff {
    Uncertain<Mass> both;
};

/// A partner pushes down with the hands; how much is not known unless it was measured.
struct PartnerAdds {
    std::optional<Uncertain<Force>> push;
};

/// Bands pull on the way down and are let go at the bottom.
struct BandsLetGo {
    std::vector<HungItem> left, right;
};

/// Dumbbells held on the way down and dropped at the bottom, one in each hand.
struct DumbbellsDropped {
    Uncertain<Mass> each;
};

/// What makes the way down heavier than the way up.
using EccentricWay = std::variant<HooksReleased, PartnerLiftsOff, PartnerAdds, BandsLetGo, DumbbellsDropped>;

/// What she lowers and what she lifts. A pull that is not known is absent.
struct DownAndUp {
    std::optional<Reading> downTop;  ///< where the way down begins
    std::optional<Reading> downEnds; ///< just above where the overload ends
    std::optional<Reading> downMean; ///< exact mean over the whole path, what lies below the end among it
    Uncertain<Height> ends;          ///< where the overload ends: the hooks' touch, else her bottom
    PullCurve up;                    ///< of the bar as it is lifted
};

/// Works out both ways of a lift whose way up is a set-up. Plates of hooks, plates lifted off and dumbbells may be of the bar's own set, so
/// that their u adds straight to the iron's; a push's adds in squares. Below their touch hooks no longer pull: the mean takes
/// `hooks·(top − touch)/(top − bottom)`, and the u of each mark once, in both terms. Refuses what pullCurve refuses, masses not above 0, a
/// push that is not finite or below 0, no bands or things that are none, and a touch that is not between bottom and top: hooks that touch
/// below her bottom never let go.
[[nodiscard]] Result<DownAndUp> downAndUp(const Setup& up, const EccentricWay& way);

}
