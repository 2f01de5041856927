// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Keeps that a caution of a kept set-up was looked over, for what hangs in it now. It is a record of that and spares nobody the next
/// look: a caution comes again each time the set-up is opened.
void acknowledge(SeasonKeeping& keeping, const RecordId& setup, CautionCode caution, const WhenTold& told);

}
