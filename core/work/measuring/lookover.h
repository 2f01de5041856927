// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"

#include <vector>

namespace steelyard {

/// What can be found wrong with a thing of that kind when it is looked over, in the order in which it is asked; the last is anything
/// else. Worn, bent and cracked links and opened hooks put a lifting chain out of service (EN 818-6, annex A); the others are common
/// practice, without a source.
[[nodiscard]] std::vector<KitFault> faultsOf(ItemKind kind);

}
