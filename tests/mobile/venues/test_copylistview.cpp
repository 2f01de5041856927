// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/venues/copylistview.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/standinhouse.h"
#include "tests/mobile/venues/twovenues.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// A venue's list copied to another.
class CopyListViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void whatWouldBeAdded();
    void copied();
    void anotherSource();
    void noOtherVenue();

private:
    [[nodiscard]] QVariant said(int row, const char* role) const { return formcheck::shown(*m_view->things(), row, role); }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<CopyListView> m_view;
    twovenues::Places m_places;
};

void CopyListViewTest::init()
{
    m_view.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(4, "Chain", samples::weighed()), samples::item(7, "Band", samples::band(), false)}, samples::setup(20));
    m_places = twovenues::fill(m_house->book);
    m_view = std::make_unique<CopyListView>();
    m_view->setBook(&m_house->book);
    m_view->setVenueId(QString::fromStdString(m_places.hall.hex()));
}

void CopyListViewTest::whatWouldBeAdded()
{
    QCOMPARE(m_view->venue(), QStringLiteral("School hall"));
    QCOMPARE(m_view->sources(), QStringList{QStringLiteral("Home weight room")});
    QCOMPARE(m_view->source(), 0);
    QCOMPARE(m_view->things()->rowCount(), 2);
    QCOMPARE(said(0, "label").toString(), QStringLiteral("Band"));
    QCOMPARE(said(0, "hint").toString(), QStringLiteral("one"));
    QCOMPARE(said(1, "hint").toString(), QStringLiteral("a pair"));
    QCOMPARE(m_view->fact(), QStringLiteral("2 things, still to be measured"));
}

void CopyListViewTest::copied()
{
    QSignalSpy kept(m_view.get(), &CopyListView::kept);
    m_view->keep();
    QCOMPARE(kept.count(), 1);
    const auto there = m_house->book.book().kitAt(m_places.hall);
    QCOMPARE(there.size(), std::size_t(2));
    QVERIFY(!there[0]->item.isMeasured() && there[1]->measurements.empty());
    QVERIFY(!m_view->canKeep());
    QCOMPARE(m_view->fact(), QStringLiteral("nothing to copy"));
    m_house->book.undo();
    QVERIFY(m_house->book.book().kitAt(m_places.hall).empty() && m_view->canKeep());
}

void CopyListViewTest::anotherSource()
{
    twovenues::venue(m_house->book, "Away pitch");
    QCOMPARE(m_view->sources(), (QStringList{QStringLiteral("Away pitch"), QStringLiteral("Home weight room")}));
    // the one that was looked at stays, and from the start it would be the one with most on its list
    QCOMPARE(m_view->source(), 1);
    CopyListView fresh;
    fresh.setBook(&m_house->book);
    fresh.setVenueId(m_view->venueId());
    QCOMPARE(fresh.source(), 1);
    m_view->setSource(0);
    QVERIFY(!m_view->canKeep());
    m_view->setSource(7);
    QCOMPARE(m_view->source(), 0);
}

void CopyListViewTest::noOtherVenue()
{
    m_house->book.load({});
    m_view->setVenueId(QString::fromStdString(twovenues::venue(m_house->book, "Home").hex()));
    QVERIFY(m_view->sources().isEmpty());
    QCOMPARE(m_view->source(), -1);
    QVERIFY(!m_view->canKeep());
    m_view->keep();
    QVERIFY(m_house->book.book().kit().empty());
}

QTEST_GUILESS_MAIN(CopyListViewTest)
#include "test_copylistview.moc"
