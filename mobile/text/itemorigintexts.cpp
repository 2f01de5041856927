// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/itemorigintexts.h"

#include "core/measure/rounding.h"
#include "core/work/measuring/machinekit.h"
#include "mobile/readings/readingtexts.h"
#include "mobile/text/implementtexts.h"
#include "mobile/text/say.h"
#include "mobile/text/tooltexts.h"

#include <QCoreApplication>

#include <cmath>

namespace itemorigintexts {

using namespace steelyard;

namespace {

/// With a count the words bend to it.
QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("itemorigintexts", text, about, count); }

QString lengthText(const std::optional<Entered<Length>>& length) { return length ? say::inLengthUnit(say::entered(*length)) : QString(); }
QString wireText(const std::optional<Entered<Length>>& length) { return length ? say::wireWithUnit(*length) : QString(); }
QString massText(const std::optional<Entered<Mass>>& mass) { return mass ? say::inMassUnit(say::entered(*mass)) : QString(); }
QString readingsText(std::size_t count) { return tr("%n readings", nullptr, static_cast<int>(count)); }

/// "20.3 ± 0.1", of two numbers in the shown unit.
QString withGive(double value, double give)
{
    const Rounded said = roundTogether(value, give, 2);
    return tr("%1 ± %2").arg(say::fixed(said.value, said.decimals), say::fixed(said.give, said.decimals));
}
QString massGive(Mass mass, Mass give) { return say::inMassUnit(withGive(say::shown(mass), say::shown(give))); }
QString lengthGive(Length length, Length give) { return say::inLengthUnit(withGive(say::shown(length), say::shown(give))); }
Mass at95(Mass u) { return coverageFactor95(knownExactly) * u; }
Length at95(Length u) { return coverageFactor95(knownExactly) * u; }

/// "1 cm more makes it 0.7 % less"; a change below a twentieth of a percent is none to speak of.
QString moreText(const std::optional<double>& more, const QString& step)
{
    if (!more)
        return tr("taken as it was read");
    const double percent = 100 * std::abs(*more);
    constexpr double tooSmallToSay = 0.05;
    if (percent < tooSmallToSay)
        return tr("%1 more changes nothing to speak of").arg(step);
    return (*more < 0 ? tr("%1 more makes it %2 % less") : tr("%1 more makes it %2 % more")).arg(step, say::plain(percent, 1));
}

QString shareText(double share)
{
    return tr("%1 % of what makes it uncertain").arg(say::plain(100 * share, 0));
}

/// What was read on a scale: the thing, its step, and how far it was off.
OriginRow scaleLine(const ItemInputLine& line, const std::optional<Entered<Mass>>& step, const std::optional<Entered<Mass>>& accuracy)
{
    if (line.input == ItemInput::ScaleStep)
        return {tr("Step of the scale"), tr("a mass anywhere within a step shows the same: step / √12"), massText(step), shareText(line.share), line.share};
    return {tr("The scale's own error"), tr("as far as it was off when it was checked, either way: error / √3"), accuracy ? tr("± %1").arg(massText(accuracy)) : QString(), shareText(line.share), line.share};
}

Mass uRead(const std::optional<Entered<Mass>>& step, const std::optional<Entered<Mass>>& accuracy)
{
    return kilograms(scaleReadingUncertainty(step ? step->si() : 0, accuracy ? accuracy->si() : 0));
}

OriginRow chainLine(const ItemInputLine& line, const ChainMeasurement& chain)
{
    const QString taped = say::lengthWithUnit(metres(0.01)), gauged = say::wireWithUnit(metres(0.0001));
    switch (line.input) {
    case ItemInput::ChainMass:
        return {tr("Mass"), tr("all of it, on the scale"), massGive(*chain.mass, at95(uRead(chain.scaleStep, chain.scaleAccuracy))), tr("as sure as the scale"), 0};
    case ItemInput::ScaleStep:
    case ItemInput::ScaleError:
        return scaleLine(line, chain.scaleStep, chain.scaleAccuracy);
    case ItemInput::Wire:
        return {tr("Wire"), tr("its real thickness"), wireText(chain.wire), moreText(line.moreByStepRatio, gauged), 0};
    case ItemInput::Pitch:
        return {tr("Pitch"), tr("inside length of one link"), wireText(chain.pitch), moreText(line.moreByStepRatio, gauged), 0};
    case ItemInput::InnerWidth:
        return {tr("Inner width"), tr("inside width of one link"), wireText(chain.innerWidth), moreText(line.moreByStepRatio, gauged), 0};
    case ItemInput::GaugedLength:
        return {tr("Length"), tr("first link to last, pulled straight"), lengthText(chain.length), tr("says how much of it there is, not what a length of it weighs"), 0};
    case ItemInput::Method:
        return {tr("Gauging itself"), tr("what tables print differs by as much from this formula"), tr("± 3 %"), shareText(line.share), line.share};
    default:
        break;
    }
    return {tr("Length"), tr("first link to last, pulled straight; taken as it was read"), lengthText(chain.length), moreText(line.moreByStepRatio, taped), 0};
}

OriginRow bandLine(const ItemInputLine& line, const BandMeasurement& band, const BandNumber& number)
{
    switch (line.input) {
    case ItemInput::BandReadings:
        return {tr("Known plates hung on it"), tr("how far the readings lie off the curve says how sure it is; the plates count as they are marked"), readingsText(number.readingCount), shareText(line.share), line.share};
    case ItemInput::FewReadings:
        return {tr("So few readings"), tr("a curve through a handful looks surer than it is, so so much at least (our choice)"), tr("± 5 %"), shareText(line.share), line.share};
    default:
        break;
    }
    return {tr("Length at rest"), tr("unloaded, laid straight; taken as it was read"), lengthText(band.rest), moreText(line.moreByStepRatio, say::lengthWithUnit(metres(0.01))), 0};
}

OriginRow aidLine(const ItemInputLine& line, const AidNumber& number)
{
    if (line.input == ItemInput::AidPlates)
        return {tr("Known plates resting on it"), tr("marked and not weighed: 2 % either way (our choice)"), readingsText(number.readingCount), shareText(line.share), line.share};
    return {tr("Height above the chest"), tr("the bar stood there to a centimetre (our choice), times how steeply the help falls"), lengthGive(number.aboveChest, at95(uAboveChest)), shareText(line.share), line.share};
}

OriginRow torqueLine(const ItemInputLine& line, const MachineMeasurement& machine, const TorqueNumber& number)
{
    switch (line.input) {
    case ItemInput::Stack:
        return {tr("Stack"), tr("by its mark, which nobody weighed: 2 % either way (our choice)"), massGive(*machine.stack, at95(uStackShare * machine.stack->quantity())), shareText(line.share), line.share};
    case ItemInput::Radius:
        return {tr("Radius there"), tr("from the axis square to the cable, read to %1 (our choice). %2").arg(say::wireWithUnit(uCamRadius), moreText(line.moreByStepRatio, say::wireWithUnit(metres(0.001)))),
                lengthGive(number.radius, at95(uCamRadius)), shareText(line.share), line.share};
    default:
        break;
    }
    return {tr("Angle"), tr("read to a degree (our choice), times how fast the radius changes there"), tr("± %1").arg(readingtexts::angle(Angle{coverageFactor95(knownExactly) * uCamAngle.radians})), shareText(line.share), line.share};
}

OriginRow travelLine(const ItemInputLine& line, const MachineMeasurement& machine, const TravelNumber& number)
{
    if (line.input == ItemInput::PullScale)
        return {tr("What the scale read"), tr("a pull anywhere within a step of %1 shows the same: step / √12; stack %2").arg(massText(machine.scaleStep), massText(machine.stack)),
                readingsText(number.readingCount), shareText(line.share), line.share};
    return {tr("Travel"), tr("how far the handle came, to a centimetre (our choice), times how fast the pull changes there"), lengthGive(number.at, at95(uTravel)), shareText(line.share), line.share};
}

OriginRow scaleItselfLine(const ItemInputLine& line, const ScaleMeasurement& scale, const ScaleNumber& number)
{
    const Mass give = at95(uRead(scale.step, std::nullopt));
    switch (line.input) {
    case ItemInput::KnownMass:
        return {tr("Known mass"), tr("counts as it is said to be"), say::massWithUnit(number.at), tr("of %1").arg(readingsText(number.readingCount)), 0};
    case ItemInput::EmptyRead:
        return {tr("Empty it showed"), tr("to a step of %1: step / √12").arg(massText(scale.step)), massGive(*scale.empty, give), shareText(line.share), line.share};
    default:
        break;
    }
    return {tr("With it, it showed"), tr("to a step of %1: step / √12").arg(massText(scale.step)), massGive(number.at + number.error + scale.empty->quantity(), give), shareText(line.share), line.share};
}

OriginRow ironLine(const ItemInputLine& line, const IronMeasurement& iron, const IronNumber& number)
{
    switch (line.input) {
    case ItemInput::IronRead:
        return {tr("On the scale"), iron.count > 1 ? tr("all of them together") : tr("all of it"), massGive(*iron.read, at95(uRead(iron.step, iron.accuracy))), tr("as sure as the scale"), 0};
    case ItemInput::ScaleStep:
    case ItemInput::ScaleError:
        return scaleLine(line, iron.step, iron.accuracy);
    case ItemInput::EndSpan:
        return implementtexts::originRow(line);
    case ItemInput::IronCount:
        return {tr("How many"), tr("each counts as a like part of them"), QString::number(iron.count), tr("counted"), 0};
    default:
        break;
    }
    const Mass off = number.each - iron.marked->quantity();
    const QString by = say::massWithUnit(kilograms(std::abs(off.si())));
    return {tr("Mark on it"), off == Mass{} ? tr("just what it weighs") : off > Mass{} ? tr("it weighs %1 more").arg(by) : tr("it weighs %1 less").arg(by), massText(iron.marked), tr("does not count: the scale does"), 0};
}

OriginRow leadLine(const ItemInputLine& line, const LeadMeasurement& lead, const LeadNumber& number)
{
    if (line.input == ItemInput::LeadLength)
        return {tr("Length"), tr("from where it holds the bar to where the chain hangs, read to a centimetre (our choice)"), lengthGive(number.length, number.giveOrTake), shareText(line.share), line.share};
    return {tr("Mass"), lead.mass ? tr("with its hooks; hangs at every height; taken as it was read") : tr("was not weighed, and counts as nothing"), lead.mass ? massText(lead.mass) : tr("none"), tr("says nothing of its length"), 0};
}

OriginRow rackLine(const ItemInputLine& line, const RackMeasurement& rack, const RackNumber& number)
{
    const QString rule = tr("read to a centimetre (our choice)");
    switch (line.input) {
    case ItemInput::FirstHole:
        return {tr("Lowest hole"), tr("from the floor to the middle of a bar that lies there, %1. %2").arg(rule, moreText(line.moreByStepRatio, say::lengthWithUnit(metres(0.01)))),
                lengthGive(*rack.firstHole, number.giveOrTake), shareText(line.share), line.share};
    case ItemInput::HoleSpacing:
        return {tr("From hole to hole"), tr("taken as it was read; best over many holes at once"), lengthText(rack.spacing), moreText(line.moreByStepRatio, say::wireWithUnit(metres(0.001))), 0};
    default:
        break;
    }
    return {tr("Anchor"), tr("from the floor, %1").arg(rule), lengthGive(number.height, number.giveOrTake), shareText(line.share), line.share};
}

OriginRow rowOf(const ItemInputLine& line, const ItemOrigin& origin, const Measured& measured)
{
    if (isImplement(kindOf(measured)))
        return implementtexts::originRow(line);
    switch (kindOf(measured)) {
    case ItemKind::Chain: return chainLine(line, std::get<ChainMeasurement>(measured));
    case ItemKind::Band: return bandLine(line, std::get<BandMeasurement>(measured), std::get<BandNumber>(origin.number));
    case ItemKind::Aid: return aidLine(line, std::get<AidNumber>(origin.number));
    case ItemKind::Machine:
        if (const auto* torque = std::get_if<TorqueNumber>(&origin.number))
            return torqueLine(line, std::get<MachineMeasurement>(measured), *torque);
        return travelLine(line, std::get<MachineMeasurement>(measured), std::get<TravelNumber>(origin.number));
    case ItemKind::Scale: return scaleItselfLine(line, std::get<ScaleMeasurement>(measured), std::get<ScaleNumber>(origin.number));
    case ItemKind::Iron: return ironLine(line, std::get<IronMeasurement>(measured), std::get<IronNumber>(origin.number));
    case ItemKind::Lead: return leadLine(line, std::get<LeadMeasurement>(measured), std::get<LeadNumber>(origin.number));
    default: break;
    }
    return rackLine(line, std::get<RackMeasurement>(measured), std::get<RackNumber>(origin.number));
}

struct Number {
    QString operator()(const ChainNumber& n) const { return say::perLength(n.value, n.giveOrTake); }
    QString operator()(const BandNumber& n) const { return itemorigintexts::tr("%1 at %2").arg(say::pull(n.pull, n.giveOrTake).withUnit(), say::lengthWithUnit(n.at)); }
    QString operator()(const AidNumber& n) const { return itemorigintexts::tr("%1 %2").arg(say::pull(n.help, n.giveOrTake).withUnit(), readingtexts::aboveChest(n.aboveChest)); }
    QString operator()(const TorqueNumber& n) const { return itemorigintexts::tr("%1 N·m at %2").arg(withGive(n.value.newtonMetres, n.giveOrTake.newtonMetres), readingtexts::angle(n.at)); }
    QString operator()(const TravelNumber& n) const { return itemorigintexts::tr("%1 at %2").arg(say::pull(n.pull, n.giveOrTake).withUnit(), say::lengthWithUnit(n.at)); }
    QString operator()(const ScaleNumber& n) const
    {
        const QString off = massGive(kilograms(std::abs(n.error.si())), n.giveOrTake), at = say::massWithUnit(n.at);
        return n.error < Mass{} ? itemorigintexts::tr("%1 too little at %2").arg(off, at) : itemorigintexts::tr("%1 too much at %2").arg(off, at);
    }
    QString operator()(const IronNumber& n) const { return n.count > 1 ? itemorigintexts::tr("%1 each").arg(massGive(n.each, n.giveOrTake)) : massGive(n.each, n.giveOrTake); }
    QString operator()(const ImplementNumber& n) const { return massGive(n.mass, n.giveOrTake); }
    QString operator()(const LeadNumber& n) const { return lengthGive(n.length, n.giveOrTake); }
    QString operator()(const RackNumber& n) const
    {
        const QString height = lengthGive(n.height, n.giveOrTake);
        return n.hole > 0 ? itemorigintexts::tr("hole %1 at %2").arg(n.hole).arg(height) : itemorigintexts::tr("anchor at %1").arg(height);
    }
};

QString bandFormula(BandModel model)
{
    switch (model) {
    case BandModel::Line: return tr("A straight line from its length at rest, laid through what it pulled under known plates by least squares.");
    case BandModel::Quadratic: return tr("A bent line from its length at rest, laid through what it pulled under known plates by least squares.");
    case BandModel::Rubber: break;
    }
    return tr("The curve of rubber from its length at rest, laid through what it pulled under known plates by least squares.");
}

QString rackFormula(const RackMeasurement& rack, const RackNumber& number)
{
    if (number.hole == 0)
        return tr("The height of the anchor as it was read, from the floor.");
    if (number.hole == 1)
        return tr("The height of its only hole as it was read, from the floor.");
    return tr("The height of the lowest hole, and from there as many times from hole to hole: %1.").arg(holeSum(*rack.firstHole, rack.spacing->quantity(), number.hole));
}

}

QString holeSum(Height lowest, std::optional<Length> spacing, int hole)
{
    if (hole <= 1 || !spacing)
        return say::lengthWithUnit(lowest);
    return tr("%1 + %2 × %3 = %4").arg(say::length(lowest)).arg(hole - 1).arg(say::length(*spacing), say::lengthWithUnit(lowest + (hole - 1) * *spacing));
}

QString number(const ItemOrigin& origin)
{
    return std::visit(Number(), origin.number);
}

QString formula(const ItemOrigin& origin, const Measured& measured)
{
    if (isImplement(kindOf(measured)))
        return implementtexts::formula(measured);
    switch (kindOf(measured)) {
    case ItemKind::Chain:
        return std::get<ChainMeasurement>(measured).by == ChainMeasuring::Gauged ? tr("What the steel of one link weighs, by its wire, pitch and inner width, divided by its pitch.")
                                                                                 : tr("What it weighs, divided by its length.");
    case ItemKind::Band: return bandFormula(std::get<BandNumber>(origin.number).model);
    case ItemKind::Aid: return tr("A smooth curve through what it carried, which never rises with height; here where it helps most.");
    case ItemKind::Machine:
        return std::holds_alternative<TorqueNumber>(origin.number) ? tr("What the stack weighs, times the radius of the cam at the angle where it is greatest. Friction is left out.")
                                                                   : tr("A smooth curve through what the scale read along its way; here where it pulls most. Friction is in it, as it was pulled.");
    case ItemKind::Scale: return tr("What it showed with a known mass, less what it showed empty, less the mass; here where it was furthest off. What is weighed on it counts as up to %1 out.").arg(say::massWithUnit(std::get<ScaleNumber>(origin.number).accuracy));
    case ItemKind::Iron: return std::get<IronNumber>(origin.number).count > 1 ? tr("What they weigh together, divided by how many there are.")
            : std::get<IronMeasurement>(measured).ends ? tr("What one end weighs and what the other weighs, added up.") : tr("What it weighs.");
    case ItemKind::Lead: return tr("Its length as it was read. A set-up takes it so.");
    default: break;
    }
    return rackFormula(std::get<RackMeasurement>(measured), std::get<RackNumber>(origin.number));
}

QString sources(const ItemOrigin& origin, const Measured& measured)
{
    if (isImplement(kindOf(measured)))
        return implementtexts::sources(measured);
    QString step = tr("Step of a scale: JCGM 100:2008, 4.3.7.");
    switch (kindOf(measured)) {
    case ItemKind::Chain:
        return std::get<ChainMeasurement>(measured).by == ChainMeasuring::Gauged ? tr("Density of steel: EN 1991-1-1. Chain tables: DIN 766, DIN 763, EN 818-7.") : step;
    case ItemKind::Band:
        switch (std::get<BandNumber>(origin.number).model) {
        case BandModel::Line: return {};
        case BandModel::Quadratic: return tr("Bent line: loop bands, McMaster, Cronin and McGuigan 2010.");
        case BandModel::Rubber: break;
        }
        return tr("Curve of rubber: Mooney 1940, Rivlin 1948.");
    case ItemKind::Aid: return tr("Curve: Fritsch and Butland 1984.");
    case ItemKind::Machine: return std::holds_alternative<TorqueNumber>(origin.number) ? tr("Weight times radius: statics; standard gravity: CGPM 1901.") : step;
    case ItemKind::Scale:
    case ItemKind::Iron: return step;
    default: break;
    }
    return {};
}

QString advice(const ItemOrigin& origin)
{
    for (const ItemInputLine& line : origin.lines) {
        if (line.share <= 0.5)
            continue;
        switch (line.input) {
        case ItemInput::FewReadings: return tr("A few more readings would make it surer.");
        case ItemInput::AidPlates: return tr("Plates that were weighed would make it surer.");
        case ItemInput::Stack: return tr("Weighing the stack's plates would make it surer.");
        case ItemInput::Radius: return tr("Reading the radius finer would make it surer.");
        default: break;
        }
        if (std::holds_alternative<IronNumber>(origin.number))
            return line.input == ItemInput::ScaleStep ? tr("A scale with a finer step would make it surer.") : tr("A scale that is less far out would make it surer.");
    }
    return {};
}

std::vector<OriginRow> lines(const ItemOrigin& origin, const Measured& measured)
{
    std::vector<OriginRow> rows;
    for (const ItemInputLine& line : origin.lines)
        rows.push_back(rowOf(line, origin, measured));
    return rows;
}

}
