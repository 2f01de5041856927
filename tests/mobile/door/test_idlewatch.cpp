// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/platform/idlewatch.h"

#include <QKeyEvent>
#include <QSignalSpy>
#include <QtTest>

/// Idle is told once nothing was touched for as long as was said, and only while it is watched for.
class IdleWatchTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void toldOnceAfterItsTime();
    void everyTouchBeginsItAnew();
    void notWhileStopped();
    void otherEventsAreNoTouch();
};

namespace {

void touch(QObject& target, QEvent::Type type = QEvent::KeyPress)
{
    QKeyEvent event(type, Qt::Key_A, Qt::NoModifier);
    QCoreApplication::sendEvent(&target, &event);
}

}

void IdleWatchTest::toldOnceAfterItsTime()
{
    IdleWatch watch(*QCoreApplication::instance(), std::chrono::milliseconds(20));
    QSignalSpy idle(&watch, &IdleWatch::idle);
    watch.start();
    QTRY_COMPARE(idle.count(), 1);
    QVERIFY(!watch.isRunning());
    QTest::qWait(60);
    QCOMPARE(idle.count(), 1);
}

void IdleWatchTest::everyTouchBeginsItAnew()
{
    QObject target;
    IdleWatch watch(*QCoreApplication::instance(), std::chrono::milliseconds(400));
    QSignalSpy idle(&watch, &IdleWatch::idle);
    watch.start();
    for (int i = 0; i < 8; ++i) {
        QTest::qWait(80);
        touch(target);
    }
    QCOMPARE(idle.count(), 0);
    QTRY_COMPARE(idle.count(), 1);
}

void IdleWatchTest::notWhileStopped()
{
    QObject target;
    IdleWatch watch(*QCoreApplication::instance(), std::chrono::milliseconds(10));
    QSignalSpy idle(&watch, &IdleWatch::idle);
    touch(target);
    QTest::qWait(40);
    QCOMPARE(idle.count(), 0);
    watch.start();
    watch.stop();
    QTest::qWait(40);
    QCOMPARE(idle.count(), 0);
}

void IdleWatchTest::otherEventsAreNoTouch()
{
    QObject target;
    IdleWatch watch(*QCoreApplication::instance(), std::chrono::milliseconds(60));
    QSignalSpy idle(&watch, &IdleWatch::idle);
    watch.start();
    for (int i = 0; i < 20 && idle.count() == 0; ++i) {
        QTest::qWait(20);
        touch(target, QEvent::KeyRelease);
    }
    QCOMPARE(idle.count(), 1);
}

QTEST_GUILESS_MAIN(IdleWatchTest)
#include "test_idlewatch.moc"
