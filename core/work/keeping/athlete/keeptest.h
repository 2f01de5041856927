// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Adds a test of strength; its id is a new one. A load that counts, at least one rep done or one missed, a maximum with just one rep,
/// and only the methods that can hang in a test; the day lies not ahead. Waits for a minor's guardian, and without a birth year for
/// that. In a sample it has no note.
void keepStrengthTest(SeasonKeeping& keeping, const StrengthTest& test, const WhenTold& told);

/// Says what a test should have said, held to the same; the athlete stays. A day ahead that stood there already may stay.
void putStrengthTestRight(SeasonKeeping& keeping, const StrengthTest& test, const WhenTold& told);

}
