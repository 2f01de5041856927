// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/leastsquares.h"
#include "tests/core/near.h"

#include <rapidcheck.h>

#include <limits>

using namespace steelyard;

namespace {

using Numbers = std::vector<double>;
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

/// Whole numbers without repeats, so that a fit has something to stand on.
Numbers apart(std::size_t count)
{
    const auto whole = *rc::gen::unique<std::vector<int>>(count, rc::gen::inRange(-50, 50));
    return Numbers(whole.begin(), whole.end());
}

Numbers anyNumbers(std::size_t count)
{
    const auto whole = *rc::gen::container<std::vector<int>>(count, rc::gen::inRange(-1000, 1000));
    return Numbers(whole.begin(), whole.end());
}

}
Q_DECLARE_METATYPE(Numbers)
Q_DECLARE_METATYPE(Refusal)

class TestLeastSquares : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void refusals_data()
    {
        QTest::addColumn<Numbers>("x");
        QTest::addColumn<Numbers>("y");
        QTest::addColumn<int>("degree");
        QTest::addColumn<Refusal>("code");
        QTest::newRow("degree 0") << Numbers{1, 2} << Numbers{1, 2} << 0 << Refusal::OutOfRange;
        QTest::newRow("degree 6") << Numbers{1, 2} << Numbers{1, 2} << 6 << Refusal::OutOfRange;
        QTest::newRow("unequal lists") << Numbers{1, 2, 3} << Numbers{1, 2} << 1 << Refusal::OutOfRange;
        QTest::newRow("one point for a line") << Numbers{1} << Numbers{1} << 1 << Refusal::TooFewPoints;
        QTest::newRow("no points") << Numbers{} << Numbers{} << 1 << Refusal::TooFewPoints;
        QTest::newRow("all at one place") << Numbers{2, 2, 2} << Numbers{1, 2, 3} << 1 << Refusal::PointsNotApart;
        QTest::newRow("two places for a parabola") << Numbers{1, 1, 2, 2} << Numbers{1, 2, 3, 4} << 2 << Refusal::PointsNotApart;
        QTest::newRow("a hole in x") << Numbers{1, notANumber, 3} << Numbers{1, 2, 3} << 1 << Refusal::NotFinite;
        QTest::newRow("a hole in y") << Numbers{1, 2, 3} << Numbers{1, notANumber, 3} << 1 << Refusal::NotFinite;
        QTest::newRow("a power that overflows") << Numbers{1e200, 2e200, 3e200} << Numbers{1, 2, 3} << 2 << Refusal::NotFinite;
    }
    void refusals()
    {
        QFETCH(Numbers, x);
        QFETCH(Numbers, y);
        QFETCH(int, degree);
        QFETCH(Refusal, code);
        const auto fit = PolynomialFit::of(x, y, degree, false);
        QVERIFY(!fit);
        QCOMPARE(fit.error().code, code);
    }

    void designMustFitTheReadings()
    {
        QCOMPARE(fitLinear(Numbers{1, 2, 3}, 2, Numbers{1, 2}).error().code, Refusal::OutOfRange);
        QCOMPARE(fitLinear(Numbers{}, 0, Numbers{}).error().code, Refusal::OutOfRange);
        QCOMPARE(fitLinear(Numbers{0, 0}, 1, Numbers{1, 2}).error().code, Refusal::PointsNotApart);
    }

    /// By hand: y = 2 + x on x = 0…3 with readings off by +1, −1, −1, +1.
    void lineByHand()
    {
        const auto line = PolynomialFit::of(Numbers{0, 1, 2, 3}, Numbers{3, 2, 3, 6}, 1, false);
        QVERIFY(line.ok());
        const auto& fit = line->fit();
        QCOMPARE(fit.coefficients, (Numbers{2, 1}));
        QCOMPARE(fit.residualSumOfSquares, 4.0);
        QCOMPARE(fit.residualSd, std::sqrt(2.0));
        QCOMPARE(fit.degreesOfFreedom(), 2u);
        const auto errors = fit.standardErrors();
        VERIFY_NEAR_SHARE(errors->at(0), std::sqrt(2 * 14.0 / 20), 1e-15);
        VERIFY_NEAR_SHARE(errors->at(1), std::sqrt(2 / 5.0), 1e-15);
        QCOMPARE(line->at(1.5), 3.5);
        VERIFY_NEAR_SHARE(*line->standardErrorAt(1.5), std::sqrt(2 / 4.0), 1e-15);
        VERIFY_NEAR_SHARE(*line->standardErrorAt(0), errors->at(0), 1e-15);
    }

    void throughTheOriginByHand()
    {
        const auto line = PolynomialFit::of(Numbers{1, 2}, Numbers{1, 3}, 1, true);
        QCOMPARE(line->fit().coefficients, Numbers{7.0 / 5});
        VERIFY_NEAR_SHARE(*line->fit().residualSd, std::sqrt(0.2), 1e-15);
        QCOMPARE(line->at(0), 0.0);
        QCOMPARE(*line->standardErrorAt(0), 0.0);
        const auto parabola = PolynomialFit::of(Numbers{1, 2, 3}, Numbers{3, 10, 21}, 2, true);
        QCOMPARE(parabola->fit().coefficients, (Numbers{1, 2}));
        QCOMPARE(parabola->at(-2), 6.0);
    }

    void withoutAPointLeftOverNoErrorIsKnown()
    {
        const auto line = PolynomialFit::of(Numbers{1, 2}, Numbers{1, 3}, 1, false);
        QVERIFY(line.ok());
        QVERIFY(!line->fit().residualSd && !line->fit().standardErrors() && !line->standardErrorAt(1.5));
        QCOMPARE(line->at(3), 5.0);
    }

    void passesThroughAnyPolynomial()
    {
        QVERIFY(rc::check("whole coefficients come back as they were", [] {
            const int degree = *rc::gen::inRange(1, 6);
            const bool origin = *rc::gen::arbitrary<bool>();
            auto wanted = anyNumbers(static_cast<std::size_t>(degree + (origin ? 0 : 1)));
            const auto x = apart(static_cast<std::size_t>(*rc::gen::inRange(8, 14)));
            Numbers y;
            for (const double at : x) {
                double value = 0;
                for (auto c = wanted.rbegin(); c != wanted.rend(); ++c)
                    value = value * at + *c;
                y.push_back(origin ? value * at : value);
            }
            const auto fit = PolynomialFit::of(x, y, degree, origin);
            RC_ASSERT(fit.ok());
            for (std::size_t i = 0; i < wanted.size(); ++i)
                RC_ASSERT(tests::near(fit->fit().coefficients[i], wanted[i], 1e-12));
        }));
    }

    void residualsStandUprightOnTheDesign()
    {
        QVERIFY(rc::check("and the order of the points does not matter", [] {
            const auto x = apart(10), y = anyNumbers(10);
            const int degree = *rc::gen::inRange(1, 4);
            const auto fit = PolynomialFit::of(x, y, degree, false);
            for (int power = 0; power <= degree; ++power) {
                double sum = 0, size = 0;
                for (std::size_t i = 0; i < x.size(); ++i) {
                    sum += (y[i] - fit->at(x[i])) * std::pow(x[i], power);
                    size += std::abs(y[i] * std::pow(x[i], power)) + std::pow(std::abs(x[i]), power);
                }
                RC_ASSERT(std::abs(sum) <= 1e-9 * size);
            }
            const Numbers backX(x.rbegin(), x.rend()), backY(y.rbegin(), y.rend());
            const auto back = PolynomialFit::of(backX, backY, degree, false)->fit().coefficients;
            for (std::size_t i = 0; i < back.size(); ++i)
                RC_ASSERT(tests::near(back[i], fit->fit().coefficients[i], 4e-16 * std::abs(back[i]) + 1e-25));
        }));
    }
};

QTEST_APPLESS_MAIN(TestLeastSquares)
#include "test_leastsquares.moc"
