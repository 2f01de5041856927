// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/keyfolder.h"

#include "core/seal/storage.h"

#include <algorithm>

namespace steelyard::seal {

namespace {

constexpr std::array<const char*, 2> names{"vault.key", "vault.key.2"};

}

Outcome<KeyFileCopies> KeyFolder::read() const
{
    KeyFileCopies copies;
    for (std::size_t at = 0; at < names.size(); ++at) {
        const Outcome<std::optional<ByteBuffer>> bytes = readWhole(m_folder / names[at], largestKeyFileSize);
        if (!bytes)
            copies.states[at] = CopyState::Unreadable;
        if (!bytes || !*bytes)
            continue;
        const Outcome<KeyFile> file = decode(**bytes);
        if (!file && file.code() != Code::KeyFileDamagedRestoreBackup)
            return file.code();
        copies.states[at] = file ? CopyState::Whole : CopyState::Damaged;
        if (file && (copies.candidates.empty() || copies.candidates.front() != *file))
            copies.candidates.push_back(*file);
    }
    if (copies.candidates.empty()) {
        if (std::find(copies.states.begin(), copies.states.end(), CopyState::Unreadable) != copies.states.end())
            return Code::FileUnreadableTryAgain;
        const bool missing = copies.states == std::array{CopyState::Missing, CopyState::Missing};
        return missing ? Code::KeyFileMissingFindFolder : Code::KeyFileDamagedRestoreBackup;
    }
    if (copies.candidates.front().vaultId != copies.candidates.back().vaultId)
        return Code::KeyFilesOfTwoVaultsSortOut;
    if (copies.candidates.front().generationNumber < copies.candidates.back().generationNumber)
        std::swap(copies.candidates.front(), copies.candidates.back());
    return copies;
}

Outcome<Done> KeyFolder::write(const KeyFile& file) const
{
    const ByteBuffer bytes = encode(file);
    for (const char* name : names)
        if (const Outcome<Done> written = replaceFile(m_folder / name, bytes); !written)
            return written.code();
    return Done{};
}

Outcome<Healed> KeyFolder::heal(const KeyFile& file) const
{
    const ByteBuffer wanted = encode(file);
    Healed healed;
    for (std::size_t at = 0; at < names.size(); ++at) {
        const Outcome<std::optional<ByteBuffer>> bytes = readWhole(m_folder / names[at], largestKeyFileSize);
        if (bytes && *bytes == wanted)
            continue;
        if (const Outcome<Done> written = replaceFile(m_folder / names[at], wanted); !written)
            return written.code();
        healed.copies[at] = true;
    }
    return healed;
}

Outcome<Keyring> openNewest(const KeyFileCopies& copies, const Opener& opener)
{
    if (copies.candidates.empty())
        return Code::KeyFileMissingFindFolder;
    Outcome<Keyring> first = opener(copies.candidates.front());
    if (first || copies.candidates.size() == 1)
        return first;
    const KeyFile& next = copies.candidates.back();
    const bool sameGeneration = next.generationNumber == copies.candidates.front().generationNumber;
    const bool tryNext = first.code() == Code::KeyFileForgedRestoreBackup
        || (first.code() == Code::WrongSecretTypeAgain && sameGeneration);
    if (!tryNext)
        return first;
    Outcome<Keyring> second = opener(next);
    return second ? std::move(second) : std::move(first);
}

}
