// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/itemorigintexts.h"

#include "mobile/text/say.h"

#include <QCoreApplication>

#include <cmath>

namespace itemorigintexts {

using namespace steelyard;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("itemorigin", text); }

QString lengthText(const std::optional<Entered<Length>>& length) { return length ? say::inLengthUnit(say::entered(*length)) : QString(); }
QString wireText(const std::optional<Entered<Length>>& length) { return length ? say::wireWithUnit(*length) : QString(); }
QString massText(const std::optional<Entered<Mass>>& mass) { return mass ? say::inMassUnit(say::entered(*mass)) : QString(); }

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

OriginRow chainLine(const ItemInputLine& line, const ChainMeasurement& chain)
{
    const QString taped = say::lengthWithUnit(metres(0.01)), gauged = say::wireWithUnit(metres(0.0001));
    switch (line.input) {
    case ItemInput::ChainMass:
        return {tr("Mass"), tr("all of it, on the scale"), massText(chain.mass), tr("as sure as the scale"), 0};
    case ItemInput::ScaleStep:
        return {tr("Step of the scale"), tr("a mass anywhere within a step shows the same: step / √12 (JCGM 100:2008, 4.3.7)"), massText(chain.scaleStep), shareText(line.share), line.share};
    case ItemInput::ScaleError:
        return {tr("The scale's own error"), tr("as far as it was off when it was checked, either way: error / √3"), {}, shareText(line.share), line.share};
    case ItemInput::Wire:
        return {tr("Wire"), tr("its real thickness"), wireText(chain.wire), moreText(line.moreByStepRatio, gauged), 0};
    case ItemInput::Pitch:
        return {tr("Pitch"), tr("inside length of one link"), wireText(chain.pitch), moreText(line.moreByStepRatio, gauged), 0};
    case ItemInput::InnerWidth:
        return {tr("Inner width"), tr("inside width of one link"), wireText(chain.innerWidth), moreText(line.moreByStepRatio, gauged), 0};
    case ItemInput::GaugedLength:
        return {tr("Length"), tr("first link to last, pulled straight"), lengthText(chain.length), tr("says how much of it there is, not what a length of it weighs"), 0};
    case ItemInput::Method:
        return {tr("Gauging itself"), tr("what tables print differs by as much from this formula (DIN 766, DIN 763, EN 818-7)"), tr("3 %"), shareText(line.share), line.share};
    default:
        break;
    }
    return {tr("Length"), tr("first link to last, pulled straight; taken as it was read"), lengthText(chain.length), moreText(line.moreByStepRatio, taped), 0};
}

OriginRow bandLine(const ItemInputLine& line, const BandMeasurement& band, const BandNumber& number)
{
    switch (line.input) {
    case ItemInput::BandReadings: {
        const QString count = number.readingCount == 1 ? tr("1 reading") : tr("%1 readings").arg(number.readingCount);
        return {tr("Known plates hung on it"), tr("how far the readings lie off the curve says how sure it is; the plates count as they are marked"), count, shareText(line.share), line.share};
    }
    case ItemInput::FewReadings:
        return {tr("So few readings"), tr("a curve through a handful looks surer than it is, so 5 % at least (our choice)"), tr("5 %"), shareText(line.share), line.share};
    default:
        break;
    }
    return {tr("Length at rest"), tr("unloaded, laid straight; taken as it was read"), lengthText(band.rest), moreText(line.moreByStepRatio, say::lengthWithUnit(metres(0.01))), 0};
}

}

QString number(const ItemOrigin& origin)
{
    if (const auto* chain = std::get_if<ChainNumber>(&origin.number))
        return say::perLength(chain->value, chain->giveOrTake);
    const auto& band = std::get<BandNumber>(origin.number);
    return tr("%1 at %2").arg(say::pull(band.pull, band.giveOrTake).withUnit(), say::lengthWithUnit(band.at));
}

QString formula(const ItemOrigin& origin, const Measured& measured)
{
    if (const auto* band = std::get_if<BandNumber>(&origin.number)) {
        switch (band->model) {
        case BandModel::Line: return tr("A straight line from its length at rest, laid through what it pulled under known plates by least squares.");
        case BandModel::Quadratic: return tr("A bent line from its length at rest, laid through what it pulled under known plates by least squares (loop bands: McMaster, Cronin and McGuigan 2010).");
        case BandModel::Rubber: break;
        }
        return tr("The curve of rubber from its length at rest, laid through what it pulled under known plates by least squares (Mooney 1940, Rivlin 1948).");
    }
    const auto* chain = std::get_if<ChainMeasurement>(&measured);
    if (chain && chain->by == ChainMeasuring::Gauged)
        return tr("What the steel of one link weighs, by its wire, pitch and inner width (density of steel: EN 1991-1-1), divided by its pitch.");
    return tr("What it weighs, divided by its length.");
}

std::vector<OriginRow> lines(const ItemOrigin& origin, const Measured& measured)
{
    std::vector<OriginRow> rows;
    for (const ItemInputLine& line : origin.lines) {
        if (const auto* chain = std::get_if<ChainMeasurement>(&measured))
            rows.push_back(chainLine(line, *chain));
        else if (const auto* band = std::get_if<BandMeasurement>(&measured))
            rows.push_back(bandLine(line, *band, std::get<BandNumber>(origin.number)));
    }
    return rows;
}

}
