// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/acknowledge.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "core/work/records/codec.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::Device;

namespace {

RecordId keptVenue(Device& device, const std::string& name)
{
    keepVenue(device.keeping, {{}, name, {}}, device.told());
    return device.last.id;
}

RecordId keptChain(Device& device, const RecordId& venue = {})
{
    KitItem item = samples::item(0, "Chain", samples::weighed());
    item.venue = venue;
    keepKitItem(device.keeping, item, device.told());
    return device.last.id;
}

RecordId keptAthlete(Device& device)
{
    Athlete athlete;
    athlete.name = "Ines";
    keepAthlete(device.keeping, athlete, device.told());
    return device.last.id;
}

}

/// Venues, kit with its measurements, set-ups and looks over.
class KeepKitTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void itemsByVenue();
    void measurementsAreAddedAndTheLastCounts();
    void renamingMeasuresNothing();
    void measurementPutRight();
    void takenOutMeasurement();
    void itemRefusals();
    void setupComesBack();
    void setupRefusals();
    void lookedOver();
    void lookedOverOnceADay();
    void outOfUseUntilLookedOver();
    void inspectionRefusals();
    void poundsAndInches();
};

void KeepKitTest::itemsByVenue()
{
    Device device;
    const RecordId home = keptVenue(device, "Home weight room"), hall = keptVenue(device, "School hall");
    const RecordId here = keptChain(device, home), nowhere = keptChain(device);
    QCOMPARE(device.book.venues().size(), std::size_t(2));
    QCOMPARE(device.book.kitAt(home).size(), std::size_t(1));
    QVERIFY(device.book.kitAt(home).front()->item.id == here);
    QVERIFY(device.book.kitAt(hall).empty());
    QVERIFY(device.book.kitAt({}).front()->item.id == nowhere);
    // a venue that goes leaves its kit without one
    takeOut(device.keeping, venuePlace(home), device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.kitAt({}).size(), std::size_t(2));
    QVERIFY(!device.book.venue(home));
}

void KeepKitTest::measurementsAreAddedAndTheLastCounts()
{
    Device device;
    const RecordId id = keptChain(device);
    KitItem item = device.book.item(id)->item;
    QVERIFY(std::get<ChainMeasurement>(item.measurement) == samples::weighed());
    device.today += std::chrono::days(30);
    item.measurement = samples::gauged();
    keepKitItem(device.keeping, item, device.told());
    QVERIFY(device.last.kept());
    const KitRecord& record = *device.book.item(id);
    QCOMPARE(record.measurements.size(), std::size_t(2));
    QVERIFY(record.item.measurement == Measured(samples::gauged()));
    QVERIFY(record.measurements[1].measured == Measured(samples::weighed()));
    QVERIFY(record.measurements[0].day - record.measurements[1].day == std::chrono::days(30));
    QVERIFY(record.measurements[0].id != record.measurements[1].id);
    // of two on one day the later counts
    ChainMeasurement again = samples::gauged();
    for (const double cm : {181.0, 182.0, 179.0}) {
        again.length = metres(cm / 100);
        item.measurement = again;
        keepKitItem(device.keeping, item, device.told());
        QVERIFY(device.book.item(id)->item.measurement == Measured(again));
    }
}

void KeepKitTest::outOfUseUntilLookedOver()
{
    Device device;
    const RecordId id = keptChain(device);
    QVERIFY(!device.book.item(id)->item.inspection);
    keepInspection(device.keeping, id, KitFault::WornLink, "third link", device.told());
    QVERIFY(device.last.kept());
    const KitItem worn = device.book.item(id)->item;
    QVERIFY(worn.isOutOfUse());
    QVERIFY((*worn.inspection == Inspection{KitFault::WornLink, "third link", device.today}));
    // measuring and renaming it does not bring it back
    KitItem renamed = worn;
    renamed.name = "Old chain";
    keepKitItem(device.keeping, renamed, device.told());
    QVERIFY(device.book.item(id)->item.isOutOfUse());
    device.today += std::chrono::days(9);
    keepInspection(device.keeping, id, std::nullopt, "", device.told());
    const KitItem fit = device.book.item(id)->item;
    QVERIFY(!fit.isOutOfUse());
    QVERIFY(fit.inspection->day == device.today);
    // taken back, it is out of use again, since the day it was
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.book.item(id)->item.inspection == worn.inspection);
}

void KeepKitTest::inspectionRefusals()
{
    Device device;
    keepInspection(device.keeping, samples::numbered(77), KitFault::Cut, "", device.told());
    QVERIFY(device.last.unfit == Unfit::ItemUnknown);
    const RecordId id = keptChain(device);
    keepInspection(device.keeping, id, KitFault::Cut, std::string(30'000, 'a'), device.told());
    QVERIFY(device.last.unfit == Unfit::TextTooLong);
    QVERIFY(!device.book.item(id)->item.inspection);
}

void KeepKitTest::renamingMeasuresNothing()
{
    Device device;
    KitItem item = samples::item(0, "Band", samples::band(), false);
    keepKitItem(device.keeping, item, device.told());
    item = device.book.item(device.last.id)->item;
    item.name = "Band, red end";
    keepKitItem(device.keeping, item, device.told());
    const KitRecord& record = *device.book.item(item.id);
    QCOMPARE(record.item.name, std::string("Band, red end"));
    QVERIFY(!record.item.pair);
    QCOMPARE(record.measurements.size(), std::size_t(1));
    QVERIFY(record.item.measurement == Measured(samples::band()));
}

void KeepKitTest::measurementPutRight()
{
    Device device;
    const RecordId id = keptChain(device);
    MeasurementRecord record = device.book.item(id)->measurements.front();
    std::get<ChainMeasurement>(record.measured).mass = kilograms(9.55);
    record.day -= std::chrono::days(1);
    putMeasurementRight(device.keeping, record, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.item(id)->measurements.size(), std::size_t(1));
    QVERIFY(device.book.item(id)->measurements.front() == record);
    // what was said first is still in the journal
    const auto first = std::find_if(device.keeper.entries.begin(), device.keeper.entries.end(), [](const journal::Held& e) { return e.body.kind == journal::Kind::Added; });
    QVERIFY(std::get<ChainMeasurement>(measurementIn(first->body.content)->measured) == samples::weighed());
    record.id = numberedids::numbered(77);
    putMeasurementRight(device.keeping, record, device.told());
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
}

void KeepKitTest::takenOutMeasurement()
{
    Device device;
    const RecordId id = keptChain(device);
    KitItem item = device.book.item(id)->item;
    item.measurement = samples::gauged();
    keepKitItem(device.keeping, item, device.told());
    takeOut(device.keeping, measurementPlace(device.book.item(id)->measurements.front().id), device.told());
    QVERIFY(device.book.item(id)->item.measurement == Measured(samples::weighed()));
    takeOut(device.keeping, itemPlace(id), device.told());
    QVERIFY(!device.book.item(id));
    takeOut(device.keeping, itemPlace(id), device.told());
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
}

void KeepKitTest::itemRefusals()
{
    Device device;
    const auto unfit = [&](const KitItem& item) {
        keepKitItem(device.keeping, item, device.told());
        return device.last.unfit;
    };
    QVERIFY(unfit(samples::item(0, "", samples::weighed())) == Unfit::NameMissing);
    QVERIFY(unfit(samples::item(9, "Chain", samples::weighed())) == Unfit::ItemUnknown);
    KitItem away = samples::item(0, "Chain", samples::weighed());
    away.venue = numberedids::numbered(3);
    QVERIFY(unfit(away) == Unfit::VenueUnknown);
    ChainMeasurement endless = samples::weighed();
    endless.length = metres(std::numeric_limits<double>::infinity());
    QVERIFY(unfit(samples::item(0, "Chain", endless)) == Unfit::QuantityUnfit);
    QVERIFY(device.book.kit().empty());
    QVERIFY(device.keeper.entries.empty());
}

void KeepKitTest::setupComesBack()
{
    Device device;
    const RecordId athlete = keptAthlete(device), chain = keptChain(device);
    BandPlacing above = samples::bandAt(2.2, true);
    above.heldBy = kilograms(40);
    above.doubled = true;
    above.offset = metres(-0.15);
    above.handle = metres(0.05);
    SavedSetup setup{{}, athlete, LiftId{1}, samples::setup(82.5, {{chain, HungOn::BothSides, samples::chainOn(0.8, ChainHangingWay::Bunched)}, {numberedids::numbered(4), HungOn::LeftOnly, above}}), {}};
    setup.setup.bar.sleeve = metres(0.42);
    setup.setup.bar.barEntered = true;
    keepSetup(device.keeping, setup, device.told());
    QVERIFY(device.last.kept());
    setup.id = device.last.id;
    setup.day = device.today;
    QVERIFY(*device.book.setup(setup.id) == setup);
    device.today += std::chrono::days(2);
    setup.setup.bar.wanted = kilograms(90);
    keepSetup(device.keeping, setup, device.told());
    setup.day = device.today;
    QVERIFY(*device.book.setup(setup.id) == setup);
    keepSetup(device.keeping, {{}, athlete, LiftId{14}, samples::setup(60), {}}, device.told());
    QCOMPARE(device.book.setupsOf(athlete).size(), std::size_t(2));
    QVERIFY(device.book.setupsOf(chain).empty());
}

void KeepKitTest::setupRefusals()
{
    Device device;
    const RecordId athlete = keptAthlete(device);
    const auto unfit = [&](const SavedSetup& setup) {
        keepSetup(device.keeping, setup, device.told());
        return device.last.unfit;
    };
    QVERIFY(unfit({{}, numberedids::numbered(3), LiftId{1}, samples::setup(60), {}}) == Unfit::AthleteUnknown);
    QVERIFY(unfit({{}, athlete, {}, samples::setup(60), {}}) == Unfit::LiftUnknown);
    QVERIFY(unfit({numberedids::numbered(3), athlete, LiftId{1}, samples::setup(60), {}}) == Unfit::SetupUnknown);
    QVERIFY(unfit({{}, athlete, LiftId{1}, samples::setup(std::numeric_limits<double>::quiet_NaN()), {}}) == Unfit::QuantityUnfit);
    QVERIFY(!unfit({{}, athlete, LiftId{1}, samples::setup(60), {}}));
    const RecordId id = device.last.id, other = keptAthlete(device);
    QVERIFY(unfit({id, other, LiftId{1}, samples::setup(60), {}}) == Unfit::SetupUnknown);
}

void KeepKitTest::lookedOver()
{
    Device device;
    const RecordId athlete = keptAthlete(device), chain = keptChain(device);
    SavedSetup setup{{}, athlete, LiftId{1}, samples::setup(60, {{chain, HungOn::BothSides, samples::chainOn(0.8)}}), {}};
    keepSetup(device.keeping, setup, device.told());
    setup.id = device.last.id;
    acknowledge(device.keeping, setup.id, CautionCode::Chains, device.told());
    QVERIFY(device.last.kept());
    const auto looked = device.book.acknowledgementsOf(setup.id);
    QCOMPARE(looked.size(), std::size_t(1));
    QVERIFY(looked.front()->athlete == athlete && looked.front()->caution == CautionCode::Chains && looked.front()->day == device.today);
    QVERIFY(looked.front()->hungMark == hungMark(setup.setup));
    // it is none of the deeds: what was kept before is still the first to be undone
    QVERIFY(device.keeping.deeds().front().deed == Deed::SetupKept);
    QVERIFY(lastLookedOver(device.book, *device.book.setup(setup.id)) == device.today);
    // other plates leave it as it is, another lead does not
    setup.setup.bar.wanted = kilograms(100);
    QVERIFY(looked.front()->hungMark == hungMark(setup.setup));
    setup.setup.hung.front().placing = samples::chainOn(0.7);
    QVERIFY(looked.front()->hungMark != hungMark(setup.setup));
    acknowledge(device.keeping, chain, CautionCode::Chains, device.told());
    QVERIFY(device.last.unfit == Unfit::SetupUnknown);
}

void KeepKitTest::lookedOverOnceADay()
{
    Device device;
    const RecordId athlete = keptAthlete(device), chain = keptChain(device);
    keepSetup(device.keeping, {{}, athlete, LiftId{1}, samples::setup(60, {{chain, HungOn::BothSides, samples::chainOn(0.8)}}), {}}, device.told());
    const RecordId setup = device.last.id;
    acknowledge(device.keeping, setup, CautionCode::Chains, device.told());
    const RecordId first = device.last.id;
    const std::size_t entries = device.keeper.entries.size();
    acknowledge(device.keeping, setup, CautionCode::Chains, device.told());
    QVERIFY(device.last.kept() && device.last.id == first);
    QCOMPARE(device.keeper.entries.size(), entries);
    device.today += std::chrono::days(1);
    acknowledge(device.keeping, setup, CautionCode::Chains, device.told());
    QCOMPARE(device.book.acknowledgementsOf(setup).size(), std::size_t(2));
    QVERIFY(lastLookedOver(device.book, *device.book.setup(setup)) == device.today);
    // the last day by which every caution was looked over
    keepKitItem(device.keeping, samples::item(0, "Band", samples::band()), device.told());
    SavedSetup more = *device.book.setup(setup);
    more.setup.hung.push_back({device.last.id, HungOn::BothSides, BandPlacing{}});
    keepSetup(device.keeping, more, device.told());
    QVERIFY(!lastLookedOver(device.book, *device.book.setup(setup)));
    acknowledge(device.keeping, setup, CautionCode::Chains, device.told());
    QVERIFY(!lastLookedOver(device.book, *device.book.setup(setup)));
    acknowledge(device.keeping, setup, CautionCode::BandsBelow, device.told());
    QVERIFY(lastLookedOver(device.book, *device.book.setup(setup)) == device.today);
    device.today += std::chrono::days(1);
    acknowledge(device.keeping, setup, CautionCode::Chains, device.told());
    QVERIFY(lastLookedOver(device.book, *device.book.setup(setup)) == device.today - std::chrono::days(1));
    // iron alone calls for none
    keepSetup(device.keeping, {{}, athlete, LiftId{2}, samples::setup(60), {}}, device.told());
    QVERIFY(!lastLookedOver(device.book, *device.book.setup(device.last.id)));
    // a bench aid calls for its own
    keepKitItem(device.keeping, samples::item(0, "Aid", samples::aid(), false), device.told());
    keepSetup(device.keeping, {{}, athlete, LiftId{6}, samples::setup(60, {{device.last.id, HungOn::BothSides, AidPlacing{}}}), {}}, device.told());
    const RecordId worn = device.last.id;
    acknowledge(device.keeping, worn, CautionCode::Chains, device.told());
    QVERIFY(!lastLookedOver(device.book, *device.book.setup(worn)));
    acknowledge(device.keeping, worn, CautionCode::BenchAid, device.told());
    QVERIFY(lastLookedOver(device.book, *device.book.setup(worn)) == device.today);
}

void KeepKitTest::poundsAndInches()
{
    Device device;
    keepSettings(device.keeping, {MassUnit::Pound, LengthUnit::Inch}, device.told());
    QVERIFY(device.last.kept());
    QVERIFY((device.book.settings() == VaultSettings{MassUnit::Pound, LengthUnit::Inch}));
    ChainMeasurement chain;
    chain.length = 60 * inch;
    chain.mass = pounds(18.5);
    chain.scaleStep = pounds(0.2);
    keepKitItem(device.keeping, samples::item(0, "Chain", chain), device.told());
    const auto& kept = std::get<ChainMeasurement>(device.book.item(device.last.id)->item.measurement);
    // to the milligram and the micrometre, which is how it is kept
    QVERIFY(std::abs((*kept.mass - *chain.mass).si()) <= 0.5e-6);
    QVERIFY(std::abs((*kept.length - *chain.length).si()) <= 0.5e-6);
    const auto map = journal::MapReader::of(device.keeper.entries.back().body.content)->map(2);
    QVERIFY((map->quantity(3) == journal::Typed{8391459, "18.5", journal::Unit::Pound}));
    QVERIFY((map->quantity(2) == journal::Typed{1524000, "60", journal::Unit::Inch}));
    keepSettings(device.keeping, {}, device.told());
    QVERIFY(device.book.settings() == VaultSettings{});
}

QTEST_APPLESS_MAIN(KeepKitTest)
#include "test_keepkit.moc"
