// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/asking/hangasker.h"

#include "core/hanging/whyhung.h"
#include "core/work/asking/herstrength.h"
#include "core/work/asking/kitquestion.h"
#include "mobile/asking/askingtexts.h"
#include "mobile/pages/setuptexts.h"
#include "mobile/strength/strengthtexts.h"
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
const QString maximumKey = QStringLiteral("maximum");

std::optional<TargetPlace> placeOf(const QString& key)
{
    for (const Place& one : places)
        if (key == QLatin1String(one.key))
            return one.place;
    return std::nullopt;
}

template <typename Value>
std::optional<Value> at(const std::map<TargetPlace, Value>& list, TargetPlace place)
{
    const auto found = list.find(place);
    return found == list.end() ? std::nullopt : std::optional(found->second);
}

QString percent(double of) { return HangAsker::tr("%1 %").arg(say::plain(of, 1)); }

}

/// One search: what it is asked with, what was asked then, and whether anybody still wants the answer.
struct HangAsker::Job {
    SetupRecord now;
    std::vector<KitItem> kit;
    BarMarks marks;
    HeldTo heldTo;
    AllowedKinds allowed;
    std::vector<HangTarget> targets;
    std::vector<IsometricPull> pulls;
    bool level = false;
    std::optional<KitQuestion> asked; ///< made by the search, before it first tells
    std::atomic<bool> cancelled = false;
};

/// What a search tells: so far, or at its end; all that takes time is worked out with it.
struct HangAsker::Found {
    struct Answer {
        HangAnswer answer;
        SetupRecord meant;
        WeighedUp weighed;
    };
    std::vector<Answer> answers;
    std::optional<HangReason> reason;
    std::optional<Error> refused;
    std::optional<TargetPlace> failing;
    bool isAtAnEnd = false, isProved = false;
    Force bound; ///< no answer costs less

    void add(const Job& job, const HangAnswer& answer)
    {
        SetupRecord meant = setupOf(job.now, *job.asked, answer);
        WeighedUp weighed = weighUp(meant, job.kit, job.marks, {}, 0, job.heldTo);
        answers.push_back({answer, std::move(meant), std::move(weighed)});
    }
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

bool HangAsker::inPercent() const { return ready() && desk().wanted().inPercent; }

bool HangAsker::isLevel() const { return ready() && desk().wanted().isLevel; }

QString HangAsker::oneRepMax() const
{
    return ready() && desk().wanted().oneRepMax ? say::inMassUnit(say::entered(*desk().wanted().oneRepMax)) : QString();
}

QStringList HangAsker::maximum() const
{
    if (!ready() || !desk().wantedOfMaximum().oneRepMax)
        return {};
    if (desk().wanted().oneRepMax)
        return {oneRepMax(), tr("typed for now, not tested")};
    const DayMaximum& known = *desk().maximum();
    return {strengthtexts::middle(known.max), tr("filled in from her tests: %1, %2").arg(strengthtexts::range(known.max), strengthtexts::when(known, desk().maximumOn())), QStringLiteral("tests")};
}

std::vector<FieldSpec> HangAsker::specs() const
{
    std::vector<FieldSpec> all;
    if (!ready())
        return all;
    const WantedPulls& wanted = desk().wanted();
    constexpr EntryLimits pull{3, 2, 1, 600}, share{3, 1, 1, 200};
    for (const Place& one : places) {
        if (!hasPlace(one.place))
            continue;
        const QString key = QLatin1String(one.key), name = askingtexts::place(one.place);
        if (wanted.inPercent)
            all.push_back({key, name, unitless(at(wanted.percents, one.place)), share, false, tr("per cent of the 1RM")});
        else
            all.push_back({key, name, inMass(at(wanted.masses, one.place)), pull, false, {}});
    }
    if (wanted.inPercent)
        all.push_back({maximumKey, tr("1RM"), inMass(desk().wantedOfMaximum().oneRepMax), pull, !wanted.oneRepMax && desk().wantedOfMaximum().oneRepMax,
                       tr("of this lift, as it was lifted at that place; typed for now")});
    return all;
}

KeepOutcome HangAsker::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    const auto place = placeOf(key);
    if (!ready() || !spec(key))
        return {tr("There is no such entry."), {}};
    WantedPulls wanted = desk().wanted();
    if (!place)
        wanted.oneRepMax = keyed.mass();
    else if (wanted.inPercent)
        wanted.percents[*place] = keyed.ratio;
    else
        wanted.masses[*place] = keyed.mass();
    desk().want(std::move(wanted));
    refresh();
    return {};
}

bool HangAsker::canClear(const QString& key) const
{
    const auto place = placeOf(key);
    return ready() && (place ? desk().wanted().wants(*place) : key == maximumKey && desk().wanted().oneRepMax.has_value());
}

bool HangAsker::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    WantedPulls wanted = desk().wanted();
    if (const auto place = placeOf(key); !place)
        wanted.oneRepMax.reset();
    else if (wanted.inPercent)
        wanted.percents.erase(*place);
    else
        wanted.masses.erase(*place);
    desk().want(std::move(wanted));
    refresh();
    return true;
}

void HangAsker::step(const QString& key, bool up)
{
    const auto place = placeOf(key);
    if (!place || !ready() || !desk().wanted().wants(*place))
        return;
    WantedPulls wanted = desk().wanted();
    if (wanted.inPercent) {
        constexpr double by = 2.5, least = 2.5, most = 200;
        const double next = wanted.percents.at(*place) + (up ? by : -by);
        if (next < least || next > most)
            return;
        wanted.percents[*place] = next;
    } else {
        const Mass by = say::units().mass == MassUnit::Pound ? 5 * pound : kilograms(2.5);
        const Mass before = wanted.masses.at(*place).quantity(), next = up ? before + by : before - by;
        if (next < by)
            return;
        wanted.masses[*place] = Entered<Mass>(next);
    }
    desk().want(std::move(wanted));
    refresh();
}

void HangAsker::setInPercent(bool inPercent)
{
    if (!ready() || desk().wanted().inPercent == inPercent)
        return;
    WantedPulls wanted = desk().wanted();
    wanted.inPercent = inPercent;
    desk().want(std::move(wanted));
    refresh();
}

void HangAsker::setLevel(bool level)
{
    if (!ready() || desk().wanted().isLevel == level)
        return;
    WantedPulls wanted = desk().wanted();
    wanted.isLevel = level;
    desk().want(std::move(wanted));
    refresh();
}

void HangAsker::setChains(bool chains)
{
    if (std::exchange(m_chains, chains) != chains)
        refresh();
}

void HangAsker::setBands(bool bands)
{
    if (std::exchange(m_bands, bands) != bands)
        refresh();
}

TargetRow HangAsker::rowOf(TargetPlace place) const
{
    const WantedPulls wanted = desk().wantedOfMaximum();
    TargetRow row;
    row.name = askingtexts::place(place);
    row.wanted = wanted.wants(place);
    const auto mass = wanted.at(place);
    if (!row.wanted)
        return row;
    if (wanted.inPercent)
        row.value = mass ? tr("%1 · %2").arg(percent(wanted.percents.at(place)), say::massWithUnit(kilograms(std::round(mass->si() * 10) / 10))) : percent(wanted.percents.at(place));
    else
        row.value = say::inMassUnit(say::entered(wanted.masses.at(place)));
    return row;
}

void HangAsker::refresh()
{
    if (!ready())
        return;
    std::vector<TargetRow> rows;
    for (const Place& one : places)
        if (hasPlace(one.place)) {
            rows.push_back(rowOf(one.place));
            rows.back().key = QLatin1String(one.key);
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
    m_picture.pulls = askingtexts::pulls(desk().pulls());
    Q_EMIT asked();
}

void HangAsker::sayWithout(State state, const QString& head, const QString& body)
{
    m_meant.clear();
    m_best.clear();
    m_picture = {};
    m_answerRows.setRows({});
    say(state, head, body);
}

void HangAsker::ask()
{
    if (m_job)
        m_job->cancelled = true;
    m_job.reset();
    const Desk& here = desk();
    const WantedPulls wanted = here.wantedOfMaximum();
    auto targets = targetsOf(wanted, here.marks());
    if (targets.empty()) {
        const bool noMaximum = wanted.inPercent && !wanted.percents.empty() && !wanted.oneRepMax;
        return noMaximum ? sayWithout(Refused, tr("The 1RM comes first"), tr("Key it above. It is typed for now: nothing here has tested it.")) : sayWithout(Idle);
    }
    m_job = std::make_shared<Job>();
    m_job->now = here.setup();
    m_job->kit = here.kit();
    m_job->marks = here.marks();
    m_job->heldTo = here.heldTo();
    m_job->allowed = {m_chains, m_bands, m_bands};
    m_job->targets = std::move(targets);
    m_job->pulls = here.pulls();
    m_job->level = wanted.isLevel;
    say(Looking, tr("Looking for the best"));
    QThreadPool::globalInstance()->start([job = m_job, self = QPointer<HangAsker>(this)] {
        const auto tell = [&](const Found& found) {
            QMetaObject::invokeMethod(QCoreApplication::instance(), [job, self, found] {
                if (self && self->m_job == job)
                    self->show(job, found);
            }, Qt::QueuedConnection);
        };
        Found end;
        end.isAtAnEnd = true;
        std::optional<StrengthCurve> strength;
        if (job->level) {
            const auto curve = strengthOf(job->pulls);
            if (!curve) {
                end.refused = Error{curve.error().code, "strength"};
                return tell(end);
            }
            strength = *curve;
        }
        auto question = kitQuestion(job->now, job->kit, job->marks, job->allowed, job->targets, std::move(strength), job->heldTo);
        if (!question) {
            end.refused = question.error();
            return tell(end);
        }
        job->asked = std::move(*question);
        const HangAnswers answers = whatToHang(job->asked->question, {[&](const HangAnswer& answer) {
            Found found;
            found.add(*job, answer);
            tell(found);
        }, [&] { return !job->cancelled; }});
        for (const auto* answer : {&answers.best, &answers.next})
            if (*answer)
                end.add(*job, **answer);
        end.isProved = answers.isProved;
        end.bound = answers.bound;
        end.failing = answers.failing;
        if (answers.best && answers.isProved)
            end.reason = whyHung(job->asked->question, *answers.best);
        tell(end);
    });
}

void HangAsker::stop()
{
    if (m_job && m_state == Looking)
        m_job->cancelled = true;
}

void HangAsker::show(const std::shared_ptr<Job>& job, const Found& found)
{
    if (found.refused) {
        const bool strength = found.refused->what == "strength";
        return sayWithout(Refused, askingtexts::comesFirst(*found.refused),
                          strength ? tr("Pull at three heights at least, from near her lowest to near her highest.") : sentences::refusal(*found.refused));
    }
    const askingtexts::Names names(job->kit);
    std::vector<AnswerRow> rows;
    m_meant.clear();
    for (const Found::Answer& one : found.answers) {
        AnswerRow row;
        row.title = setuptexts::answer(one.weighed).title;
        row.off = askingtexts::off(*job->asked, one.answer);
        row.load = say::massWithUnit(job->asked->question.loads[one.answer.loadIndex].load.total);
        row.hangs = askingtexts::hangs(one.meant, names);
        row.changes = askingtexts::changes(job->now, one.meant, *job->asked, one.answer, names);
        row.within = one.answer.isWithin;
        if (found.reason && rows.empty())
            row.why = askingtexts::why(*job->asked, *found.reason, names);
        m_meant.push_back(one.meant);
        rows.push_back(std::move(row));
    }
    m_best = rows.empty() ? QStringList() : QStringList{rows.front().title, rows.front().off, rows.front().load};
    m_picture = {};
    const auto& strength = job->asked->question.strength;
    if (strength && !found.answers.empty() && found.answers.front().weighed.setup)
        m_picture = askingtexts::level(*found.answers.front().weighed.setup, *strength);
    m_answerRows.setRows(std::move(rows));
    if (!found.isAtAnEnd)
        return say(Looking, tr("Looking for the best"));
    const QString left = askingtexts::leftOut(*job->asked, names);
    if (found.answers.empty())
        return say(Proved, tr("Nothing here may hang that way."), left);
    if (!found.isProved)
        return say(Stopped, askingtexts::stopped(found.bound), left);
    if (found.answers.front().answer.isWithin)
        return say(Proved, tr("Nothing comes nearer with the kit that is here."), left);
    say(Proved, found.failing ? tr("Not with the kit that is here. What fails first: %1. These come nearest.").arg(askingtexts::place(*found.failing)) : tr("Not with the kit that is here. These come nearest."), left);
}

void HangAsker::take(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= m_meant.size())
        return;
    const SetupRecord meant = m_meant[static_cast<std::size_t>(index)];
    desk().lay(desk().marks(), meant);
}
