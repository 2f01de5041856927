// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/pages/squadview.h"

#include "tests/mobile/formcheck.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QtTest>
#endif

using namespace steelyard;

/// Anybody of a squad is found by one key and one row.
class SquadViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void emptyAtFirst();
    void aHandfulNeedsNoKeys();
    void everyOneOf26BehindOneKey();
    void oneLetterWithManyStaysTogether();
    void bySquad();
    void accentsSortWithTheirLetters();
    void noStretchFromOneScriptToAnother();

private:
    void add(const char* name, const char* squad = "");
    [[nodiscard]] QStringList names();

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<SquadView> m_view;
};

void SquadViewTest::init()
{
    m_view.reset();
    m_house = std::make_unique<StandInHouse>();
    m_view = std::make_unique<SquadView>();
    m_view->setBook(&m_house->book);
}

void SquadViewTest::add(const char* name, const char* squad)
{
    Athlete athlete;
    athlete.name = name;
    athlete.squad = squad;
    keepAthlete(m_house->book.keeping(), athlete, [](const Told& told) { QVERIFY(told.kept()); });
}

QStringList SquadViewTest::names()
{
    QStringList list;
    for (int row = 0; row < m_view->athletes()->rowCount(); ++row)
        list << formcheck::shown(*m_view->athletes(), row, "label").toString();
    return list;
}

void SquadViewTest::emptyAtFirst()
{
    QVERIFY(m_view->isEmpty());
    QCOMPARE(m_view->squads().size(), 1);
    QVERIFY(m_view->letters().isEmpty());
}

void SquadViewTest::aHandfulNeedsNoKeys()
{
    people::fill(m_house->book, SquadView::handful);
    QCOMPARE(names().size(), SquadView::handful);
    QVERIFY(m_view->letters().isEmpty());
}

void SquadViewTest::everyOneOf26BehindOneKey()
{
    people::fill(m_house->book, 26);
    QCOMPARE(names().size(), 26);
    QStringList found;
    for (int key = 0; key < m_view->letters().size(); ++key) {
        m_view->setLetter(key);
        QCOMPARE(m_view->letter(), key);
        QVERIFY(names().size() <= SquadView::handful);
        found << names();
    }
    QCOMPARE(found.size(), 26);
    QCOMPARE(found.removeDuplicates(), 0);
    QVERIFY(m_view->letters().size() <= 6);
    m_view->setLetter(-1);
    QCOMPARE(names().size(), 26);
}

void SquadViewTest::oneLetterWithManyStaysTogether()
{
    for (const char* name : {"Ana 1", "Ana 2", "Ana 3", "Ana 4", "Ana 5", "Ana 6", "Ana 7", "Ana 8", "Bo"})
        add(name);
    QCOMPARE(m_view->letters(), QStringList({QStringLiteral("A"), QStringLiteral("B")}));
    m_view->setLetter(0);
    QCOMPARE(names().size(), 8);
}

void SquadViewTest::bySquad()
{
    add("Ana", "Rowers");
    add("Bo", "Lifters");
    add("Cleo");
    QCOMPARE(m_view->squads(), QStringList({QStringLiteral("everybody"), QStringLiteral("Lifters"), QStringLiteral("Rowers")}));
    m_view->setSquad(2);
    QCOMPARE(names(), QStringList({QStringLiteral("Ana")}));
    m_view->setSquad(0);
    QCOMPARE(names().size(), 3);
}

void SquadViewTest::accentsSortWithTheirLetters()
{
    for (const char* name : {"Älva", "Zoe", "Bo", "Edda", "Émile", "Gus", "Hana"})
        add(name);
    QCOMPARE(m_view->letters().size(), 2);
    QVERIFY(m_view->letters()[0].startsWith(QLatin1Char('A')));
    m_view->setLetter(0);
    QVERIFY(names().contains(QStringLiteral("Älva")) && names().contains(QStringLiteral("Émile")));
}

void SquadViewTest::noStretchFromOneScriptToAnother()
{
    for (const char* name : {"Ana", "Bo", "Hana", "Wren", "Ярослава", "Ольга", "水野", "𠮷田"})
        add(name);
    for (const QString& letters : m_view->letters()) {
        const QStringList ends = letters.split(QStringLiteral("–"));
        QCOMPARE(QChar::script(ends.front().toUcs4().front()), QChar::script(ends.back().toUcs4().front()));
    }
    QVERIFY(m_view->letters().contains(QStringLiteral("A–W")));
    // a letter beyond the first plane is one letter
    QVERIFY2(m_view->letters().contains(QStringLiteral("水–𠮷")), qPrintable(m_view->letters().join(QStringLiteral(" "))));
    QStringList found;
    for (int key = 0; key < m_view->letters().size(); ++key) {
        m_view->setLetter(key);
        found << names();
    }
    QCOMPARE(found.size(), 8);
    QCOMPARE(found.removeDuplicates(), 0);
}

QTEST_GUILESS_MAIN(SquadViewTest)
#include "test_squadview.moc"
