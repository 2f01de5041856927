// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/eccentric/releaseform.h"

#include "core/work/eccentric/release.h"
#include "core/work/records/codec.h"
#include "mobile/follow.h"
#include "mobile/text/say.h"

#include <QHash>

#include <cmath>

using namespace steelyard;

namespace {

constexpr std::size_t mostRepsWatched = 12, mostSettings = 8;
const QString repKey = QStringLiteral("rep:"), settingKey = QStringLiteral("setting:");

using MassPlace = std::optional<Entered<Mass>>* (*)(ReleasePlan&);
using LengthPlace = std::optional<Entered<Length>>* (*)(ReleasePlan&);

const QHash<QString, MassPlace>& masses()
{
    static const QHash<QString, MassPlace> places{
        {QStringLiteral("frame"), [](ReleasePlan& p) { return &p.hook.frame; }},
        {QStringLiteral("scaleStep"), [](ReleasePlan& p) { return &p.hook.scaleStep; }},
        {QStringLiteral("rating"), [](ReleasePlan& p) { return &p.hook.rating; }},
        {QStringLiteral("push"), [](ReleasePlan& p) { return &p.push; }},
        {QStringLiteral("dumbbell"), [](ReleasePlan& p) { return &p.dumbbell; }},
    };
    return places;
}

const QHash<QString, LengthPlace>& lengths()
{
    static const QHash<QString, LengthPlace> places{
        {QStringLiteral("room"), [](ReleasePlan& p) { return &p.hook.room; }},
        {QStringLiteral("radius"), [](ReleasePlan& p) { return &p.measures.sleeveRadius; }},
        {QStringLiteral("drop"), [](ReleasePlan& p) { return &p.measures.lipDrop; }},
        {QStringLiteral("box"), [](ReleasePlan& p) { return &p.measures.box; }},
        {QStringLiteral("margin"), [](ReleasePlan& p) { return &p.measures.margin; }},
        {QStringLiteral("spacing"), [](ReleasePlan& p) { return &p.measures.spacing; }},
        {QStringLiteral("grip"), [](ReleasePlan& p) { return &p.measures.grip; }},
        {QStringLiteral("chest"), [](ReleasePlan& p) { return &p.measures.chest; }},
        {QStringLiteral("throat"), [](ReleasePlan& p) { return &p.measures.throat; }},
    };
    return places;
}

/// The list that a numbered key is of, with its place in it; nothing for another key.
std::optional<std::pair<std::vector<Entered<Length>>*, std::size_t>> listed(const QString& key, ReleasePlan& plan)
{
    for (const auto& [prefix, list] : {std::pair(repKey, &plan.measures.lowest), std::pair(settingKey, &plan.hook.settings)})
        if (key.startsWith(prefix))
            return std::pair(list, static_cast<std::size_t>(key.mid(prefix.size()).toUInt()));
    return std::nullopt;
}

std::optional<double> secondsOf(const std::optional<std::chrono::seconds>& time)
{
    return time ? std::optional(static_cast<double>(time->count())) : std::nullopt;
}

/// Wires are keyed in millimetres.
bool isFine(const QString& key) { return key == QLatin1String("radius") || key == QLatin1String("drop"); }

}

void ReleaseForm::setWork(DeskWork* work)
{
    if (!follow(this, m_work, work, [this] { refresh(); }))
        return;
    Q_EMIT workChanged();
    refresh();
}

void ReleaseForm::setPart(Part part)
{
    if (std::exchange(m_part, part) == part)
        return;
    Q_EMIT partChanged();
    refresh();
}

bool ReleaseForm::isLyingPress() const
{
    if (!m_work || !m_work->book() || m_work->name().isEmpty())
        return false;
    const auto facts = gateFacts(m_work->book()->book(), RecordId::fromHex(m_work->athleteId().toStdString()).value_or(RecordId{}),
                                 liftIn(m_work->lift().toStdString()).value_or(LiftId{}));
    return facts && steelyard::isLyingPress(facts->alike);
}

std::vector<FieldSpec> ReleaseForm::setSpecs(const ReleasePlan& plan) const
{
    const EccentricSet& set = plan.set;
    std::vector<FieldSpec> all;
    if (plan.way == ReleaseWay::PartnerAdds)
        all.push_back({QStringLiteral("push"), tr("Partner's push"), inMass(plan.push), {3, 1, 1, 300}, false, tr("read on a scale; leave out when it never was")});
    if (plan.way == ReleaseWay::DumbbellsDropped)
        all.push_back({QStringLiteral("dumbbell"), tr("One dumbbell"), inMass(plan.dumbbell), {3, 2, 0.5, 100}, false, tr("of the two that are dropped"), true});
    all.push_back({QStringLiteral("reps"), tr("Reps"), unitless(set.reps), {2, 0, 1, 50}, false, tr("in one set")});
    all.push_back({QStringLiteral("tempo"), tr("Way down, s"), unitless(static_cast<double>(set.tempoDown.count()) / 1000), {2, 1, 0.5, 30}, false, tr("seconds from top to bottom")});
    if (set.putBack == PutBack::EachCluster) {
        all.push_back({QStringLiteral("cluster"), tr("Reps of a cluster"), unitless(set.clusterReps ? std::optional<double>(*set.clusterReps) : std::nullopt), {2, 0, 1, 49}, false, tr("between two rests in the set"), true});
        all.push_back({QStringLiteral("rest"), tr("Rest in the set, s"), unitless(secondsOf(set.clusterRest)), {3, 0, 1, 600}, false, tr("seconds, while it is put back"), true});
    }
    return all;
}

std::vector<FieldSpec> ReleaseForm::hookSpecs(const ReleasePlan& plan) const
{
    const HookRecord& hook = plan.hook;
    std::vector<FieldSpec> all{
        {QStringLiteral("frame"), tr("One hook weighs"), inMass(hook.frame), {3, 2, 0.1, 50}, false, tr("empty; the other one is like it"), true},
        {QStringLiteral("scaleStep"), tr("Step of the scale"), inMass(hook.scaleStep), {2, 3, 0.001, 5}, false, tr("the smallest difference that it shows")},
        {QStringLiteral("radius"), tr("Bar's centre to the seat"), inWire(plan.measures.sleeveRadius), {3, 1, 5, 100}, false, tr("half of the sleeve's thickness"), true},
        {QStringLiteral("drop"), tr("Drop until the lip is clear"), inWire(plan.measures.lipDrop), {3, 1, 0, 200}, false, tr("tried with an empty bar, the hook's foot on the floor"), true},
        {QStringLiteral("rating"), tr("One hook carries"), inMass(hook.rating), {3, 1, 1, 300}, false, tr("what is written on it, its frame apart")},
        {QStringLiteral("room"), tr("Room for plates"), inLength(hook.room), {3, 1, 1, 100}, false, tr("on one hook")}};
    for (std::size_t i = 0; i <= std::min(hook.settings.size(), mostSettings - 1); ++i) {
        const bool next = i == hook.settings.size();
        all.push_back({settingKey + QString::number(i), next ? tr("Another setting") : tr("Setting %1").arg(say::fixed(static_cast<double>(i) + 1, 0)),
                       next ? inLength(std::nullopt) : inLength(hook.settings[i]), {3, 1, 5, 250}, false, tr("seat to foot")});
    }
    return all;
}

std::vector<FieldSpec> ReleaseForm::depthSpecs(const ReleasePlan& plan) const
{
    const ReleaseMeasures& measures = plan.measures;
    std::vector<FieldSpec> all;
    if (!measures.box)
        for (std::size_t i = 0; i <= std::min(measures.lowest.size(), mostRepsWatched - 1); ++i) {
            const bool next = i == measures.lowest.size();
            all.push_back({repKey + QString::number(i), tr("Rep %1, lowest bar").arg(say::fixed(static_cast<double>(i) + 1, 0)),
                           next ? inLength(std::nullopt) : inLength(measures.lowest[i]), {3, 1, 5, 250}, false, tr("bar's centre above the floor, plain bar"), i < 3});
        }
    if (measures.lowest.empty())
        all.push_back({QStringLiteral("box"), tr("Or on a box"), inLength(measures.box), {3, 1, 5, 250}, false, tr("bar's centre above the floor, the same each time")});
    all.push_back({QStringLiteral("margin"), tr("Free above that by"), inLength(measures.margin), {2, 1, 0, 40}, false,
                   measures.box ? tr("on a box yours to say") : tr("left out, twice her own spread")});
    return all;
}

std::vector<FieldSpec> ReleaseForm::placeSpecs(const ReleasePlan& plan) const
{
    const ReleaseMeasures& measures = plan.measures;
    std::vector<FieldSpec> all;
    if (plan.way == ReleaseWay::Hooks || plan.way == ReleaseWay::PartnerLiftsOff)
        all.push_back({QStringLiteral("spacing"), tr("From side to side"), inLength(measures.spacing), {3, 1, 50, 250}, false, tr("from hook to hook, or from plates to plates"), true});
    all.push_back({QStringLiteral("grip"), tr("From hand to hand"), inLength(measures.grip), {3, 1, 20, 200}, false, tr("where hands hold the bar; leave out in a squat")});
    if (isLyingPress()) {
        all.push_back({QStringLiteral("chest"), tr("Arched chest"), inLength(measures.chest), {3, 1, 10, 150}, false, tr("floor to its top, lying as she will lie"), true});
        all.push_back({QStringLiteral("throat"), tr("Throat"), inLength(measures.throat), {3, 1, 10, 150}, false, tr("floor to its top, lying as she will lie"), true});
    }
    return all;
}

std::vector<FieldSpec> ReleaseForm::specs() const
{
    if (!ready() || !desk().setup().release)
        return {};
    const ReleasePlan& plan = *desk().setup().release;
    switch (m_part) {
    case Set: return setSpecs(plan);
    case Hook: return hookSpecs(plan);
    case Depth: return depthSpecs(plan);
    case Places: break;
    }
    return placeSpecs(plan);
}

KeepOutcome ReleaseForm::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    if (!spec(key))
        return {tr("There is no such number."), {}};
    ReleasePlan plan = *desk().setup().release;
    if (const auto mass = masses().value(key))
        *mass(plan) = keyed.mass();
    else if (const auto length = lengths().value(key))
        *length(plan) = isFine(key) ? keyed.wire() : keyed.length();
    else if (const auto list = listed(key, plan); list && list->second < list->first->size())
        (*list->first)[list->second] = keyed.length();
    else if (list)
        list->first->push_back(keyed.length());
    else if (key == QLatin1String("reps"))
        plan.set.reps = static_cast<int>(keyed.ratio);
    else if (key == QLatin1String("tempo"))
        plan.set.tempoDown = std::chrono::milliseconds(std::llround(1000 * keyed.ratio));
    else if (key == QLatin1String("cluster"))
        plan.set.clusterReps = static_cast<int>(keyed.ratio);
    else
        plan.set.clusterRest = std::chrono::seconds(std::llround(keyed.ratio));
    desk().setRelease(std::move(plan));
    return {};
}

bool ReleaseForm::canClear(const QString& key) const
{
    const auto now = spec(key);
    return now && now->shown && key != QLatin1String("reps") && key != QLatin1String("tempo");
}

bool ReleaseForm::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    ReleasePlan plan = *desk().setup().release;
    if (const auto mass = masses().value(key))
        mass(plan)->reset();
    else if (const auto length = lengths().value(key))
        length(plan)->reset();
    else if (const auto list = listed(key, plan); list && list->second < list->first->size())
        list->first->erase(list->first->begin() + static_cast<std::ptrdiff_t>(list->second));
    else if (key == QLatin1String("cluster"))
        plan.set.clusterReps.reset();
    else
        plan.set.clusterRest.reset();
    desk().setRelease(std::move(plan));
    return true;
}
