// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/barchanges.h"
#include "core/work/weighup.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <cmath>
#endif

using namespace steelyard;

namespace {

const std::vector<KitItem> kit = {samples::item(1, "Long chain", samples::weighed()), samples::item(2, "Wide band", samples::band())};
const BarMarks squat = samples::marks(0.77, 1.27);

WeighedUp weigh(const SetupRecord& record, const BarMarks& marks = squat, std::vector<CautionCode> lookedOver = {})
{
    return weighUp(record, kit, marks, lookedOver);
}

}

/// The states that entries can bring a set-up to, and what stays known in them.
class ReadinessTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void ironIsReady();
    void outOfUseIsNotReady();
    void ironOutOfUseOrLentIsNotReady();
    void marksMissing();
    void floorLiftNeedsPlates();
    void refusedEntriesAreNamed();
    void marksOutOfOrder();
    void anchorOnTheWrongSide_data();
    void anchorOnTheWrongSide();
    void pullUnknownPastTheMeasurement();
    void platesThatDoNotFitAreNotTaken();
    void lookOverThenReady();
    void lookingOverDoesNotMakeTheUnknownReady();
    void plateUncertaintyShowsAtEveryMark();
    void nearestLoadHangs();
    void samplesAreAsMany();
    void aBandMeasuredLongAgo();
};

void ReadinessTest::ironIsReady()
{
    const WeighedUp up = weigh(samples::setup(100));
    QVERIFY(up.readiness == Readiness::Ready);
    QVERIFY(!up.error);
    QVERIFY(up.cautions.empty());
    QVERIFY(up.curve && up.setup && up.path && up.load);
    QCOMPARE(up.load->total.si(), 100.0);
    for (const auto& reading : {up.curve->bottom, up.curve->top, up.curve->mean}) {
        VERIFY_NEAR_SHARE(asMass(reading->value).si(), 100.0, 1e-12);
        QCOMPARE(reading->giveOrTake.si(), 0.0);
    }
}

void ReadinessTest::outOfUseIsNotReady()
{
    KitItem worn = samples::item(1, "Worn chain", samples::weighed());
    worn.inspection = Inspection{KitFault::WornLink, {}, {}};
    const std::vector<KitItem> kit{worn, samples::item(2, "Sound chain", samples::weighed())};
    const CautionCode looked[] = {CautionCode::Chains};
    const BarMarks marks = samples::marks(0.77, 1.27);
    const WeighedUp with = weighUp(samples::setup(100, {samples::hung(1, samples::chainOn(0.1))}), kit, marks, looked);
    QVERIFY(with.readiness == Readiness::NotToBeUsed);
    QCOMPARE(with.outOfUse, std::vector<std::string>{"Worn chain"});
    // the answer stands all the same, so that another can be found for it
    QVERIFY(with.curve.has_value());
    const WeighedUp without = weighUp(samples::setup(100, {samples::hung(2, samples::chainOn(0.1))}), kit, marks, looked);
    QVERIFY(without.readiness == Readiness::Ready);
    QVERIFY(without.outOfUse.empty());
}

void ReadinessTest::ironOutOfUseOrLentIsNotReady()
{
    const IronMeasurement bar{IronSort::Bar, kilograms(20), kilograms(20.3), kilograms(0.1), {}, 1}, plates{IronSort::Plates, kilograms(20), kilograms(40.6), kilograms(0.1), {}, 2};
    std::vector<KitItem> kit{samples::item(1, "Old bar", bar, false), samples::item(2, "Twenties", plates, false)};
    const BarMarks marks = samples::marks(0.77, 1.27);
    SetupRecord record = samples::setup(60.9);
    record.bar = withWeighedPlates(withWeighedBar(record.bar, {kit[0].id, bar, *checked(bar)}), {kit[1].id, plates, *checked(plates)});
    QVERIFY(weighUp(record, kit, marks, {}).readiness == Readiness::Ready);
    kit[0].inspection = Inspection{KitFault::Crack, {}, {}};
    const WeighedUp cracked = weighUp(record, kit, marks, {});
    QVERIFY(cracked.readiness == Readiness::NotToBeUsed);
    QCOMPARE(cracked.outOfUse, std::vector<std::string>{"Old bar"});
    kit[0].inspection.reset();
    kit[1].lent = OnLoan{"the rowers"};
    const WeighedUp lent = weighUp(record, kit, marks, {});
    QVERIFY(lent.readiness == Readiness::NotToBeUsed);
    QCOMPARE(lent.lentOut, std::vector<std::string>{"Twenties"});
    // plates of theirs that the load does not hang stand in no way
    record.bar.wanted = kilograms(20.3);
    QVERIFY(weighUp(record, kit, marks, {}).readiness == Readiness::Ready);
    // nor iron that was weighed and not taken
    QVERIFY(weighUp(samples::setup(60), kit, marks, {}).readiness == Readiness::Ready);
}

void ReadinessTest::marksMissing()
{
    BarMarks marks;
    WeighedUp up = weigh(samples::setup(100), marks);
    QVERIFY(up.readiness == Readiness::MarksMissing);
    QCOMPARE(*up.error, (Error{Refusal::NotThere, "bottom"}));
    QCOMPARE(up.load->total.si(), 100.0);
    QVERIFY(!up.curve && !up.path && !up.setup && up.cautions.empty());

    marks.bottom = metres(0.77);
    up = weigh(samples::setup(100), marks);
    QVERIFY(up.readiness == Readiness::MarksMissing);
    QCOMPARE(*up.error, (Error{Refusal::NotThere, "top"}));

    marks.top = metres(1.27);
    QVERIFY(weigh(samples::setup(100), marks).readiness == Readiness::Ready);
}

void ReadinessTest::floorLiftNeedsPlates()
{
    BarMarks marks;
    marks.start = LiftStart::Floor;
    marks.top = metres(0.72);
    const WeighedUp up = weigh(samples::setup(20), marks);
    QVERIFY(up.readiness == Readiness::MarksMissing);
    QCOMPARE(*up.error, (Error{Refusal::NotThere, "plates"}));
    QVERIFY(weigh(samples::setup(70), marks).readiness == Readiness::Ready);
}

void ReadinessTest::refusedEntriesAreNamed()
{
    SetupRecord record = samples::setup(100);
    record.bar.bar = kilograms(-1);
    WeighedUp up = weigh(record);
    QVERIFY(up.readiness == Readiness::Refused);
    QCOMPARE(*up.error, (Error{Refusal::OutOfRange, "bar"}));
    QVERIFY(!up.load);

    up = weigh(samples::setup(100, {samples::hung(9, ChainPlacing{})}));
    QVERIFY(up.readiness == Readiness::Refused);
    QCOMPARE(*up.error, (Error{Refusal::NotThere, "item"}));
    QCOMPARE(up.load->total.si(), 100.0);

    up = weigh(samples::setup(100, {samples::hung(1, samples::chainOn(-0.1))}));
    QVERIFY(up.readiness == Readiness::Refused);
    QCOMPARE(*up.error, (Error{Refusal::OutOfRange, "Long chain: lead"}));

    // hung as what it is not
    up = weigh(samples::setup(100, {samples::hung(1, BandPlacing{})}));
    QCOMPARE(*up.error, (Error{Refusal::OutOfRange, "Long chain"}));
    up = weigh(samples::setup(100, {samples::hung(2, ChainPlacing{})}));
    QCOMPARE(*up.error, (Error{Refusal::OutOfRange, "Wide band"}));
}

void ReadinessTest::marksOutOfOrder()
{
    WeighedUp up = weigh(samples::setup(100), samples::marks(1.27, 0.77));
    QVERIFY(up.readiness == Readiness::Refused);
    QCOMPARE(*up.error, (Error{Refusal::HeightsOutOfOrder, "top"}));
    QCOMPARE(up.load->total.si(), 100.0);
    QVERIFY(!up.curve);

    BarMarks marks = squat;
    marks.zoneFrom = metres(0.9);
    up = weigh(samples::setup(100), marks);
    QCOMPARE(*up.error, (Error{Refusal::HeightsOutOfOrder, "sticking zone"}));
    marks.zoneTo = metres(1.0);
    up = weigh(samples::setup(100), marks);
    QVERIFY(up.readiness == Readiness::Ready);
    QVERIFY(up.curve->zone.has_value());
}

void ReadinessTest::anchorOnTheWrongSide_data()
{
    QTest::addColumn<double>("anchor");
    QTest::addColumn<bool>("above");
    QTest::addColumn<bool>("refused");
    QTest::newRow("below, on the floor") << 0.0 << false << false;
    QTest::newRow("below, just under the bottom") << 0.76 << false << false;
    QTest::newRow("below, at the bottom") << 0.77 << false << true;
    QTest::newRow("below, over the top") << 2.2 << false << true;
    QTest::newRow("above, over the top") << 2.2 << true << false;
    QTest::newRow("above, at the top") << 1.27 << true << true;
    QTest::newRow("above, on the floor") << 0.0 << true << true;
}

void ReadinessTest::anchorOnTheWrongSide()
{
    QFETCH(double, anchor);
    QFETCH(bool, above);
    QFETCH(bool, refused);
    const WeighedUp up = weigh(samples::setup(100, {samples::hung(2, samples::bandAt(anchor, above))}));
    QCOMPARE(up.readiness == Readiness::Refused, refused);
    QCOMPARE(up.error.has_value(), refused);
    if (refused)
        QCOMPARE(*up.error, (Error{Refusal::AnchorOnWrongSide, "Wide band: anchor height"}));
}

void ReadinessTest::pullUnknownPastTheMeasurement()
{
    BandPlacing placing = samples::bandAt(0);
    placing.doubled = true;
    const WeighedUp up = weigh(samples::setup(100, {samples::hung(2, placing)}));
    QVERIFY(up.readiness == Readiness::PullUnknown);
    QVERIFY(!up.error);
    QVERIFY(up.curve.has_value());
    QVERIFY(up.curve->bottom.has_value());
    QVERIFY(!up.curve->top && !up.curve->mean);
    // known to 1.05 · 1.95 m of band, doubled: half of that over the floor
    const auto& warnings = up.curve->warnings;
    const auto beyond = std::find_if(warnings.begin(), warnings.end(), [](auto& w) { return w.code == SetupWarningCode::BeyondMeasured; });
    QVERIFY(beyond != warnings.end());
    VERIFY_NEAR(beyond->height->si(), 1.05 * 1.95 / 2, 1e-9);
    QCOMPARE(up.cautions.size(), std::size_t(1));
}

void ReadinessTest::platesThatDoNotFitAreNotTaken()
{
    SetupRecord record = samples::setup(190);
    for (const double room : {0.0, 0.05, 0.10, 0.15}) {
        record.bar.sleeve = metres(room);
        const WeighedUp up = weigh(record);
        QVERIFY(up.readiness == Readiness::Ready);
        QVERIFY(up.load->thickness() <= metres(room));
        QVERIFY(up.curve->warnings.empty());
    }
    record.bar.sleeve = metres(-0.01);
    QVERIFY(weigh(record).readiness == Readiness::Refused);
    QCOMPARE(*weigh(record).error, (Error{Refusal::OutOfRange, "sleeve"}));
}

void ReadinessTest::lookOverThenReady()
{
    const SetupRecord record = samples::setup(100, {samples::hung(1, samples::chainOn(0.8, ChainHangingWay::Doubled))});
    const WeighedUp before = weigh(record), after = weigh(record, squat, {CautionCode::Chains});
    QVERIFY(before.readiness == Readiness::LookOver);
    QVERIFY(after.readiness == Readiness::Ready);
    QVERIFY(!before.cautions.at(0).lookedOver);
    QVERIFY(after.cautions.at(0).lookedOver);
    QVERIFY(weigh(record, squat, {CautionCode::BandsBelow}).readiness == Readiness::LookOver);
}

void ReadinessTest::lookingOverDoesNotMakeTheUnknownReady()
{
    BandPlacing placing = samples::bandAt(0);
    placing.doubled = true;
    const SetupRecord record = samples::setup(100, {samples::hung(2, placing)});
    QVERIFY(weigh(record, squat, {CautionCode::BandsBelow}).readiness == Readiness::PullUnknown);
}

void ReadinessTest::plateUncertaintyShowsAtEveryMark()
{
    SetupRecord record = samples::setup(100);
    record.bar.trust = PlateTrust::Unweighed;
    const WeighedUp up = weigh(record);
    // 2 % either way of 80 kg of plates, rectangular and shared, no more on the bar: JCGM 100:2008, 4.3.7 and 5.2
    const double u = 0.02 * 80 / std::sqrt(3.0);
    for (const auto& reading : {up.curve->bottom, up.curve->top, up.curve->mean}) {
        VERIFY_NEAR_SHARE(asMass(reading->u).si(), u, 1e-12);
        VERIFY_NEAR_SHARE(asMass(reading->giveOrTake).si(), 1.959963984540054 * u, 1e-12);
    }
    record.bar.wanted = kilograms(20);
    QCOMPARE(weigh(record).curve->bottom->u.si(), 0.0);
}

void ReadinessTest::nearestLoadHangs()
{
    QCOMPARE(weigh(samples::setup(101)).load->total.si(), 100.0);
    QCOMPARE(weigh(samples::setup(1000)).load->total.si(), 197.5);
    QCOMPARE(weigh(samples::setup(0)).load->total.si(), 20.0);
}

void ReadinessTest::samplesAreAsMany()
{
    const SetupRecord record = samples::setup(100, {samples::hung(1, samples::chainOn(0.8))});
    QCOMPARE(weighUp(record, kit, squat, {}).curve->samples.size(), std::size_t(200));
    QCOMPARE(weighUp(record, kit, squat, {}, 0).curve->samples.size(), std::size_t(0));
}

void ReadinessTest::aBandMeasuredLongAgo()
{
    using std::chrono::days;
    constexpr std::chrono::sys_days today = std::chrono::year(2026) / 11 / 2;
    const auto weighed = [&](std::optional<days> ago, std::optional<int> limit, bool dayKnown = true) {
        std::vector<KitItem> here = kit;
        if (ago)
            here[1].measuredOn = today - *ago;
        const SetupRecord record = samples::setup(60, {samples::hung(2, samples::bandAt(0), HungOn::LeftOnly), samples::hung(2, samples::bandAt(0.1), HungOn::RightOnly)});
        HeldTo heldTo{withLimit({}, LimitKind::BandAge, limit), {}};
        if (dayKnown)
            heldTo.day = today;
        return weighUp(record, here, squat, {}, usualSampleCount, heldTo);
    };
    const WeighedUp fresh = weighed(days(182), {}), old = weighed(days(183), {});
    QVERIFY(fresh.oldBands.empty());
    QCOMPARE(old.oldBands.size(), std::size_t(1));
    QCOMPARE(old.oldBands[0].item, std::string("Wide band"));
    QVERIFY(old.oldBands[0].measuredOn == today - days(183));
    // the same pull, and what the band makes uncertain half as much again; bar marks and iron are what they were
    QCOMPARE(old.curve->top->value.si(), fresh.curve->top->value.si());
    const auto fitTerm = [](const WeighedUp& up) { return std::get<HungBand>(up.setup->left.front()).effectAt(metres(1.27)).amount[0]; };
    VERIFY_NEAR(fitTerm(old), 1.5 * fitTerm(fresh), 1e-12);
    QVERIFY(old.curve->top->u > fresh.curve->top->u && old.curve->top->u < 1.5 * fresh.curve->top->u);
    // by the coach's own limit, and never where a day is not known
    QVERIFY(!weighed(days(31), 30).oldBands.empty() && weighed(days(30), 30).oldBands.empty());
    QVERIFY(weighed(std::nullopt, 1).oldBands.empty() && weighed(days(900), {}, false).oldBands.empty());
}

QTEST_APPLESS_MAIN(ReadinessTest)
#include "test_readiness.moc"
