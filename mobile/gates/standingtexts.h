// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

#include <QString>

/** What is kept of an athlete's day status and clearances, in words. */
namespace standingtexts {

/// "some, until 14 Nov": what several day statuses come to.
[[nodiscard]] QString today(const steelyard::DayStanding& standing, std::chrono::sys_days today);
/// "not: overhead, presses · left shoulder"; empty where nothing is named.
[[nodiscard]] QString what(const steelyard::DayStanding& standing, const steelyard::SeasonBook& book);
/// "some, not: overhead".
[[nodiscard]] QString status(const steelyard::DayStatus& status, const steelyard::SeasonBook& book);
/// "the physiotherapist, from 30 Oct until 14 Nov".
[[nodiscard]] QString setBy(const steelyard::DayStatus& status, std::chrono::sys_days today);
/// "holds", "to come", "over", "lifted".
[[nodiscard]] QString stateOf(const steelyard::DayStatus& status, std::chrono::sys_days today);
/// "back squat: eccentric overload".
[[nodiscard]] QString clearedFor(const steelyard::Clearance& clearance, const steelyard::SeasonBook& book);
/// "the head coach, from 30 Oct until 14 Nov; knowing her age".
[[nodiscard]] QString givenBy(const steelyard::Clearance& clearance, std::chrono::sys_days today);
/// "holds", "from 4 Dec on", "over", "taken back".
[[nodiscard]] QString stateOf(const steelyard::Clearance& clearance, steelyard::ClearanceState state, std::chrono::sys_days today);
/// "the physiotherapist, 14 Nov".
[[nodiscard]] QString saidSo(const steelyard::SaidSo& by, std::chrono::sys_days today);
/// Why more than name, squad and loads has to wait; empty where it need not.
[[nodiscard]] QString waits(const std::optional<steelyard::Unfit>& unfit);

}
