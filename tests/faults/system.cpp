// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/system.h"

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace faults {

namespace {

constexpr std::size_t mostFiles = 4096;
constexpr std::size_t sectorSize = 512;

Plan plan;
bool armed = false;
bool over = false;
long count = 0;
std::array<std::string, mostFiles> names;
// Files are closed before the names above are there, too.
std::array<bool, mostFiles> named{};
std::array<std::uint64_t, mostFiles> places{};

bool tracked(int file)
{
    return armed && file >= 0 && static_cast<std::size_t>(file) < mostFiles && named[static_cast<std::size_t>(file)];
}

std::string within(const char* path)
{
    const std::string whole(path);
    return whole.starts_with(plan.root) ? "." + whole.substr(plan.root.size()) : std::string();
}

bool isFull(Trouble trouble)
{
    return trouble == Trouble::FullOnce || trouble == Trouble::FullFromThere || trouble == Trouble::FullUntilReserve;
}

bool isKill(Trouble trouble)
{
    return trouble == Trouble::Kill || trouble == Trouble::KillHalfWay;
}

/// Whether this operation is to fail; sets the error number. `takesSpace` is what a full disk hinders.
bool fails(bool takesSpace)
{
    ++count;
    if (plan.trouble == Trouble::None || over)
        return false;
    const bool once = plan.trouble == Trouble::FullOnce || plan.trouble == Trouble::ErrorOnce;
    if (once ? count != plan.at : count < plan.at)
        return false;
    if (isKill(plan.trouble)) {
        ::kill(::getpid(), SIGKILL);
        return true;
    }
    if (isFull(plan.trouble) && !takesSpace)
        return false;
    errno = isFull(plan.trouble) ? ENOSPC : EIO;
    return true;
}

void record(Operation operation)
{
    if (plan.record)
        plan.record->push_back(std::move(operation));
}

bool endsHalfWay()
{
    return plan.trouble == Trouble::KillHalfWay && count + 1 == plan.at;
}

long writeAt(int file, const void* bytes, std::size_t size, std::uint64_t offset)
{
    return ::syscall(SYS_pwrite64, file, bytes, size, offset);
}

ssize_t put(int file, const void* bytes, std::size_t size, std::uint64_t offset)
{
    if (endsHalfWay())
        writeAt(file, bytes, size / 2 / sectorSize * sectorSize, offset);
    if (fails(true))
        return -1;
    record({Operation::What::Write, names[static_cast<std::size_t>(file)], {}, offset, {static_cast<const char*>(bytes), size}});
    return writeAt(file, bytes, size, offset);
}

int force(int file)
{
    if (!tracked(file))
        return static_cast<int>(::syscall(SYS_fsync, file));
    if (fails(true))
        return -1;
    struct stat about{};
    ::fstat(file, &about);
    record({S_ISDIR(about.st_mode) ? Operation::What::ForceFolder : Operation::What::Force, names[static_cast<std::size_t>(file)], {}, 0, {}});
    return plan.forceNothing ? 0 : static_cast<int>(::syscall(SYS_fsync, file));
}

int truncate(int file, std::uint64_t size)
{
    if (tracked(file)) {
        if (fails(false))
            return -1;
        record({Operation::What::Truncate, names[static_cast<std::size_t>(file)], {}, size, {}});
    }
    return static_cast<int>(::syscall(SYS_ftruncate, file, size));
}

int openFile(const char* path, int flags, mode_t mode)
{
    const std::string name = armed ? within(path) : std::string();
    const bool makes = (flags & O_CREAT) != 0 && ::access(path, F_OK) != 0;
    const bool empties = (flags & O_TRUNC) != 0 && !makes;
    if (!name.empty() && (makes || empties) && fails(makes))
        return -1;
    const auto file = static_cast<int>(::syscall(SYS_openat, AT_FDCWD, path, flags, mode));
    if (file >= 0 && static_cast<std::size_t>(file) < mostFiles && !name.empty()) {
        named[static_cast<std::size_t>(file)] = true;
        names[static_cast<std::size_t>(file)] = name;
        places[static_cast<std::size_t>(file)] = 0;
        if (makes)
            record({Operation::What::Create, name, {}, 0, {}});
        if (empties)
            record({Operation::What::Truncate, name, {}, 0, {}});
    }
    return file;
}

mode_t modeOf(int flags, va_list arguments)
{
    return (flags & O_CREAT) != 0 ? static_cast<mode_t>(va_arg(arguments, int)) : 0;
}

}

void arm(const Plan& wanted)
{
    plan = wanted;
    count = 0;
    over = false;
    armed = true;
}

long disarm()
{
    armed = false;
    return count;
}

void recordTold(const std::string& what)
{
    record({Operation::What::Told, what, {}, 0, {}});
}

}

using namespace faults;

extern "C" {

int open(const char* path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const mode_t mode = modeOf(flags, arguments);
    va_end(arguments);
    return openFile(path, flags, mode);
}

int open64(const char* path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const mode_t mode = modeOf(flags, arguments);
    va_end(arguments);
    return openFile(path, flags, mode);
}

int close(int file)
{
    if (file >= 0 && static_cast<std::size_t>(file) < mostFiles)
        named[static_cast<std::size_t>(file)] = false;
    return static_cast<int>(::syscall(SYS_close, file));
}

ssize_t write(int file, const void* bytes, size_t size)
{
    if (!tracked(file))
        return ::syscall(SYS_write, file, bytes, size);
    std::uint64_t& place = places[static_cast<std::size_t>(file)];
    const ssize_t written = put(file, bytes, size, place);
    if (written > 0)
        place += static_cast<std::uint64_t>(written);
    return written;
}

ssize_t pwrite64(int file, const void* bytes, size_t size, off64_t offset)
{
    return tracked(file) ? put(file, bytes, size, static_cast<std::uint64_t>(offset)) : writeAt(file, bytes, size, static_cast<std::uint64_t>(offset));
}

ssize_t pwrite(int file, const void* bytes, size_t size, off_t offset)
{
    return pwrite64(file, bytes, size, offset);
}

ssize_t pread64(int file, void* room, size_t size, off64_t offset)
{
    if (tracked(file) && plan.countReads && fails(false))
        return -1;
    return ::syscall(SYS_pread64, file, room, size, offset);
}

ssize_t read(int file, void* room, size_t size)
{
    if (tracked(file) && plan.countReads && fails(false))
        return -1;
    return ::syscall(SYS_read, file, room, size);
}

int fsync(int file)
{
    return force(file);
}

int fdatasync(int file)
{
    return force(file);
}

int ftruncate64(int file, off64_t size)
{
    return truncate(file, static_cast<std::uint64_t>(size));
}

int ftruncate(int file, off_t size)
{
    return truncate(file, static_cast<std::uint64_t>(size));
}

int posix_fallocate(int file, off_t offset, off_t size)
{
    if (tracked(file) && fails(true))
        return errno;
    if (tracked(file))
        record({Operation::What::Truncate, names[static_cast<std::size_t>(file)], {}, static_cast<std::uint64_t>(offset + size), {}});
    // Sparse is enough here, and spares the disk two MiB a time.
    return ::syscall(SYS_ftruncate, file, offset + size) == 0 ? 0 : errno;
}

int unlink(const char* path)
{
    const std::string name = armed ? within(path) : std::string();
    if (!name.empty() && ::access(path, F_OK) == 0) {
        if (fails(false))
            return -1;
        record({Operation::What::Unlink, name, {}, 0, {}});
        if (plan.trouble == Trouble::FullUntilReserve && name.ends_with("reserve.bin") && count >= plan.at)
            over = true;
    }
    return static_cast<int>(::syscall(SYS_unlink, path));
}

int rename(const char* from, const char* to)
{
    const std::string name = armed ? within(from) : std::string();
    if (!name.empty()) {
        if (fails(false))
            return -1;
        record({Operation::What::Rename, name, within(to), 0, {}});
    }
    return static_cast<int>(::syscall(SYS_rename, from, to));
}

}
