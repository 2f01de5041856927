// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/measuring/itemorigin.h"
#include "mobile/models/rows.h"

/** Where the number of a thing of the kit comes from, in words. */
namespace itemorigintexts {

/// "5.7 kg a metre, give or take 0.04"; "17.5 ± 0.1 kg at 195 cm".
[[nodiscard]] QString number(const steelyard::ItemOrigin& origin);
/// The formula in words, with its source.
[[nodiscard]] QString formula(const steelyard::ItemOrigin& origin, const steelyard::Measured& measured);
/// What went into it, each with how it came to be known and what it does to the number.
[[nodiscard]] std::vector<OriginRow> lines(const steelyard::ItemOrigin& origin, const steelyard::Measured& measured);

}
