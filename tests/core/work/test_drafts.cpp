// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/desk.h"

#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;

/// Kit on the desk: what is kept, what is only half entered, and the names that things get.
class DraftsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void idsAreNeverUsedAgain();
    void idsComeFromTheirSource();
    void keptAgainUnderItsId();
    void keptThingKeepsHanging();
    void idIsRightWhateverListenersDo();
    void draftsStandApartFromTheKit();
    void oneNewChainAndOneNewBandWait();
    void keepingTakesTheDraftAway();
    void keepingLeavesOtherDrafts();
    void removedThingComesOffTheBar();
    void removedThingWaitsAsANewOne();
    void removedThingDoesNotOustAWaitingOne();
    void kitFromElsewhereLeavesDraftsAndWhatHangs();
    void draftsAreToldApart();
};

void DraftsTest::idsAreNeverUsedAgain()
{
    Desk desk(samples::counted());
    const RecordId a = desk.keepItem(samples::item(0, "A", samples::weighed()));
    const RecordId b = desk.keepItem(samples::item(0, "B", samples::band()));
    QVERIFY(a != b);
    QVERIFY(a != RecordId{} && b != RecordId{});
    desk.removeItem(b);
    const RecordId c = desk.keepItem(samples::item(0, "C", samples::band()));
    QVERIFY(c != a && c != b);
    // an id that is gone brings nothing back
    const RecordId again = desk.keepItem(samples::item(b, "B again", samples::band()));
    QVERIFY(again != a && again != b && again != c);
    QVERIFY(!desk.item(b));
    QCOMPARE(desk.kit().size(), std::size_t(3));
}

void DraftsTest::idsComeFromTheirSource()
{
    Desk desk(samples::counted(12));
    desk.replaceAll({}, {samples::item(7, "A", samples::weighed()), samples::item(5, "B", samples::band())}, samples::setup(20));
    QVERIFY(desk.keepItem(samples::item(0, "C", samples::band())) == samples::numbered(13));
    QVERIFY(desk.keepItem(samples::item(7, "A", samples::gauged())) == samples::numbered(7));
    QVERIFY(desk.keepItem(samples::item(0, "D", samples::band())) == samples::numbered(14));
}

void DraftsTest::keptAgainUnderItsId()
{
    Desk desk(samples::counted());
    const RecordId id = desk.keepItem(samples::item(0, "Chain", samples::weighed()));
    desk.keepItem(samples::item(0, "Band", samples::band()));
    QVERIFY(desk.keepItem(samples::item(id, "Chain, gauged", samples::gauged(), false)) == id);
    QCOMPARE(desk.kit().size(), std::size_t(2));
    QCOMPARE(QString::fromStdString(desk.kit().front().name), QStringLiteral("Chain, gauged"));
    QVERIFY(!desk.item(id)->pair);
    QVERIFY(!desk.item(samples::numbered(99)));
}

void DraftsTest::keptThingKeepsHanging()
{
    Desk desk(samples::counted());
    desk.replaceAll(samples::marks(0.9, 1.5), {samples::item(1, "Chain", samples::weighed())}, samples::setup(60, {samples::hung(1, ChainPlacing{})}));
    ChainMeasurement heavier = samples::weighed();
    heavier.mass = kilograms(17.1);
    const double before = desk.answer().curve->top->value.si();
    (void)desk.keepItem(samples::item(1, "Chain", heavier));
    QCOMPARE(desk.setup().hung.size(), std::size_t(1));
    QVERIFY(desk.answer().curve->top->value.si() > before);
}

void DraftsTest::idIsRightWhateverListenersDo()
{
    Desk desk(samples::counted());
    bool nested = false;
    const Subscription adds = desk.onChanged([&] {
        if (!nested) {
            nested = true;
            for (int i = 0; i < 20; ++i)
                desk.keepItem(samples::item(0, "Added while told", samples::weighed()));
        }
    });
    const RecordId fresh = desk.keepItem(samples::item(0, "New", samples::band()));
    QCOMPARE(QString::fromStdString(desk.item(fresh)->name), QStringLiteral("New"));
    nested = false;
    QVERIFY(desk.keepItem(samples::item(fresh, "Kept again", samples::band())) == fresh);
}

void DraftsTest::draftsStandApartFromTheKit()
{
    Desk desk(samples::counted());
    const RecordId id = desk.keepItem(samples::item(0, "Chain", samples::weighed()));
    KitItem half = samples::item(id, "Chain", samples::gauged());
    desk.setDraft(half);
    QVERIFY(*desk.draft(id, ItemKind::Chain) == half);
    QVERIFY(*desk.item(id) == samples::item(id, "Chain", samples::weighed()));
    half.name = "Renamed";
    desk.setDraft(half);
    QCOMPARE(QString::fromStdString(desk.draft(id, ItemKind::Chain)->name), QStringLiteral("Renamed"));
    desk.throwDraft(id, ItemKind::Chain);
    QVERIFY(!desk.draft(id, ItemKind::Chain));
    QCOMPARE(QString::fromStdString(desk.item(id)->name), QStringLiteral("Chain"));
}

void DraftsTest::oneNewChainAndOneNewBandWait()
{
    Desk desk(samples::counted());
    desk.setDraft(samples::item(0, "New chain", ChainMeasurement{}));
    desk.setDraft(samples::item(0, "New band", BandMeasurement{}));
    QCOMPARE(QString::fromStdString(desk.draft({}, ItemKind::Chain)->name), QStringLiteral("New chain"));
    QCOMPARE(QString::fromStdString(desk.draft({}, ItemKind::Band)->name), QStringLiteral("New band"));
    QVERIFY(desk.kit().empty());
    desk.throwDraft({}, ItemKind::Chain);
    QVERIFY(!desk.draft({}, ItemKind::Chain));
    QVERIFY(desk.draft({}, ItemKind::Band));
}

void DraftsTest::keepingTakesTheDraftAway()
{
    Desk desk(samples::counted());
    desk.setDraft(samples::item(0, "New chain", samples::weighed()));
    const RecordId id = desk.keepItem(*desk.draft({}, ItemKind::Chain));
    QVERIFY(!desk.draft({}, ItemKind::Chain));
    QVERIFY(!desk.draft(id, ItemKind::Chain));
    QCOMPARE(QString::fromStdString(desk.item(id)->name), QStringLiteral("New chain"));
}

void DraftsTest::keepingLeavesOtherDrafts()
{
    Desk desk(samples::counted());
    const RecordId a = desk.keepItem(samples::item(0, "A", samples::weighed())), b = desk.keepItem(samples::item(0, "B", samples::weighed()));
    desk.setDraft(samples::item(a, "A half", samples::gauged()));
    desk.setDraft(samples::item(b, "B half", samples::gauged()));
    desk.setDraft(samples::item(0, "New", samples::band()));
    (void)desk.keepItem(*desk.draft(a, ItemKind::Chain));
    QVERIFY(!desk.draft(a, ItemKind::Chain));
    QVERIFY(desk.draft(b, ItemKind::Chain));
    QVERIFY(desk.draft({}, ItemKind::Band));
}

void DraftsTest::removedThingComesOffTheBar()
{
    Desk desk(samples::counted());
    desk.replaceAll({}, {samples::item(1, "A", samples::weighed()), samples::item(2, "B", samples::band())},
                    samples::setup(60, {samples::hung(1, ChainPlacing{}, HungOn::LeftOnly), samples::hung(2, BandPlacing{}), samples::hung(1, ChainPlacing{}, HungOn::RightOnly)}));
    desk.setDraft(samples::item(1, "A half", samples::gauged()));
    desk.removeItem(samples::numbered(1));
    QVERIFY(!desk.item(samples::numbered(1)));
    QVERIFY(!desk.draft(samples::numbered(1), ItemKind::Chain));
    QCOMPARE(desk.setup().hung.size(), std::size_t(1));
    QVERIFY(desk.setup().hung[0].item == samples::numbered(2));
}

void DraftsTest::removedThingWaitsAsANewOne()
{
    Desk desk(samples::counted());
    const RecordId id = desk.keepItem(samples::item(0, "Chain", samples::weighed()));
    desk.removeItem(id);
    const KitItem* waiting = desk.draft({}, ItemKind::Chain);
    QVERIFY(waiting);
    QVERIFY(*waiting == samples::item(0, "Chain", samples::weighed()));
    const RecordId back = desk.keepItem(*waiting);
    QVERIFY(back != id);
    QCOMPARE(QString::fromStdString(desk.item(back)->name), QStringLiteral("Chain"));
}

void DraftsTest::removedThingDoesNotOustAWaitingOne()
{
    Desk desk(samples::counted());
    const RecordId id = desk.keepItem(samples::item(0, "Chain", samples::weighed()));
    desk.setDraft(samples::item(0, "Begun before", ChainMeasurement{}));
    desk.removeItem(id);
    QCOMPARE(QString::fromStdString(desk.draft({}, ItemKind::Chain)->name), QStringLiteral("Begun before"));
}

void DraftsTest::kitFromElsewhereLeavesDraftsAndWhatHangs()
{
    Desk desk(samples::counted());
    desk.replaceAll({}, {samples::item(1, "A", samples::weighed()), samples::item(2, "B", samples::band())}, samples::setup(60, {samples::hung(1, ChainPlacing{})}));
    desk.setDraft(samples::item(2, "B half", samples::band()));
    desk.setKit({samples::item(2, "B", samples::band())});
    QVERIFY(desk.draft(samples::numbered(2), ItemKind::Band));
    QCOMPARE(desk.setup().hung.size(), std::size_t(1));
    QVERIFY(desk.answer().readiness == Readiness::Refused);
    desk.setKit({samples::item(1, "A", samples::weighed())});
    QVERIFY(desk.answer().readiness == Readiness::MarksMissing);
    desk.lay(samples::marks(0.9, 1.5), samples::setup(80));
    QVERIFY(desk.draft(samples::numbered(2), ItemKind::Band));
    QCOMPARE(desk.kit().size(), std::size_t(1));
    QVERIFY(desk.setup() == samples::setup(80) && desk.marks() == samples::marks(0.9, 1.5));
}

void DraftsTest::draftsAreToldApart()
{
    Desk desk(samples::counted());
    int drafts = 0, all = 0;
    const Subscription ofDrafts = desk.onDraftsChanged([&drafts] { ++drafts; }), ofAll = desk.onChanged([&all] { ++all; });
    desk.setDraft(samples::item(0, "New", samples::weighed()));
    desk.setDraft(samples::item(0, "New", samples::gauged()));
    QCOMPARE(drafts, 2);
    desk.throwDraft({}, ItemKind::Band);
    QCOMPARE(drafts, 2);
    desk.throwDraft({}, ItemKind::Chain);
    QCOMPARE(drafts, 3);
    QCOMPARE(all, 0);
    desk.setDraft(samples::item(0, "New", samples::weighed()));
    (void)desk.keepItem(*desk.draft({}, ItemKind::Chain));
    QCOMPARE(drafts, 5);
    QCOMPARE(all, 1);
}

QTEST_APPLESS_MAIN(DraftsTest)
#include "test_drafts.moc"
