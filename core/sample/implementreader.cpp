// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/implementreader.h"

namespace steelyard::sample {

namespace {

WholeMass wholeFrom(StrictObject& from)
{
    WholeMass whole;
    whole.read = from.mass("read_kg");
    whole.step = from.mass("scale_step_kg");
    whole.accuracy = from.mass("scale_accuracy_kg");
    whole.marked = from.mass("marked_kg");
    return whole;
}

std::optional<DensityRange> densityFrom(StrictObject& from)
{
    if (!from.has("density_least") && !from.has("density_most"))
        return std::nullopt;
    return DensityRange{from.neededCount("density_least"), from.neededCount("density_most")};
}

std::optional<Entered<Volume>> volumeFrom(StrictObject& from, const std::string& key)
{
    constexpr double millilitresInCubicMetre = 1e6;
    return from.has(key) ? std::optional<Entered<Volume>>(Volume::fromSi(from.neededCount(key) / millilitresInCubicMetre)) : std::nullopt;
}

TyreMeasurement tyreFrom(StrictObject& from)
{
    TyreMeasurement tyre;
    tyre.by = static_cast<TyreMeasuring>(from.choiceIndex("by", {"unknown", "edge", "whole"}));
    tyre.drained = from.flag("drained", false);
    for (StrictObject& edge : from.list("edges")) {
        tyre.edges.push_back({edge.mass("shown_kg"), edge.length("lift_point_cm"), edge.length("far_contact_cm")});
        edge.finish();
    }
    tyre.whole = wholeFrom(from);
    tyre.diameter = from.length("diameter_cm");
    tyre.width = from.length("width_cm");
    return tyre;
}

LogMeasurement logFrom(StrictObject& from)
{
    LogMeasurement log;
    log.by = static_cast<LogMeasuring>(from.choiceIndex("by", {"unknown", "size", "ends", "whole"}));
    log.girths = from.flag("girths", false);
    log.length = from.length("length_cm");
    log.firstAcross = from.length("first_cm");
    log.secondAcross = from.length("second_cm");
    if (from.has("gravity_thousandths"))
        log.gravityRatio = from.neededCount("gravity_thousandths") / 1000.0;
    if (from.has("moisture_percent"))
        log.moisturePercent = from.neededCount("moisture_percent");
    log.ends = endsFrom(from).value_or(BothEnds{});
    log.whole = wholeFrom(from);
    return log;
}

StoneMeasurement stoneFrom(StrictObject& from)
{
    StoneMeasurement stone;
    stone.by = static_cast<StoneMeasuring>(from.choiceIndex("by", {"unknown", "ball", "whole"}));
    stone.girth = from.flag("girth", false);
    stone.across = from.length("across_cm");
    stone.density = densityFrom(from);
    stone.whole = wholeFrom(from);
    return stone;
}

KegMeasurement kegFrom(StrictObject& from)
{
    KegMeasurement keg;
    keg.sort = static_cast<KegSort>(from.choiceIndex("sort", {"keg", "sandbag"}));
    keg.by = static_cast<KegMeasuring>(from.choiceIndex("by", {"unknown", "litres", "standing", "lying", "whole"}));
    keg.empty = from.mass("empty_kg");
    if (from.has("filling"))
        keg.filling = static_cast<Filling>(from.choiceIndex("filling", {"water", "dry sand", "wet sand", "lead shot", "rubber crumb"}));
    keg.density = densityFrom(from);
    keg.content = volumeFrom(from, "content_ml");
    keg.capacity = volumeFrom(from, "capacity_ml");
    keg.across = from.length("across_cm");
    keg.length = from.length("length_cm");
    keg.depth = from.length("depth_cm");
    keg.whole = wholeFrom(from);
    keg.pressure = static_cast<KegPressure>(from.choiceIndex("pressure", {"not known", "holding", "released"}));
    return keg;
}

SledMeasurement sledFrom(StrictObject& from)
{
    SledMeasurement sled;
    sled.whole = wholeFrom(from);
    sled.strap = from.length("strap_cm");
    sled.hook = from.length("hook_cm");
    return sled;
}

CarryMeasurement carryFrom(StrictObject& from)
{
    return {static_cast<CarrySort>(from.choiceIndex("sort", {"handles", "one handle", "hex bar", "yoke", "frame"})), wholeFrom(from)};
}

HandFit fitFrom(StrictObject& from, const std::string& key)
{
    return static_cast<HandFit>(from.choiceIndex(key, {"not tried", "fits", "does not fit"}));
}

BellMeasurement bellFrom(StrictObject& from)
{
    BellMeasurement bell;
    bell.sort = static_cast<BellSort>(from.choiceIndex("sort", {"kettlebell", "dumbbell"}));
    bell.whole = wholeFrom(from);
    for (StrictObject& setting : from.list("settings")) {
        bell.settings.emplace_back(setting.neededMass("mass_kg"));
        setting.finish();
    }
    bell.handle = from.length("handle_mm");
    bell.window = from.length("window_mm");
    bell.oneHand = fitFrom(from, "one_hand");
    bell.twoHands = fitFrom(from, "two_hands");
    bell.note = from.text("note");
    return bell;
}

Measured measuredAs(ItemKind kind, StrictObject& from)
{
    switch (kind) {
    case ItemKind::Tyre: return tyreFrom(from);
    case ItemKind::Log: return logFrom(from);
    case ItemKind::Stone: return stoneFrom(from);
    case ItemKind::Keg: return kegFrom(from);
    case ItemKind::Sled: return sledFrom(from);
    case ItemKind::Carry: return carryFrom(from);
    default: return bellFrom(from);
    }
}

}

Measured implementFrom(ItemKind kind, StrictObject from)
{
    Measured measured = measuredAs(kind, from);
    from.finish();
    return measured;
}

std::optional<BothEnds> endsFrom(StrictObject& from)
{
    if (!from.has("first_end_kg"))
        return std::nullopt;
    BothEnds ends;
    ends.first = from.mass("first_end_kg");
    ends.second = from.mass("second_end_kg");
    ends.span = from.length("span_cm");
    ends.firstInset = from.length("first_inset_cm");
    ends.secondInset = from.length("second_inset_cm");
    return ends;
}

SledSurface surfaceFrom(StrictObject& from, const RecordId& venue, const RecordId& sled)
{
    SledSurface surface;
    surface.venue = venue;
    surface.sled = sled;
    surface.name = from.neededText("name");
    for (StrictObject& read : from.neededList("readings")) {
        surface.readings.push_back({read.neededMass("added_kg"), read.neededMass("pull_kg")});
        read.finish();
    }
    surface.hip = from.length("hip_cm");
    surface.scaleStep = from.mass("scale_step_kg");
    surface.scaleAccuracy = from.mass("scale_accuracy_kg");
    return surface;
}

SledRunTimed runFrom(StrictObject& from, const RecordId& venue, const RecordId& sled)
{
    SledRunTimed run;
    run.venue = venue;
    run.sled = sled;
    run.surface = from.neededText("surface");
    run.added = from.neededMass("added_kg");
    run.distance = from.neededLength("distance_cm");
    run.time = std::chrono::milliseconds(from.neededCount("time_ms"));
    run.way = static_cast<SledWay>(from.choiceIndex("way", {"tow", "push"}));
    run.hip = from.length("hip_cm");
    return run;
}

}
