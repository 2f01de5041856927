// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/faults/trials.h"

using namespace faults;

/// The process ends at every operation, before it or half way through it; then everything that had been told is there.
class TestKills : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }

    void aDayWithoutTroubleIsKeptWhole()
    {
        const QTemporaryDir dir;
        const std::string root = dir.path().toStdString();
        Told told;
        QVERIFY(inAProcess([&](const Tell& tell) { live(root, 1, tell); }, told));
        QCOMPARE(told.batches.size(), 9U);
        QCOMPARE(told.refusals, 0);
        QCOMPARE(faultOf(root, told, 1, 0), QString());
    }

    void fiveHundred() { QCOMPARE(faultOfKills(500, 1), QString()); }
    void twentyThousand_data()
    {
        QTest::addColumn<std::uint32_t>("firstDay");
        for (std::uint32_t part = 0; part < 20; ++part)
            QTest::newRow(qPrintable(QString("thousand %1").arg(part + 1))) << 100 * part + 2;
    }
    void twentyThousand()
    {
        QFETCH(std::uint32_t, firstDay);
        QCOMPARE(faultOfKills(1'000, firstDay), QString());
    }
};

QTEST_APPLESS_MAIN(TestKills)
#include "test_kills.moc"
