// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/faults/story.h"

using namespace faults;

namespace {

constexpr std::array troubles{Trouble::FullOnce, Trouble::ErrorOnce, Trouble::FullFromThere, Trouble::ErrorFromThere};

bool passes(Trouble trouble)
{
    return trouble == Trouble::FullOnce || trouble == Trouble::ErrorOnce;
}

/// A created vault, then batches and drafts while something is wrong, then more of them, with the same vault still open.
void liveThrough(const std::string& root, std::uint32_t day, const Plan& plan, const Tell& tell)
{
    const Surroundings surroundings = surroundingsOf(root, day, 1);
    arm({root});
    auto vault = Vault::create(folderOf(root), newRing(day), surroundings);
    if (!vault)
        return tell("refused");
    tell("created");
    arm(plan);
    work(**vault, day, 0, 4, tell);
    tell("operations " + std::to_string(disarm()));
    arm({root});
    work(**vault, day, 4, 2, [&tell](const std::string& line) { tell(line == "refused" ? "refused afterwards" : line); });
}

}

/// A full disk and errors of the storage, at every operation, once and from there on: what was refused can be tried again, what was told
/// to be kept is there, and the vault works on without being opened anew once the trouble is over.
class TestRefusals : public QObject {
    Q_OBJECT

private:
    using Work = std::function<void(const std::string&, const Plan&, const Tell&)>;

    static long operationsOf(const Work& work, bool countReads)
    {
        const QTemporaryDir dir;
        Plan plan{dir.path().toStdString(), Trouble::None, 0, countReads};
        arm(plan);
        long count = 0;
        work(plan.root, plan, [&count](const std::string& line) {
            if (line.starts_with("operations "))
                count = std::stol(line.substr(11));
        });
        disarm();
        return count;
    }

    static void troubleAt(const Work& work, std::uint32_t day, Trouble trouble, long at)
    {
        const QTemporaryDir dir;
        const std::string root = dir.path().toStdString();
        const Plan plan{root, trouble, at, !isFull(trouble)};
        Told told;
        const bool ended = inAProcess([&](const Tell& tell) { work(root, plan, tell); }, told);
        QVERIFY2(ended, "the process ended before its time");
        arm({root});
        const std::size_t extra = passes(trouble) ? 0 : static_cast<std::size_t>(told.refusals);
        const QString fault = told.refusedAfterwards ? QString("refused although the trouble was over") : faultOf(root, told, day, extra);
        disarm();
        QVERIFY2(fault.isEmpty(), qPrintable(QString("day %1, operation %2, kind %3: %4").arg(day).arg(at).arg(static_cast<int>(trouble)).arg(fault)));
    }
    static bool isFull(Trouble trouble) { return trouble == Trouble::FullOnce || trouble == Trouble::FullFromThere; }

    static void everywhere(const Work& work, std::uint32_t day, long stride)
    {
        for (const Trouble trouble : troubles) {
            const long count = operationsOf(work, !isFull(trouble));
            QVERIFY(count > 20);
            for (long at = 1 + day % stride; at <= count && !QTest::currentTestFailed(); at += stride)
                troubleAt(work, day, trouble, at);
        }
    }
    static Work wholeDay(std::uint32_t day)
    {
        return [day](const std::string& root, const Plan& plan, const Tell& tell) {
            arm(plan);
            live(root, day, tell);
            tell("operations " + std::to_string(disarm()));
        };
    }
    static Work keeping(std::uint32_t day)
    {
        return [day](const std::string& root, const Plan& plan, const Tell& tell) { liveThrough(root, day, plan, tell); };
    }

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }

    void someOperationsOfADay() { everywhere(wholeDay(1), 1, 12); }
    void someOperationsOfKeeping() { everywhere(keeping(2), 2, 6); }
    void everyOperation_data()
    {
        QTest::addColumn<bool>("day");
        QTest::addColumn<std::uint32_t>("number");
        for (std::uint32_t number = 1; number <= 3; ++number) {
            QTest::newRow(qPrintable(QString("day %1").arg(number))) << true << number;
            QTest::newRow(qPrintable(QString("keeping %1").arg(number))) << false << number;
        }
    }
    void everyOperation()
    {
        QFETCH(bool, day);
        QFETCH(std::uint32_t, number);
        everywhere(day ? wholeDay(number) : keeping(number), number, 1);
    }

    // The disk is full until the reserve is given up: then everything fits, and whoever asks is told that it was used.
    void theReserveCarriesWhatIsBeingKept()
    {
        const QTemporaryDir dir;
        const std::string root = dir.path().toStdString();
        const Surroundings surroundings = surroundingsOf(root, 1, 1);
        arm({root});
        const auto vault = Vault::create(folderOf(root), newRing(1), surroundings);
        QVERIFY(vault.ok());
        QVERIFY((*vault)->keep({fieldOf(1, 1, "b0/1")}).ok());
        arm({root, Trouble::FullUntilReserve, 1});
        const auto kept = (*vault)->keep({fieldOf(1, 2, "b1/1")});
        disarm();
        QVERIFY(kept.ok());
        QVERIFY(kept->reserveUsed);
        QVERIFY(!QFile::exists(dir.filePath("vault/reserve.bin")));
    }

    void aFullDiskSaysHowMuchIsWanting()
    {
        const QTemporaryDir dir;
        const std::string root = dir.path().toStdString();
        const Surroundings surroundings = surroundingsOf(root, 1, 1);
        arm({root});
        const auto vault = Vault::create(folderOf(root), newRing(1), surroundings);
        arm({root, Trouble::FullFromThere, 1});
        const auto kept = (*vault)->keep({fieldOf(1, 2, "b1/1")});
        disarm();
        QCOMPARE(kept.code(), Code::DiskFullFreeSpace);
        QVERIFY(kept.refusal().sizeNeeded > 0);
        QVERIFY(kept.refusal().sizeFree > 0);
    }
};

QTEST_APPLESS_MAIN(TestRefusals)
#include "test_refusals.moc"
