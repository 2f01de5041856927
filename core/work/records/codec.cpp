// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/codec.h"

#include "core/seal/hash.h"
#include "core/work/barchanges.h"
#include "core/work/records/recordwriter.h"

#include <charconv>
#include <limits>

namespace steelyard {

namespace {

constexpr Numbered<LiftStart, 2> liftStarts{{{{LiftStart::OwnBottom, 1}, {LiftStart::Floor, 2}}}};
constexpr Numbered<PlateTrust, 2> plateTrusts{{{{PlateTrust::AsMarked, 1}, {PlateTrust::Unweighed, 2}}}};
constexpr Numbered<HungOn, 3> hungOns{{{{HungOn::BothSides, 1}, {HungOn::LeftOnly, 2}, {HungOn::RightOnly, 3}}}};
constexpr Numbered<ChainHangingWay, 3> chainWays{{{{ChainHangingWay::Straight, 1}, {ChainHangingWay::Doubled, 2}, {ChainHangingWay::Bunched, 3}}}};
constexpr std::int64_t foundFitNumber = 1;
constexpr Numbered<KitFault, 21> kitFaults{{{{KitFault::WornLink, 2}, {KitFault::Cut, 3}, {KitFault::Other, 4}, {KitFault::BentLink, 5},
                                             {KitFault::Hook, 6}, {KitFault::Crack, 7}, {KitFault::Sticky, 8}, {KitFault::Seam, 9},
                                             {KitFault::Cable, 10}, {KitFault::Pin, 11}, {KitFault::ZeroRuns, 12}, {KitFault::Dropped, 13},
                                             {KitFault::Collar, 14}, {KitFault::Buckle, 15}, {KitFault::Weld, 16},
                                             {KitFault::WireShowing, 17}, {KitFault::Sidewall, 18}, {KitFault::UnderPressure, 19},
                                             {KitFault::Leak, 20}, {KitFault::Split, 21}, {KitFault::HandleLoose, 22}}}};
constexpr Numbered<ItemKind, 15> itemKinds{{{{ItemKind::Chain, 2}, {ItemKind::Band, 3}, {ItemKind::Aid, 4}, {ItemKind::Machine, 5},
                                            {ItemKind::Scale, 6}, {ItemKind::Iron, 7}, {ItemKind::Lead, 8}, {ItemKind::Rack, 9},
                                            {ItemKind::Tyre, 10}, {ItemKind::Log, 11}, {ItemKind::Stone, 12}, {ItemKind::Keg, 13},
                                            {ItemKind::Sled, 14}, {ItemKind::Carry, 15}, {ItemKind::Bell, 16}}}};
constexpr Numbered<CautionCode, 5> cautionCodes{
    {{{CautionCode::Chains, 1}, {CautionCode::BandsBelow, 2}, {CautionCode::BandsAbove, 3}, {CautionCode::BenchAid, 4}, {CautionCode::Release, 5}}}};

Content weighedContent(const IronWeighed& weighed, const WrittenIn& in)
{
    return RecordWriter(in).id(1, weighed.item).mass(2, weighed.u).content();
}

std::optional<IronWeighed> weighedIn(RecordReader reader)
{
    IronWeighed weighed{reader.neededId(1), reader.neededMass(2)};
    return ifRead(reader, weighed);
}

Content stockContent(const PlatesHere& plates, const WrittenIn& in)
{
    // an app that knows nothing of scales goes by the mark
    const Entered<Mass> mass = plates.weighed ? markedMass(plates) : plates.mark ? Entered<Mass>(plates.type.mass, *plates.mark) : Entered<Mass>(plates.type.mass);
    RecordWriter writer(in);
    writer.mass(1, mass).fine(2, plates.type.diameter).fine(3, plates.type.thickness).number(4, plates.count);
    if (plates.weighed)
        writer.mass(5, Entered<Mass>(plates.type.mass)).part(6, weighedContent(*plates.weighed, in));
    return writer.content();
}

std::optional<PlatesHere> stockIn(RecordReader reader)
{
    PlatesHere plates;
    const Entered<Mass> mass = reader.neededMass(1);
    plates.type = {mass, reader.neededLength(2), reader.neededLength(3)};
    plates.mark = mass.typed();
    plates.count = static_cast<int>(reader.neededNumber(4));
    if (reader.has(6)) {
        plates.type.mass = reader.neededMass(5);
        plates.weighed = reader.needed(weighedIn(reader.part(6)));
    }
    return ifRead(reader, plates);
}

Content barContent(const BarRecord& bar, const WrittenIn& in)
{
    std::vector<Content> stock;
    for (const PlatesHere& plates : bar.stock)
        stock.push_back(stockContent(plates, in));
    RecordWriter writer(in);
    writer.mass(1, bar.bar).flag(2, bar.barEntered).mass(3, bar.collars).mass(4, bar.wanted)
        .number(5, plateTrusts.numberOf(bar.trust)).list(6, stock).length(7, bar.sleeve);
    if (bar.barWeighed)
        writer.part(8, weighedContent(*bar.barWeighed, in));
    return writer.content();
}

std::optional<BarRecord> barIn(RecordReader reader)
{
    BarRecord bar;
    bar.bar = reader.neededMass(1);
    bar.barEntered = reader.flag(2);
    bar.collars = reader.neededMass(3);
    bar.wanted = reader.neededMass(4);
    bar.trust = reader.among(5, plateTrusts);
    bar.stock = reader.list<PlatesHere>(6, stockIn);
    bar.sleeve = reader.length(7);
    if (reader.has(8))
        bar.barWeighed = reader.needed(weighedIn(reader.part(8)));
    return ifRead(reader, std::move(bar));
}

Content placingContent(const ChainPlacing& placing, const WrittenIn& in)
{
    return RecordWriter(in).number(1, chainWays.numberOf(placing.way)).length(2, placing.lead).mass(3, placing.leadMass)
        .length(4, placing.bunch).content();
}

Content placingContent(const BandPlacing& placing, const WrittenIn& in)
{
    return RecordWriter(in).flag(1, placing.doubled).flag(2, placing.above).length(3, placing.anchorHeight).length(4, placing.offset)
        .length(5, placing.handle).mass(6, placing.heldBy).content();
}

Content placingContent(const AidPlacing& placing, const WrittenIn& in)
{
    return RecordWriter(in).length(1, placing.chest).content();
}

std::optional<ChainPlacing> chainPlacingIn(RecordReader reader)
{
    ChainPlacing placing;
    placing.way = reader.among(1, chainWays);
    placing.lead = reader.neededLength(2);
    placing.leadMass = reader.neededMass(3);
    placing.bunch = reader.neededLength(4);
    return ifRead(reader, placing);
}

std::optional<BandPlacing> bandPlacingIn(RecordReader reader)
{
    BandPlacing placing;
    placing.doubled = reader.flag(1);
    placing.above = reader.flag(2);
    placing.anchorHeight = reader.neededLength(3);
    placing.offset = reader.neededLength(4);
    placing.handle = reader.neededLength(5);
    placing.heldBy = reader.mass(6);
    return ifRead(reader, placing);
}

std::optional<AidPlacing> aidPlacingIn(RecordReader reader)
{
    AidPlacing placing;
    placing.chest = reader.length(1);
    return ifRead(reader, placing);
}

Content hungContent(const HungRecord& hung, const WrittenIn& in)
{
    RecordWriter writer(in);
    writer.id(1, hung.item).number(2, hungOns.numberOf(hung.on));
    if (const auto* chain = std::get_if<ChainPlacing>(&hung.placing))
        writer.part(3, placingContent(*chain, in));
    else if (const auto* band = std::get_if<BandPlacing>(&hung.placing))
        writer.part(4, placingContent(*band, in));
    else
        writer.part(5, placingContent(std::get<AidPlacing>(hung.placing), in));
    return writer.content();
}

std::optional<HungRecord> hungIn(RecordReader reader)
{
    HungRecord hung;
    hung.item = reader.neededId(1);
    hung.on = reader.among(2, hungOns);
    if (reader.has(3))
        hung.placing = reader.needed(chainPlacingIn(reader.part(3)));
    else if (reader.has(4))
        hung.placing = reader.needed(bandPlacingIn(reader.part(4)));
    else
        hung.placing = reader.needed(aidPlacingIn(reader.part(5)));
    return ifRead(reader, hung);
}

std::vector<Content> hungContents(const SetupRecord& load, const WrittenIn& in)
{
    std::vector<Content> contents;
    for (const HungRecord& hung : load.hung)
        contents.push_back(hungContent(hung, in));
    return contents;
}

/// The holes by the key of their mark.
template <typename Holes, typename Each>
void eachHole(Holes& holes, const Each& each)
{
    each(2, holes.bottom);
    each(4, holes.zoneFrom);
    each(5, holes.zoneTo);
    each(6, holes.top);
    each(7, holes.rack);
}

struct HoleOfMark {
    std::int64_t keyNumber = 0;
    HoleRead read;
};

std::optional<HoleOfMark> holeIn(RecordReader reader)
{
    HoleOfMark hole{reader.neededNumber(1), {reader.neededId(2), static_cast<int>(reader.neededNumber(3))}};
    return ifRead(reader, hole);
}

}

Content contentOf(const BarMarks& marks, const WrittenIn& in)
{
    std::vector<Content> holes;
    eachHole(marks.holes, [&holes](std::int64_t keyNumber, const std::optional<HoleRead>& hole) {
        if (hole)
            holes.push_back(RecordWriter({}).number(1, keyNumber).id(2, hole->rack).number(3, hole->hole).content());
    });
    RecordWriter writer(in);
    writer.number(1, liftStarts.numberOf(marks.start)).length(2, marks.bottom).length(3, marks.blocks)
        .length(4, marks.zoneFrom).length(5, marks.zoneTo).length(6, marks.top).length(7, marks.rack);
    if (!holes.empty())
        writer.list(8, holes);
    return writer.content();
}

std::optional<BarMarks> marksIn(journal::ByteView content)
{
    RecordReader reader(content);
    BarMarks marks;
    marks.start = reader.among(1, liftStarts);
    marks.bottom = reader.length(2);
    marks.blocks = reader.length(3);
    marks.zoneFrom = reader.length(4);
    marks.zoneTo = reader.length(5);
    marks.top = reader.length(6);
    marks.rack = reader.length(7);
    for (const HoleOfMark& read : reader.list<HoleOfMark>(8, holeIn))
        eachHole(marks.holes, [&read](std::int64_t keyNumber, std::optional<HoleRead>& hole) {
            if (keyNumber == read.keyNumber)
                hole = read.read;
        });
    return ifRead(reader, marks);
}

Content contentOf(const GuardianAgreement& agreement)
{
    return RecordWriter({}).text(1, agreement.who).day(2, agreement.day).content();
}

std::optional<GuardianAgreement> agreementIn(journal::ByteView content)
{
    RecordReader reader(content);
    GuardianAgreement agreement{reader.neededText(1), reader.neededDay(2)};
    return ifRead(reader, std::move(agreement));
}

Content contentOf(const Inspection& inspection)
{
    RecordWriter writer({});
    writer.number(1, inspection.fault ? kitFaults.numberOf(*inspection.fault) : foundFitNumber);
    if (!inspection.note.empty())
        writer.text(2, inspection.note);
    return writer.day(3, inspection.day).content();
}

std::optional<Inspection> inspectionIn(journal::ByteView content)
{
    RecordReader reader(content);
    Inspection inspection;
    const std::int64_t found = reader.neededNumber(1);
    // what a newer app found and this one has no word for is no less out of use
    if (found > foundFitNumber)
        inspection.fault = kitFaults.valueOf(found).value_or(KitFault::Other);
    else if (found != foundFitNumber)
        return std::nullopt;
    if (reader.has(2))
        inspection.note = reader.neededText(2);
    inspection.day = reader.neededDay(3);
    return ifRead(reader, std::move(inspection));
}

Content contentOf(const OnLoan& loan)
{
    return RecordWriter({}).text(1, loan.who).day(2, loan.backBy).content();
}

std::optional<OnLoan> onLoanIn(journal::ByteView content)
{
    RecordReader reader(content);
    OnLoan loan{reader.neededText(1), reader.day(2)};
    return ifRead(reader, std::move(loan));
}

Content contentOf(ItemKind kind)
{
    return journal::numberItem(itemKinds.numberOf(kind));
}

std::optional<ItemKind> itemKindIn(journal::ByteView content)
{
    return itemKinds.valueOf(journal::numberIn(content));
}

Content contentOf(const BodySize& size, const WrittenIn& in)
{
    return RecordWriter(in).mass(1, size.mass).length(2, size.height).content();
}

std::optional<BodySize> bodySizeIn(journal::ByteView content)
{
    RecordReader reader(content);
    BodySize size;
    size.mass = reader.mass(1);
    size.height = reader.length(2);
    return ifRead(reader, size);
}

Content contentOf(const SetupRecord& load, const WrittenIn& in)
{
    return RecordWriter(in).part(1, barContent(load.bar, in)).list(2, hungContents(load, in)).content();
}

std::optional<SetupRecord> loadIn(journal::ByteView content)
{
    RecordReader reader(content);
    SetupRecord load;
    load.bar = reader.needed(barIn(reader.part(1)));
    load.hung = reader.list<HungRecord>(2, hungIn);
    return ifRead(reader, std::move(load));
}

Content contentOf(const Acknowledgement& acknowledgement)
{
    return RecordWriter({}).id(1, acknowledgement.setup).number(2, cautionCodes.numberOf(acknowledgement.caution))
        .id(3, acknowledgement.hungMark).content();
}

std::optional<Acknowledgement> acknowledgementIn(journal::ByteView content)
{
    RecordReader reader(content);
    Acknowledgement acknowledgement;
    acknowledgement.setup = reader.neededId(1);
    acknowledgement.caution = reader.among(2, cautionCodes);
    acknowledgement.hungMark = reader.neededId(3);
    return ifRead(reader, acknowledgement);
}

bool keptAlike(const BarMarks& a, const BarMarks& b)
{
    return a == b || contentOf(a, WrittenIn::plain()) == contentOf(b, WrittenIn::plain());
}

bool keptAlike(const SetupRecord& a, const SetupRecord& b)
{
    return a == b || (contentOf(a, WrittenIn::plain()) == contentOf(b, WrittenIn::plain()) && keptAlike(a.release, b.release));
}

bool keptAlike(const std::optional<ReleasePlan>& a, const std::optional<ReleasePlan>& b)
{
    return a == b || (a && b && contentOf(*a, WrittenIn::plain()) == contentOf(*b, WrittenIn::plain()));
}

Content contentOf(LiftId lift)
{
    return lift.own.isNone() ? journal::numberItem(lift.number) : journal::idItem(lift.own);
}

std::optional<LiftId> liftIdIn(journal::ByteView content)
{
    if (const auto own = journal::idIn(content))
        return own->isNone() ? std::nullopt : std::optional(LiftId::added(*own));
    const auto number = journal::numberIn(content);
    const bool fits = number && *number > 0 && *number <= std::numeric_limits<std::uint16_t>::max();
    return fits ? std::optional(LiftId{static_cast<std::uint16_t>(*number)}) : std::nullopt;
}

Content contentOf(LiftStart start)
{
    return journal::numberItem(liftStarts.numberOf(start));
}

std::optional<LiftStart> liftStartIn(journal::ByteView content)
{
    return liftStarts.valueOf(journal::numberIn(content));
}

std::string partOf(LiftId lift)
{
    return lift.own.isNone() ? std::to_string(lift.number) : lift.own.hex();
}

std::optional<LiftId> liftIn(const std::string& part)
{
    LiftId lift;
    // as many digits as no number has
    if (const auto own = RecordId::fromHex(part); own && !own->isNone() && own->hex() == part)
        return LiftId::added(*own);
    const char* end = part.data() + part.size();
    const auto [at, code] = std::from_chars(part.data(), end, lift.number);
    return code == std::errc{} && at == end && lift != LiftId{} && partOf(lift) == part ? std::optional(lift) : std::nullopt;
}

journal::Unit unitFor(MassUnit unit)
{
    return unit == MassUnit::Pound ? journal::Unit::Pound : journal::Unit::Kilogram;
}

journal::Unit unitFor(LengthUnit unit)
{
    return unit == LengthUnit::Inch ? journal::Unit::Inch : journal::Unit::Centimetre;
}

RecordId hungMark(const SetupRecord& load)
{
    RecordWriter writer({});
    writer.list(2, hungContents(load, WrittenIn::plain()));
    if (load.release)
        writer.part(3, contentOf(withoutAsked(*load.release), WrittenIn::plain()));
    const auto content = writer.content();
    const seal::Digest digest = seal::hash(content.value_or(journal::nullItem()));
    RecordId mark;
    seal::copyBytes(digest, mark.bytes);
    return mark;
}

}
