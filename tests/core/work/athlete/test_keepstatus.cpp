// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/athlete/keepstatus.h"

#include "core/journal/content.h"
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "tests/core/work/athlete/somebody.h"

#include <QtTest>

#include <functional>
#endif

using namespace steelyard;
using keeping::Device;
using std::chrono::days;

using Change = std::function<void(DayStatus&)>;
Q_DECLARE_METATYPE(Change)
Q_DECLARE_METATYPE(std::optional<Unfit>)

/// Day status: what somebody may not do, from when to when, and who lifts it.
class KeepStatusTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void comesBackAsItWasSet();
    void onADay();
    void refusals_data();
    void refusals();
    void wordsWaitForTheGuardian_data();
    void wordsWaitForTheGuardian();
    void lifted();
    void liftedOnOneDeviceAndNotOnAnother();
    void aNewerAppsStatusIsNotLost();
    void aSampleKnowsItsPeople();
};

void KeepStatusTest::comesBackAsItWasSet()
{
    Device device;
    DayStatus s = somebody::noOverhead(somebody::adult(device), device.today);
    s.until = device.today + days(12);
    s.notGroups = {LiftGroup::Press};
    s.notLifts = {LiftId{12}, LiftId::added(numberedids::numbered(7))};
    s.text = "left shoulder, nothing above the head";
    keepDayStatus(device.keeping, s, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.keeping.deeds().front().deed == Deed::StatusKept);
    s.id = device.last.id;
    QVERIFY(*device.book.statusesOf(s.athlete).front() == s);
    s.text = "both shoulders";
    s.day += days(1);
    putDayStatusRight(device.keeping, s, device.told());
    QVERIFY(device.last.kept());
    SeasonBook opened;
    opened.take(device.keeper.entries);
    QVERIFY(*opened.status(dayStatusPlace(s.id, s.athlete)) == s);
    QCOMPARE(opened.unreadCount(), std::size_t(0));
}

void KeepStatusTest::onADay()
{
    Device device;
    const RecordId athlete = somebody::adult(device), other = somebody::adult(device);
    DayStatus s = somebody::noOverhead(athlete, device.today);
    s.until = device.today + days(12);
    keepDayStatus(device.keeping, s, device.told());
    keepDayStatus(device.keeping, somebody::status(athlete, device.today + days(5), Fitness::All), device.told());
    keepDayStatus(device.keeping, somebody::status(other, device.today), device.told());
    const auto count = [&](int fromNow) { return device.book.statusOn(athlete, device.today + days(fromNow)).size(); };
    QCOMPARE(count(-1), std::size_t(0));
    QCOMPARE(count(0), std::size_t(1));
    QCOMPARE(count(4), std::size_t(1));
    // that she may do all does not lift it
    QCOMPARE(count(5), std::size_t(2));
    QCOMPARE(count(12), std::size_t(2));
    QCOMPARE(count(13), std::size_t(1));
    QCOMPARE(count(4000), std::size_t(1));
}

void KeepStatusTest::refusals_data()
{
    QTest::addColumn<Change>("change");
    QTest::addColumn<std::optional<Unfit>>("unfit");
    const auto row = [](const char* name, std::optional<Unfit> unfit, Change change) { QTest::newRow(name) << std::move(change) << unfit; };
    row("fine", std::nullopt, [](DayStatus&) {});
    row("nobody of that id", Unfit::AthleteUnknown, [](DayStatus& s) { s.athlete = numberedids::numbered(5); });
    row("set by nobody", Unfit::WhoMissing, [](DayStatus& s) { s.who.clear(); });
    row("half a letter", Unfit::TextUnreadable, [](DayStatus& s) { s.who = "b\xc3"; });
    row("half a letter in the words", Unfit::TextUnreadable, [](DayStatus& s) { s.text = "b\xc3"; });
    row("too many words", Unfit::TextTooLong, [](DayStatus& s) { s.text = std::string(20'001, 'n'); });
    row("over before it begins", Unfit::UntilBeforeDay, [](DayStatus& s) { s.until = s.day - days(1); });
    row("for one day", std::nullopt, [](DayStatus& s) { s.until = s.day; });
    row("from tomorrow on", std::nullopt, [](DayStatus& s) { s.day += days(1); });
    row("some, and nothing named", Unfit::NothingNamed, [](DayStatus& s) { s.notMethods.clear(); });
    row("some, in words", std::nullopt, [](DayStatus& s) { s.notMethods.clear(); s.text = "easy on the knee"; });
    row("some, a group", std::nullopt, [](DayStatus& s) { s.notMethods.clear(); s.notGroups = {LiftGroup::OneLeg}; });
    row("some, a lift", std::nullopt, [](DayStatus& s) { s.notMethods.clear(); s.notLifts = {LiftId{3}}; });
    row("none, with something named", Unfit::NothingNamed, [](DayStatus& s) { s.fitness = Fitness::None; });
    row("all, with something named", Unfit::NothingNamed, [](DayStatus& s) { s.fitness = Fitness::All; });
    row("none, in words", std::nullopt, [](DayStatus& s) { s.fitness = Fitness::None; s.notMethods.clear(); s.text = "fever"; });
    row("fit in a fourth way", Unfit::NothingNamed, [](DayStatus& s) { s.fitness = static_cast<Fitness>(4); });
    row("fit in a fourth way, nothing named", Unfit::LiftUnknown, [](DayStatus& s) { s.fitness = static_cast<Fitness>(4); s.notMethods.clear(); });
    row("method 18", Unfit::LiftUnknown, [](DayStatus& s) { s.notMethods.insert(static_cast<Method>(18)); });
    row("group 7", Unfit::LiftUnknown, [](DayStatus& s) { s.notGroups.insert(static_cast<LiftGroup>(7)); });
    row("no lift", Unfit::LiftUnknown, [](DayStatus& s) { s.notLifts.insert(LiftId{}); });
}

void KeepStatusTest::refusals()
{
    QFETCH(Change, change);
    QFETCH(std::optional<Unfit>, unfit);
    Device device;
    DayStatus s = somebody::noOverhead(somebody::adult(device), device.today);
    keepDayStatus(device.keeping, s, device.told());
    DayStatus known = *device.book.statusesOf(s.athlete).front();
    change(s);
    keepDayStatus(device.keeping, s, device.told());
    QVERIFY(device.last.unfit == unfit);
    QCOMPARE(device.book.statusesOf(known.athlete).size(), std::size_t(unfit ? 1 : 2));
    change(known);
    putDayStatusRight(device.keeping, known, device.told());
    QVERIFY(device.last.unfit == (unfit == Unfit::AthleteUnknown ? std::optional(Unfit::RecordUnknown) : unfit));
}

void KeepStatusTest::wordsWaitForTheGuardian_data()
{
    QTest::addColumn<int>("birthYear");
    QTest::addColumn<bool>("agreed");
    QTest::addColumn<std::optional<Unfit>>("unfit");
    QTest::newRow("no birth year") << 0 << true << std::optional(Unfit::BirthYearFirst);
    QTest::newRow("fifteen") << 2011 << false << std::optional(Unfit::AgreementFirst);
    QTest::newRow("fifteen, agreed") << 2011 << true << std::optional<Unfit>();
    QTest::newRow("of age") << 2000 << false << std::optional<Unfit>();
}

void KeepStatusTest::wordsWaitForTheGuardian()
{
    QFETCH(int, birthYear);
    QFETCH(bool, agreed);
    QFETCH(std::optional<Unfit>, unfit);
    Device device;
    const RecordId athlete = somebody::born(device, birthYear ? std::optional(birthYear) : std::nullopt, agreed);
    DayStatus words = somebody::status(athlete, device.today);
    words.text = "asthma";
    for (const DayStatus& s : {somebody::noOverhead(athlete, device.today), words}) {
        keepDayStatus(device.keeping, s, device.told());
        QVERIFY(device.last.unfit == unfit);
    }
    // she can be kept from training all the same
    keepDayStatus(device.keeping, somebody::status(athlete, device.today), device.told());
    QVERIFY(device.last.kept());
    DayStatus none = *device.book.statusesOf(athlete).back();
    none.text = "asthma";
    putDayStatusRight(device.keeping, none, device.told());
    QVERIFY(device.last.unfit == unfit);
    liftDayStatus(device.keeping, athlete, none.id, {"the physiotherapist", device.today}, device.told());
    QVERIFY(device.last.kept());
}

void KeepStatusTest::lifted()
{
    Device device;
    const RecordId athlete = somebody::adult(device);
    keepDayStatus(device.keeping, somebody::status(athlete, device.today - days(5)), device.told());
    const RecordId id = device.last.id;
    const auto lift = [&](const SaidSo& by, const RecordId& which) { liftDayStatus(device.keeping, athlete, which, by, device.told()); };
    lift({"the doctor", device.today + days(1)}, id);
    QVERIFY(device.last.unfit == Unfit::DayAhead);
    lift({"", device.today}, id);
    QVERIFY(device.last.unfit == Unfit::WhoMissing);
    lift({"the doctor", device.today}, numberedids::numbered(3));
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
    lift({"the doctor", device.today}, id);
    QVERIFY(device.last.kept());
    QVERIFY(device.keeping.deeds().front().deed == Deed::StatusLifted);
    QVERIFY((device.book.statusesOf(athlete).front()->lifted == SaidSo{"the doctor", device.today}));
    QVERIFY(device.book.statusOn(athlete, device.today).empty() && device.book.statusOn(athlete, device.today - days(1)).size() == 1);
    lift({"the doctor", device.today}, id);
    QVERIFY(device.last.unfit == Unfit::AlreadySaid);
    // put right, it stays lifted; undone, it holds again
    DayStatus s = *device.book.statusesOf(athlete).front();
    s.text = "fever";
    putDayStatusRight(device.keeping, s, device.told());
    QVERIFY(device.book.statusOn(athlete, device.today).empty());
    undo(device.keeping, 0, device.told());
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.statusOn(athlete, device.today).size(), std::size_t(1));
}

void KeepStatusTest::liftedOnOneDeviceAndNotOnAnother()
{
    Device one(1), other(2);
    const RecordId athlete = somebody::adult(one);
    keepDayStatus(one.keeping, somebody::status(athlete, one.today - days(5)), one.told());
    const RecordId id = one.last.id;
    const auto send = [](const Device& from, Device& to) {
        for (const journal::Held& entry : from.keeper.entries)
            to.keeper.see(entry);
        to.book.take(from.keeper.entries);
    };
    send(one, other);
    liftDayStatus(other.keeping, athlete, id, {"the doctor", other.today - days(2)}, other.told());
    undo(other.keeping, 0, other.told());
    one.keeper.now += std::chrono::hours(50);
    liftDayStatus(one.keeping, athlete, id, {"the head coach", one.today}, one.told());
    QVERIFY(one.book.statusOn(athlete, one.today).empty());
    send(other, one);
    // one device said that it is lifted, the other took that back: it holds until somebody settles it
    QCOMPARE(one.book.statusOn(athlete, one.today).size(), std::size_t(1));
    QCOMPARE(one.book.review().size(), std::size_t(1));
}

void KeepStatusTest::aNewerAppsStatusIsNotLost()
{
    Device device;
    const RecordId athlete = somebody::adult(device);
    const Place place = dayStatusPlace(numberedids::numbered(50), athlete);
    Drafting drafting(device.keeping);
    drafting.add(place, device.today - days(3), journal::MapWriter().put(1, journal::numberItem(4)).put(2, journal::textItem("the doctor")).item());
    device.keeping.keepUnlisted(place.subject.id, std::move(drafting).drafts(), device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.unreadCount(), std::size_t(1));
    const DayStatus* s = device.book.statusesOf(athlete).front();
    QVERIFY(s->unread && s->day == device.today - days(3));
    QCOMPARE(device.book.statusOn(athlete, device.today).size(), std::size_t(1));
    DayStatus right = *s;
    right.who = "the head coach";
    putDayStatusRight(device.keeping, right, device.told());
    QVERIFY(device.last.unfit == Unfit::RecordUnknown);
    liftDayStatus(device.keeping, athlete, place.subject.id, {"the head coach", device.today}, device.told());
    QVERIFY(device.last.kept() && device.book.statusOn(athlete, device.today).empty());
    takeOut(device.keeping, place, device.told());
    QVERIFY(device.last.kept() && device.book.statusesOf(athlete).empty());
    QCOMPARE(device.book.unreadCount(), std::size_t(0));
}

void KeepStatusTest::aSampleKnowsItsPeople()
{
    Device device;
    const RecordId athlete = somebody::adult(device);
    keepDayStatus(device.keeping, somebody::status(athlete, device.today), device.told());
    const RecordId id = device.last.id;
    device.keeping.setSample(true);
    keepDayStatus(device.keeping, somebody::noOverhead(athlete, device.today), device.told());
    QVERIFY(device.last.kept());
    DayStatus s = somebody::status(athlete, device.today);
    s.text = "fever";
    keepDayStatus(device.keeping, s, device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    s.text.clear();
    s.who = "somebody real";
    keepDayStatus(device.keeping, s, device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    liftDayStatus(device.keeping, athlete, id, {"somebody real", device.today}, device.told());
    QVERIFY(device.last.unfit == Unfit::SampleTakesNobody);
    liftDayStatus(device.keeping, athlete, id, {"the physiotherapist", device.today}, device.told());
    QVERIFY(device.last.kept());
}

QTEST_APPLESS_MAIN(KeepStatusTest)
#include "test_keepstatus.moc"
