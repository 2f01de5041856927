// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/numbers/originview.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

namespace {

BarMarks marks()
{
    BarMarks m = samples::marks(0.94, 1.60);
    m.zoneFrom = metres(1.10);
    m.zoneTo = metres(1.28);
    return m;
}

}

/// A number with all that went into it, in words.
class OriginViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void numbersThatAreThere();
    void linesSayWhatHowAndWhen();
    void adviceGoesWhereItIsWidest_data();
    void adviceGoesWhereItIsWidest();
    void anotherNumber();
    void noNumberWithoutMarks();
    void followsTheBar();
    void marksByHoleAddUp();

private:
    void lay(PlateTrust trust, std::vector<HungRecord> hung);
    [[nodiscard]] QString said(int row, const char* role) const
    {
        const auto* lines = m_view->lines();
        return lines->data(lines->index(row, 0), lines->roleNames().key(role)).toString();
    }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<OriginView> m_view;
};

void OriginViewTest::init()
{
    m_view.reset();
    m_house = std::make_unique<StandInHouse>();
    m_view = std::make_unique<OriginView>();
    lay(PlateTrust::AsMarked, {samples::hung(1, samples::chainOn(0.2)), samples::hung(2, samples::bandAt(0))});
    m_view->setDesk(&m_house->desk);
    m_view->setBook(&m_house->book);
}

void OriginViewTest::lay(PlateTrust trust, std::vector<HungRecord> hung)
{
    SetupRecord setup = samples::setup(100, std::move(hung));
    setup.bar.trust = trust;
    layOut(m_house->book, m_house->desk.desk(), marks(), {samples::item(1, "Chain", samples::gauged()), samples::item(2, "Green band", samples::band())}, setup);
}

void OriginViewTest::numbersThatAreThere()
{
    QCOMPARE(m_view->numbers(), (QStringList{"bottom", "sticking zone", "top", "mean of the path"}));
    QCOMPARE(m_view->current(), 0);
    QVERIFY2(m_view->number().endsWith(QStringLiteral("kg at 94 cm")), qPrintable(m_view->number()));
}

void OriginViewTest::linesSayWhatHowAndWhen()
{
    QCOMPARE(m_view->lines()->rowCount(), 4);
    QCOMPARE(said(0, "what"), QStringLiteral("Bar, collars and plates"));
    QCOMPARE(said(0, "value"), QStringLiteral("100 kg"));
    QCOMPARE(said(1, "what"), QStringLiteral("Chain"));
    QVERIFY(said(1, "how").contains(QStringLiteral("wire, pitch and inner width")));
    // the house keeps everything on the same day
    QVERIFY2(said(1, "how").endsWith(QStringLiteral("Measured 2 Nov")), qPrintable(said(1, "how")));
    QCOMPARE(said(2, "what"), QStringLiteral("Green band"));
    QVERIFY(said(2, "how").contains(QStringLiteral("twin")));
    QCOMPARE(said(3, "what"), QStringLiteral("Bar marks"));
    QVERIFY(said(3, "value").startsWith(QStringLiteral("±")));
    QVERIFY2(said(3, "how").startsWith(QStringLiteral("bottom at 94 cm by tape; read to a centimetre")), qPrintable(said(3, "how")));
    double whole = 0;
    for (int row = 0; row < 4; ++row)
        whole += said(row, "share").toDouble();
    QVERIFY2(std::abs(whole - 1) < 1e-9, qPrintable(QString::number(whole)));
}

void OriginViewTest::adviceGoesWhereItIsWidest_data()
{
    QTest::addColumn<int>("which");
    QTest::addColumn<QString>("advice");
    QTest::newRow("plates that nobody has weighed") << 0 << "The plates make most of the give-or-take. Weigh them.";
    QTest::newRow("a band and its twin") << 1 << "Green band makes most of the give-or-take. Measure the other of the pair by itself.";
    QTest::newRow("iron as marked") << 2 << "Nothing here is uncertain enough to show.";
}

void OriginViewTest::adviceGoesWhereItIsWidest()
{
    QFETCH(const int, which);
    if (which == 0)
        lay(PlateTrust::Unweighed, {});
    else if (which == 1)
        lay(PlateTrust::AsMarked, {samples::hung(2, samples::bandAt(0))});
    else
        lay(PlateTrust::AsMarked, {});
    // at the bottom the band is slack and says nothing
    m_view->setCurrent(2);
    QTEST(m_view->advice(), "advice");
}

void OriginViewTest::anotherNumber()
{
    const QString bottom = m_view->number();
    m_view->setCurrent(3);
    QCOMPARE(m_view->current(), 3);
    QVERIFY(m_view->number() != bottom);
    QVERIFY2(m_view->number().endsWith(QStringLiteral("from 94 to 160 cm")), qPrintable(m_view->number()));
    m_view->setCurrent(9);
    QCOMPARE(m_view->current(), 3);
}

void OriginViewTest::noNumberWithoutMarks()
{
    m_house->desk.desk().setMarks({});
    QVERIFY(m_view->numbers().isEmpty());
    QVERIFY(m_view->number().isEmpty() && m_view->advice().isEmpty());
    QCOMPARE(m_view->lines()->rowCount(), 0);
}

void OriginViewTest::followsTheBar()
{
    const QString before = m_view->number();
    QSignalSpy changed(m_view.get(), &OriginView::changed);
    m_house->desk.desk().stepLoad(true);
    QVERIFY(changed.count() > 0);
    QVERIFY(m_view->number() != before);
}

void OriginViewTest::marksByHoleAddUp()
{
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(6, "Uprights", RackMeasurement{metres(0.415), metres(0.05), 28, {}}, false)}, samples::setup(60));
    const KitItem rack = m_house->desk.desk().kit().front();
    BarMarks m = samples::marks(0.765, 1.265);
    m.holes.bottom = HoleRead{rack.id, 8};
    m_house->desk.desk().setMarks(m);
    QVERIFY2(said(1, "how").startsWith(QStringLiteral("bottom at hole 8 of Uprights: 41.5 + 7 × 5 = 76.5 cm; read")), qPrintable(said(1, "how")));
    m_view->setCurrent(2);
    QVERIFY2(said(1, "how").contains(QStringLiteral("top at 126.5 cm by tape")), qPrintable(said(1, "how")));
    // measured anew, the rack says nothing of what was read then
    KitItem anew = rack;
    anew.measurement = RackMeasurement{metres(0.425), metres(0.05), 28, {}};
    m_house->desk.desk().setKit({anew});
    QVERIFY2(said(1, "how").contains(QStringLiteral("as the rack was measured then")), qPrintable(said(1, "how")));
}

QTEST_MAIN(OriginViewTest)
#include "test_originview.moc"
