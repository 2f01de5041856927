// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/memory/processes.h"

#include <QDir>
#include <QFile>

#include <algorithm>

#include <fcntl.h>
#include <unistd.h>

namespace processes {

namespace {

constexpr qint64 page = 4096, slice = 1 << 20;

QByteArray all(qint64 process, const char* name)
{
    QFile file(QStringLiteral("/proc/%1/%2").arg(process).arg(QLatin1String(name)));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// One stretch of memory, piece by piece where something in it cannot be read.
Sightings stretch(int memory, quint64 from, quint64 to, bool writable, const Canaries& canaries)
{
    Sightings found;
    QByteArray held;
    const auto look = [&] {
        found += canaries.findIn(held);
        held.clear();
    };
    QByteArray piece(slice, '\0');
    while (from < to) {
        const auto wanted = std::min<quint64>(slice, to - from);
        const ssize_t count = pread(memory, piece.data(), wanted, static_cast<off_t>(from));
        if (count > 0) {
            held.append(piece.constData(), count);
            from += static_cast<quint64>(count);
            continue;
        }
        look();
        found.unreadByteCount += writable ? page : 0;
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
    const int memory = open(qPrintable(QStringLiteral("/proc/%1/mem").arg(process)), O_RDONLY | O_CLOEXEC);
    for (const QByteArray& line : all(process, "maps").split('\n')) {
        const QList<QByteArray> fields = line.simplified().split(' ');
        const QList<QByteArray> ends = fields[0].split('-');
        // the kernel's own pages, alike in every process
        if (ends.size() != 2 || line.contains("[vvar") || line.contains("[vsyscall]"))
            continue;
        found += stretch(memory, ends[0].toULongLong(nullptr, 16), ends[1].toULongLong(nullptr, 16), fields[1].startsWith("rw"), canaries);
    }
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
