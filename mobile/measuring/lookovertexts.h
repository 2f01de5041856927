// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"

#include <QString>

/** What to look at on each kind of thing before it is said to be fit. */
namespace lookovertexts {

/// Where to look, what for, and whose word that is.
[[nodiscard]] QString lookAt(steelyard::ItemKind kind);
/// "worn link": what was found, in a word or two.
[[nodiscard]] QString fault(steelyard::KitFault fault);

}
