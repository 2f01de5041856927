// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/bilateral.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"
#include "tests/core/refused.h"

#include <limits>
#include <rapidcheck.h>

using namespace steelyard;
using tests::Given;
using tests::whatOf;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

double tenths(int from, int to) { return *rc::gen::inRange(from, to) / 10.0; }
Estimate<Mass> kg(double mass, double u = 0) { return within(kilograms(mass), kilograms(u)); }

Result<BilateralIndex> exact(double both, double left, double right) { return bilateralIndex({exactly(both), exactly(left), exactly(right)}); }

BilateralIndex known(double percent, double u, double freedom = knownExactly)
{
    return {{exactly(1.0), exactly(1.0), exactly(1.0)}, within(percent, u, ownSource, freedom)};
}

const TestCondition pull{Measured::GrossForce, BodyInTest::Lifted, 1};

TestCondition with(TestCondition condition, Measured what) { condition.what = what; return condition; }
TestCondition with(TestCondition condition, BodyInTest body) { condition.body = body; return condition; }
TestCondition with(TestCondition condition, std::uint32_t methodNumber) { condition.methodNumber = methodNumber; return condition; }

std::string codeAndWhat(const std::optional<Error>& error)
{
    return error ? std::to_string(static_cast<int>(error->code)) + error->what : "";
}
std::string notComparable(const char* what) { return codeAndWhat(Error{Refusal::NotComparable, what}); }

}

class TestBilateral : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// SD(q) = q√(CVb² + (CVr²R² + CVl²L²)/S²), and the same by small steps.
    void uAgainstSmallStepsAndTheFormula()
    {
        QVERIFY(rc::check("index of scores", [] {
            const Given both{tenths(5000, 30000), tenths(10, 900)}, left{tenths(3000, 15000), tenths(10, 900)}, right{tenths(3000, 15000), tenths(10, 900)};
            const auto index = *bilateralIndex({tests::as<double>(both), tests::as<double>(left), tests::as<double>(right)});
            const auto formula = [](const std::vector<double>& x) { return 100 * x[0] / (x[1] + x[2]) - 100; };
            RC_ASSERT(tests::nearShare(index.percent.u(), tests::numericU(formula, {both, left, right}), 1e-6));
            const double sum = left.value + right.value, ratio = both.value / sum;
            RC_ASSERT(tests::nearShare(index.percent.u(), 100 * ratio * std::sqrt(std::pow(both.u / both.value, 2) + (right.u * right.u + left.u * left.u) / (sum * sum)), 1e-12));
            // another unit, or left for right, changes nothing
            RC_ASSERT(tests::near(exact(both.value * 9.8, right.value * 9.8, left.value * 9.8)->percent.number(), index.percent.number(), 1e-10));
        }));
    }

    /// The body is weighed once: its error goes through all three loads.
    void bodysErrorIsShared()
    {
        QVERIFY(rc::check("index of lifted loads", [] {
            const Given both{tenths(0, 2500), tenths(1, 50)}, left{tenths(0, 1500), tenths(1, 50)}, right{tenths(0, 1500), tenths(1, 50)}, body{tenths(400, 1300), tenths(1, 30)};
            const auto index = *bilateralIndexOfLoads({tests::as<Mass>(both), tests::as<Mass>(left), tests::as<Mass>(right)}, tests::as<Mass>(body), BodyInTest::Lifted);
            const auto formula = [](const std::vector<double>& x) { return 100 * (x[0] + x[3]) / (x[1] + x[2] + 2 * x[3]) - 100; };
            RC_ASSERT(tests::nearShare(index.percent.u(), tests::numericU(formula, {both, left, right, body}), 1e-5));
            RC_ASSERT(tests::near(index.percent.number(), formula({both.value, left.value, right.value, body.value}), 1e-10));
            RC_ASSERT(tests::nearShare(index.scores.left.number(), left.value + body.value, 1e-14));
            // the heavier the body, the nearer the index is to −50, where nothing but the body is lifted
            const double heavier = bilateralIndexOfLoads({kg(both.value), kg(left.value), kg(right.value)}, kg(body.value + 50), BodyInTest::Lifted)->percent.number();
            RC_ASSERT(std::abs(heavier + 50) <= std::abs(index.percent.number() + 50) + 1e-9);
        }));
    }

    /// The same squat, once as a deficit and once as a facilitation, by what is forgotten.
    void whatIsForgottenTurnsTheSign()
    {
        const BilateralLoads squat{kg(160), kg(70), kg(70)};
        QVERIFY(bilateralIndexOfLoads(squat, kg(80), BodyInTest::Lifted)->percent.number() < 0);
        QVERIFY(bilateralIndexOfLoads(squat, kg(80), BodyInTest::NotLifted)->percent.number() > 0);
        QCOMPARE(bilateralIndexOfLoads(squat, kg(80), BodyInTest::RearFootSupported).error().code, Refusal::RearFootSupported);
    }

    void refused()
    {
        QCOMPARE(whatOf(exact(0, 1, 1)), std::string("both"));
        QCOMPARE(whatOf(exact(1, -1, 1)), std::string("left"));
        QCOMPARE(whatOf(exact(1, 1, notANumber)), std::string("right"));
        QCOMPARE(whatOf(bilateralIndexOfLoads({kg(10), kg(0), kg(10)}, kg(80), BodyInTest::NotLifted)), std::string("left"));
        QVERIFY(bilateralIndexOfLoads({kg(10), kg(0), kg(10)}, kg(80), BodyInTest::Lifted));
        QCOMPARE(whatOf(bilateralIndexOfLoads({kg(10), kg(-1), kg(10)}, kg(80), BodyInTest::Lifted)), std::string("left"));
        QCOMPARE(whatOf(bilateralIndexOfLoads({kg(10), kg(5), kg(10)}, kg(0), BodyInTest::Lifted)), std::string("body"));
        QCOMPARE(whatOf(bilateralVerdict(known(5, 1), 0)), std::string("tries"));
    }

    void whatCannotBeCompared()
    {
        QCOMPARE(codeAndWhat(whyNoIndex(pull, pull, pull)), std::string());
        QCOMPARE(codeAndWhat(whyNoIndex(pull, with(pull, BodyInTest::RearFootSupported), pull)), codeAndWhat(Error{Refusal::RearFootSupported, "rear foot"}));
        QCOMPARE(codeAndWhat(whyNoIndex(pull, with(pull, Measured::NetForce), pull)), notComparable("what is measured"));
        QCOMPARE(codeAndWhat(whyNoIndex(pull, pull, with(pull, BodyInTest::NotLifted))), notComparable("body"));
        QCOMPARE(codeAndWhat(whyNoIndex(with(pull, 2u), pull, pull)), notComparable("method"));
        const auto net = with(pull, Measured::NetForce), sitting = with(net, BodyInTest::NotLifted), hop = with(pull, Measured::Time);
        QCOMPARE(codeAndWhat(whyNoIndex(net, net, net)), notComparable("net force"));
        QCOMPARE(codeAndWhat(whyNoIndex(sitting, sitting, sitting)), std::string());
        QCOMPARE(codeAndWhat(whyNoIndex(hop, hop, hop)), notComparable("time"));
    }

    void callsByItsOwnNoise()
    {
        const auto deficit = *bilateralVerdict(known(-8, 3), 3), facilitation = *bilateralVerdict(known(8, 3), 3), close = *bilateralVerdict(known(-5.5, 3), 3), far = *bilateralVerdict(known(-1, 3), 3);
        QCOMPARE(deficit.call, std::optional(BilateralCall::Deficit));
        QVERIFY(!deficit.triesNeededCount);
        QCOMPARE(facilitation.call, std::optional(BilateralCall::Facilitation));
        QCOMPARE(close.call, std::optional(BilateralCall::TooClose));
        // 3·1.96/5.5 squared is 1.143, times three tries: four
        QCOMPARE(close.triesNeededCount, std::optional(4));
        QCOMPARE(far.call, std::optional(BilateralCall::TooClose));
        QVERIFY(!far.triesNeededCount);
        VERIFY_NEAR_SHARE(close.giveOrTakePercent, 3 * 1.959963984540054, 1e-14);
        QVERIFY(!bilateralVerdict(known(-8, 0), 3)->call);
    }

    /// Two tries of each know their scatter badly: what is clear by a known noise is not by theirs.
    void fewTriesWidenTheGiveOrTake()
    {
        const auto scoreOfTries = [](std::vector<double> tries) { return *estimateOf(*scoreOf(tries, ScoreKind::MeanOfTries, Better::Higher)); };
        const auto index = *bilateralIndex({scoreOfTries({1900, 1960}), scoreOfTries({1020, 1050}), scoreOfTries({1010, 1040})});
        QVERIFY(index.percent.degreesOfFreedom() < 4);
        const auto byTries = *bilateralVerdict(index, 2), asKnown = *bilateralVerdict(known(index.percent.number(), index.percent.u()), 2);
        QCOMPARE(asKnown.call, std::optional(BilateralCall::Deficit));
        QCOMPARE(byTries.call, std::optional(BilateralCall::TooClose));
        QVERIFY(byTries.triesNeededCount && *byTries.triesNeededCount <= 4);
    }
};

QTEST_APPLESS_MAIN(TestBilateral)
#include "test_bilateral.moc"
