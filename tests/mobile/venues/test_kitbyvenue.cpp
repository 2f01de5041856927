// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/editors/chaineditor.h"
#include "mobile/editors/hangeditor.h"
#include "mobile/pages/deskwork.h"
#include "mobile/pages/kitview.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/standinhouse.h"
#include "tests/mobile/venues/twovenues.h"

#include <QtTest>
#endif

using namespace steelyard;

/// The kit list of a venue: what is free, lent, borrowed, away or not measured yet.
class KitByVenueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void whatIsFree();
    void hangingWhatIsFree();
    void lentWhileItHangs();
    void lentIsLastAndLeadsThere();
    void borrowedComesFirstBeforeItGoesBack();
    void takenAlong();
    void copiedIsNotMeasuredYet();
    void copiedThingInItsForm();
    void dueInItsForm();

private:
    [[nodiscard]] QVariant said(int row, const char* role) const { return formcheck::shown(*m_view->things(), row, role); }
    [[nodiscard]] int rowOf(const char* what) const
    {
        for (int row = 0; row < m_view->things()->rowCount(); ++row)
            if (said(row, "what").toString() == QLatin1String(what))
                return row;
        return -1;
    }
    [[nodiscard]] QString idOf(const char* what) const
    {
        for (const KitRecord* record : m_house->book.book().kit())
            if (record->item.name == what)
                return QString::fromStdString(record->item.id.hex());
        return {};
    }
    void loan(const char* what, LoanKind kind, const OnLoan& how)
    {
        keepLoan(m_house->book.keeping(), *RecordId::fromHex(idOf(what).toStdString()), kind, how, [](const Told&) {});
    }
    void go(int venue)
    {
        m_work->setVenue(venue);
        m_view->setVenueId(m_work->venueId());
    }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<DeskWork> m_work;
    std::unique_ptr<KitView> m_view;
    twovenues::Places m_places;
};

void KitByVenueTest::init()
{
    m_view.reset();
    m_work.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(4, "Chain", samples::weighed()), samples::item(7, "Band", samples::band(), false)}, samples::setup(20));
    m_places = twovenues::fill(m_house->book);
    m_work = std::make_unique<DeskWork>();
    m_work->setDesk(&m_house->desk);
    m_work->setBook(&m_house->book);
    m_view = std::make_unique<KitView>();
    m_view->setDesk(&m_house->desk);
    m_view->setBook(&m_house->book);
    go(1);
}

void KitByVenueTest::whatIsFree()
{
    QCOMPARE(said(rowOf("Chain"), "free").toString(), QStringLiteral("both free"));
    QCOMPARE(said(rowOf("Band"), "free").toString(), QStringLiteral("free"));
    HangEditor form;
    form.setDeskService(&m_house->desk);
    QCOMPARE(form.hang(idOf("Chain")), 0);
    QCOMPARE(said(rowOf("Chain"), "free").toString(), QStringLiteral("both hang"));
    form.setSides(2);
    QCOMPARE(said(rowOf("Chain"), "free").toString(), QStringLiteral("one free"));
    (void)form.hang(idOf("Band"));
    QCOMPARE(said(rowOf("Band"), "free").toString(), QStringLiteral("hangs"));
    form.takeOff();
    QCOMPARE(said(rowOf("Band"), "free").toString(), QStringLiteral("free"));
}

void KitByVenueTest::hangingWhatIsFree()
{
    HangEditor form;
    form.setDeskService(&m_house->desk);
    QCOMPARE(form.hang(idOf("Chain")), 0);
    // none is free: where it hangs already, and nothing more hangs
    QCOMPARE(form.hang(idOf("Band")), 1);
    QCOMPARE(form.hang(idOf("Chain")), 0);
    QCOMPARE(m_house->desk.desk().setup().hung.size(), std::size_t(2));
    // one is free: on the side that has none
    form.setSides(1);
    QCOMPARE(form.hang(idOf("Chain")), 2);
    QCOMPARE(form.sides(), 2);
    QVERIFY(!m_house->desk.desk().answer().error || m_house->desk.desk().answer().error->code != Refusal::TooMany);
}

void KitByVenueTest::lentWhileItHangs()
{
    HangEditor form;
    form.setDeskService(&m_house->desk);
    (void)form.hang(idOf("Chain"));
    form.setSides(1);
    loan("Chain", LoanKind::Lent, {"the rowers"});
    // the other of the pair is not free either, and that it hangs is not what matters now
    QCOMPARE(said(rowOf("Chain"), "free").toString(), QStringLiteral("lent"));
    QCOMPARE(form.hang(idOf("Chain")), 0);
    QCOMPARE(m_house->desk.desk().setup().hung.size(), std::size_t(1));
}

void KitByVenueTest::lentIsLastAndLeadsThere()
{
    loan("Band", LoanKind::Lent, {"the rowers", m_house->today + std::chrono::days(5)});
    QCOMPARE(rowOf("Band"), 1);
    QCOMPARE(said(1, "how").toString(), QStringLiteral("lent to the rowers, back by 7 Nov"));
    QCOMPARE(said(1, "leads").toString(), QStringLiteral("loan"));
    QVERIFY(!said(1, "usable").toBool());
    QCOMPARE(said(1, "free").toString(), QStringLiteral("lent"));
    HangEditor form;
    form.setDeskService(&m_house->desk);
    QCOMPARE(form.hang(idOf("Band")), -1);
    QVERIFY(m_house->desk.desk().setup().hung.empty());
}

void KitByVenueTest::borrowedComesFirstBeforeItGoesBack()
{
    loan("Chain", LoanKind::Borrowed, {"the school", m_house->today + std::chrono::days(20)});
    QCOMPARE(rowOf("Chain"), 1);
    QVERIFY2(said(1, "how").toString().endsWith(QStringLiteral("borrowed from the school, back by 22 Nov")), qPrintable(said(1, "how").toString()));
    QVERIFY(said(1, "usable").toBool());
    m_house->today += std::chrono::days(15);
    m_view->refresh();
    QCOMPARE(rowOf("Chain"), 0);
    m_house->today += std::chrono::days(15);
    m_view->refresh();
    QCOMPARE(rowOf("Chain"), 0);
    QVERIFY(said(0, "how").toString().contains(QStringLiteral("was due back on 22 Nov")));
}

void KitByVenueTest::takenAlong()
{
    const RecordId chain = *RecordId::fromHex(idOf("Chain").toStdString());
    takeAlong(m_house->book.keeping(), m_places.hall, std::array{chain}, {}, [](const Told&) {});
    QCOMPARE(rowOf("Chain"), 1);
    QCOMPARE(said(1, "how").toString(), QStringLiteral("taken along to School hall"));
    QCOMPARE(said(1, "leads").toString(), QStringLiteral("along"));
    QVERIFY(!m_house->desk.desk().item(chain));
    go(2);
    QCOMPARE(m_view->things()->rowCount(), 1);
    QVERIFY(m_house->desk.desk().item(chain));
    QVERIFY(said(0, "how").toString().endsWith(QStringLiteral("belongs to Home weight room")));
    QVERIFY(said(0, "usable").toBool());
    // everywhere it is one thing
    go(0);
    QCOMPARE(m_view->things()->rowCount(), 2);
}

void KitByVenueTest::copiedIsNotMeasuredYet()
{
    copyList(m_house->book.keeping(), m_places.home, m_places.hall, [](const Told&) {});
    go(2);
    QCOMPARE(m_view->things()->rowCount(), 2);
    for (int row = 0; row < 2; ++row) {
        QCOMPARE(said(row, "how").toString(), QStringLiteral("not measured yet"));
        QCOMPARE(said(row, "free").toString(), row == 0 ? QStringLiteral("one") : QStringLiteral("a pair"));
        QVERIFY(!said(row, "usable").toBool());
    }
    HangEditor form;
    form.setDeskService(&m_house->desk);
    QCOMPARE(form.hang(said(0, "itemId").toString()), -1);
}

void KitByVenueTest::copiedThingInItsForm()
{
    copyList(m_house->book.keeping(), m_places.home, m_places.hall, [](const Told&) {});
    go(2);
    ChainEditor form;
    form.setDeskService(&m_house->desk);
    form.setBook(&m_house->book);
    form.setItemId(said(rowOf("Chain"), "itemId").toString());
    QCOMPARE(form.name(), QStringLiteral("Chain"));
    QVERIFY(form.record().listed && form.record().due.isEmpty() && form.record().number.isEmpty());
    QCOMPARE(form.record().measured, QStringLiteral("not yet"));
    QVERIFY(!form.canKeep());
    // its name and count may be said before anybody measures it
    form.setPair(false);
    QVERIFY(form.canKeep());
    form.keep();
    QVERIFY(form.record().listed && !form.isPair());
    // half measured is not enough
    QVERIFY(form.keepNumber(QStringLiteral("length"), 150.0).kept());
    QVERIFY(!form.canKeep());
    QVERIFY(form.keepNumber(QStringLiteral("mass"), 8.5).kept() && form.keepNumber(QStringLiteral("scaleStep"), 0.1).kept());
    form.keep();
    QVERIFY(!form.record().listed);
    QVERIFY(said(rowOf("Chain"), "usable").toBool());
}

void KitByVenueTest::dueInItsForm()
{
    ChainEditor form;
    form.setDeskService(&m_house->desk);
    form.setBook(&m_house->book);
    form.setItemId(idOf("Chain"));
    QCOMPARE(form.record().due, QStringLiteral("due 2 Nov 2027"));
    QVERIFY(!form.record().isDue);
    QVERIFY(form.record().number.startsWith(QStringLiteral("5.7")));
    QCOMPARE(form.record().loan, QStringLiteral("neither"));
    loan("Chain", LoanKind::Lent, {"the rowers"});
    QCOMPARE(form.record().loan, QStringLiteral("lent to the rowers"));
    m_house->today += std::chrono::days(400);
    QCOMPARE(form.record().due, QStringLiteral("due since 2 Nov"));
    QVERIFY(form.record().isDue);
}

QTEST_GUILESS_MAIN(KitByVenueTest)
#include "test_kitbyvenue.moc"
