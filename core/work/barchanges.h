// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/setuprecord.h"

#include <cstddef>

namespace steelyard {

/// The record with another bar or other collars; the plates that hang stay, so the total moves with them.
[[nodiscard]] BarRecord withBar(BarRecord record, const Entered<Mass>& bar);
[[nodiscard]] BarRecord withCollars(BarRecord record, const Entered<Mass>& collars);

/// The record with one pair more of plates of this mass, which is their mark. A mass that was not here takes its size from the usual plate
/// nearest in mass: only drawings and the start of a floor lift ask for it.
[[nodiscard]] BarRecord withPairMore(BarRecord record, const Entered<Mass>& plate);

/// The record with one pair more or less in a row of the stock, from none to twenty; as it was when there is no row.
[[nodiscard]] BarRecord withPairsStepped(BarRecord record, std::size_t rowIndex, bool up);

}
