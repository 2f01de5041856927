// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/readings/machineeditor.h"

#include "mobile/readings/readingtexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"
#include "mobile/text/tooltexts.h"

#include <algorithm>
#include <array>
#include <cmath>

using namespace steelyard;

namespace {

double inDegrees(Angle angle) { return angle.radians / oneDegree.radians; }

}

MachineMeasurement MachineEditor::measurement() const
{
    const KitItem now = item();
    const auto* machine = std::get_if<MachineMeasurement>(&now.measurement);
    return machine ? *machine : MachineMeasurement{};
}

void MachineEditor::setMeasurement(const MachineMeasurement& measurement)
{
    KitItem now = item();
    now.measurement = measurement;
    setItem(now);
}

void MachineEditor::setByPull(bool byPull)
{
    MachineMeasurement m = measurement();
    m.by = byPull ? MachineMeasuring::Pull : MachineMeasuring::Radius;
    setMeasurement(m);
}

std::pair<QString, QString> MachineEditor::parts() const
{
    return isByPull() ? std::pair{QStringLiteral("travel"), QStringLiteral("pull")} : std::pair{QStringLiteral("angle"), QStringLiteral("radius")};
}

std::vector<FieldSpec> MachineEditor::specs() const
{
    if (!ready())
        return {};
    const MachineMeasurement m = measurement();
    std::vector<FieldSpec> all{{QStringLiteral("stack"), tr("Stack"), inMass(m.stack), {3, 2, 0.5, 400}, false,
                                isByPull() ? tr("what is pinned while you pull") : tr("what is pinned: turning moments are shown for it"), true}};
    if (isByPull())
        all.push_back({QStringLiteral("scaleStep"), tr("Step of the scale"), inMass(m.scaleStep), {1, 3, 0.001, 5}, false, tooltexts::stepHint(), true});
    for (std::size_t i = 0; i < m.readings.size(); ++i) {
        const MachineReading& r = m.readings[i];
        if (isByPull()) {
            all.push_back({keyOf(true, static_cast<int>(i)), {}, inLength(r.travel), {3, 1, 0, 300}, false, tr("how far the handle came"), true});
            all.push_back({keyOf(false, static_cast<int>(i)), {}, inMass(r.pull), {3, 2, 0, 400}, false, tr("what the scale shows, held still"), true});
        } else {
            all.push_back({keyOf(true, static_cast<int>(i)), {}, unitless(r.angle ? std::optional(inDegrees(*r.angle)) : std::nullopt), {3, 1, 0, 270}, false, tr("turned from where it begins"), true});
            all.back().unit = tr("°");
            all.push_back({keyOf(false, static_cast<int>(i)), {}, inLength(r.radius), {2, 1, 0, 60}, false, tr("square from the axis to the cable"), true});
        }
    }
    return all;
}

KeepOutcome MachineEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    MachineMeasurement m = measurement();
    const auto place = placeOf(key);
    if (key == QLatin1String("stack"))
        m.stack = keyed.mass();
    else if (key == QLatin1String("scaleStep"))
        m.scaleStep = keyed.mass();
    else if (!place)
        return noSuchEntry();
    else
        readAs(m.readings[place->index], *place, keyed);
    setMeasurement(m);
    return {};
}

void MachineEditor::readAs(MachineReading& reading, const Place& place, const KeyedFigure& keyed) const
{
    if (isByPull() && place.first)
        reading.travel = keyed.length();
    else if (isByPull())
        reading.pull = keyed.mass();
    else if (place.first)
        reading.angle = Angle{keyed.ratio * oneDegree.radians};
    else
        reading.radius = keyed.length();
}

bool MachineEditor::isMeasured() const
{
    return ready() && answerOf(measurement()).ok();
}

QString MachineEditor::answer() const
{
    const QString hardest = readingtexts::hardest(measurement());
    if (hardest.isEmpty())
        return isByPull() ? tr("Pull along its way: not known yet") : tr("Turning moment by angle: not known yet");
    return hardest.left(1).toUpper() + hardest.mid(1);
}

QString MachineEditor::trouble() const
{
    const auto answer = answerOf(measurement());
    return answer ? QString() : sentences::refusal(answer.error());
}

QString MachineEditor::more() const
{
    const MachineMeasurement m = measurement();
    const auto answer = answerOf(m);
    if (!answer)
        return {};
    const QString work = readingtexts::work(answer->work, answer->uWork);
    if (answer->meanPull) {
        const QString mean = say::pull(*answer->meanPull, coverageFactor95(knownExactly) * *answer->uMeanPull).withUnit();
        return tr("Mean %1 over the way, work %2. Friction is left out: up it feels like more, down like less.").arg(mean, work);
    }
    return tr("Mean %1 over the way, work %2, the stack rises %3. Friction is left out: up it feels like more, down like less.")
        .arg(readingtexts::torque(*answer->meanTorque), work, say::lengthWithUnit(answer->rise));
}

FitPicture MachineEditor::picture() const
{
    FitPicture p;
    const MachineMeasurement m = measurement();
    const bool byPull = isByPull();
    p.pullUnit = byPull ? say::massUnit() : tr("N·m");
    p.lengthUnit = byPull ? say::lengthUnit() : tr("°");
    const auto inOrder = machineReadingsThatCount(m);
    const auto cam = camFrom(m);
    const auto pull = machinePullFrom(m);
    const bool known = byPull ? pull.ok() : cam.ok() && m.stack;
    if (!known)
        return p;
    const double factor = coverageFactor95(knownExactly);
    const auto at = [&](double place) {
        if (byPull) {
            const Length travel = metres(place);
            return std::array{say::shown(travel), say::shownPull(pull->at(travel).value_or(Force{})), factor * say::shownPull(pull->uncertaintyAt(travel).value_or(Force{}))};
        }
        const auto torque = torqueAt(*cam, *m.stack, Angle{place}).value_or(TorqueReading{});
        return std::array{inDegrees(Angle{place}), torque.value.newtonMetres, factor * torque.u.newtonMetres};
    };
    for (const std::size_t i : inOrder) {
        const auto said = at(byPull ? m.readings[i].travel->si() : m.readings[i].angle->radians);
        p.points.append(QVariantMap{{QStringLiteral("x"), said[1]}, {QStringLiteral("y"), said[0]}, {QStringLiteral("odd"), false}, {QStringLiteral("label"), QString::number(i + 1)}});
    }
    const double from = byPull ? pull->first().si() : cam->first().radians, to = byPull ? pull->last().si() : cam->last().radians;
    constexpr int parts = 60;
    for (int i = 0; i <= parts; ++i) {
        const auto said = at(i == parts ? to : from + (to - from) * i / parts);
        p.fit.append({said[1], said[0]});
        p.low.append({std::max(0.0, said[1] - said[2]), said[0]});
        p.high.append({said[1] + said[2], said[0]});
        p.pullTo = std::max(p.pullTo, 1.05 * (said[1] + said[2]));
    }
    p.lengthFrom = p.fit.first().y();
    p.lengthTo = p.lengthFrom + 1.08 * (p.fit.last().y() - p.lengthFrom);
    p.measuredTo = p.fit.last().y();
    const QString end = say::plain(p.measuredTo, 1);
    p.measuredText = tr("measured up to %1").arg(byPull ? say::inLengthUnit(end) : tr("%1°").arg(end));
    return p;
}

void MachineEditor::addEmpty()
{
    MachineMeasurement m = measurement();
    m.readings.emplace_back();
    setMeasurement(m);
}

void MachineEditor::removeReading(int row)
{
    MachineMeasurement m = measurement();
    if (row < 0 || row >= count())
        return;
    m.readings.erase(m.readings.begin() + row);
    setMeasurement(m);
}

void MachineEditor::setLeftOut(int row, bool leftOut)
{
    Q_UNUSED(row)
    Q_UNUSED(leftOut)
}

std::vector<HangingRow> MachineEditor::rows() const
{
    const MachineMeasurement m = measurement();
    const auto cam = camFrom(m);
    std::vector<HangingRow> rows;
    for (const MachineReading& r : m.readings) {
        if (m.by == MachineMeasuring::Pull) {
            rows.push_back({r.travel ? say::inLengthUnit(say::entered(*r.travel)) : tr("travel"), r.pull ? say::inMassUnit(say::entered(*r.pull)) : tr("pull"), {}});
            continue;
        }
        const auto torque = cam && m.stack && r.angle && r.radius ? torqueAt(*cam, *m.stack, *r.angle) : std::nullopt;
        rows.push_back({r.angle ? readingtexts::angle(*r.angle) : tr("angle"), r.radius ? say::inLengthUnit(say::entered(*r.radius)) : tr("radius"),
                        torque ? readingtexts::torque(*torque) : QString()});
    }
    return rows;
}

QString MachineEditor::ownName(const KitItem& item) const
{
    Q_UNUSED(item)
    return tr("Cam machine");
}
