// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Says of an added record what it should have said, whatever it is about; content that is none could not be written.
void keepRight(SeasonKeeping& keeping, const Place& place, std::chrono::sys_days day, const std::optional<journal::ByteBuffer>& content,
               const WhenTold& told);

/// Says what an added record should have said; what was said stays in the journal. Refused where its day would be moved ahead of today.
void putBodySizeRight(SeasonKeeping& keeping, const RecordId& athlete, const BodySize& size, const WhenTold& told);
void putMeasurementRight(SeasonKeeping& keeping, const MeasurementRecord& record, const WhenTold& told);

/// Kept set-ups that pull otherwise once a measurement of an item says this, or is taken out where nothing is given: none where
/// another measurement counts before and after.
[[nodiscard]] std::vector<const SavedSetup*> setupsChangedBy(const SeasonBook& book, const RecordId& item, const RecordId& measurement,
                                                             const std::optional<MeasurementRecord>& right);

/// Takes a record out: it is shown no more, and no edit brings it back. What names it stays as it is. The only measurement of a thing
/// is refused.
void takeOut(SeasonKeeping& keeping, const Place& place, const WhenTold& told);

/// Settles a contested register by one of its heads, replacing all of them.
void settle(SeasonKeeping& keeping, const Contested& contested, const journal::EntryId& chosen, const WhenTold& told);

}
