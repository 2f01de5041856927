// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/implements/implementmass.h"
#include "core/work/measuring/itemorigin.h"
#endif

#include "mobile/text/itemorigintexts.h"

/** What is said of a tyre, log, stone, keg, sled, handle or bell. */
namespace implementtexts {

/// What sort of thing it is: "a tyre".
[[nodiscard]] QString what(steelyard::ItemKind kind);
/// The same more closely, as a name begins: "Tyre", "Sandbag", "Yoke".
[[nodiscard]] QString named(const steelyard::Measured& measured);
/// What it weighs with its give-or-take; else why nobody knows, and what would settle it.
[[nodiscard]] QString comesTo(const steelyard::Measured& measured);
/// The same in a few words, for a list.
[[nodiscard]] QString inShort(const steelyard::Measured& measured);
/// Why nobody knows what it weighs, and what would settle it, in one sentence.
[[nodiscard]] QString gap(steelyard::MassGap gap);

/// Of its origin: one line, how it is worked out, and after whom.
[[nodiscard]] OriginRow originRow(const steelyard::ItemInputLine& line);
[[nodiscard]] QString formula(const steelyard::Measured& measured);
[[nodiscard]] QString sources(const steelyard::Measured& measured);

}
