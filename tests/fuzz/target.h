// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/bytes.h"

#include <cstdio>
#include <cstdlib>

namespace fuzzing {

/// Does with foreign bytes what the app does, and ends the process where a promise about them is broken.
void examine(steelyard::seal::ByteView bytes);

/// Ends the process, saying what was promised.
inline void promise(bool kept, const char* what)
{
    if (!kept) {
        std::fprintf(stderr, "not kept: %s\n", what);
        std::abort();
    }
}

}
