// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/clearance.h"

#include <algorithm>

namespace steelyard {

ClearanceState stateOn(const Clearance& clearance, std::chrono::sys_days day)
{
    if (clearance.takenBack && day >= clearance.takenBack->day)
        return ClearanceState::TakenBack;
    if (day < clearance.day)
        return ClearanceState::NotYet;
    return clearance.until && day > *clearance.until ? ClearanceState::Expired : ClearanceState::Valid;
}

ClearanceState stateAmong(std::span<const Clearance> all, const Clearance& clearance, std::chrono::sys_days day)
{
    const ClearanceState own = stateOn(clearance, day);
    const bool wentWithAnother = own == ClearanceState::Valid && std::any_of(all.begin(), all.end(), [&](const Clearance& other) {
        return other.lift == clearance.lift && other.method == clearance.method && stateOn(other, day) == ClearanceState::TakenBack
            && clearance.day < other.takenBack->day;
    });
    return wentWithAnother ? ClearanceState::TakenBack : own;
}

bool holdsOn(const DayStatus& status, std::chrono::sys_days day)
{
    return day >= status.day && !(status.until && day > *status.until) && !(status.lifted && day >= status.lifted->day);
}

DayStanding standingOn(std::span<const DayStatus> statuses, std::chrono::sys_days day)
{
    DayStanding out;
    bool forbids = false, hasNoEnd = false;
    for (const DayStatus& status : statuses) {
        if (!holdsOn(status, day))
            continue;
        if (!status.text.empty() && std::find(out.texts.begin(), out.texts.end(), status.text) == out.texts.end())
            out.texts.push_back(status.text);
        out.unread = out.unread || status.unread;
        if (status.fitness == Fitness::All && !status.unread)
            continue;
        out.fitness = std::max(out.fitness, status.fitness);
        out.notMethods.insert(status.notMethods.begin(), status.notMethods.end());
        out.notGroups.insert(status.notGroups.begin(), status.notGroups.end());
        out.notLifts.insert(status.notLifts.begin(), status.notLifts.end());
        hasNoEnd = hasNoEnd || !status.until;
        out.until = forbids ? std::max(out.until, status.until) : status.until;
        forbids = true;
    }
    if (hasNoEnd)
        out.until.reset();
    return out;
}

}
