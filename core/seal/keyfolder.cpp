// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/keyfolder.h"

#include <cerrno>
#include <fcntl.h>
#include <optional>
#include <sys/stat.h>
#include <unistd.h>

namespace steelyard::seal {

namespace {

constexpr std::array<const char*, 2> names{"vault.key", "vault.key.2"};

/// Closes what it holds.
class Descriptor {
public:
    explicit Descriptor(int value) : m_value(value) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor()
    {
        if (m_value >= 0)
            ::close(m_value);
    }
    [[nodiscard]] int get() const { return m_value; }

private:
    int m_value;
};

Code codeOfWriteError()
{
    switch (errno) {
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return Code::DiskFullFreeSpace;
    case EROFS:
    case EACCES:
    case EPERM:
        return Code::FolderReadOnlyChooseOther;
    default:
        return Code::WriteFailedTryAgain;
    }
}

/// Nothing where there is no such file. A larger file than any key file is cut behind the limit, and so counts as damaged.
Outcome<std::optional<ByteBuffer>> contents(const std::filesystem::path& path)
{
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (file.get() < 0) {
        if (errno == ENOENT)
            return std::optional<ByteBuffer>();
        return Code::FileUnreadableTryAgain;
    }
    ByteBuffer bytes(largestKeyFileSize + 1);
    std::size_t size = 0;
    while (size < bytes.size()) {
        const ssize_t got = ::read(file.get(), bytes.data() + size, bytes.size() - size);
        if (got < 0 && errno != EINTR)
            return Code::FileUnreadableTryAgain;
        if (got == 0)
            break;
        size += got > 0 ? static_cast<std::size_t>(got) : 0;
    }
    bytes.resize(size);
    return std::optional(std::move(bytes));
}

bool writeAll(int file, ByteView bytes)
{
    while (!bytes.empty()) {
        const ssize_t put = ::write(file, bytes.data(), bytes.size());
        if (put < 0 && errno != EINTR)
            return false;
        bytes = bytes.subspan(put > 0 ? static_cast<std::size_t>(put) : 0);
    }
    return true;
}

bool forceFolder(const std::filesystem::path& folder)
{
    const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    return opened.get() >= 0 && ::fsync(opened.get()) == 0;
}

}

Outcome<KeyFileCopies> KeyFolder::read() const
{
    KeyFileCopies copies;
    for (std::size_t at = 0; at < names.size(); ++at) {
        const Outcome<std::optional<ByteBuffer>> bytes = contents(m_folder / names[at]);
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
        if (const Outcome<Done> written = writeCopy(name, bytes); !written)
            return written.code();
    return Done{};
}

Outcome<Healed> KeyFolder::heal(const KeyFile& file) const
{
    const ByteBuffer wanted = encode(file);
    Healed healed;
    for (std::size_t at = 0; at < names.size(); ++at) {
        const Outcome<std::optional<ByteBuffer>> bytes = contents(m_folder / names[at]);
        if (bytes && *bytes == wanted)
            continue;
        if (const Outcome<Done> written = writeCopy(names[at], wanted); !written)
            return written.code();
        healed.copies[at] = true;
    }
    return healed;
}

Outcome<Done> KeyFolder::writeCopy(const char* name, const ByteBuffer& bytes) const
{
    const std::filesystem::path place = m_folder / name;
    std::filesystem::path beside = place;
    beside += ".part";
    {
        const Descriptor file(::open(beside.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR));
        if (file.get() < 0)
            return codeOfWriteError();
        if (!writeAll(file.get(), bytes) || ::fsync(file.get()) != 0) {
            const Code code = codeOfWriteError();
            ::unlink(beside.c_str());
            return code;
        }
    }
    if (::rename(beside.c_str(), place.c_str()) != 0) {
        const Code code = codeOfWriteError();
        ::unlink(beside.c_str());
        return code;
    }
    if (!forceFolder(m_folder))
        return Code::WriteFailedTryAgain;
    return Done{};
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
