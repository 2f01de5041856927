// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/journal/histories/device.h"

#include <set>

namespace histories {

/// How much went on in histories, so that a run shows that it was not idle.
struct Tally {
    std::uint64_t entryCount = 0, parcelCount = 0, lostCount = 0, forkCount = 0, erasureCount = 0, reviewCount = 0, damagedCount = 0;

    Tally& operator+=(const Tally& other);
};

/// One invented season of a few devices: they write, send one another parcels that get lost, cut, damaged, repeated and delayed,
/// have their clocks years off and set anew, are copied and restored. Whatever happened, all of them end up showing the same.
class History {
public:
    explicit History(std::uint64_t seed);

    /// What went wrong; empty where nothing did.
    [[nodiscard]] std::string run();
    [[nodiscard]] const Tally& tally() const { return m_tally; }

private:
    struct Parcel {
        std::size_t to = 0;
        std::vector<ByteBuffer> entries;
        std::set<RecordId> erased; ///< as far as the sender knows
    };

    void step();
    void write(std::size_t device);
    void writeTwice(std::size_t device);
    void writeNewer(std::size_t device);
    [[nodiscard]] Draft anyDraft(const Device& device);
    void about(Draft& draft);
    void keep(std::size_t device, const Draft& draft);
    void eraseAndForget(std::size_t device);
    void post(std::size_t from, std::size_t to);
    void tellErased(std::size_t device, const std::set<RecordId>& erased);
    void deliver();
    void copy(std::size_t device);
    void restore(std::size_t device);
    void putBack(std::size_t device, const Device& backup);
    void setClock(std::size_t device);
    void exchangeAll();

    void check(const Device& device);
    void checkAllAlike();
    void fail(const std::string& what);
    [[nodiscard]] std::vector<ByteBuffer> shuffled(const Device& device);

    Chance m_chance;
    Instant m_now;
    std::vector<Device> m_devices;
    std::vector<std::optional<Device>> m_backups;
    std::vector<VersionVector> m_heard; ///< what each device last said it has
    std::vector<Parcel> m_underWay;
    std::set<EntryId> m_told;           ///< kept, and still held somewhere
    std::map<EntryId, std::string> m_bodies;
    std::map<EntryId, RecordId> m_erasures;
    bool m_erases = false;
    Tally m_tally;
    std::string m_failure;
};

}
