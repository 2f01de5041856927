// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/pullsum.h"
#include "core/resistance/setup.h"
#include "tests/core/near.h"
#include "tests/core/resistance/kit.h"

using namespace steelyard;
using tests::hungBelow;
using tests::hungChain;
using tests::lineBand;
using tests::onBothEnds;
using tests::rubberBand;

namespace {

double kilo(const std::optional<Reading>& reading) { return asMass(reading->value).si(); }
double uOf(const std::optional<Reading>& reading) { return asMass(reading->u).si(); }

/// Two doubled chains of 1.5 m on a lead of 0.8 m, weighed together, for a short or a tall lifter.
Setup doubledChains(bool tall, double leadMass = 0)
{
    const double u = 0.1 / std::sqrt(12.0) / 1.5;
    Setup setup = onBothEnds({hungChain(ChainHanging::Doubled, 1.5, 0.8, 5.7, u, 7, leadMass)});
    setup.collars = kilograms(0.5);
    setup.path = {metres(tall ? 0.94 : 0.77), metres(tall ? 1.6 : 1.27), metres(tall ? 1.1 : 0.88), metres(tall ? 1.28 : 1.02), std::nullopt, metres(0.01)};
    return setup;
}

Setup bandsFrom(const HungBand& left, const HungBand& right, double uMark)
{
    Setup setup;
    setup.left = {left};
    setup.right = {right};
    setup.path = {metres(0.77), metres(1.27), metres(0.88), metres(1.02), std::nullopt, metres(uMark)};
    return setup;
}

}
Q_DECLARE_METATYPE(Setup)

class TestSetup : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Worked by hand, our own: the same chains for a short and a tall lifter, without and with the mass of the lead.
    void chainsForTwoLifters_data()
    {
        QTest::addColumn<bool>("tall");
        QTest::addColumn<double>("lead");
        QTest::addColumn<QVector<double>>("kg");
        QTest::newRow("short") << false << 0.0 << QVector{80.5, 83.92, 91.216, 85.5365, 85.858};
        QTest::newRow("tall") << true << 0.0 << QVector{83.692, 89.392, 97.6, 91.1728, 90.646};
        QTest::newRow("short, lead weighed") << false << 0.4 << QVector{81.27, 84.72, 92.016, 86.3356, 86.643};
        QTest::newRow("tall, lead weighed") << true << 0.4 << QVector{84.492, 90.192, 98.4, 91.9728, 91.446};
    }
    void chainsForTwoLifters()
    {
        QFETCH(bool, tall);
        QFETCH(double, lead);
        QFETCH(QVector<double>, kg);
        const auto curve = *pullCurve(doubledChains(tall, lead));
        VERIFY_NEAR_SHARE(kilo(curve.bottom), kg[0], 1e-5);
        VERIFY_NEAR_SHARE(kilo(curve.zone), kg[1], 1e-5);
        VERIFY_NEAR_SHARE(kilo(curve.top), kg[2], 1e-5);
        VERIFY_NEAR_SHARE(kilo(curve.mean), kg[3], 1e-5);
        VERIFY_NEAR_SHARE(asMass(*curve.twoPointMean).si(), kg[4], 1e-5);
        VERIFY_NEAR_SHARE(curve.work->si(), kg[3] * 9.80665 * (tall ? 0.66 : 0.5), 1e-5);
        QVERIFY(curve.ready && !curve.rack);
        const auto chain = std::get<HungChain>(doubledChains(tall, lead).left[0]);
        VERIFY_NEAR(kilo(curve.zoneLeast), 80.5 + 2 * chain.massAt(metres(tall ? 1.1 : 0.88)).si(), 1e-12);
        VERIFY_NEAR(kilo(curve.zoneGreatest), 80.5 + 2 * chain.massAt(metres(tall ? 1.28 : 1.02)).si(), 1e-12);
        VERIFY_NEAR(curve.movingBottom.si(), kg[0], 1e-9);
        VERIFY_NEAR(curve.movingTop.si(), kg[2], 1e-9);
    }

    /// Errors of a mark count where the chain moves, not where it lies slack or has run out.
    void chainErrors_data()
    {
        QTest::addColumn<bool>("tall");
        QTest::addColumn<double>("bottom");
        QTest::addColumn<double>("top");
        const double perMetre = 0.1 / std::sqrt(12.0) / 1.5;
        QTest::newRow("short") << false << 0.0 << std::hypot(4 * perMetre * 0.47, 22.8 * 0.01);
        QTest::newRow("tall") << true << std::hypot(4 * perMetre * 0.14, 22.8 * 0.01) << 4 * perMetre * 0.75;
    }
    void chainErrors()
    {
        QFETCH(bool, tall);
        QFETCH(double, bottom);
        QFETCH(double, top);
        const auto curve = *pullCurve(doubledChains(tall));
        VERIFY_NEAR(uOf(curve.bottom), bottom, 1e-12);
        VERIFY_NEAR(uOf(curve.top), top, 1e-12);
        QCOMPARE(curve.top->degreesOfFreedom, knownExactly);
        VERIFY_NEAR(curve.top->giveOrTake / curve.top->u, 1.959963984540054, 1e-12);
    }

    /// Of the mean of the ends and of the work, by the law of propagation (JCGM 100:2008, 5.1.2 and 5.2.2) worked by hand: one chain's
    /// error counts at both ends alike, each mark errs for itself; dW/da = −F(a), dW/db = F(b).
    void endsAndWorkErrors()
    {
        const double perMetre = 0.1 / std::sqrt(12.0) / 1.5, factor = 1.959963984540054, standard = 9.80665;
        const auto ends = [](const Setup& setup) { return asMass(PullSum(setup).endsGiveOrTake(setup.path.bottom, setup.path.top)).si(); };
        const auto work = [](const Setup& setup) { return PullSum(setup).workGiveOrTake(setup.path.bottom, setup.path.top).si(); };
        VERIFY_NEAR(ends(doubledChains(false)), factor * std::hypot(4 * perMetre * 0.47, 22.8 * 0.01) / 2, 1e-12);
        VERIFY_NEAR(ends(doubledChains(true)), factor * std::hypot(4 * perMetre * (0.14 + 0.75), 22.8 * 0.01) / 2, 1e-12);
        for (const bool tall : {false, true}) {
            const auto curve = *pullCurve(doubledChains(tall));
            const double path = tall ? 0.66 : 0.5, a = kilo(curve.bottom), b = kilo(curve.top), m = kilo(curve.mean);
            const double ofMarks = std::hypot(m - a, b - m) / path * 0.01, ofChain = std::sqrt(std::pow(uOf(curve.mean), 2) - ofMarks * ofMarks);
            VERIFY_NEAR_SHARE(work(doubledChains(tall)), factor * standard * std::hypot(ofChain * path, std::hypot(a, b) * 0.01), 1e-12);
        }
        // iron that is weighed, and marks that are exact: nothing is uncertain
        Setup plain = doubledChains(false);
        plain.left.clear();
        plain.right.clear();
        plain.path.uMark = {};
        QVERIFY(ends(plain) == 0 && work(plain) == 0);
    }

    /// At a corner the steeper side counts: whoever stands a hair higher or lower has it.
    void errorsAtACorner_data()
    {
        QTest::addColumn<double>("bottom");
        QTest::addColumn<double>("u");
        QTest::newRow("where the first link comes up") << 0.8 << 0.228;
        QTest::newRow("just below it") << 0.8 - 1e-6 << 0.0;
        QTest::newRow("just above it") << 0.8 + 1e-6 << 0.228;
        QTest::newRow("where the last link goes off") << 1.55 << 0.228;
        QTest::newRow("just above that") << 1.55 + 1e-6 << 0.0;
    }
    void errorsAtACorner()
    {
        QFETCH(double, bottom);
        QFETCH(double, u);
        Setup setup = onBothEnds({hungChain(ChainHanging::Doubled, 1.5, 0.8)});
        setup.path.bottom = metres(bottom);
        setup.path.top = metres(2);
        setup.path.uMark = metres(0.01);
        VERIFY_NEAR(uOf(pullCurve(setup)->bottom), u, 1e-6);
    }

    /// Worked by hand, our own: two bands cut from one fit, slanted, slack up to 1.0298 m.
    void slackAndSlantedBands()
    {
        const auto band = hungBelow(rubberBand(3), 0.05, 0.2);
        const auto curve = *pullCurve(bandsFrom(band, band, 0));
        QCOMPARE(curve.bottom->value, Force{});
        QCOMPARE(curve.zone->value, Force{});
        VERIFY_NEAR_SHARE(kilo(curve.top), 14.339, 5e-4);
        VERIFY_NEAR_SHARE(kilo(curve.mean), 3.7716, 5e-4);
        VERIFY_NEAR_SHARE(asMass(*curve.twoPointMean).si(), 7.1695, 5e-4);
        VERIFY_NEAR_SHARE(uOf(curve.top), 0.05239, 5e-4);
        QCOMPARE(curve.top->degreesOfFreedom, 4.0);
        VERIFY_NEAR_SHARE(uOf(pullCurve(bandsFrom(band, band, 0.01))->top), 0.45381, 5e-4);
        const auto twin = hungBelow(rubberBand(3, true), 0.05, 0.2);
        VERIFY_NEAR_SHARE(uOf(pullCurve(bandsFrom(band, twin, 0.01))->top), 0.956, 5e-4);
    }

    void twoFitsAreIndependentOneFitIsNot()
    {
        const auto shared = hungBelow(rubberBand(3)), own = hungBelow(rubberBand(0));
        const double straight = uOf(pullCurve(bandsFrom(shared, shared, 0))->top), apart = uOf(pullCurve(bandsFrom(own, own, 0))->top);
        VERIFY_NEAR_SHARE(straight, std::sqrt(2.0) * apart, 1e-12);
    }

    /// One fit below and above: what it gets wrong, it gets wrong both ways.
    void sharedErrorsKeepTheSignOfThePull()
    {
        Setup setup;
        setup.left = {hungBelow(rubberBand(3), 0)};
        setup.right = {tests::hungAbove(rubberBand(3), 3)};
        setup.path.bottom = metres(1.5);
        setup.path.top = metres(1.6);
        const auto curve = *pullCurve(setup);
        VERIFY_NEAR(curve.bottom->value.si(), 0, 1e-12);
        VERIFY_NEAR(curve.bottom->u.si(), 0, 1e-12);
        QVERIFY(curve.top->u.si() > 0.1);
    }

    void doubledBandGoesPastItsMeasurement_data()
    {
        QTest::addColumn<double>("wrap");
        QTest::addColumn<double>("bottom");
        QTest::addColumn<double>("known");
        QTest::newRow("without a wrap") << 0.0 << 44.704 << 1.07375;
        QTest::newRow("round a handle of 5 cm") << 0.07853981633974483 << 49.529 << 1.03448;
    }
    void doubledBandGoesPastItsMeasurement()
    {
        QFETCH(double, wrap);
        QFETCH(double, bottom);
        QFETCH(double, known);
        const auto band = *HungBand::of(rubberBand(3), {true, false, metres(0.05), {}, metres(wrap)});
        Setup setup = bandsFrom(band, band, 0.01);
        const auto curve = *pullCurve(setup);
        VERIFY_NEAR_SHARE(kilo(curve.bottom), bottom, 5e-4);
        QVERIFY(!curve.top && !curve.mean && !curve.work && !curve.twoPointMean && !curve.ready);
        QVERIFY(curve.zone.has_value());
        setup.path.top = metres(0.05) + *band.reachKnown();
        const auto whole = *pullCurve(setup);
        QVERIFY(whole.ready);
        VERIFY_NEAR(setup.path.top.si(), known, 5e-6);
        VERIFY_NEAR_SHARE(kilo(whole.top), 73.828, 5e-4);
        QVERIFY(!curve.samples.back().known && curve.samples.front().known);
    }

    /// Worked by hand, our own: a chain deadlift starts as high as the largest plate lets it.
    void smallPlatesStartLower_data()
    {
        QTest::addColumn<double>("diameter");
        QTest::addColumn<double>("bottom");
        QTest::addColumn<double>("mean");
        QTest::addColumn<double>("work");
        QTest::newRow("plates of 45 cm") << 0.45 << 82.565 << 85.3865 << 414.49;
        QTest::newRow("plates of 32.5 cm") << 0.325 << 81.8525 << 85.0303 << 464.88;
    }
    void smallPlatesStartLower()
    {
        QFETCH(double, diameter);
        QFETCH(double, bottom);
        QFETCH(double, mean);
        QFETCH(double, work);
        Setup setup = onBothEnds({hungChain(ChainHanging::Straight, 1.1)});
        setup.path.bottom = metres(diameter / 2);
        setup.path.top = metres(0.72);
        const auto curve = *pullCurve(setup);
        VERIFY_NEAR_SHARE(kilo(curve.bottom), bottom, 1e-9);
        VERIFY_NEAR_SHARE(kilo(curve.top), 88.208, 1e-9);
        VERIFY_NEAR_SHARE(kilo(curve.mean), mean, 1e-5);
        VERIFY_NEAR_SHARE(curve.work->si(), work, 2e-5);
    }

    void rackIsReadWhereverItStands_data()
    {
        QTest::addColumn<double>("rack");
        QTest::addColumn<bool>("ready");
        QTest::newRow("inside the path") << 1.0 << true;
        QTest::newRow("below the bottom") << 0.6 << true;
        QTest::newRow("above the top, still measured") << 1.9 << true;
        QTest::newRow("above the top, past the measurement") << 2.2 << false;
    }
    void rackIsReadWhereverItStands()
    {
        QFETCH(double, rack);
        QFETCH(bool, ready);
        const auto band = hungBelow(rubberBand(3));
        Setup setup = onBothEnds({band});
        setup.path.rack = metres(rack);
        const auto curve = *pullCurve(setup);
        QCOMPARE(curve.ready, ready);
        QCOMPARE(curve.rack.has_value(), ready);
        QVERIFY(curve.mean.has_value());
        if (ready)
            QCOMPARE(curve.rack->value, weight(kilograms(80)) + 2 * band.verticalPull(metres(rack)));
        const bool warned = std::any_of(curve.warnings.begin(), curve.warnings.end(), [](const SetupWarning& w) { return w.code == SetupWarningCode::BeyondMeasured; });
        QCOMPARE(warned, !ready);
    }

    /// A machine that pulls less and less beside a band that pulls more and more: the least pull has no mark of its own.
    void zoneFindsTheTurnInside()
    {
        HungHelp machine = tests::benchAid(1.0);
        machine.helps = false;
        Setup setup;
        setup.left = {hungBelow(lineBand(900), 0.05, 0)};
        setup.right = {machine};
        setup.path = {metres(1.05), metres(1.4), metres(1.06), metres(1.34), std::nullopt, {}};
        const auto curve = *pullCurve(setup);
        const auto pull = [&](double h) { return (hung::pull(setup.left[0], metres(h)) + hung::pull(setup.right[0], metres(h))).si(); };
        double least = 1e9, greatest = -1e9;
        Height turn;
        for (int i = 0; i <= 100000; ++i) {
            if (const double here = pull(1.06 + 0.28 * i / 100000); here < least) {
                least = here;
                turn = metres(1.06 + 0.28 * i / 100000);
            }
            greatest = std::max(greatest, pull(1.06 + 0.28 * i / 100000));
        }
        QVERIFY(least < pull(1.06) - 1 && least < pull(1.34) - 1);
        VERIFY_NEAR(curve.zoneLeast->value.si(), least, 1e-6);
        VERIFY_NEAR(curve.zoneGreatest->value.si(), greatest, 1e-6);
        // as far out as a mark at the turn would be read
        setup.path.rack = turn;
        VERIFY_NEAR_SHARE(curve.zoneLeast->u.si(), pullCurve(setup)->rack->u.si(), 1e-4);
    }

    void cornersAreAmongTheSamples_data()
    {
        QTest::addColumn<Setup>("setup");
        QTest::addColumn<QVector<double>>("heights");
        const auto path = [](HungItem item, double bottom, double top) {
            Setup setup = onBothEnds({std::move(item)});
            setup.path.bottom = metres(bottom);
            setup.path.top = metres(top);
            return setup;
        };
        QTest::newRow("first and last link") << path(hungChain(ChainHanging::Doubled, 0.6, 0.8), 0.7, 1.2) << QVector{0.8, 1.1};
        QTest::newRow("a band comes taut") << path(hungBelow(rubberBand(), 0.05, 0.2), 0.7, 1.2) << QVector{0.05 + std::sqrt(0.96)};
        QTest::newRow("a band's measurement ends") << path(hungBelow(rubberBand()), 1.5, 2.2) << QVector{2.0975};
        QTest::newRow("a band from above goes slack") << path(tests::hungAbove(rubberBand(), 2.1), 0.7, 1.2) << QVector{1.1};
        QTest::newRow("and its measurement begins") << path(tests::hungAbove(rubberBand(), 3), 0.7, 1.2) << QVector{3 - 2.0475};
        QTest::newRow("readings of a bench aid") << path(tests::benchAid(0.9), 0.95, 1.3) << QVector{1.0, 1.1, 1.25};
    }
    void cornersAreAmongTheSamples()
    {
        QFETCH(Setup, setup);
        QFETCH(QVector<double>, heights);
        // one even sample at each end, so that what lies between is a corner
        const auto samples = pullCurve(setup, static_cast<std::size_t>(heights.size()) + 2)->samples;
        QCOMPARE(samples.size(), static_cast<std::size_t>(heights.size()) + 2);
        for (int i = 0; i < heights.size(); ++i)
            VERIFY_NEAR(samples[static_cast<std::size_t>(i) + 1].height.si(), heights[i], 1e-12);
    }

    void sharersKeepTheFewestFreedom()
    {
        auto points = tests::bandPoints();
        points.pop_back();
        Band fewer{*BandFit::with(BandModel::Rubber, metres(1), points), SourceId{3}, false, false};
        for (const auto& [left, right] : {std::pair{rubberBand(3), fewer}, {fewer, rubberBand(3)}})
            QCOMPARE(pullCurve(bandsFrom(hungBelow(left), hungBelow(right), 0))->top->degreesOfFreedom, 3.0);
    }

    /// With fewer samples than corners the lowest corners stay, and the ends.
    void fewSamplesKeepTheLowestCorners()
    {
        const Setup setup = onBothEnds({hungChain(ChainHanging::Straight, 3, 0.8), hungChain(ChainHanging::Straight, 3, 0.9), hungChain(ChainHanging::Straight, 3, 1.0)});
        const auto samples = pullCurve(setup, 4)->samples;
        QCOMPARE(samples.size(), 4u);
        for (const auto& [i, height] : {std::pair{0, 0.77}, {1, 0.8}, {2, 0.9}, {3, 1.27}})
            QCOMPARE(samples[static_cast<std::size_t>(i)].height.si(), height);
    }

    void anchorPullIsTheGreatestOfOneBand()
    {
        QVERIFY(!pullCurve(doubledChains(false))->anchorPull);
        const auto strong = hungBelow(lineBand(400, 1, 3), 0), weak = hungBelow(lineBand(100, 1, 3), 0);
        const auto curve = *pullCurve(bandsFrom(weak, strong, 0));
        VERIFY_NEAR(curve.anchorPull->si(), 400 * 0.27, 1e-9);
        QCOMPARE(pullCurve(bandsFrom(strong, weak, 0))->anchorPull, curve.anchorPull);
        QCOMPARE(pullCurve(bandsFrom(tests::hungAbove(lineBand(400, 1, 3), 3), weak, 0))->anchorPull, std::optional(weak.verticalPull(metres(1.27))));
    }

    void refusals_data()
    {
        QTest::addColumn<QString>("field");
        QTest::addColumn<double>("value");
        QTest::addColumn<QString>("what");
        const double inf = std::numeric_limits<double>::infinity(), notANumber = std::numeric_limits<double>::quiet_NaN();
        QTest::newRow("bar below 0") << "bar" << -1.0 << "bar";
        QTest::newRow("endless collars") << "collars" << inf << "collars";
        QTest::newRow("plates not a number") << "plates" << notANumber << "plates";
        QTest::newRow("u of the iron below 0") << "uIron" << -0.1 << "uncertainty of the plates";
        QTest::newRow("u of the marks not a number") << "uMark" << notANumber << "uncertainty of the marks";
        QTest::newRow("bottom below the floor") << "bottom" << -0.1 << "bottom";
        QTest::newRow("bottom at the top") << "bottom" << 1.27 << "top";
        QTest::newRow("bottom above the top") << "bottom" << 1.5 << "top";
        QTest::newRow("zone below the bottom") << "zoneFrom" << 0.7 << "sticking zone";
        QTest::newRow("zone past the top") << "zoneTo" << 1.3 << "sticking zone";
        QTest::newRow("zone of no height") << "zoneFrom" << 1.02 << "sticking zone";
        QTest::newRow("rack below the floor") << "rack" << -0.5 << "rack mark";
        QTest::newRow("cap not a number") << "cap" << notANumber << "cap";
        QTest::newRow("sleeve below 0") << "sleeve" << -0.4 << "sleeve";
    }
    void refusals()
    {
        QFETCH(QString, field);
        QFETCH(double, value);
        QFETCH(QString, what);
        Setup setup = doubledChains(false);
        const QMap<QString, std::function<void()>> set{
            {"bar", [&] { setup.bar = kilograms(value); }}, {"collars", [&] { setup.collars = kilograms(value); }},
            {"plates", [&] { setup.plates = kilograms(value); }}, {"uIron", [&] { setup.uIron = kilograms(value); }},
            {"uMark", [&] { setup.path.uMark = metres(value); }}, {"bottom", [&] { setup.path.bottom = metres(value); }},
            {"zoneFrom", [&] { setup.path.zoneFrom = metres(value); }}, {"zoneTo", [&] { setup.path.zoneTo = metres(value); }},
            {"rack", [&] { setup.path.rack = metres(value); }}, {"cap", [&] { setup.limits.cap = kilograms(value); }},
            {"sleeve", [&] { setup.limits.sleeve = metres(value); }}};
        set[field]();
        const auto curve = pullCurve(setup);
        QVERIFY(!curve);
        QCOMPARE(curve.error().what, what.toStdString());
        setup = doubledChains(false);
        setup.path.zoneTo.reset();
        QCOMPARE(pullCurve(setup).error().code, Refusal::HeightsOutOfOrder);
    }
};

QTEST_APPLESS_MAIN(TestSetup)
#include "test_setup.moc"
