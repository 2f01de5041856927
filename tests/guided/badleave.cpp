// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/guided/badleave.h"

#include "mobile/platform/platformhost.h"

#include <QDir>
#include <QFile>
#include <QTimer>

#include <unistd.h>

namespace {

void leaveFile(const QByteArray& word)
{
    QFile file(QDir::current().filePath(QStringLiteral("last")));
    if (file.open(QIODevice::WriteOnly))
        file.write(word);
}

/// A helper that was started while the vault was open, and outlives the restart.
void leaveProcess()
{
    if (fork() != 0)
        return;
    for (;;)
        pause();
}

}

void BadLeave::plan(const QByteArray& mistake, const QByteArray& word)
{
    m_mistake = mistake;
    m_word = word;
}

bool BadLeave::leave(VaultService& door) const
{
    if (m_mistake == "environment")
        qputenv("STEELYARD_LAST", m_word);
    else if (m_mistake == "file")
        leaveFile(m_word);
    else if (m_mistake == "process")
        leaveProcess();
    if (m_mistake != "stay")
        return platformhost::restart();
    // shows the same page as a fresh process would
    QTimer::singleShot(0, &door, &VaultService::look);
    return true;
}
