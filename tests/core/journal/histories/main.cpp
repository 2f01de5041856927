// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/journal/histories/history.h"

#include <atomic>
#include <cstdlib>
#include <iostream>
#include <mutex>
#include <thread>

using histories::History;
using histories::Tally;

namespace {

std::uint64_t argument(int count, char** values, int which, std::uint64_t otherwise)
{
    return count > which ? std::strtoull(values[which], nullptr, 10) : otherwise;
}

}

/// histories COUNT [FIRST SEED [THREADS]]: one history a seed; 1 and its seed run a failed one again.
int main(int argc, char** argv)
{
    const std::uint64_t count = argument(argc, argv, 1, 100), first = argument(argc, argv, 2, 1);
    const std::uint64_t threadCount = argument(argc, argv, 3, 1);
    std::atomic<std::uint64_t> next = 0, failures = 0;
    std::mutex speaking;
    Tally tally;
    const auto work = [&] {
        Tally own;
        for (std::uint64_t i = next++; i < count; i = next++) {
            History history(first + i);
            const std::string failure = history.run();
            own += history.tally();
            if (!failure.empty()) {
                const std::lock_guard lock(speaking);
                if (++failures <= 10)
                    std::cout << "history " << first + i << ": " << failure << '\n';
            }
        }
        const std::lock_guard lock(speaking);
        tally += own;
    };
    std::vector<std::thread> threads;
    for (std::uint64_t i = 0; i < threadCount; ++i)
        threads.emplace_back(work);
    for (std::thread& thread : threads)
        thread.join();
    std::cout << count << " histories, " << tally.entryCount << " entries, " << tally.parcelCount << " parcels of which " << tally.lostCount
              << " were lost, " << tally.damagedCount << " damaged entries, " << tally.forkCount << " copies and restorations, "
              << tally.erasureCount << " erasures, " << tally.reviewCount << " matters to review: " << failures << " went wrong\n";
    return failures == 0 && count != 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
