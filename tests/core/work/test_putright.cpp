// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/putright.h"

#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/undo.h"
#include "core/work/records/codec.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::Device;
using std::chrono::days;

namespace {

RecordId keptAthlete(Device& device)
{
    Athlete athlete;
    athlete.name = "Anna";
    athlete.birthYear = std::chrono::year(1999);
    keepAthlete(device.keeping, athlete, device.told());
    return device.last.id;
}

/// Weighed, and gauged a month later.
RecordId keptChain(Device& device)
{
    device.today -= days(30);
    keepKitItem(device.keeping, samples::item(0, "Chain", samples::weighed()), device.told());
    device.today += days(30);
    KitItem item = device.book.item(device.last.id)->item;
    item.measurement = samples::gauged();
    keepKitItem(device.keeping, item, device.told());
    return item.id;
}

}

/// What was kept wrongly: said otherwise or taken out, with what it said at first still to be read.
class PutRightTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void saysWhatItSaidAtFirst();
    void aDayAhead();
    void theOnlyMeasurement();
    void setupsThatChange();
    void ofOneDayTheLastAdded();
};

void PutRightTest::saysWhatItSaidAtFirst()
{
    Device device;
    const RecordId athlete = keptAthlete(device);
    keepBodySize(device.keeping, athlete, {{}, device.today, kilograms(72.4), std::nullopt}, device.told());
    BodySize size = device.book.athlete(athlete)->sizes.front();
    const Place place = bodySizePlace(size.id, athlete);
    QVERIFY(!device.book.righted(place));
    for (const double kg : {70.4, 74.2}) {
        size.mass = kilograms(kg);
        size.day -= days(1);
        putBodySizeRight(device.keeping, athlete, size, device.told());
        const auto righted = device.book.righted(place);
        QVERIFY(righted);
        QVERIFY(bodySizeIn(righted->first->body.content)->mass == kilograms(72.4));
        QVERIFY(righted->first->body.localDay == device.today);
        QVERIFY(righted->now->id == device.keeper.entries.back().id);
    }
    // taken back, it stands as it was said at first
    undo(device.keeping, 0, device.told());
    undo(device.keeping, 0, device.told());
    QVERIFY(!device.book.righted(place));
    takeOut(device.keeping, place, device.told());
    QVERIFY(device.book.athlete(athlete)->sizes.empty());
}

void PutRightTest::aDayAhead()
{
    Device device;
    const RecordId athlete = keptAthlete(device), chain = keptChain(device);
    keepBodySize(device.keeping, athlete, {{}, device.today, kilograms(72.4), std::nullopt}, device.told());
    BodySize size = device.book.athlete(athlete)->sizes.front();
    size.day += days(1);
    putBodySizeRight(device.keeping, athlete, size, device.told());
    QVERIFY(device.last.unfit == Unfit::DayAhead);
    MeasurementRecord record = device.book.item(chain)->measurements.front();
    record.day += days(1);
    putMeasurementRight(device.keeping, record, device.told());
    QVERIFY(device.last.unfit == Unfit::DayAhead);
    // where it stands ahead already, the value can be put right all the same
    device.today -= days(10);
    size.day -= days(1);
    size.mass = kilograms(74.2);
    putBodySizeRight(device.keeping, athlete, size, device.told());
    QVERIFY(device.last.kept());
}

void PutRightTest::theOnlyMeasurement()
{
    Device device;
    const RecordId chain = keptChain(device);
    takeOut(device.keeping, measurementPlace(device.book.item(chain)->measurements.front().id), device.told());
    QVERIFY(device.last.kept());
    const Place only = measurementPlace(device.book.item(chain)->measurements.front().id);
    takeOut(device.keeping, only, device.told());
    QVERIFY(device.last.unfit == Unfit::OnlyMeasurement);
    QVERIFY(device.book.item(chain));
}

void PutRightTest::setupsThatChange()
{
    Device device;
    const RecordId athlete = keptAthlete(device), chain = keptChain(device);
    keepSetup(device.keeping, {{}, athlete, LiftId{1}, samples::setup(60, {{chain, HungOn::BothSides, samples::chainOn(0.8)}}), {}}, device.told());
    const RecordId setup = device.last.id;
    keepSetup(device.keeping, {{}, athlete, LiftId{2}, samples::setup(60), {}}, device.told());
    const auto count = [&](const MeasurementRecord& record) { return setupsChangedBy(device.book, chain, record.id, record).size(); };

    MeasurementRecord last = device.book.item(chain)->measurements.front(), first = device.book.item(chain)->measurements.back();
    QCOMPARE(count(last), std::size_t(0));
    std::get<ChainMeasurement>(last.measured).wire = metres(0.017);
    const auto changed = setupsChangedBy(device.book, chain, last.id, last);
    QCOMPARE(changed.size(), std::size_t(1));
    QVERIFY(changed.front()->id == setup);
    // an earlier one counts for nothing, until it is not the earlier one
    std::get<ChainMeasurement>(first.measured).mass = kilograms(9);
    QCOMPARE(count(first), std::size_t(0));
    first.day = last.day + days(1);
    QCOMPARE(count(first), std::size_t(1));
    // the last one taken out, and an earlier one
    QCOMPARE(setupsChangedBy(device.book, chain, last.id, std::nullopt).size(), std::size_t(1));
    QCOMPARE(setupsChangedBy(device.book, chain, first.id, std::nullopt).size(), std::size_t(0));
    QVERIFY(setupsChangedBy(device.book, athlete, last.id, std::nullopt).empty());
}

void PutRightTest::ofOneDayTheLastAdded()
{
    Device device;
    const RecordId chain = keptChain(device), athlete = keptAthlete(device);
    keepSetup(device.keeping, {{}, athlete, LiftId{1}, samples::setup(60, {{chain, HungOn::BothSides, samples::chainOn(0.8)}}), {}}, device.told());
    const auto all = device.book.item(chain)->measurements;
    // the first moved to the day of the last stays behind it, and the last moved to the first's stays before it
    MeasurementRecord first = all.back(), last = all.front();
    std::swap(first.day, last.day);
    first.measured = samples::weighed();
    QVERIFY(setupsChangedBy(device.book, chain, first.id, first).empty());
    QVERIFY(setupsChangedBy(device.book, chain, last.id, last).empty());
    putMeasurementRight(device.keeping, first, device.told());
    QVERIFY(device.book.item(chain)->item.measurement == Measured(samples::gauged()));
}

QTEST_APPLESS_MAIN(PutRightTest)
#include "test_putright.moc"
