// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/platform/platformhost.h"

#include <cstdio>
#include <filesystem>
#include <fstream>

#include <unistd.h>

/// Says who it is, and the first time replaces itself: restarted MARK WORD…; the file MARK tells the second life from the first.
int main(int argc, char* argv[])
{
    if (argc < 2)
        return 2;
    const bool first = !std::filesystem::exists(argv[1]);
    std::printf("%s %d", first ? "first" : "second", static_cast<int>(getpid()));
    for (int i = 2; i < argc; ++i)
        std::printf(" [%s]", argv[i]);
    std::puts("");
    std::fflush(stdout);
    if (!first)
        return 0;
    std::ofstream(argv[1]) << "been here";
    return platformhost::restart("--leave") ? 3 : 4;
}
