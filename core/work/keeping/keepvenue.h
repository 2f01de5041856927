// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Keeps a venue as it stands in a form; without an id a new one is added.
void keepVenue(SeasonKeeping& keeping, Venue venue, const WhenTold& told);

/// Keeps what is typed and shown in.
void keepSettings(SeasonKeeping& keeping, const VaultSettings& settings, const WhenTold& told);

/// Keeps the coach's own limits; one that is absent is as ours again. Refused where one lies where none can lie.
void keepLimits(SeasonKeeping& keeping, const CoachLimits& limits, const WhenTold& told);

}
