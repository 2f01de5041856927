// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/records/implementcodec.h"
#include "tests/core/seal/sealing.h"
#include "tests/core/work/implements/borrowed.h"
#include "tests/core/work/recordsversion1.h"

#include <QtTest>

#include <limits>
#include <rapidcheck.h>
#endif

using namespace steelyard;
using namespace borrowed;
using sealing::fromHex;
using sealing::toHex;

namespace {

constexpr VaultSettings metric{}, imperial{MassUnit::Pound, LengthUnit::Inch};

struct Kept {
    QByteArray name;
    Measured measured;
    const char* expected = nullptr;
};

LogMeasurement logOfGirths()
{
    LogMeasurement m;
    m.girths = true;
    m.length = metres(1.9939);
    m.firstAcross = metres(0.9144);
    m.secondAcross = metres(0.7747);
    m.gravityRatio = 0.405;
    m.moisturePercent = 12.5;
    return m;
}

KegMeasurement kegByCapacity()
{
    KegMeasurement m = lyingKeg();
    m.length.reset();
    m.capacity = Volume::fromSi(0.0567);
    return m;
}

KegMeasurement sandbag()
{
    KegMeasurement m;
    m.sort = KegSort::Sandbag;
    m.empty = pounds(3);
    m.whole.step = pounds(0.5);
    m.density = DensityRange{1450, 1650};
    m.content = Volume::fromSi(0.0185);
    return m;
}

SledMeasurement sledOnACheckedScale()
{
    SledMeasurement m = sled();
    m.whole = onScale(24.8, 0.2, 0.1);
    return m;
}

BellMeasurement adjustable()
{
    BellMeasurement m;
    m.settings = {kilograms(12), kilograms(16)};
    m.handle = metres(0.035);
    m.window = metres(0.12);
    m.oneHand = HandFit::Fits;
    m.twoHands = HandFit::DoesNotFit;
    m.note = "sharp seam";
    return m;
}

IronMeasurement barByEnds()
{
    IronMeasurement m;
    m.step = pounds(0.2);
    m.ends = BothEnds{pounds(22.4), pounds(23), {}, {}, {}};
    return m;
}

std::vector<Kept> all()
{
    return {{"tyre by edges", tyre(), recordsversion1::tyreByEdges},
            {"unknown tyre", unknownTyre(), recordsversion1::tyreUnknown},
            {"log in inches", logOfGirths(), recordsversion1::logBySizeInInches},
            {"log by ends", logByEnds(), recordsversion1::logByEnds},
            {"stone", stone(), recordsversion1::stone},
            {"keg", kegByCapacity(), recordsversion1::kegLying},
            {"sandbag in pounds", sandbag(), recordsversion1::sandbagInPounds},
            {"sled", sledOnACheckedScale(), recordsversion1::sled},
            {"yoke", CarryMeasurement{CarrySort::Yoke, marked(60)}, recordsversion1::yoke},
            {"adjustable kettlebell", adjustable(), recordsversion1::kettlebellAdjustable},
            {"bar by ends in pounds", barByEnds(), recordsversion1::barByEndsInPounds}};
}

MeasurementRecord record(const Measured& measured)
{
    return {{}, numbered(7), {}, measured};
}

SledSurface keptSurface()
{
    SledSurface s = surface(numbered(2), numbered(7));
    s.day = {};
    s.readings = {{kilograms(20), kilograms(14.5)}, {kilograms(60), kilograms(26)}};
    s.hip = metres(0.95);
    s.scaleAccuracy = kilograms(0.3);
    return s;
}

SledRunTimed keptRun()
{
    SledRunTimed r = run({}, numbered(2), numbered(7), 40, 5);
    r.day = {};
    r.distance = Entered<Length>(metres(20), AsTyped{"20", Unit::Metre});
    r.time = std::chrono::milliseconds(4120);
    r.hip = metres(0.98);
    return r;
}

}

/// What is written down of implements, sleds and caps: bytes that stay for ever, and values that come back.
class ImplementCodecTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bytesOfVersion1()
    {
        for (const auto& [name, measured, expected] : all()) {
            const Content written = contentOf(record(measured), name.contains("inches") || name.contains("pounds") ? imperial : metric);
            QVERIFY2(written && toHex(*written) == expected, name.constData());
        }
        QCOMPARE(toHex(*contentOf(ItemKind::Tyre)), QByteArray(recordsversion1::kindOfTyre));
        QCOMPARE(toHex(*contentOf(Inspection{KitFault::WireShowing, "at the bead", std::chrono::sys_days(std::chrono::days(20003))})), QByteArray(recordsversion1::inspectionOfATyre));
        QCOMPARE(toHex(*contentOf(keptSurface(), metric)), QByteArray(recordsversion1::surface));
        QCOMPARE(toHex(*contentOf(keptRun(), metric)), QByteArray(recordsversion1::timedRun));
        QCOMPARE(toHex(*contentOf(CapRule{deadliftId, 60})), QByteArray(recordsversion1::cap));
        QCOMPARE(toHex(*laneContent(Entered<Length>(metres(25), AsTyped{"25", Unit::Metre}), metric)), QByteArray(recordsversion1::lane));
    }

    void readAgain()
    {
        for (const auto& [name, measured, expected] : all()) {
            const auto read = measurementIn(fromHex(expected));
            QVERIFY2(read && read->measured.index() == measured.index(), name.constData());
            // pounds and inches come back to the mg and µm, so both are compared as they are written
            QVERIFY2(contentOf(*read, WrittenIn::plain()) == contentOf(record(measured), WrittenIn::plain()), name.constData());
        }
        const auto litres = std::get<KegMeasurement>(measurementIn(fromHex(recordsversion1::kegLying))->measured).capacity;
        QVERIFY(litres && (litres->typed() == AsTyped{"56.7", Unit::Litre}));
        QVERIFY(sledSurfaceIn(fromHex(recordsversion1::surface)) == keptSurface());
        QVERIFY(sledRunIn(fromHex(recordsversion1::timedRun)) == keptRun());
        QVERIFY((capRuleIn(fromHex(recordsversion1::cap)) == CapRule{deadliftId, 60}));
        QVERIFY(laneIn(fromHex(recordsversion1::lane)) == Entered<Length>(metres(25)));
        QVERIFY(inspectionIn(fromHex(recordsversion1::inspectionOfATyre))->fault == KitFault::WireShowing);
    }

    void whatWasWrittenComesBack()
    {
        const auto mass = [] { return *rc::gen::map(rc::gen::inRange(0, 400'000'000), [](int mg) { return kilograms(mg / 1e6); }); };
        const auto length = [] { return *rc::gen::map(rc::gen::inRange(0, 4'000'000), [](int um) { return metres(um / 1e6); }); };
        QVERIFY(rc::check("of every kind, in either set of units", [&](bool inPounds) {
            const VaultSettings& in = inPounds ? imperial : metric;
            TyreMeasurement t;
            t.by = *rc::gen::element(TyreMeasuring::Unknown, TyreMeasuring::Edge, TyreMeasuring::Whole);
            t.drained = *rc::gen::arbitrary<bool>();
            for (int i = *rc::gen::inRange(0, 3); i > 0; --i)
                t.edges.push_back({mass(), length(), length()});
            t.whole = {mass(), mass(), mass(), mass()};
            LogMeasurement l;
            l.by = *rc::gen::element(LogMeasuring::Unknown, LogMeasuring::Size, LogMeasuring::Ends, LogMeasuring::Whole);
            l.girths = *rc::gen::arbitrary<bool>();
            l.length = length();
            l.gravityRatio = *rc::gen::inRange(1, 1550) / 1000.0;
            l.moisturePercent = *rc::gen::inRange(0, 3000) / 10.0;
            l.ends = {mass(), mass(), length(), length(), length()};
            KegMeasurement k;
            k.sort = *rc::gen::element(KegSort::Keg, KegSort::Sandbag);
            k.by = *rc::gen::element(KegMeasuring::Unknown, KegMeasuring::Litres, KegMeasuring::Standing, KegMeasuring::Lying, KegMeasuring::Whole);
            k.filling = *rc::gen::element(Filling::Water, Filling::DrySand, Filling::WetSand, Filling::LeadShot, Filling::RubberCrumb);
            k.content = Volume::fromSi(*rc::gen::inRange(0, 90'000) / 1e6);
            k.pressure = *rc::gen::element(KegPressure::NotKnown, KegPressure::Holding, KegPressure::Released);
            BellMeasurement b;
            b.sort = *rc::gen::element(BellSort::Kettlebell, BellSort::Dumbbell);
            for (int i = *rc::gen::inRange(0, 6); i > 0; --i)
                b.settings.emplace_back(mass());
            b.oneHand = *rc::gen::element(HandFit::NotTried, HandFit::Fits, HandFit::DoesNotFit);
            CarryMeasurement c{*rc::gen::element(CarrySort::Handles, CarrySort::OneHandle, CarrySort::HexBar, CarrySort::Yoke, CarrySort::Frame), {mass(), mass(), {}, {}}};
            for (const Measured& measured : {Measured(t), Measured(l), Measured(k), Measured(b), Measured(c), Measured(SledMeasurement{{mass(), mass(), {}, {}}, length(), length()})})
                RC_ASSERT(measurementIn(*contentOf(record(measured), in)) == record(measured));
        }));
    }

    void cutOrOtherBytesAreNotRead()
    {
        for (const auto& [name, measured, expected] : all()) {
            const auto whole = fromHex(expected);
            for (std::size_t size = 0; size < whole.size(); ++size)
                QVERIFY2(!measurementIn(journal::ByteView(whole).first(size)), name.constData());
        }
        for (const char* hex : {recordsversion1::surface, recordsversion1::timedRun, recordsversion1::cap, recordsversion1::lane}) {
            const auto whole = fromHex(hex);
            for (std::size_t size = 0; size < whole.size(); ++size) {
                const auto cut = journal::ByteView(whole).first(size);
                QVERIFY(!sledSurfaceIn(cut) && !sledRunIn(cut) && !capRuleIn(cut) && !laneIn(cut));
            }
        }
        QVERIFY(!sledRunIn(fromHex(recordsversion1::surface)) && !sledSurfaceIn(fromHex(recordsversion1::timedRun)) && !laneIn(fromHex(recordsversion1::cap)));
        // no share, more than all of it, and no lift
        for (const char* hex : {"a2010e0200", "a2010e021865", "a201000218" "3c", "a1010e"})
            QVERIFY(!capRuleIn(fromHex(hex)));
        // a way of measuring that a newer app has
        QVERIFY(!measurementIn(fromHex("a201500000000000000000000000000000000" "70aa301040380" "04a0")));
    }

    void whatCannotBeWritten()
    {
        for (const double value : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(), 1e30}) {
            LogMeasurement l = logBySize();
            l.gravityRatio = value;
            QVERIFY(!contentOf(record(l), metric));
            l = logBySize();
            l.moisturePercent = value;
            QVERIFY(!contentOf(record(l), metric));
            KegMeasurement k = lyingKeg();
            k.capacity = Volume::fromSi(value);
            QVERIFY(!contentOf(record(k), metric));
            TyreMeasurement t = tyre();
            t.edges[1].farContact = metres(value);
            QVERIFY(!contentOf(record(t), metric));
            SledRunTimed r = keptRun();
            r.added = kilograms(value);
            QVERIFY(!contentOf(r, metric));
            QVERIFY(!laneContent(metres(value), metric));
        }
    }
};

QTEST_APPLESS_MAIN(ImplementCodecTest)
#include "test_implementcodec.moc"
