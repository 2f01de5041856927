// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/folder.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cerrno>
#include <fcntl.h>
#include <string>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/statfs.h>
#include <sys/statvfs.h>
#include <unistd.h>

namespace steelyard::vault {

namespace {

// Numbers of statfs(2): NFS, SMB, CIFS, SMB2, AFS, Coda, NCP, Ceph.
constexpr std::array<std::uint32_t, 8> networkKinds{
    0x6969, 0x517B, 0xFF534D42, 0xFE534D42, 0x5346414F, 0x73757245, 0x564C, 0x00C36400};
// What programs that carry a folder leave in it. Hidden names that only end in such a word are settings, as in a home folder.
constexpr std::array<std::string_view, 2> markers{".stfolder", ".sync"};
constexpr std::array<std::string_view, 2> words{"sync", "cloud"};

bool saysSynced(std::string_view name)
{
    std::string word;
    const auto tells = [&word] {
        return word != "async" && std::any_of(words.begin(), words.end(), [&word](std::string_view mark) {
            return word.starts_with(mark) || word.ends_with(mark);
        });
    };
    for (const char letter : name) {
        if (std::isalpha(static_cast<unsigned char>(letter)) != 0) {
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
            continue;
        }
        if (tells())
            return true;
        word.clear();
    }
    return tells();
}

bool onNetwork(const std::filesystem::path& folder)
{
    struct statfs about{};
    if (::statfs(folder.c_str(), &about) != 0)
        return false;
    const auto kind = static_cast<std::uint32_t>(about.f_type);
    return std::find(networkKinds.begin(), networkKinds.end(), kind) != networkKinds.end();
}

bool holdsMarker(const std::filesystem::path& folder)
{
    std::error_code trouble;
    std::filesystem::directory_iterator entries(folder, trouble);
    for (; !trouble && entries != std::filesystem::directory_iterator(); entries.increment(trouble)) {
        const std::string name = entries->path().filename().string();
        if (std::any_of(markers.begin(), markers.end(), [&name](std::string_view mark) { return name.starts_with(mark); }))
            return true;
    }
    return false;
}

}

bool looksSynced(const std::filesystem::path& folder)
{
    std::error_code trouble;
    std::filesystem::path step = std::filesystem::absolute(folder, trouble).lexically_normal();
    if (const std::filesystem::path real = std::filesystem::weakly_canonical(step, trouble); !trouble)
        step = real;
    if (onNetwork(step))
        return true;
    for (; step.has_relative_path(); step = step.parent_path())
        if (saysSynced(step.filename().string()) || holdsMarker(step))
            return true;
    return false;
}

Outcome<seal::Descriptor> takeLock(const std::filesystem::path& folder)
{
    const std::filesystem::path file = folder / "lock";
    seal::Descriptor opened(::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR));
    if (!opened.ok())
        return codeOf(seal::codeOfWriteError(errno));
    if (::flock(opened.get(), LOCK_EX | LOCK_NB) != 0)
        return errno == EWOULDBLOCK ? Code::SecondInstanceCloseOther : Code::WriteFailedTryAgain;
    return opened;
}

bool Reserve::setAside() const
{
    struct stat about{};
    if (::stat(m_file.c_str(), &about) == 0 && static_cast<std::size_t>(about.st_size) >= size)
        return true;
    const seal::Descriptor file(::open(m_file.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR));
    if (file.ok() && ::posix_fallocate(file.get(), 0, static_cast<off_t>(size)) == 0)
        return true;
    ::unlink(m_file.c_str());
    return false;
}

bool Reserve::giveUp() const
{
    return ::unlink(m_file.c_str()) == 0;
}

std::uint64_t freeSize(const std::filesystem::path& folder)
{
    struct statvfs about{};
    return ::statvfs(folder.c_str(), &about) == 0 ? static_cast<std::uint64_t>(about.f_bavail) * about.f_frsize : 0;
}

Code whyNotWritten(const std::filesystem::path& folder)
{
    const std::filesystem::path probe = folder / "probe.part";
    const seal::ByteBuffer some(16'384);
    int trouble = 0;
    {
        const seal::Descriptor file(::open(probe.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR));
        if (!file.ok() || !seal::writeAll(file, some) || ::fsync(file.get()) != 0)
            trouble = errno;
    }
    ::unlink(probe.c_str());
    return codeOf(seal::codeOfWriteError(trouble));
}

std::filesystem::path databaseFile(const std::filesystem::path& folder, const seal::KeyFile& keys)
{
    return folder / ("vault-" + std::to_string(keys.databaseNumber) + ".db");
}

InstallMark::InstallMark(const std::filesystem::path& installFolder, const seal::ByteArray<16>& vaultId)
    : m_file(installFolder / ("vault-" + RecordId{vaultId}.hex()))
{
}

std::optional<InstallMark::Bytes> InstallMark::read() const
{
    const auto bytes = seal::readWhole(m_file, sizeof(Bytes));
    if (!bytes || !*bytes || (*bytes)->size() != sizeof(Bytes))
        return std::nullopt;
    Bytes mark{};
    seal::copyBytes(**bytes, mark);
    return mark;
}

Outcome<Done> InstallMark::write(const Bytes& bytes) const
{
    std::error_code trouble;
    std::filesystem::create_directories(m_file.parent_path(), trouble);
    if (const auto written = seal::replaceFile(m_file, bytes); !written)
        return codeOf(written.code());
    return Done{};
}

void InstallMark::forget() const
{
    ::unlink(m_file.c_str());
}

}
