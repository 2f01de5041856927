// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/bytes.h"
#include "core/season/recordid.h"

namespace steelyard {

/// Ids out of 16 random bytes each.
[[nodiscard]] NewIds randomIds(seal::RandomSource random);

}
