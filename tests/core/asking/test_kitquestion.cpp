// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/asking/kitquestion.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <algorithm>
#endif

using namespace steelyard;

namespace {

HangTarget target(TargetPlace place, double kg, double tolerance = 2) { return {place, weight(kilograms(kg)), weight(kilograms(tolerance))}; }

LeadMeasurement strap(double length, double mass = 0.3)
{
    LeadMeasurement lead;
    lead.length = metres(length);
    lead.mass = kilograms(mass);
    return lead;
}

/// Two pairs of chains, a pair of bands, two pairs of straps, a rack with places low and high.
std::vector<KitItem> store()
{
    return {samples::item(1, "Long chains", samples::weighed()), samples::item(2, "Heavy chains", samples::gauged()), samples::item(3, "Bands", samples::band()),
            samples::item(4, "Straps", strap(0.62)), samples::item(5, "Short straps", strap(0.3)),
            samples::item(6, "Rack", RackMeasurement{metres(0.4), metres(0.05), 20, {metres(0.05), metres(2.3)}}, false)};
}

KitQuestion asked(const SetupRecord& now, const std::vector<KitItem>& kit, const BarMarks& marks, std::vector<HangTarget> targets, const AllowedKinds& allowed = {})
{
    auto question = kitQuestion(now, kit, marks, allowed, std::move(targets));
    Q_ASSERT(question.ok());
    return *std::move(question);
}

int waysOf(const KitQuestion& q, std::uint64_t number)
{
    return static_cast<int>(std::count_if(q.ways.begin(), q.ways.end(), [&](const HungRecord& way) { return way.item == samples::numbered(number); }));
}

std::optional<NotChosen> leftOut(const KitQuestion& q, std::uint64_t number)
{
    const auto at = std::find_if(q.leftOut.begin(), q.leftOut.end(), [&](const LeftOut& out) { return out.item == samples::numbered(number); });
    return at == q.leftOut.end() ? std::nullopt : std::optional(at->why);
}

}

/// What is asked of the kit that is here, and that an answer is what it says once it hangs.
class KitQuestionTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyWayThatTheKitGives();
    void answersComeTrueOnTheBar_data();
    void answersComeTrueOnTheBar();
    void oneStrapIsTakenOnce();
    void whatMayNotHangIsLeftOut();
    void onlyWhatIsAllowed();
    void whatIsWornStays();
    void asItHangsNowIsAChoice();
    void strengthHasToCoverThePath();
    void refusals();
};

void KitQuestionTest::everyWayThatTheKitGives()
{
    const KitQuestion q = asked(samples::setup(60), store(), samples::marks(0.8, 1.3), {target(TargetPlace::Top, 80)});
    // straight and doubled, by no strap and by each of two
    QCOMPARE(waysOf(q, 1), 6);
    QCOMPARE(waysOf(q, 2), 6);
    // from the low place and from the high one
    QCOMPARE(waysOf(q, 3), 2);
    QVERIFY(q.question.loads.size() > 20);
    QVERIFY(q.question.loadNowIndex && q.question.loads[*q.question.loadNowIndex].load.total == kilograms(60));
}

void KitQuestionTest::answersComeTrueOnTheBar_data()
{
    QTest::addColumn<double>("bottom");
    QTest::addColumn<double>("top");
    QTest::newRow("flat") << 80.0 << 80.0;
    QTest::newRow("a little rise") << 80.0 << 86.0;
    QTest::newRow("a steep rise") << 60.0 << 95.0;
    QTest::newRow("more than the kit has") << 40.0 << 160.0;
    QTest::newRow("help from above") << 100.0 << 110.0;
}

/// The engine's answer to the set-up that is meant is the answer that was given.
void KitQuestionTest::answersComeTrueOnTheBar()
{
    QFETCH(const double, bottom);
    QFETCH(const double, top);
    const auto kit = store();
    const BarMarks marks = samples::marks(0.8, 1.3);
    const SetupRecord now = samples::setup(60);
    const KitQuestion q = asked(now, kit, marks, {target(TargetPlace::Bottom, bottom), target(TargetPlace::Top, top)});
    const HangAnswers answers = whatToHang(q.question);
    QVERIFY(answers.best && answers.isProved);
    const SetupRecord meant = setupOf(now, q, *answers.best);
    const WeighedUp weighed = weighUp(meant, kit, marks, {}, 0);
    QVERIFY(weighed.curve && weighed.curve->ready && !weighed.error && weighed.weakAnchors.empty());
    VERIFY_NEAR(weighed.curve->bottom->value.si(), answers.best->readings[0].value.si(), 1e-9);
    VERIFY_NEAR(weighed.curve->top->value.si(), answers.best->readings[1].value.si(), 1e-9);
    VERIFY_NEAR(weighed.curve->top->giveOrTake.si(), answers.best->readings[1].giveOrTake.si(), 1e-9);
    QCOMPARE(answers.best->isWithin, bottom < 50 ? false : true);
    if (!answers.best->isWithin)
        QVERIFY(answers.failing && answers.next);
}

void KitQuestionTest::oneStrapIsTakenOnce()
{
    auto kit = store();
    std::erase_if(kit, [](const KitItem& item) { return item.id == samples::numbered(5); });
    const KitQuestion q = asked(samples::setup(20), kit, samples::marks(0.8, 1.3), {target(TargetPlace::Bottom, 23), target(TargetPlace::Top, 45)});
    const HangAnswers answers = whatToHang(q.question);
    QVERIFY(answers.best);
    int byStrap = 0;
    for (const std::size_t way : answers.best->wayIndex)
        if (const auto* placing = std::get_if<ChainPlacing>(&q.ways[way].placing))
            byStrap += placing->lead.quantity() > Length{} ? 1 : 0;
    QVERIFY(byStrap <= 1);
}

void KitQuestionTest::whatMayNotHangIsLeftOut()
{
    auto kit = store();
    kit[0].lent = OnLoan{"the club next door", {}};
    kit[1].inspection = Inspection{KitFault::WornLink, "", {}};
    kit[2].pair = false;
    KitItem listed = samples::item(7, "Chains from a list", ChainMeasurement{});
    kit.push_back(listed);
    kit.push_back(samples::item(8, "Short band", samples::band(0.3, {{5, 0.35}, {10, 0.4}, {15, 0.45}})));
    const KitQuestion q = asked(samples::setup(60), kit, samples::marks(0.8, 1.3), {target(TargetPlace::Top, 80)});
    QCOMPARE(leftOut(q, 1), std::optional(NotChosen::NotToBeUsed));
    QCOMPARE(leftOut(q, 2), std::optional(NotChosen::NotToBeUsed));
    QCOMPARE(leftOut(q, 3), std::optional(NotChosen::NoPair));
    QCOMPARE(leftOut(q, 7), std::optional(NotChosen::NotMeasured));
    QCOMPARE(leftOut(q, 8), std::optional(NotChosen::NotFarEnough));
    QVERIFY(q.ways.empty());
    // without a rack no band has a place
    auto bare = store();
    bare.pop_back();
    QCOMPARE(leftOut(asked(samples::setup(60), bare, samples::marks(0.8, 1.3), {target(TargetPlace::Top, 80)}), 3), std::optional(NotChosen::NoAnchor));
}

void KitQuestionTest::onlyWhatIsAllowed()
{
    const auto ways = [](const AllowedKinds& allowed) {
        const KitQuestion q = asked(samples::setup(60), store(), samples::marks(0.8, 1.3), {target(TargetPlace::Top, 80)}, allowed);
        return std::pair(waysOf(q, 1) + waysOf(q, 2), waysOf(q, 3));
    };
    QCOMPARE(ways({true, false, false}), std::pair(12, 0));
    QCOMPARE(ways({false, true, true}), std::pair(0, 2));
    QCOMPARE(ways({false, true, false}), std::pair(0, 1));
    QCOMPARE(ways({false, false, false}), std::pair(0, 0));
}

/// A bench aid is her own and worn: what is asked for comes out with it.
void KitQuestionTest::whatIsWornStays()
{
    auto kit = store();
    kit.push_back(samples::item(9, "Aid", samples::aid(), false));
    SetupRecord now = samples::setup(100, {HungRecord{samples::numbered(9), HungOn::BothSides, AidPlacing{}}});
    const BarMarks marks = samples::marks(0.9, 1.3);
    const KitQuestion q = asked(now, kit, marks, {target(TargetPlace::Bottom, 60), target(TargetPlace::Top, 122)});
    const HangAnswers answers = whatToHang(q.question);
    QVERIFY(answers.best);
    const SetupRecord meant = setupOf(now, q, *answers.best);
    QVERIFY(std::any_of(meant.hung.begin(), meant.hung.end(), [](const HungRecord& hung) { return std::holds_alternative<AidPlacing>(hung.placing); }));
    const WeighedUp weighed = weighUp(meant, kit, marks, {}, 0);
    VERIFY_NEAR(weighed.curve->bottom->value.si(), answers.best->readings[0].value.si(), 1e-9);
}

void KitQuestionTest::asItHangsNowIsAChoice()
{
    ChainPlacing odd = samples::chainOn(0.47);
    const SetupRecord now = samples::setup(60, {samples::hung(1, odd)});
    const auto kit = store();
    const BarMarks marks = samples::marks(0.8, 1.3);
    const WeighedUp hangs = weighUp(now, kit, marks, {}, 0);
    const KitQuestion q = asked(now, kit, marks, {target(TargetPlace::Bottom, asMass(hangs.curve->bottom->value).si()), target(TargetPlace::Top, asMass(hangs.curve->top->value).si())});
    QCOMPARE(waysOf(q, 1), 7);
    const HangAnswers answers = whatToHang(q.question);
    // nothing to take off and nothing to put on
    QCOMPARE(answers.best->changeCount, 0);
    QCOMPARE(setupOf(now, q, *answers.best).hung, now.hung);
}

/// Her pulls cover the path of none of the loads: said, and not answered past them.
void KitQuestionTest::strengthHasToCoverThePath()
{
    const auto curve = [](double from, double to) {
        const std::vector<IsometricReading> pulls{{metres(from), newtons(900), {}}, {metres((from + to) / 2), newtons(1000), {}}, {metres(to), newtons(1300), {}}};
        return *StrengthCurve::of(pulls);
    };
    const auto whole = kitQuestion(samples::setup(60), store(), samples::marks(0.8, 1.3), {}, {target(TargetPlace::Mean, 80)}, curve(0.75, 1.35));
    QVERIFY(whole && whole->question.strength);
    const auto answer = whatToHang(whole->question).best;
    QVERIFY(answer && answer->level && answer->level->variationRatio < 0.1);
    const auto part = kitQuestion(samples::setup(60), store(), samples::marks(0.8, 1.3), {}, {target(TargetPlace::Mean, 80)}, curve(1.1, 1.35));
    QVERIFY(!part);
    QVERIFY((part.error() == Error{Refusal::TooFewPoints, "strength"}));
}

void KitQuestionTest::refusals()
{
    // no marks yet
    QVERIFY(!kitQuestion(samples::setup(60), store(), BarMarks{}, {}, {target(TargetPlace::Top, 80)}).ok());
    SetupRecord odd = samples::setup(60);
    odd.bar.stock.push_back({{kilograms(-1), metres(0.4), metres(0.03)}, 2});
    QVERIFY(!kitQuestion(odd, store(), samples::marks(0.8, 1.3), {}, {target(TargetPlace::Top, 80)}).ok());
}

QTEST_APPLESS_MAIN(KitQuestionTest)
#include "test_kitquestion.moc"
