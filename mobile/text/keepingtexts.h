// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"
#include "mobile/text/sentences.h"

#include <QDate>

/** Sentences about what is kept: lifts, deeds, and why something cannot be kept. */
namespace keepingtexts {

/// "back squat", or the name of one that was added; a lift that is not known here says its number.
[[nodiscard]] QString lift(steelyard::LiftId id, const steelyard::SeasonBook& book);
/// "back squat"; empty for one that does not ship.
[[nodiscard]] QString shipped(steelyard::LiftId id);
/// What was done, as it stands behind "Undo:".
[[nodiscard]] QString deed(const steelyard::DeedDone& done, const steelyard::SeasonBook& book);
/// What is wrong, and what to do next.
[[nodiscard]] sentences::Said refusal(const steelyard::Told& told);
/// That the reserve was used to keep it.
[[nodiscard]] sentences::Said reserveUsed();
/// "25 Nov", with the year where it is another one than today's.
[[nodiscard]] QString day(std::chrono::sys_days day, std::chrono::sys_days today);

}
