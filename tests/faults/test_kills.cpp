// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/faults/story.h"

using namespace faults;
using namespace vaulting;

namespace {

/// Lives the day in a process that ends at an operation.
Told livedUntil(const std::string& root, std::uint32_t day, Trouble trouble, long at, bool& ended)
{
    Told told;
    ended = inAProcess(
        [&](const Tell& tell) {
            arm({root, trouble, at});
            live(root, day, tell);
        },
        told);
    return told;
}

}

/// The process ends at every operation, before it or half way through it; then everything that had been told is there.
class TestKills : public QObject {
    Q_OBJECT

private:
    static long operationsOf(std::uint32_t day)
    {
        const QTemporaryDir dir;
        const std::string root = dir.path().toStdString();
        arm({root});
        live(root, day, [](const std::string&) {});
        return disarm();
    }

    static void killAt(std::uint32_t day, Trouble trouble, long at)
    {
        const QTemporaryDir dir;
        const std::string root = dir.path().toStdString();
        bool ended = false;
        const Told told = livedUntil(root, day, trouble, at, ended);
        QVERIFY2(!ended, "the process was to be killed");
        arm({root});
        const QString fault = faultOf(root, told, day, 1);
        disarm();
        QVERIFY2(fault.isEmpty(), qPrintable(QString("day %1, operation %2, kind %3: %4").arg(day).arg(at).arg(static_cast<int>(trouble)).arg(fault)));
    }

    /// So many kills, over so many days, whole and torn in turn, evenly over all operations.
    static void kills(int wanted, std::uint32_t firstDay)
    {
        int done = 0;
        for (std::uint32_t day = firstDay; done < wanted; ++day) {
            const long count = operationsOf(day);
            QVERIFY(count > 150);
            const long stride = std::max(1L, 2 * count / wanted);
            for (long at = 1 + day % stride; at <= count && done < wanted; at += stride) {
                killAt(day, Trouble::Kill, at);
                killAt(day, Trouble::KillHalfWay, at);
                if (QTest::currentTestFailed())
                    return;
                done += 2;
            }
        }
        QVERIFY(done >= wanted);
    }

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }

    void aDayWithoutTroubleIsKeptWhole()
    {
        const QTemporaryDir dir;
        const std::string root = dir.path().toStdString();
        bool ended = false;
        const Told told = livedUntil(root, 1, Trouble::None, 0, ended);
        QVERIFY(ended);
        QCOMPARE(told.batches.size(), 9U);
        QCOMPARE(told.refusals, 0);
        QCOMPARE(faultOf(root, told, 1, 0), QString());
    }

    void fiveHundred() { kills(500, 1); }
    void twentyThousand_data()
    {
        QTest::addColumn<std::uint32_t>("firstDay");
        for (std::uint32_t part = 0; part < 20; ++part)
            QTest::newRow(qPrintable(QString("thousand %1").arg(part + 1))) << 100 * part + 2;
    }
    void twentyThousand()
    {
        QFETCH(std::uint32_t, firstDay);
        kills(1'000, firstDay);
    }
};

QTEST_APPLESS_MAIN(TestKills)
#include "test_kills.moc"
