// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/codec.h"
#include "core/work/records/implementcodec.h"

#include <cmath>

namespace steelyard {

namespace {

constexpr Numbered<ChainMeasuring, 2> chainMeasurings{{{{ChainMeasuring::Weighed, 1}, {ChainMeasuring::Gauged, 2}}}};
constexpr Numbered<BandModel, 3> bandModels{{{{BandModel::Line, 1}, {BandModel::Quadratic, 2}, {BandModel::Rubber, 3}}}};
constexpr Numbered<MachineMeasuring, 2> machineMeasurings{{{{MachineMeasuring::Radius, 1}, {MachineMeasuring::Pull, 2}}}};
constexpr Numbered<IronSort, 2> ironSorts{{{{IronSort::Bar, 1}, {IronSort::Plates, 2}}}};

template <typename Item, typename Write>
std::vector<Content> contents(const std::vector<Item>& items, const Write& write)
{
    std::vector<Content> all;
    all.reserve(items.size());
    for (const Item& item : items)
        all.push_back(write(item));
    return all;
}

Content chainContent(const ChainMeasurement& chain, const WrittenIn& in)
{
    return RecordWriter(in).number(1, chainMeasurings.numberOf(chain.by)).length(2, chain.length).mass(3, chain.mass)
        .mass(4, chain.scaleStep).fine(5, chain.wire).fine(6, chain.pitch).fine(7, chain.innerWidth)
        .mass(8, chain.scaleAccuracy).content();
}

std::optional<ChainMeasurement> chainIn(RecordReader reader)
{
    ChainMeasurement chain;
    chain.by = reader.among(1, chainMeasurings);
    chain.length = reader.length(2);
    chain.mass = reader.mass(3);
    chain.scaleStep = reader.mass(4);
    chain.wire = reader.length(5);
    chain.pitch = reader.length(6);
    chain.innerWidth = reader.length(7);
    chain.scaleAccuracy = reader.mass(8);
    return ifRead(reader, chain);
}

std::optional<BandHanging> hangingIn(RecordReader reader)
{
    BandHanging hanging;
    hanging.mass = reader.mass(1);
    hanging.length = reader.length(2);
    hanging.leftOut = reader.flag(3);
    hanging.unloading = reader.flag(4);
    return ifRead(reader, hanging);
}

Content bandContent(const BandMeasurement& band, const WrittenIn& in)
{
    std::vector<Content> hangings;
    for (const BandHanging& h : band.hangings)
        hangings.push_back(RecordWriter(in).mass(1, h.mass).length(2, h.length).flag(3, h.leftOut).flag(4, h.unloading).content());
    RecordWriter writer(in);
    writer.length(1, band.rest).list(2, hangings);
    if (band.model)
        writer.number(3, bandModels.numberOf(*band.model));
    return writer.content();
}

std::optional<BandMeasurement> bandIn(RecordReader reader)
{
    BandMeasurement band;
    band.rest = reader.length(1);
    band.hangings = reader.list<BandHanging>(2, hangingIn);
    if (reader.has(3))
        band.model = reader.among(3, bandModels);
    return ifRead(reader, std::move(band));
}

Content aidContent(const AidMeasurement& aid, const WrittenIn& in)
{
    return RecordWriter(in).list(1, contents(aid.readings, [&in](const AidReading& r) {
        return RecordWriter(in).mass(1, r.mass).length(2, r.aboveChest).flag(3, r.leftOut).content();
    })).content();
}

std::optional<AidReading> aidReadingIn(RecordReader reader)
{
    AidReading reading;
    reading.mass = reader.mass(1);
    reading.aboveChest = reader.length(2);
    reading.leftOut = reader.flag(3);
    return ifRead(reader, reading);
}

std::optional<AidMeasurement> aidIn(RecordReader reader)
{
    AidMeasurement aid{reader.list<AidReading>(1, aidReadingIn)};
    return ifRead(reader, std::move(aid));
}

Content machineReadingContent(const MachineReading& reading, const WrittenIn& in)
{
    RecordWriter writer(in);
    if (reading.angle) {
        if (!std::isfinite(reading.angle->radians) || std::abs(reading.angle->radians) > 1e6)
            return std::nullopt;
        writer.number(1, std::llround(reading.angle->radians / oneDegree.radians * 1000));
    }
    return writer.fine(2, reading.radius).length(3, reading.travel).mass(4, reading.pull).content();
}

std::optional<MachineReading> machineReadingIn(RecordReader reader)
{
    MachineReading reading;
    if (reader.has(1))
        reading.angle = Angle{static_cast<double>(reader.neededNumber(1)) / 1000 * oneDegree.radians};
    reading.radius = reader.length(2);
    reading.travel = reader.length(3);
    reading.pull = reader.mass(4);
    return ifRead(reader, reading);
}

Content machineContent(const MachineMeasurement& machine, const WrittenIn& in)
{
    return RecordWriter(in).number(1, machineMeasurings.numberOf(machine.by)).mass(2, machine.stack).mass(3, machine.scaleStep)
        .list(4, contents(machine.readings, [&in](const MachineReading& r) { return machineReadingContent(r, in); })).content();
}

std::optional<MachineMeasurement> machineIn(RecordReader reader)
{
    MachineMeasurement machine;
    machine.by = reader.among(1, machineMeasurings);
    machine.stack = reader.mass(2);
    machine.scaleStep = reader.mass(3);
    machine.readings = reader.list<MachineReading>(4, machineReadingIn);
    return ifRead(reader, std::move(machine));
}

Content scaleContent(const ScaleMeasurement& scale, const WrittenIn& in)
{
    return RecordWriter(in).mass(1, scale.empty).mass(2, scale.step).list(3, contents(scale.readings, [&in](const ScaleReading& r) {
        return RecordWriter(in).mass(1, r.known).mass(2, r.read).content();
    })).content();
}

std::optional<ScaleReading> scaleReadingIn(RecordReader reader)
{
    ScaleReading reading;
    reading.known = reader.mass(1);
    reading.read = reader.mass(2);
    return ifRead(reader, reading);
}

std::optional<ScaleMeasurement> scaleIn(RecordReader reader)
{
    ScaleMeasurement scale;
    scale.empty = reader.mass(1);
    scale.step = reader.mass(2);
    scale.readings = reader.list<ScaleReading>(3, scaleReadingIn);
    return ifRead(reader, std::move(scale));
}

Content ironContent(const IronMeasurement& iron, const WrittenIn& in)
{
    RecordWriter writer(in);
    writer.number(1, ironSorts.numberOf(iron.sort)).mass(2, iron.marked).mass(3, iron.read).mass(4, iron.step).mass(5, iron.accuracy).number(6, iron.count);
    if (iron.ends)
        writer.part(7, bothEndsContent(*iron.ends, in));
    return writer.content();
}

std::optional<IronMeasurement> ironIn(RecordReader reader)
{
    IronMeasurement iron;
    iron.sort = reader.among(1, ironSorts);
    iron.marked = reader.mass(2);
    iron.read = reader.mass(3);
    iron.step = reader.mass(4);
    iron.accuracy = reader.mass(5);
    iron.count = static_cast<int>(reader.neededNumber(6));
    if (reader.has(7))
        iron.ends = reader.needed(bothEndsIn(reader.part(7)));
    return ifRead(reader, iron);
}

Content leadContent(const LeadMeasurement& lead, const WrittenIn& in)
{
    return RecordWriter(in).length(1, lead.length).mass(2, lead.mass).content();
}

std::optional<LeadMeasurement> leadIn(RecordReader reader)
{
    LeadMeasurement lead;
    lead.length = reader.length(1);
    lead.mass = reader.mass(2);
    return ifRead(reader, lead);
}

Content rackContent(const RackMeasurement& rack, const WrittenIn& in)
{
    return RecordWriter(in).length(1, rack.firstHole).length(2, rack.spacing).number(3, rack.holeCount)
        .list(4, contents(rack.anchors, [&in](const Entered<Height>& anchor) { return RecordWriter(in).length(1, anchor).content(); })).content();
}

std::optional<Entered<Height>> anchorIn(RecordReader reader)
{
    const Entered<Height> anchor = reader.neededLength(1);
    return ifRead(reader, anchor);
}

std::optional<RackMeasurement> rackIn(RecordReader reader)
{
    RackMeasurement rack;
    rack.firstHole = reader.length(1);
    rack.spacing = reader.length(2);
    rack.holeCount = static_cast<int>(reader.neededNumber(3));
    rack.anchors = reader.list<Entered<Height>>(4, anchorIn);
    return ifRead(reader, std::move(rack));
}

// the number of the kind's key, then how it is written; one overload for each kind
KeyedContent keyed(const ChainMeasurement& chain, const WrittenIn& in) { return {2, chainContent(chain, in)}; }
KeyedContent keyed(const BandMeasurement& band, const WrittenIn& in) { return {3, bandContent(band, in)}; }
KeyedContent keyed(const AidMeasurement& aid, const WrittenIn& in) { return {4, aidContent(aid, in)}; }
KeyedContent keyed(const MachineMeasurement& machine, const WrittenIn& in) { return {5, machineContent(machine, in)}; }
KeyedContent keyed(const ScaleMeasurement& scale, const WrittenIn& in) { return {6, scaleContent(scale, in)}; }
KeyedContent keyed(const IronMeasurement& iron, const WrittenIn& in) { return {7, ironContent(iron, in)}; }
KeyedContent keyed(const LeadMeasurement& lead, const WrittenIn& in) { return {8, leadContent(lead, in)}; }
KeyedContent keyed(const RackMeasurement& rack, const WrittenIn& in) { return {9, rackContent(rack, in)}; }

template <typename Measurement>
Measured readAs(RecordReader& reader, std::uint32_t keyNumber, std::optional<Measurement> (*read)(RecordReader))
{
    return reader.needed(read(reader.part(keyNumber)));
}

Measured measuredIn(RecordReader& reader)
{
    if (reader.has(2))
        return readAs(reader, 2, chainIn);
    if (reader.has(4))
        return readAs(reader, 4, aidIn);
    if (reader.has(5))
        return readAs(reader, 5, machineIn);
    if (reader.has(6))
        return readAs(reader, 6, scaleIn);
    if (reader.has(7))
        return readAs(reader, 7, ironIn);
    if (reader.has(8))
        return readAs(reader, 8, leadIn);
    if (reader.has(9))
        return readAs(reader, 9, rackIn);
    if (hasImplement(reader))
        return implementIn(reader);
    return readAs(reader, 3, bandIn);
}

}

Content contentOf(const MeasurementRecord& record, const WrittenIn& in)
{
    const auto [key, content] = std::visit([&in](const auto& measured) { return keyed(measured, in); }, record.measured);
    return RecordWriter(in).id(1, record.item).part(key, content).content();
}

std::optional<MeasurementRecord> measurementIn(journal::ByteView content)
{
    RecordReader reader(content);
    MeasurementRecord record;
    record.item = reader.neededId(1);
    record.measured = measuredIn(reader);
    return ifRead(reader, std::move(record));
}

}
