// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/measuring/itemorigin.h"
#include "mobile/models/rows.h"

/** Where the number of a thing of the kit comes from, in words. */
namespace itemorigintexts {

/// "5.70 ± 0.04 kg a metre"; "17.5 ± 0.1 kg at 195 cm"; "0.20 ± 0.08 kg too much at 20 kg"; "hole 28 at 176.5 ± 2.0 cm".
[[nodiscard]] QString number(const steelyard::ItemOrigin& origin);
/// The formula in words.
[[nodiscard]] QString formula(const steelyard::ItemOrigin& origin, const steelyard::Measured& measured);
/// Whose word formula and parts are, in one line; empty where they are nobody's.
[[nodiscard]] QString sources(const steelyard::ItemOrigin& origin, const steelyard::Measured& measured);
/// What would make it surer most; empty where there is nothing to say.
[[nodiscard]] QString advice(const steelyard::ItemOrigin& origin);
/// What went into it, each with how it came to be known and what it does to the number.
[[nodiscard]] std::vector<OriginRow> lines(const steelyard::ItemOrigin& origin, const steelyard::Measured& measured);
/// "41.5 + 7 × 5 = 76.5 cm": a hole's height; the lowest has nothing to add up.
[[nodiscard]] QString holeSum(steelyard::Height lowest, std::optional<steelyard::Length> spacing, int hole);

}
