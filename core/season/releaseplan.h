// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/entered.h"
#include "core/resistance/eccentric/eccentricset.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace steelyard {

/// How the way down is made heavier than the way up. Bands that are let go are those that hang in the set-up.
enum class ReleaseWay : std::uint8_t { Hooks, PartnerLiftsOff, PartnerAdds, BandsLetGo, DumbbellsDropped };

/// What is asked. In per cent the way up is of her maximum, and the way down of that or of the way up as it comes to hang; else the way up
/// is what the set-up wants on the bar.
struct ReleaseAsked {
    bool inPercent = true;
    double upPercent = 70, downPercent = 105;  ///< kept to a tenth
    bool downOfWayUp = false;                  ///< 140: 40 % more than the way up
    std::optional<Entered<Mass>> down{};       ///< with all that is let go
    bool operator==(const ReleaseAsked&) const = default;
};

/// Two hooks that are alike.
struct HookRecord {
    std::optional<Entered<Mass>> frame;        ///< of one, weighed
    std::optional<Entered<Mass>> scaleStep;    ///< of the scale that it was weighed on
    std::optional<Entered<Length>> room;       ///< for plates on one
    std::optional<Entered<Mass>> rating;       ///< what one may carry, its frame apart
    std::vector<Entered<Length>> settings;     ///< seat to foot, of each that it can be set to
    bool operator==(const HookRecord&) const = default;
};

/// Lengths and heights that decide where a hook lets go, and where the bar may come to rest.
struct ReleaseMeasures {
    std::optional<Entered<Length>> sleeveRadius;  ///< bar's centre to the top of the sleeve
    std::optional<Entered<Length>> lipDrop;       ///< tried with an empty bar
    std::vector<Entered<Height>> lowest;          ///< of the bar's centre, in each rep that was watched
    std::optional<Entered<Height>> box;           ///< or of the bar's centre on a box, the same each time
    std::optional<Entered<Length>> margin;        ///< the coach's own; else by her own spread
    std::optional<Entered<Length>> spacing;       ///< from hook to hook, and so from end to end
    std::optional<Entered<Length>> grip;          ///< from hand to hand
    std::optional<Entered<Height>> chest, throat; ///< of a bench press, lying as she will lie
    bool operator==(const ReleaseMeasures&) const = default;
};

/// How the way down of a set-up is made heavier. It belongs to the set-up that is lifted on the way up.
struct ReleasePlan {
    ReleaseWay way = ReleaseWay::Hooks;
    ReleaseAsked asked{};
    HookRecord hook{};
    ReleaseMeasures measures{};
    std::optional<Entered<Mass>> push{};     ///< of a partner who adds, read on a scale; nobody knows it otherwise
    std::optional<Entered<Mass>> dumbbell{}; ///< one of the two that are dropped
    EccentricSet set{};
    bool operator==(const ReleasePlan&) const = default;
};

/// What a look over of it holds for: all but what is asked and how the set is done.
[[nodiscard]] inline ReleasePlan withoutAsked(ReleasePlan plan)
{
    plan.asked = {};
    plan.set = {};
    return plan;
}

}
