// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace steelyard {

/// Which hands carry, or which legs work.
enum class Limbs : std::uint8_t { Both, Left, Right };

}
