// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "tests/tour/seasonfile.h"

#include "core/work/desk.h"
#include "core/work/measuredkit.h"
#include "tests/core/numberedids.h"

#include <QtTest>

#include <algorithm>
#endif

using namespace steelyard;
using numberedids::numbered;

namespace {

const QByteArray whole = R"({
    "about": "A test.",
    "marks": { "start": "floor", "blocks_cm": 5, "zone_from_cm": 42.5, "zone_to_cm": 56, "top_cm": 78, "rack_cm": 120, "bottom_cm": 30 },
    "kit": [
        { "name": "Chain", "pair": true, "chain": { "measured": "gauged", "length_cm": 150, "wire_mm": 16, "pitch_mm": 45, "inner_width_mm": 21.6 } },
        { "name": "Band", "pair": false, "band": { "rest_cm": 80, "curve": "line", "hangings": [ { "mass_kg": 5, "length_cm": 87.5, "left_out": true }, { "mass_kg": 10 } ] } } ],
    "bar": { "mass_kg": 15, "entered": true, "collars_kg": 0.5, "wanted_kg": 60.5, "plates": "as marked", "sleeve_cm": 30,
             "stock": [ { "mass_kg": 20, "diameter_mm": 400, "thickness_mm": 30, "count": 2 } ] },
    "hung": [ { "item": "Band", "on": "right", "band": { "doubled": true, "above": true, "anchor_cm": 240, "offset_cm": -5, "handle_cm": 4, "held_by_kg": 60 } },
              { "item": "Chain", "on": "both sides", "chain": { "way": "bunched", "lead_cm": 40, "lead_mass_kg": 0.5, "bunch_cm": 25 } } ]
})";

QByteArray changed(const char* from, const char* to)
{
    QByteArray json = whole;
    return json.replace(from, to);
}

Readiness readinessOf(const SeasonSetup& season)
{
    Desk desk(numberedids::counted());
    desk.replaceAll(season.marks, season.kit, season.setup);
    return desk.answer().readiness;
}

}

/// The sample season is read strictly, and each of its files shows what it says.
class SeasonFileTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everythingIsRead();
    void faultsNameFileAndKey_data();
    void faultsNameFileAndKey();
    void brokenJson();
    void everyFileReads();
    void filesShowTheirState_data();
    void filesShowTheirState();
    void pullsArePlausible();
};

void SeasonFileTest::everythingIsRead()
{
    const SeasonSetup season = seasonfile::parse(QStringLiteral("test"), whole);
    QCOMPARE(season.faults, QStringList());
    QCOMPARE(season.about, QStringLiteral("A test."));
    BarMarks marks;
    marks.start = LiftStart::Floor;
    marks.bottom = metres(0.30);
    marks.blocks = metres(0.05);
    marks.zoneFrom = metres(0.425);
    marks.zoneTo = metres(0.56);
    marks.top = metres(0.78);
    marks.rack = metres(1.20);
    QVERIFY(season.marks == marks);
    ChainMeasurement chain;
    chain.by = ChainMeasuring::Gauged;
    chain.length = metres(1.5);
    chain.wire = metres(0.016);
    chain.pitch = metres(0.045);
    chain.innerWidth = metres(0.0216);
    BandMeasurement band;
    band.rest = metres(0.80);
    band.model = BandModel::Line;
    band.hangings = {{kilograms(5), metres(0.875), true}, {kilograms(10), std::nullopt, false}};
    QVERIFY(season.kit == (std::vector<KitItem>{{numbered(1), "Chain", true, chain}, {numbered(2), "Band", false, band}}));
    BarRecord bar;
    bar.bar = kilograms(15);
    bar.barEntered = true;
    bar.collars = kilograms(0.5);
    bar.wanted = kilograms(60.5);
    bar.trust = PlateTrust::AsMarked;
    bar.sleeve = metres(0.30);
    bar.stock = {{{kilograms(20), metres(0.4), metres(0.03)}, 2}};
    QVERIFY(season.setup.bar == bar);
    BandPlacing above;
    above.doubled = true;
    above.above = true;
    above.anchorHeight = metres(2.4);
    above.offset = metres(-0.05);
    above.handle = metres(0.04);
    above.heldBy = kilograms(60);
    ChainPlacing bunched;
    bunched.way = ChainHangingWay::Bunched;
    bunched.lead = metres(0.4);
    bunched.leadMass = kilograms(0.5);
    bunched.bunch = metres(0.25);
    QVERIFY(season.setup.hung == (std::vector<HungRecord>{{numbered(2), HungOn::RightOnly, above}, {numbered(1), HungOn::BothSides, bunched}}));
}

void SeasonFileTest::faultsNameFileAndKey_data()
{
    QTest::addColumn<QByteArray>("json");
    QTest::addColumn<QString>("fault");
    const auto row = [](const char* name, const char* from, const char* to, const char* fault) {
        QTest::newRow(name) << changed(from, to) << QString::fromLatin1(fault);
    };
    row("unknown key at the top", "\"about\"", "\"colour\": 1, \"about\"", "test: colour: is not a key here");
    row("unknown key inside", "\"wire_mm\"", "\"wire_cm\"", "test: kit[0].chain.wire_cm: is not a key here");
    row("unknown key in a list in a list", "\"left_out\"", "\"leftout\"", "test: kit[1].band.hangings[0].leftout: is not a key here");
    row("text for a number", "\"top_cm\": 78", "\"top_cm\": \"78\"", "test: marks.top_cm: is not a number");
    row("null for a number", "\"top_cm\": 78", "\"top_cm\": null", "test: marks.top_cm: is not a number");
    row("number for a flag", "\"entered\": true", "\"entered\": 1", "test: bar.entered: is not true or false");
    row("number for text", "\"name\": \"Band\"", "\"name\": 2", "test: kit[1].name: is not text");
    row("object for a list", "\"hangings\": [ { \"mass_kg\": 5, \"length_cm\": 87.5, \"left_out\": true }, { \"mass_kg\": 10 } ]", "\"hangings\": {}",
        "test: kit[1].band.hangings: is not a list");
    row("number in a list", "{ \"mass_kg\": 10 }", "10", "test: kit[1].band.hangings[1]: is not an object");
    row("missing number", "\"wanted_kg\": 60.5, ", "", "test: bar.wanted_kg: is missing");
    row("missing text", "\"about\": \"A test.\",", "", "test: about: is missing");
    row("empty text", "\"A test.\"", "\" \"", "test: about: is empty");
    row("no such word", "\"floor\"", "\"Floor\"", "test: marks.start: is \"Floor\", not one of own bottom, floor");
    row("not in the kit", "\"item\": \"Band\"", "\"item\": \"Bands\"", "test: hung[0].item: \"Bands\" is not in the kit");
    row("hung as something else", "\"item\": \"Band\"", "\"item\": \"Chain\"", "test: hung[0].item: hangs as what it is not");
    row("twice in the kit", "\"name\": \"Band\"", "\"name\": \"Chain\"", "test: kit[1].name: stands in the kit twice");
    row("half a plate", "\"count\": 2", "\"count\": 2.5", "test: bar.stock[0].count: is not a whole number");
    row("chain and band", "\"pair\": true, ", "\"pair\": true, \"band\": {}, ", "test: kit[0].chain: one thing of the kit is wanted, and no more");
    row("neither chain nor band", "\"on\": \"right\", \"band\"", "\"on\": \"right\", \"rope\"", "test: hung[0].chain: one thing of the kit is wanted, and no more");
}

void SeasonFileTest::faultsNameFileAndKey()
{
    QFETCH(QByteArray, json);
    QFETCH(QString, fault);
    QVERIFY(json != whole);
    const SeasonSetup season = seasonfile::parse(QStringLiteral("test"), json);
    QVERIFY2(season.faults.contains(fault), qPrintable(season.faults.join(QStringLiteral(" | "))));
}

void SeasonFileTest::brokenJson()
{
    QCOMPARE(seasonfile::parse(QStringLiteral("test"), "{").faults.size(), 1);
    QCOMPARE(seasonfile::parse(QStringLiteral("test"), "").faults.size(), 1);
    QCOMPARE(seasonfile::parse(QStringLiteral("test"), "[]").faults, QStringList(QStringLiteral("test: is not an object")));
}

void SeasonFileTest::everyFileReads()
{
    const auto season = seasonfile::all();
    QCOMPARE(season.size(), std::size_t(8));
    for (const SeasonSetup& setup : season)
        QCOMPARE(setup.faults, QStringList());
}

void SeasonFileTest::filesShowTheirState_data()
{
    QTest::addColumn<int>("readiness");
    QTest::addColumn<QList<int>>("warnings");
    const auto row = [](const char* name, Readiness readiness, std::initializer_list<SetupWarningCode> codes) {
        QList<int> warnings;
        for (const SetupWarningCode code : codes)
            warnings << static_cast<int>(code);
        QTest::newRow(name) << static_cast<int>(readiness) << warnings;
    };
    using enum SetupWarningCode;
    row("1-empty-start", Readiness::MarksMissing, {});
    row("2-plain-iron", Readiness::Ready, {});
    row("3-short-lifter-chains", Readiness::LookOver, {FirstLinkUp});
    row("4-tall-lifter-chains-and-bands", Readiness::LookOver, {LastLinkOff});
    row("5-past-the-measurement", Readiness::PullUnknown, {BeyondMeasured});
    row("6-deadlift-with-chains", Readiness::LookOver, {});
    row("7-bands-from-above", Readiness::LookOver, {});
    row("8-anchor-too-light", Readiness::NotToBeUsed, {PulledForward});
}

void SeasonFileTest::filesShowTheirState()
{
    QFETCH(int, readiness);
    QFETCH(QList<int>, warnings);
    const auto season = seasonfile::all();
    const auto setup = std::find_if(season.begin(), season.end(), [](const SeasonSetup& s) { return s.name == QLatin1String(QTest::currentDataTag()); });
    QVERIFY(setup != season.end());
    QCOMPARE(static_cast<int>(readinessOf(*setup)), readiness);
    Desk desk(numberedids::counted());
    desk.replaceAll(setup->marks, setup->kit, setup->setup);
    QList<int> said;
    if (desk.answer().curve)
        for (const SetupWarning& w : desk.answer().curve->warnings)
            said << static_cast<int>(w.code);
    QCOMPARE(said, warnings);
    // the load asked for is one that the plates make
    QCOMPARE(desk.answer().load->total.si(), setup->setup.bar.wanted.si());
}

void SeasonFileTest::pullsArePlausible()
{
    int odd = 0;
    for (const SeasonSetup& setup : seasonfile::all()) {
        Desk desk(numberedids::counted());
        desk.replaceAll(setup.marks, setup.kit, setup.setup);
        if (const auto& curve = desk.answer().curve)
            for (const CurveSample& s : curve->samples) {
                const double kg = asMass(s.total).si();
                QVERIFY2(kg > 20 && kg < 250, qPrintable(setup.name));
            }
        for (const KitItem& item : setup.kit)
            if (const auto* band = std::get_if<BandMeasurement>(&item.measurement)) {
                QVERIFY(bandFitFrom(*band).ok());
                QVERIFY(bandFitFrom(*band)->rises());
                odd += oddHanging(*band).has_value() ? 1 : 0;
            } else {
                QVERIFY(chainFrom(std::get<ChainMeasurement>(item.measurement)).ok());
            }
    }
    QCOMPARE(odd, 1);
}

QTEST_GUILESS_MAIN(SeasonFileTest)
#include "test_seasonfile.moc"
