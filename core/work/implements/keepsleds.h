// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Adds how a sled slides on a surface of a venue, as it was pulled there; its id is a new one. Refused: a venue that is not there, a thing
/// that is no sled, no name, pulls at fewer than two masses, numbers that cannot be, and a day still to come.
void keepSurface(SeasonKeeping& keeping, const SledSurface& surface, const WhenTold& told);
/// What one should have said.
void putSurfaceRight(SeasonKeeping& keeping, const SledSurface& surface, const WhenTold& told);

/// Adds a timed run of an athlete; its id is a new one. Waits for what more than name, squad and loads waits for. Refused besides as
/// surfaces are; one run is enough to be kept, whatever can be made of it.
void keepSledRun(SeasonKeeping& keeping, const SledRunTimed& run, const WhenTold& told);
void putSledRunRight(SeasonKeeping& keeping, const SledRunTimed& run, const WhenTold& told);

}
