// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/memory/processes.h"

#include <QDir>
#include <QFile>

#include <algorithm>
#include <csignal>

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace processes {

namespace {

constexpr quint64 page = 4096, slice = 1 << 20;

QByteArray all(qint64 process, const char* name)
{
    QFile file(QStringLiteral("/proc/%1/%2").arg(process).arg(QLatin1String(name)));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Stands still while it is looked at, so that nothing moves from a place not yet seen to one seen already.
class Still {
public:
    explicit Still(qint64 process) : m_process(static_cast<pid_t>(process))
    {
        kill(m_process, SIGSTOP);
        // that of another's child cannot be awaited, and there is nothing in it but a wait
        siginfo_t stopped{};
        (void)waitid(P_PID, static_cast<id_t>(m_process), &stopped, WSTOPPED);
    }
    ~Still() { kill(m_process, SIGCONT); }
    Still(const Still&) = delete;
    Still& operator=(const Still&) = delete;

private:
    pid_t m_process;
};

/// A line of the system's list of what is mapped where.
struct Mapping {
    quint64 from = 0, to = 0, offset = 0;
    bool writable = false, ofFile = false, ofKernel = false;
    QByteArray range;
};

QList<Mapping> mappings(qint64 process)
{
    QList<Mapping> found;
    for (const QByteArray& line : all(process, "maps").split('\n')) {
        // range, rights, offset, device, inode, name
        const QList<QByteArray> fields = line.simplified().split(' ');
        const QList<QByteArray> ends = fields[0].split('-');
        if (fields.size() < 5 || ends.size() != 2)
            continue;
        found.append({ends[0].toULongLong(nullptr, 16), ends[1].toULongLong(nullptr, 16), fields[2].toULongLong(nullptr, 16),
            fields[1].startsWith("rw"), fields[4] != "0", line.contains("[vvar") || line.contains("[vsyscall]"), fields[0]});
    }
    return found;
}

/// Where what is mapped there ends: behind it there is nothing, and the program ends if it goes there.
quint64 endOf(const Mapping& mapping, qint64 process)
{
    struct stat file{};
    if (!mapping.ofFile || stat(qPrintable(QStringLiteral("/proc/%1/map_files/%2").arg(process).arg(QLatin1String(mapping.range))), &file) != 0)
        return mapping.to;
    const quint64 size = static_cast<quint64>(file.st_size);
    return size <= mapping.offset ? mapping.from : std::min(mapping.to, mapping.from + (size - mapping.offset + page - 1) / page * page);
}

/// One stretch of memory, piece by piece where something in it cannot be read.
Sightings stretch(int memory, const Mapping& mapping, quint64 end, const Canaries& canaries)
{
    Sightings found;
    QByteArray held;
    const auto look = [&] {
        found += canaries.findIn(held);
        held.clear();
    };
    QByteArray piece(slice, '\0');
    for (quint64 from = mapping.from; from < end;) {
        const ssize_t count = pread(memory, piece.data(), std::min<quint64>(slice, end - from), static_cast<off_t>(from));
        if (count > 0) {
            held.append(piece.constData(), count);
            from += static_cast<quint64>(count);
            continue;
        }
        look();
        found.unreadByteCount += mapping.writable ? page : 0;
        from += page;
    }
    look();
    return found;
}

}

QList<qint64> inSession(qint64 leader)
{
    QList<qint64> members;
    for (const QString& name : QDir(QStringLiteral("/proc")).entryList(QDir::Dirs)) {
        bool number = false;
        const qint64 process = name.toLongLong(&number);
        if (!number)
            continue;
        // behind the name, which may hold anything: state, parent, group, session
        const QByteArray state = all(process, "stat");
        const QList<QByteArray> fields = state.mid(state.lastIndexOf(')') + 2).split(' ');
        if (fields.size() > 3 && fields[0] != "Z" && fields[3].toLongLong() == leader)
            members << process;
    }
    return members;
}

Sightings memory(qint64 process, const Canaries& canaries)
{
    Sightings found;
    const Still still(process);
    const int memory = open(qPrintable(QStringLiteral("/proc/%1/mem").arg(process)), O_RDONLY | O_CLOEXEC);
    // the kernel's own pages are alike in every process
    for (const Mapping& mapping : mappings(process))
        if (!mapping.ofKernel)
            found += stretch(memory, mapping, endOf(mapping, process), canaries);
    close(memory);
    return found;
}

Sightings startedWith(qint64 process, const Canaries& canaries)
{
    Sightings found = canaries.findIn(all(process, "environ"));
    found += canaries.findIn(all(process, "cmdline"));
    return found;
}

}
