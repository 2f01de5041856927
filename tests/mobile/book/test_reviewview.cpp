// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/putright/reviewview.h"

#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keepisometric.h"
#include "core/work/keeping/athlete/keepstatus.h"
#include "core/work/keeping/athlete/keeptest.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/keeping/putright.h"
#include "core/work/keeping/undo.h"
#include "core/work/venues/keepvenuekit.h"
#include "mobile/pages/squadview.h"
#include "tests/core/work/athlete/somebody.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::Device;

using Say = std::function<void(Device&, bool)>;
Q_DECLARE_METATYPE(Say)

namespace {

const Athlete& ana(const Device& d) { return *d.book.athletes().front(); }
const KitRecord& thing(const Device& d) { return *d.book.kit().front(); }

void changeAna(Device& d, const std::function<void(Athlete&)>& change)
{
    Athlete athlete = ana(d);
    change(athlete);
    keepAthlete(d.keeping, athlete, d.told());
}

}

/// What two devices said differently: in words, with who and when, and settled by a choice.
class ReviewViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void nothingAtFirst();
    void inWords_data();
    void inWords();
    void settledByTheOther();
    void settledByWhatStands();
    void saidAlikeIsOneAnswer();
    void aRowThatThereIsNot();

private:
    [[nodiscard]] const std::vector<ContestedRow>& rows() { return dynamic_cast<RowList<ContestedRow>*>(m_view->contested())->rows(); }
    /// Both devices say something without knowing of each other; then all of it comes to the book here.
    void sayTwice(const Say& say);

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<Device> m_one, m_other;
    std::unique_ptr<ReviewView> m_view;
};

void ReviewViewTest::init()
{
    m_view.reset();
    m_house = std::make_unique<StandInHouse>();
    m_one = std::make_unique<Device>(7);
    m_other = std::make_unique<Device>(8);
    Device& d = *m_one;
    Athlete athlete;
    athlete.name = "Ana M.";
    athlete.birthYear = std::chrono::year(1999);
    keepAthlete(d.keeping, athlete, d.told());
    keepBodySize(d.keeping, ana(d).id, {{}, d.today, kilograms(72.4), std::nullopt}, d.told());
    keepVenue(d.keeping, {{}, "Hall", {}}, d.told());
    keepKitItem(d.keeping, samples::item(0, "Long chain", samples::weighed()), d.told());
    keepSetup(d.keeping, {{}, ana(d).id, LiftId{1}, samples::setup(60), {}}, d.told());
    keepClearance(d.keeping, somebody::clearance(ana(d).id, d.today), d.told());
    keepDayStatus(d.keeping, somebody::status(ana(d).id, d.today), d.told());
    keepStrengthTest(d.keeping, somebody::test(ana(d).id, d.today), d.told());
    keepIsometricPull(d.keeping, ana(d).id, {{}, d.today, LiftId{1}, metres(1), kilograms(120), {}}, d.told());
    m_other->book.take(m_one->keeper.entries);
    for (const journal::Held& entry : m_one->keeper.entries)
        m_other->keeper.see(entry);
    m_view = std::make_unique<ReviewView>();
    m_view->setBook(&m_house->book);
}

void ReviewViewTest::sayTwice(const Say& say)
{
    say(*m_one, false);
    QVERIFY(m_one->last.kept());
    say(*m_other, true);
    QVERIFY(m_other->last.kept());
    m_house->book.book().take(m_one->keeper.entries);
    m_house->book.book().take(m_other->keeper.entries);
}

void ReviewViewTest::nothingAtFirst()
{
    m_house->book.book().take(m_one->keeper.entries);
    QCOMPARE(m_view->count(), 0);
    SquadView squad;
    squad.setBook(&m_house->book);
    QCOMPARE(squad.reviewCount(), 0);
}

void ReviewViewTest::inWords_data()
{
    QTest::addColumn<Say>("say");
    QTest::addColumn<QString>("what");
    QTest::addColumn<QStringList>("answers");
    const auto row = [](const char* what, const QStringList& answers, Say say) { QTest::newRow(what) << std::move(say) << QString::fromUtf8(what) << answers; };
    row("Ana M.: birth year", {"2007", "2008"}, [](Device& d, bool other) { changeAna(d, [other](Athlete& a) { a.birthYear = std::chrono::year(other ? 2007 : 2008); }); });
    row("Ana M.: squad", {"left empty", "Youth"}, [](Device& d, bool other) {
        changeAna(d, [other](Athlete& a) { a.squad = other ? "Women" : "Youth"; });
        if (other)
            changeAna(d, [](Athlete& a) { a.squad.clear(); });
    });
    row("Ana M.: notes", {"right-handed", "left-handed"}, [](Device& d, bool other) { changeAna(d, [other](Athlete& a) { a.notes = other ? "right-handed" : "left-handed"; }); });
    row("Ana M.: guardian's agreement", {"Kim, 1 Nov", "Lee, 1 Nov"}, [](Device& d, bool other) {
        changeAna(d, [&](Athlete& a) { a.agreement = GuardianAgreement{other ? "Kim" : "Lee", keeping::day(2026, 11, 1)}; });
    });
    row("Ana M.: bar marks for the back squat", {"bottom 77 cm, top 128 cm", "bottom 77 cm, top 127 cm"}, [](Device& d, bool other) {
        changeAna(d, [other](Athlete& a) { a.marks[LiftId{1}] = samples::marks(0.77, other ? 1.28 : 1.27); });
    });
    row("Ana M.: body mass and height", {"70.4 kg, 2 Nov", "74.2 kg, 2 Nov"}, [](Device& d, bool other) {
        BodySize size = ana(d).sizes.front();
        size.mass = kilograms(other ? 70.4 : 74.2);
        putBodySizeRight(d.keeping, ana(d).id, size, d.told());
    });
    row("Hall: name", {"School hall", "Gym"}, [](Device& d, bool other) { keepVenue(d.keeping, {d.book.venues().front()->id, other ? "School hall" : "Gym", {}}, d.told()); });
    row("Hall: notes", {"cold", "warm"}, [](Device& d, bool other) { keepVenue(d.keeping, {d.book.venues().front()->id, "Hall", other ? "cold" : "warm"}, d.told()); });
    row("Long chain: a measurement", {"9.5 kg and 150 cm, weighed, 2 Nov", "9 kg and 150 cm, weighed, 2 Nov"}, [](Device& d, bool other) {
        MeasurementRecord record = thing(d).measurements.front();
        std::get<ChainMeasurement>(record.measured).mass = kilograms(other ? 9.5 : 9);
        putMeasurementRight(d.keeping, record, d.told());
    });
    row("Long chain: fit or out of use", {"fit", "out of use since 2 Nov: cut"}, [](Device& d, bool other) {
        keepInspection(d.keeping, thing(d).item.id, other ? std::nullopt : std::optional(KitFault::Cut), {}, d.told());
    });
    row("Long chain: borrowed or not", {"borrowed from the school", "borrowed from the rowers, back by 9 Nov"}, [](Device& d, bool other) {
        keepLoan(d.keeping, thing(d).item.id, LoanKind::Borrowed, other ? OnLoan{"the school"} : OnLoan{"the rowers", d.today + std::chrono::days(7)}, d.told());
    });
    row("Long chain: lent or not", {"left empty", "lent to the rowers"}, [](Device& d, bool other) {
        keepLoan(d.keeping, thing(d).item.id, LoanKind::Lent, {"the rowers"}, d.told());
        if (other)
            keepLoan(d.keeping, thing(d).item.id, LoanKind::None, {}, d.told());
    });
    row("Long chain: where it is for now", {"left empty", "Hall"}, [](Device& d, bool other) {
        const RecordId id = thing(d).item.id, hall = d.book.venues().front()->id;
        takeAlong(d.keeping, hall, std::array{id}, {}, d.told());
        if (other)
            takeAlong(d.keeping, hall, {}, std::array{id}, d.told());
    });
    row("Long chain: where it belongs", {"left empty", "Hall"}, [](Device& d, bool other) {
        KitItem item = thing(d).item;
        item.venue = d.book.venues().front()->id;
        keepKitItem(d.keeping, item, d.told());
        item.venue = {};
        if (other)
            keepKitItem(d.keeping, item, d.told());
    });
    row("Long chain: taken out or not", {"still there", "taken out"}, [](Device& d, bool other) {
        takeOut(d.keeping, itemPlace(thing(d).item.id), d.told());
        if (other)
            undo(d.keeping, 0, d.told());
    });
    row("Ana M., back squat: what hangs", {"65 kg, iron alone", "62.5 kg and 1 hung"}, [](Device& d, bool other) {
        SavedSetup setup = *d.book.setupsOf(ana(d).id).front();
        setup.setup.bar.wanted = kilograms(other ? 65 : 62.5);
        if (!other)
            setup.setup.hung.push_back({thing(d).item.id, HungOn::BothSides, samples::chainOn(0.8)});
        keepSetup(d.keeping, setup, d.told());
    });
    row("Ana M., back squat, eccentric overload: clearance taken back or not", {"the doctor, 2 Nov", "Kim, 1 Nov"}, [](Device& d, bool other) {
        takeClearanceBack(d.keeping, ana(d).id, LiftId{1}, Method::EccentricRelease, {other ? "the doctor" : "Kim", d.today - std::chrono::days(other ? 0 : 1)}, d.told());
    });
    row("Ana M., back squat, eccentric overload: a clearance", {"back squat: eccentric overload, by the head coach, until 9 Nov, 2 Nov", "back squat: eccentric overload, by Kim, 2 Nov"}, [](Device& d, bool other) {
        Clearance right = *d.book.clearancesOf(ana(d).id).front();
        if (other)
            right.until = d.today + std::chrono::days(7);
        else
            right.who = "Kim";
        putClearanceRight(d.keeping, right, d.told());
    });
    row("Ana M.: day status lifted or not", {"the doctor, 2 Nov", "left empty"}, [](Device& d, bool other) {
        const RecordId id = d.book.statusesOf(ana(d).id).front()->id;
        liftDayStatus(d.keeping, ana(d).id, id, {other ? "the doctor" : "Kim", d.today}, d.told());
        if (!other)
            undo(d.keeping, 0, d.told());
    });
    row("Ana M.: day status", {"some, not: overhead, by the physiotherapist, 2 Nov", "none, by the physiotherapist, until 4 Nov, 2 Nov"}, [](Device& d, bool other) {
        DayStatus right = *d.book.statusesOf(ana(d).id).front();
        if (other) {
            right.fitness = Fitness::Some;
            right.notMethods = {Method::Overhead};
        } else {
            right.until = d.today + std::chrono::days(2);
        }
        putDayStatusRight(d.keeping, right, d.told());
    });
    row("Ana M., back squat: a test of strength", {"85 kg for 5, 2 Nov", "80 kg for 6, 2 Nov"}, [](Device& d, bool other) {
        StrengthTest right = *d.book.testsOf(ana(d).id).front();
        if (other)
            right.load = kilograms(85);
        else
            right.reps = 6;
        putStrengthTestRight(d.keeping, right, d.told());
    });
    row("Ana M.: taken out or not", {"taken out", "still there"}, [](Device& d, bool other) {
        takeOut(d.keeping, isometricPullPlace(ana(d).pulls.front().id, ana(d).id), d.told());
        if (!other)
            undo(d.keeping, 0, d.told());
    });
    row("Your limits: An anchor is held by", {"2 times", "as it was shipped: 1.5 times"}, [](Device& d, bool other) {
        keepLimits(d.keeping, withLimit({}, LimitKind::HoldPercent, 200), d.told());
        if (!other)
            keepLimits(d.keeping, {}, d.told());
    });
    row("Your limits: A band's measurement is fresh for", {"91 days", "120 days"}, [](Device& d, bool other) { keepLimits(d.keeping, withLimit({}, LimitKind::BandAge, other ? 91 : 120), d.told()); });
    row("Units: of mass", {"kilograms", "pounds"}, [](Device& d, bool other) {
        keepSettings(d.keeping, {MassUnit::Pound, LengthUnit::Centimetre}, d.told());
        if (other)
            keepSettings(d.keeping, {}, d.told());
    });
}

void ReviewViewTest::inWords()
{
    QFETCH(Say, say);
    QFETCH(QString, what);
    QFETCH(QStringList, answers);
    sayTwice(say);
    QCOMPARE(m_view->count(), 1);
    QCOMPARE(rows().front().answers.size(), answers.size());
    // whichever device wins
    QStringList said = rows().front().answers, wanted = answers;
    said.sort();
    wanted.sort();
    QCOMPARE(said, wanted);
    // a contested name goes by the one that stands
    QCOMPARE(rows().front().what, what == QLatin1String("Hall: name") ? rows().front().answers.front() + QLatin1String(": name") : what);
    QCOMPARE(rows().front().given.size(), answers.size());
    QVERIFY(rows().front().given.front().contains(QLatin1String("Oct 2024, ")) && rows().front().given.front().contains(QLatin1String("on device ")));
    QVERIFY(rows().front().given.front() != rows().front().given.back());
}

void ReviewViewTest::settledByTheOther()
{
    sayTwice([](Device& d, bool other) { changeAna(d, [other](Athlete& a) { a.birthYear = std::chrono::year(other ? 2007 : 2008); }); });
    SquadView squad;
    squad.setBook(&m_house->book);
    QCOMPARE(squad.reviewCount(), 1);
    const int chosen = rows().front().answers.back().toInt();
    QVERIFY(m_house->book.book().athletes().front()->birthYear != std::chrono::year(chosen));
    m_view->settle(0, 1);
    QCOMPARE(m_view->count(), 0);
    QCOMPARE(squad.reviewCount(), 0);
    QVERIFY(m_house->book.book().athletes().front()->birthYear == std::chrono::year(chosen));
    QVERIFY(m_house->book.undoFact().contains(QLatin1String("settled")));
    m_house->book.undo();
    QVERIFY(m_house->book.book().athletes().front()->birthYear != std::chrono::year(chosen));
}

void ReviewViewTest::settledByWhatStands()
{
    sayTwice([](Device& d, bool other) { changeAna(d, [other](Athlete& a) { a.birthYear = std::chrono::year(other ? 2007 : 2008); }); });
    const auto stands = m_house->book.book().athletes().front()->birthYear;
    m_view->settle(0, 0);
    QCOMPARE(m_view->count(), 0);
    QVERIFY(m_house->book.book().athletes().front()->birthYear == stands);
}

void ReviewViewTest::saidAlikeIsOneAnswer()
{
    Device third(9);
    third.book.take(m_one->keeper.entries);
    const auto say = [](Device& d, bool other) { changeAna(d, [other](Athlete& a) { a.birthYear = std::chrono::year(other ? 2007 : 2008); }); };
    say(third, true);
    m_house->book.book().take(third.keeper.entries);
    sayTwice(say);
    QCOMPARE(m_house->book.book().review().front().heads.size(), std::size_t(3));
    QCOMPARE(rows().front().answers.size(), 2);
    m_view->settle(0, 1);
    QCOMPARE(m_view->count(), 0);
}

void ReviewViewTest::aRowThatThereIsNot()
{
    sayTwice([](Device& d, bool other) { changeAna(d, [other](Athlete& a) { a.birthYear = std::chrono::year(other ? 2007 : 2008); }); });
    for (const auto& [row, answer] : {std::pair(1, 0), {-1, 0}, {0, 2}, {0, -1}})
        m_view->settle(row, answer);
    QCOMPARE(m_view->count(), 1);
}

QTEST_GUILESS_MAIN(ReviewViewTest)
#include "test_reviewview.moc"
