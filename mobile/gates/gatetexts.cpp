// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/gatetexts.h"

#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <cmath>

using namespace steelyard;
using sentences::CautionText, sentences::Said;

namespace gatetexts {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("gatetexts", text);
}

/// One sentence after the other.
QString both(const QString& first, const QString& second)
{
    return tr("%1 %2").arg(first, second);
}

QString named(const std::vector<Method>& methods)
{
    QStringList list;
    for (const Method one : methods)
        list << method(one);
    return list.join(QStringLiteral(", "));
}

/// A share that something is held against is never said too low, nor a limit too high.
QString percent(double of)
{
    return tr("%1 %").arg(say::plain(std::ceil(of - 1e-9), 0));
}

/// What would just do, not said too high.
QString atMost(Mass mass)
{
    constexpr double places = 10;
    return say::inMassUnit(say::plain(std::floor(say::shown(mass) * places + 1e-9) / places, 1));
}

/// One reason being said.
class Saying {
public:
    Saying(const GateReason& reason, std::chrono::sys_days today) : m_reason(reason.reason), m_methods(named(reason.methods)), m_today(today) {}

    [[nodiscard]] Said said() const
    {
        switch (m_reason.key.code) {
        case GateCode::ClearanceMissing:
        case GateCode::ClearanceExpired:
        case GateCode::ClearanceTakenBack:
        case GateCode::ClearanceNotYet: return clearance();
        case GateCode::StatusNone:
        case GateCode::StatusNames:
        case GateCode::StatusMayName:
        case GateCode::StatusText:
        case GateCode::StatusUnread: return status();
        case GateCode::Minor:
            return {tr("May be under age: %1").arg(m_methods), tr("A clearance for it with this lift, given knowing her age, settles it. Local rules go before.")};
        case GateCode::AgeUnknown:
            return {tr("Age not known: %1").arg(m_methods), tr("Enter her birth year; or a clearance for it with this lift, given knowing that she may be under age, settles it.")};
        case GateCode::MaximumMissing:
        case GateCode::MaximumNotPlain:
        case GateCode::MaximumOld: return maximum();
        case GateCode::LoadUnknown:
            return {tr("Nobody knows whether the load keeps to the limit"), tr("Measure what hangs along her whole way, then it is known.")};
        case GateCode::OverCap:
        case GateCode::OverMaximum: return load();
        case GateCode::CautionWaits: break;
        }
        return {caution(m_reason.key.method).head, {}};
    }

private:
    /// The tool that collects sentences names them by their class.
    [[nodiscard]] static QString tr(const char* text) { return QCoreApplication::translate("gatetexts::Saying", text); }
    [[nodiscard]] QString day(const std::optional<std::chrono::sys_days>& when) const { return when ? keepingtexts::day(*when, m_today) : QString(); }
    /// One that was written by a newer app has no name that can be read here.
    [[nodiscard]] QString who() const { return m_reason.who.empty() ? tr("somebody") : QString::fromStdString(m_reason.who); }

    [[nodiscard]] Said clearance() const
    {
        const QString settles = tr("Clearance is given by whoever is licensed or responsible here.");
        switch (m_reason.key.code) {
        case GateCode::ClearanceExpired:
            return {tr("Clearance is over: %1").arg(m_methods), both(tr("%1 gave it, until %2.").arg(who(), day(m_reason.until)), settles)};
        case GateCode::ClearanceTakenBack:
            return {tr("Clearance was taken back: %1").arg(m_methods), both(tr("%1 took it back on %2.").arg(who(), day(m_reason.from)), settles)};
        case GateCode::ClearanceNotYet:
            return {tr("Cleared only from %2 on: %1").arg(m_methods, day(m_reason.from)), tr("%1 gave it. Wait until then, or have it put right.").arg(who())};
        default:
            return {tr("Not cleared: %1").arg(m_methods), both(tr("Nobody has cleared her for it with this lift."), settles)};
        }
    }

    [[nodiscard]] QString setBy() const
    {
        const QString set = m_reason.until ? tr("%1 set it on %2, until %3.").arg(who(), day(m_reason.from), day(m_reason.until)) : tr("%1 set it on %2.").arg(who(), day(m_reason.from));
        return m_reason.text.empty() ? set : tr("“%1” %2").arg(QString::fromStdString(m_reason.text), set);
    }
    [[nodiscard]] Said status() const
    {
        const QString lifts = tr("Whoever set it lifts it.");
        switch (m_reason.key.code) {
        case GateCode::StatusNone:
            return {tr("She does not train now"), both(setBy(), lifts)};
        case GateCode::StatusNames: {
            const QString what = m_reason.group ? group(*m_reason.group) : m_reason.key.method == Method::Plain ? tr("this lift") : m_methods;
            return {tr("Not now: %1").arg(what), both(setBy(), lifts)};
        }
        case GateCode::StatusMayName:
            return {tr("It may be one of what she is kept from now"), tr("Nobody has said which lift this one is like. Say so where the lift was added, then it is known.")};
        case GateCode::StatusText:
            return {tr("Something is said of her now"), setBy()};
        default:
            return {tr("A newer app has set what she may do now"), tr("What it forbids cannot be read here. Update the app, or ask whoever set it.")};
        }
    }

    [[nodiscard]] QString whose() const { return m_reason.key.method == Method::Tyre ? tr("deadlift") : tr("lift"); }
    [[nodiscard]] Said maximum() const
    {
        switch (m_reason.key.code) {
        case GateCode::MaximumNotPlain:
            return {tr("Her maximum was not lifted with plain iron"), tr("It is of %1. Test or estimate the plain %2: it says how steady she is.").arg(day(m_reason.from), whose())};
        case GateCode::MaximumOld:
            return {tr("Her maximum is too old to go by"), tr("It is of %1 and counted until %2. Test or estimate the plain %3 again.").arg(day(m_reason.from), day(m_reason.until), whose())};
        default:
            return {tr("No maximum of hers is known"), tr("Test or estimate the plain %1 first: percent is of that, and it says how steady she is.").arg(whose())};
        }
    }

    [[nodiscard]] Said load() const
    {
        const QString share = percent(m_reason.percent.value_or(0));
        const QString known = m_reason.tested.value_or(false) ? tr("tested on %1").arg(day(m_reason.from)) : tr("estimated from %1").arg(day(m_reason.from));
        const QString less = m_reason.atMost ? tr("%1 at the worst place would do.").arg(atMost(*m_reason.atMost)) : tr("No load would do.");
        if (m_reason.key.code == GateCode::OverCap)
            return {tr("Over the limit of %1 of her maximum").arg(percent(m_reason.capPercent.value_or(0))),
                    both(tr("At its worst place, give-or-take counted in, it comes to %1 of the lowest estimate (%2).").arg(share, known), less)};
        return {tr("As much as her maximum, or more"),
                both(tr("At its worst place, give-or-take counted in, it comes to %1 of the lowest estimate (%2): a maximal lift. Warm, screened, supervised.").arg(share, known), less)};
    }

    const Reason& m_reason;
    QString m_methods;
    std::chrono::sys_days m_today;
};

}

QString method(Method method)
{
    switch (method) {
    case Method::Plain: return tr("plain iron");
    case Method::MaximalTest: return tr("maximal test");
    case Method::EccentricRelease: return tr("eccentric overload");
    case Method::Chains: return tr("chains");
    case Method::BandsBelow: return tr("bands from below");
    case Method::BandsAbove: return tr("bands from above");
    case Method::BenchAid: return tr("bench aid");
    case Method::Machine: return tr("machines");
    case Method::Overhead: return tr("overhead");
    case Method::Tyre: return tr("tyre");
    case Method::Implement: return tr("log, keg, sandbag, stone");
    case Method::Carry: return tr("carries");
    case Method::Sled: return tr("sled");
    case Method::Kettlebell: return tr("kettlebells");
    case Method::IsometricTest: return tr("isometric test");
    case Method::Jumps: return tr("jumps and landings");
    case Method::Throws: return tr("throws");
    }
    return tr("something a newer app knows");
}

QString group(LiftGroup group)
{
    switch (group) {
    case LiftGroup::Squat: return tr("squats");
    case LiftGroup::Hinge: return tr("lifts bent at the hip");
    case LiftGroup::Press: return tr("presses");
    case LiftGroup::Pull: return tr("arm pulls");
    case LiftGroup::Explosive: return tr("explosive lifts");
    case LiftGroup::OneLeg: return tr("one-leg lifts");
    }
    return tr("something a newer app knows");
}

QString fitness(Fitness fitness)
{
    switch (fitness) {
    case Fitness::All: return tr("all");
    case Fitness::Some: return tr("some");
    case Fitness::None: break;
    }
    return tr("none");
}

Said reason(const GateReason& reason, std::chrono::sys_days today)
{
    return Saying(reason, today).said();
}

CautionText caution(Method which)
{
    const QString head = tr("Before it is ready: %1").arg(method(which));
    switch (which) {
    case Method::Overhead:
        return {head, {tr("A proven overhead lift comes first."), tr("Room above and around; nobody within reach of the bar."), tr("She knows how to get out from under it.")}};
    case Method::MaximalTest:
        return {head, {tr("Warm, screened and supervised."), tr("Safeties set, a spotter at each end."), tr("Stop for pain, dizziness, chest pain, sudden headache or numbness.")}};
    case Method::IsometricTest:
        return {head, {tr("Warm, screened and supervised."), tr("She breathes, and builds up the pull."), tr("Stop for pain, dizziness, chest pain, sudden headache or numbness.")}};
    case Method::EccentricRelease:
        return {head, {tr("Rehearse with empty hooks, a spotter at each end."), tr("If one side stays on: do not press, ride to the safeties."), tr("Safeties tried with an empty bar.")}};
    case Method::Tyre:
        return {head, {tr("Flat back to the ground, no curled arms."), tr("Look for wire; drain it."), tr("Clear fall zone, spotters.")}};
    case Method::Implement:
        return {head, {tr("A keg under pressure is never opened or dropped."), tr("Clear room to let it fall."), tr("Feet clear of it.")}};
    case Method::Carry:
        return {head, {tr("Clear lane, level ground."), tr("Stop when posture goes.")}};
    default:
        return {head, {tr("Look at the kit and the place first.")}};
    }
}

std::vector<NoticeRow> stops(const SetupGate& gate, std::chrono::sys_days today)
{
    std::vector<NoticeRow> rows;
    if (gate.error)
        rows.push_back({tr("Nobody knows whether she may"), sentences::refusal(*gate.error), true});
    for (const GateReason& one : gate.reasons)
        if (one.reason.alone == Permission::Not) {
            const auto said = reason(one, today);
            rows.push_back({said.head, said.body, true});
        }
    return rows;
}

std::vector<CautionRow> cautions(const SetupGate& gate, std::chrono::sys_days today)
{
    std::vector<CautionRow> rows;
    for (std::size_t i = 0; i < gate.reasons.size(); ++i) {
        const GateReason& one = gate.reasons[i];
        if (one.reason.alone != Permission::Caution)
            continue;
        const int code = firstCode + static_cast<int>(i);
        if (one.reason.key.code == GateCode::CautionWaits) {
            const auto said = caution(one.reason.key.method);
            rows.push_back({code, said.head, said.points, one.reason.lookedOver});
        } else {
            const auto said = reason(one, today);
            rows.push_back({code, said.head, {said.body}, one.reason.lookedOver});
        }
    }
    return rows;
}

QString quiet(const std::optional<GateLifter>& lifter, const SetupGate& gate)
{
    if (!lifter)
        return tr("For nobody: no clearance is looked at.");
    return gate.reasons.empty() && !gate.error ? tr("Nothing in her day status, clearances, age and maximum stands against it.") : QString();
}

}
