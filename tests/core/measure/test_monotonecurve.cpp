// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/monotonecurve.h"
#include "tests/core/near.h"

#include <rapidcheck.h>

#include <algorithm>
#include <limits>

using namespace steelyard;

namespace {

using Numbers = std::vector<double>;
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

/// Points in rising order, some of them level.
std::pair<Numbers, Numbers> risingPoints()
{
    const auto count = static_cast<std::size_t>(*rc::gen::inRange(2, 12));
    Numbers x, y;
    double atX = *rc::gen::inRange(-100, 100), atY = *rc::gen::inRange(-100, 100);
    for (std::size_t i = 0; i < count; ++i) {
        x.push_back(atX);
        y.push_back(atY);
        atX += *rc::gen::inRange(1, 40) * 0.25;
        atY += *rc::gen::inRange(0, 40) * 0.5;
    }
    return {x, y};
}

}
Q_DECLARE_METATYPE(Numbers)
Q_DECLARE_METATYPE(Refusal)

class TestMonotoneCurve : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void refusals_data()
    {
        QTest::addColumn<Numbers>("x");
        QTest::addColumn<Numbers>("y");
        QTest::addColumn<Refusal>("code");
        QTest::newRow("no points") << Numbers{} << Numbers{} << Refusal::TooFewPoints;
        QTest::newRow("one point") << Numbers{1} << Numbers{1} << Refusal::TooFewPoints;
        QTest::newRow("unequal lists") << Numbers{1, 2} << Numbers{1} << Refusal::OutOfRange;
        QTest::newRow("one place twice") << Numbers{2, 1, 2} << Numbers{1, 2, 3} << Refusal::PointsNotApart;
        QTest::newRow("a hole in x") << Numbers{1, notANumber} << Numbers{1, 2} << Refusal::NotFinite;
        QTest::newRow("a hole in y") << Numbers{1, 2} << Numbers{notANumber, 2} << Refusal::NotFinite;
    }
    void refusals()
    {
        QFETCH(Numbers, x);
        QFETCH(Numbers, y);
        QFETCH(Refusal, code);
        const auto curve = MonotoneCurve::through(x, y);
        QVERIFY(!curve);
        QCOMPARE(curve.error().code, code);
    }

    void knowsNothingOutside()
    {
        const auto curve = *MonotoneCurve::through(Numbers{3, 1, 2}, Numbers{9, 1, 4});
        QCOMPARE(curve.first(), 1.0);
        QCOMPARE(curve.last(), 3.0);
        QCOMPARE(curve.knots(), (Numbers{1, 2, 3}));
        for (const double x : {0.999, 3.001, notANumber}) {
            QVERIFY(!curve.at(x) && !curve.slopeAt(x));
            QVERIFY(!curve.integral(1, x) && !curve.integral(x, 3));
        }
        QCOMPARE(*curve.at(1), 1.0);
        QCOMPARE(*curve.at(3), 9.0);
    }

    /// Slopes after Fritsch & Butland (1984) with the three-point ends of Fritsch & Carlson's PCHIM, by hand.
    void slopesByHand_data()
    {
        QTest::addColumn<Numbers>("x");
        QTest::addColumn<Numbers>("y");
        QTest::addColumn<Numbers>("slopes");
        QTest::newRow("two points: a line") << Numbers{0, 2} << Numbers{1, 5} << Numbers{2, 2};
        QTest::newRow("even steps: harmonic mean") << Numbers{0, 1, 2} << Numbers{0, 1, 4} << Numbers{0, 1.5, 4};
        QTest::newRow("uneven steps: weighted") << Numbers{0, 1, 3} << Numbers{0, 1, 5} << Numbers{2.0 / 3, 9.0 / 7, 8.0 / 3};
        QTest::newRow("a summit is level") << Numbers{0, 1, 2} << Numbers{0, 1, 0} << Numbers{2, 0, -2};
        QTest::newRow("a level stretch stays level") << Numbers{0, 1, 2} << Numbers{1, 1, 3} << Numbers{0, 0, 3};
        QTest::newRow("an end is not overshot") << Numbers{0, 1, 2} << Numbers{0, 1, -9} << Numbers{3, 0, -15.5};
    }
    void slopesByHand()
    {
        QFETCH(Numbers, x);
        QFETCH(Numbers, y);
        QFETCH(Numbers, slopes);
        const auto curve = *MonotoneCurve::through(x, y);
        for (std::size_t i = 0; i < x.size(); ++i) {
            VERIFY_NEAR(*curve.at(x[i]), y[i], 1e-15);
            VERIFY_NEAR(*curve.slopeAt(x[i]), slopes[i], 1e-14);
        }
    }

    /// On a cubic, Simpson's rule is exact.
    void integralIsExactOnThePieces()
    {
        QVERIFY(rc::check("integral against Simpson's rule, piece by piece", [] {
            const auto [x, y] = risingPoints();
            const auto curve = *MonotoneCurve::through(x, y);
            double sum = 0, size = 0;
            for (std::size_t i = 0; i + 1 < x.size(); ++i) {
                const double h = x[i + 1] - x[i];
                const double piece = h / 6 * (*curve.at(x[i]) + 4 * *curve.at(x[i] + h / 2) + *curve.at(x[i + 1]));
                sum += piece;
                size += h * (std::abs(y[i]) + std::abs(y[i + 1]));
            }
            RC_ASSERT(tests::near(*curve.integral(x.front(), x.back()), sum, 1e-13 * size));
        }));
    }

    void integralsAddAndTurnRound()
    {
        QVERIFY(rc::check("∫ab + ∫bc = ∫ac, ∫ba = −∫ab, ∫aa = 0", [] {
            const auto [x, y] = risingPoints();
            const auto curve = *MonotoneCurve::through(x, y);
            const auto somewhere = [&, first = x.front(), span = x.back() - x.front()] { return first + span * *rc::gen::inRange(0, 1001) / 1000; };
            const double a = somewhere(), b = somewhere(), c = somewhere(), size = 1e-12 * 5000 * 1000;
            RC_ASSERT(tests::near(*curve.integral(a, b) + *curve.integral(b, c), *curve.integral(a, c), size));
            RC_ASSERT(*curve.integral(b, a) == -*curve.integral(a, b));
            RC_ASSERT(*curve.integral(a, a) == 0.0);
        }));
    }

    void risesWhereThePointsRise()
    {
        QVERIFY(rc::check("never falls, never leaves its piece's range, slope is the derivative", [] {
            const auto [x, y] = risingPoints();
            const auto curve = *MonotoneCurve::through(x, y);
            double before = y.front();
            for (std::size_t i = 0; i + 1 < x.size(); ++i) {
                for (int k = 1; k < 40; ++k) {
                    const double at = x[i] + (x[i + 1] - x[i]) * k / 40, value = *curve.at(at);
                    RC_ASSERT(value >= before - 1e-12 && value >= y[i] - 1e-12 && value <= y[i + 1] + 1e-12);
                    RC_ASSERT(*curve.slopeAt(at) >= -1e-12);
                    constexpr double step = 1e-5;
                    const double difference = (*curve.at(at + step) - *curve.at(at - step)) / (2 * step);
                    RC_ASSERT(tests::near(*curve.slopeAt(at), difference, 1e-4));
                    before = value;
                }
            }
        }));
    }

    void turnedOverItIsTheSameCurve()
    {
        QVERIFY(rc::check("upside down, and with its points shuffled", [] {
            const auto [x, y] = risingPoints();
            Numbers under;
            for (const double v : y)
                under.push_back(-v);
            Numbers backX(x.rbegin(), x.rend()), backY(y.rbegin(), y.rend());
            const auto curve = *MonotoneCurve::through(x, y), down = *MonotoneCurve::through(x, under), back = *MonotoneCurve::through(backX, backY);
            for (int k = 0; k <= 20; ++k) {
                const double at = x.front() + (x.back() - x.front()) * k / 20;
                RC_ASSERT(*down.at(at) == -*curve.at(at));
                RC_ASSERT(*back.at(at) == *curve.at(at));
            }
        }));
    }
};

QTEST_APPLESS_MAIN(TestMonotoneCurve)
#include "test_monotonecurve.moc"
