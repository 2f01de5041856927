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

#include <cmath>
#endif

using namespace steelyard;

namespace {

MachineMeasurement byRadius()
{
    MachineMeasurement machine;
    machine.stack = kilograms(40);
    for (const auto& [degrees, radius] : {std::pair{0, 0.08}, {35, 0.1}, {70, 0.12}, {110, 0.09}})
        machine.readings.push_back({Angle{degrees * std::acos(-1.0) / 180}, metres(radius), {}, {}});
    return machine;
}

MachineMeasurement byPull()
{
    MachineMeasurement machine;
    machine.by = MachineMeasuring::Pull;
    machine.stack = kilograms(40);
    machine.scaleStep = kilograms(0.5);
    for (const auto& [travel, pull] : {std::pair{0.0, 20.0}, {0.2, 31.0}, {0.4, 36.0}, {0.6, 30.0}})
        machine.readings.push_back({{}, {}, metres(travel), kilograms(pull)});
    return machine;
}

}

/// Where the number of a thing of the kit comes from, in words.
class ItemOriginViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void weighedChain();
    void gaugedChain();
    void band();
    void eachOtherKind_data();
    void eachOtherKind();
    void rackHoleAddsUp();
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
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(4, "Weighed", samples::weighed()), samples::item(5, "Gauged", samples::gauged()), samples::item(7, "Band", samples::band()),
                                                             samples::item(8, "Aid", samples::aid(), false), samples::item(9, "Cam", byRadius(), false), samples::item(10, "Pulled", byPull(), false),
                                                             samples::item(11, "Scale", ScaleMeasurement{kilograms(0.1), kilograms(0.1), {{kilograms(20), kilograms(20.3)}}}, false),
                                                             samples::item(12, "Twenties", IronMeasurement{IronSort::Plates, kilograms(20), kilograms(40.6), kilograms(0.1), kilograms(0.2), 2}, false),
                                                             samples::item(13, "Strap", LeadMeasurement{metres(0.62), kilograms(0.35)}),
                                                             samples::item(14, "Uprights", RackMeasurement{metres(0.415), metres(0.05), 28, {metres(0.06)}}, false)}, samples::setup(20));
    m_view = std::make_unique<ItemOriginView>();
    m_view->setBook(&m_house->book);
}

void ItemOriginViewTest::weighedChain()
{
    open("Weighed");
    QCOMPARE(m_view->name(), QStringLiteral("Weighed"));
    QCOMPARE(m_view->number(), QStringLiteral("5.70 ± 0.04 kg a metre"));
    QCOMPARE(m_view->formula(), QStringLiteral("What it weighs, divided by its length."));
    QCOMPARE(m_view->measured(), QStringLiteral("measured 2 Nov, due in 52 weeks"));
    QCOMPARE(m_view->lines()->rowCount(), 3);
    QCOMPARE(said(0, "value"), QStringLiteral("8.55 ± 0.06 kg"));
    QCOMPARE(said(1, "value"), QStringLiteral("0.1 kg"));
    QCOMPARE(said(1, "shareText"), QStringLiteral("100 % of what makes it uncertain"));
    QCOMPARE(said(2, "shareText"), QStringLiteral("1 cm more makes it 0.7 % less"));
}

void ItemOriginViewTest::gaugedChain()
{
    open("Gauged");
    QVERIFY(m_view->sources().contains(QStringLiteral("EN 1991-1-1")));
    QVERIFY(!m_view->advice().isEmpty());
    QCOMPARE(said(0, "value"), QStringLiteral("16 mm"));
    QCOMPARE(said(0, "shareText"), QStringLiteral("0.1 mm more makes it 1.4 % more"));
    QCOMPARE(said(1, "shareText"), QStringLiteral("0.1 mm more makes it 0.1 % less"));
    QCOMPARE(said(4, "value"), QStringLiteral("± 3 %"));
    QVERIFY(m_view->sources().contains(QStringLiteral("DIN 766")));
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

void ItemOriginViewTest::eachOtherKind_data()
{
    QTest::addColumn<QString>("number");
    QTest::addColumn<QStringList>("values");
    const auto row = [](const char* name, const char* number, const QStringList& values) { QTest::newRow(name) << QString::fromUtf8(number) << values; };
    // the ± are worked out from their standard uncertainties in tests/core/measuring/test_itemorigin.cpp
    row("Aid", "about 63 ± 10 kg at the chest", {"5 readings", "0.0 ± 2.0 cm"});
    row("Cam", "47.1 ± 1.9 N·m at 70°", {"40.0 ± 0.9 kg", "12.0 ± 0.4 cm", "± 2°"});
    row("Pulled", "36.0 ± 0.3 kg at 40 cm", {"4 readings", "40.0 ± 2.0 cm"});
    row("Scale", "0.20 ± 0.08 kg too much at 20 kg", {"20 kg", "0.10 ± 0.06 kg", "20.30 ± 0.06 kg"});
    row("Twenties", "20.30 ± 0.12 kg each", {"40.6 ± 0.2 kg", "0.1 kg", "± 0.2 kg", "2", "20 kg"});
    row("Strap", "62.0 ± 2.0 cm", {"62.0 ± 2.0 cm", "0.35 kg"});
    row("Uprights", "hole 28 at 176.5 ± 2.0 cm", {"41.5 ± 2.0 cm", "5 cm"});
}

void ItemOriginViewTest::eachOtherKind()
{
    QFETCH(QString, number);
    QFETCH(QStringList, values);
    open(QTest::currentDataTag());
    QCOMPARE(m_view->number(), number);
    QStringList shown;
    for (int row = 0; row < m_view->lines()->rowCount(); ++row)
        shown << said(row, "value");
    QCOMPARE(shown, values);
}

void ItemOriginViewTest::rackHoleAddsUp()
{
    open("Uprights");
    QVERIFY2(m_view->formula().contains(QStringLiteral("41.5 + 27 × 5 = 176.5 cm")), qPrintable(m_view->formula()));
    QCOMPARE(said(1, "shareText"), QStringLiteral("1 mm more makes it 1.5 % more"));
}

void ItemOriginViewTest::everyLineSaysWhatItDoes()
{
    for (const char* name : {"Weighed", "Gauged", "Band", "Aid", "Cam", "Pulled", "Scale", "Twenties", "Strap", "Uprights"}) {
        open(name);
        QVERIFY2(m_view->number().contains(QStringLiteral(" ± ")), qPrintable(m_view->number()));
        QVERIFY2(!m_view->formula().isEmpty() && !m_view->measured().isEmpty() && m_view->lines()->rowCount() > 0, name);
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
    QVERIFY(m_view->number().startsWith(QStringLiteral("6.00 ± 0.04 kg")));
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
