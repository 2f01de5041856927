// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/asking/hangasker.h"

#include "core/work/measuredkit.h"
#include "mobile/pages/setuptexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

#include <array>
#include <atomic>

using namespace steelyard;

namespace {

struct Place {
    TargetPlace place;
    const char* key;
};
constexpr std::array places = {Place{TargetPlace::Bottom, "bottom"}, Place{TargetPlace::Zone, "zone"}, Place{TargetPlace::Top, "top"}, Place{TargetPlace::Mean, "mean"}};

std::optional<TargetPlace> placeOf(const QString& key)
{
    for (const Place& one : places)
        if (key == QLatin1String(one.key))
            return one.place;
    return std::nullopt;
}

QString nameOf(TargetPlace place)
{
    switch (place) {
    case TargetPlace::Bottom: return HangAsker::tr("At the bottom");
    case TargetPlace::Zone: return HangAsker::tr("In the sticking zone");
    case TargetPlace::Top: return HangAsker::tr("At the top");
    case TargetPlace::Mean: break;
    }
    return HangAsker::tr("Mean of the path");
}

QString itemName(const Desk& desk, const RecordId& id)
{
    const KitItem* item = desk.item(id);
    return item ? QString::fromStdString(item->name) : QString();
}

QString whyNot(NotChosen why)
{
    switch (why) {
    case NotChosen::NotToBeUsed: return HangAsker::tr("lent, or out of use");
    case NotChosen::NotMeasured: return HangAsker::tr("not measured yet");
    case NotChosen::NoPair: return HangAsker::tr("only one: both sides hang alike");
    case NotChosen::NoAnchor: return HangAsker::tr("no place to anchor it: measure the rack's");
    case NotChosen::NotFarEnough: break;
    }
    return HangAsker::tr("not measured as far as it would be stretched");
}

}

/// One search: what was asked, and whether anybody still wants the answer.
struct HangAsker::Job {
    KitQuestion asked;
    SetupRecord now;
    std::atomic<bool> cancelled = false;
};

HangAsker::~HangAsker()
{
    if (m_job)
        m_job->cancelled = true;
}

bool HangAsker::hasPlace(TargetPlace place) const
{
    return place != TargetPlace::Zone || (ready() && desk().marks().zoneFrom && desk().marks().zoneTo);
}

std::optional<Entered<Mass>> HangAsker::wanted(const QString& key) const
{
    const auto place = placeOf(key);
    if (!place || !ready())
        return std::nullopt;
    const auto at = desk().wanted().find(*place);
    return at == desk().wanted().end() ? std::nullopt : std::optional(at->second);
}

std::vector<FieldSpec> HangAsker::specs() const
{
    std::vector<FieldSpec> all;
    if (!ready())
        return all;
    for (const Place& one : places)
        if (hasPlace(one.place))
            all.push_back({QLatin1String(one.key), nameOf(one.place), inMass(wanted(QLatin1String(one.key))), {3, 2, 1, 600}, false, {}});
    return all;
}

KeepOutcome HangAsker::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    const auto place = placeOf(key);
    if (!place || !hasPlace(*place))
        return {tr("There is no such entry."), {}};
    desk().want(*place, keyed.mass());
    refresh();
    return {};
}

bool HangAsker::clearNumber(const QString& key)
{
    const auto place = placeOf(key);
    if (!place || !wanted(key))
        return false;
    desk().want(*place, std::nullopt);
    refresh();
    return true;
}

void HangAsker::step(const QString& key, bool up)
{
    const auto place = placeOf(key);
    const auto before = wanted(key);
    if (!place || !before)
        return;
    const Mass by = say::units().mass == MassUnit::Pound ? 5 * pound : kilograms(2.5);
    const Mass next = up ? before->quantity() + by : before->quantity() - by;
    if (next < by)
        return;
    desk().want(*place, Entered<Mass>(next));
    refresh();
}

void HangAsker::setChains(bool chains)
{
    if (m_allowed.chains == chains)
        return;
    m_allowed.chains = chains;
    refresh();
}

void HangAsker::setBands(bool bands)
{
    if (m_allowed.bandsBelow == bands)
        return;
    m_allowed.bandsBelow = m_allowed.bandsAbove = bands;
    refresh();
}

void HangAsker::lookOn()
{
    if (++m_lookers == 1)
        refresh();
}

void HangAsker::lookAway()
{
    if (--m_lookers == 0)
        refresh();
}

void HangAsker::refresh()
{
    if (!ready())
        return;
    std::vector<TargetRow> rows;
    for (const Place& one : places) {
        if (!hasPlace(one.place))
            continue;
        const auto mass = wanted(QLatin1String(one.key));
        rows.push_back({QLatin1String(one.key), nameOf(one.place), mass ? say::inMassUnit(say::entered(*mass)) : QString(), mass.has_value()});
    }
    m_targetRows.setRows(std::move(rows));
    FieldEditor::refresh();
    ask();
}

void HangAsker::say(State state, const QString& head, const QString& body)
{
    m_state = state;
    m_head = head;
    m_body = body;
    Q_EMIT asked();
}

void HangAsker::sayWithout(State state, const QString& head, const QString& body)
{
    m_meant.clear();
    m_best.clear();
    m_answerRows.setRows({});
    say(state, head, body);
}

void HangAsker::ask()
{
    if (m_job)
        m_job->cancelled = true;
    m_job.reset();
    std::vector<HangTarget> targets;
    for (const auto& [place, mass] : desk().wanted())
        if (hasPlace(place))
            targets.push_back({place, weight(mass.quantity()), toleranceOf(weight(mass.quantity()))});
    if (targets.empty() || m_lookers == 0)
        return sayWithout(Idle);
    auto question = kitQuestion(desk().setup(), desk().kit(), desk().marks(), m_allowed, std::move(targets));
    if (!question)
        return sayWithout(Refused, tr("Her bar marks come first"), sentences::refusal(question.error()));
    m_job = std::make_shared<Job>();
    m_job->asked = std::move(*question);
    m_job->now = desk().setup();
    say(Looking, tr("Looking for the best"));
    QThreadPool::globalInstance()->start([job = m_job, self = QPointer<HangAsker>(this)] {
        const auto tell = [&](const HangAnswers& found, bool atAnEnd) {
            QMetaObject::invokeMethod(QCoreApplication::instance(), [job, self, found, atAnEnd] {
                if (self && self->m_job == job)
                    self->show(job, found, atAnEnd);
            }, Qt::QueuedConnection);
        };
        const HangAnswers found = whatToHang(job->asked.question, {[&](const HangAnswer& answer) { tell({answer, std::nullopt, false, {}, {}, 0}, false); },
                                                                   [&] { return !job->cancelled; }});
        tell(found, true);
    });
}

void HangAsker::stop()
{
    if (m_job && m_state == Looking)
        m_job->cancelled = true;
}

void HangAsker::show(const std::shared_ptr<Job>& job, const HangAnswers& found, bool atAnEnd)
{
    std::vector<AnswerRow> rows;
    m_meant.clear();
    for (const auto* answer : {&found.best, &found.next})
        if (*answer) {
            m_meant.push_back(setupOf(job->now, job->asked, **answer));
            rows.push_back(rowOf(*job, **answer, m_meant.back()));
        }
    m_best = rows.empty() ? QString() : rows.front().load;
    m_answerRows.setRows(std::move(rows));
    if (!atAnEnd)
        return say(Looking, tr("Looking for the best"));
    QStringList body;
    for (const LeftOut& out : job->asked.leftOut)
        body << tr("%1: %2").arg(itemName(desk(), out.item), whyNot(out.why));
    const QString left = body.isEmpty() ? QString() : tr("Not among the choices: %1.").arg(body.join(QStringLiteral("; ")));
    if (!found.best)
        return say(Proved, tr("Nothing here may hang that way."), left);
    if (!found.isProved)
        return say(Stopped, tr("Stopped: something better may exist."), left);
    if (found.best->isWithin)
        return say(Proved, tr("Nothing comes nearer with the kit that is here."), left);
    say(Proved, found.failing ? tr("Not with the kit that is here. What fails first: %1. These come nearest.").arg(nameOf(*found.failing)) : tr("Not with the kit that is here. These come nearest."), left);
}

AnswerRow HangAsker::rowOf(const Job& job, const HangAnswer& answer, const SetupRecord& meant) const
{
    AnswerRow row;
    row.within = answer.isWithin;
    const Desk& here = desk();
    row.title = setuptexts::answer(weighUp(meant, here.kit(), here.marks(), {}, 0)).title;
    QStringList off;
    const auto& targets = job.asked.question.targets;
    for (std::size_t t = 0; t < targets.size(); ++t) {
        const Mass miss = asMass(answer.readings[t].value - targets[t].wanted), size = miss < Mass{} ? kilograms(-miss.si()) : miss;
        const QString by = say::massWithUnit(kilograms(std::round(size.si() * 10) / 10));
        off << (size < kilograms(0.05) ? tr("%1: just that").arg(nameOf(targets[t].place)) : miss < Mass{} ? tr("%1: %2 less").arg(nameOf(targets[t].place), by) : tr("%1: %2 more").arg(nameOf(targets[t].place), by));
    }
    row.off = off.join(QStringLiteral(" · "));
    const IronLoad& iron = job.asked.question.loads[answer.loadIndex];
    row.load = say::massWithUnit(iron.load.total);
    for (const HungRecord& hung : meant.hung)
        row.hangs << tr("%1: %2").arg(itemName(here, hung.item), setuptexts::howItHangs(hung));
    const auto& now = job.now.hung;
    if (here.answer().load)
        row.changes << setuptexts::plateChange(job.now.bar, changeBetween(*here.answer().load, iron.load));
    const auto thing = [](const std::vector<HungRecord>& hung, const RecordId& item) {
        return std::find_if(hung.begin(), hung.end(), [&item](const HungRecord& one) { return one.item == item; });
    };
    for (const HungRecord& hung : now)
        if (thing(meant.hung, hung.item) == meant.hung.end())
            row.changes << tr("take off: %1").arg(itemName(here, hung.item));
    for (const HungRecord& hung : meant.hung) {
        const auto before = thing(now, hung.item);
        if (before == now.end())
            row.changes << tr("hang: %1").arg(itemName(here, hung.item));
        else if (*before != hung)
            row.changes << tr("hang another way: %1").arg(itemName(here, hung.item));
    }
    return row;
}

void HangAsker::take(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= m_meant.size())
        return;
    const SetupRecord meant = m_meant[static_cast<std::size_t>(index)];
    desk().lay(desk().marks(), meant);
}
