// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/weighing.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"
#include "tests/core/refused.h"

#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;
using tests::Given;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Scale scale(double step, double share = 0, double accuracy = 0, std::uint64_t id = 0)
{
    return {kilograms(step), share, kilograms(accuracy), SourceId{id}};
}

/// By its ends, in SI: readings, insets, span.
double byEnds(const std::vector<double>& x)
{
    return (x[0] * (x[4] - x[2]) + x[1] * (x[4] - x[3])) / x[4];
}

}

class TestWeighing : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// JCGM 100:2008, 4.3.7, by hand.
    void oneReading()
    {
        const auto shown = *readingOf(scale(0.5, 0.01), kilograms(40));
        QCOMPARE(shown.value, kilograms(40));
        VERIFY_NEAR_SHARE(shown.u().si(), std::sqrt(0.25 / 12 + 0.16 / 3), 1e-14);
        VERIFY_NEAR_SHARE(readingOf(scale(0.5, 0.01, 0.3), kilograms(40))->u().si(), std::sqrt(0.25 / 12 + 0.49 / 3), 1e-14);
        VERIFY_NEAR_SHARE(readingOf(scale(0.5, 0.01, 0.3), kilograms(40))->u().si(), scaleReadingUncertainty(0.5, 0.7), 1e-14);
        QCOMPARE(readingOf(scale(0), kilograms(40))->u(), kilograms(0));
    }

    /// Three readings 40, 41, 42: s = 1, so 1/√3 with two degrees of freedom, beside step and accuracy.
    void severalReadings()
    {
        const std::vector<Mass> shown{kilograms(40), kilograms(41), kilograms(42)};
        const auto mean = *meanReadingOf(scale(0.5, 0.01), shown);
        QCOMPARE(mean.value, kilograms(41));
        VERIFY_NEAR_SHARE(mean.u().si(), std::sqrt(1.0 / 3 + 0.25 / 12 + 0.41 * 0.41 / 3), 1e-14);
        VERIFY_NEAR_SHARE(meanReadingOf(scale(0), shown)->degreesOfFreedom(), 2, 1e-14);
        QVERIFY(mean.degreesOfFreedom() > 2);
        const std::vector<Mass> alike(4, kilograms(40));
        QCOMPARE(meanReadingOf(scale(0.5), alike)->u(), readingOf(scale(0.5), kilograms(40))->u());
    }

    void oneScaleIsOffOneWay()
    {
        const auto first = *readingOf(scale(0, 0.01, 0, 3), kilograms(30)), second = *readingOf(scale(0, 0.01, 0, 3), kilograms(50));
        VERIFY_NEAR_SHARE(massByEnds(first, second)->u().si(), 0.8 / std::sqrt(3), 1e-14);
        VERIFY_NEAR_SHARE(lessTare(second, first)->u().si(), 0.2 / std::sqrt(3), 1e-13);
        QCOMPARE(lessTare(second, first)->value, kilograms(20));
    }

    void readingRefusals_data()
    {
        QTest::addColumn<double>("step");
        QTest::addColumn<double>("share");
        QTest::addColumn<double>("accuracy");
        QTest::addColumn<double>("shown");
        QTest::addColumn<QString>("what");
        QTest::newRow("step below 0") << -0.1 << 0.0 << 0.0 << 40.0 << "scale step";
        QTest::newRow("step not a number") << notANumber << 0.0 << 0.0 << 40.0 << "scale step";
        QTest::newRow("share below 0") << 0.1 << -0.1 << 0.0 << 40.0 << "scale accuracy";
        QTest::newRow("accuracy endless") << 0.1 << 0.0 << std::numeric_limits<double>::infinity() << 40.0 << "scale accuracy";
        QTest::newRow("reading below 0") << 0.1 << 0.0 << 0.0 << -1.0 << "reading";
        QTest::newRow("reading not a number") << 0.1 << 0.0 << 0.0 << notANumber << "reading";
    }
    void readingRefusals()
    {
        QFETCH(double, step);
        QFETCH(double, share);
        QFETCH(double, accuracy);
        QFETCH(double, shown);
        QFETCH(QString, what);
        const auto reading = readingOf(scale(step, share, accuracy), kilograms(shown));
        QVERIFY(!reading);
        QCOMPARE(reading.error(), (Error{Refusal::OutOfRange, what.toStdString()}));
    }

    void noReadings()
    {
        QCOMPARE(meanReadingOf(scale(0.1), {}).error(), (Error{Refusal::TooFewPoints, "reading"}));
    }

    void marked()
    {
        VERIFY_NEAR_SHARE(markedMass(kilograms(20), 0.02)->u().si(), 0.4 / std::sqrt(3), 1e-14);
        const auto one = *markedMass(kilograms(20), 0.02, SourceId{9}), other = *markedMass(kilograms(10), 0.02, SourceId{9});
        VERIFY_NEAR_SHARE(sumOf(one, other).u().si(), 0.6 / std::sqrt(3), 1e-14);
        QCOMPARE(whatOf(markedMass(kilograms(0), 0.02)), std::string("mass"));
        QCOMPARE(whatOf(markedMass(kilograms(1), -0.02)), std::string("tolerance"));
        QCOMPARE(whatOf(markedMass(kilograms(1), 1.5)), std::string("tolerance"));
    }

    void tareRefusals()
    {
        const auto whole = exactly(kilograms(10));
        QCOMPARE(whatOf(lessTare(whole, whole)), std::string("tare"));
        QCOMPARE(whatOf(lessTare(whole, exactly(kilograms(-1)))), std::string("tare"));
        QCOMPARE(whatOf(lessTare(exactly(kilograms(0)), exactly(kilograms(0)))), std::string("reading"));
    }

    void aScaleInTheRopeShowsAPull()
    {
        const auto pull = pullOf(within(kilograms(30), kilograms(0.5)));
        VERIFY_NEAR_SHARE(pull.value.si(), 30 * 9.80665, 1e-15);
        VERIFY_NEAR_SHARE(pull.u().si(), 0.5 * 9.80665, 1e-15);
    }

    /// A log of any shape: its ends carry shares that moments give, and the sum is all of it, however far in the hooks are.
    void theWholeComesBackFromItsEnds()
    {
        QVERIFY(rc::check("a mass anywhere along it, hooks anywhere inside", [] {
            const double mass = *rc::gen::inRange(10, 200), span = *rc::gen::inRange(500, 4000) * 1e-3;
            const double centre = span * *rc::gen::inRange(10, 990) * 1e-3, in1 = span * *rc::gen::inRange(0, 300) * 1e-3, in2 = span * *rc::gen::inRange(0, 300) * 1e-3;
            const EndLift first{exactly(kilograms(mass * (span - centre) / (span - in1))), exactly(metres(in1))},
                second{exactly(kilograms(mass * centre / (span - in2))), exactly(metres(in2))};
            const auto whole = massByEnds(first, second, exactly(metres(span)));
            RC_ASSERT(tests::nearShare(whole->value.si(), mass, 1e-12));
            RC_ASSERT(whole->u().si() == 0);
        }));
    }

    void uOfEnds()
    {
        QVERIFY(rc::check("by small steps; and more on the scale is never less", [] {
            const std::vector<Given> x{{*rc::gen::inRange(5, 90) * 1.0, 0.3}, {*rc::gen::inRange(5, 90) * 1.0, 0.4}, {*rc::gen::inRange(0, 200) * 1e-3, 0.01},
                                       {*rc::gen::inRange(0, 200) * 1e-3, 0.02}, {*rc::gen::inRange(500, 4000) * 1e-3, 0.03}};
            const auto whole = [&](double more) {
                return *massByEnds({within(kilograms(x[0].value + more), kilograms(x[0].u)), tests::as<Length>(x[2])}, {tests::as<Mass>(x[1]), tests::as<Length>(x[3])}, tests::as<Length>(x[4]));
            };
            RC_ASSERT(tests::nearShare(whole(0).u().si(), tests::numericU(byEnds, x), 1e-6));
            RC_ASSERT(whole(1).value >= whole(0).value);
        }));
    }

    void endsRefusals()
    {
        const EndLift good{exactly(kilograms(20)), exactly(metres(0.1))};
        const auto span = exactly(metres(2));
        QCOMPARE(whatOf(massByEnds({exactly(kilograms(0)), {}}, good, span)), std::string("first end"));
        QCOMPARE(whatOf(massByEnds(good, {exactly(kilograms(notANumber)), {}}, span)), std::string("second end"));
        QCOMPARE(whatOf(massByEnds(good, good, exactly(metres(0)))), std::string("length"));
        QCOMPARE(whatOf(massByEnds({good.shown, exactly(metres(2))}, good, span)), std::string("first hook"));
        QCOMPARE(whatOf(massByEnds(good, {good.shown, exactly(metres(-0.1))}, span)), std::string("second hook"));
    }
};

QTEST_APPLESS_MAIN(TestWeighing)
#include "test_weighing.moc"
