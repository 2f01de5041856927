// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/isometricpull.h"
#include "core/work/records/codec.h"

namespace steelyard {

/// An isometric pull as content of the journal, as codec.h says of every record; the day is the entry's.
///   isometric pull  1 lift's number, absent for one that was added · 2 id of one that was added · 3 height · 4 pull · 5 scale step
[[nodiscard]] Content contentOf(const IsometricPull& pull, const WrittenIn& in);
[[nodiscard]] std::optional<IsometricPull> isometricPullIn(journal::ByteView content);

}
