// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/vault/vaulting.h"
#include "tests/faults/system.h"

#include <set>
#include <string>

namespace faults {

using namespace vaulting;

/// What somebody working with the vault has been told, in their own words.
struct Told {
    bool created = false;
    std::vector<std::vector<std::string>> batches; ///< ids of the entries of each batch that was reported as kept
    std::string draft;                             ///< the last one reported as saved
    int refusals = 0;
    bool refusedAfterwards = false;                ///< although nothing was wrong any more

    /// One line of what was told, as it comes through a pipe or out of a recording.
    void hear(const std::string& line);
};

using Tell = std::function<void(const std::string&)>;

/// A day with a vault, the same every time for one number: it is created, batches of one to three entries are kept, drafts are
/// saved, it is locked, unlocked and written again. Every line of `tell` is said after the call that it is about has returned.
/// Refused, the day goes on with the next thing; a vault that does not open is tried again, once.
void live(const std::string& root, std::uint32_t day, const Tell& tell);
/// Some of its batches alone, on a vault that is open.
void work(Vault& vault, std::uint32_t day, unsigned firstBatch, unsigned batchCount, const Tell& tell);
/// The surroundings of one part of a day: folders, clock and randomness.
[[nodiscard]] Surroundings surroundingsOf(const std::string& root, std::uint32_t day, std::uint32_t part);
[[nodiscard]] std::filesystem::path folderOf(const std::string& root);

/// What is wrong with the vault after whatever happened to it; nothing when everything that was told is there, in whole batches, with
/// tables that equal a fold from scratch, and more can be kept. `extraBatches` that nobody was told about may be there as well.
[[nodiscard]] QString faultOf(const std::string& root, const Told& told, std::uint32_t day, std::size_t extraBatches);

/// Runs the work in a process of its own and hears what it tells until it ends, in whatever way; true when it ended by itself.
[[nodiscard]] bool inAProcess(const std::function<void(const Tell&)>& work, Told& told);

}
