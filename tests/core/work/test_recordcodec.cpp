// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/records/isometriccodec.h"

#include "tests/core/seal/sealing.h"
#include "tests/core/work/recordsversion1.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <cmath>
#include <rapidcheck.h>
#include <set>
#endif

using namespace steelyard;
using sealing::fromHex;
using sealing::toHex;

namespace {

constexpr VaultSettings metric{}, imperial{MassUnit::Pound, LengthUnit::Inch};

OnLoan onLoan() { return {"the school in Pell", std::chrono::sys_days(std::chrono::days(20100))}; }
Inspection inspection() { return {KitFault::WornLink, "third link from the hook", std::chrono::sys_days(std::chrono::days(20000))}; }
Inspection inspectionOfAScale() { return {KitFault::ZeroRuns, "runs away by a step a minute", std::chrono::sys_days(std::chrono::days(20002))}; }
Inspection inspectionOfARack() { return {KitFault::Weld, {}, std::chrono::sys_days(std::chrono::days(20002))}; }

BarMarks marks()
{
    BarMarks m = samples::marks(0.77, 1.27);
    m.zoneFrom = metres(0.88);
    return m;
}

BarMarks floorMarks()
{
    BarMarks m;
    m.start = LiftStart::Floor;
    m.blocks = metres(0.1016);
    m.top = metres(0.7112);
    return m;
}

IsometricPull isometricPull() { return {{}, {}, LiftId{1}, metres(0.925), kilograms(143.5), kilograms(0.5)}; }
IsometricPull ownIsometricPull() { return {{}, {}, LiftId::added(samples::numbered(9)), metres(0.9144), pounds(315), std::nullopt}; }

BandMeasurement band()
{
    BandMeasurement b;
    b.rest = metres(1);
    b.hangings = {{kilograms(5), metres(1.15), false}, {kilograms(7.5), std::nullopt, true}};
    b.model = BandModel::Rubber;
    return b;
}

BandMeasurement bandReadBothWays()
{
    BandMeasurement b;
    b.rest = metres(1);
    b.hangings = {{kilograms(5), metres(1.15), false, false}, {kilograms(5), metres(1.18), false, true}};
    return b;
}

SetupRecord load()
{
    SetupRecord s;
    s.bar.stock = {{{kilograms(20), metres(0.45), metres(0.04)}, 2}};
    s.bar.trust = PlateTrust::AsMarked;
    s.bar.barEntered = true;
    s.bar.sleeve = metres(0.42);
    s.bar.wanted = kilograms(60);
    s.bar.collars = kilograms(0.5);
    const BandPlacing above{true, true, metres(2.2), metres(-0.15), metres(0.05), kilograms(40)};
    s.hung = {{samples::numbered(1), HungOn::BothSides, ChainPlacing{ChainHangingWay::Bunched, metres(0.8), kilograms(0.4), metres(0.3)}},
              {samples::numbered(2), HungOn::RightOnly, above}};
    return s;
}

struct KindBytes {
    QByteArray name;
    Measured measured;
    const char* expected = nullptr;
};

/// What came after chains and bands.
std::vector<KindBytes> laterKinds()
{
    const double degree = std::acos(-1.0) / 180;
    const MachineMeasurement byRadius{MachineMeasuring::Radius, {}, {}, {{Angle{0}, metres(0.092), {}, {}}, {Angle{37.5 * degree}, metres(0.118), {}, {}}}};
    const MachineMeasurement byPull{MachineMeasuring::Pull, kilograms(40), kilograms(0.2),
                                    {{{}, {}, metres(0.1), kilograms(31.4)}, {{}, {}, metres(0.55), kilograms(42)}}};
    return {{"aid", AidMeasurement{{{kilograms(20), metres(0.145)}, {kilograms(40), metres(0.06), true}}}, recordsversion1::aid},
            {"machine by radius", byRadius, recordsversion1::machineByRadius},
            {"machine by pull", byPull, recordsversion1::machineByPull},
            {"scale", ScaleMeasurement{kilograms(-0.2), kilograms(0.1), {{kilograms(20), kilograms(19.9)}}}, recordsversion1::scale},
            {"plates", IronMeasurement{IronSort::Plates, kilograms(20), kilograms(40.6), kilograms(0.1), kilograms(0.15), 2}, recordsversion1::ironPlates},
            {"bar in pounds", IronMeasurement{IronSort::Bar, pounds(45), pounds(44.1), pounds(0.2), {}, 1}, recordsversion1::ironBarInPounds},
            {"lead", LeadMeasurement{metres(0.62), kilograms(0.35)}, recordsversion1::lead},
            {"rack", RackMeasurement{metres(0.415), metres(0.05), 28, {metres(0.06), metres(2.14)}}, recordsversion1::rack}};
}

BarMarks marksByHole()
{
    BarMarks m = samples::marks(0.765, 1.265);
    m.holes.bottom = HoleRead{samples::numbered(5), 8};
    m.holes.top = HoleRead{samples::numbered(5), 18};
    return m;
}

ChainMeasurement onACheckedScale()
{
    ChainMeasurement chain = samples::weighed();
    chain.scaleAccuracy = kilograms(0.05);
    return chain;
}

SetupRecord weighedIron()
{
    SetupRecord s;
    s.bar.bar = kilograms(20.3);
    s.bar.barEntered = true;
    s.bar.wanted = kilograms(60.9);
    s.bar.barWeighed = IronWeighed{samples::numbered(5), kilograms(0.04)};
    s.bar.stock = {{{kilograms(20.3), metres(0.45), metres(0.04)}, 2, AsTyped{"20", Unit::Kilogram}, IronWeighed{samples::numbered(6), kilograms(0.05)}}};
    return s;
}

SetupRecord loadWithAid()
{
    SetupRecord s;
    s.hung = {{samples::numbered(1), HungOn::BothSides, AidPlacing{}}, {samples::numbered(2), HungOn::BothSides, AidPlacing{metres(0.31)}}};
    return s;
}

Acknowledgement acknowledgement()
{
    Acknowledgement a;
    a.setup = samples::numbered(3);
    a.caution = CautionCode::BandsBelow;
    a.hungMark = samples::numbered(4);
    return a;
}

Acknowledgement acknowledgementOfAnAid()
{
    Acknowledgement a = acknowledgement();
    a.caution = CautionCode::BenchAid;
    return a;
}

Acknowledgement acknowledgementOfARelease()
{
    Acknowledgement a = acknowledgement();
    a.caution = CautionCode::Release;
    return a;
}

ReleasePlan releaseByHooks()
{
    ReleasePlan plan;
    plan.asked.downPercent = 110;
    plan.hook = {kilograms(3.2), kilograms(0.05), metres(0.18), kilograms(60), {metres(0.76), metres(0.8)}};
    plan.measures.sleeveRadius = metres(0.025);
    plan.measures.lipDrop = metres(0.012);
    plan.measures.lowest = {metres(0.725), metres(0.71), metres(0.735)};
    plan.measures.margin = metres(0.05);
    plan.measures.spacing = metres(1.6);
    plan.set = {6, 2, std::chrono::seconds(30), std::chrono::seconds(3), PutBack::EachCluster, PutBackBy::Spotters};
    return plan;
}

ReleasePlan releaseByDumbbells()
{
    ReleasePlan plan;
    plan.way = ReleaseWay::DumbbellsDropped;
    plan.asked = {false, 65, 140.5, true, pounds(265)};
    plan.measures.box = metres(0.381);
    plan.measures.grip = metres(0.8128);
    plan.measures.chest = metres(0.3683);
    plan.measures.throat = metres(0.3048);
    plan.push = pounds(40);
    plan.dumbbell = pounds(35);
    plan.set.tempoDown = std::chrono::milliseconds(2500);
    return plan;
}

/// Length or mass in whole base units, or none.
template <typename Value>
rc::Gen<std::optional<Value>> whole(double perBaseUnit)
{
    return rc::gen::map(rc::gen::maybe(rc::gen::inRange(-5'000'000, 5'000'000)), [perBaseUnit](const rc::Maybe<int>& n) {
        return n ? std::optional(Value::fromSi(*n / perBaseUnit)) : std::nullopt;
    });
}

}

/// The content of records: bytes that stay for ever, and values that come back.
class RecordCodecTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bytesOfVersion1_data();
    void bytesOfVersion1();
    void readAgain();
    void markOfWhatHangs();
    void whatWasWrittenComesBack();
    void cutOrOtherBytesAreNotRead();
    void newerNumbersAreNotRead();
    void whatCannotBeWritten();
    void keptAlike();
    void liftsAsParts();
};

void RecordCodecTest::bytesOfVersion1_data()
{
    QTest::addColumn<QByteArray>("written");
    QTest::addColumn<QByteArray>("expected");
    const auto row = [](const char* name, const Content& content, const char* expected) { QTest::newRow(name) << (content ? toHex(*content) : QByteArray()) << QByteArray(expected); };
    row("marks", contentOf(marks(), metric), recordsversion1::marks);
    row("marks from the floor, in inches", contentOf(floorMarks(), imperial), recordsversion1::floorMarksInInches);
    row("agreement", contentOf(GuardianAgreement{"her mother", std::chrono::sys_days(std::chrono::days(20000))}), recordsversion1::agreement);
    row("body size", contentOf(BodySize{{}, {}, kilograms(61.5), metres(1.72)}, metric), recordsversion1::bodySize);
    row("body size in pounds", contentOf(BodySize{{}, {}, pounds(135.5), std::nullopt}, imperial), recordsversion1::bodySizeInPounds);
    row("isometric pull", contentOf(isometricPull(), metric), recordsversion1::isometricPull);
    row("isometric pull in a lift of our own, in pounds and inches", contentOf(ownIsometricPull(), imperial), recordsversion1::isometricPullInOwnLift);
    row("chain", contentOf(MeasurementRecord{{}, samples::numbered(7), {}, samples::gauged()}, metric), recordsversion1::chain);
    row("band", contentOf(MeasurementRecord{{}, samples::numbered(7), {}, band()}, metric), recordsversion1::band);
    row("band read both ways", contentOf(MeasurementRecord{{}, samples::numbered(7), {}, bandReadBothWays()}, metric), recordsversion1::bandReadBothWays);
    for (const auto& [name, measured, expected] : laterKinds())
        row(name, contentOf(MeasurementRecord{{}, samples::numbered(7), {}, measured}, name.contains("pounds") ? imperial : metric), expected);
    row("marks by hole", contentOf(marksByHole(), metric), recordsversion1::marksByHole);
    row("chain on a checked scale", contentOf(MeasurementRecord{{}, samples::numbered(7), {}, onACheckedScale()}, metric), recordsversion1::chainOnACheckedScale);
    row("load of weighed iron", contentOf(weighedIron(), metric), recordsversion1::loadOfWeighedIron);
    row("load with an aid", contentOf(loadWithAid(), metric), recordsversion1::loadWithAid);
    row("load", contentOf(load(), metric), recordsversion1::load);
    row("inspection", contentOf(inspection()), recordsversion1::inspection);
    row("inspection, fit", contentOf(Inspection{std::nullopt, {}, std::chrono::sys_days(std::chrono::days(20001))}), recordsversion1::inspectionFit);
    row("inspection of a scale", contentOf(inspectionOfAScale()), recordsversion1::inspectionOfAScale);
    row("inspection of a rack", contentOf(inspectionOfARack()), recordsversion1::inspectionOfARack);
    row("on loan", contentOf(onLoan()), recordsversion1::onLoan);
    row("on loan, no day agreed", contentOf(OnLoan{"the rowers"}), recordsversion1::onLoanWithoutDay);
    row("kind of a band", contentOf(ItemKind::Band), recordsversion1::kindOfBand);
    row("acknowledgement", contentOf(acknowledgement()), recordsversion1::acknowledgement);
    row("acknowledgement of an aid", contentOf(acknowledgementOfAnAid()), recordsversion1::acknowledgementOfAnAid);
    row("acknowledgement of a release", contentOf(acknowledgementOfARelease()), recordsversion1::acknowledgementOfARelease);
    row("release by hooks", contentOf(releaseByHooks(), metric), recordsversion1::releaseByHooks);
    row("release by dumbbells, in pounds and inches", contentOf(releaseByDumbbells(), imperial), recordsversion1::releaseByDumbbellsInPounds);
    row("lift that ships", contentOf(LiftId{14}), recordsversion1::lift);
    row("lift that was added", contentOf(LiftId::added(samples::numbered(9))), recordsversion1::addedLift);
    row("start", contentOf(LiftStart::Floor), recordsversion1::fromTheFloor);
}

void RecordCodecTest::bytesOfVersion1()
{
    QFETCH(QByteArray, written);
    QFETCH(QByteArray, expected);
    QCOMPARE(written, expected);
}

void RecordCodecTest::readAgain()
{
    QVERIFY(marksIn(fromHex(recordsversion1::marks)) == marks());
    QVERIFY(marksIn(fromHex(recordsversion1::floorMarksInInches)) == floorMarks());
    QVERIFY((agreementIn(fromHex(recordsversion1::agreement)) == GuardianAgreement{"her mother", std::chrono::sys_days(std::chrono::days(20000))}));
    QVERIFY((bodySizeIn(fromHex(recordsversion1::bodySize)) == BodySize{{}, {}, kilograms(61.5), metres(1.72)}));
    QVERIFY(isometricPullIn(fromHex(recordsversion1::isometricPull)) == isometricPull());
    // pounds come back to the mg
    const auto own = isometricPullIn(fromHex(recordsversion1::isometricPullInOwnLift));
    QVERIFY(own && own->lift == ownIsometricPull().lift && contentOf(*own, WrittenIn::plain()) == contentOf(ownIsometricPull(), WrittenIn::plain()));
    QVERIFY((measurementIn(fromHex(recordsversion1::chain)) == MeasurementRecord{{}, samples::numbered(7), {}, samples::gauged()}));
    QVERIFY((measurementIn(fromHex(recordsversion1::band)) == MeasurementRecord{{}, samples::numbered(7), {}, band()}));
    QVERIFY((measurementIn(fromHex(recordsversion1::bandReadBothWays)) == MeasurementRecord{{}, samples::numbered(7), {}, bandReadBothWays()}));
    for (const auto& [name, measured, expected] : laterKinds()) {
        const auto read = measurementIn(fromHex(expected));
        QVERIFY2(read && read->item == samples::numbered(7) && read->measured.index() == measured.index(), name.constData());
        // angles come back to their thousandth and pounds to the mg, so both are compared as they are written
        QVERIFY2(contentOf(*read, WrittenIn::plain()) == contentOf(MeasurementRecord{{}, samples::numbered(7), {}, measured}, WrittenIn::plain()), name.constData());
    }
    QVERIFY(marksIn(fromHex(recordsversion1::marksByHole)) == marksByHole());
    QVERIFY((measurementIn(fromHex(recordsversion1::chainOnACheckedScale)) == MeasurementRecord{{}, samples::numbered(7), {}, onACheckedScale()}));
    const auto weighed = loadIn(fromHex(recordsversion1::loadOfWeighedIron));
    QVERIFY(weighed == weighedIron());
    QVERIFY((weighed->bar.stock[0].mark == AsTyped{"20", Unit::Kilogram}));
    QVERIFY(loadIn(fromHex(recordsversion1::loadWithAid)) == loadWithAid());
    QVERIFY(loadIn(fromHex(recordsversion1::load)) == load());
    QVERIFY(inspectionIn(fromHex(recordsversion1::inspection)) == inspection());
    const auto fit = inspectionIn(fromHex(recordsversion1::inspectionFit));
    QVERIFY(fit && !fit->fault && fit->note.empty() && fit->day == std::chrono::sys_days(std::chrono::days(20001)));
    QVERIFY(onLoanIn(fromHex(recordsversion1::onLoan)) == onLoan());
    QVERIFY(onLoanIn(fromHex(recordsversion1::onLoanWithoutDay)) == OnLoan{"the rowers"});
    for (int kind = 0; kind <= static_cast<int>(lastItemKind); ++kind) {
        const Content written = contentOf(static_cast<ItemKind>(kind));
        QVERIFY(written && itemKindIn(*written) == static_cast<ItemKind>(kind));
    }
    // a kind that is none, and one of a newer app
    QVERIFY(!itemKindIn(journal::numberItem(1)) && !itemKindIn(journal::numberItem(17)));
    QVERIFY(inspectionIn(fromHex(recordsversion1::inspectionOfAScale)) == inspectionOfAScale());
    QVERIFY(inspectionIn(fromHex(recordsversion1::inspectionOfARack)) == inspectionOfARack());
    std::set<journal::ByteBuffer> findings;
    for (int fault = 0; fault <= static_cast<int>(lastKitFault); ++fault) {
        const Inspection found{static_cast<KitFault>(fault), {}, std::chrono::sys_days(std::chrono::days(20001))};
        const Content written = contentOf(found);
        QVERIFY(written && inspectionIn(*written) == found && findings.insert(*written).second);
    }
    // a finding of a newer app takes it out of use; what is no finding at all is not read
    const auto newer = inspectionIn(fromHex("a201184003194e21"));
    QVERIFY(newer && newer->fault == KitFault::Other);
    QVERIFY(!inspectionIn(fromHex("a2010003194e21")) && !inspectionIn(fromHex("a2012003194e21")));
    QVERIFY(acknowledgementIn(fromHex(recordsversion1::acknowledgement)) == acknowledgement());
    QVERIFY(acknowledgementIn(fromHex(recordsversion1::acknowledgementOfAnAid)) == acknowledgementOfAnAid());
    QVERIFY(acknowledgementIn(fromHex(recordsversion1::acknowledgementOfARelease)) == acknowledgementOfARelease());
    QVERIFY(releasePlanIn(fromHex(recordsversion1::releaseByHooks)) == releaseByHooks());
    const auto dropped = releasePlanIn(fromHex(recordsversion1::releaseByDumbbellsInPounds));
    QVERIFY(dropped && dropped->asked.downOfWayUp && !dropped->asked.inPercent && dropped->asked.downPercent == 140.5);
    QVERIFY(contentOf(*dropped, WrittenIn::plain()) == contentOf(releaseByDumbbells(), WrittenIn::plain()));
    QVERIFY(liftIdIn(fromHex(recordsversion1::lift)) == LiftId{14});
    QVERIFY(liftIdIn(fromHex(recordsversion1::addedLift)) == LiftId::added(samples::numbered(9)));
    QVERIFY(liftStartIn(fromHex(recordsversion1::fromTheFloor)) == LiftStart::Floor);
    for (const std::int64_t number : {0, -1, 65536, 3})
        QVERIFY(number == 3 ? !liftStartIn(journal::numberItem(number)) : !liftIdIn(journal::numberItem(number)));
    QVERIFY(!liftIdIn(journal::idItem({})) && !liftIdIn(journal::textItem("14")));
}

void RecordCodecTest::markOfWhatHangs()
{
    QCOMPARE(hungMark(load()).hex(), std::string(recordsversion1::markOfLoad));
    SetupRecord other = load();
    other.bar = {};
    QVERIFY(hungMark(other) == hungMark(load()));
    std::swap(other.hung[0], other.hung[1]);
    QVERIFY(hungMark(other) != hungMark(load()));
    // what is only asked otherwise leaves a look over; another hook, or another length of it, does not
    SetupRecord released = load();
    released.release = releaseByHooks();
    QCOMPARE(hungMark(released).hex(), std::string(recordsversion1::markOfReleasedLoad));
    released.release->asked.downPercent = 120;
    released.release->set.reps = 3;
    QCOMPARE(hungMark(released).hex(), std::string(recordsversion1::markOfReleasedLoad));
    released.release->hook.settings.back() = metres(0.84);
    QVERIFY(hungMark(released).hex() != recordsversion1::markOfReleasedLoad);
}

void RecordCodecTest::whatWasWrittenComesBack()
{
    const auto length = whole<Length>(1e6);
    const auto mass = whole<Mass>(1e6);
    const bool ok = rc::check("in whole base units, in either set of units", [&](bool inPounds, bool fromFloor) {
        const VaultSettings& typedIn = inPounds ? imperial : metric;
        const BarMarks m{fromFloor ? LiftStart::Floor : LiftStart::OwnBottom, *length, *length, *length, *length, *length, *length};
        RC_ASSERT(marksIn(*contentOf(m, typedIn)) == m);
        const ChainMeasurement c{fromFloor ? ChainMeasuring::Gauged : ChainMeasuring::Weighed, *length, *mass, *mass, *length, *length, *length};
        const MeasurementRecord chain{{}, samples::numbered(5), {}, c};
        RC_ASSERT(measurementIn(*contentOf(chain, typedIn)) == chain);
        BandMeasurement b;
        b.rest = *length;
        for (int i = *rc::gen::inRange(0, 12); i > 0; --i)
            b.hangings.push_back({*mass, *length, *rc::gen::arbitrary<bool>()});
        b.model = *rc::gen::element(std::optional<BandModel>(), std::optional(BandModel::Line), std::optional(BandModel::Quadratic), std::optional(BandModel::Rubber));
        const MeasurementRecord banded{{}, samples::numbered(6), {}, b};
        RC_ASSERT(measurementIn(*contentOf(banded, typedIn)) == banded);
    });
    QVERIFY(ok);
}

void RecordCodecTest::cutOrOtherBytesAreNotRead()
{
    const auto bytes = fromHex(recordsversion1::load);
    for (std::size_t size = 0; size < bytes.size(); ++size)
        QVERIFY(!loadIn(journal::ByteView(bytes).first(size)));
    QVERIFY(!marksIn(fromHex(recordsversion1::load)));
    QVERIFY(!loadIn(fromHex(recordsversion1::marks)));
    QVERIFY(!measurementIn(fromHex(recordsversion1::marks)));
    QVERIFY(!agreementIn(journal::nullItem()));
    const auto plan = fromHex(recordsversion1::releaseByHooks);
    for (std::size_t size = 0; size < plan.size(); ++size)
        QVERIFY(!releasePlanIn(journal::ByteView(plan).first(size)));
    QVERIFY(!releasePlanIn(fromHex(recordsversion1::load)));
    const auto pulled = fromHex(recordsversion1::isometricPull);
    for (std::size_t size = 0; size < pulled.size(); ++size)
        QVERIFY(!isometricPullIn(journal::ByteView(pulled).first(size)));
    for (const auto& [name, measured, expected] : laterKinds()) {
        const auto whole = fromHex(expected);
        for (std::size_t size = 0; size < whole.size(); ++size)
            QVERIFY2(!measurementIn(journal::ByteView(whole).first(size)), name.constData());
    }
}

void RecordCodecTest::newerNumbersAreNotRead()
{
    // a third way to start, a fourth model: a newer app knows what they are
    QVERIFY(marksIn(fromHex("a10101")) && marksIn(fromHex("a10102")));
    QVERIFY(!marksIn(fromHex("a10103")) && !marksIn(fromHex("a10100")) && !marksIn(fromHex("a0")));
    const QByteArray band(recordsversion1::band);
    QVERIFY(band.endsWith("0303"));
    QVERIFY(!measurementIn(fromHex(band.chopped(4) + "0304")));
    // a kind of thing that a newer app has
    QVERIFY(!measurementIn(fromHex("a201500000000000000000000000000000000" "711a0")));
    // a lift that is none, no lift at all, and no height
    QVERIFY(!isometricPullIn(fromHex("a20100" "0483011a00")) && !isometricPullIn(fromHex("a0")) && !isometricPullIn(fromHex("a10101")));
    // a length where a mass belongs
    QVERIFY(!bodySizeIn(fromHex("a101831a03aa6a606436312e350c")));
}

void RecordCodecTest::whatCannotBeWritten()
{
    for (const double value : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(), 1e30}) {
        QVERIFY(!contentOf(samples::marks(0.7, value), metric));
        BandMeasurement b = band();
        b.hangings[1].mass = kilograms(value);
        QVERIFY(!contentOf(MeasurementRecord{{}, samples::numbered(7), {}, b}, metric));
        for (const Measured& m : {Measured(MachineMeasurement{MachineMeasuring::Radius, {}, {}, {{Angle{value}, {}, {}, {}}}}),
                                  Measured(RackMeasurement{{}, {}, 1, {metres(value)}}), Measured(AidMeasurement{{{kilograms(value), {}}}})})
            QVERIFY(!contentOf(MeasurementRecord{{}, samples::numbered(7), {}, m}, metric));
        SetupRecord s = weighedIron();
        s.bar.stock[0].weighed->u = kilograms(value);
        QVERIFY(!contentOf(s, metric));
        s = load();
        s.bar.stock[0].type.mass = kilograms(value);
        QVERIFY(!contentOf(s, metric));
        s = load();
        std::get<BandPlacing>(s.hung[1].placing).handle = metres(value);
        QVERIFY(!contentOf(s, metric));
    }
}

void RecordCodecTest::keptAlike()
{
    // a length typed in inches is not quite that of its micrometres
    BarMarks typed = floorMarks();
    typed.top = Length::fromSi(std::nextafter(0.7112, 1.0));
    QVERIFY(typed != floorMarks() && steelyard::keptAlike(typed, floorMarks()));
    typed.top = metres(0.711201);
    QVERIFY(!steelyard::keptAlike(typed, floorMarks()));
    SetupRecord other = load();
    other.bar.wanted = Mass::fromSi(std::nextafter(60.0, 61.0));
    QVERIFY(other != load() && steelyard::keptAlike(other, load()));
    other.bar.barEntered = false;
    QVERIFY(!steelyard::keptAlike(other, load()));
}

void RecordCodecTest::liftsAsParts()
{
    QCOMPARE(partOf(LiftId{14}), std::string("14"));
    for (const Lift& lift : shippedLifts())
        QVERIFY(liftIn(partOf(lift.id)) == lift.id);
    const LiftId added = LiftId::added(samples::numbered(0xa9));
    QCOMPARE(partOf(added), std::string("000000000000000000000000000000a9"));
    QVERIFY(liftIn(partOf(added)) == added);
    for (const char* text : {"000000000000000000000000000000A9", "00000000000000000000000000000000", "0000000000000000000000000000000a9", "", "0", "014", "14 ", "-1", "65536", "squat"})
        QVERIFY(!liftIn(text));
}

QTEST_APPLESS_MAIN(RecordCodecTest)
#include "test_recordcodec.moc"
