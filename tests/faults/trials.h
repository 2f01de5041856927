// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/story.h"

namespace faults {

/// Lives days from `firstDay` on until so many processes have been killed, whole and half way in turn, evenly over all operations.
/// The first thing that was wrong afterwards; nothing when all was well.
[[nodiscard]] QString faultOfKills(int wanted, std::uint32_t firstDay);

/// Lives a day and looks at so many disks as a power cut may have left them, evenly over all operations.
[[nodiscard]] QString faultOfPowerCuts(int wanted, std::uint32_t day);

}
