// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/typed.h"

#include <limits>
#include <rapidcheck.h>

using namespace steelyard;
using namespace steelyard::journal;

namespace {

constexpr Unit allUnits[] = {Unit::Kilogram, Unit::Gram, Unit::Pound, Unit::Metre, Unit::Centimetre, Unit::Millimetre, Unit::Inch,
    Unit::Foot, Unit::Second, Unit::Minute, Unit::Newton, Unit::Kilonewton, Unit::Litre};

}

class TestTyped : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Pound 0.45359237 kg and inch 0.0254 m, exactly: international yard and pound agreement (1959); the others follow from the SI.
    void base_data()
    {
        QTest::addColumn<QString>("decimal");
        QTest::addColumn<int>("unit");
        QTest::addColumn<qint64>("base");
        const auto row = [](const char* decimal, Unit unit, qint64 base) {
            QTest::addRow("%s in %d", decimal, static_cast<int>(unit)) << QString(decimal) << static_cast<int>(unit) << base;
        };
        row("82.5", Unit::Kilogram, 82'500'000);
        row("82,5", Unit::Kilogram, 82'500'000);
        row("-0.000001", Unit::Kilogram, -1);
        row("1", Unit::Gram, 1'000);
        row("100", Unit::Pound, 45'359'237);
        row("225", Unit::Pound, 102'058'283); // 102,058,283.25 mg
        row("2", Unit::Pound, 907'185);       // 907,184.74 mg
        row("-2", Unit::Pound, -907'185);
        row("1.78", Unit::Metre, 1'780'000);
        row("0.05", Unit::Centimetre, 500);
        row("1.", Unit::Millimetre, 1'000);
        row("19", Unit::Inch, 482'600);
        row("5", Unit::Foot, 1'524'000);
        row("2.5", Unit::Minute, 150'000);
        row("0.0005", Unit::Second, 1); // half a millisecond, away from zero
        row("-0.0005", Unit::Second, -1);
        row("0.00049999", Unit::Second, 0);
        row("1", Unit::Newton, 1'000);
        row("0.001", Unit::Kilonewton, 1'000);
        row("18.9637", Unit::Litre, 18'964); // 18,963.7 mL
        row("000000000000000007", Unit::Gram, 7'000);
    }
    void base()
    {
        QFETCH(QString, decimal);
        QFETCH(int, unit);
        const std::optional<Typed> quantity = typed(decimal.toStdString(), static_cast<Unit>(unit));
        QVERIFY(quantity);
        QTEST(qint64(quantity->baseNumber), "base");
        QCOMPARE(QString::fromStdString(quantity->decimal), decimal);
        QCOMPARE(static_cast<int>(quantity->unit), unit);
    }

    void noNumbers()
    {
        for (const char* text : {"", "-", ".", ",5", ".5", "1.2.3", "1,2.3", "1e3", " 1", "1 ", "+1", "--1", "1-", "0x1", "nan",
                 "1234567890123456789", "0.000000000000000001"})
            QVERIFY2(!typed(text, Unit::Kilogram), text);
        QVERIFY(!typed("999999999999999999", Unit::Kilogram)); // past 2^63 mg
        QVERIFY(typed("9223372036854", Unit::Kilogram));
        QVERIFY(!typed("9223372036855", Unit::Kilogram));
    }

    void units()
    {
        for (const Unit unit : allUnits)
            QVERIFY(unitOf(static_cast<std::uint16_t>(unit)) == unit);
        for (const std::uint64_t number : {UINT64_C(0), UINT64_C(4), UINT64_C(10), UINT64_C(33), UINT64_C(65537), UINT64_MAX})
            QVERIFY(!unitOf(number));
    }

    void asQuantities()
    {
        QCOMPARE(massOf(*typed("225", Unit::Pound))->si(), 102.058283);
        QCOMPARE(lengthOf(*typed("19", Unit::Inch))->si(), 0.4826);
        QCOMPARE(forceOf(*typed("1.5", Unit::Kilonewton))->si(), 1500.0);
        QVERIFY(*durationOf(*typed("2.5", Unit::Minute)) == std::chrono::seconds(150));
        QVERIFY(!massOf(*typed("19", Unit::Inch)) && !lengthOf(*typed("1", Unit::Gram)) && !forceOf(*typed("1", Unit::Gram)));
        QVERIFY(!durationOf(*typed("1", Unit::Gram)));
        QCOMPARE(volumeOf(*typed("18.5", Unit::Litre))->si(), 0.0185);
        QVERIFY(!volumeOf(*typed("1", Unit::Gram)) && !massOf(*typed("1", Unit::Litre)));
        QVERIFY(typed(Volume::fromSi(0.0185), Unit::Litre)->decimal == "18.5" && !typed(Volume::fromSi(1), Unit::Metre));
    }

    void untyped()
    {
        QCOMPARE(QString::fromStdString(typed(kilograms(82.5), Unit::Kilogram)->decimal), QString("82.5"));
        QCOMPARE(QString::fromStdString(typed(pounds(225), Unit::Pound)->decimal), QString("225"));
        QCOMPARE(QString::fromStdString(typed(metres(-0.4826), Unit::Inch)->decimal), QString("-19"));
        QCOMPARE(QString::fromStdString(typed(metres(0.00001), Unit::Metre)->decimal), QString("0.00001"));
        QCOMPARE(QString::fromStdString(typed(metres(0), Unit::Foot)->decimal), QString("0"));
        QCOMPARE(QString::fromStdString(typed(newtons(0.5), Unit::Newton)->decimal), QString("0.5"));
        QCOMPARE(QString::fromStdString(typed(std::chrono::milliseconds(90'000), Unit::Minute)->decimal), QString("1.5"));
        QVERIFY(!typed(kilograms(1), Unit::Metre) && !typed(metres(1), Unit::Newton) && !typed(newtons(1), Unit::Gram));
        QVERIFY(!typed(std::chrono::milliseconds(1), Unit::Gram));
        QVERIFY(!typed(kilograms(std::numeric_limits<double>::quiet_NaN()), Unit::Kilogram));
        QVERIFY(!typed(kilograms(std::numeric_limits<double>::infinity()), Unit::Kilogram));
        QVERIFY(!typed(kilograms(1e13), Unit::Kilogram));
    }

    void sameInAnyUnit()
    {
        QVERIFY(rc::check("a mass to the milligram comes back from any unit, typed by nobody", [] {
            const auto milligrams = *rc::gen::inRange<std::int64_t>(-2'000'000'000, 2'000'000'000);
            for (const Unit unit : {Unit::Kilogram, Unit::Gram, Unit::Pound}) {
                const std::optional<Typed> quantity = typed(kilograms(static_cast<double>(milligrams) / 1e6), unit);
                RC_ASSERT(quantity && quantity->baseNumber == milligrams);
                RC_ASSERT(typed(quantity->decimal, unit) == quantity);
            }
        }));
    }
};

QTEST_APPLESS_MAIN(TestTyped)
#include "test_typed.moc"
