// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Sets how much an athlete may train from a day on, under a new id: all, some with what not, or none, by somebody who is named. What
/// held before holds on: it is lifted by itself. What not and words are treated as notes are: they wait for a minor's guardian, and
/// without a birth year for that; all or none without a word can always be set, so that somebody can always be kept from training. In
/// a sample it has no words, and whoever sets it has to be named there already.
void keepDayStatus(SeasonKeeping& keeping, const DayStatus& status, const WhenTold& told);

/// Says what a day status should have said, held to the same; one that is lifted stays so. Refused for one that cannot be read here.
void putDayStatusRight(SeasonKeeping& keeping, const DayStatus& status, const WhenTold& told);

/// Lifts a day status from a day on that lies not ahead, one that cannot be read here too.
void liftDayStatus(SeasonKeeping& keeping, const RecordId& athlete, const RecordId& status, const SaidSo& by, const WhenTold& told);

}
