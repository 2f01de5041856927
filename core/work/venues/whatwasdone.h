// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// What a look over, or a loan, said of a thing.
enum class ThingSaid : std::uint8_t {
    Nothing, ///< the deed said nothing of the kind
    Fit,
    OutOfUse,
    Borrowed,
    Lent,
    Back, ///< with whom it belongs
};

/// Read from what the deed wrote, so that it stays true whatever is said later.
[[nodiscard]] ThingSaid thingSaid(const DeedDone& done);

}
