// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/platform/stayawake.h"
#include "tests/mobile/door/fakedesktop.h"

#include <QDBusConnection>
#include <QProcess>
#include <QtTest>

/// On a bus of its own, so that nobody's display is touched.
class StayAwakeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void cleanupTestCase();
    void heldWhileItIsWanted();
    void wantedTwiceIsAskedOnce();
    void changedItsMindBeforeTheAnswer();
    void letGoAtTheEnd();
    void withoutAServiceNothingHappens();
    void withoutABusNothingHappens();

private:
    [[nodiscard]] QDBusConnection bus(const QString& name) const { return QDBusConnection::connectToBus(m_address, name); }

    QProcess m_daemon;
    QString m_address;
    std::unique_ptr<FakeDesktop> m_desktop;
};

void StayAwakeTest::initTestCase()
{
    m_daemon.start(QStringLiteral("dbus-daemon"), {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
    QVERIFY(m_daemon.waitForReadyRead(20000));
    m_address = QString::fromLocal8Bit(m_daemon.readLine()).trimmed();
    QVERIFY(bus(QStringLiteral("app")).isConnected());
}

void StayAwakeTest::init()
{
    m_desktop = std::make_unique<FakeDesktop>();
    QDBusConnection desk = bus(QStringLiteral("desktop"));
    QVERIFY(desk.registerObject(QStringLiteral("/org/freedesktop/ScreenSaver"), m_desktop.get(), QDBusConnection::ExportAllSlots));
    QVERIFY(desk.registerService(QStringLiteral("org.freedesktop.ScreenSaver")));
}

void StayAwakeTest::cleanup()
{
    QDBusConnection desk = bus(QStringLiteral("desktop"));
    desk.unregisterService(QStringLiteral("org.freedesktop.ScreenSaver"));
    desk.unregisterObject(QStringLiteral("/org/freedesktop/ScreenSaver"));
}

void StayAwakeTest::cleanupTestCase()
{
    QDBusConnection::disconnectFromBus(QStringLiteral("app"));
    QDBusConnection::disconnectFromBus(QStringLiteral("desktop"));
    m_daemon.terminate();
    m_daemon.waitForFinished();
}

void StayAwakeTest::heldWhileItIsWanted()
{
    StayAwake awake(bus(QStringLiteral("app")));
    awake.want(true);
    QTRY_VERIFY(awake.isHeld());
    QCOMPARE(m_desktop->held.size(), 1);
    // who asks and why, for the desktop to show
    QVERIFY(!m_desktop->whos.first().isEmpty() && !m_desktop->whys.first().isEmpty());
    awake.want(false);
    QVERIFY(!awake.isHeld());
    QTRY_VERIFY(m_desktop->held.isEmpty());
    awake.want(true);
    QTRY_COMPARE(m_desktop->held.size(), 1);
}

void StayAwakeTest::wantedTwiceIsAskedOnce()
{
    StayAwake awake(bus(QStringLiteral("app")));
    awake.want(true);
    awake.want(true);
    QTRY_VERIFY(awake.isHeld());
    awake.want(true);
    QTest::qWait(50);
    QCOMPARE(m_desktop->whos.size(), 1);
}

void StayAwakeTest::changedItsMindBeforeTheAnswer()
{
    StayAwake awake(bus(QStringLiteral("app")));
    awake.want(true);
    awake.want(false);
    QTRY_COMPARE(m_desktop->whos.size(), 1);
    QTRY_VERIFY(m_desktop->held.isEmpty());
    QVERIFY(!awake.isHeld());
}

void StayAwakeTest::letGoAtTheEnd()
{
    {
        StayAwake awake(bus(QStringLiteral("app")));
        awake.want(true);
        QTRY_VERIFY(awake.isHeld());
    }
    QTRY_VERIFY(m_desktop->held.isEmpty());
}

void StayAwakeTest::withoutAServiceNothingHappens()
{
    cleanup();
    StayAwake awake(bus(QStringLiteral("app")));
    awake.want(true);
    QTest::qWait(100);
    QVERIFY(!awake.isHeld());
    awake.want(false);
}

void StayAwakeTest::withoutABusNothingHappens()
{
    StayAwake awake(QDBusConnection(QStringLiteral("nowhere")));
    awake.want(true);
    awake.want(false);
    QVERIFY(!awake.isHeld());
}

int main(int argc, char** argv)
{
    QCoreApplication app(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("Steelyard"));
    StayAwakeTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "test_stayawake.moc"
