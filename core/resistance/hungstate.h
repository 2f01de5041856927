// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/uncertainty.h"
#include "core/measure/units.h"

#include <array>

namespace steelyard {

/// All that a set-up asks of a hung item with the bar at one height. Pulls are vertical, down positive; N and N/m.
/// Past what is known the numbers are stand-ins that keep sums finite.
struct HungState {
    Force pull;
    Force alongFloor;   ///< with the sign of the offset
    Stiffness slope;    ///< of the vertical pull
    std::array<Force, Effect::components> effect{}; ///< of the measurement on the pull, by component
    Force own;          ///< standard uncertainty that no other item shares: a band standing in for its twin
    bool known = true;
};

}
