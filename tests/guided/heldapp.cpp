// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/guided/heldapp.h"

#include <QProcessEnvironment>

#include <chrono>
#include <csignal>

#include <unistd.h>

namespace {

/// Keys are stretched on a machine that may be busy.
constexpr std::chrono::milliseconds patience = std::chrono::minutes(2);
constexpr int patienceCount = static_cast<int>(patience.count());

}

HeldApp::HeldApp(const QString& program, const QString& folder)
{
    auto surroundings = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"HOME", "TMPDIR", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME", "XDG_RUNTIME_DIR"})
        surroundings.insert(QLatin1String(name), folder);
    m_app.setProcessEnvironment(surroundings);
    m_app.setWorkingDirectory(folder);
    m_app.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    m_app.setChildProcessModifier([] { setsid(); });
    m_app.start(program, QStringList());
    if (!m_app.waitForStarted(patienceCount))
        m_trouble = QStringLiteral("the app does not start");
    m_process = m_app.processId();
}

HeldApp::~HeldApp()
{
    // its group, so that nothing which it has started stays
    if (m_process > 1)
        ::kill(-static_cast<pid_t>(m_process), SIGKILL);
    m_app.waitForFinished(patienceCount);
}

void HeldApp::send(const QByteArray& deed)
{
    if (!m_trouble.isEmpty())
        return;
    m_app.write(deed + '\n');
}

void HeldApp::perform(const QByteArray& deed)
{
    send(deed);
    QByteArray answer;
    while (m_trouble.isEmpty() && answer != "did") {
        answer = line();
        if (answer.startsWith("not done: "))
            m_trouble = QString::fromUtf8(deed + ": " + answer);
    }
}

void HeldApp::awaitPage(const QByteArray& type)
{
    while (m_trouble.isEmpty() && m_page != type)
        (void)line();
}

QByteArray HeldApp::recoveryCode()
{
    return answer("tell code", "code ");
}

QByteArray HeldApp::textOf(const QByteArray& name)
{
    return answer("tell " + name, "text ");
}

QByteArray HeldApp::answer(const QByteArray& question, const QByteArray& head)
{
    send(question);
    while (m_trouble.isEmpty()) {
        const QByteArray said = line();
        if (said.startsWith(head))
            return said.mid(head.size());
        if (said.startsWith("not done: "))
            m_trouble = QString::fromUtf8(question + ": " + said);
    }
    return {};
}

void HeldApp::kill()
{
    m_app.kill();
    m_app.waitForFinished(patienceCount);
}

QByteArray HeldApp::line()
{
    while (!m_app.canReadLine()) {
        if (!m_app.waitForReadyRead(patienceCount)) {
            m_trouble = QStringLiteral("the app on %1 says nothing more: %2").arg(QString::fromUtf8(m_page), m_app.errorString());
            return {};
        }
    }
    const QByteArray said = m_app.readLine().trimmed();
    if (said.startsWith("shows "))
        m_page = said.mid(6);
    return said;
}
