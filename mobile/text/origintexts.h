// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/desk.h"
#include "core/work/origin.h"
#include "core/work/records/seasonbook.h"

#include <QString>

/** Where a number comes from, in words. */
namespace origintexts {

/// "at the bottom", "mean of the path".
[[nodiscard]] QString which(steelyard::WhichPull which);
/// "107 ± 4 kg at 104 cm"; for a mean, between which heights.
[[nodiscard]] QString number(const steelyard::Origin& origin);
/// What a line is of: "Bar, collars and plates", the name of a thing of the kit, "Bar marks".
[[nodiscard]] QString what(const steelyard::OriginLine& line, const steelyard::Desk& desk);
/// "12.3 ± 0.7 kg", the give-or-take being what this line alone makes of it; marks add nothing: "± 1.2 kg".
[[nodiscard]] QString adds(const steelyard::OriginLine& line, steelyard::Force giveOrTake);
/// The formula in words, with how and when it was measured.
[[nodiscard]] QString how(const steelyard::OriginLine& line, const steelyard::SeasonBook& book, std::chrono::sys_days today);
/// The same of the marks that a number is asked at: how each was read.
[[nodiscard]] QString howMarked(steelyard::WhichPull which, const steelyard::Desk& desk);
/// What would make the give-or-take smaller most; empty where there is none to speak of.
[[nodiscard]] QString advice(const steelyard::Origin& origin, const steelyard::Desk& desk);

}
