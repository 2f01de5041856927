// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/bytes.h"
#include "core/seal/outcome.h"

namespace steelyard::seal {

/// Makes the library ready. Call first in the process; calling again does nothing.
/// Refused only where the system gives no randomness or no memory.
Outcome<Done> start();

/// Keeps the process from leaving its memory in a core file, also where a handler collects them. The system forgets it when the
/// process replaces itself by another program, so the app calls it at every start.
Outcome<Done> forbidCoreDumps();

/// Randomness of the operating system.
[[nodiscard]] RandomSource systemRandom();

}
