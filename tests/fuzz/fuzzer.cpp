// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/target.h"

#include <cstdint>

/// What libFuzzer calls.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    fuzzing::examine(std::as_bytes(std::span(data, size)));
    return 0;
}
