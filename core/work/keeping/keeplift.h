// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Keeps a lift that the coach added, as it stands in a form; without an id a new one is added. It is like one of those that ship and
/// are done with a bar, or like none.
void keepLift(SeasonKeeping& keeping, OwnLift lift, const WhenTold& told);

}
