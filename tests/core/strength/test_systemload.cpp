// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/strength/systemload.h"
#include "tests/core/near.h"

#include <cmath>
#include <limits>
#include <random>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Uncertain<Mass> mass(double kg, double u = 0) { return {kilograms(kg), kilograms(u)}; }
BodyLoad body(double kg, double u = 0, std::uint64_t weighing = 0) { return {mass(kg, u), {}, SourceId{weighing}}; }

}
Q_DECLARE_METATYPE(BodyLoad)
Q_DECLARE_METATYPE(Uncertain<Mass>)

class TestSystemLoad : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void chinsWithABeltAndWithABand()
    {
        const auto belt = *systemLoad(mass(20, 0.2), body(72, 0.3));
        QCOMPARE(belt.value, kilograms(92));
        VERIFY_NEAR(belt.u.si(), std::hypot(0.2, 0.3), 1e-15);
        QCOMPARE(systemLoad(mass(-25), body(72))->value, kilograms(47));
    }

    void feetBearSomeOfARow()
    {
        const BodyLoad row{mass(72, 0.3), mass(31, 0.4), ownSource};
        QCOMPARE(row.lifted().value, kilograms(41));
        VERIFY_NEAR(row.lifted().u.si(), 0.5, 1e-15);
        QCOMPARE(systemLoad(mass(0), row)->value, kilograms(41));
    }

    /// 72 kg with 30 on the belt, once: 80 % of 102 is 81.6, so 9.6 on the belt; 60 % is 61.2, so help of 10.8.
    void percentMayMeanHelp()
    {
        const SystemMax max{mass(102, 2.5), {}, ownSource};
        const auto more = *externalFor(80, max, body(72)), less = *externalFor(60, max, body(72));
        VERIFY_NEAR(more.load.value.si(), 9.6, 1e-12);
        QVERIFY(!more.isAssistance);
        VERIFY_NEAR(less.load.value.si(), -10.8, 1e-12);
        QVERIFY(less.isAssistance);
        VERIFY_NEAR(less.load.u.si(), 1.5, 1e-12);
        // percent of what hangs alone would have said 18 kg on the belt
        QVERIFY(std::abs(less.load.value.si() - 18) > 28);
    }

    /// Weighed once, the body's error counts by what is left of it: 80 % of it came with the maximum.
    void oneWeighingCountsOnce()
    {
        const auto max = *systemMax(*oneRepMaxFrom(TestedMax{*systemLoad(mass(30), body(72, 1, 7)), kilograms(0.001)}), mass(30), body(72, 1, 7));
        VERIFY_NEAR(max.uOfBody.si(), 1, 1e-12);
        VERIFY_NEAR(externalFor(80, max, body(72, 1, 7))->load.u.si(), 0.2, 1e-5);
        VERIFY_NEAR(externalFor(80, max, body(72, 1, 8))->load.u.si(), std::hypot(0.8, 1), 1e-5);
        VERIFY_NEAR(externalFor(80, {max.total, max.uOfBody, ownSource}, body(72, 1))->load.u.si(), std::hypot(0.8, 1), 1e-5);
    }

    /// The same by drawing the errors anew: body weighed once, its part in an estimate of five repetitions among it.
    void errorsDrawnAnew()
    {
        const BodyLoad today = body(72, 0.8, 7);
        const Uncertain<Mass> belt = mass(20, 0.4);
        const auto system = *systemLoad(belt, today);
        const OneRepMax max = *oneRepMaxFrom(RepsSet{system, 5, 1, 0});
        const auto said = *externalFor(70, *systemMax(max, belt, today), today);
        const Mass range = max.middle.u * std::sqrt(1 - std::pow(max.middle.value / system.value * (system.u / max.middle.u), 2));
        std::mt19937 random(1795);
        std::normal_distribution<double> one;
        constexpr int draws = 200'000;
        double sum = 0, squares = 0;
        for (int i = 0; i < draws; ++i) {
            const double weighed = 72 + 0.8 * one(random), hung = 20 + 0.4 * one(random);
            const double factor = (max.middle.value / system.value), drawn = 0.7 * (factor * (weighed + hung) + range.si() * one(random)) - weighed;
            sum += drawn;
            squares += drawn * drawn;
        }
        const double mean = sum / draws;
        VERIFY_NEAR(said.load.value.si(), mean, 0.03);
        VERIFY_NEAR_SHARE(said.load.u.si(), std::sqrt(squares / draws - mean * mean), 0.01);
    }

    void refusals_data()
    {
        QTest::addColumn<Uncertain<Mass>>("external");
        QTest::addColumn<BodyLoad>("body");
        QTest::addColumn<QString>("what");
        QTest::newRow("no body") << mass(20) << body(0) << "body";
        QTest::newRow("a body that is no number") << mass(20) << body(notANumber) << "body";
        QTest::newRow("a body whose u is below 0") << mass(20) << body(72, -1) << "body";
        QTest::newRow("feet that bear all") << mass(20) << BodyLoad{mass(72), mass(72), ownSource} << "borne by the feet";
        QTest::newRow("feet that bear less than nothing") << mass(20) << BodyLoad{mass(72), mass(-1), ownSource} << "borne by the feet";
        QTest::newRow("help that leaves nothing") << mass(-72) << body(72) << "external load";
        QTest::newRow("a belt that is no number") << mass(notANumber) << body(72) << "external load";
    }
    void refusals()
    {
        QFETCH(Uncertain<Mass>, external);
        QFETCH(BodyLoad, body);
        QFETCH(QString, what);
        const Error wanted{Refusal::OutOfRange, what.toStdString()};
        const auto load = systemLoad(external, body);
        QVERIFY(!load);
        QCOMPARE(load.error(), wanted);
        QCOMPARE(systemMax(OneRepMax{mass(90), mass(100), mass(110), false}, external, body).error(), wanted);
        if (what == "external load")
            return;
        QCOMPARE(externalFor(80, {mass(100), {}, ownSource}, body).error(), wanted);
    }

    void percentagesAndMaximaAreLookedAt()
    {
        for (const double percent : {0.0, -5.0, 301.0, notANumber})
            QCOMPARE(externalFor(percent, {mass(100), {}, ownSource}, body(72)).error(), (Error{Refusal::OutOfRange, "percent"}));
        QCOMPARE(externalFor(80, {mass(0), {}, ownSource}, body(72)).error(), (Error{Refusal::OutOfRange, "base"}));
        QCOMPARE(systemMax(OneRepMax{}, mass(20), body(72)).error(), (Error{Refusal::OutOfRange, "base"}));
    }

    void whatComesOutGoesBackIn()
    {
        QVERIFY(rc::check("the external load of a percentage makes that percentage of the system", [] {
            const auto number = [](int from, int to) { return *rc::gen::inRange(from, to) / 10.0; };
            const BodyLoad today{mass(number(350, 1300)), mass(number(0, 300)), ownSource};
            const SystemMax max{mass(number(300, 2500), number(0, 50)), {}, ownSource};
            const double percent = number(100, 1100);
            const auto external = *externalFor(percent, max, today);
            RC_ASSERT(external.isAssistance == (external.load.value < Mass{}));
            const auto system = systemLoad(external.load, today);
            RC_ASSERT(system.ok());
            RC_ASSERT(tests::nearShare(system->value.si(), percent / 100 * max.total.value.si(), 1e-12));
            RC_ASSERT(tests::near(external.load.u.si(), percent / 100 * max.total.u.si(), 1e-12));
        }));
    }
};

QTEST_APPLESS_MAIN(TestSystemLoad)
#include "test_systemload.moc"
