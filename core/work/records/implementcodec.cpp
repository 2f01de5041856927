// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/implementcodec.h"

#include <cmath>
#include <limits>

namespace steelyard {

namespace {

constexpr Numbered<TyreMeasuring, 3> tyreMeasurings{{{{TyreMeasuring::Unknown, 1}, {TyreMeasuring::Edge, 2}, {TyreMeasuring::Whole, 3}}}};
constexpr Numbered<LogMeasuring, 4> logMeasurings{
    {{{LogMeasuring::Unknown, 1}, {LogMeasuring::Size, 2}, {LogMeasuring::Ends, 3}, {LogMeasuring::Whole, 4}}}};
constexpr Numbered<StoneMeasuring, 3> stoneMeasurings{{{{StoneMeasuring::Unknown, 1}, {StoneMeasuring::Ball, 2}, {StoneMeasuring::Whole, 3}}}};
constexpr Numbered<KegSort, 2> kegSorts{{{{KegSort::Keg, 1}, {KegSort::Sandbag, 2}}}};
constexpr Numbered<KegMeasuring, 5> kegMeasurings{{{{KegMeasuring::Unknown, 1}, {KegMeasuring::Litres, 2}, {KegMeasuring::Standing, 3},
                                                    {KegMeasuring::Lying, 4}, {KegMeasuring::Whole, 5}}}};
constexpr Numbered<Filling, 5> fillings{
    {{{Filling::Water, 1}, {Filling::DrySand, 2}, {Filling::WetSand, 3}, {Filling::LeadShot, 4}, {Filling::RubberCrumb, 5}}}};
constexpr Numbered<KegPressure, 3> pressures{{{{KegPressure::NotKnown, 1}, {KegPressure::Holding, 2}, {KegPressure::Released, 3}}}};
constexpr Numbered<CarrySort, 5> carrySorts{
    {{{CarrySort::Handles, 1}, {CarrySort::OneHandle, 2}, {CarrySort::HexBar, 3}, {CarrySort::Yoke, 4}, {CarrySort::Frame, 5}}}};
constexpr Numbered<BellSort, 2> bellSorts{{{{BellSort::Kettlebell, 1}, {BellSort::Dumbbell, 2}}}};
constexpr Numbered<HandFit, 3> handFits{{{{HandFit::NotTried, 1}, {HandFit::Fits, 2}, {HandFit::DoesNotFit, 3}}}};
constexpr Numbered<SledWay, 2> sledWays{{{{SledWay::Tow, 1}, {SledWay::Push, 2}}}};

Content wholeContent(const WholeMass& whole, const WrittenIn& in)
{
    return RecordWriter(in).mass(1, whole.read).mass(2, whole.step).mass(3, whole.accuracy).mass(4, whole.marked).content();
}

std::optional<WholeMass> wholeIn(RecordReader reader)
{
    WholeMass whole;
    whole.read = reader.mass(1);
    whole.step = reader.mass(2);
    whole.accuracy = reader.mass(3);
    whole.marked = reader.mass(4);
    return ifRead(reader, whole);
}

/// A ratio as so many parts of one; nothing written where it is no number that a whole one can stand for.
Content partsOf(double ratio, double partsInOne)
{
    constexpr double most = 1e9;
    const double parts = ratio * partsInOne;
    return std::isfinite(parts) && std::abs(parts) < most ? Content(journal::numberItem(std::llround(parts))) : std::nullopt;
}

Content densityContent(const DensityRange& range)
{
    return RecordWriter({}).number(1, range.leastCount).number(2, range.mostCount).content();
}

std::optional<DensityRange> densityIn(RecordReader reader)
{
    const std::int64_t least = reader.neededNumber(1), most = reader.neededNumber(2);
    constexpr std::int64_t greatest = std::numeric_limits<int>::max();
    if (least < 0 || least > greatest || most < 0 || most > greatest)
        return std::nullopt;
    return ifRead(reader, DensityRange{static_cast<int>(least), static_cast<int>(most)});
}

template <typename Item, typename Write>
std::vector<Content> each(const std::vector<Item>& items, const Write& write)
{
    std::vector<Content> all;
    all.reserve(items.size());
    for (const Item& item : items)
        all.push_back(write(item));
    return all;
}

std::optional<TyreEdgeReading> edgeIn(RecordReader reader)
{
    TyreEdgeReading edge;
    edge.shown = reader.mass(1);
    edge.liftPoint = reader.length(2);
    edge.farContact = reader.length(3);
    return ifRead(reader, edge);
}

std::optional<TyreMeasurement> tyreIn(RecordReader reader)
{
    TyreMeasurement tyre;
    tyre.by = reader.among(1, tyreMeasurings);
    tyre.drained = reader.flag(2);
    tyre.edges = reader.list<TyreEdgeReading>(3, edgeIn);
    tyre.whole = reader.needed(wholeIn(reader.part(4)));
    tyre.diameter = reader.length(5);
    tyre.width = reader.length(6);
    return ifRead(reader, std::move(tyre));
}

std::optional<LogMeasurement> logIn(RecordReader reader)
{
    LogMeasurement log;
    log.by = reader.among(1, logMeasurings);
    log.girths = reader.flag(2);
    log.length = reader.length(3);
    log.firstAcross = reader.length(4);
    log.secondAcross = reader.length(5);
    if (reader.has(6))
        log.gravityRatio = static_cast<double>(reader.neededNumber(6)) / 1000;
    if (reader.has(7))
        log.moisturePercent = static_cast<double>(reader.neededNumber(7)) / 10;
    log.ends = reader.needed(bothEndsIn(reader.part(8)));
    log.whole = reader.needed(wholeIn(reader.part(9)));
    return ifRead(reader, std::move(log));
}

std::optional<StoneMeasurement> stoneIn(RecordReader reader)
{
    StoneMeasurement stone;
    stone.by = reader.among(1, stoneMeasurings);
    stone.girth = reader.flag(2);
    stone.across = reader.length(3);
    if (reader.has(4))
        stone.density = reader.needed(densityIn(reader.part(4)));
    stone.whole = reader.needed(wholeIn(reader.part(5)));
    return ifRead(reader, std::move(stone));
}

std::optional<KegMeasurement> kegIn(RecordReader reader)
{
    KegMeasurement keg;
    keg.sort = reader.among(1, kegSorts);
    keg.by = reader.among(2, kegMeasurings);
    keg.empty = reader.mass(3);
    if (reader.has(4))
        keg.filling = reader.among(4, fillings);
    if (reader.has(5))
        keg.density = reader.needed(densityIn(reader.part(5)));
    keg.content = reader.volume(6);
    keg.capacity = reader.volume(7);
    keg.across = reader.length(8);
    keg.length = reader.length(9);
    keg.depth = reader.length(10);
    keg.whole = reader.needed(wholeIn(reader.part(11)));
    keg.pressure = reader.among(12, pressures);
    return ifRead(reader, std::move(keg));
}

std::optional<SledMeasurement> sledIn(RecordReader reader)
{
    SledMeasurement sled;
    sled.whole = reader.needed(wholeIn(reader.part(1)));
    sled.strap = reader.length(2);
    sled.hook = reader.length(3);
    return ifRead(reader, std::move(sled));
}

std::optional<CarryMeasurement> carryIn(RecordReader reader)
{
    CarryMeasurement carry;
    carry.sort = reader.among(1, carrySorts);
    carry.whole = reader.needed(wholeIn(reader.part(2)));
    return ifRead(reader, std::move(carry));
}

std::optional<Entered<Mass>> settingIn(RecordReader reader)
{
    const Entered<Mass> setting = reader.neededMass(1);
    return ifRead(reader, setting);
}

std::optional<BellMeasurement> bellIn(RecordReader reader)
{
    BellMeasurement bell;
    bell.sort = reader.among(1, bellSorts);
    bell.whole = reader.needed(wholeIn(reader.part(2)));
    bell.settings = reader.list<Entered<Mass>>(3, settingIn);
    bell.handle = reader.length(4);
    bell.window = reader.length(5);
    bell.oneHand = reader.among(6, handFits);
    bell.twoHands = reader.among(7, handFits);
    if (reader.has(8))
        bell.note = reader.neededText(8);
    return ifRead(reader, std::move(bell));
}

std::optional<TowRead> towReadIn(RecordReader reader)
{
    TowRead read{reader.neededMass(1), reader.neededMass(2)};
    return ifRead(reader, read);
}

template <typename Measurement>
Measured readAs(RecordReader& reader, std::uint32_t keyNumber, std::optional<Measurement> (*read)(RecordReader))
{
    return reader.needed(read(reader.part(keyNumber)));
}

constexpr std::uint32_t firstKeyNumber = 10, lastKeyNumber = 16;

}

Content bothEndsContent(const BothEnds& ends, const WrittenIn& in)
{
    return RecordWriter(in).mass(1, ends.first).mass(2, ends.second).length(3, ends.span).length(4, ends.firstInset).length(5, ends.secondInset).content();
}

std::optional<BothEnds> bothEndsIn(RecordReader reader)
{
    BothEnds ends;
    ends.first = reader.mass(1);
    ends.second = reader.mass(2);
    ends.span = reader.length(3);
    ends.firstInset = reader.length(4);
    ends.secondInset = reader.length(5);
    return ifRead(reader, ends);
}

KeyedContent keyed(const TyreMeasurement& tyre, const WrittenIn& in)
{
    return {10, RecordWriter(in).number(1, tyreMeasurings.numberOf(tyre.by)).flag(2, tyre.drained)
        .list(3, each(tyre.edges, [&in](const TyreEdgeReading& e) { return RecordWriter(in).mass(1, e.shown).length(2, e.liftPoint).length(3, e.farContact).content(); }))
        .part(4, wholeContent(tyre.whole, in)).length(5, tyre.diameter).length(6, tyre.width).content()};
}

KeyedContent keyed(const LogMeasurement& log, const WrittenIn& in)
{
    RecordWriter writer(in);
    writer.number(1, logMeasurings.numberOf(log.by)).flag(2, log.girths).length(3, log.length).length(4, log.firstAcross).length(5, log.secondAcross);
    if (log.gravityRatio)
        writer.part(6, partsOf(*log.gravityRatio, 1000));
    if (log.moisturePercent)
        writer.part(7, partsOf(*log.moisturePercent, 10));
    return {11, writer.part(8, bothEndsContent(log.ends, in)).part(9, wholeContent(log.whole, in)).content()};
}

KeyedContent keyed(const StoneMeasurement& stone, const WrittenIn& in)
{
    RecordWriter writer(in);
    writer.number(1, stoneMeasurings.numberOf(stone.by)).flag(2, stone.girth).length(3, stone.across);
    if (stone.density)
        writer.part(4, densityContent(*stone.density));
    return {12, writer.part(5, wholeContent(stone.whole, in)).content()};
}

KeyedContent keyed(const KegMeasurement& keg, const WrittenIn& in)
{
    RecordWriter writer(in);
    writer.number(1, kegSorts.numberOf(keg.sort)).number(2, kegMeasurings.numberOf(keg.by)).mass(3, keg.empty);
    if (keg.filling)
        writer.number(4, fillings.numberOf(*keg.filling));
    if (keg.density)
        writer.part(5, densityContent(*keg.density));
    return {13, writer.volume(6, keg.content).volume(7, keg.capacity).length(8, keg.across).length(9, keg.length).length(10, keg.depth)
        .part(11, wholeContent(keg.whole, in)).number(12, pressures.numberOf(keg.pressure)).content()};
}

KeyedContent keyed(const SledMeasurement& sled, const WrittenIn& in)
{
    return {14, RecordWriter(in).part(1, wholeContent(sled.whole, in)).length(2, sled.strap).length(3, sled.hook).content()};
}

KeyedContent keyed(const CarryMeasurement& carry, const WrittenIn& in)
{
    return {15, RecordWriter(in).number(1, carrySorts.numberOf(carry.sort)).part(2, wholeContent(carry.whole, in)).content()};
}

KeyedContent keyed(const BellMeasurement& bell, const WrittenIn& in)
{
    RecordWriter writer(in);
    writer.number(1, bellSorts.numberOf(bell.sort)).part(2, wholeContent(bell.whole, in))
        .list(3, each(bell.settings, [&in](const Entered<Mass>& setting) { return RecordWriter(in).mass(1, setting).content(); }))
        .fine(4, bell.handle).fine(5, bell.window).number(6, handFits.numberOf(bell.oneHand)).number(7, handFits.numberOf(bell.twoHands));
    if (!bell.note.empty())
        writer.text(8, bell.note);
    return {16, writer.content()};
}

bool hasImplement(const RecordReader& reader)
{
    for (std::uint32_t key = firstKeyNumber; key <= lastKeyNumber; ++key)
        if (reader.has(key))
            return true;
    return false;
}

Measured implementIn(RecordReader& reader)
{
    if (reader.has(10))
        return readAs(reader, 10, tyreIn);
    if (reader.has(11))
        return readAs(reader, 11, logIn);
    if (reader.has(12))
        return readAs(reader, 12, stoneIn);
    if (reader.has(13))
        return readAs(reader, 13, kegIn);
    if (reader.has(14))
        return readAs(reader, 14, sledIn);
    if (reader.has(15))
        return readAs(reader, 15, carryIn);
    return readAs(reader, 16, bellIn);
}

Content contentOf(const SledSurface& surface, const WrittenIn& in)
{
    return RecordWriter(in).id(1, surface.venue).id(2, surface.sled).text(3, surface.name)
        .list(4, each(surface.readings, [&in](const TowRead& read) { return RecordWriter(in).mass(1, read.added).mass(2, read.pull).content(); }))
        .length(5, surface.hip).mass(6, surface.scaleStep).mass(7, surface.scaleAccuracy).content();
}

std::optional<SledSurface> sledSurfaceIn(journal::ByteView content)
{
    RecordReader reader(content);
    SledSurface surface;
    surface.venue = reader.neededId(1);
    surface.sled = reader.neededId(2);
    surface.name = reader.neededText(3);
    surface.readings = reader.list<TowRead>(4, towReadIn);
    surface.hip = reader.length(5);
    surface.scaleStep = reader.mass(6);
    surface.scaleAccuracy = reader.mass(7);
    return ifRead(reader, std::move(surface));
}

Content contentOf(const SledRunTimed& run, const WrittenIn& in)
{
    return RecordWriter(in).id(1, run.venue).id(2, run.sled).text(3, run.surface).mass(4, run.added).length(5, run.distance).duration(6, run.time)
        .number(7, sledWays.numberOf(run.way)).length(8, run.hip).content();
}

std::optional<SledRunTimed> sledRunIn(journal::ByteView content)
{
    RecordReader reader(content);
    SledRunTimed run;
    run.venue = reader.neededId(1);
    run.sled = reader.neededId(2);
    run.surface = reader.neededText(3);
    run.added = reader.neededMass(4);
    run.distance = reader.neededLength(5);
    run.time = reader.needed(reader.duration(6));
    run.way = reader.among(7, sledWays);
    run.hip = reader.length(8);
    return ifRead(reader, std::move(run));
}

Content laneContent(const Entered<Length>& lane, const WrittenIn& in)
{
    return RecordWriter::lengthContent(lane, in);
}

std::optional<Entered<Length>> laneIn(journal::ByteView content)
{
    const auto typed = journal::quantityIn(content);
    const auto length = typed ? journal::lengthOf(*typed) : std::nullopt;
    return length ? std::optional(Entered<Length>(*length, AsTyped{typed->decimal, typed->unit})) : std::nullopt;
}

Content contentOf(const CapRule& rule)
{
    return RecordWriter({}).part(1, contentOf(rule.of)).number(2, rule.percent).content();
}

std::optional<CapRule> capRuleIn(journal::ByteView content)
{
    RecordReader reader(content);
    CapRule rule{reader.neededItem<LiftId>(1, liftIdIn), 0};
    const std::int64_t percent = reader.neededNumber(2);
    rule.percent = percent >= 1 && percent <= 100 ? static_cast<int>(percent) : 0;
    return canBeCap(rule) ? ifRead(reader, rule) : std::nullopt;
}

}
