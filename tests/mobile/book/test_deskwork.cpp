// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/pages/deskwork.h"

#include "mobile/editors/lifteditor.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QCborMap>
#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// What is on the desk goes to whom it was laid out for, and comes back as it was.
class DeskWorkTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void forNobodyAtFirst();
    void marksOfALift();
    void marksTypedAndNotKeptWait();
    void marksOfNobodyBecomeHers();
    void aSetupKeptAndOpenedAgain();
    void anotherLiftIsAnotherSetup();
    void whatHungLastTime();
    void kitOfAVenue();
    void venueThatIsUndone();
    void halfMeasuredWaitsThroughAnOpening();
    void looksOverAreKept();
    void looksOverWaitForTheSetup();
    void aLookThatCouldNotBeKept();
    void remembersForWhom();
    void aLiftOfTheCoachsOwn();
    void theDayTurns();

private:
    [[nodiscard]] QString ana() const { return QString::fromStdString(m_house->book.book().athletes().front()->id.hex()); }

    void hangTheChain();

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<DeskWork> m_work;
};

void DeskWorkTest::init()
{
    m_work.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(4, "Long chain", samples::weighed()), samples::item(7, "Wide band", samples::band(), false)}, samples::setup(20));
    people::fill(m_house->book, 2);
    m_work = std::make_unique<DeskWork>();
    m_work->setDesk(&m_house->desk);
    m_work->setBook(&m_house->book);
}

void DeskWorkTest::forNobodyAtFirst()
{
    QVERIFY(m_work->who().isEmpty() && !m_work->marksDiffer() && !m_work->setupDiffers());
    m_work->keepSetup();
    QVERIFY(!m_house->book.head().isEmpty());
}

void DeskWorkTest::marksOfALift()
{
    m_work->take(ana(), QStringLiteral("1"));
    QCOMPARE(m_work->who(), QStringLiteral("Ana M., back squat"));
    QVERIFY(m_house->desk.desk().marks().top.has_value());
    QVERIFY(!m_work->marksDiffer());
    m_work->take(ana(), QStringLiteral("14"));
    QVERIFY(m_house->desk.desk().marks().start == LiftStart::Floor && !m_house->desk.desk().marks().top);
    BarMarks marks = m_house->desk.desk().marks();
    marks.top = metres(0.8);
    m_house->desk.desk().setMarks(marks);
    QVERIFY(m_work->marksDiffer());
    QSignalSpy kept(m_work.get(), &DeskWork::marksKept);
    m_work->keepMarks();
    QCOMPARE(kept.count(), 1);
    QVERIFY(!m_work->marksDiffer());
    QCOMPARE(m_house->book.book().athletes().front()->marks.size(), std::size_t(2));
}

/// Typed for one lift and left for another, for another's set-up and for nobody: they are there again where they were typed.
void DeskWorkTest::marksTypedAndNotKeptWait()
{
    m_work->take(ana(), QStringLiteral("1"));
    m_work->keepSetup();
    const BarMarks kept = m_house->desk.desk().marks();
    m_work->take(ana(), QStringLiteral("14"));
    BarMarks typed = m_house->desk.desk().marks();
    typed.top = metres(0.81);
    m_house->desk.desk().setMarks(typed);
    m_work->take(ana(), QStringLiteral("14"));
    QVERIFY(m_house->desk.desk().marks() == typed);
    m_work->take(ana(), QStringLiteral("1"));
    QVERIFY(m_house->desk.desk().marks() == kept);
    m_work->take(ana(), QStringLiteral("14"));
    QVERIFY(m_house->desk.desk().marks() == typed && m_work->marksDiffer());
    const auto saved = m_house->book.book().setupsOf(m_house->book.book().athletes().front()->id);
    m_work->open(QString::fromStdString(saved.front()->id.hex()));
    QVERIFY(m_house->desk.desk().marks() == kept);
    m_work->take(ana(), QStringLiteral("14"));
    QVERIFY(m_house->desk.desk().marks() == typed);
    // kept, they wait no more
    m_work->keepMarks();
    m_work->take(ana(), QStringLiteral("1"));
    m_work->take(ana(), QStringLiteral("14"));
    QVERIFY(!m_work->marksDiffer() && m_house->desk.desk().marks().top->si() == 0.81);
    QVERIFY(m_house->book.draft(QStringLiteral("marks:%1:14").arg(ana())) == std::nullopt);
}

void DeskWorkTest::marksOfNobodyBecomeHers()
{
    const BarMarks typed = samples::marks(0.7, 1.2);
    m_house->desk.desk().setMarks(typed);
    m_work->take(ana(), QStringLiteral("2"));
    QVERIFY(m_house->desk.desk().marks() == typed && m_work->marksDiffer());
    // not for a lift that starts otherwise
    m_work.reset();
    init();
    m_house->desk.desk().setMarks(typed);
    m_work->take(ana(), QStringLiteral("14"));
    QVERIFY(m_house->desk.desk().marks().start == LiftStart::Floor && !m_house->desk.desk().marks().top);
    // hers stand where she has some
    m_work.reset();
    init();
    m_house->desk.desk().setMarks(typed);
    m_work->take(ana(), QStringLiteral("1"));
    QVERIFY(m_house->desk.desk().marks() != typed && !m_work->marksDiffer());
}

void DeskWorkTest::aSetupKeptAndOpenedAgain()
{
    m_work->take(ana(), QStringLiteral("1"));
    Desk& desk = m_house->desk.desk();
    const auto chain = std::find_if(desk.kit().begin(), desk.kit().end(), [](const KitItem& i) { return i.name == "Long chain"; });
    QVERIFY(chain != desk.kit().end());
    desk.hang({chain->id, HungOn::BothSides, ChainPlacing{}});
    const SetupRecord before = desk.setup();
    QVERIFY(m_work->setupDiffers());
    m_work->keepSetup();
    QVERIFY(!m_work->setupDiffers());
    desk.takeOff(0);
    QVERIFY(m_work->setupDiffers());
    const auto* athlete = m_house->book.book().athletes().front();
    const auto saved = m_house->book.book().setupsOf(athlete->id);
    QCOMPARE(saved.size(), std::size_t(1));
    m_work->open(QString::fromStdString(saved.front()->id.hex()));
    QVERIFY(desk.setup() == before);
    QVERIFY(!m_work->setupDiffers());
}

void DeskWorkTest::anotherLiftIsAnotherSetup()
{
    m_work->take(ana(), QStringLiteral("1"));
    m_work->keepSetup();
    m_work->take(ana(), QStringLiteral("14"));
    m_work->keepSetup();
    QCOMPARE(m_house->book.book().setupsOf(m_house->book.book().athletes().front()->id).size(), std::size_t(2));
    m_house->desk.desk().stepLoad(true);
    m_work->keepSetup();
    QCOMPARE(m_house->book.book().setupsOf(m_house->book.book().athletes().front()->id).size(), std::size_t(2));
}

/// Of her, and of the lift; of a set-up that is opened, its own.
void DeskWorkTest::whatHungLastTime()
{
    const auto last = [this] {
        const auto& load = m_house->desk.desk().lastTime();
        return load ? load->si() : -1;
    };
    const auto keep = [this](double load) {
        SetupRecord setup = samples::setup(load);
        m_house->desk.desk().setBar(setup.bar);
        m_work->keepSetup();
    };
    m_work->take(ana(), QStringLiteral("1"));
    QCOMPARE(last(), -1.0);
    keep(60);
    QCOMPARE(last(), 60.0);
    m_work->take(ana(), QStringLiteral("14"));
    QCOMPARE(last(), -1.0);
    keep(100);
    QCOMPARE(last(), 100.0);
    QString deadlift;
    for (const SavedSetup* saved : m_house->book.book().setupsOf(m_house->book.book().athletes().front()->id))
        if (saved->lift == LiftId{14})
            deadlift = QString::fromStdString(saved->id.hex());
    m_work->take(ana(), QStringLiteral("1"));
    QCOMPARE(last(), 60.0);
    m_work->open(deadlift);
    QCOMPARE(last(), 100.0);
    const QString other = QString::fromStdString(m_house->book.book().athletes()[1]->id.hex());
    m_work->take(other, QStringLiteral("1"));
    QCOMPARE(last(), -1.0);
}

void DeskWorkTest::kitOfAVenue()
{
    QCOMPARE(m_house->desk.desk().kit().size(), std::size_t(2));
    QSignalSpy kept(m_work.get(), &DeskWork::venueKept);
    m_work->keepVenue(QStringLiteral("Marrow Hill hall"));
    QCOMPARE(kept.count(), 1);
    QCOMPARE(m_work->venue(), 1);
    QCOMPARE(m_house->desk.desk().kit().size(), std::size_t(0));
    m_work->setVenue(0);
    QCOMPARE(m_house->desk.desk().kit().size(), std::size_t(2));
}

void DeskWorkTest::venueThatIsUndone()
{
    m_work->keepVenue(QStringLiteral("Marrow Hill hall"));
    const QString venue = m_work->venueId();
    m_house->book.undo();
    QCOMPARE(m_work->venue(), 0);
    QCOMPARE(m_house->desk.desk().kit().size(), std::size_t(2));
    // what is measured now is kept nowhere that is gone
    QVERIFY(m_work->venueId() != venue);
    QCOMPARE(m_work->venueId(), QString::fromStdString(RecordId{}.hex()));
}

void DeskWorkTest::halfMeasuredWaitsThroughAnOpening()
{
    m_work->take(ana(), QStringLiteral("1"));
    m_work->keepSetup();
    m_house->desk.desk().setDraft(samples::item(0, "", BandMeasurement{}));
    const auto saved = m_house->book.book().setupsOf(m_house->book.book().athletes().front()->id);
    m_work->open(QString::fromStdString(saved.front()->id.hex()));
    QVERIFY(m_house->desk.desk().draft({}, ItemKind::Band));
}

void DeskWorkTest::hangTheChain()
{
    Desk& desk = m_house->desk.desk();
    const auto chain = std::find_if(desk.kit().begin(), desk.kit().end(), [](const KitItem& i) { return i.name == "Long chain"; });
    QVERIFY(chain != desk.kit().end());
    desk.hang({chain->id, HungOn::BothSides, samples::chainOn(0.8)});
}

void DeskWorkTest::looksOverAreKept()
{
    m_work->take(ana(), QStringLiteral("1"));
    hangTheChain();
    m_work->keepSetup();
    const SeasonBook& book = m_house->book.book();
    const RecordId setup = book.setupsOf(book.athletes().front()->id).front()->id;
    QVERIFY(book.acknowledgementsOf(setup).empty() && m_work->lookedOn().isEmpty());
    const QString undo = m_house->book.undoFact();
    m_house->desk.desk().lookOver(CautionCode::Chains);
    QCOMPARE(book.acknowledgementsOf(setup).size(), std::size_t(1));
    QCOMPARE(m_work->lookedOn(), QStringLiteral("2 Nov"));
    QCOMPARE(m_house->book.undoFact(), undo);
    QVERIFY(m_house->book.keeping().deeds().front().deed == Deed::SetupKept);
    // laid out again it has to be looked over again, and one a day is enough
    m_work->open(QString::fromStdString(setup.hex()));
    QVERIFY(!m_house->desk.desk().answer().cautions.front().lookedOver);
    m_house->desk.desk().lookOver(CautionCode::Chains);
    QCOMPARE(book.acknowledgementsOf(setup).size(), std::size_t(1));
    // hung otherwise, it was not looked over
    m_house->desk.desk().rehang(0, {m_house->desk.desk().setup().hung.front().item, HungOn::BothSides, samples::chainOn(0.7)});
    QVERIFY(m_work->lookedOn().isEmpty());
    m_house->desk.desk().lookOver(CautionCode::Chains);
    QCOMPARE(book.acknowledgementsOf(setup).size(), std::size_t(1));
}

void DeskWorkTest::looksOverWaitForTheSetup()
{
    m_work->take(ana(), QStringLiteral("1"));
    hangTheChain();
    m_house->desk.desk().lookOver(CautionCode::Chains);
    const SeasonBook& book = m_house->book.book();
    m_work->keepSetup();
    const RecordId setup = book.setupsOf(book.athletes().front()->id).front()->id;
    QCOMPARE(book.acknowledgementsOf(setup).size(), std::size_t(1));
    // the load goes on, and what hangs was looked over all the same
    m_house->desk.desk().stepLoad(true);
    QCOMPARE(m_work->lookedOn(), QStringLiteral("2 Nov"));
}

void DeskWorkTest::aLookThatCouldNotBeKept()
{
    m_work->take(ana(), QStringLiteral("1"));
    hangTheChain();
    m_work->keepSetup();
    const SeasonBook& book = m_house->book.book();
    const RecordId setup = book.setupsOf(book.athletes().front()->id).front()->id;
    m_house->keeper.refusal = vault::Refusal{vault::Code::WriteFailedTryAgain};
    m_house->desk.desk().lookOver(CautionCode::Chains);
    QVERIFY(book.acknowledgementsOf(setup).empty() && !m_house->book.head().isEmpty());
    m_house->keeper.refusal.reset();
    m_house->desk.desk().lookOver(CautionCode::Chains);
    QCOMPARE(book.acknowledgementsOf(setup).size(), std::size_t(1));
}

void DeskWorkTest::remembersForWhom()
{
    m_work->take(ana(), QStringLiteral("1"));
    DeskWork next;
    next.setDesk(&m_house->desk);
    next.setBook(&m_house->book);
    QCOMPARE(next.who(), QStringLiteral("Ana M., back squat"));
    // as it was remembered before lifts could be added
    m_house->book.setDraft(QStringLiteral("work"), QCborMap{{0, 1}, {1, ana()}, {2, 14}, {3, QString()}, {4, QString()}}.toCborValue().toCbor());
    DeskWork older;
    older.setDesk(&m_house->desk);
    older.setBook(&m_house->book);
    QCOMPARE(older.who(), QStringLiteral("Ana M., deadlift"));
}

void DeskWorkTest::aLiftOfTheCoachsOwn()
{
    LiftEditor lift;
    lift.setBook(&m_house->book);
    lift.setName(QStringLiteral("Block pull"));
    lift.setFromFloor(true);
    lift.keep();
    m_work->take(ana(), lift.lift());
    QCOMPARE(m_work->who(), QStringLiteral("Ana M., Block pull"));
    QCOMPARE(m_work->lift(), lift.lift());
    BarMarks marks = m_house->desk.desk().marks();
    QVERIFY(marks.start == LiftStart::Floor);
    marks.top = metres(0.8);
    m_house->desk.desk().setMarks(marks);
    m_work->keepMarks();
    m_work->keepSetup();
    QVERIFY(!m_work->marksDiffer() && !m_work->setupDiffers());
    DeskWork next;
    next.setDesk(&m_house->desk);
    next.setBook(&m_house->book);
    QCOMPARE(next.who(), QStringLiteral("Ana M., Block pull"));
    lift.takeOut();
    QCOMPARE(m_work->who(), QStringLiteral("Ana M., a lift taken out"));
}

void DeskWorkTest::theDayTurns()
{
    m_work->take(ana(), QStringLiteral("1"));
    const Desk& desk = m_house->desk.desk();
    QVERIFY(desk.lifter() && desk.lifter()->day == m_house->today && desk.heldTo().day == m_house->today);
    const QSignalSpy told(&m_house->book, &BookService::changed);
    m_house->book.lookAtDay();
    QCOMPARE(told.count(), 0);
    m_house->today += std::chrono::days(1);
    m_house->book.lookAtDay();
    QCOMPARE(told.count(), 1);
    QVERIFY(desk.lifter()->day == m_house->today && desk.heldTo().day == m_house->today && desk.maximumOn() == m_house->today);
}

QTEST_GUILESS_MAIN(DeskWorkTest)
#include "test_deskwork.moc"
