// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuredkit.h"
#include "core/work/weighup.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <numbers>
#endif

using namespace steelyard;

namespace {

const std::vector<KitItem> kit = {samples::item(1, "Chain", samples::weighed()), samples::item(2, "Band", samples::band()), samples::item(3, "Other band", samples::band()), samples::item(4, "Aid", samples::aid(), false)};
const BarMarks squat = samples::marks(0.90, 1.50);

std::vector<Caution> cautionsOf(std::vector<HungRecord> hung, std::vector<CautionCode> lookedOver = {}, double load = 100)
{
    return weighUp(samples::setup(load, std::move(hung)), kit, squat, lookedOver).cautions;
}

}

/// What has to be looked over, and the kilograms that go with it.
class CautionsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachKindHasItsOwn();
    void inOneOrderHoweverHung();
    void bandsBelowSayThePullOnOneAnchor();
    void doubledBandPullsWithBothStrands();
    void bandsAboveSayWhatSheHoldsIfTheySlip();
    void benchAidSaysWhatSheHoldsIfItTears();
    void massPastTheMeasurementIsNotSaid();
    void onlyWhatWasLookedOverIsMarked();
};

void CautionsTest::eachKindHasItsOwn()
{
    QVERIFY(cautionsOf({}).empty());
    const auto chains = cautionsOf({samples::hung(1, ChainPlacing{})});
    QCOMPARE(chains.size(), std::size_t(1));
    QVERIFY(chains[0].code == CautionCode::Chains && !chains[0].mass);
    const auto below = cautionsOf({samples::hung(2, samples::bandAt(0))});
    QCOMPARE(below.size(), std::size_t(1));
    QVERIFY(below[0].code == CautionCode::BandsBelow);
    const auto above = cautionsOf({samples::hung(2, samples::bandAt(2.4, true))});
    QCOMPARE(above.size(), std::size_t(1));
    QVERIFY(above[0].code == CautionCode::BandsAbove);
}

void CautionsTest::inOneOrderHoweverHung()
{
    const auto all = cautionsOf({samples::hung(3, samples::bandAt(2.4, true)), samples::hung(2, samples::bandAt(0)), samples::hung(1, ChainPlacing{})});
    QCOMPARE(all.size(), std::size_t(3));
    QVERIFY(all[0].code == CautionCode::Chains && all[1].code == CautionCode::BandsBelow && all[2].code == CautionCode::BandsAbove);
}

void CautionsTest::bandsBelowSayThePullOnOneAnchor()
{
    const auto fit = bandFitFrom(samples::band());
    const auto plain = cautionsOf({samples::hung(2, samples::bandAt(0))});
    // one band at the top of the path: 1.50 m of it
    VERIFY_NEAR_SHARE(plain[0].mass->si(), asMass(fit->pull(metres(1.5))).si(), 1e-9);

    BandPlacing slanted = samples::bandAt(0.10);
    slanted.offset = metres(0.30);
    const double along = std::hypot(1.40, 0.30);
    const auto lean = cautionsOf({samples::hung(2, slanted)});
    VERIFY_NEAR_SHARE(lean[0].mass->si(), asMass(fit->pull(metres(along))).si() * 1.40 / along, 1e-9);
}

void CautionsTest::doubledBandPullsWithBothStrands()
{
    const auto fit = bandFitFrom(samples::band());
    BandPlacing doubled = samples::bandAt(0.60);
    doubled.doubled = true;
    doubled.handle = metres(0.05);
    const auto cautions = cautionsOf({samples::hung(2, doubled)});
    const double whole = 2 * 0.90 + std::numbers::pi / 2 * 0.05;
    VERIFY_NEAR_SHARE(cautions[0].mass->si(), 2 * asMass(fit->pull(metres(whole))).si(), 1e-9);
}

void CautionsTest::bandsAboveSayWhatSheHoldsIfTheySlip()
{
    // iron alone
    VERIFY_NEAR_SHARE(cautionsOf({samples::hung(2, samples::bandAt(2.4, true))})[0].mass->si(), 100.0, 1e-12);
    // what hangs otherwise stays: 0.90 m of 5.7 kg/m chain on either side
    const auto withChain = cautionsOf({samples::hung(1, ChainPlacing{}), samples::hung(2, samples::bandAt(2.4, true))});
    VERIFY_NEAR_SHARE(withChain[1].mass->si(), 100 + 2 * 0.90 * 5.7, 1e-12);
}

void CautionsTest::benchAidSaysWhatSheHoldsIfItTears()
{
    // the whole iron, though half of it rests on the aid at the bottom
    const auto alone = cautionsOf({samples::hung(4, AidPlacing{})});
    QCOMPARE(alone.size(), std::size_t(1));
    QVERIFY(alone[0].code == CautionCode::BenchAid && !alone[0].lookedOver);
    VERIFY_NEAR_SHARE(alone[0].mass->si(), 100.0, 1e-12);
    // each says what its own letting go makes: with bands from above the aid's leaves theirs on
    const auto both = cautionsOf({samples::hung(4, AidPlacing{}), samples::hung(2, samples::bandAt(2.4, true))}, {CautionCode::BenchAid});
    QCOMPARE(both.size(), std::size_t(2));
    QVERIFY(both[0].code == CautionCode::BandsAbove && both[1].code == CautionCode::BenchAid && both[1].lookedOver);
    VERIFY_NEAR_SHARE(both[0].mass->si(), 100 - 62.5, 1e-12);
    VERIFY_NEAR_SHARE(both[1].mass->si(), 100 - 2 * asMass(bandFitFrom(samples::band())->pull(metres(1.5))).si(), 1e-9);
}

void CautionsTest::massPastTheMeasurementIsNotSaid()
{
    // what is known of the path would be too little
    BandPlacing doubled = samples::bandAt(0);
    doubled.doubled = true;
    const auto below = cautionsOf({samples::hung(2, doubled)});
    QCOMPARE(below.size(), std::size_t(1));
    QVERIFY(!below[0].mass);
    // bands from above that go past theirs: without them all is known
    const auto above = cautionsOf({samples::hung(2, samples::bandAt(3.4, true))});
    VERIFY_NEAR_SHARE(above[0].mass->si(), 100.0, 1e-12);
    // the other way round: what stays on is not known
    BandPlacing further = samples::bandAt(0.1);
    further.doubled = true;
    further.handle = metres(0.40);
    const auto both = cautionsOf({samples::hung(2, samples::bandAt(2.4, true)), samples::hung(3, further)});
    QCOMPARE(both.size(), std::size_t(2));
    QVERIFY(!both[0].mass && !both[1].mass);
}

void CautionsTest::onlyWhatWasLookedOverIsMarked()
{
    const std::vector<HungRecord> hung = {samples::hung(1, ChainPlacing{}), samples::hung(2, samples::bandAt(0))};
    const auto some = cautionsOf(hung, {CautionCode::BandsBelow});
    QVERIFY(!some[0].lookedOver && some[1].lookedOver);
    const auto all = cautionsOf(hung, {CautionCode::BandsBelow, CautionCode::Chains});
    QVERIFY(all[0].lookedOver && all[1].lookedOver);
}

QTEST_APPLESS_MAIN(CautionsTest)
#include "test_cautions.moc"
