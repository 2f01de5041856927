// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/strictobject.h"
#include "core/season/releaseplan.h"

namespace steelyard::sample {

/// How the way down of a set-up is made heavier; what is not there was not entered.
[[nodiscard]] ReleasePlan releaseFrom(StrictObject from);

}
