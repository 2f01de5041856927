// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/guiding.h"

#include "core/work/measuredkit.h"
#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <cmath>
#include <numbers>
#endif

using namespace steelyard;

/// What guides a measurement: what it would gain by, how far a band is used, about what to hang.
class GuidingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void gaugedGainsByWeighing();
    void coarseScaleIsNamed();
    void nothingToGainBeforeThereIsAnything();
    void longLinksAreToldByTheirPitch();
    void longestUseIsAtTheFarEnd();
    void longestUseOfADoubledBandIsAllOfIt();
    void noUseWhereItDoesNotHang();
    void measuredUpToItsUseOrTwiceItsRest();
    void massInProportionThenByTheFit();
    void similarLiftsStartAlike();
};

void GuidingTest::gaugedGainsByWeighing()
{
    QCOMPARE(chainGain(samples::gauged()), ChainGain::Weigh);
}

void GuidingTest::coarseScaleIsNamed()
{
    ChainMeasurement chain = samples::weighed();
    chain.mass = kilograms(8);
    chain.scaleStep = kilograms(0.08);
    QCOMPARE(chainGain(chain), ChainGain::Nothing);
    chain.scaleStep = kilograms(0.1);
    QCOMPARE(chainGain(chain), ChainGain::FinerScale);
}

void GuidingTest::nothingToGainBeforeThereIsAnything()
{
    ChainMeasurement chain;
    chain.by = ChainMeasuring::Gauged;
    QCOMPARE(chainGain(chain), ChainGain::Nothing);
}

void GuidingTest::longLinksAreToldByTheirPitch()
{
    // 16 mm round steel: pitch 45 mm short link (DIN 766), 48 mm (EN 818-7), 56 mm long link (DIN 763)
    ChainMeasurement chain;
    chain.wire = metres(0.016);
    QVERIFY(!isLongLink(chain));
    for (const double shortPitch : {0.045, 0.048}) {
        chain.pitch = metres(shortPitch);
        QVERIFY(!isLongLink(chain));
    }
    chain.pitch = metres(0.056);
    QVERIFY(isLongLink(chain));
}

void GuidingTest::longestUseIsAtTheFarEnd()
{
    LiftPath path;
    path.bottom = metres(0.7);
    path.top = metres(1.6);
    BandPlacing placing = samples::bandAt(0.1);
    placing.offset = metres(-0.8);
    const SetupRecord below = samples::setup(60, {samples::hung(1, placing)});
    // 3-4-5: 1.5 m over the anchor and 0.8 m behind it
    VERIFY_NEAR(longestUse(below, path, numberedids::numbered(1))->si(), 1.7, 1e-12);
    // above the path it is longest at the bottom
    const SetupRecord above = samples::setup(60, {samples::hung(1, samples::bandAt(2.2, true))});
    VERIFY_NEAR(longestUse(above, path, numberedids::numbered(1))->si(), 1.5, 1e-12);
}

void GuidingTest::longestUseOfADoubledBandIsAllOfIt()
{
    LiftPath path;
    path.bottom = metres(0.7);
    path.top = metres(1.6);
    BandPlacing placing = samples::bandAt(0.1);
    placing.offset = metres(0);
    placing.doubled = true;
    placing.handle = metres(0.05);
    const SetupRecord setup = samples::setup(60, {samples::hung(1, placing)});
    VERIFY_NEAR(longestUse(setup, path, numberedids::numbered(1))->si(), 3.0 + std::numbers::pi / 2 * 0.05, 1e-12);
}

void GuidingTest::noUseWhereItDoesNotHang()
{
    LiftPath path;
    path.bottom = metres(0.7);
    path.top = metres(1.6);
    const SetupRecord setup = samples::setup(60, {samples::hung(1, samples::bandAt(0.1))});
    QVERIFY(!longestUse(setup, path, numberedids::numbered(2)));
    QVERIFY(!longestUse(setup, path, RecordId{}));
    QVERIFY(!longestUse(setup, std::nullopt, numberedids::numbered(1)));
}

void GuidingTest::measuredUpToItsUseOrTwiceItsRest()
{
    BandMeasurement band;
    QVERIFY(!measureUpTo(band, metres(2)));
    band.rest = metres(0.5);
    QCOMPARE(measureUpTo(band, std::nullopt)->si(), 1.0);
    QCOMPARE(measureUpTo(band, metres(1.3))->si(), 1.3);
    QCOMPARE(measureUpTo(band, metres(0.52))->si(), 1.0);
}

void GuidingTest::similarLiftsStartAlike()
{
    QCOMPARE(similarLifts({1}).size(), std::size_t(1));
    QVERIFY(similarLifts({6}).empty());
    QVERIFY(similarLifts({}).empty());
    for (const Lift& lift : shippedLifts())
        for (const LiftId other : similarLifts(lift.id)) {
            QVERIFY(other != lift.id);
            QVERIFY(shippedLift(other)->onBar && lift.onBar);
            QVERIFY(shippedLift(other)->start == lift.start);
            const auto back = similarLifts(other);
            QVERIFY(std::find(back.begin(), back.end(), lift.id) != back.end());
        }
}

void GuidingTest::massInProportionThenByTheFit()
{
    BandMeasurement band;
    QVERIFY(!massFor(band, metres(1)));
    band.rest = metres(0.5);
    QVERIFY(!massFor(band, metres(1)));
    band.hangings.push_back({kilograms(4), metres(0.7), false, false});
    VERIFY_NEAR(inKilograms(*massFor(band, metres(0.8))), 6.0, 1e-12);
    QVERIFY(!massFor(band, metres(0.5)));
    const BandMeasurement whole = samples::band();
    VERIFY_NEAR(inKilograms(*massFor(whole, metres(1.5))), inKilograms(asMass(bandFitFrom(whole)->pull(metres(1.5)))), 1e-12);
}

QTEST_APPLESS_MAIN(GuidingTest)
#include "test_guiding.moc"
