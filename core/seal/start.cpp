// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/start.h"

#include <sodium.h>
#include <sys/resource.h>
#ifdef __linux__
#include <sys/prctl.h>
#endif

namespace steelyard::seal {

Outcome<Done> start()
{
    if (sodium_init() < 0)
        return Code::MemoryRefusedCloseOthers;
    return Done{};
}

Outcome<Done> forbidCoreDumps()
{
    const rlimit none{0, 0};
    if (setrlimit(RLIMIT_CORE, &none) != 0)
        return Code::MemoryRefusedCloseOthers;
#ifdef __linux__
    // The limit does not bind a handler that the system pipes core files into; this does.
    if (prctl(PR_SET_DUMPABLE, 0, 0, 0, 0) != 0)
        return Code::MemoryRefusedCloseOthers;
#endif
    return Done{};
}

RandomSource systemRandom()
{
    return [](ByteRoom room) { randombytes_buf(room.data(), room.size()); };
}

}
