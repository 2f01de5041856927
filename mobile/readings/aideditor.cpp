// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/readings/aideditor.h"

#include "mobile/readings/readingtexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <algorithm>
#include <cmath>

using namespace steelyard;

AidMeasurement AidEditor::measurement() const
{
    const KitItem now = item();
    const auto* aid = std::get_if<AidMeasurement>(&now.measurement);
    return aid ? *aid : AidMeasurement{};
}

void AidEditor::setMeasurement(const AidMeasurement& measurement)
{
    KitItem now = item();
    now.measurement = measurement;
    setItem(now);
}

std::vector<FieldSpec> AidEditor::specs() const
{
    std::vector<FieldSpec> all;
    if (!ready())
        return all;
    const AidMeasurement m = measurement();
    for (std::size_t i = 0; i < m.readings.size(); ++i) {
        all.push_back({keyOf(true, static_cast<int>(i)), {}, inMass(m.readings[i].mass), {3, 2, 0, 300}, false, tr("bar and collars with it; 0 where it goes slack"), true});
        all.push_back({keyOf(false, static_cast<int>(i)), {}, inLength(m.readings[i].aboveChest), {3, 1, 0, 120}, false, tr("higher than where it touches the chest"), true});
    }
    return all;
}

KeepOutcome AidEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    const auto place = placeOf(key);
    if (!place)
        return noSuchEntry();
    AidMeasurement m = measurement();
    AidReading& r = m.readings[place->index];
    if (place->first)
        r.mass = keyed.mass();
    else
        r.aboveChest = keyed.length();
    // read again: it counts again
    r.leftOut = false;
    setMeasurement(m);
    return {};
}

bool AidEditor::isMeasured() const
{
    return ready() && aidFrom(measurement()).ok();
}

QString AidEditor::answer() const
{
    const auto help = aidFrom(measurement());
    return help ? tr("Helps %1").arg(readingtexts::help(*help, help->first(), true)) : tr("Help by height: not known yet");
}

QString AidEditor::trouble() const
{
    const auto help = aidFrom(measurement());
    return help ? QString() : sentences::refusal(help.error());
}

std::optional<int> AidEditor::oddRow() const
{
    const auto odd = oddAidReadingIndex(measurement());
    return odd ? std::optional(static_cast<int>(*odd)) : std::nullopt;
}

QString AidEditor::oddText() const
{
    const auto odd = oddRow();
    return odd ? tr("Reading %1 does not go with the others: higher up it helps less").arg(*odd + 1) : QString();
}

FitPicture AidEditor::picture() const
{
    FitPicture p;
    p.pullUnit = say::massUnit();
    p.lengthUnit = say::lengthUnit();
    const AidMeasurement m = measurement();
    const auto odd = oddRow();
    double highest = 0, heaviest = 0;
    for (std::size_t i = 0; i < m.readings.size(); ++i) {
        const AidReading& r = m.readings[i];
        if (!r.mass || !r.aboveChest)
            continue;
        const double x = say::shown(*r.mass), y = say::shown(*r.aboveChest);
        highest = std::max(highest, y);
        heaviest = std::max(heaviest, x);
        const bool isOdd = odd && *odd == static_cast<int>(i);
        const QString name = r.leftOut ? tr("%1, left out").arg(i + 1) : isOdd ? tr("%1, odd").arg(i + 1) : QString::number(i + 1);
        p.points.append(QVariantMap{{QStringLiteral("x"), x}, {QStringLiteral("y"), y}, {QStringLiteral("odd"), r.leftOut || isOdd}, {QStringLiteral("label"), name}});
    }
    p.lengthFrom = 0;
    p.lengthTo = std::max(1.0, 1.12 * highest);
    p.pullTo = std::max(1.0, 1.15 * heaviest);
    p.measuredTo = highest;
    p.measuredText = tr("measured up to %1").arg(say::inLengthUnit(say::plain(highest, 1)));
    const auto help = aidFrom(m);
    if (!help)
        return p;
    constexpr int parts = 60;
    const Length last = m.readings[aidReadingsThatCount(m).back()].aboveChest->quantity();
    for (int i = 0; i <= parts; ++i) {
        const Length at = help->first() + (last - help->first()) * i / parts;
        const double pull = say::shownPull(help->at(at).value_or(Force{})), y = say::shown(at);
        const double give = coverageFactor95(knownExactly) * say::shownPull(help->uncertaintyAt(at).value_or(Force{}));
        p.fit.append({pull, y});
        p.low.append({std::max(0.0, pull - give), y});
        p.high.append({pull + give, y});
        p.pullTo = std::max(p.pullTo, 1.02 * (pull + give));
    }
    return p;
}

void AidEditor::addEmpty()
{
    AidMeasurement m = measurement();
    m.readings.emplace_back();
    setMeasurement(m);
}

void AidEditor::setLeftOut(int row, bool leftOut)
{
    AidMeasurement m = measurement();
    if (row < 0 || row >= count())
        return;
    m.readings[static_cast<std::size_t>(row)].leftOut = leftOut;
    setMeasurement(m);
}

void AidEditor::removeReading(int row)
{
    AidMeasurement m = measurement();
    if (row < 0 || row >= count())
        return;
    m.readings.erase(m.readings.begin() + row);
    setMeasurement(m);
}

std::vector<HangingRow> AidEditor::rows() const
{
    std::vector<HangingRow> rows;
    const auto odd = oddRow();
    for (const AidReading& r : measurement().readings) {
        const bool isOdd = odd && *odd == static_cast<int>(rows.size());
        rows.push_back({r.mass ? say::inMassUnit(say::entered(*r.mass)) : tr("mass"), r.aboveChest ? say::inLengthUnit(say::entered(*r.aboveChest)) : tr("height"),
                        r.leftOut ? tr("left out") : isOdd ? tr("odd") : QString(), isOdd, r.leftOut});
    }
    return rows;
}

QString AidEditor::ownName(const KitItem& item) const
{
    Q_UNUSED(item)
    return tr("Bench aid");
}
