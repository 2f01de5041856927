// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/desk.h"

#include "tests/core/work/samples.h"

#include <QtTest>

#include <functional>
#endif

using namespace steelyard;

using Deed = std::function<void(Desk&)>;
Q_DECLARE_METATYPE(Deed)

namespace {

/// A squat at 100 kg with a chain (1) on both sides, a band (2) on both sides, and another chain (3) in the kit only.
void fill(Desk& desk)
{
    desk.replaceAll(samples::marks(0.90, 1.50),
                    {samples::item(1, "Chain", samples::weighed()), samples::item(2, "Band", samples::band()), samples::item(3, "Spare", samples::gauged())},
                    samples::setup(100, {samples::hung(1, samples::chainOn(0.8)), samples::hung(2, samples::bandAt(0))}));
}

Caution cautionOf(const Desk& desk, CautionCode code)
{
    for (const Caution& c : desk.answer().cautions)
        if (c.code == code)
            return c;
    return {};
}

bool lookedOver(const Desk& desk) { return desk.answer().readiness == Readiness::Ready; }

void lookAllOver(Desk& desk)
{
    desk.lookOver(CautionCode::Chains);
    desk.lookOver(CautionCode::BandsBelow);
}

}

/// Who is told what changed, and what a look over is good for.
class DeskTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void startsWithTheUsualPlates();
    void toldOncePerChange_data();
    void toldOncePerChange();
    void answerIsNewWhenTold();
    void subscriptionEnds();
    void subscriptionOutlivesTheDesk();
    void listenersComeAndGoWhileTold();
    void lookedOverLastsWhileItHangsSo_data();
    void lookedOverLastsWhileItHangsSo();
    void massOfALookedOverCautionMoves();
    void stepLoadAtItsEnds();
    void stepLoadFromALoadThatCannotHang();
    void replaceAllLeavesNothingOfBefore();
    void whatIsWantedIsForTheseMarks();
    void pullsAreOfWhomTheDeskIsFor();
};

void DeskTest::startsWithTheUsualPlates()
{
    const Desk desk(samples::counted());
    QVERIFY(desk.setup().bar.stock == usualStock());
    QVERIFY(desk.kit().empty());
    QVERIFY(desk.setup().hung.empty());
    QVERIFY(desk.marks() == BarMarks{});
    QVERIFY(desk.answer().readiness == Readiness::MarksMissing);
    QCOMPARE(desk.answer().load->total.si(), 20.0);
    QVERIFY(!desk.setup().bar.barEntered);
}

void DeskTest::toldOncePerChange_data()
{
    QTest::addColumn<Deed>("deed");
    QTest::addColumn<int>("told");
    const auto row = [](const char* name, int told, Deed deed) { QTest::newRow(name) << std::move(deed) << told; };
    row("marks", 1, [](Desk& d) { d.setMarks(samples::marks(0.8, 1.4)); });
    row("bar", 1, [](Desk& d) { d.setBar(samples::bar(60)); });
    row("new item", 1, [](Desk& d) { (void)d.keepItem(samples::item(0, "New", samples::weighed())); });
    row("item again", 1, [](Desk& d) { (void)d.keepItem(samples::item(1, "Chain", samples::gauged())); });
    row("item gone", 1, [](Desk& d) { d.removeItem(samples::numbered(1)); });
    row("item gone that never was", 0, [](Desk& d) { d.removeItem(samples::numbered(99)); });
    row("draft", 0, [](Desk& d) { d.setDraft(samples::item(1, "Chain", samples::gauged())); });
    row("draft thrown", 0, [](Desk& d) { d.throwDraft(samples::numbered(1), ItemKind::Chain); });
    row("hung", 1, [](Desk& d) { d.hang(samples::hung(3, ChainPlacing{})); });
    row("hung otherwise", 1, [](Desk& d) { d.rehang(0, samples::hung(1, samples::chainOn(0.7))); });
    row("hung as it was", 0, [](Desk& d) { d.rehang(0, samples::hung(1, samples::chainOn(0.8))); });
    row("hung in no row", 0, [](Desk& d) { d.rehang(2, samples::hung(1, samples::chainOn(0.7))); });
    row("taken off", 1, [](Desk& d) { d.takeOff(1); });
    row("taken off from no row", 0, [](Desk& d) { d.takeOff(2); });
    row("load up", 1, [](Desk& d) { d.stepLoad(true); });
    row("looked over", 1, [](Desk& d) { d.lookOver(CautionCode::Chains); });
    row("all", 1, [](Desk& d) { d.replaceAll({}, {}, samples::setup(20)); });
    row("laid out", 1, [](Desk& d) { d.lay(samples::marks(0.8, 1.4), samples::setup(20)); });
    row("other kit", 1, [](Desk& d) { d.setKit({samples::item(1, "Chain", samples::weighed())}); });
    row("the same kit", 0, [](Desk& d) { d.setKit(std::vector(d.kit())); });
}

void DeskTest::toldOncePerChange()
{
    QFETCH(Deed, deed);
    QFETCH(int, told);
    Desk desk(samples::counted());
    fill(desk);
    int times = 0;
    const Subscription subscription = desk.onChanged([&times] { ++times; });
    deed(desk);
    QCOMPARE(times, told);
}

void DeskTest::answerIsNewWhenTold()
{
    Desk desk(samples::counted());
    fill(desk);
    double seen = 0;
    const Subscription subscription = desk.onChanged([&] { seen = desk.answer().load->total.si(); });
    desk.stepLoad(true);
    QCOMPARE(seen, 102.5);
    desk.setBar(samples::bar(60));
    QCOMPARE(seen, 60.0);
}

void DeskTest::subscriptionEnds()
{
    Desk desk(samples::counted());
    int first = 0, second = 0, third = 0;
    Subscription kept = desk.onChanged([&second] { ++second; });
    {
        Subscription brief = desk.onChanged([&first] { ++first; });
        desk.stepLoad(true);
        Subscription moved(std::move(brief));
        desk.stepLoad(true);
        QCOMPARE(first, 2);
    }
    desk.stepLoad(true);
    QCOMPARE(first, 2);
    QCOMPARE(second, 3);
    // another one put in its place ends it
    kept = desk.onChanged([&third] { ++third; });
    desk.stepLoad(true);
    QCOMPARE(second, 3);
    QCOMPARE(third, 1);
    kept = Subscription();
    desk.stepLoad(true);
    QCOMPARE(third, 1);
}

void DeskTest::subscriptionOutlivesTheDesk()
{
    int times = 0;
    Subscription subscription;
    {
        Desk desk(samples::counted());
        subscription = desk.onChanged([&times] { ++times; });
        desk.stepLoad(true);
    }
    subscription = Subscription();
    QCOMPARE(times, 1);
}

void DeskTest::listenersComeAndGoWhileTold()
{
    Desk desk(samples::counted());
    int once = 0, ended = 0, late = 0, last = 0;
    Subscription self, other, added;
    self = desk.onChanged([&] {
        ++once;
        other = Subscription();
        added = desk.onChanged([&late] { ++late; });
        self = Subscription();
    });
    other = desk.onChanged([&ended] { ++ended; });
    const Subscription end = desk.onChanged([&last] { ++last; });
    desk.stepLoad(true);
    QCOMPARE(once, 1);
    QCOMPARE(ended, 0);
    QCOMPARE(late, 0);
    QCOMPARE(last, 1);
    desk.stepLoad(true);
    QCOMPARE(once, 1);
    QCOMPARE(late, 1);
    QCOMPARE(last, 2);
}

void DeskTest::lookedOverLastsWhileItHangsSo_data()
{
    QTest::addColumn<Deed>("deed");
    QTest::addColumn<bool>("lasts");
    const auto row = [](const char* name, bool lasts, Deed deed) { QTest::newRow(name) << std::move(deed) << lasts; };
    row("plates", true, [](Desk& d) { d.stepLoad(true); });
    row("other plates here", true, [](Desk& d) { d.setBar(samples::bar(60)); });
    row("marks", true, [](Desk& d) { d.setMarks(samples::marks(0.95, 1.45)); });
    row("rehung as it was", true, [](Desk& d) { d.rehang(0, samples::hung(1, samples::chainOn(0.8))); });
    row("a draft", true, [](Desk& d) { d.setDraft(samples::item(1, "Chain", samples::gauged())); });
    row("a new thing measured", true, [](Desk& d) { (void)d.keepItem(samples::item(0, "New", samples::band())); });
    row("a thing measured again that does not hang", true, [](Desk& d) { (void)d.keepItem(samples::item(3, "Spare", samples::weighed())); });
    row("a thing gone that does not hang", true, [](Desk& d) { d.removeItem(samples::numbered(3)); });
    row("kit from elsewhere with what hangs as it was", true, [](Desk& d) { d.setKit({d.kit()[1], d.kit()[0]}); });
    row("kit from elsewhere, measured anew", false, [](Desk& d) { d.setKit({samples::item(1, "Chain", samples::gauged()), d.kit()[1]}); });
    row("laid out again", false, [](Desk& d) { d.lay(d.marks(), d.setup()); });
    row("other lead", false, [](Desk& d) { d.rehang(0, samples::hung(1, samples::chainOn(0.7))); });
    row("something more", false, [](Desk& d) { d.hang(samples::hung(3, ChainPlacing{})); });
    row("something less", false, [](Desk& d) { d.takeOff(0); });
    row("a hanging thing measured again", false, [](Desk& d) { (void)d.keepItem(samples::item(1, "Chain", samples::gauged())); });
    row("a hanging thing gone", false, [](Desk& d) { d.removeItem(samples::numbered(1)); });
    row("all replaced by the same", false, fill);
}

void DeskTest::lookedOverLastsWhileItHangsSo()
{
    QFETCH(Deed, deed);
    QFETCH(bool, lasts);
    Desk desk(samples::counted());
    fill(desk);
    QVERIFY(!lookedOver(desk));
    lookAllOver(desk);
    QVERIFY(lookedOver(desk));
    deed(desk);
    QVERIFY(!desk.answer().cautions.empty());
    QCOMPARE(lookedOver(desk), lasts);
}

void DeskTest::massOfALookedOverCautionMoves()
{
    Desk desk(samples::counted());
    fill(desk);
    lookAllOver(desk);
    const Caution before = cautionOf(desk, CautionCode::BandsBelow);
    desk.setMarks(samples::marks(0.90, 1.60));
    const Caution after = cautionOf(desk, CautionCode::BandsBelow);
    QVERIFY(before.mass && after.mass);
    QVERIFY(*after.mass > *before.mass);
}

void DeskTest::stepLoadAtItsEnds()
{
    Desk desk(samples::counted());
    desk.replaceAll({}, {}, samples::setup(20));
    desk.stepLoad(false);
    QCOMPARE(desk.setup().bar.wanted.si(), 20.0);
    desk.stepLoad(true);
    QCOMPARE(desk.setup().bar.wanted.si(), 22.5);
    BarRecord bar = samples::bar(1000);
    desk.setBar(bar);
    const double most = desk.answer().load->total.si();
    desk.stepLoad(true);
    QCOMPARE(desk.answer().load->total.si(), most);
    desk.stepLoad(false);
    QCOMPARE(desk.answer().load->total.si(), most - 2.5);
    bar.stock.clear();
    desk.setBar(bar);
    int told = 0;
    const Subscription subscription = desk.onChanged([&told] { ++told; });
    desk.stepLoad(true);
    desk.stepLoad(false);
    QCOMPARE(told, 0);
    QCOMPARE(desk.answer().load->total.si(), 20.0);
}

void DeskTest::stepLoadFromALoadThatCannotHang()
{
    Desk desk(samples::counted());
    desk.replaceAll({}, {}, samples::setup(101));
    QCOMPARE(desk.answer().load->total.si(), 100.0);
    desk.stepLoad(true);
    QCOMPARE(desk.answer().load->total.si(), 102.5);
    desk.setBar(samples::bar(101));
    desk.stepLoad(false);
    QCOMPARE(desk.answer().load->total.si(), 97.5);
}

void DeskTest::replaceAllLeavesNothingOfBefore()
{
    Desk desk(samples::counted());
    fill(desk);
    lookAllOver(desk);
    desk.setDraft(samples::item(1, "Half entered", samples::gauged()));
    const BarMarks marks = samples::marks(0.7, 1.2);
    const std::vector<KitItem> kit = {samples::item(1, "Another chain", samples::weighed(), false)};
    const SetupRecord setup = samples::setup(60, {samples::hung(1, ChainPlacing{}, HungOn::LeftOnly)});
    desk.replaceAll(marks, kit, setup);
    QVERIFY(desk.marks() == marks);
    QVERIFY(desk.kit() == kit);
    QVERIFY(desk.setup() == setup);
    QCOMPARE(desk.answer().load->total.si(), 60.0);
    QVERIFY(!cautionOf(desk, CautionCode::Chains).lookedOver);
    // another lifter's half entries never turn up on this kit
    QVERIFY(!desk.draft(samples::numbered(1), ItemKind::Chain));
}

void DeskTest::whatIsWantedIsForTheseMarks()
{
    Desk desk(samples::counted());
    fill(desk);
    WantedPulls wanted;
    wanted.masses = {{TargetPlace::Top, kilograms(90)}};
    desk.want(wanted);
    QVERIFY(desk.wanted() == wanted);
    desk.lay(desk.marks(), samples::setup(60));
    QVERIFY(desk.wanted() == wanted);
    desk.setMarks(samples::marks(0.71, 1.21));
    QVERIFY(desk.wanted() == wanted); // put right, and still hers
    desk.lay(samples::marks(0.8, 1.4), samples::setup(60));
    QVERIFY(desk.wanted() == WantedPulls{}); // another lifter's or another lift's
    desk.want(wanted);
    desk.replaceAll(desk.marks(), {}, samples::setup(60));
    QVERIFY(desk.wanted() == WantedPulls{});
}

void DeskTest::pullsAreOfWhomTheDeskIsFor()
{
    Desk desk(samples::counted());
    fill(desk);
    int changes = 0;
    const auto counted = desk.onChanged([&changes] { ++changes; });
    const std::vector<IsometricPull> pulls{{{}, {}, LiftId{1}, metres(0.9), kilograms(120), std::nullopt}};
    desk.setPulls(pulls);
    desk.setPulls(pulls);
    QCOMPARE(changes, 1); // the same once more is no change
    QVERIFY(desk.pulls() == pulls);
    desk.lay(desk.marks(), samples::setup(60));
    QVERIFY(desk.pulls() == pulls);
    desk.replaceAll(desk.marks(), {}, samples::setup(60));
    QVERIFY(desk.pulls().empty());
}

QTEST_APPLESS_MAIN(DeskTest)
#include "test_desk.moc"
