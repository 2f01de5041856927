// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/strictobject.h"
#include "core/season/kit.h"
#include "core/season/sledrecords.h"

namespace steelyard::sample {

/// A tyre, log, stone, keg, sled, handle or bell as the sample's files say it was measured; the readme beside them lists the keys.
[[nodiscard]] Measured implementFrom(ItemKind kind, StrictObject from);
/// What something long was weighed by; none where its first end does not stand there.
[[nodiscard]] std::optional<BothEnds> endsFrom(StrictObject& from);

/// How a sled was pulled, and a timed run; their days are the caller's.
[[nodiscard]] SledSurface surfaceFrom(StrictObject& from, const RecordId& venue, const RecordId& sled);
[[nodiscard]] SledRunTimed runFrom(StrictObject& from, const RecordId& venue, const RecordId& sled);

}
