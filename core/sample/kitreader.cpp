// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/kitreader.h"

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

/// A chain or a band stands in `from`, one of them; which, and its object.
std::pair<bool, StrictObject> chainOrBand(StrictObject& from)
{
    const bool isChain = from.has("chain");
    if (isChain == from.has("band"))
        from.fault("chain", "either a chain or a band is wanted");
    return {isChain, from.neededObject(isChain ? "chain" : "band")};
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
    if (from.has("scale"))
        return scaleFrom(from.neededObject("scale"));
    if (from.has("iron"))
        return ironFrom(from.neededObject("iron"));
    if (from.has("lead"))
        return leadFrom(from.neededObject("lead"));
    if (from.has("rack"))
        return rackFrom(from.neededObject("rack"));
    const auto [isChain, measured] = chainOrBand(from);
    return isChain ? Measured(chainFrom(measured)) : Measured(bandFrom(measured));
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
        HungRecord record;
        const std::string name = from.neededText("item");
        const KitItem* item = named(name);
        record.on = static_cast<HungOn>(from.choiceIndex("on", {"both sides", "left", "right"}));
        const auto [isChain, placing] = chainOrBand(from);
        if (isChain)
            record.placing = chainPlacing(placing);
        else
            record.placing = bandPlacing(placing);
        if (!item)
            from.fault("item", "\"" + name + "\" is not in the kit");
        else if (record.item = item->id; isChain ? !std::holds_alternative<ChainMeasurement>(item->measurement)
                                                 : !std::holds_alternative<BandMeasurement>(item->measurement))
            from.fault("item", "hangs as what it is not");
        from.finish();
        hung.push_back(std::move(record));
    }
    return hung;
}

}
