// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/bytes.h"

#include <cstdint>
#include <vector>

namespace histories {

/// The same numbers for the same seed on every machine (SplitMix64: Steele, Lea and Flood, 2014).
class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_state(seed) {}

    std::uint64_t next()
    {
        std::uint64_t z = m_state += UINT64_C(0x9e3779b97f4a7c15);
        z = (z ^ z >> 30) * UINT64_C(0xbf58476d1ce4e5b9);
        z = (z ^ z >> 27) * UINT64_C(0x94d049bb133111eb);
        return z ^ z >> 31;
    }
    /// 0 up to, but not with, `end`.
    std::size_t below(std::size_t end) { return static_cast<std::size_t>(next() % end); }
    /// From low to high, both included.
    std::int64_t between(std::int64_t low, std::int64_t high)
    {
        return low + static_cast<std::int64_t>(next() % (static_cast<std::uint64_t>(high - low) + 1));
    }
    bool percent(std::size_t share) { return below(100) < share; }
    template <typename T>
    T& pick(std::vector<T>& from)
    {
        return from[below(from.size())];
    }
    template <typename T>
    void shuffle(std::vector<T>& items)
    {
        for (std::size_t i = items.size(); i > 1; --i)
            std::swap(items[i - 1], items[below(i)]);
    }
    void fill(steelyard::seal::ByteRoom room)
    {
        for (std::byte& b : room)
            b = static_cast<std::byte>(next());
    }

private:
    std::uint64_t m_state;
};

}
