// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Keeps what an athlete's load in a lift is held against; nothing takes it back. A tyre is held against her deadlift by the coach's limit
/// and takes none. Refused: nobody of that id, no lift on either side, a share outside 1 to 100 %, and a cap for tyres.
void keepCap(SeasonKeeping& keeping, const RecordId& athlete, const LiftId& lift, const std::optional<CapRule>& rule, const WhenTold& told);

}
