// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Adds an isometric pull, of a day that is not still to come; its id is a new one. It waits for the birth year and a guardian's
/// agreement as body sizes do: a test says more of somebody than loads.
void keepIsometricPull(SeasonKeeping& keeping, const RecordId& athlete, const IsometricPull& pull, const WhenTold& told);

}
