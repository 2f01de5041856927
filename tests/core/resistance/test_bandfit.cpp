// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/bandfit.h"
#include "tests/core/near.h"
#include "tests/core/resistance/kit.h"

#include <rapidcheck.h>

using namespace steelyard;
using tests::bandPoints;
using tests::pointsOn;
using Points = std::vector<BandPoint>;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

Points first(std::size_t count)
{
    auto points = bandPoints();
    points.resize(count);
    return points;
}

Points swapped(Points points, std::size_t at, double length, double pull)
{
    points[at] = {metres(length), newtons(pull)};
    return points;
}

}
Q_DECLARE_METATYPE(BandModel)
Q_DECLARE_METATYPE(Refusal)
Q_DECLARE_METATYPE(Points)

class TestBandFit : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void refusals_data()
    {
        QTest::addColumn<double>("rest");
        QTest::addColumn<Points>("points");
        QTest::addColumn<Refusal>("code");
        QTest::addColumn<QString>("what");
        QTest::newRow("no rest length") << 0.0 << bandPoints() << Refusal::OutOfRange << "rest length";
        QTest::newRow("rest not a number") << notANumber << bandPoints() << Refusal::OutOfRange << "rest length";
        QTest::newRow("read shorter than at rest") << 1.0 << swapped(bandPoints(), 2, 0.9, 50) << Refusal::BelowRest << "point 3";
        QTest::newRow("read at rest with a load on") << 1.0 << swapped(bandPoints(), 0, 1, 50) << Refusal::BelowRest << "point 1";
        QTest::newRow("a pull below 0") << 1.0 << swapped(bandPoints(), 1, 1.3, -1) << Refusal::OutOfRange << "point 2";
        QTest::newRow("a length not a number") << 1.0 << swapped(bandPoints(), 1, notANumber, 50) << Refusal::NotFinite << "point 2";
        QTest::newRow("a pull not a number") << 1.0 << swapped(bandPoints(), 5, 2, notANumber) << Refusal::NotFinite << "point 6";
        QTest::newRow("one point") << 1.0 << first(1) << Refusal::TooFewPoints << "points";
        QTest::newRow("no point") << 1.0 << first(0) << Refusal::TooFewPoints << "points";
        QTest::newRow("one length twice") << 1.0 << Points{first(1)[0], first(1)[0]} << Refusal::PointsNotApart << "points";
    }
    void refusals()
    {
        QFETCH(double, rest);
        QFETCH(Points, points);
        QFETCH(Refusal, code);
        QFETCH(QString, what);
        for (const auto& fit : {BandFit::with(BandModel::Rubber, metres(rest), points), BandFit::best(metres(rest), points)}) {
            QVERIFY(!fit);
            QCOMPARE(fit.error(), (Error{code, what.toStdString()}));
        }
    }

    void bestModel_data()
    {
        QTest::addColumn<Points>("points");
        QTest::addColumn<BandModel>("model");
        QTest::addColumn<bool>("scored");
        using enum BandModel;
        const auto line = pointsOn(100, 0, Line, {1.2, 1.4, 1.6, 1.8, 2, 2.2});
        QTest::newRow("rubber readings") << bandPoints() << Rubber << true;
        QTest::newRow("an exact line: fewest coefficients") << line << Line << false;
        QTest::newRow("an exact parabola") << pointsOn(100, 20, Quadratic, {1.2, 1.4, 1.6, 1.8, 2, 2.2}) << Quadratic << false;
        QTest::newRow("exact rubber") << pointsOn(60, 70, Rubber, {1.2, 1.4, 1.6, 1.8, 2, 2.2}) << Rubber << false;
        QTest::newRow("a line with a little scatter") << swapped(swapped(line, 1, 1.4, 40.4), 3, 1.8, 79.6) << Line << true;
        QTest::newRow("four points: rubber whatever they say") << pointsOn(100, 0, Line, {1.2, 1.5, 1.8, 2}) << Rubber << false;
        QTest::newRow("two points") << first(2) << Rubber << false;
    }
    void bestModel()
    {
        QFETCH(Points, points);
        QFETCH(BandModel, model);
        QFETCH(bool, scored);
        const auto fit = BandFit::best(metres(1), points);
        QVERIFY(fit.ok());
        QCOMPARE(fit->model(), model);
        QVERIFY(fit->rises());
        QCOMPARE(fit->aiccScore().has_value(), scored);
    }

    void bestHasTheLeastScoreOfThoseThatRise()
    {
        QVERIFY(rc::check("against choosing by hand", [] {
            const auto count = static_cast<std::size_t>(*rc::gen::inRange(5, 9));
            Points points;
            double length = 1;
            for (std::size_t i = 0; i < count; ++i) {
                length += *rc::gen::inRange(20, 300) * 1e-3;
                points.push_back({metres(length), newtons(*rc::gen::inRange(0, 400))});
            }
            const BandFit* wanted = nullptr;
            std::vector<Result<BandFit>> all;
            for (const auto model : {BandModel::Line, BandModel::Quadratic, BandModel::Rubber})
                all.push_back(BandFit::with(model, metres(1), points));
            for (const auto& fit : all) {
                RC_ASSERT(fit.ok());
                RC_PRE(fit->aiccScore().has_value());
                if (fit->rises() && (!wanted || *fit->aiccScore() < *wanted->aiccScore()))
                    wanted = &*fit;
            }
            const auto best = BandFit::best(metres(1), points);
            RC_ASSERT(best.ok() == (wanted != nullptr));
            if (wanted)
                RC_ASSERT(best->model() == wanted->model());
            else
                RC_ASSERT(best.error().code == Refusal::NoRisingFit);
        }));
    }

    void noModelRises_data()
    {
        QTest::addColumn<Points>("points");
        QTest::newRow("falls after a jump") << Points{{metres(1.02), newtons(200)}, {metres(1.04), newtons(150)}, {metres(1.06), newtons(100)}, {metres(1.08), newtons(50)}, {metres(1.1), newtons(0)}, {metres(3), newtons(0)}, {metres(3.2), newtons(0)}};
        QTest::newRow("three points that fall") << Points{{metres(1.1), newtons(100)}, {metres(1.5), newtons(60)}, {metres(2), newtons(10)}};
    }
    void noModelRises()
    {
        QFETCH(Points, points);
        const auto best = BandFit::best(metres(1), points);
        if (points.size() >= 5) {
            // a line rises always, so that it is all that is left
            QVERIFY(best.ok());
            QCOMPARE(best->model(), BandModel::Line);
        } else {
            QVERIFY(!best);
            QCOMPARE(best.error().code, Refusal::NoRisingFit);
        }
        const auto byHand = BandFit::with(BandModel::Rubber, metres(1), points);
        QVERIFY(byHand.ok() && !byHand->rises());
    }

    void aiccByHand()
    {
        const auto fit = BandFit::with(BandModel::Line, metres(1), Points{{metres(2), newtons(9)}, {metres(3), newtons(22)}, {metres(4), newtons(29)}, {metres(5), newtons(41)}, {metres(6), newtons(50)}});
        const double k = (9 + 44 + 87 + 164 + 250) / 55.0;
        VERIFY_NEAR_SHARE(fit->coefficients()[0].si(), k, 1e-15);
        double rss = 0;
        for (const auto& [l, f] : {std::pair{1, 9}, {2, 22}, {3, 29}, {4, 41}, {5, 50}})
            rss += (f - k * l) * (f - k * l);
        VERIFY_NEAR_SHARE(*fit->aiccScore(), 5 * std::log(rss / 5) + 4 + 12 / 2.0, 1e-13);
        VERIFY_NEAR_SHARE(fit->residualSd()->si(), std::sqrt(rss / 4), 1e-13);
    }

    /// Too few points for the correction, or none to spare for a residual.
    void whatFewPointsLeaveUnknown()
    {
        const auto four = BandFit::with(BandModel::Rubber, metres(1), first(4)), two = BandFit::with(BandModel::Rubber, metres(1), first(2));
        QVERIFY(!four->aiccScore() && four->residualSd());
        QVERIFY(!two->aiccScore() && !two->residualSd());
        QCOMPARE(two->degreesOfFreedom(), 0u);
        VERIFY_NEAR(two->uncertainty(metres(1.2)).si(), 0.05 * two->pull(metres(1.2)).si(), 1e-15);
    }

    void fewPointsCarryAFloor_data()
    {
        QTest::addColumn<BandModel>("model");
        QTest::addColumn<int>("count");
        QTest::addColumn<double>("share");
        using enum BandModel;
        QTest::newRow("line, 3 points") << Line << 3 << 0.05;
        QTest::newRow("line, 4 points") << Line << 4 << 0.0;
        QTest::newRow("quadratic, 4 points") << Quadratic << 4 << 0.05;
        QTest::newRow("quadratic, 5 points") << Quadratic << 5 << 0.0;
        QTest::newRow("rubber, 4 points") << Rubber << 4 << 0.05;
        QTest::newRow("rubber, 5 points") << Rubber << 5 << 0.0;
    }
    void fewPointsCarryAFloor()
    {
        QFETCH(BandModel, model);
        QFETCH(int, count);
        QFETCH(double, share);
        const auto fit = BandFit::with(model, metres(1), first(static_cast<std::size_t>(count)));
        QCOMPARE(fit->leastShareOfPull(), share);
        const Length length = metres(1.3);
        const auto e = fit->pullEffects(length);
        const double fitted = std::hypot(e[0].si(), e[1].si());
        VERIFY_NEAR(fit->uncertainty(length).si(), std::max(fitted, share * fit->pull(length).si()), 1e-14);
        QVERIFY(fit->uncertainty(length).si() > 0);
    }

    void knowsNothingPastFivePercent()
    {
        const auto fit = *BandFit::with(BandModel::Rubber, metres(1), bandPoints());
        QCOMPARE(fit.knownUpTo().si(), 1.05 * 1.95);
        QVERIFY(fit.knows(metres(2.0475)) && fit.knows(metres(0.2)) && !fit.knows(metres(2.04751)));
        for (const double slack : {0.0, 0.5, 1.0}) {
            QCOMPARE(fit.pull(metres(slack)), Force{});
            QCOMPARE(fit.work(metres(slack)), Energy{});
            QCOMPARE(fit.uncertainty(metres(slack)), Force{});
        }
        QCOMPARE(fit.slope(metres(0.99)), Stiffness{});
        VERIFY_NEAR(fit.slope(metres(1)).si(), 3 * (fit.coefficients()[0] + fit.coefficients()[1]).si(), 1e-12);
    }

    void slopeAndWorkBelongToThePull()
    {
        QVERIFY(rc::check("slope is the derivative, work the integral, for each model", [] {
            const auto model = *rc::gen::element(BandModel::Line, BandModel::Quadratic, BandModel::Rubber);
            const double rest = *rc::gen::inRange(200, 2000) * 1e-3;
            auto points = bandPoints();
            for (auto& p : points)
                p.length = rest * p.length;
            const auto fit = *BandFit::with(model, metres(rest), points);
            const double length = rest * *rc::gen::inRange(1010, 2000) * 1e-3, step = 1e-6 * rest;
            const double rise = (fit.pull(metres(length + step)) - fit.pull(metres(length - step))).si() / (2 * step);
            RC_ASSERT(tests::near(fit.slope(metres(length)).si(), rise, 1e-6 * (1 + rise)));
            const double rough = tests::roughMean([&](double l) { return fit.pull(metres(l)).si(); }, rest, length, 2000) * (length - rest);
            RC_ASSERT(tests::near(fit.work(metres(length)).si(), rough, 1e-5 * (1 + rough)));
            const auto e = fit.workEffects(metres(length));
            const double roughFirst = tests::roughMean([&](double l) { return fit.pullEffects(metres(l))[0].si(); }, rest, length, 2000) * (length - rest);
            RC_ASSERT(tests::near(e[0].si(), roughFirst, 1e-5));
        }));
    }

    void scalesWithItsUnits()
    {
        QVERIFY(rc::check("twice the pulls: twice the curve, its error too; all lengths doubled: the same pulls", [] {
            const auto model = *rc::gen::element(BandModel::Line, BandModel::Quadratic, BandModel::Rubber);
            auto stronger = bandPoints(), longer = bandPoints();
            for (auto& p : stronger)
                p.pull = 2 * p.pull;
            for (auto& p : longer)
                p.length = 2 * p.length;
            const auto fit = *BandFit::with(model, metres(1), bandPoints()), twice = *BandFit::with(model, metres(1), stronger),
                       stretched = *BandFit::with(model, metres(2), longer);
            const Length at = metres(*rc::gen::inRange(1000, 2047) * 1e-3);
            RC_ASSERT(tests::near(twice.pull(at).si(), 2 * fit.pull(at).si(), 1e-11));
            RC_ASSERT(tests::near(twice.uncertainty(at).si(), 2 * fit.uncertainty(at).si(), 1e-11));
            RC_ASSERT(tests::near(stretched.pull(2 * at).si(), fit.pull(at).si(), 1e-11));
            RC_ASSERT(tests::near(stretched.work(2 * at).si(), 2 * fit.work(at).si(), 1e-11));
        }));
    }

    void oddPointStandsOut_data()
    {
        QTest::addColumn<Points>("points");
        QTest::addColumn<int>("index");
        QTest::newRow("none among good readings") << bandPoints() << -1;
        QTest::newRow("a misread length") << swapped(bandPoints(), 3, 1.625, bandPoints()[3].pull.si()) << 3;
        QTest::newRow("a slip of the tape by less than a centimetre") << swapped(pointsOn(60, 70, BandModel::Rubber, {1.2, 1.4, 1.6, 1.8, 2, 2.2}), 2, 1.607, 125.49) << -1;
        QTest::newRow("a slip by more") << swapped(pointsOn(60, 70, BandModel::Rubber, {1.2, 1.4, 1.6, 1.8, 2, 2.2}), 2, 1.62, 125.49) << 2;
        QTest::newRow("a plate forgotten") << swapped(bandPoints(), 1, 1.245, 49) << 1;
        QTest::newRow("too few to tell") << swapped(first(4), 1, 1.245, 49) << -1;
        QTest::newRow("exact readings") << pointsOn(60, 70, BandModel::Rubber, {1.2, 1.4, 1.6, 1.8, 2, 2.2}) << -1;
        QTest::newRow("exact but for one") << swapped(pointsOn(60, 70, BandModel::Rubber, {1.2, 1.4, 1.6, 1.8, 2, 2.2}), 2, 1.6, 100) << 2;
        QTest::newRow("refused readings") << swapped(bandPoints(), 2, 0.9, 50) << -1;
    }
    void oddPointStandsOut()
    {
        QFETCH(Points, points);
        QFETCH(int, index);
        const auto odd = oddPoint(BandModel::Rubber, metres(1), points);
        QCOMPARE(odd ? static_cast<int>(odd->index) : -1, index);
    }

    /// What it is off by is measured from the curve through the other points, fitted without it.
    void oddPointIsMeasuredFromTheOthers()
    {
        auto points = swapped(bandPoints(), 1, 1.245, 49);
        const auto odd = oddPoint(BandModel::Rubber, metres(1), points);
        auto others = points;
        others.erase(others.begin() + 1);
        const auto fit = BandFit::with(BandModel::Rubber, metres(1), others);
        VERIFY_NEAR(odd->off.si(), 49 - fit->pull(metres(1.245)).si(), 1e-9);
    }
};

QTEST_APPLESS_MAIN(TestBandFit)
#include "test_bandfit.moc"
