// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Keeps an athlete as they stand in a form: only what differs from the book is written. Without an id a new one is added. Body sizes
/// and caps are not looked at: they are kept one by one. Notes wait for the guardian's agreement where the athlete may be under 18, and for the
/// birth year where that is not known; name, squad, birth year, agreement and bar marks can always be kept. In a sample nobody is added and no word about a person is changed.
void keepAthlete(SeasonKeeping& keeping, Athlete athlete, const WhenTold& told);

/// Adds body mass, height or both, measured on a day; its id is a new one. Waits for the same.
void keepBodySize(SeasonKeeping& keeping, const RecordId& athlete, const BodySize& size, const WhenTold& told);

}
