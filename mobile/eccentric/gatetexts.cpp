// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/eccentric/releasetexts.h"

#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

using namespace steelyard;

namespace releasetexts {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("releasetexts", text); }

QString dayOf(const std::optional<std::chrono::sys_days>& day, std::chrono::sys_days today)
{
    return day ? keepingtexts::day(*day, today) : QString();
}

QString atMost(const Reason& reason)
{
    return reason.atMost ? tr("Hang at most %1.").arg(say::massWithUnit(*reason.atMost)) : tr("No load with this give-or-take would do.");
}

NoticeRow said(const Reason& reason, std::chrono::sys_days today)
{
    switch (reason.key.code) {
    case GateCode::ClearanceMissing: return {tr("Not cleared for this"), tr("Somebody qualified has to clear her by name for a heavier way down in this lift.")};
    case GateCode::ClearanceExpired: return {tr("The clearance is over"), tr("It held until %1: have it given again.").arg(dayOf(reason.until, today))};
    case GateCode::ClearanceTakenBack: return {tr("The clearance was taken back"), tr("By %1, on %2.").arg(QString::fromStdString(reason.who), dayOf(reason.from, today))};
    case GateCode::ClearanceNotYet: return {tr("Not cleared yet"), tr("The clearance begins on %1.").arg(dayOf(reason.until, today))};
    case GateCode::StatusNone: return {tr("She does not train"), tr("Set by %1: ask whoever set it.").arg(QString::fromStdString(reason.who))};
    case GateCode::StatusNames:
    case GateCode::StatusMayName: return {tr("Her day status keeps her from this"), tr("Set by %1: ask whoever set it.").arg(QString::fromStdString(reason.who))};
    case GateCode::StatusText: return {tr("Her day status says"), QString::fromStdString(reason.text)};
    case GateCode::StatusUnread: return {tr("Her day status was set by a newer app"), tr("What it forbids is not known here: update the app.")};
    case GateCode::Minor: return {tr("She may be under age"), tr("Never without an approval that was given knowing that.")};
    case GateCode::AgeUnknown: return {tr("Her age is not known"), tr("Enter her birth year: who may be under age needs an approval by name.")};
    case GateCode::MaximumMissing: return {tr("No plain maximum"), tr("Test or estimate her 1RM in this lift with plain iron first.")};
    case GateCode::MaximumNotPlain: return {tr("The maximum is not with plain iron"), tr("Test or estimate her 1RM in this lift with plain iron first.")};
    case GateCode::MaximumOld: return {tr("The maximum is old"), tr("It is of %1: test again.").arg(dayOf(reason.from, today))};
    case GateCode::LoadUnknown: return {tr("The load on the way down is not known"), tr("Measure what is still to measure: nobody knows whether it keeps under the cap.")};
    case GateCode::OverCap:
        return {tr("Over the cap"), tr("With its give-or-take it comes to %1 % of her lowest estimate, and %2 % is the cap. %3")
                    .arg(say::plain(reason.percent.value_or(0), 0), say::plain(reason.capPercent.value_or(0), 0), atMost(reason))};
    case GateCode::OverMaximum: return {tr("As much as her maximum, or more"), tr("With its give-or-take it comes to %1 % of her lowest estimate.").arg(say::plain(reason.percent.value_or(0), 0))};
    case GateCode::CautionWaits: break;
    }
    return {tr("Cautions wait"), tr("Look them over on this page.")};
}

}

std::vector<NoticeRow> gate(const GateAnswer& answer, std::chrono::sys_days today)
{
    std::vector<NoticeRow> rows;
    for (const Reason& reason : answer.reasons) {
        // the card on the page says it, with a key
        if (reason.key.code == GateCode::CautionWaits)
            continue;
        NoticeRow row = said(reason, today);
        row.stop = reason.alone == Permission::Not;
        rows.push_back(std::move(row));
    }
    return rows;
}

}
