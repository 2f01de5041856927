// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/resistance/pullsum.h"
#include "core/work/desk.h"

#include "tests/core/near.h"
#include "tests/core/work/athlete/somebody.h"
#include "tests/core/work/gates/gating.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;
using gating::overheadPress, gating::squat, gating::today, gating::tyreFlip;
using std::chrono::days;

namespace {

const std::vector<KitItem> kit = {samples::item(1, "Long chain", samples::weighed()), samples::item(2, "Wide band", samples::band()),
                                  samples::item(3, "Aid", samples::aid(), false), samples::item(4, "Short band", samples::band(0.4, {{5, 0.5}, {10, 0.6}, {15, 0.7}}))};
const BarMarks marks = samples::marks(0.77, 1.27);

GateLifter adult(LiftId lift = squat, std::optional<double> lowestKg = 200)
{
    GateLifter lifter;
    lifter.lift = lift;
    lifter.day = today;
    lifter.facts = gating::adult(lift);
    if (lowestKg) {
        lifter.maximum = gating::maximumOf(lift, *lowestKg);
        lifter.deadlift = gating::maximumOf(deadliftId, *lowestKg);
    }
    return lifter;
}

WeighedUp weigh(const SetupRecord& setup, std::vector<CautionCode> lookedOver = {})
{
    return weighUp(setup, kit, marks, lookedOver);
}

SetupGate gateOf(const GateLifter& lifter, const SetupRecord& setup, std::vector<CautionCode> lookedOver = {}, std::vector<ReasonKey> reasons = {})
{
    return setupGate(lifter, setup, weigh(setup, std::move(lookedOver)), std::nullopt, reasons);
}

std::vector<GateCode> codes(const SetupGate& gate)
{
    std::vector<GateCode> all;
    for (const GateReason& one : gate.reasons)
        all.push_back(one.reason.key.code);
    return all;
}

const SetupRecord iron = samples::setup(60);
const SetupRecord chained = samples::setup(60, {samples::hung(1, samples::chainOn(0.1))});
const SetupRecord chainedAndBanded = samples::setup(60, {samples::hung(1, samples::chainOn(0.1)), samples::hung(2, samples::bandAt(0))});

}

/// A set-up and its lifter at the gates: one question for each method that hangs, at the load where it is worst.
class SetupGateTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void methodsOfWhatHangs();
    void theLoadAtItsWorst();
    void anUnknownPullIsNoLoad();
    void ironForAnAdultIsPermitted();
    void kitCautionsStandOnce();
    void everyMethodHasItsSay();
    void oneReasonIsSaidOnce();
    void lookedOverForEachMethod();
    void cautionsOfTheLiftStandByThemselves();
    void comparedAtTheUnfavourableEnd();
    void aTyreGoesByTheDeadlift();
    void whatCannotBeAskedIsNotPermitted();
    void readinessOfBoth_data();
    void readinessOfBoth();
    void lifterFromTheBook();
    void onTheDesk();
    void lookedOverOnTheDesk();
    void moreIsLookedOverAgain();
};

void SetupGateTest::methodsOfWhatHangs()
{
    QCOMPARE(methodsHung(iron), std::vector{Method::Plain});
    QCOMPARE(methodsHung(chained), std::vector{Method::Chains});
    AidPlacing worn;
    const SetupRecord all = samples::setup(60, {samples::hung(3, worn), samples::hung(2, samples::bandAt(2.4, true)), samples::hung(2, samples::bandAt(0)),
                                                samples::hung(1, samples::chainOn(0.1)), samples::hung(1, samples::chainOn(0.2))});
    QCOMPARE(methodsHung(all), (std::vector{Method::Chains, Method::BandsBelow, Method::BandsAbove, Method::BenchAid}));
}

void SetupGateTest::theLoadAtItsWorst()
{
    const WeighedUp plain = weigh(iron), up = weigh(chained), down = weigh(samples::setup(60, {samples::hung(2, samples::bandAt(2.4, true))}));
    VERIFY_NEAR(loadAtWorst(plain)->value.si(), 60.0, 1e-9);
    // chains and bands from below are heaviest at the top
    const Reading top = *up.curve->top;
    VERIFY_NEAR(loadAtWorst(up)->value.si(), asMass(top.value).si(), 1e-9);
    VERIFY_NEAR(loadAtWorst(up)->giveOrTake.si(), asMass(top.giveOrTake).si(), 1e-9);
    const LoadAtWorst banded = *loadAtWorst(weigh(chainedAndBanded));
    QVERIFY(banded.value > loadAtWorst(up)->value && banded.giveOrTake > loadAtWorst(up)->giveOrTake);
    // bands from above help most at the bottom, so that it is worst higher up
    QVERIFY(down.curve && down.curve->ready);
    // by the factor for pictures the place is found, which is within 1e-5 of the exact one
    const LoadAtWorst worst = *loadAtWorst(down);
    const PullSum sum(*down.setup);
    for (const CurveSample& sample : down.curve->samples)
        QVERIFY(asMass(sum.at(sample.height).unfavourable()) <= worst.value + (1 + 2e-5) * worst.giveOrTake);
    QVERIFY(loadAtWorst(down)->value > asMass(down.curve->bottom->value));
}

void SetupGateTest::anUnknownPullIsNoLoad()
{
    const WeighedUp past = weigh(samples::setup(60, {samples::hung(4, samples::bandAt(0))}));
    QVERIFY(past.curve && !past.curve->ready);
    QVERIFY(!loadAtWorst(past));
    QVERIFY(!loadAtWorst(weighUp(iron, kit, BarMarks{}, {})));
    QVERIFY2(!loadAtWorst(weighUp(iron, kit, marks, {}, 0)), "no curve was drawn");
}

void SetupGateTest::ironForAnAdultIsPermitted()
{
    for (const auto& lowest : {std::optional(200.0), std::optional<double>()}) {
        const SetupGate gate = gateOf(adult(squat, lowest), iron);
        QVERIFY(gate.permission == Permission::Permitted && gate.reasons.empty() && !gate.error);
    }
}

void SetupGateTest::kitCautionsStandOnce()
{
    const SetupGate waiting = gateOf(adult(), chainedAndBanded);
    QVERIFY(waiting.permission == Permission::Caution);
    QVERIFY2(waiting.reasons.empty(), "the kit's own cautions say it");
    QVERIFY(gateOf(adult(), chainedAndBanded, {CautionCode::Chains}).permission == Permission::Caution);
    QVERIFY(gateOf(adult(), chainedAndBanded, {CautionCode::Chains, CautionCode::BandsBelow}).permission == Permission::Permitted);
    // one looked over stands for no other
    QVERIFY(gateOf(adult(), chainedAndBanded, {CautionCode::Chains, CautionCode::BandsAbove}).permission == Permission::Caution);
}

void SetupGateTest::everyMethodHasItsSay()
{
    GateLifter lifter = adult();
    lifter.facts.statuses = {gating::status(Fitness::Some)};
    lifter.facts.statuses[0].notMethods = {Method::BandsBelow};
    QVERIFY(gateOf(lifter, chained, {CautionCode::Chains}).permission == Permission::Permitted);
    const SetupGate gate = gateOf(lifter, chainedAndBanded, {CautionCode::Chains, CautionCode::BandsBelow});
    QVERIFY(gate.permission == Permission::Not);
    QCOMPARE(codes(gate), std::vector{GateCode::StatusNames});
    QCOMPARE(gate.reasons[0].methods, std::vector{Method::BandsBelow});
}

void SetupGateTest::oneReasonIsSaidOnce()
{
    GateLifter lifter = adult(squat, std::nullopt);
    lifter.facts.statuses = {gating::status(Fitness::None)};
    const SetupGate gate = gateOf(lifter, chainedAndBanded);
    QCOMPARE(codes(gate), (std::vector{GateCode::StatusNone, GateCode::MaximumMissing}));
    for (const GateReason& one : gate.reasons)
        QCOMPARE(one.methods, (std::vector{Method::Chains, Method::BandsBelow}));
    QVERIFY(gate.permission == Permission::Not);
    QCOMPARE(keysOf(gate.reasons[1]), (std::vector<ReasonKey>{{GateCode::MaximumMissing, Method::Chains, {}}, {GateCode::MaximumMissing, Method::BandsBelow, {}}}));
}

void SetupGateTest::lookedOverForEachMethod()
{
    const GateLifter lifter = adult(squat, std::nullopt);
    const std::vector looked{CautionCode::Chains, CautionCode::BandsBelow};
    const ReasonKey chains{GateCode::MaximumMissing, Method::Chains, {}}, bands{GateCode::MaximumMissing, Method::BandsBelow, {}};
    const SetupGate half = gateOf(lifter, chainedAndBanded, looked, {chains});
    QVERIFY(half.permission == Permission::Caution && !half.reasons[0].reason.lookedOver);
    const SetupGate whole = gateOf(lifter, chainedAndBanded, looked, {chains, bands});
    QVERIFY(whole.permission == Permission::Permitted && whole.reasons[0].reason.lookedOver);
}

void SetupGateTest::cautionsOfTheLiftStandByThemselves()
{
    const SetupGate gate = gateOf(adult(overheadPress), chained, {CautionCode::Chains});
    QCOMPARE(codes(gate), std::vector{GateCode::CautionWaits});
    QCOMPARE(gate.reasons[0].methods, std::vector{Method::Overhead});
    QVERIFY(gate.permission == Permission::Caution);
    QVERIFY(gateOf(adult(overheadPress), chained, {CautionCode::Chains}, keysOf(gate.reasons[0])).permission == Permission::Permitted);
}

void SetupGateTest::comparedAtTheUnfavourableEnd()
{
    const LoadAtWorst load = *loadAtWorst(weigh(chained));
    const double worst = (load.value + load.giveOrTake).si(), gram = 0.001;
    QVERIFY(load.giveOrTake.si() > 10 * gram);
    const std::vector looked{CautionCode::Chains};
    QVERIFY(gateOf(adult(squat, worst + gram), chained, looked).permission == Permission::Permitted);
    const SetupGate over = gateOf(adult(squat, worst - gram), chained, looked);
    QCOMPARE(codes(over), std::vector{GateCode::OverMaximum});
    QVERIFY(over.permission == Permission::Caution);
    VERIFY_NEAR(*over.reasons[0].reason.percent, worst / (worst - gram) * 100, 1e-9);
    // a minor whom nobody approved does no maximal lift
    GateLifter minor = adult(squat, worst - gram);
    minor.facts.birthYear = std::chrono::year(2011);
    QVERIFY(gateOf(minor, chained, looked).permission == Permission::Not);
    minor.maximum = gating::maximumOf(squat, worst + gram);
    QVERIFY(gateOf(minor, chained, looked).permission == Permission::Permitted);
}

void SetupGateTest::aTyreGoesByTheDeadlift()
{
    GateLifter lifter = adult(tyreFlip, 200);
    lifter.maximum.reset();
    QCOMPARE(codes(gateOf(lifter, iron)), std::vector{GateCode::CautionWaits});
    lifter.deadlift = gating::maximumOf(deadliftId, 80);
    QCOMPARE(codes(gateOf(lifter, iron)), (std::vector{GateCode::OverCap, GateCode::CautionWaits}));
    // the lift's own maximum says nothing of it
    lifter.maximum = gating::maximumOf(tyreFlip, 500);
    lifter.deadlift.reset();
    QCOMPARE(codes(gateOf(lifter, iron)), (std::vector{GateCode::MaximumMissing, GateCode::CautionWaits}));
}

void SetupGateTest::whatCannotBeAskedIsNotPermitted()
{
    GateLifter lifter = adult();
    lifter.maximum->day = today + days(1);
    const SetupGate gate = gateOf(lifter, iron);
    QVERIFY(gate.permission == Permission::Not && gate.error && gate.reasons.empty());
    QVERIFY(gate.error->code == Refusal::OutOfRange);
}

void SetupGateTest::readinessOfBoth_data()
{
    QTest::addColumn<int>("kitSays");
    QTest::addColumn<int>("permitted");
    QTest::addColumn<int>("caution");
    QTest::addColumn<int>("forbidden");
    const auto row = [](const char* name, Readiness kitSays, Readiness permitted, Readiness caution, Readiness forbidden) {
        QTest::newRow(name) << int(kitSays) << int(permitted) << int(caution) << int(forbidden);
    };
    using enum Readiness;
    row("ready", Ready, Ready, LookOver, NotToBeUsed);
    row("look over", LookOver, LookOver, LookOver, NotToBeUsed);
    row("not to be used", NotToBeUsed, NotToBeUsed, NotToBeUsed, NotToBeUsed);
    row("pull unknown", PullUnknown, PullUnknown, PullUnknown, NotToBeUsed);
    row("marks missing", MarksMissing, MarksMissing, MarksMissing, NotToBeUsed);
    row("refused", Refused, Refused, Refused, Refused);
}

void SetupGateTest::readinessOfBoth()
{
    QFETCH(int, kitSays);
    QFETCH(int, permitted);
    QFETCH(int, caution);
    QFETCH(int, forbidden);
    const auto both = [&](Permission permission) { return int(gatedReadiness(static_cast<Readiness>(kitSays), permission)); };
    QCOMPARE(both(Permission::Permitted), permitted);
    QCOMPARE(both(Permission::Caution), caution);
    QCOMPARE(both(Permission::Not), forbidden);
}

void SetupGateTest::lifterFromTheBook()
{
    keeping::Device device;
    const RecordId ida = somebody::adult(device);
    QVERIFY(!gateLifter(device.book, ida, LiftId{}, device.today));
    QVERIFY(!gateLifter(device.book, samples::numbered(77), squat, device.today));
    QVERIFY(!gateLifter(device.book, {}, squat, device.today));
    const auto lifter = gateLifter(device.book, ida, squat, device.today);
    QVERIFY(lifter && lifter->lift == squat && lifter->day == device.today);
    QVERIFY(lifter->facts == *gateFacts(device.book, ida, squat));
    QVERIFY(!lifter->maximum && !lifter->deadlift);
}

void SetupGateTest::onTheDesk()
{
    Desk desk(samples::counted());
    desk.replaceAll(marks, kit, iron);
    QVERIFY(desk.readiness() == Readiness::Ready && !desk.lifter());
    int told = 0;
    const Subscription count = desk.onChanged([&told] { ++told; });
    GateLifter lifter = adult();
    lifter.facts.statuses = {gating::status(Fitness::None)};
    desk.setLifter(lifter);
    desk.setLifter(lifter);
    QCOMPARE(told, 1);
    QVERIFY(desk.readiness() == Readiness::NotToBeUsed);
    QVERIFY2(desk.answer().readiness == Readiness::Ready, "nothing is wrong with what hangs");
    // nobody, and no gate
    desk.setLifter(std::nullopt);
    QVERIFY(desk.readiness() == Readiness::Ready && desk.gate().reasons.empty());
    desk.setLifter(lifter);
    desk.replaceAll(marks, kit, iron);
    QVERIFY(!desk.lifter() && desk.readiness() == Readiness::Ready);
}

void SetupGateTest::lookedOverOnTheDesk()
{
    Desk desk(samples::counted());
    desk.replaceAll(marks, kit, iron);
    desk.setLifter(adult(overheadPress));
    QVERIFY(desk.readiness() == Readiness::LookOver);
    desk.lookOverReason(7);
    QVERIFY(desk.readiness() == Readiness::LookOver);
    desk.lookOverReason(0);
    QVERIFY(desk.readiness() == Readiness::Ready);
    desk.stepLoad(true);
    QVERIFY2(desk.readiness() == Readiness::Ready, "the load is another, the lift the same");
    // something else is known of her, or something else hangs
    GateLifter later = adult(overheadPress);
    later.day += days(1);
    desk.setLifter(later);
    QVERIFY(desk.readiness() == Readiness::LookOver);
    desk.lookOverReason(0);
    desk.hang(samples::hung(1, samples::chainOn(0.1)));
    desk.lookOver(CautionCode::Chains);
    QVERIFY(desk.readiness() == Readiness::LookOver);
    desk.lookOverReason(0);
    QVERIFY(desk.readiness() == Readiness::Ready);
    // what forbids is no caution
    later.facts.statuses = {gating::status(Fitness::None)};
    desk.setLifter(later);
    desk.lookOverReason(0);
    QVERIFY(desk.readiness() == Readiness::NotToBeUsed && !desk.gate().reasons[0].reason.lookedOver);
}

void SetupGateTest::moreIsLookedOverAgain()
{
    Desk desk(samples::counted());
    desk.replaceAll(marks, kit, samples::setup(100));
    desk.setLifter(adult(squat, 90));
    QCOMPARE(codes(desk.gate()), std::vector{GateCode::OverMaximum});
    desk.lookOverReason(0);
    QVERIFY(desk.readiness() == Readiness::Ready);
    desk.stepLoad(false);
    QVERIFY2(desk.readiness() == Readiness::Ready, "less");
    desk.stepLoad(true);
    QVERIFY2(desk.readiness() == Readiness::LookOver, "more than before");
}

QTEST_APPLESS_MAIN(SetupGateTest)
#include "test_setupgate.moc"
