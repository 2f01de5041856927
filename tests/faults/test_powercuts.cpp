// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/faults/disk.h"
#include "tests/faults/trials.h"

#include <fstream>

using namespace faults;
using What = Operation::What;

/// The power goes at any operation, and of what had not been forced to the disk any part is gone; what had been told is there.
class TestPowerCuts : public QObject {
    Q_OBJECT

private:
    static std::string laidOut(const std::vector<Operation>& operations, Disk::Lost lost, const char* name)
    {
        const QTemporaryDir dir;
        Disk disk;
        for (const Operation& operation : operations)
            disk.apply(operation);
        std::mt19937 engine(1);
        disk.layOut(dir.path().toStdString(), lost, engine);
        std::ifstream in(dir.filePath(name).toStdString(), std::ios::binary);
        return in ? std::string(std::istreambuf_iterator<char>(in), {}) : std::string("none");
    }

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }

    void theDiskForgetsWhatWasNotForced()
    {
        std::vector<Operation> day{{What::Create, "./a", {}, 0, {}}, {What::Write, "./a", {}, 0, "one"}};
        QCOMPARE(laidOut(day, Disk::Lost::Nothing, "a"), std::string("one"));
        QCOMPARE(laidOut(day, Disk::Lost::Everything, "a"), std::string("none"));
        day.push_back({What::Force, "./a", {}, 0, {}});
        QCOMPARE(laidOut(day, Disk::Lost::Everything, "a"), std::string("none"));
        day.push_back({What::ForceFolder, ".", {}, 0, {}});
        QCOMPARE(laidOut(day, Disk::Lost::Everything, "a"), std::string("one"));
        day.push_back({What::Write, "./a", {}, 1, "xtra"});
        day.push_back({What::Rename, "./a", "./b", 0, {}});
        QCOMPARE(laidOut(day, Disk::Lost::Everything, "a"), std::string("one"));
        QCOMPARE(laidOut(day, Disk::Lost::Nothing, "b"), std::string("oxtra"));
    }

    void threeHundred() { QCOMPARE(faultOfPowerCuts(300, 1), QString()); }
    void fiveThousand_data()
    {
        QTest::addColumn<std::uint32_t>("day");
        for (std::uint32_t day = 2; day < 12; ++day)
            QTest::newRow(qPrintable(QString("day %1").arg(day))) << day;
    }
    void fiveThousand()
    {
        QFETCH(std::uint32_t, day);
        QCOMPARE(faultOfPowerCuts(500, day), QString());
    }
};

QTEST_APPLESS_MAIN(TestPowerCuts)
#include "test_powercuts.moc"
