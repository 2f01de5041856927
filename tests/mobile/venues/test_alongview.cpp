// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/venues/alongview.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/standinhouse.h"
#include "tests/mobile/venues/twovenues.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// What comes along to a venue, and goes back.
class AlongViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void whatIsElsewhere();
    void tickedAndKept();
    void backAgain();
    void bothAtOnce();
    void awayFromHome();
    void nothingTicked();
    void whatSomebodyElseHasStaysThere();

private:
    [[nodiscard]] QVariant said(int row, const char* role) const { return formcheck::shown(*m_view->things(), row, role); }
    void open(const RecordId& venue) { m_view->setVenueId(QString::fromStdString(venue.hex())); }
    void turn(int row) { m_view->turn(said(row, "itemId").toString()); }
    [[nodiscard]] RecordId at(int item) const
    {
        const auto kit = m_house->book.book().kit();
        return venueNow(m_house->book.book(), kit.at(static_cast<std::size_t>(item))->item);
    }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<AlongView> m_view;
    twovenues::Places m_places;
};

void AlongViewTest::init()
{
    m_view.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(4, "Chain", samples::weighed()), samples::item(7, "Band", samples::band(), false)}, samples::setup(20));
    m_places = twovenues::fill(m_house->book);
    m_view = std::make_unique<AlongView>();
    m_view->setBook(&m_house->book);
    open(m_places.hall);
}

void AlongViewTest::whatIsElsewhere()
{
    QCOMPARE(m_view->venue(), QStringLiteral("School hall"));
    QCOMPARE(m_view->things()->rowCount(), 2);
    QCOMPARE(said(0, "label").toString(), QStringLiteral("Band"));
    QCOMPARE(said(0, "hint").toString(), QStringLiteral("belongs to Home weight room"));
    QVERIFY(!said(0, "here").toBool());
    // at home everything is where it belongs
    open(m_places.home);
    QVERIFY(m_view->isEmpty());
}

void AlongViewTest::whatSomebodyElseHasStaysThere()
{
    const RecordId band = m_house->book.book().kit().at(0)->item.id;
    const auto told = [](const Told&) {};
    keepLoan(m_house->book.keeping(), band, LoanKind::Lent, {"the rowers"}, told);
    QCOMPARE(m_view->things()->rowCount(), 1);
    QCOMPARE(said(0, "label").toString(), QStringLiteral("Chain"));
    keepLoan(m_house->book.keeping(), band, LoanKind::None, {}, told);
    QCOMPARE(m_view->things()->rowCount(), 2);
}

void AlongViewTest::tickedAndKept()
{
    turn(0);
    QVERIFY(said(0, "here").toBool() && said(0, "turned").toBool() && m_view->canKeep());
    QCOMPARE(m_view->fact(), QStringLiteral("1 comes along"));
    QVERIFY(at(0) == m_places.home);
    QSignalSpy kept(m_view.get(), &AlongView::kept);
    m_view->keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY(at(0) == m_places.hall && at(1) == m_places.home);
    QVERIFY(said(0, "here").toBool() && !said(0, "turned").toBool() && !m_view->canKeep());
    m_house->book.undo();
    QVERIFY(at(0) == m_places.home && !said(0, "here").toBool());
}

void AlongViewTest::backAgain()
{
    turn(0);
    m_view->keep();
    turn(0);
    QCOMPARE(m_view->fact(), QStringLiteral("1 goes back"));
    m_view->keep();
    QVERIFY(at(0) == m_places.home);
}

void AlongViewTest::bothAtOnce()
{
    turn(0);
    m_view->keep();
    turn(0);
    turn(1);
    QCOMPARE(m_view->fact(), QStringLiteral("1 comes along, 1 goes back"));
    m_view->keep();
    QVERIFY(at(0) == m_places.home && at(1) == m_places.hall);
}

void AlongViewTest::awayFromHome()
{
    turn(0);
    m_view->keep();
    open(m_places.home);
    QCOMPARE(m_view->things()->rowCount(), 1);
    QCOMPARE(said(0, "hint").toString(), QStringLiteral("belongs to Home weight room, at School hall now"));
    turn(0);
    m_view->keep();
    QVERIFY(at(0) == m_places.home && m_view->isEmpty());
    // a third venue says where it is now
    open(m_places.hall);
    turn(0);
    m_view->keep();
    open(twovenues::venue(m_house->book, "Away pitch"));
    QCOMPARE(said(0, "hint").toString(), QStringLiteral("belongs to Home weight room, at School hall now"));
}

void AlongViewTest::nothingTicked()
{
    QVERIFY(!m_view->canKeep());
    QCOMPARE(m_view->fact(), QStringLiteral("tick what comes along"));
    turn(1);
    turn(1);
    QVERIFY(!m_view->canKeep());
    m_view->keep();
    QVERIFY(m_house->book.keeping().deeds().empty());
}

QTEST_GUILESS_MAIN(AlongViewTest)
#include "test_alongview.moc"
