// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/measuring/marksrun.h"

#include "tests/mobile/laidout.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QtTest>
#endif

using namespace steelyard;

/// Bar marks of a squad in a row: what is asked, kept and copied, and who comes next.
class MarksRunTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void bottomAndTopAreAsked();
    void theZoneOnWish();
    void keptAfterTheLast();
    void theNextOfHerSquad();
    void copiedToASimilarLift();

private:
    [[nodiscard]] const Athlete& person(std::size_t at) const { return *m_house->book.book().athletes()[at]; }
    [[nodiscard]] QString idOf(std::size_t at) const { return QString::fromStdString(person(at).id.hex()); }
    void key(double cm);

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<DeskWork> m_work;
    std::unique_ptr<MarksEditor> m_form;
    std::unique_ptr<MarksRun> m_run;
};

void MarksRunTest::init()
{
    m_run.reset();
    m_form.reset();
    m_work.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), {}, {}, {});
    people::fill(m_house->book, 4);
    m_work = std::make_unique<DeskWork>();
    m_work->setDesk(&m_house->desk);
    m_work->setBook(&m_house->book);
    m_form = std::make_unique<MarksEditor>();
    m_form->setDeskService(&m_house->desk);
    m_run = std::make_unique<MarksRun>();
    m_run->setForm(m_form.get());
    m_run->setWork(m_work.get());
    m_work->take(idOf(2), QStringLiteral("1"));
    m_run->start();
}

void MarksRunTest::key(double cm)
{
    QVERIFY2(m_form->keepNumber(m_run->key(), cm).kept(), qPrintable(m_run->key()));
    m_run->next();
}

void MarksRunTest::bottomAndTopAreAsked()
{
    QCOMPARE(m_run->key(), QStringLiteral("bottom"));
    QVERIFY(!m_run->back());
    key(70);
    QCOMPARE(m_run->key(), QStringLiteral("top"));
    QVERIFY(m_run->back());
    QCOMPARE(m_run->key(), QStringLiteral("bottom"));
    // a lift from the floor has its bottom from the plates
    m_work->take(idOf(2), QStringLiteral("14"));
    m_run->start();
    QCOMPARE(m_run->key(), QStringLiteral("top"));
}

void MarksRunTest::theZoneOnWish()
{
    m_run->setZoned(true);
    QStringList asked;
    for (const double cm : {70.0, 82.0, 95.0, 118.0}) {
        asked << m_run->key();
        key(cm);
    }
    QCOMPARE(asked, (QStringList{"bottom", "zoneFrom", "zoneTo", "top"}));
    QVERIFY(m_run->key().isEmpty());
    QVERIFY(person(2).marks.at(LiftId{1}).zoneTo == metres(0.95));
}

void MarksRunTest::keptAfterTheLast()
{
    key(70);
    QVERIFY(person(2).marks.empty());
    key(118);
    QVERIFY(person(2).marks.at(LiftId{1}).top == metres(1.18));
    QVERIFY(!m_work->marksDiffer());
}

void MarksRunTest::theNextOfHerSquad()
{
    // every other one is in her squad, and she is its second of two
    QVERIFY(m_run->nextName().isEmpty());
    m_run->nextLifter();
    QCOMPARE(m_work->athleteId(), idOf(2));
    m_work->take(idOf(0), QStringLiteral("1"));
    m_run->start();
    QCOMPARE(m_run->nextName(), QString::fromStdString(person(2).name));
    m_run->next();
    m_run->next();
    m_run->nextLifter();
    QCOMPARE(m_work->athleteId(), idOf(2));
    QCOMPARE(m_run->key(), QStringLiteral("bottom"));
    QVERIFY(m_run->progress().contains(QStringLiteral("2 of 2")));
}

void MarksRunTest::copiedToASimilarLift()
{
    QCOMPARE(m_run->alike(), QStringList{QStringLiteral("front squat")});
    // nothing is kept yet that could be copied
    m_run->copyTo(0);
    QVERIFY(person(2).marks.empty());
    key(70);
    key(118);
    m_run->copyTo(1);
    QCOMPARE(person(2).marks.size(), std::size_t(1));
    m_run->copyTo(0);
    QVERIFY(person(2).marks.at(LiftId{2}) == person(2).marks.at(LiftId{1}));
    QVERIFY(m_run->property("copied").toString().contains(QStringLiteral("back squat to front squat")));
    m_run->start();
    QVERIFY(m_run->property("copied").toString().isEmpty());
}

QTEST_GUILESS_MAIN(MarksRunTest)
#include "test_marksrun.moc"
