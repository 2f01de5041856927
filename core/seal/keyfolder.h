// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/keyring.h"

#include <filesystem>

namespace steelyard::seal {

/// How one copy of the key file stands.
enum class CopyState {
    Whole,
    Missing,
    Damaged,
    Unreadable, ///< the storage gave an error
};

/// What the two copies say: their states, and the files that are whole, newest first, each once.
struct KeyFileCopies {
    std::array<CopyState, 2> states{CopyState::Missing, CopyState::Missing};
    std::vector<KeyFile> candidates;
};

/// Which copies were not what they should be, and are now.
struct Healed {
    std::array<bool, 2> copies{};
    [[nodiscard]] bool any() const { return copies[0] || copies[1]; }
};

/// The two copies of the key file in the folder of a vault: `vault.key` and `vault.key.2`.
/// A copy is written beside its place, forced to the disk, moved into place, and the folder forced to the disk; then the other.
/// So at any moment one copy at least is whole.
class KeyFolder {
public:
    explicit KeyFolder(std::filesystem::path folder) : m_folder(std::move(folder)) {}

    /// Candidates are never empty: neither copy there, neither whole, either one newer than us, or two vaults' are codes.
    [[nodiscard]] Outcome<KeyFileCopies> read() const;
    /// Refused, each copy is either the old one or this one.
    Outcome<Done> write(const KeyFile& file) const;
    /// Rewrites the copies that are not `file`, which has to come from an opened ring.
    [[nodiscard]] Outcome<Healed> heal(const KeyFile& file) const;

private:
    std::filesystem::path m_folder;
};

using Opener = std::function<Outcome<Keyring>(const KeyFile&)>;

/// Opens the newest candidate. A forged one gives way to the next; a wrong secret does so only within one generation, since an
/// older one may still take a passphrase that was replaced.
[[nodiscard]] Outcome<Keyring> openNewest(const KeyFileCopies& copies, const Opener& opener);

}
