// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/pages/deedsview.h"

#include "tests/mobile/formcheck.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QtTest>
#endif

using namespace steelyard;

/// What was done is listed, the last first, and undone from there in turn.
class DeedsViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLastFirst();
    void somethingNewerComesFirst();
    void twentyAtMost();

private:
    static void keep(BookService& book, Athlete athlete) { keepAthlete(book.keeping(), std::move(athlete), book.teller()); }
};

void DeedsViewTest::theLastFirst()
{
    StandInHouse house;
    DeedsView view;
    view.setBook(&house.book);
    QVERIFY(view.isEmpty());
    for (const char* name : {"Ana", "Bo"}) {
        Athlete athlete;
        athlete.name = name;
        keep(house.book, athlete);
    }
    QCOMPARE(view.deeds()->rowCount(), 2);
    QCOMPARE(formcheck::shown(*view.deeds(), 0, "label").toString(), QStringLiteral("kept Bo"));
    house.book.undo(1);
    QCOMPARE(view.deeds()->rowCount(), 1);
    QCOMPARE(house.book.book().athletes().size(), std::size_t(1));
    QCOMPARE(house.book.book().athletes().front()->name, std::string("Bo"));
}

void DeedsViewTest::somethingNewerComesFirst()
{
    StandInHouse house;
    DeedsView view;
    view.setBook(&house.book);
    Athlete athlete;
    athlete.name = "Ana";
    keep(house.book, athlete);
    athlete = *house.book.book().athletes().front();
    athlete.name = "Anna";
    keep(house.book, athlete);
    QVERIFY(formcheck::shown(*view.deeds(), 0, "undoable").toBool());
    QVERIFY(!formcheck::shown(*view.deeds(), 1, "undoable").toBool());
    QVERIFY(!formcheck::shown(*view.deeds(), 1, "hint").toString().isEmpty());
    house.book.undo(1);
    QVERIFY(!house.book.head().isEmpty());
    house.book.undo(0);
    QVERIFY(house.book.head().isEmpty());
    QCOMPARE(house.book.book().athletes().front()->name, std::string("Ana"));
    QVERIFY(formcheck::shown(*view.deeds(), 0, "undoable").toBool());
}

void DeedsViewTest::twentyAtMost()
{
    StandInHouse house;
    DeedsView view;
    view.setBook(&house.book);
    for (int i = 0; i < 25; ++i) {
        Athlete athlete;
        athlete.name = "Person " + std::to_string(i);
        keep(house.book, athlete);
    }
    QCOMPARE(view.deeds()->rowCount(), 20);
}

QTEST_GUILESS_MAIN(DeedsViewTest)
#include "test_deedsview.moc"
