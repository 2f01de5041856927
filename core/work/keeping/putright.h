// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Says what an added record should have said; what was said stays in the journal.
void putBodySizeRight(SeasonKeeping& keeping, const RecordId& athlete, const BodySize& size, const WhenTold& told);
void putMeasurementRight(SeasonKeeping& keeping, const MeasurementRecord& record, const WhenTold& told);

/// Takes a record out: it is shown no more, and no edit brings it back. What names it stays as it is.
void takeOut(SeasonKeeping& keeping, const Place& place, const WhenTold& told);

/// Settles a contested register by one of its heads, replacing all of them.
void settle(SeasonKeeping& keeping, const Contested& contested, const journal::EntryId& chosen, const WhenTold& told);

}
