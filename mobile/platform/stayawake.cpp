// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/platform/stayawake.h"

#include <QCoreApplication>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace {

QDBusMessage call(const char* method)
{
    return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"), QStringLiteral("/org/freedesktop/ScreenSaver"),
                                          QStringLiteral("org.freedesktop.ScreenSaver"), QLatin1String(method));
}

}

StayAwake::~StayAwake()
{
    release();
}

void StayAwake::want(bool awake)
{
    m_wanted = awake;
    if (!awake)
        release();
    else if (!m_cookie && !m_asking)
        ask();
}

void StayAwake::ask()
{
    if (!m_bus)
        m_bus = QDBusConnection::sessionBus();
    if (!m_bus->isConnected())
        return;
    m_asking = true;
    QDBusMessage message = call("Inhibit");
    message << QCoreApplication::applicationName() << tr("A coach is at work.");
    auto* answer = new QDBusPendingCallWatcher(m_bus->asyncCall(message), this);
    connect(answer, &QDBusPendingCallWatcher::finished, this, [this, answer] {
        const QDBusPendingReply<uint> reply = *answer;
        answer->deleteLater();
        m_asking = false;
        if (reply.isError())
            return;
        m_cookie = reply.value();
        // it may have been told otherwise meanwhile
        if (!m_wanted)
            release();
    });
}

void StayAwake::release()
{
    if (!m_cookie)
        return;
    QDBusMessage message = call("UnInhibit");
    message << *m_cookie;
    m_cookie.reset();
    m_bus->send(message);
}
