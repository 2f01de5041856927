// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/storage.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace steelyard::seal {

Descriptor::~Descriptor()
{
    if (m_opened >= 0)
        ::close(m_opened);
}

Code codeOfWriteError(int systemErrorNumber)
{
    switch (systemErrorNumber) {
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

Outcome<std::optional<ByteBuffer>> readWhole(const std::filesystem::path& file, std::size_t largestSize)
{
    const Descriptor opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
    if (!opened.ok()) {
        if (errno == ENOENT)
            return std::optional<ByteBuffer>();
        return Code::FileUnreadableTryAgain;
    }
    ByteBuffer bytes(largestSize + 1);
    std::size_t size = 0;
    while (size < bytes.size()) {
        const ssize_t got = ::read(opened.get(), bytes.data() + size, bytes.size() - size);
        if (got < 0 && errno != EINTR)
            return Code::FileUnreadableTryAgain;
        if (got == 0)
            break;
        size += got > 0 ? static_cast<std::size_t>(got) : 0;
    }
    bytes.resize(size);
    return std::optional(std::move(bytes));
}

bool writeAll(const Descriptor& file, ByteView bytes)
{
    while (!bytes.empty()) {
        const ssize_t put = ::write(file.get(), bytes.data(), bytes.size());
        if (put < 0 && errno != EINTR)
            return false;
        bytes = bytes.subspan(put > 0 ? static_cast<std::size_t>(put) : 0);
    }
    return true;
}

bool forceFolder(const std::filesystem::path& folder)
{
    const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    return opened.ok() && ::fsync(opened.get()) == 0;
}

Outcome<Done> replaceFile(const std::filesystem::path& place, ByteView bytes)
{
    std::filesystem::path beside = place;
    beside += ".part";
    {
        const Descriptor file(::open(beside.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR));
        if (!file.ok())
            return codeOfWriteError(errno);
        if (!writeAll(file, bytes) || ::fsync(file.get()) != 0) {
            const Code code = codeOfWriteError(errno);
            ::unlink(beside.c_str());
            return code;
        }
    }
    if (::rename(beside.c_str(), place.c_str()) != 0) {
        const Code code = codeOfWriteError(errno);
        ::unlink(beside.c_str());
        return code;
    }
    if (!forceFolder(place.parent_path()))
        return Code::WriteFailedTryAgain;
    return Done{};
}

}
