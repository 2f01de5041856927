// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/journal/content.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/keeping/undo.h"
#include "tests/core/work/memorykeeper.h"

#include <QtTest>

#include <functional>
#endif

using namespace steelyard;
using keeping::Device;
using std::chrono::days;
using std::chrono::years;

using Change = std::function<void(CoachLimits&)>;
Q_DECLARE_METATYPE(Change)

/// The coach's own limits, and ours where there are none.
class KeepLimitsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void oursUntilTheCoachSays();
    void comeBack();
    void where_data();
    void where();
    void numbersForEver();
    void whatNoLimitCanBeIsUnread();
};

void KeepLimitsTest::oursUntilTheCoachSays()
{
    const CoachLimits limits;
    QCOMPARE(limits.tyreCapPercent(), 70);
    QCOMPARE(limits.eccentricCapPercent(), 120);
    QVERIFY(limits.maximumGoodFor() == days(90) && limits.bandGoodFor() == days(182) && limits.adultFrom() == years(18));
    QCOMPARE(limits.holdFactor(), 1.5);
    QVERIFY(canBeLimits(limits));
    QVERIFY(Device().book.limits() == limits);
}

void KeepLimitsTest::comeBack()
{
    Device device;
    const CoachLimits own{60, 110, days(60), days(120), 200, years(21)};
    keepLimits(device.keeping, own, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.book.limits() == own && device.book.limits().holdFactor() == 2);
    QVERIFY(device.keeping.deeds().front().deed == Deed::LimitsKept);
    QCOMPARE(device.keeper.entries.size(), std::size_t(6));
    // units stand apart
    keepSettings(device.keeping, {MassUnit::Pound, LengthUnit::Inch}, device.told());
    SeasonBook opened;
    opened.take(device.keeper.entries);
    QVERIFY(opened.limits() == own && opened.settings().mass == MassUnit::Pound);
    // one taken back is as ours again, and nothing else is written
    const std::size_t before = device.keeper.entries.size();
    CoachLimits fewer = own;
    fewer.tyrePercent.reset();
    keepLimits(device.keeping, fewer, device.told());
    QCOMPARE(device.keeper.entries.size(), before + 1);
    QCOMPARE(device.book.limits().tyreCapPercent(), 70);
    undo(device.keeping, 0, device.told());
    QVERIFY(device.book.limits() == own);
}

void KeepLimitsTest::where_data()
{
    QTest::addColumn<Change>("change");
    QTest::addColumn<bool>("can");
    const auto row = [](const char* name, bool can, Change change) { QTest::newRow(name) << std::move(change) << can; };
    row("tyre 0", false, [](CoachLimits& l) { l.tyrePercent = 0; });
    row("tyre 1", true, [](CoachLimits& l) { l.tyrePercent = 1; });
    row("tyre 100", true, [](CoachLimits& l) { l.tyrePercent = 100; });
    row("tyre 101", false, [](CoachLimits& l) { l.tyrePercent = 101; });
    row("eccentric 99", false, [](CoachLimits& l) { l.eccentricPercent = 99; });
    row("eccentric 130", true, [](CoachLimits& l) { l.eccentricPercent = 130; });
    row("eccentric 131", false, [](CoachLimits& l) { l.eccentricPercent = 131; });
    row("maximum of 0 days", false, [](CoachLimits& l) { l.maximumAge = days(0); });
    row("maximum of a year", true, [](CoachLimits& l) { l.maximumAge = days(365); });
    row("maximum of a year and a day", false, [](CoachLimits& l) { l.maximumAge = days(366); });
    row("band of 0 days", false, [](CoachLimits& l) { l.bandAge = days(0); });
    row("band of two years", true, [](CoachLimits& l) { l.bandAge = days(730); });
    row("band of more", false, [](CoachLimits& l) { l.bandAge = days(731); });
    row("held by less than the pull", false, [](CoachLimits& l) { l.holdPercent = 99; });
    row("held by ten times", true, [](CoachLimits& l) { l.holdPercent = 1000; });
    row("held by more", false, [](CoachLimits& l) { l.holdPercent = 1001; });
    row("of age at 15", false, [](CoachLimits& l) { l.ofAge = years(15); });
    row("of age at 16", true, [](CoachLimits& l) { l.ofAge = years(16); });
    row("of age at 25", true, [](CoachLimits& l) { l.ofAge = years(25); });
    row("of age at 26", false, [](CoachLimits& l) { l.ofAge = years(26); });
}

void KeepLimitsTest::where()
{
    QFETCH(Change, change);
    QFETCH(bool, can);
    Device device;
    CoachLimits limits;
    change(limits);
    keepLimits(device.keeping, limits, device.told());
    QVERIFY(device.last.unfit == (can ? std::nullopt : std::optional(Unfit::LimitUnfit)));
    QVERIFY(device.book.limits() == (can ? limits : CoachLimits{}));
}

void KeepLimitsTest::numbersForEver()
{
    Device device;
    keepLimits(device.keeping, {60, 110, days(61), days(120), 200, years(21)}, device.told());
    const std::pair<std::uint32_t, std::int64_t> expected[] = {{3, 60}, {4, 110}, {5, 61}, {6, 120}, {7, 200}, {8, 21}};
    for (std::size_t i = 0; i < std::size(expected); ++i) {
        const journal::Body& body = device.keeper.entries[i].body;
        QVERIFY(body.subject.kind == journal::RecordKind::VaultSettings && body.fieldNumber == expected[i].first);
        QVERIFY(journal::numberIn(body.content) == expected[i].second);
    }
}

void KeepLimitsTest::whatNoLimitCanBeIsUnread()
{
    for (const journal::ByteBuffer& content : {journal::numberItem(101), journal::numberItem(-1), journal::numberItem(std::int64_t(1) << 40), journal::textItem("70")}) {
        Device device;
        Drafting drafting(device.keeping);
        drafting.set(settingsPlace(), field::settingsTyrePercentNumber, content);
        device.keeping.keepUnlisted(settingsId, std::move(drafting).drafts(), device.told());
        QVERIFY(device.last.kept());
        QVERIFY(device.book.limits() == CoachLimits{});
        QCOMPARE(device.book.unreadCount(), std::size_t(1));
    }
}

QTEST_APPLESS_MAIN(KeepLimitsTest)
#include "test_keeplimits.moc"
