// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/bandeditor.h"

#include "core/measure/rounding.h"
#include "core/work/measuredkit.h"
#include "mobile/text/giving.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <algorithm>
#include <cmath>

using namespace steelyard;

namespace {

const QString massKey = QStringLiteral("mass:"), lengthKey = QStringLiteral("length:");

}

BandMeasurement BandEditor::measurement() const
{
    const KitItem now = item();
    const auto* band = std::get_if<BandMeasurement>(&now.measurement);
    return band ? *band : BandMeasurement{};
}

void BandEditor::setMeasurement(const BandMeasurement& measurement)
{
    KitItem now = item();
    now.measurement = measurement;
    setItem(now);
}

std::vector<FieldSpec> BandEditor::specs() const
{
    if (!ready())
        return {};
    const BandMeasurement m = measurement();
    std::vector<FieldSpec> all{{QStringLiteral("rest"), tr("Length at rest"), inLength(m.rest), {3, 1, 5, 400}, false, tr("hook to hook, hanging loose"), true}};
    for (std::size_t i = 0; i < m.hangings.size(); ++i) {
        const BandHanging& h = m.hangings[i];
        const QString n = QString::number(i);
        all.push_back({massKey + n, {}, inMass(h.mass), {3, 2, 0.1, 200}, false, tr("what hangs on it"), true});
        all.push_back({lengthKey + n, {}, inLength(h.length), {3, 1, 5, 600}, false, tr("hook to hook"), true});
    }
    return all;
}

KeepOutcome BandEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    BandMeasurement m = measurement();
    if (key == QLatin1String("rest")) {
        m.rest = keyed.length();
    } else {
        const bool mass = key.startsWith(massKey);
        bool isNumber = false;
        const auto at = static_cast<std::size_t>(key.mid(key.indexOf(QLatin1Char(':')) + 1).toUInt(&isNumber));
        if ((!mass && !key.startsWith(lengthKey)) || !isNumber || at >= m.hangings.size())
            return {tr("There is no such entry."), {}};
        BandHanging& h = m.hangings[at];
        if (mass)
            h.mass = keyed.mass();
        else if (m.rest && keyed.length() <= *m.rest)
            return {tr("At rest it is %1: with a load on it is longer.").arg(say::inLengthUnit(say::entered(*m.rest))), {}};
        else
            h.length = keyed.length();
        // read again: it counts again
        h.leftOut = false;
    }
    setMeasurement(m);
    return {};
}

bool BandEditor::isMeasured() const
{
    if (!ready())
        return false;
    const auto fit = bandFitFrom(measurement());
    return fit.ok() && fit->rises();
}

QString BandEditor::answer() const
{
    const auto fit = bandFitFrom(measurement());
    if (!fit)
        return tr("Pull by length: not known yet");
    const Length at = fit->longestMeasured();
    const auto said = roundTogether(say::shownPull(fit->pull(at)), say::shownPull(bandGiveOrTake(*fit, at)), 1);
    return tr("Pulls %1 at %2").arg(say::inMassUnit(say::withGive(said)), say::lengthWithUnit(at));
}

QString BandEditor::trouble() const
{
    const auto fit = bandFitFrom(measurement());
    if (!fit)
        return sentences::refusal(fit.error());
    return fit->rises() ? QString() : tr("This curve falls between the readings. Choose another, or hang again.");
}

FitPicture BandEditor::picture() const
{
    FitPicture p;
    p.pullUnit = say::massUnit();
    p.lengthUnit = say::lengthUnit();
    const BandMeasurement m = measurement();
    const auto odd = oddHanging(m);
    double longest = m.rest ? say::shown(*m.rest) : 0, heaviest = 0, shortest = longest > 0 ? longest : 1e9;
    for (std::size_t i = 0; i < m.hangings.size(); ++i) {
        const BandHanging& h = m.hangings[i];
        if (!h.mass || !h.length)
            continue;
        const double x = say::shown(*h.mass), y = say::shown(*h.length);
        longest = std::max(longest, y);
        shortest = std::min(shortest, y);
        heaviest = std::max(heaviest, x);
        const bool open = h.leftOut || (odd && odd->index == i);
        const QString name = h.leftOut ? tr("%1, left out").arg(i + 1) : open ? tr("%1, odd").arg(i + 1) : QString::number(i + 1);
        p.points.append(QVariantMap{{QStringLiteral("x"), x}, {QStringLiteral("y"), y}, {QStringLiteral("odd"), open},
                                    {QStringLiteral("label"), name}});
    }
    if (longest <= 0)
        return p;
    const double round = say::units().length == LengthUnit::Inch ? 4 : 10;
    p.lengthFrom = std::floor(shortest * 0.9 / round) * round;
    p.lengthTo = std::ceil(longest * 1.08 / round) * round;
    p.pullTo = std::max(1.0, heaviest * 1.15);
    p.measuredTo = longest;
    p.measuredText = tr("measured up to %1").arg(say::inLengthUnit(say::plain(longest, 1)));
    const auto fit = bandFitFrom(m);
    if (!fit)
        return p;
    // a give-or-take past this share more than all that was pulled runs out of the picture: it is no measurement yet
    constexpr double mostShown = 1.6;
    const double widest = mostShown * std::max(p.pullTo, say::shownPull(fit->pull(fit->knownUpTo())));
    constexpr int parts = 60;
    for (int i = 0; i <= parts; ++i) {
        const Length at = fit->rest() + (fit->knownUpTo() - fit->rest()) * i / parts;
        const double pull = say::shownPull(fit->pull(at)), give = say::shownPull(bandGiveOrTake(*fit, at)), y = say::shown(at);
        p.fit.append({pull, y});
        p.low.append({std::max(0.0, pull - give), y});
        p.high.append({pull + give, y});
        p.pullTo = std::max(p.pullTo, std::min(1.02 * (pull + give), widest));
    }
    p.lengthTo = std::max(p.lengthTo, std::ceil(say::shown(fit->knownUpTo()) / round) * round);
    return p;
}

int BandEditor::model() const
{
    const auto m = measurement().model;
    return m ? static_cast<int>(*m) + 1 : 0;
}

void BandEditor::setModel(int model)
{
    BandMeasurement m = measurement();
    m.model = model < 1 || model > 3 ? std::nullopt : std::optional(static_cast<BandModel>(model - 1));
    setMeasurement(m);
}

QString BandEditor::modelText() const
{
    const auto fit = bandFitFrom(measurement());
    if (!fit)
        return {};
    const QString names[] = {tr("a straight line"), tr("a bent line"), tr("rubber's own curve")};
    const QString name = names[static_cast<int>(fit->model())];
    if (measurement().model)
        return tr("Laid through the readings: %1, your choice.").arg(name);
    return fit->points() < 5 ? tr("Laid through the readings: %1, until there are five of them.").arg(name)
                             : tr("Laid through the readings: %1, which fits best.").arg(name);
}

QString BandEditor::oddText() const
{
    const auto odd = oddHanging(measurement());
    if (!odd)
        return {};
    const double off = say::shownPull(odd->off);
    const QString which = say::plain(static_cast<double>(odd->index + 1), 0);
    return off > 0 ? tr("Hanging %1 lies %2 over the line of the others").arg(which, say::inMassUnit(say::fixed(off, 1)))
                   : tr("Hanging %1 lies %2 under the line of the others").arg(which, say::inMassUnit(say::fixed(-off, 1)));
}

QString BandEditor::addHanging(bool unloading)
{
    BandMeasurement m = measurement();
    m.hangings.emplace_back().unloading = unloading;
    setMeasurement(m);
    return massKey + QString::number(m.hangings.size() - 1);
}

void BandEditor::setUnloading(int row, bool unloading)
{
    BandMeasurement m = measurement();
    if (row < 0 || row >= static_cast<int>(m.hangings.size()))
        return;
    m.hangings[static_cast<std::size_t>(row)].unloading = unloading;
    setMeasurement(m);
}

void BandEditor::setLeftOut(int row, bool leftOut)
{
    BandMeasurement m = measurement();
    if (row < 0 || row >= static_cast<int>(m.hangings.size()))
        return;
    m.hangings[static_cast<std::size_t>(row)].leftOut = leftOut;
    setMeasurement(m);
}

void BandEditor::removeHanging(int row)
{
    BandMeasurement m = measurement();
    if (row < 0 || row >= static_cast<int>(m.hangings.size()))
        return;
    m.hangings.erase(m.hangings.begin() + row);
    setMeasurement(m);
}

void BandEditor::refresh()
{
    if (ready()) {
        const BandMeasurement m = measurement();
        const auto odd = oddHanging(m);
        std::vector<HangingRow> rows;
        for (std::size_t i = 0; i < m.hangings.size(); ++i) {
            const BandHanging& h = m.hangings[i];
            const bool isOdd = odd && odd->index == i;
            const QString note = h.leftOut ? tr("left out") : isOdd ? tr("odd") : h.unloading ? tr("read while taking off") : QString();
            rows.push_back({h.mass ? say::inMassUnit(say::entered(*h.mass)) : tr("mass"), h.length ? say::inLengthUnit(say::entered(*h.length)) : tr("length"), note, isOdd, h.leftOut});
        }
        m_hangings.setRows(std::move(rows));
    }
    ItemEditor::refresh();
}

QString BandEditor::ownName(const KitItem& item) const
{
    const auto* m = std::get_if<BandMeasurement>(&item.measurement);
    return m && m->rest ? tr("Band, %1 at rest").arg(say::lengthWithUnit(*m->rest)) : tr("Band");
}
