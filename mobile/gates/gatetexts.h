// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/gates/setupgate.h"
#include "mobile/models/rows.h"
#include "mobile/text/sentences.h"

#include <QString>

/** What somebody may do and what stands against it, in words, with what would settle it. */
namespace gatetexts {

/// Cautions of the gates are told from the kit's by their codes: this, and the reason's place among all.
inline constexpr int firstCode = 100;

/// "chains", "release hooks and other overload on the way down".
[[nodiscard]] QString method(steelyard::Method method);
/// "squats", "presses": what somebody is kept from together.
[[nodiscard]] QString group(steelyard::LiftGroup group);
/// "all", "some", "none".
[[nodiscard]] QString fitness(steelyard::Fitness fitness);

/// A reason and what would settle it. `today` says whether a day needs its year.
[[nodiscard]] sentences::Said reason(const steelyard::GateReason& reason, std::chrono::sys_days today);
/// What is to be looked over before a method.
[[nodiscard]] sentences::CautionText caution(steelyard::Method method);
/// What forbids it, and what only has to be looked over.
[[nodiscard]] std::vector<NoticeRow> stops(const steelyard::SetupGate& gate, std::chrono::sys_days today);
[[nodiscard]] std::vector<CautionRow> cautions(const steelyard::SetupGate& gate, std::chrono::sys_days today);
/// One quiet line: that nothing stands against it, or that nobody was looked at; else empty.
[[nodiscard]] QString quiet(const std::optional<steelyard::GateLifter>& lifter, const steelyard::SetupGate& gate);

}
