// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/stretch.h"

#include <sodium.h>

namespace steelyard::seal {

namespace {

constexpr std::chrono::nanoseconds shortest = std::chrono::milliseconds(500);
constexpr std::chrono::nanoseconds aimedAt = std::chrono::milliseconds(700);
constexpr std::chrono::nanoseconds longest = std::chrono::milliseconds(1000);

}

static_assert(sizeof(Salt) == crypto_pwhash_argon2id_SALTBYTES);

Outcome<Done> checkCost(const StretchCost& cost)
{
    if (cost.memory.count > costliestStretch.memory.count || cost.passCount > costliestStretch.passCount)
        return Code::StretchTooCostlyRestoreBackup;
    if (cost.memory.count < weakestStretch.memory.count || cost.passCount < weakestStretch.passCount)
        return Code::StretchTooWeakRestoreBackup;
    return Done{};
}

Outcome<WrappingKey> stretch(ByteView secret, const Salt& salt, const StretchCost& cost)
{
    if (const Outcome<Done> checked = checkCost(cost); !checked)
        return checked.code();
    return WrappingKey::make([&](ByteRoom room) -> Outcome<Done> {
        // Within the bounds, memory is all that can be missing.
        if (crypto_pwhash_argon2id(rawRoom(room), room.size(), reinterpret_cast<const char*>(secret.data()), secret.size(),
                raw(salt), cost.passCount, std::size_t{1024} * cost.memory.count, crypto_pwhash_argon2id_ALG_ARGON2ID13) != 0)
            return Code::StretchRefusedCloseOthers;
        return Done{};
    });
}

StretchTrial timedTrial(std::function<std::chrono::nanoseconds()> clock)
{
    return [clock = std::move(clock)](const StretchCost& cost) -> Outcome<std::chrono::nanoseconds> {
        const std::chrono::nanoseconds before = clock();
        const Outcome<WrappingKey> key = stretch(bytesOf("how long this takes"), Salt{}, cost);
        if (!key)
            return key.code();
        return clock() - before;
    };
}

Outcome<StretchCost> chooseCost(const StretchTrial& trial)
{
    StretchCost chosen = weakestStretch;
    const Outcome<std::chrono::nanoseconds> atFloor = trial(chosen);
    if (!atFloor)
        return atFloor.code();
    std::chrono::nanoseconds taken = *atFloor;

    const auto tryStep = [&](const StretchCost& step) {
        const Outcome<std::chrono::nanoseconds> time = trial(step);
        if (!time || *time > longest)
            return false;
        chosen = step;
        taken = *time;
        return true;
    };
    while (taken < shortest && chosen.memory.count < mostMemoryChosen.count)
        if (!tryStep({{2 * chosen.memory.count}, chosen.passCount}))
            break;
    while (taken < shortest && chosen.passCount < costliestStretch.passCount) {
        const std::uint32_t most = costliestStretch.passCount - chosen.passCount;
        const auto missing = static_cast<std::uint32_t>(
            std::min<std::int64_t>(most, (aimedAt - taken) * chosen.passCount / std::max(taken, std::chrono::nanoseconds(1))));
        std::uint32_t more = std::max(missing, 1U);
        while (more > 0 && !tryStep({chosen.memory, chosen.passCount + more}))
            more /= 2;
        if (more == 0)
            break;
    }
    return chosen;
}

}
