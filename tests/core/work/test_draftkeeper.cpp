// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/waiting/draftkeeper.h"

#include "core/journal/content.h"
#include "core/work/waiting/deskdraft.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;

namespace {

/// A timer that a test lets run out.
struct HandTimer {
    [[nodiscard]] After after()
    {
        return [this](std::chrono::milliseconds delay, std::function<void()> due) {
            longest = std::max(longest, delay);
            dues.push_back(std::move(due));
        };
    }
    void runOut()
    {
        for (auto now = std::exchange(dues, {}); const auto& due : now)
            due();
    }

    std::vector<std::function<void()>> dues;
    std::chrono::milliseconds longest{0};
};

/// A desk that is saved, from one opening of a vault to its end.
struct Sitting {
    explicit Sitting(keeping::MemoryKeeper& where) : keeper(where), unread(drafts.begin(where.saved)) {}

    keeping::MemoryKeeper& keeper;
    HandTimer timer;
    Desk desk{samples::counted()};
    DraftKeeper drafts{desk, keeper, timer.after()};
    std::set<std::string> unread;
};

journal::ByteBuffer newerDesk()
{
    return journal::listItem({journal::numberItem(2), journal::textItem("what a later version writes")});
}

}

/// What waits on the desk survives lock and sudden end, and is never taken for kept.
class DraftKeeperTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void savedSoonAndOnce();
    void allOfItComesBack();
    void onlyWhatChangedIsSaved();
    void thrownAndKeptDraftsGo();
    void nothingBeforeBeginOrAfterEnd();
    void flushBeforeALock();
    void newerDraftStaysAndOursLiesBeside();
    void damagedDraftIsSaid();
    void otherNamesAreLeftAlone();
    void refusedIsTriedAgain();
    void timerAfterTheEnd();
    void goldenBytes();
    void cutBytesAreRefused();
};

void DraftKeeperTest::savedSoonAndOnce()
{
    keeping::MemoryKeeper keeper;
    Sitting now(keeper);
    now.desk.setMarks(samples::marks(0.77, 1.27));
    now.desk.stepLoad(true);
    now.desk.setMarks(samples::marks(0.78, 1.27));
    QCOMPARE(now.timer.dues.size(), std::size_t(1));
    QVERIFY(now.timer.longest <= std::chrono::milliseconds(300));
    QCOMPARE(keeper.savedCount, 0);
    now.timer.runOut();
    QCOMPARE(keeper.savedCount, 1);
    QVERIFY(keeper.entries.empty());
    now.desk.stepLoad(true);
    QCOMPARE(now.timer.dues.size(), std::size_t(1));
}

void DraftKeeperTest::allOfItComesBack()
{
    keeping::MemoryKeeper keeper;
    Sitting before(keeper);
    BandPlacing above = samples::bandAt(2.2, true);
    above.heldBy = kilograms(40);
    before.desk.lay(samples::marks(0.77, 1.27), samples::setup(82.5, {samples::hung(1, samples::chainOn(0.8)), samples::hung(2, above, HungOn::RightOnly)}));
    before.desk.setDraft(samples::item(0, "", ChainMeasurement{}));
    BandMeasurement half = samples::band();
    half.hangings[2].length.reset();
    half.hangings[3].leftOut = true;
    half.model.reset();
    before.desk.setDraft(samples::item(0, "New band", half, false));
    KitItem changed = samples::item(1, "Chain", samples::gauged());
    changed.venue = samples::numbered(9);
    before.desk.setDraft(changed);
    before.timer.runOut();
    Sitting after(keeper);
    QVERIFY(after.unread.empty());
    QVERIFY(after.desk.marks() == before.desk.marks());
    QVERIFY(after.desk.setup() == before.desk.setup());
    QVERIFY(*after.desk.draft({}, ItemKind::Chain) == *before.desk.draft({}, ItemKind::Chain));
    QVERIFY(*after.desk.draft({}, ItemKind::Band) == *before.desk.draft({}, ItemKind::Band));
    QVERIFY(*after.desk.draft(samples::numbered(1), ItemKind::Chain) == changed);
    QCOMPARE(after.desk.drafts().size(), std::size_t(3));
    QVERIFY(after.desk.kit().empty());
    // what was laid out is not saved anew
    QVERIFY(after.timer.dues.empty());
}

void DraftKeeperTest::onlyWhatChangedIsSaved()
{
    keeping::MemoryKeeper keeper;
    Sitting now(keeper);
    now.desk.setDraft(samples::item(0, "New chain", samples::weighed()));
    now.timer.runOut();
    QCOMPARE(keeper.savedCount, 2);
    now.desk.setDraft(samples::item(0, "New chain", samples::gauged()));
    now.timer.runOut();
    QCOMPARE(keeper.savedCount, 3);
    now.desk.setDraft(samples::item(0, "New chain", samples::gauged()));
    now.timer.runOut();
    QCOMPARE(keeper.savedCount, 3);
}

void DraftKeeperTest::thrownAndKeptDraftsGo()
{
    keeping::MemoryKeeper keeper;
    Sitting now(keeper);
    now.desk.setDraft(samples::item(0, "New chain", samples::weighed()));
    now.desk.setDraft(samples::item(0, "New band", samples::band()));
    now.timer.runOut();
    QVERIFY(keeper.saved.contains("item:chain") && keeper.saved.contains("item:band"));
    now.desk.throwDraft({}, ItemKind::Chain);
    (void)now.desk.keepItem(*now.desk.draft({}, ItemKind::Band));
    now.timer.runOut();
    QCOMPARE(keeper.saved.size(), std::size_t(1));
    QVERIFY(keeper.saved.contains("desk"));
}

void DraftKeeperTest::nothingBeforeBeginOrAfterEnd()
{
    keeping::MemoryKeeper keeper;
    HandTimer timer;
    Desk desk(samples::counted());
    DraftKeeper drafts(desk, keeper, timer.after());
    desk.stepLoad(true);
    drafts.flush();
    QVERIFY(timer.dues.empty());
    QVERIFY(drafts.begin({}).empty());
    desk.stepLoad(true);
    drafts.end();
    timer.runOut();
    desk.stepLoad(true);
    drafts.flush();
    QVERIFY(timer.dues.empty());
    QCOMPARE(keeper.savedCount, 0);
}

void DraftKeeperTest::flushBeforeALock()
{
    keeping::MemoryKeeper keeper;
    Sitting now(keeper);
    now.desk.setMarks(samples::marks(0.77, 1.27));
    now.drafts.flush();
    QCOMPARE(keeper.savedCount, 1);
    // the timer runs out behind it and finds nothing to do
    now.timer.runOut();
    QCOMPARE(keeper.savedCount, 1);
    now.drafts.flush();
    QCOMPARE(keeper.savedCount, 1);
}

void DraftKeeperTest::newerDraftStaysAndOursLiesBeside()
{
    keeping::MemoryKeeper keeper;
    keeper.saved["desk"] = newerDesk();
    Sitting now(keeper);
    QVERIFY(now.unread == std::set<std::string>{"desk"});
    QVERIFY(now.desk.marks() == BarMarks{});
    now.desk.setMarks(samples::marks(0.77, 1.27));
    now.timer.runOut();
    QVERIFY(keeper.saved["desk"] == newerDesk());
    Sitting later(keeper);
    QVERIFY(later.unread == std::set<std::string>{"desk"});
    QVERIFY(later.desk.marks() == samples::marks(0.77, 1.27));
    later.desk.setMarks(samples::marks(0.79, 1.27));
    later.timer.runOut();
    QCOMPARE(keeper.saved.size(), std::size_t(2));
    QVERIFY(keeper.saved["desk"] == newerDesk());
}

void DraftKeeperTest::damagedDraftIsSaid()
{
    keeping::MemoryKeeper keeper;
    Sitting before(keeper);
    before.desk.setDraft(samples::item(0, "New chain", samples::weighed()));
    before.timer.runOut();
    keeper.saved["item:chain"].pop_back();
    Sitting now(keeper);
    QVERIFY(now.unread == std::set<std::string>{"item:chain"});
    QVERIFY(now.desk.drafts().empty());
}

void DraftKeeperTest::otherNamesAreLeftAlone()
{
    keeping::MemoryKeeper keeper;
    keeper.saved["work"] = newerDesk();
    Sitting now(keeper);
    QVERIFY(now.unread.empty());
    now.desk.stepLoad(true);
    now.timer.runOut();
    QVERIFY(keeper.saved["work"] == newerDesk());
}

void DraftKeeperTest::refusedIsTriedAgain()
{
    keeping::MemoryKeeper keeper;
    Sitting now(keeper);
    int told = 0;
    const Subscription subscription = now.drafts.onTrouble([&told] { ++told; });
    keeper.refusal = vault::Refusal{vault::Code::DiskFullFreeSpace, 3, 1, 0};
    now.desk.setMarks(samples::marks(0.77, 1.27));
    now.timer.runOut();
    QVERIFY(now.drafts.trouble() == keeper.refusal);
    QCOMPARE(told, 1);
    keeper.refusal.reset();
    now.desk.setDraft(samples::item(0, "New chain", samples::weighed()));
    now.timer.runOut();
    QVERIFY(!now.drafts.trouble());
    QCOMPARE(told, 2);
    QVERIFY(deskDraftIn(keeper.saved["desk"])->marks == samples::marks(0.77, 1.27));
    // what stands in the vault is the older one as long as the newer was refused
    keeper.refusal = vault::Refusal{vault::Code::WriteFailedTryAgain};
    now.desk.setMarks(samples::marks(0.80, 1.27));
    now.timer.runOut();
    keeper.refusal.reset();
    now.drafts.flush();
    QVERIFY(deskDraftIn(keeper.saved["desk"])->marks == samples::marks(0.80, 1.27));
    // and one thrown away stays until its going is taken
    keeper.refusal = vault::Refusal{vault::Code::WriteFailedTryAgain};
    now.desk.throwDraft({}, ItemKind::Chain);
    now.timer.runOut();
    QVERIFY(keeper.saved.contains("item:chain"));
    keeper.refusal.reset();
    now.drafts.flush();
    QVERIFY(!keeper.saved.contains("item:chain"));
}

void DraftKeeperTest::timerAfterTheEnd()
{
    keeping::MemoryKeeper keeper;
    HandTimer timer;
    {
        Desk desk(samples::counted());
        DraftKeeper drafts(desk, keeper, timer.after());
        QVERIFY(drafts.begin({}).empty());
        desk.stepLoad(true);
    }
    timer.runOut();
    QCOMPARE(keeper.savedCount, 0);
}

void DraftKeeperTest::goldenBytes()
{
    // written out by hand from RFC 8949: a list of version 1, the name "A", true, null, and a map 1: item, 2: {1: 2, 2: [1500000, "150", 12]}
    ChainMeasurement chain;
    chain.by = ChainMeasuring::Gauged;
    chain.length = metres(1.5);
    const QByteArray hex = "85" "01" "6141" "f5" "f6" "a2" "01" "50" "00000000000000000000000000000007" "02" "a2" "01" "02" "02" "83" "1a0016e360" "63313530" "0c";
    QCOMPARE(sealing::toHex(*encodeDraft(samples::item(7, "A", chain))), hex);
    QVERIFY(*itemDraftIn(sealing::fromHex(hex)) == samples::item(7, "A", chain));
}

void DraftKeeperTest::cutBytesAreRefused()
{
    const auto desk = *encodeDraft(DeskDraft{samples::marks(0.77, 1.27), samples::setup(60, {samples::hung(1, samples::chainOn(0.8))})});
    const auto item = *encodeDraft(samples::item(1, "Band", samples::band()));
    QVERIFY(deskDraftIn(desk) && itemDraftIn(item));
    for (std::size_t size = 0; size < desk.size(); ++size)
        QVERIFY(!deskDraftIn(journal::ByteView(desk).first(size)));
    for (std::size_t size = 0; size < item.size(); ++size)
        QVERIFY(!itemDraftIn(journal::ByteView(item).first(size)));
    QVERIFY(!deskDraftIn(item) && !itemDraftIn(desk));
}

QTEST_APPLESS_MAIN(DraftKeeperTest)
#include "test_draftkeeper.moc"
