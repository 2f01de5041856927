// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "tests/core/near.h"
#include "tests/core/work/eccentric/releases.h"

#include <QtTest>

#include <functional>
#include <rapidcheck.h>
#endif

using namespace steelyard;
using releases::byHooks;
using releases::facts;

namespace {

double kg(Mass mass) { return inKilograms(mass); }
double cm(Length length) { return 100 * length.si(); }

SetupRecord by(ReleaseWay way)
{
    SetupRecord setup = byHooks();
    setup.release->way = way;
    return setup;
}

QString whyNot(const std::optional<Error>& error) { return error ? QString::fromStdString(error->what) : QStringLiteral("nothing"); }

}

/// What a set-up with a heavier way down comes to, way by way.
class ReleaseTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void barThenHooksFromOneStock();
    void fortyMoreThanTheWayUp();
    void fromLoads();
    void hooksOfHerOwnDepth();
    void settingsOfTheHook();
    void safetiesByLift();
    void oneSideStaysOn();
    void liftedOffByPartners();
    void addedByPartners();
    void bandsLetGo();
    void dumbbellsDropped();
    void chainsHangBesides();
    void repsThatAreOverloaded();
    void whatIsWanting_data();
    void whatIsWanting();
    void uncertainties();
    void worstForGates();
    void whateverIsAsked();
};

void ReleaseTest::barThenHooksFromOneStock()
{
    // worked apart by hand: 73.5 up, so 72.5 on the bar; 115.5 − 72.5 is 21.5 a hook, 18.3 of plates, of which 18.75 are left
    const ReleaseAnswer answer = releaseAnswer(byHooks(), facts());
    QVERIFY2(answer.load, qPrintable(whyNot(answer.noLoad)));
    VERIFY_NEAR(kg(answer.load->up.value), 72.5, 1e-9);
    VERIFY_NEAR(kg(answer.load->each->value), 21.95, 1e-9);
    VERIFY_NEAR(kg(answer.load->down->value), 116.4, 1e-9);
    VERIFY_NEAR(kg(answer.load->upMiss), -1, 1e-9);
    VERIFY_NEAR(kg(*answer.load->downMiss), 0.9, 1e-9);
    VERIFY_NEAR(kg(*answer.load->ideal), 21, 1e-9);
    VERIFY_NEAR(kg(*answer.load->lighterDown), 113.9, 1e-9);
    VERIFY_NEAR(answer.load->upOfMaximum->percent, 69.048, 5e-4);
    VERIFY_NEAR(answer.load->downOfMaximum->percent, 110.857, 5e-4);
    VERIFY_NEAR(answer.load->downOfUp->percent, 100 * 116.4 / 72.5, 1e-9);
    QCOMPARE(answer.load->bar.eachSide.size(), std::size_t(3));
    QCOMPARE(answer.load->onEach.size(), std::size_t(4));
    QVERIFY2(answer.heights, qPrintable(whyNot(answer.noHeights)));
    VERIFY_NEAR(cm(answer.heights->length.value), 78.7, 1e-9);
    VERIFY_NEAR(cm(answer.heights->at.touch.value), 76.2, 1e-9);
    VERIFY_NEAR(cm(answer.heights->at.free.value), 75, 1e-9);
    VERIFY_NEAR(cm(answer.heights->tilted->firstFree.value - answer.heights->tilted->lastFree.value), 2.793, 2e-3);
    QVERIFY(answer.isComplete());
    QCOMPARE(answer.overloadedReps, std::vector<int>{1});
}

void ReleaseTest::fortyMoreThanTheWayUp()
{
    SetupRecord setup = byHooks();
    setup.release->asked.downPercent = 140;
    setup.release->asked.downOfWayUp = true;
    const ReleaseAnswer answer = releaseAnswer(setup, facts());
    QVERIFY(answer.load);
    // before anything is rounded: 73.5 up, 102.9 down, 14.7 a hook; of the 72.5 that hang it is 101.5
    VERIFY_NEAR(kg(*answer.load->ideal), 14.7, 1e-9);
    VERIFY_NEAR(kg(answer.load->down->value - *answer.load->downMiss), 1.4 * 72.5, 1e-9);
    QVERIFY(answer.load->downOfMaximum->percent < 100);
}

void ReleaseTest::fromLoads()
{
    SetupRecord setup = byHooks();
    setup.bar.wanted = kilograms(72.5);
    setup.release->asked = {false, 0, 0, false, kilograms(116.4)};
    ReleaseFacts without = facts();
    without.maximum.reset();
    const ReleaseAnswer answer = releaseAnswer(setup, without);
    QVERIFY2(answer.load, qPrintable(whyNot(answer.noLoad)));
    VERIFY_NEAR(kg(answer.load->upMiss), 0, 1e-9);
    VERIFY_NEAR(kg(*answer.load->downMiss), 0, 1e-9);
    QVERIFY(!answer.load->upOfMaximum && !answer.load->downOfMaximum && answer.load->downOfUp);
}

void ReleaseTest::hooksOfHerOwnDepth()
{
    SetupRecord setup = byHooks();
    auto& measures = setup.release->measures;
    measures.box.reset();
    measures.margin.reset();
    measures.lowest = {metres(0.70), metres(0.71), metres(0.72), metres(0.73), metres(0.74)};
    const ReleaseAnswer answer = releaseAnswer(setup, facts());
    QVERIFY2(answer.heights, qPrintable(whyNot(answer.noHeights)));
    // SD of 1, 2, … 5 is √2.5
    const double margin = 2 * std::sqrt(2.5);
    QVERIFY(!answer.heights->marginIsOwn);
    VERIFY_NEAR(cm(answer.heights->margin), margin, 1e-9);
    VERIFY_NEAR(cm(answer.heights->length.value), 72 + margin + 2.5 + 1.2, 1e-9);
    VERIFY_NEAR(cm(answer.heights->at.free.value), 72 + margin, 1e-9);
    QVERIFY(answer.heights->releasedRatio > 0.9 && answer.heights->releasedRatio < 0.97);
    QVERIFY(*answer.heights->tiltedRatio < answer.heights->releasedRatio);
    // the usual 3 cm reach fewer of her reps
    measures.margin = metres(0.03);
    const ReleaseAnswer usual = releaseAnswer(setup, facts());
    QVERIFY(usual.heights->marginIsOwn && usual.heights->releasedRatio < answer.heights->releasedRatio);
    measures.margin = metres(0);
    VERIFY_NEAR(releaseAnswer(setup, facts()).heights->releasedRatio, 0.5, 1e-9);
}

void ReleaseTest::settingsOfTheHook()
{
    SetupRecord setup = byHooks();
    setup.release->hook.settings = {metres(0.84), metres(0.75), metres(0.80)};
    const ReleaseAnswer answer = releaseAnswer(setup, facts());
    VERIFY_NEAR(cm(*answer.heights->setting), 80, 1e-9);
    VERIFY_NEAR(cm(answer.heights->at.touch.value), 77.5, 1e-9);
    VERIFY_NEAR(cm(answer.heights->at.free.value), 76.3, 1e-9);
    VERIFY_NEAR(cm(answer.heights->length.value), 78.7, 1e-9);
}

void ReleaseTest::safetiesByLift()
{
    ReleaseFacts squat = facts();
    squat.alike = LiftId{1};
    const ReleaseAnswer under = releaseAnswer(byHooks(), squat);
    QVERIFY2(under.safeties, qPrintable(whyNot(under.noSafeties)));
    VERIFY_NEAR(cm(under.safeties->at.highest.value), 70, 1e-9);
    VERIFY_NEAR(cm(under.safeties->at.lowest.value), 67, 1e-9);
    QVERIFY(under.safeties->touchedRatio);
    const ReleaseAnswer lying = releaseAnswer(byHooks(), facts());
    QVERIFY2(lying.safeties, qPrintable(whyNot(lying.noSafeties)));
    QVERIFY(lying.safeties->at.highest.value < metres(0.72 + 0.014) && lying.safeties->at.lowest.value > metres(0.60 + 0.014));
    QVERIFY(!lying.safeties->touchedRatio);
    // for a lift that no rule is known for there is none, and nothing is wanting
    ReleaseFacts row = facts();
    row.alike = {};
    const ReleaseAnswer other = releaseAnswer(byHooks(), row);
    QVERIFY(!other.safeties && !other.noSafeties && other.isComplete());
}

void ReleaseTest::oneSideStaysOn()
{
    const ReleaseAnswer answer = releaseAnswer(byHooks(), facts());
    QVERIFY(answer.oneSide);
    VERIFY_NEAR(kg(answer.oneSide->heavierBy.value), 21.95, 1e-9);
    VERIFY_NEAR(kg(answer.oneSide->inAll.value), 72.5 + 21.95, 1e-9);
    // hands 0.8 m apart, hooks 1.6 m: the far hand holds half the bar and half a hook less than nothing
    VERIFY_NEAR(kg(answer.oneSide->nearHand->value), 36.25 + 1.5 * 21.95, 1e-9);
    VERIFY_NEAR(kg(answer.oneSide->farHand->value), 36.25 - 0.5 * 21.95, 1e-9);
    VERIFY_NEAR(answer.oneSide->tipping.newtonMetres, 21.95 * 9.80665 * 0.8, 1e-6);
}

void ReleaseTest::liftedOffByPartners()
{
    SetupRecord setup = by(ReleaseWay::PartnerLiftsOff);
    setup.release->hook.frame.reset();
    const ReleaseAnswer answer = releaseAnswer(setup, facts());
    QVERIFY2(answer.load, qPrintable(whyNot(answer.noLoad)));
    // no frame: 43 more, 21.5 a side; 21.25 of plates and 22.5 can be made of what is left
    VERIFY_NEAR(kg(answer.load->each->value), 21.25, 1e-9);
    VERIFY_NEAR(kg(answer.load->down->value), 72.5 + 2 * 21.25, 1e-9);
    QVERIFY(!answer.heights && !answer.noHeights && answer.pulls && answer.oneSide);
    VERIFY_NEAR(answer.pulls->downTop->value.si() / 9.80665, 115, 1e-9);
    // the overload goes on to her bottom
    VERIFY_NEAR(cm(answer.pulls->ends.value), 72, 1e-9);
    // both have to be on one sleeve
    setup.bar.sleeve = metres(0.15);
    const ReleaseAnswer full = releaseAnswer(setup, facts());
    QVERIFY(!full.load && full.noLoad->code == Refusal::TooMany);
    QCOMPARE(whyNot(full.noLoad), QStringLiteral("sleeve"));
}

void ReleaseTest::addedByPartners()
{
    SetupRecord setup = by(ReleaseWay::PartnerAdds);
    ReleaseAnswer answer = releaseAnswer(setup, facts());
    QVERIFY2(answer.load && answer.pulls, qPrintable(whyNot(answer.noLoad)));
    QVERIFY(!answer.load->down && !answer.load->downMiss && !answer.pulls->downTop && !answer.worst);
    VERIFY_NEAR(kg(answer.load->up.value), 72.5, 1e-9);
    setup.release->push = kilograms(30);
    answer = releaseAnswer(setup, facts());
    VERIFY_NEAR(kg(answer.load->down->value), 102.5, 1e-9);
    VERIFY_NEAR(kg(*answer.load->downMiss), 102.5 - 115.5, 1e-9);
    VERIFY_NEAR(answer.pulls->downTop->value.si() / 9.80665, 102.5, 1e-9);
    QVERIFY(answer.worst);
}

void ReleaseTest::bandsLetGo()
{
    SetupRecord setup = by(ReleaseWay::BandsLetGo);
    setup.hung = {samples::hung(4, samples::bandAt(0))};
    const std::vector<KitItem> kit{samples::item(4, "Bands", samples::band(0.4, {{5, 0.6}, {10, 0.8}, {15, 1.0}, {20, 1.2}, {25, 1.4}}))};
    ReleaseFacts known = facts();
    known.kit = kit;
    const ReleaseAnswer answer = releaseAnswer(setup, known);
    QVERIFY2(answer.pulls, qPrintable(whyNot(answer.noPulls)));
    // on the way up nothing but iron, on the way down the bands besides
    VERIFY_NEAR(answer.pulls->up.top->value.si() / 9.80665, 72.5, 1e-9);
    VERIFY_NEAR(answer.pulls->up.bottom->value.si() / 9.80665, 72.5, 1e-9);
    QVERIFY(answer.pulls->downTop->value > answer.pulls->downEnds->value && answer.pulls->downEnds->value > answer.pulls->up.top->value);
    QVERIFY(!answer.load->down && answer.worst && answer.worst->value > kilograms(72.5));
    // with bands from above nothing is let go
    setup.hung = {samples::hung(4, samples::bandAt(2.2, true))};
    const ReleaseAnswer above = releaseAnswer(setup, known);
    QCOMPARE(whyNot(above.noPulls), QStringLiteral("bands"));
    QVERIFY(!above.isComplete());
}

void ReleaseTest::dumbbellsDropped()
{
    SetupRecord setup = by(ReleaseWay::DumbbellsDropped);
    setup.release->dumbbell = kilograms(20);
    const ReleaseAnswer answer = releaseAnswer(setup, facts());
    QVERIFY2(answer.load, qPrintable(whyNot(answer.noLoad)));
    VERIFY_NEAR(kg(answer.load->down->value), 112.5, 1e-9);
    VERIFY_NEAR(kg(*answer.load->downMiss), -3, 1e-9);
    VERIFY_NEAR(kg(*answer.load->ideal), 21.5, 1e-9);
    QVERIFY(!answer.oneSide && !answer.noOneSide && answer.isComplete());
}

void ReleaseTest::chainsHangBesides()
{
    SetupRecord setup = byHooks();
    setup.hung = {samples::hung(7, samples::chainOn(0.0))};
    const std::vector<KitItem> kit{samples::item(7, "Chains", samples::weighed())};
    ReleaseFacts known = facts();
    known.kit = kit;
    const ReleaseAnswer answer = releaseAnswer(setup, known);
    QVERIFY2(answer.pulls, qPrintable(whyNot(answer.noPulls)));
    // 5.7 kg a metre on each side, off the floor by 1.1 m at the top; the iron is what was asked
    VERIFY_NEAR(kg(answer.load->up.value), 72.5, 1e-9);
    VERIFY_NEAR(answer.pulls->up.top->value.si() / 9.80665, 72.5 + 2 * 5.7 * 1.1, 1e-6);
    VERIFY_NEAR(answer.pulls->downTop->value.si() / 9.80665, 116.4 + 2 * 5.7 * 1.1, 1e-6);
    // with the pulls not known, nobody knows the worst
    ReleaseFacts nowhere = facts();
    QVERIFY(!releaseAnswer(setup, nowhere).worst);
}

void ReleaseTest::repsThatAreOverloaded()
{
    SetupRecord setup = byHooks();
    auto& set = setup.release->set;
    set.reps = 6;
    QCOMPARE(releaseAnswer(setup, facts()).overloadedReps, std::vector<int>{1});
    set.clusterReps = 2;
    set.clusterRest = std::chrono::seconds(30);
    set.putBack = PutBack::EachCluster;
    set.putBackBy = PutBackBy::Spotters;
    QCOMPARE(releaseAnswer(setup, facts()).overloadedReps, (std::vector<int>{1, 3, 5}));
    set.putBackBy = PutBackBy::Nobody;
    const ReleaseAnswer nobody = releaseAnswer(setup, facts());
    QCOMPARE(whyNot(nobody.setFault), QStringLiteral("who puts it back"));
    QVERIFY(nobody.overloadedReps.empty() && nobody.load && !nobody.isComplete());
}

void ReleaseTest::whatIsWanting_data()
{
    using Change = std::function<void(SetupRecord&, ReleaseFacts&)>;
    using Which = std::optional<Error> ReleaseAnswer::*;
    QTest::addColumn<Change>("change");
    QTest::addColumn<Which>("which");
    QTest::addColumn<QString>("what");
    const auto row = [](const char* name, Which which, const char* what, const Change& change) { QTest::newRow(name) << change << which << QString::fromLatin1(what); };
    row("no plan", &ReleaseAnswer::noLoad, "release", [](SetupRecord& s, ReleaseFacts&) { s.release.reset(); });
    row("no maximum", &ReleaseAnswer::noLoad, "maximum", [](SetupRecord&, ReleaseFacts& f) { f.maximum.reset(); });
    row("no load asked", &ReleaseAnswer::noLoad, "eccentric load", [](SetupRecord& s, ReleaseFacts&) { s.release->asked.inPercent = false; });
    row("down lighter than up", &ReleaseAnswer::noLoad, "eccentric load", [](SetupRecord& s, ReleaseFacts&) { s.release->asked.downPercent = 60; });
    row("no frame", &ReleaseAnswer::noLoad, "hook frame", [](SetupRecord& s, ReleaseFacts&) { s.release->hook.frame.reset(); });
    row("hooks that carry nothing", &ReleaseAnswer::noLoad, "hook rating", [](SetupRecord& s, ReleaseFacts&) { s.release->hook.rating = kilograms(-1); });
    row("no dumbbell", &ReleaseAnswer::noLoad, "dumbbell", [](SetupRecord& s, ReleaseFacts&) { s.release->way = ReleaseWay::DumbbellsDropped; });
    row("no depth", &ReleaseAnswer::noHeights, "depth", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.box.reset(); });
    row("two reps", &ReleaseAnswer::noHeights, "reps", [](SetupRecord& s, ReleaseFacts&) {
        s.release->measures.box.reset();
        s.release->measures.lowest = {metres(0.7), metres(0.71)};
    });
    row("no radius", &ReleaseAnswer::noHeights, "sleeve radius", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.sleeveRadius.reset(); });
    row("no drop", &ReleaseAnswer::noHeights, "lip drop", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.lipDrop.reset(); });
    row("no margin on a box", &ReleaseAnswer::noHeights, "margin", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.margin.reset(); });
    row("hooks too short", &ReleaseAnswer::noHeights, "hook length", [](SetupRecord& s, ReleaseFacts&) { s.release->hook.settings = {metres(0.78)}; });
    row("spacing of nothing", &ReleaseAnswer::noHeights, "hook spacing", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.spacing = metres(0); });
    row("touch above the top", &ReleaseAnswer::noPulls, "touch", [](SetupRecord& s, ReleaseFacts&) { s.release->hook.settings = {metres(1.4)}; });
    row("no heights", &ReleaseAnswer::noPulls, "touch", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.lipDrop.reset(); });
    row("no marks", &ReleaseAnswer::noPulls, "bottom", [](SetupRecord&, ReleaseFacts& f) { f.marks.bottom.reset(); });
    row("no bands", &ReleaseAnswer::noPulls, "bands", [](SetupRecord& s, ReleaseFacts&) { s.release->way = ReleaseWay::BandsLetGo; });
    row("no chest", &ReleaseAnswer::noSafeties, "chest", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.chest.reset(); });
    row("no throat", &ReleaseAnswer::noSafeties, "throat", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.throat.reset(); });
    row("throat above the chest", &ReleaseAnswer::noSafeties, "throat", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.throat = metres(0.8); });
    row("squat of no depth", &ReleaseAnswer::noSafeties, "depth", [](SetupRecord& s, ReleaseFacts& f) {
        f.alike = LiftId{1};
        s.release->measures.box.reset();
    });
    row("no spacing", &ReleaseAnswer::noOneSide, "hook spacing", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.spacing.reset(); });
    row("no grip at all", &ReleaseAnswer::noOneSide, "grip", [](SetupRecord& s, ReleaseFacts&) { s.release->measures.grip = metres(0); });
    row("no reps", &ReleaseAnswer::setFault, "reps", [](SetupRecord& s, ReleaseFacts&) { s.release->set.reps = 0; });
}

void ReleaseTest::whatIsWanting()
{
    using Change = std::function<void(SetupRecord&, ReleaseFacts&)>;
    using Which = std::optional<Error> ReleaseAnswer::*;
    QFETCH(Change, change);
    QFETCH(Which, which);
    QFETCH(QString, what);
    SetupRecord setup = byHooks();
    ReleaseFacts known = facts();
    change(setup, known);
    const ReleaseAnswer answer = releaseAnswer(setup, known);
    QCOMPARE(whyNot(answer.*which), what);
    QVERIFY(!answer.isComplete());
}

void ReleaseTest::uncertainties()
{
    SetupRecord setup = byHooks();
    const double frame = 0.1 / std::sqrt(12.0);
    ReleaseAnswer answer = releaseAnswer(setup, facts());
    VERIFY_NEAR(kg(answer.load->up.u), 0, 1e-12);
    VERIFY_NEAR(kg(answer.load->each->u), frame, 1e-9);
    VERIFY_NEAR(kg(answer.load->down->u), 2 * frame, 1e-9);
    // a frame that nobody weighed to a step, and plates that nobody weighed, are out by 2 % either way
    setup.release->hook.scaleStep.reset();
    setup.bar.trust = PlateTrust::Unweighed;
    answer = releaseAnswer(setup, facts());
    const double share = 0.02 / std::sqrt(3.0);
    VERIFY_NEAR(kg(answer.load->up.u), share * 47.5, 1e-9);
    VERIFY_NEAR(kg(answer.load->down->u), std::hypot(share * 85, 2 * share * 3.2), 1e-9);
    // of a weighed bar its own, and of weighed plates the least sure one
    setup.bar.trust = PlateTrust::AsMarked;
    setup.bar.barWeighed = IronWeighed{samples::numbered(5), kilograms(0.04)};
    setup.bar.stock[0].weighed = IronWeighed{samples::numbered(6), kilograms(0.1)};
    answer = releaseAnswer(setup, facts());
    VERIFY_NEAR(kg(answer.load->up.u), std::hypot(0.04, 0.005 * 47.5), 1e-9);
    QVERIFY(answer.heights->length.u > metres(0.01) && answer.heights->at.free.u > metres(0.002));
}

void ReleaseTest::worstForGates()
{
    const ReleaseAnswer answer = releaseAnswer(byHooks(), facts());
    QVERIFY(answer.worst);
    VERIFY_NEAR(kg(answer.worst->value), 116.4, 1e-6);
    VERIFY_NEAR(kg(answer.worst->giveOrTake), 1.959964 * 0.2 / std::sqrt(12.0), 1e-6);
    // without heights the iron is known none the less
    SetupRecord setup = byHooks();
    setup.release->measures.lipDrop.reset();
    const ReleaseAnswer without = releaseAnswer(setup, facts());
    QVERIFY(without.worst);
    VERIFY_NEAR(kg(without.worst->value), 116.4, 1e-9);
}

void ReleaseTest::whateverIsAsked()
{
    const bool ok = rc::check("what is let go is what the way down has more, and comes off before she is as deep as she goes", [] {
        SetupRecord setup = byHooks();
        auto& asked = setup.release->asked;
        asked.upPercent = *rc::gen::inRange(40, 90);
        asked.downPercent = asked.upPercent + *rc::gen::inRange(5, 60);
        setup.release->measures.margin = metres(*rc::gen::inRange(0, 100) / 1000.0);
        const ReleaseAnswer answer = releaseAnswer(setup, facts());
        RC_ASSERT(answer.load.has_value());
        const ReleaseLoad& load = *answer.load;
        RC_ASSERT(std::abs(kg(load.down->value - load.up.value - 2 * load.each->value)) < 1e-9);
        RC_ASSERT(std::abs(kg(load.up.value - load.upMiss) - 1.05 * asked.upPercent) < 1e-9);
        RC_ASSERT(std::abs(kg(load.down->value - *load.downMiss) - 1.05 * asked.downPercent) < 1e-9);
        RC_ASSERT(answer.heights.has_value());
        RC_ASSERT(answer.heights->at.free.value >= metres(0.72 - 1e-12));
        RC_ASSERT(std::abs(cm(answer.heights->at.touch.value - answer.heights->at.free.value) - 1.2) < 1e-9);
        // no more of any plate than there is
        for (const PlatesHere& plates : setup.bar.stock) {
            const auto count = [&plates](const std::vector<PlateType>& list) { return std::count(list.begin(), list.end(), plates.type); };
            RC_ASSERT(2 * (count(load.bar.eachSide) + count(load.onEach)) <= plates.count);
        }
    });
    QVERIFY(ok);
}

QTEST_APPLESS_MAIN(ReleaseTest)
#include "test_release.moc"
