// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Gives a clearance, under a new id: for a lift and a method, by somebody who is named, from a day on that may lie ahead. That it is
/// taken back is said by itself. Waits for a minor's guardian, and without a birth year for that; in a sample whoever gives it has to be
/// named there already.
void keepClearance(SeasonKeeping& keeping, const Clearance& clearance, const WhenTold& told);

/// Says what a clearance should have said, held to the same; one that is taken back stays so.
void putClearanceRight(SeasonKeeping& keeping, const Clearance& clearance, const WhenTold& told);

/// Takes back every clearance that an athlete has for a lift and a method, also those to come, so that none is left over from an earlier
/// time. The day lies not ahead. It waits for nobody. Its id is the athlete's.
void takeClearanceBack(SeasonKeeping& keeping, const RecordId& athlete, const LiftId& lift, Method method, const SaidSo& by, const WhenTold& told);

}
