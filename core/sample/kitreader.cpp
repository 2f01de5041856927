// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/kitreader.h"

#include "core/sample/implementreader.h"

#include <algorithm>
#include <iterator>

namespace steelyard::sample {

namespace {

ChainMeasurement chainFrom(StrictObject from)
{
    ChainMeasurement chain;
    chain.by = static_cast<ChainMeasuring>(from.choiceIndex("measured", {"weighed", "gauged"}));
    chain.length = from.length("length_cm");
    chain.mass = from.mass("mass_kg");
    chain.scaleStep = from.mass("scale_step_kg");
    chain.wire = from.length("wire_mm");
    chain.pitch = from.length("pitch_mm");
    chain.innerWidth = from.length("inner_width_mm");
    chain.scaleAccuracy = from.mass("scale_accuracy_kg");
    from.finish();
    return chain;
}

BandMeasurement bandFrom(StrictObject from)
{
    BandMeasurement band;
    band.rest = from.length("rest_cm");
    const std::size_t curve = from.choiceIndex("curve", {"best", "line", "quadratic", "rubber"});
    if (curve > 0)
        band.model = static_cast<BandModel>(curve - 1);
    for (StrictObject hanging : from.neededList("hangings")) {
        BandHanging h;
        h.mass = hanging.mass("mass_kg");
        h.length = hanging.length("length_cm");
        h.leftOut = hanging.flag("left_out", false);
        h.unloading = hanging.flag("on_the_way_back", false);
        hanging.finish();
        band.hangings.push_back(h);
    }
    from.finish();
    return band;
}

ScaleMeasurement scaleFrom(StrictObject from)
{
    ScaleMeasurement scale;
    scale.empty = from.mass("empty_kg");
    scale.step = from.mass("step_kg");
    for (StrictObject& reading : from.neededList("readings")) {
        scale.readings.push_back({reading.neededMass("known_kg"), reading.neededMass("read_kg")});
        reading.finish();
    }
    from.finish();
    return scale;
}

IronMeasurement ironFrom(StrictObject from)
{
    IronMeasurement iron;
    iron.sort = static_cast<IronSort>(from.choiceIndex("sort", {"bar", "plates"}));
    iron.marked = from.mass("marked_kg");
    iron.read = from.mass("read_kg");
    iron.step = from.mass("scale_step_kg");
    iron.accuracy = from.mass("scale_accuracy_kg");
    iron.count = from.neededCount("count");
    iron.ends = endsFrom(from);
    from.finish();
    return iron;
}

LeadMeasurement leadFrom(StrictObject from)
{
    LeadMeasurement lead{from.length("length_cm"), from.mass("mass_kg")};
    from.finish();
    return lead;
}

RackMeasurement rackFrom(StrictObject from)
{
    RackMeasurement rack;
    rack.firstHole = from.length("lowest_hole_cm");
    rack.spacing = from.length("hole_to_hole_cm");
    rack.holeCount = from.neededCount("holes");
    for (StrictObject& anchor : from.list("anchors")) {
        rack.anchors.emplace_back(anchor.neededLength("height_cm"));
        anchor.finish();
    }
    from.finish();
    return rack;
}

AidMeasurement aidFrom(StrictObject from)
{
    AidMeasurement aid;
    for (StrictObject reading : from.neededList("readings")) {
        aid.readings.push_back({reading.mass("mass_kg"), reading.length("above_chest_cm"), reading.flag("left_out", false)});
        reading.finish();
    }
    from.finish();
    return aid;
}

MachineMeasurement machineFrom(StrictObject from)
{
    MachineMeasurement machine;
    machine.by = static_cast<MachineMeasuring>(from.choiceIndex("by", {"radius", "pull"}));
    machine.stack = from.mass("stack_kg");
    machine.scaleStep = from.mass("scale_step_kg");
    for (StrictObject reading : from.neededList("readings")) {
        MachineReading& r = machine.readings.emplace_back();
        if (reading.has("angle_deg"))
            r.angle = Angle{reading.neededCount("angle_deg") * oneDegree.radians};
        r.radius = reading.length("radius_cm");
        r.travel = reading.length("travel_cm");
        r.pull = reading.mass("pull_kg");
        reading.finish();
    }
    from.finish();
    return machine;
}

/// Which of the kinds stands in `from` under its word, one of them, and its object; the first where none or several do.
std::pair<ItemKind, StrictObject> oneOf(StrictObject& from, const std::vector<ItemKind>& kinds)
{
    std::vector<ItemKind> there;
    std::copy_if(kinds.begin(), kinds.end(), std::back_inserter(there), [&from](ItemKind kind) { return from.has(wordOf(kind)); });
    if (there.size() != 1)
        from.fault(wordOf(kinds.front()), "one thing of the kit is wanted, and no more");
    const ItemKind kind = there.empty() ? kinds.front() : there.front();
    return {kind, from.neededObject(wordOf(kind))};
}

ChainPlacing chainPlacing(StrictObject from)
{
    ChainPlacing placing;
    placing.way = static_cast<ChainHangingWay>(from.choiceIndex("way", {"straight", "doubled", "bunched"}));
    placing.lead = from.neededLength("lead_cm");
    placing.leadMass = from.mass("lead_mass_kg").value_or(placing.leadMass);
    placing.bunch = from.length("bunch_cm").value_or(placing.bunch);
    from.finish();
    return placing;
}

BandPlacing bandPlacing(StrictObject from)
{
    BandPlacing placing;
    placing.doubled = from.neededFlag("doubled");
    placing.above = from.neededFlag("above");
    placing.anchorHeight = from.neededLength("anchor_cm");
    placing.offset = from.length("offset_cm").value_or(placing.offset);
    placing.handle = from.length("handle_cm").value_or(placing.handle);
    placing.heldBy = from.mass("held_by_kg");
    from.finish();
    return placing;
}

AidPlacing aidPlacing(StrictObject from)
{
    AidPlacing placing;
    if (const auto chest = from.length("chest_cm"))
        placing.chest = *chest;
    from.finish();
    return placing;
}

PlatesHere platesFrom(StrictObject from)
{
    PlatesHere here;
    here.type.mass = from.neededMass("mass_kg");
    here.type.diameter = from.neededLength("diameter_mm");
    here.type.thickness = from.neededLength("thickness_mm");
    here.count = from.neededCount("count");
    from.finish();
    return here;
}

}

BarMarks marksFrom(StrictObject& from)
{
    BarMarks marks;
    marks.start = static_cast<LiftStart>(from.choiceIndex("start", {"own bottom", "floor"}));
    marks.bottom = from.length("bottom_cm");
    marks.blocks = from.length("blocks_cm");
    marks.zoneFrom = from.length("zone_from_cm");
    marks.zoneTo = from.length("zone_to_cm");
    marks.top = from.length("top_cm");
    marks.rack = from.length("rack_cm");
    return marks;
}

Measured measuredFrom(StrictObject& from)
{
    const auto [kind, measured] = oneOf(from, {ItemKind::Chain, ItemKind::Band, ItemKind::Aid, ItemKind::Machine, ItemKind::Scale, ItemKind::Iron, ItemKind::Lead, ItemKind::Rack,
                                                ItemKind::Tyre, ItemKind::Log, ItemKind::Stone, ItemKind::Keg, ItemKind::Sled, ItemKind::Carry, ItemKind::Bell});
    if (isImplement(kind))
        return implementFrom(kind, measured);
    switch (kind) {
    case ItemKind::Band: return bandFrom(measured);
    case ItemKind::Aid: return aidFrom(measured);
    case ItemKind::Machine: return machineFrom(measured);
    case ItemKind::Scale: return scaleFrom(measured);
    case ItemKind::Iron: return ironFrom(measured);
    case ItemKind::Lead: return leadFrom(measured);
    case ItemKind::Rack: return rackFrom(measured);
    default: break;
    }
    return chainFrom(measured);
}

BarRecord barFrom(StrictObject from, bool withLoad)
{
    BarRecord bar;
    bar.bar = from.neededMass("mass_kg");
    bar.barEntered = from.neededFlag("entered");
    bar.collars = from.neededMass("collars_kg");
    if (withLoad)
        bar.wanted = from.neededMass("wanted_kg");
    bar.trust = static_cast<PlateTrust>(from.choiceIndex("plates", {"as marked", "unweighed"}));
    bar.sleeve = from.length("sleeve_cm");
    if (from.has("stock"))
        for (StrictObject& plates : from.neededList("stock"))
            bar.stock.push_back(platesFrom(plates));
    else
        bar.stock = usualStock();
    from.finish();
    return bar;
}

std::vector<HungRecord> hungFrom(std::vector<StrictObject> list, const ItemNamed& named)
{
    std::vector<HungRecord> hung;
    for (StrictObject& from : list) {
        HungRecord& record = hung.emplace_back();
        const std::string name = from.neededText("item");
        const KitItem* item = named(name);
        record.on = static_cast<HungOn>(from.choiceIndex("on", {"both sides", "left", "right"}));
        const auto [kind, placing] = oneOf(from, {ItemKind::Chain, ItemKind::Band, ItemKind::Aid});
        if (kind == ItemKind::Chain)
            record.placing = chainPlacing(placing);
        else if (kind == ItemKind::Band)
            record.placing = bandPlacing(placing);
        else
            record.placing = aidPlacing(placing);
        if (!item)
            from.fault("item", "\"" + name + "\" is not in the kit");
        else if (record.item = item->id; kind != kindOf(item->measurement))
            from.fault("item", "hangs as what it is not");
        from.finish();
    }
    return hung;
}

}
