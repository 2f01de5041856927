// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "core/work/venues/keepvenuekit.h"
#include "core/work/venues/whatwasdone.h"
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

RecordId keptItem(Device& device, const std::string& name, const Measured& measured, const RecordId& venue, bool pair = true)
{
    KitItem item = samples::item(RecordId{}, name, measured, pair);
    item.venue = venue;
    keepKitItem(device.keeping, item, device.told());
    return device.last.id;
}

const KitItem& itemOf(Device& device, const RecordId& id) { return device.book.item(id)->item; }

std::vector<std::string> namesOf(const std::vector<const KitRecord*>& list)
{
    std::vector<std::string> names;
    for (const KitRecord* record : list)
        names.push_back(record->item.name);
    return names;
}

}

/// Kit that is borrowed, lent, taken along, or copied by its list.
class VenueKitTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void borrowedAndLent();
    void loanRefusals();
    void sampleTakesNoNames();
    void takenAlongAndBack();
    void takenAlongIsOneDeed();
    void takenToAVenueThatGoes();
    void copiedListHasNothingMeasured();
    void copiedTwiceAddsNothing();
    void copiedThingIsMeasuredThere();
    void nothingMeasuredMeasuresNothing();
    void copyRefusals();
};

void VenueKitTest::borrowedAndLent()
{
    Device device;
    const RecordId id = keptItem(device, "Chain", samples::weighed(), {});
    const OnLoan loan{"the school in Pell", device.today + std::chrono::days(9)};
    keepLoan(device.keeping, id, LoanKind::Borrowed, loan, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(thingSaid(device.keeping.deeds().front()) == ThingSaid::Borrowed);
    QVERIFY(itemOf(device, id).borrowed == loan && !itemOf(device, id).lent);
    keepLoan(device.keeping, id, LoanKind::Lent, {"the rowers"}, device.told());
    QVERIFY(itemOf(device, id).lent == OnLoan{"the rowers"} && !itemOf(device, id).borrowed);
    QVERIFY(thingSaid(device.keeping.deeds().front()) == ThingSaid::Lent);
    // what was said then stays said
    QVERIFY(thingSaid(device.keeping.deeds()[1]) == ThingSaid::Borrowed);
    // measuring and renaming leave it as it is
    KitItem item = itemOf(device, id);
    item.name = "Long chain";
    item.measurement = samples::gauged();
    keepKitItem(device.keeping, item, device.told());
    QVERIFY(itemOf(device, id).lent == OnLoan{"the rowers"});
    keepLoan(device.keeping, id, LoanKind::None, {}, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(!itemOf(device, id).lent && !itemOf(device, id).borrowed);
    QVERIFY(thingSaid(device.keeping.deeds().front()) == ThingSaid::Back);
    keepInspection(device.keeping, id, KitFault::WornLink, {}, device.told());
    QVERIFY(thingSaid(device.keeping.deeds().front()) == ThingSaid::OutOfUse);
    keepInspection(device.keeping, id, std::nullopt, {}, device.told());
    QVERIFY(thingSaid(device.keeping.deeds().front()) == ThingSaid::Fit);
    QVERIFY(thingSaid(device.keeping.deeds()[1]) == ThingSaid::OutOfUse);
    undo(device.keeping, 0, device.told());
    undo(device.keeping, 0, device.told());
    undo(device.keeping, 0, device.told());
    QVERIFY(itemOf(device, id).lent == OnLoan{"the rowers"});
}

void VenueKitTest::loanRefusals()
{
    Device device;
    const RecordId id = keptItem(device, "Chain", samples::weighed(), {});
    const std::size_t before = device.keeper.entries.size();
    keepLoan(device.keeping, samples::numbered(99), LoanKind::Lent, {"the rowers"}, device.told());
    QVERIFY(device.last.unfit == Unfit::ItemUnknown);
    keepLoan(device.keeping, id, LoanKind::Lent, {"  "}, device.told());
    QVERIFY(device.last.unfit == Unfit::NameMissing);
    keepLoan(device.keeping, id, LoanKind::Borrowed, {std::string(201, 'a')}, device.told());
    QVERIFY(device.last.unfit == Unfit::TextTooLong);
    QCOMPARE(device.keeper.entries.size(), before);
    QVERIFY(!itemOf(device, id).lent && !itemOf(device, id).borrowed);
}

void VenueKitTest::sampleTakesNoNames()
{
    Device device;
    const RecordId id = keptItem(device, "Chain", samples::weighed(), {});
    keepLoan(device.keeping, id, LoanKind::Borrowed, {"the school in Pell"}, device.told());
    device.keeping.setSample(true);
    keepLoan(device.keeping, id, LoanKind::Lent, {"somebody real"}, device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    QVERIFY(!itemOf(device, id).lent);
    keepLoan(device.keeping, id, LoanKind::None, {}, device.told());
    QVERIFY(device.last.kept() && !itemOf(device, id).borrowed);
}

void VenueKitTest::takenAlongAndBack()
{
    Device device;
    const RecordId home = keptVenue(device, "Home weight room"), hall = keptVenue(device, "School hall"), pitch = keptVenue(device, "Away pitch");
    const RecordId id = keptItem(device, "Chain", samples::weighed(), home);
    QVERIFY(venueNow(device.book, itemOf(device, id)) == home);
    takeAlong(device.keeping, hall, std::array{id}, {}, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(venueNow(device.book, itemOf(device, id)) == hall);
    QVERIFY(itemOf(device, id).venue == home);
    // it is the same thing, and as well known as before
    QCOMPARE(device.book.item(id)->measurements.size(), std::size_t(1));
    QCOMPARE(device.book.kit().size(), std::size_t(1));
    takeAlong(device.keeping, pitch, std::array{id}, {}, device.told());
    QVERIFY(venueNow(device.book, itemOf(device, id)) == pitch);
    // where it belongs it is simply back
    takeAlong(device.keeping, home, std::array{id}, {}, device.told());
    QVERIFY(itemOf(device, id).takenTo.isNone() && venueNow(device.book, itemOf(device, id)) == home);
    takeAlong(device.keeping, hall, std::array{id}, {}, device.told());
    takeAlong(device.keeping, hall, {}, std::array{id}, device.told());
    QVERIFY(itemOf(device, id).takenTo.isNone());
}

void VenueKitTest::takenAlongIsOneDeed()
{
    Device device;
    const RecordId home = keptVenue(device, "Home weight room"), hall = keptVenue(device, "School hall");
    const RecordId a = keptItem(device, "A", samples::weighed(), home), b = keptItem(device, "B", samples::band(), home), c = keptItem(device, "C", samples::band(), home);
    takeAlong(device.keeping, hall, std::array{c}, {}, device.told());
    takeAlong(device.keeping, hall, std::array{a, b}, std::array{c}, device.told());
    QVERIFY(device.keeping.deeds().front().deed == Deed::TakenAlong && device.keeping.deeds().front().id == hall);
    QVERIFY(venueNow(device.book, itemOf(device, a)) == hall && venueNow(device.book, itemOf(device, c)) == home);
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(venueNow(device.book, itemOf(device, a)) == home && venueNow(device.book, itemOf(device, b)) == home && venueNow(device.book, itemOf(device, c)) == hall);
    // all or nothing
    takeAlong(device.keeping, hall, std::array{a, samples::numbered(99)}, {}, device.told());
    QVERIFY(device.last.unfit == Unfit::ItemUnknown && venueNow(device.book, itemOf(device, a)) == home);
    takeAlong(device.keeping, samples::numbered(98), std::array{a}, {}, device.told());
    QVERIFY(device.last.unfit == Unfit::VenueUnknown);
}

void VenueKitTest::takenToAVenueThatGoes()
{
    Device device;
    const RecordId home = keptVenue(device, "Home weight room"), hall = keptVenue(device, "School hall");
    const RecordId id = keptItem(device, "Chain", samples::weighed(), home);
    takeAlong(device.keeping, hall, std::array{id}, {}, device.told());
    takeOut(device.keeping, venuePlace(hall), device.told());
    QVERIFY(venueNow(device.book, itemOf(device, id)) == home);
}

void VenueKitTest::copiedListHasNothingMeasured()
{
    Device device;
    const RecordId home = keptVenue(device, "Home weight room"), hall = keptVenue(device, "School hall");
    const RecordId chain = keptItem(device, "Chain", samples::weighed(), home, false), band = keptItem(device, "Band", samples::band(), home);
    keepInspection(device.keeping, band, KitFault::Cut, {}, device.told());
    const RecordId borrowed = keptItem(device, "Borrowed", samples::band(), home);
    keepLoan(device.keeping, borrowed, LoanKind::Borrowed, {"the rowers"}, device.told());
    copyList(device.keeping, home, hall, device.told());
    QVERIFY(device.last.kept() && device.last.id == hall);
    QVERIFY(device.keeping.deeds().front().deed == Deed::ListCopied);
    QVERIFY((namesOf(device.book.kitAt(hall)) == std::vector<std::string>{"Band", "Chain"}));
    for (const KitRecord* record : device.book.kitAt(hall)) {
        QVERIFY(record->measurements.empty() && !record->item.isMeasured() && !record->item.inspection);
        QVERIFY(record->item.id != chain && record->item.id != band);
    }
    QVERIFY(kindOf(device.book.kitAt(hall)[0]->item.measurement) == ItemKind::Band && device.book.kitAt(hall)[0]->item.pair);
    QVERIFY(kindOf(device.book.kitAt(hall)[1]->item.measurement) == ItemKind::Chain && !device.book.kitAt(hall)[1]->item.pair);
    // the list it came from is as it was
    QCOMPARE(device.book.kitAt(home).size(), std::size_t(3));
    QVERIFY(itemOf(device, chain).isMeasured());
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept() && device.book.kitAt(hall).empty());
}

void VenueKitTest::copiedTwiceAddsNothing()
{
    Device device;
    const RecordId home = keptVenue(device, "Home weight room"), hall = keptVenue(device, "School hall");
    keptItem(device, "Chain", samples::weighed(), home);
    copyList(device.keeping, home, hall, device.told());
    keptItem(device, "Band", samples::band(), home);
    // of the same name and another kind it is another thing
    keptItem(device, "Chain", samples::band(), home);
    QVERIFY((namesOf(listToCopy(device.book, home, hall)) == std::vector<std::string>{"Band", "Chain"}));
    copyList(device.keeping, home, hall, device.told());
    QCOMPARE(device.book.kitAt(hall).size(), std::size_t(3));
    QVERIFY(listToCopy(device.book, home, hall).empty());
    const std::size_t before = device.keeper.entries.size();
    copyList(device.keeping, home, hall, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.keeper.entries.size(), before);
}

void VenueKitTest::copiedThingIsMeasuredThere()
{
    Device device;
    const RecordId home = keptVenue(device, "Home weight room"), hall = keptVenue(device, "School hall");
    keptItem(device, "Chain", samples::weighed(), home);
    copyList(device.keeping, home, hall, device.told());
    KitItem there = device.book.kitAt(hall).front()->item;
    there.measurement = samples::gauged();
    keepKitItem(device.keeping, there, device.told());
    QVERIFY(device.last.kept());
    const KitRecord& record = *device.book.item(there.id);
    QVERIFY(record.item.isMeasured() && record.measurements.size() == 1 && record.item.measurement == Measured(samples::gauged()));
    QVERIFY(record.item.venue == hall);
    // with its measurement undone it is on the list again
    undo(device.keeping, 0, device.told());
    QVERIFY(device.book.item(there.id) && !itemOf(device, there.id).isMeasured());
}

void VenueKitTest::nothingMeasuredMeasuresNothing()
{
    Device device;
    const RecordId hall = keptVenue(device, "School hall");
    const RecordId id = keptItem(device, "Band", notYetMeasured(ItemKind::Band), hall);
    QVERIFY(device.last.kept() && device.book.item(id));
    QVERIFY(device.book.item(id)->measurements.empty());
    KitItem item = itemOf(device, id);
    item.name = "Wide band";
    item.pair = false;
    keepKitItem(device.keeping, item, device.told());
    QVERIFY(itemOf(device, id).name == "Wide band" && !itemOf(device, id).pair && device.book.item(id)->measurements.empty());
    takeOut(device.keeping, itemPlace(id), device.told());
    QVERIFY(device.last.kept() && !device.book.item(id));
}

void VenueKitTest::copyRefusals()
{
    Device device;
    const RecordId home = keptVenue(device, "Home weight room");
    keptItem(device, "Chain", samples::weighed(), home);
    QVERIFY(listToCopy(device.book, home, home).empty());
    QVERIFY(listToCopy(device.book, home, samples::numbered(99)).empty());
    copyList(device.keeping, home, samples::numbered(99), device.told());
    QVERIFY(device.last.unfit == Unfit::VenueUnknown);
    copyList(device.keeping, samples::numbered(99), home, device.told());
    QVERIFY(device.last.unfit == Unfit::VenueUnknown);
}

QTEST_APPLESS_MAIN(VenueKitTest)
#include "test_venuekit.moc"
