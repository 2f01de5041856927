// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/venues/freenow.h"

#include <QString>

#include <chrono>

/** Sentences about kit that is borrowed, lent, taken along, or hangs already. */
namespace venuetexts {

/// "borrowed from the school, back by 12 Mar"; "was due back on" once that is past.
[[nodiscard]] QString borrowed(const steelyard::OnLoan& loan, std::chrono::sys_days today);
/// "lent to the rowers, back by 12 Mar".
[[nodiscard]] QString lent(const steelyard::OnLoan& loan, std::chrono::sys_days today);
/// What of a thing is free: "both free", "one free", "both hang"; of a single one "free", "hangs".
[[nodiscard]] QString freeNow(const steelyard::Pieces& pieces);

}
