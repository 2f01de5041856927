// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/clearance.h"

namespace steelyard {

ClearanceState stateOn(const Clearance& clearance, std::chrono::sys_days day)
{
    if (clearance.takenBack && day >= clearance.takenBack->day)
        return ClearanceState::TakenBack;
    if (day < clearance.day)
        return ClearanceState::NotYet;
    return clearance.until && day > *clearance.until ? ClearanceState::Expired : ClearanceState::Valid;
}

bool holdsOn(const DayStatus& status, std::chrono::sys_days day)
{
    return day >= status.day && !(status.until && day > *status.until) && !(status.lifted && day >= status.lifted->day);
}

}
