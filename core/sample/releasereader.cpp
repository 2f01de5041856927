// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/releasereader.h"

namespace steelyard::sample {

namespace {

template <typename Quantity>
std::optional<Entered<Quantity>> entered(const std::optional<Quantity>& quantity)
{
    return quantity ? std::optional(Entered<Quantity>(*quantity)) : std::nullopt;
}

std::vector<Entered<Length>> lengthsFrom(std::vector<StrictObject> list, const std::string& key)
{
    std::vector<Entered<Length>> lengths;
    for (StrictObject& one : list) {
        lengths.push_back(one.neededLength(key));
        one.finish();
    }
    return lengths;
}

ReleaseAsked askedFrom(StrictObject& from)
{
    ReleaseAsked asked;
    asked.inPercent = from.has("up_percent");
    if (!asked.inPercent) {
        asked.down = Entered<Mass>(from.neededMass("down_kg"));
        return asked;
    }
    asked.upPercent = from.neededCount("up_percent");
    asked.downPercent = from.neededCount("down_percent");
    asked.downOfWayUp = from.flag("down_of_way_up", false);
    return asked;
}

EccentricSet setFrom(StrictObject& from)
{
    EccentricSet set;
    set.reps = from.neededCount("reps");
    set.tempoDown = std::chrono::seconds(from.neededCount("seconds_down"));
    if (from.has("cluster_reps")) {
        set.clusterReps = from.neededCount("cluster_reps");
        set.clusterRest = std::chrono::seconds(from.neededCount("cluster_rest_s"));
    }
    set.putBack = static_cast<PutBack>(from.choiceIndex("put_back", {"never", "each rep", "each cluster"}));
    set.putBackBy = static_cast<PutBackBy>(from.choiceIndex("put_back_by", {"nobody", "spotters", "athlete"}));
    return set;
}

}

ReleasePlan releaseFrom(StrictObject from)
{
    ReleasePlan plan;
    plan.way = static_cast<ReleaseWay>(from.choiceIndex("way", {"hooks", "partner lifts off", "partner adds", "bands let go", "dumbbells dropped"}));
    plan.asked = askedFrom(from);
    plan.hook.frame = entered(from.mass("frame_kg"));
    plan.hook.scaleStep = entered(from.mass("scale_step_kg"));
    plan.hook.room = entered(from.length("hook_room_cm"));
    plan.hook.rating = entered(from.mass("hook_rating_kg"));
    plan.hook.settings = lengthsFrom(from.list("settings"), "length_cm");
    plan.measures.sleeveRadius = entered(from.length("sleeve_radius_mm"));
    plan.measures.lipDrop = entered(from.length("lip_drop_mm"));
    plan.measures.lowest = lengthsFrom(from.list("reps_watched"), "lowest_cm");
    plan.measures.box = entered(from.length("box_cm"));
    plan.measures.margin = entered(from.length("margin_cm"));
    plan.measures.spacing = entered(from.length("spacing_cm"));
    plan.measures.grip = entered(from.length("grip_cm"));
    plan.measures.chest = entered(from.length("chest_cm"));
    plan.measures.throat = entered(from.length("throat_cm"));
    plan.push = entered(from.mass("push_kg"));
    plan.dumbbell = entered(from.mass("dumbbell_kg"));
    plan.set = setFrom(from);
    from.finish();
    return plan;
}

}
