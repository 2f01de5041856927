// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/implements/usetexts.h"

#include "core/work/records/seasonbook.h"
#include "mobile/gates/gatetexts.h"
#include "mobile/text/implementtexts.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace steelyard;
using sentences::Said;

namespace usetexts {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("usetexts", text); }

/// A share that something is held against is never said too low.
QString share(const std::optional<double>& percent) { return say::plain(std::ceil(percent.value_or(0) - 1e-9), 0); }

Said cap(const UseReason& reason, const SeasonBook& book, std::chrono::sys_days today)
{
    const QString lift = reason.of ? keepingtexts::lift(*reason.of, book) : QString();
    const QString day = reason.from ? keepingtexts::day(*reason.from, today) : QString();
    switch (reason.code) {
    case UseCode::CapMaximumNotPlain: return {tr("Her maximum was not lifted with plain iron: %1").arg(lift), tr("It is of %1. Test or estimate it with plain iron.").arg(day)};
    case UseCode::CapMaximumOld: return {tr("Her maximum is too old to go by: %1").arg(lift), tr("It is of %1. Test or estimate it again.").arg(day)};
    case UseCode::CapMayBeOver:
    case UseCode::OverCap: break;
    default: return {tr("No maximum of hers is known: %1").arg(lift), tr("Test or estimate it first: the cap is a share of it.")};
    }
    const QString comes = tr("Give-or-take counted in, it comes to %1 % of her lowest estimate of %2, and %3 % is your cap.").arg(share(reason.percent), lift, say::fixed(reason.capPercent.value_or(0), 0));
    const QString less = reason.atMost ? tr("%1 would do.").arg(say::massWithUnit(kilograms(std::floor(inKilograms(*reason.atMost) * 10) / 10))) : tr("No load weighed like this would do.");
    if (reason.code == UseCode::CapMayBeOver)
        return {tr("It may be over your cap"), tr("%1 Weigh it better, or take a lighter one: %2").arg(comes, less)};
    return {tr("Over your cap"), tr("%1 %2").arg(comes, less)};
}

}

QString permission(Permission permission)
{
    switch (permission) {
    case Permission::Permitted: return tr("may use it");
    case Permission::Caution: return tr("look over first");
    case Permission::Not: break;
    }
    return tr("not now");
}

Said reason(const UseReason& reason, const SeasonBook& book, std::chrono::sys_days today)
{
    switch (reason.code) {
    case UseCode::MassUnknown: return {tr("Its mass is not known"), implementtexts::gap(reason.gap.value_or(MassGap::NotMeasured))};
    case UseCode::PressureUnknown:
        return {tr("It may hold gas"), tr("Ask whoever brought it. Until it is known to be let off nobody lifts, drops or opens it.")};
    case UseCode::UnderPressure: return {tr("It holds gas"), tr("Whoever owns it lets it off. Nobody else opens it, and nobody drops or lifts it until then.")};
    case UseCode::CapNotNamed: return {tr("Held against no lift of hers"), tr("Say below which lift, and how much of it, such a load may come to; or see for yourself that it suits her.")};
    case UseCode::HandDoesNotFit: return {tr("Tried: it does not fit the hand"), tr("Take another, or hold it otherwise.")};
    case UseCode::HandNotTried: return {tr("Not tried in the hand"), tr("Have it held first. With two hands the little fingers go on the horns.")};
    case UseCode::CoachNote: return {tr("Noted"), QString::fromStdString(reason.text)};
    case UseCode::NotLookedOver: return {tr("Nobody has looked it over"), tr("Look for wire that shows, cuts in the side, and water in it.")};
    case UseCode::ReachNotAsked: return {tr("Does she reach the ground?"), tr("With a flat back and straight arms, hands under the edge. If not, put it on blocks or leave it out.")};
    default: return cap(reason, book, today);
    }
}

QString first(const ImplementUse& use, const SeasonBook& book, std::chrono::sys_days today)
{
    if (use.error)
        return sentences::refusal(*use.error);
    const auto open = [](const auto& one) { return !one.lookedOver; };
    const auto ours = std::find_if(use.reasons.begin(), use.reasons.end(), open);
    const auto gates = std::find_if(use.gates.begin(), use.gates.end(), open);
    if (gates != use.gates.end() && (ours == use.reasons.end() || gates->alone > ours->alone))
        return gates->key.code == GateCode::CautionWaits ? tr("the usual cautions") : gatetexts::reason({*gates, {gates->key.method}}, today).head;
    return ours == use.reasons.end() ? QString() : reason(*ours, book, today).head;
}

}
