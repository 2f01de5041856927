// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/strength/percent.h"
#include "core/strength/publishedloads.h"
#include "core/strength/scaled.h"
#include "tests/core/near.h"

#include <cmath>
#include <limits>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Uncertain<Mass> mass(double kg, double u = 0) { return {kilograms(kg), kilograms(u)}; }

}

class TestPercentAndScale : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void percentOfABase()
    {
        const auto part = *percentOf(70, mass(105, 3));
        VERIFY_NEAR(part.value.si(), 73.5, 1e-12);
        VERIFY_NEAR(part.u.si(), 2.1, 1e-12);
        const auto back = *percentReached(mass(72.5, 0.5), mass(105, 3));
        VERIFY_NEAR(back.percent, 69.047619047619051, 1e-12);
        VERIFY_NEAR_SHARE(back.uPercent, back.percent * std::hypot(0.5 / 72.5, 3.0 / 105), 1e-12);
        QCOMPARE(percentReached(mass(0, 1), mass(100))->uPercent, 1.0);
    }

    /// 40 % more than a concentric load of 70 % is 98 % of the maximum, not 110.
    void theBaseMatters()
    {
        const auto concentric = *percentOf(70, mass(105));
        VERIFY_NEAR(percentReached(*percentOf(140, concentric), mass(105))->percent, 98, 1e-12);
    }

    void percentRefusals()
    {
        for (const double percent : {0.0, -1.0, 300.5, notANumber})
            QCOMPARE(percentOf(percent, mass(100)).error(), (Error{Refusal::OutOfRange, "percent"}));
        for (const auto& base : {mass(0), mass(-1), mass(notANumber), mass(100, -1)}) {
            QCOMPARE(percentOf(70, base).error(), (Error{Refusal::OutOfRange, "base"}));
            QCOMPARE(percentReached(mass(70), base).error(), (Error{Refusal::OutOfRange, "base"}));
        }
        QCOMPARE(percentReached(mass(-1), mass(100)).error(), (Error{Refusal::OutOfRange, "load"}));
        QCOMPARE(percentReached(mass(notANumber), mass(100)).error(), (Error{Refusal::OutOfRange, "load"}));
    }

    void plainAndByShape()
    {
        VERIFY_NEAR(scaledStrength(Uncertain<Force>{newtons(3000), {}}, mass(75), plainExponent)->ratio, 40, 1e-12);
        VERIFY_NEAR(scaledStrength(mass(150), mass(75), plainExponent)->ratio, 2, 1e-15);
        // by logarithms: e^(ln 3000 − 0.67·ln 75)
        VERIFY_NEAR(scaledStrength(Uncertain<Force>{newtons(3000), {}}, mass(75), shapeExponent)->ratio, std::exp(std::log(3000) - 0.67 * std::log(75)), 1e-10);
        QCOMPARE(scaledStrength(mass(150), mass(75), 0)->ratio, 150.0);
        const auto doubted = *scaledStrength(mass(150, 3), mass(75, 0.75), shapeExponent);
        VERIFY_NEAR_SHARE(doubted.uRatio, doubted.ratio * std::hypot(0.02, 0.67 * 0.01), 1e-12);
        QCOMPARE(doubted.exponent, shapeExponent);
        QCOMPARE(scaledStrength(mass(0, 2), mass(50), plainExponent)->uRatio, 0.04);
    }

    void scaleRefusals()
    {
        QCOMPARE(scaledStrength(mass(-1), mass(75), 1).error(), (Error{Refusal::OutOfRange, "strength"}));
        QCOMPARE(scaledStrength(mass(notANumber), mass(75), 1).error(), (Error{Refusal::OutOfRange, "strength"}));
        for (const auto& body : {mass(0), mass(-60), mass(notANumber)})
            QCOMPARE(scaledStrength(mass(100), body, 1).error(), (Error{Refusal::OutOfRange, "body"}));
        for (const double exponent : {-0.1, 2.1, notANumber})
            QCOMPARE(scaledStrength(mass(100), mass(75), exponent).error(), (Error{Refusal::OutOfRange, "exponent"}));
    }

    /// Two athletes of one shape, one larger: force by the square of the length, mass by its cube.
    void oneShapeScalesToOneNumber()
    {
        QVERIFY(rc::check("by 2/3 the larger is as strong; plainly she is weaker", [] {
            const double larger = *rc::gen::inRange(1010, 1400) / 1000.0, force = *rc::gen::inRange(500, 5000), body = *rc::gen::inRange(40, 120);
            const auto scaled = [&](double length, double exponent) { return scaledStrength(Uncertain<Force>{newtons(force * length * length), {}}, mass(body * length * length * length), exponent)->ratio; };
            RC_ASSERT(tests::nearShare(scaled(larger, 2.0 / 3), scaled(1, 2.0 / 3), 1e-12));
            RC_ASSERT(scaled(larger, plainExponent) < scaled(1, plainExponent));
        }));
    }

    void publishedLoadsNameTheirBaseAndSource()
    {
        QCOMPARE(publishedEccentrics().size(), 6u);
        for (const PublishedEccentric& load : publishedEccentrics()) {
            QVERIFY(load.source.find("20") != std::string_view::npos);
            QVERIFY(load.eccentric.leastPercent <= load.eccentric.mostPercent);
            // never lighter on the way down, and what has no concentric percentage is said of the concentric load
            QVERIFY(load.concentric ? load.eccentric.mostPercent > load.concentric->mostPercent : load.eccentricBase == PercentBase::ConcentricLoad && load.eccentric.leastPercent > 100);
        }
    }
};

QTEST_APPLESS_MAIN(TestPercentAndScale)
#include "test_percentandscale.moc"
