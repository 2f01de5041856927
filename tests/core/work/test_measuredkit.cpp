// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuredkit.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <cmath>
#include <functional>
#include <limits>
#endif

using namespace steelyard;

Q_DECLARE_METATYPE(std::function<void(ChainMeasurement&)>)

namespace {

using ChangeChain = std::function<void(ChainMeasurement&)>;

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

}

/// What a measurement makes, and which entry is named when it makes nothing.
class MeasuredKitTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void weighedChainByHand();
    void gaugedChainByHand();
    void chainRefusalsNameTheEntry_data();
    void chainRefusalsNameTheEntry();
    void chainsKeepTheirSourceAndPitch();
    void fitTakesWholeHangingsOnly();
    void bandRefusalsNameTheEntry();
    void ownModelOrTheBest();
    void giveOrTakeOfABand_data();
    void giveOrTakeOfABand();
    void oddHangingByItsPlaceInTheList();
    void noOddHangingAmongFew();
    void loadsStandOnBarAndCollars();
    void sleeveLeavesOutWhatDoesNotFit();
    void uncertaintyOfUnweighedPlatesIsShared();
    void uncertaintyOfWeighedIronAddsStraight();
    void accuracyOfTheScaleGoesIntoTheChain();
};

void MeasuredKitTest::weighedChainByHand()
{
    const auto chain = chainFrom(samples::weighed());
    QVERIFY(chain.ok());
    QCOMPARE(chain->perLength.value.si(), 8.55 / 1.5);
    // a reading in steps of d is uncertain by d/√12 (JCGM 100:2008, 4.3.7)
    QCOMPARE(chain->perLength.u.si(), 0.1 / std::sqrt(12.0) / 1.5);
    QCOMPARE(chain->length.si(), 1.5);
}

void MeasuredKitTest::gaugedChainByHand()
{
    const auto chain = chainFrom(samples::gauged());
    QVERIFY(chain.ok());
    // a link is two straights of p − b and two half rings of mean diameter b + d, one link to a pitch
    VERIFY_NEAR_SHARE(chain->perLength.value.si(), 5.784562836055258, 1e-12);
    VERIFY_NEAR_SHARE(chain->perLength.u.si(), 0.03 * 5.784562836055258, 1e-12);
    QCOMPARE(chain->length.si(), 1.8);
}

void MeasuredKitTest::chainRefusalsNameTheEntry_data()
{
    QTest::addColumn<bool>("byGauge");
    QTest::addColumn<ChangeChain>("change");
    QTest::addColumn<int>("code");
    QTest::addColumn<QString>("what");
    const int missing = static_cast<int>(Refusal::NotThere), wrong = static_cast<int>(Refusal::OutOfRange);
    const auto row = [](const char* name, bool byGauge, int code, const char* what, ChangeChain change) {
        QTest::newRow(name) << byGauge << std::move(change) << code << QString::fromLatin1(what);
    };
    row("weighed, no length", false, missing, "length", [](auto& m) { m.length.reset(); });
    row("weighed, no mass", false, missing, "mass", [](auto& m) { m.mass.reset(); });
    row("weighed, no step", false, missing, "scale step", [](auto& m) { m.scaleStep.reset(); });
    row("weighed, length nought", false, wrong, "length", [](auto& m) { m.length = Length{}; });
    row("weighed, length not a number", false, wrong, "length", [](auto& m) { m.length = metres(notANumber); });
    row("weighed, mass nought", false, wrong, "mass", [](auto& m) { m.mass = Mass{}; });
    row("weighed, step over the mass", false, wrong, "scale step", [](auto& m) { m.scaleStep = kilograms(9); });
    row("gauged, no length", true, missing, "length", [](auto& m) { m.length.reset(); });
    row("gauged, no wire", true, missing, "wire", [](auto& m) { m.wire.reset(); });
    row("gauged, no pitch", true, missing, "pitch", [](auto& m) { m.pitch.reset(); });
    row("gauged, no inner width", true, missing, "inner width", [](auto& m) { m.innerWidth.reset(); });
    row("gauged, wire not a number", true, wrong, "wire", [](auto& m) { m.wire = metres(notANumber); });
    row("gauged, pitch under the wire", true, wrong, "pitch", [](auto& m) { m.pitch = metres(0.01); });
    row("gauged, inner width nought", true, wrong, "inner width", [](auto& m) { m.innerWidth = Length{}; });
}

void MeasuredKitTest::chainRefusalsNameTheEntry()
{
    QFETCH(bool, byGauge);
    QFETCH(ChangeChain, change);
    QFETCH(int, code);
    QFETCH(QString, what);
    ChainMeasurement m = byGauge ? samples::gauged() : samples::weighed();
    change(m);
    const auto chain = chainFrom(m);
    QVERIFY(!chain.ok());
    QCOMPARE(static_cast<int>(chain.error().code), code);
    QCOMPARE(QString::fromStdString(chain.error().what), what);
}

void MeasuredKitTest::chainsKeepTheirSourceAndPitch()
{
    ChainMeasurement m = samples::weighed();
    m.pitch = metres(0.045);
    const auto chain = chainFrom(m, SourceId{7});
    QVERIFY(chain.ok());
    QVERIFY(chain->measurement == SourceId{7});
    QCOMPARE(chain->pitch.value_or(Length{}).si(), 0.045);
}

void MeasuredKitTest::fitTakesWholeHangingsOnly()
{
    BandMeasurement m = samples::band();
    m.hangings.insert(m.hangings.begin(), {std::nullopt, metres(1.1), false});
    m.hangings.push_back({kilograms(20), std::nullopt, false});
    m.hangings.push_back({kilograms(40), metres(1.3), true});
    const auto points = pointsOnFit(m);
    QCOMPARE(points.size(), std::size_t(6));
    QCOMPARE(points.front().length.si(), 1.15);
    QCOMPARE(points.front().pull.si(), 5 * 9.80665);
    const auto with = bandFitFrom(m), without = bandFitFrom(samples::band());
    QVERIFY(with.ok() && without.ok());
    QCOMPARE(with->points(), std::size_t(6));
    QCOMPARE(with->pull(metres(1.6)).si(), without->pull(metres(1.6)).si());
}

void MeasuredKitTest::bandRefusalsNameTheEntry()
{
    BandMeasurement m = samples::band();
    m.rest.reset();
    QCOMPARE(bandFitFrom(m).error(), (Error{Refusal::NotThere, "rest length"}));
    m = samples::band();
    for (BandHanging& h : m.hangings)
        h.leftOut = true;
    QCOMPARE(bandFitFrom(m).error(), (Error{Refusal::NotThere, "points"}));
    m = samples::band();
    m.rest = metres(1.2);
    QCOMPARE(bandFitFrom(m).error(), (Error{Refusal::BelowRest, "point 1"}));
    m = samples::band(1.0, {{5, 1.15}});
    QVERIFY(bandFitFrom(m).error().code == Refusal::TooFewPoints);
    m.rest = metres(notANumber);
    QCOMPARE(bandFitFrom(m).error(), (Error{Refusal::OutOfRange, "rest length"}));
}

void MeasuredKitTest::ownModelOrTheBest()
{
    BandMeasurement m = samples::band();
    for (const BandModel model : {BandModel::Line, BandModel::Quadratic, BandModel::Rubber}) {
        m.model = model;
        const auto fit = bandFitFrom(m);
        QVERIFY(fit.ok());
        QVERIFY(fit->model() == model);
    }
    m.model.reset();
    const auto best = BandFit::best(*m.rest, pointsOnFit(m)), fit = bandFitFrom(m);
    QVERIFY(best.ok() && fit.ok());
    QVERIFY(fit->model() == best->model());
    QCOMPARE(fit->pull(metres(1.6)).si(), best->pull(metres(1.6)).si());
}

void MeasuredKitTest::giveOrTakeOfABand_data()
{
    QTest::addColumn<int>("points");
    QTest::addColumn<double>("length");
    QTest::addColumn<double>("newtons");
    // least squares with NumPy, Student's t with SciPy; under five points u is at least 5 % of the pull (our choice)
    QTest::newRow("two points: five per cent, known") << 2 << 1.95 << 16.818095707866014;
    QTest::newRow("three points: five per cent, hardly any of it estimated") << 3 << 1.95 << 16.838469110210028;
    QTest::newRow("six points, at the longest") << 6 << 1.95 << 1.1583914508430841;
    QTest::newRow("six points, between") << 6 << 1.5 << 0.662088233417744;
}

void MeasuredKitTest::giveOrTakeOfABand()
{
    QFETCH(int, points);
    QFETCH(double, length);
    QFETCH(double, newtons);
    BandMeasurement m = samples::band();
    if (points < 6)
        m.hangings = points == 2 ? std::vector{m.hangings[0], m.hangings[5]} : std::vector{m.hangings[0], m.hangings[3], m.hangings[5]};
    const auto fit = bandFitFrom(m);
    QVERIFY(fit.ok());
    VERIFY_NEAR_SHARE(bandGiveOrTake(*fit, metres(length)).si(), newtons, 1e-9);
    QCOMPARE(bandGiveOrTake(*fit, metres(1.0)).si(), 0.0);
}

void MeasuredKitTest::oddHangingByItsPlaceInTheList()
{
    BandMeasurement m = samples::band();
    m.hangings[3].length = metres(1.40); // read 12 cm short
    const auto plain = oddHanging(m);
    QVERIFY(plain.has_value());
    QCOMPARE(plain->index, std::size_t(3));
    QVERIFY(plain->off.si() > 0);

    // hangings off the fit stand before it: one left out, one without a mass
    m.hangings.insert(m.hangings.begin(), {{kilograms(9), metres(1.9), true}, {std::nullopt, metres(1.2), false}});
    const auto moved = oddHanging(m);
    QVERIFY(moved.has_value());
    QCOMPARE(moved->index, std::size_t(5));
    QCOMPARE(moved->off.si(), plain->off.si());

    m.hangings[5].leftOut = true;
    const auto gone = oddHanging(m);
    QVERIFY(!gone || gone->index != 5);
}

void MeasuredKitTest::noOddHangingAmongFew()
{
    BandMeasurement m = samples::band(1.0, {{5, 1.15}, {10, 1.90}, {15, 1.72}, {17.5, 1.95}});
    QVERIFY(!oddHanging(m));
    QVERIFY(!oddHanging(BandMeasurement{}));
    QVERIFY(!oddHanging(samples::band()));
}

void MeasuredKitTest::loadsStandOnBarAndCollars()
{
    BarRecord bar = samples::bar(100);
    bar.bar = kilograms(15);
    bar.collars = kilograms(5);
    const auto loads = loadsOf(bar);
    QVERIFY(loads.ok());
    QCOMPARE(loads->all().front().total.si(), 20.0);
    // 25 + 20 + 15 + 10 + 10 + 5 + 2.5 + 1.25 a side
    QCOMPARE(loads->all().back().total.si(), 20.0 + 2 * 88.75);
    bar.stock[0].count = -1;
    QCOMPARE(loadsOf(bar).error(), (Error{Refusal::OutOfRange, "count of plates"}));
}

void MeasuredKitTest::sleeveLeavesOutWhatDoesNotFit()
{
    BarRecord bar = samples::bar(100);
    bar.sleeve = metres(0.05);
    const auto loads = loadsOf(bar);
    QVERIFY(loads.ok());
    for (const PlateLoad& load : loads->all())
        QVERIFY(load.thickness() <= metres(0.05));
    QCOMPARE(loads->all().back().total.si(), 70.0);
}

void MeasuredKitTest::uncertaintyOfUnweighedPlatesIsShared()
{
    const auto u = [](const BarRecord& bar) { return ironUncertainty(bar, loadsOf(bar)->nearest(bar.wanted)).si(); };
    BarRecord bar = samples::bar(100);
    QCOMPARE(u(bar), 0.0);
    bar.trust = PlateTrust::Unweighed;
    // 2 % either way, rectangular: 0.02/√3, straight in the mass
    VERIFY_NEAR(u(bar), 0.02 / std::sqrt(3.0) * 80, 1e-12);
    bar.wanted = kilograms(60);
    VERIFY_NEAR(u(bar), 0.02 / std::sqrt(3.0) * 40, 1e-12);
    bar.wanted = kilograms(20);
    QCOMPARE(u(bar), 0.0);
}

void MeasuredKitTest::uncertaintyOfWeighedIronAddsStraight()
{
    const auto u = [](const BarRecord& bar) { return ironUncertainty(bar, loadsOf(bar)->nearest(bar.wanted)).si(); };
    BarRecord bar = samples::bar(60.6);
    bar.trust = PlateTrust::Unweighed;
    bar.stock = {{{kilograms(20.3), metres(0.45), metres(0.04)}, 2, AsTyped{"20", Unit::Kilogram}, IronWeighed{samples::numbered(6), kilograms(0.05)}},
                 {{kilograms(10), metres(0.325), metres(0.031)}, 2}};
    // two plates by one scale share its error (JCGM 100:2008, 5.2.2, note 1: correlation 1 adds straight)
    VERIFY_NEAR(u(bar), 2 * 0.05, 1e-12);
    bar.barWeighed = IronWeighed{samples::numbered(5), kilograms(0.04)};
    VERIFY_NEAR(u(bar), 2 * 0.05 + 0.04, 1e-12);
    // unweighed plates beside them know nothing of that scale: in quadrature
    bar.wanted = kilograms(80.6);
    VERIFY_NEAR(u(bar), std::hypot(0.14, 0.02 / std::sqrt(3.0) * 20), 1e-12);
    // weighed plates that stay in the rack say nothing of what hangs
    bar.wanted = kilograms(40);
    bar.barWeighed.reset();
    VERIFY_NEAR(u(bar), 0.02 / std::sqrt(3.0) * 20, 1e-12);
    QVERIFY(!ironKnown(bar, loadsOf(bar)->nearest(bar.wanted)).weighed);
}

void MeasuredKitTest::accuracyOfTheScaleGoesIntoTheChain()
{
    ChainMeasurement chain = samples::weighed();
    chain.scaleAccuracy = kilograms(0.2);
    // √(d²/12 + a²/3), step and accuracy both rectangular (JCGM 100:2008, 4.3.7)
    VERIFY_NEAR(chainFrom(chain)->perLength.u.si(), std::sqrt(0.1 * 0.1 / 12 + 0.2 * 0.2 / 3) / 1.5, 1e-12);
    chain.scaleAccuracy = kilograms(-0.1);
    QCOMPARE(chainFrom(chain).error(), (Error{Refusal::OutOfRange, "scale accuracy"}));
}

QTEST_APPLESS_MAIN(MeasuredKitTest)
#include "test_measuredkit.moc"
