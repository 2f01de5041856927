// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/venues/freenow.h"
#include "core/work/weighup.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;

namespace {

KitItem chain(bool pair) { return samples::item(samples::numbered(1), "Chain", samples::weighed(), pair); }

SetupRecord hanging(std::initializer_list<HungOn> sides)
{
    SetupRecord setup;
    for (const HungOn on : sides)
        setup.hung.push_back({samples::numbered(1), on, ChainPlacing{}});
    setup.hung.push_back({samples::numbered(2), HungOn::BothSides, BandPlacing{}});
    return setup;
}

}

/// What of the kit is free to be hung.
class FreeNowTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void freeSides_data();
    void freeSides();
    void whatCannotHang();
    void freeIsWhatIsNotRefused();
    void lentThingsMakeNothingReady();
    void backSoon_data();
    void backSoon();
};

void FreeNowTest::freeSides_data()
{
    QTest::addColumn<bool>("pair");
    QTest::addColumn<QList<int>>("sides");
    QTest::addColumn<int>("free");
    QTest::addColumn<int>("next"); // -1 for none
    const int both = static_cast<int>(HungOn::BothSides), left = static_cast<int>(HungOn::LeftOnly), right = static_cast<int>(HungOn::RightOnly);
    QTest::newRow("a pair, none hangs") << true << QList<int>{} << 2 << both;
    QTest::newRow("a pair, one hangs left") << true << QList<int>{left} << 1 << right;
    QTest::newRow("a pair, one hangs right") << true << QList<int>{right} << 1 << left;
    QTest::newRow("a pair, both hang") << true << QList<int>{both} << 0 << -1;
    QTest::newRow("a pair, one by one") << true << QList<int>{left, right} << 0 << -1;
    QTest::newRow("one, none hangs") << false << QList<int>{} << 1 << left;
    QTest::newRow("one, it hangs") << false << QList<int>{right} << 0 << -1;
    QTest::newRow("more than there are") << false << QList<int>{both} << 0 << -1;
}

void FreeNowTest::freeSides()
{
    QFETCH(bool, pair);
    QFETCH(QList<int>, sides);
    QFETCH(int, free);
    QFETCH(int, next);
    SetupRecord setup = hanging({});
    for (const int on : sides)
        setup.hung.push_back({samples::numbered(1), static_cast<HungOn>(on), ChainPlacing{}});
    QCOMPARE(piecesOf(chain(pair), setup).freeCount(), free);
    const auto at = sidesFree(chain(pair), setup);
    QCOMPARE(at ? static_cast<int>(*at) : -1, next);
}

void FreeNowTest::whatCannotHang()
{
    const SetupRecord none;
    KitItem item = chain(true);
    item.lent = OnLoan{"the rowers"};
    QVERIFY(!sidesFree(item, none));
    item = chain(true);
    item.borrowed = OnLoan{"the rowers"};
    QVERIFY(sidesFree(item, none));
    item.inspection = Inspection{KitFault::WornLink, {}, {}};
    QVERIFY(!sidesFree(item, none));
    item = samples::item(samples::numbered(1), "Chain", notYetMeasured(ItemKind::Chain));
    QVERIFY(!sidesFree(item, none));
    item = samples::item(samples::numbered(1), "Rack", RackMeasurement{metres(0.4), metres(0.05), 20, {}});
    QVERIFY(!sidesFree(item, none));
}

/// Where something is said to be free it hangs, and where nothing is the set-up would be refused.
void FreeNowTest::freeIsWhatIsNotRefused()
{
    BarMarks marks;
    marks.bottom = metres(0.5);
    marks.top = metres(1.2);
    for (const bool pair : {true, false}) {
        const KitItem item = chain(pair);
        SetupRecord setup;
        setup.bar.stock = usualStock();
        while (const auto on = sidesFree(item, setup)) {
            setup.hung.push_back({item.id, *on, ChainPlacing{}});
            QVERIFY(!weighUp(setup, std::array{item}, marks, {}).error);
        }
        setup.hung.push_back({item.id, HungOn::RightOnly, ChainPlacing{}});
        const WeighedUp over = weighUp(setup, std::array{item}, marks, {});
        QVERIFY(over.error && over.error->code == Refusal::TooMany);
    }
}

void FreeNowTest::lentThingsMakeNothingReady()
{
    BarMarks marks;
    marks.bottom = metres(0.5);
    marks.top = metres(1.2);
    SetupRecord setup;
    setup.bar.stock = usualStock();
    setup.hung.push_back({samples::numbered(1), HungOn::BothSides, ChainPlacing{}});
    KitItem item = chain(true);
    const std::array looked{CautionCode::Chains};
    QVERIFY(weighUp(setup, std::array{item}, marks, looked).readiness == Readiness::Ready);
    item.lent = OnLoan{"the rowers"};
    const WeighedUp lent = weighUp(setup, std::array{item}, marks, looked);
    QVERIFY(lent.readiness == Readiness::NotToBeUsed);
    QVERIFY(lent.lentOut == std::vector<std::string>{"Chain"} && lent.outOfUse.empty());
    // what is lent and does not hang is nobody's trouble
    setup.hung.clear();
    QVERIFY(weighUp(setup, std::array{item}, marks, looked).readiness == Readiness::Ready);
}

void FreeNowTest::backSoon_data()
{
    QTest::addColumn<int>("daysAhead");
    QTest::addColumn<int>("state");
    QTest::newRow("in a month") << 30 << static_cast<int>(BackState::Later);
    QTest::newRow("in eight days") << 8 << static_cast<int>(BackState::Later);
    QTest::newRow("in a week") << 7 << static_cast<int>(BackState::Soon);
    QTest::newRow("today") << 0 << static_cast<int>(BackState::Soon);
    QTest::newRow("yesterday") << -1 << static_cast<int>(BackState::Past);
}

void FreeNowTest::backSoon()
{
    QFETCH(int, daysAhead);
    QFETCH(int, state);
    const std::chrono::sys_days today{std::chrono::days{20000}};
    QCOMPARE(static_cast<int>(backOn({"the rowers", today + std::chrono::days(daysAhead)}, today)), state);
    QVERIFY(backOn({"the rowers"}, today) == BackState::NoDay);
}

QTEST_APPLESS_MAIN(FreeNowTest)
#include "test_freenow.moc"
