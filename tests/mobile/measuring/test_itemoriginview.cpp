// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/measuring/itemoriginview.h"

#include "core/work/venues/keepvenuekit.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/standinhouse.h"
#include "tests/mobile/venues/twovenues.h"

#include <QtTest>
#endif

using namespace steelyard;

/// Where the number of a thing of the kit comes from, in words.
class ItemOriginViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void weighedChain();
    void gaugedChain();
    void band();
    void everyLineSaysWhatItDoes();
    void measuredAnew();
    void nothingMeasured();

private:
    [[nodiscard]] QString said(int row, const char* role) const { return formcheck::shown(*m_view->lines(), row, role).toString(); }
    void open(const char* name)
    {
        for (const KitRecord* record : m_house->book.book().kit())
            if (record->item.name == name)
                m_view->setItemId(QString::fromStdString(record->item.id.hex()));
    }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<ItemOriginView> m_view;
};

void ItemOriginViewTest::init()
{
    m_view.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(4, "Weighed", samples::weighed()), samples::item(5, "Gauged", samples::gauged()), samples::item(7, "Band", samples::band())}, samples::setup(20));
    m_view = std::make_unique<ItemOriginView>();
    m_view->setBook(&m_house->book);
}

void ItemOriginViewTest::weighedChain()
{
    open("Weighed");
    QCOMPARE(m_view->name(), QStringLiteral("Weighed"));
    QCOMPARE(m_view->number(), QStringLiteral("5.70 kg a metre, give or take 0.04"));
    QCOMPARE(m_view->formula(), QStringLiteral("What it weighs, divided by its length."));
    QCOMPARE(m_view->measured(), QStringLiteral("measured 2 Nov, due in 52 weeks"));
    QCOMPARE(m_view->lines()->rowCount(), 3);
    QCOMPARE(said(0, "value"), QStringLiteral("8.55 kg"));
    QCOMPARE(said(1, "value"), QStringLiteral("0.1 kg"));
    QCOMPARE(said(1, "shareText"), QStringLiteral("100 % of what makes it uncertain"));
    QCOMPARE(said(2, "shareText"), QStringLiteral("1 cm more makes it 0.7 % less"));
}

void ItemOriginViewTest::gaugedChain()
{
    open("Gauged");
    QVERIFY(m_view->formula().contains(QStringLiteral("EN 1991-1-1")));
    QVERIFY(!m_view->advice().isEmpty());
    QCOMPARE(said(0, "value"), QStringLiteral("16 mm"));
    QCOMPARE(said(0, "shareText"), QStringLiteral("0.1 mm more makes it 1.4 % more"));
    QCOMPARE(said(1, "shareText"), QStringLiteral("0.1 mm more makes it 0.1 % less"));
    QCOMPARE(said(4, "value"), QStringLiteral("3 %"));
    QVERIFY(said(4, "how").contains(QStringLiteral("DIN 766")));
}

void ItemOriginViewTest::band()
{
    open("Band");
    QVERIFY2(m_view->number().startsWith(QStringLiteral("17.5")) && m_view->number().endsWith(QStringLiteral("kg at 195 cm")), qPrintable(m_view->number()));
    QVERIFY(m_view->formula().contains(QStringLiteral("rubber")));
    QCOMPARE(said(0, "value"), QStringLiteral("6 readings"));
    QCOMPARE(said(1, "value"), QStringLiteral("100 cm"));
    QCOMPARE(said(1, "shareText"), QStringLiteral("1 cm more makes it 0.3 % less"));
}

void ItemOriginViewTest::everyLineSaysWhatItDoes()
{
    for (const char* name : {"Weighed", "Gauged", "Band"}) {
        open(name);
        for (int row = 0; row < m_view->lines()->rowCount(); ++row)
            for (const char* role : {"what", "how", "value", "shareText"})
                QVERIFY2(!said(row, role).isEmpty(), qPrintable(QStringLiteral("%1, line %2: %3").arg(QLatin1String(name)).arg(row).arg(QLatin1String(role))));
    }
}

void ItemOriginViewTest::measuredAnew()
{
    open("Weighed");
    KitItem item = m_house->book.book().item(*RecordId::fromHex(m_view->itemId().toStdString()))->item;
    ChainMeasurement heavier = samples::weighed();
    heavier.mass = kilograms(9);
    item.measurement = heavier;
    keepKitItem(m_house->book.keeping(), item, [](const Told&) {});
    QVERIFY(m_view->number().startsWith(QStringLiteral("6.00 kg")));
}

void ItemOriginViewTest::nothingMeasured()
{
    const auto places = twovenues::fill(m_house->book);
    copyList(m_house->book.keeping(), places.home, places.hall, [](const Told&) {});
    m_view->setItemId(QString::fromStdString(m_house->book.book().kitAt(places.hall).front()->item.id.hex()));
    QVERIFY(!m_view->name().isEmpty());
    QVERIFY(m_view->number().isEmpty() && m_view->formula().isEmpty() && m_view->measured().isEmpty());
    QCOMPARE(m_view->lines()->rowCount(), 0);
    m_view->setItemId(QStringLiteral("nobody"));
    QVERIFY(m_view->name().isEmpty());
}

QTEST_GUILESS_MAIN(ItemOriginViewTest)
#include "test_itemoriginview.moc"
