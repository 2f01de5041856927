// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/implementtexts.h"

#include "core/measure/rounding.h"
#include "mobile/text/giving.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

namespace implementtexts {

using namespace steelyard;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("implementtexts", text); }

QString withGive(const Estimate<Mass>& mass)
{
    return say::inMassUnit(say::withGive(roundTogether(say::shown(mass.value), say::shown(mass.giveOrTake()), 2)));
}

/// What an input is called, and how it was had.
std::pair<QString, QString> called(ItemInput input)
{
    switch (input) {
    case ItemInput::ScaleStep: return {tr("Step of the scale"), tr("a mass anywhere within a step shows the same: step / √12")};
    case ItemInput::ScaleError: return {tr("The scale's own error"), tr("as far as it was off when it was checked, either way: error / √3")};
    case ItemInput::MarkTaken: return {tr("Mark on it"), tr("up to 2 % out, either way, until it is weighed (our choice)")};
    case ItemInput::LiftPoint: return {tr("Lift point"), tr("from the middle to the hook, read to a centimetre (our choice)")};
    case ItemInput::FarContact: return {tr("Far contact"), tr("from the middle to the far side of the ring it rests on, read to a centimetre (our choice)")};
    case ItemInput::EndSpan: return {tr("Where it rests and where the hook holds"), tr("read to a centimetre (our choice)")};
    case ItemInput::SizeLength: return {tr("Length"), tr("read to a centimetre (our choice)")};
    case ItemInput::SizeAcross: return {tr("Diameter"), tr("tape read to a centimetre (our choice)")};
    case ItemInput::Gravity: return {tr("Specific gravity of the wood"), tr("pieces of one species differ by 10 % (Wood Handbook, FPL-GTR-190, from memory)")};
    case ItemInput::Moisture: return {tr("Moisture of the wood"), tr("known to 3 % of its dry mass (our choice)")};
    case ItemInput::StuffDensity: return {tr("Density"), tr("anywhere between the two ends of its range")};
    case ItemInput::Filled: return {tr("Litres"), tr("up to 2 % out, either way (our choice)")};
    default: break;
    }
    return {tr("Depth of the filling"), tr("read to a centimetre (our choice)")};
}

bool isWeighed(const WholeMass& whole) { return whole.read || !whole.marked; }

/// Whether all of it was on a scale, or its mark stands for that.
bool isWhole(const Measured& measured)
{
    const auto* tyre = std::get_if<TyreMeasurement>(&measured);
    const auto* log = std::get_if<LogMeasurement>(&measured);
    const auto* stone = std::get_if<StoneMeasurement>(&measured);
    const auto* keg = std::get_if<KegMeasurement>(&measured);
    return (!tyre || tyre->by == TyreMeasuring::Whole) && (!log || log->by == LogMeasuring::Whole) && (!stone || stone->by == StoneMeasuring::Whole)
        && (!keg || keg->by == KegMeasuring::Whole);
}

bool isByMark(const Measured& measured)
{
    const auto* sled = std::get_if<SledMeasurement>(&measured);
    const auto* carry = std::get_if<CarryMeasurement>(&measured);
    const auto* bell = std::get_if<BellMeasurement>(&measured);
    return (sled && !isWeighed(sled->whole)) || (carry && !isWeighed(carry->whole)) || (bell && (!bell->settings.empty() || !isWeighed(bell->whole)));
}

}

QString what(ItemKind kind)
{
    switch (kind) {
    case ItemKind::Tyre: return tr("a tyre");
    case ItemKind::Log: return tr("a log");
    case ItemKind::Stone: return tr("a stone");
    case ItemKind::Keg: return tr("a keg or sandbag");
    case ItemKind::Sled: return tr("a sled");
    case ItemKind::Carry: return tr("handles, a yoke or a frame");
    case ItemKind::Bell: return tr("a kettlebell or dumbbell");
    default: return {};
    }
}

QString named(const Measured& measured)
{
    if (const auto* keg = std::get_if<KegMeasurement>(&measured))
        return keg->sort == KegSort::Sandbag ? tr("Sandbag") : tr("Keg");
    if (const auto* bell = std::get_if<BellMeasurement>(&measured))
        return bell->sort == BellSort::Dumbbell ? tr("Dumbbell") : tr("Kettlebell");
    if (const auto* carry = std::get_if<CarryMeasurement>(&measured)) {
        switch (carry->sort) {
        case CarrySort::Handles: return tr("Handles");
        case CarrySort::OneHandle: return tr("Handle");
        case CarrySort::HexBar: return tr("Hex bar");
        case CarrySort::Yoke: return tr("Yoke");
        case CarrySort::Frame: return tr("Frame");
        }
    }
    switch (kindOf(measured)) {
    case ItemKind::Log: return tr("Log");
    case ItemKind::Stone: return tr("Stone");
    case ItemKind::Sled: return tr("Sled");
    default: return tr("Tyre");
    }
}

QString gap(MassGap gap)
{
    switch (gap) {
    case MassGap::NotMeasured: return tr("Not measured yet.");
    case MassGap::SaidUnknown: return tr("Nobody knows what it weighs: weigh it before anybody lifts it.");
    case MassGap::NotDrained: return tr("Water in it is weighed too, and runs: drain it, then weigh it.");
    case MassGap::ReadingMissing: return tr("What the scale shows is wanting: read it.");
    case MassGap::StepMissing: return tr("The step of the scale is wanting: say it.");
    case MassGap::LeverMissing: return tr("Where it was lifted or where it rests is wanting: read both from the middle.");
    case MassGap::SizeMissing: return tr("A size is wanting: read it with a tape.");
    case MassGap::WoodMissing: return tr("The wood is wanting: say its specific gravity and how moist it is.");
    case MassGap::DensityMissing: return tr("What it is made of is wanting: say its density, or weigh it.");
    case MassGap::FillingMissing: return tr("What is in it is wanting: say it, or weigh all of it.");
    case MassGap::EmptyMissing: return tr("What it weighs empty is wanting: weigh an empty one, or weigh all of it.");
    case MassGap::ContentMissing: return tr("How much is in it is wanting: say how many litres or how deep, or weigh all of it.");
    case MassGap::DoesNotFit: break;
    }
    return tr("Its numbers cannot be right: look at them again.");
}

QString comesTo(const Measured& measured)
{
    const ImplementMass found = implementMass(measured);
    if (!found.mass)
        return gap(found.gap.value_or(MassGap::NotMeasured));
    const QString mass = withGive(*found.mass);
    const auto* carry = std::get_if<CarryMeasurement>(&measured);
    if (carry && carry->sort == CarrySort::Handles)
        return found.byMark ? tr("%1 each, by the mark").arg(mass) : tr("%1 each").arg(mass);
    const auto* bell = std::get_if<BellMeasurement>(&measured);
    if (const auto settings = bell ? bellSettings(*bell) : std::vector<Estimate<Mass>>(); settings.size() > 1)
        return tr("%1 to %2, by the mark").arg(mass, withGive(settings.back()));
    return found.byMark ? tr("%1, by the mark").arg(mass) : mass;
}

QString inShort(const Measured& measured)
{
    return implementMass(measured).mass ? comesTo(measured) : tr("mass not known");
}

OriginRow originRow(const ItemInputLine& line)
{
    const auto [name, how] = called(line.input);
    return {name, how, {}, tr("%1 % of what makes it uncertain").arg(say::plain(100 * line.share, 0)), line.share};
}

QString formula(const Measured& measured)
{
    if (isByMark(measured))
        return tr("What is marked on it; nobody has weighed it.");
    if (isWhole(measured))
        return tr("What it weighs.");
    if (const auto* log = std::get_if<LogMeasurement>(&measured))
        return log->by == LogMeasuring::Ends ? tr("What one end weighs and what the other weighs, added up; a hook further in counts by its lever.")
                                             : tr("Its volume as a cone cut off at both ends, times the density of its wood when so moist.");
    if (std::holds_alternative<TyreMeasurement>(measured))
        return tr("What one edge weighs, times the whole lever from the far contact to the hook, divided by the lever to the middle. Of two edges the mean.");
    return std::holds_alternative<StoneMeasurement>(measured) ? tr("Its volume as a ball, times its density.") : tr("What it weighs empty, and how much is in it times its density.");
}

QString sources(const Measured& measured)
{
    if (isWhole(measured))
        return tr("Step of a scale: JCGM 100:2008, 4.3.7.");
    if (const auto* log = std::get_if<LogMeasurement>(&measured); log && log->by == LogMeasuring::Size)
        return tr("Density of wood: Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, chapter 4.");
    if (std::holds_alternative<TyreMeasurement>(measured) || std::holds_alternative<LogMeasurement>(measured))
        return tr("Levers: statics. Step of a scale: JCGM 100:2008, 4.3.7.");
    return tr("Volumes: geometry. Ranges: JCGM 100:2008, 4.3.7.");
}

}
