// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/numberentry.h"

#include <rapidcheck.h>

#include <QtTest>

#include <algorithm>
#include <cmath>
#include <cstdlib>

using steelyard::Doubt;
using steelyard::doubtOf;
using steelyard::EntryLimits;
using steelyard::EntryRefusal;
using steelyard::NumberEntry;

Q_DECLARE_METATYPE(EntryLimits)
Q_DECLARE_METATYPE(Doubt)

namespace {

/// Short names of refusals, so that a row of the table reads like what the coach saw.
QString nameOf(EntryRefusal refusal)
{
    switch (refusal) {
    case EntryRefusal::SecondPoint: return QStringLiteral("second");
    case EntryRefusal::TooManyDigits: return QStringLiteral("digits");
    case EntryRefusal::TooManyDecimals: return QStringLiteral("decimals");
    case EntryRefusal::NotAKey: return QStringLiteral("nokey");
    case EntryRefusal::NothingKeyed: return QStringLiteral("nothing");
    case EntryRefusal::BelowLeast: return QStringLiteral("below");
    case EntryRefusal::AboveMost: return QStringLiteral("above");
    }
    return QStringLiteral("?");
}

/// '<' takes a key back, everything else is pressed.
QStringList type(NumberEntry& entry, const std::string& keys)
{
    QStringList refused;
    for (const char key : keys) {
        if (key == '<')
            entry.rub();
        else if (const auto refusal = entry.press(key))
            refused << nameOf(*refusal);
    }
    return refused;
}

}

/// Digits typed are digits shown plus refusals shown, for any keys at all.
class NumberEntryTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void keyStrings_data();
    void keyStrings();
    void nothingIsKeptOfAPointAlone();
    void limitsAreOfTheValueNotOfTheKeys_data();
    void limitsAreOfTheValueNotOfTheKeys();
    void clearLeavesNothing();
    void anyKeysAreShownOrRefused();
    void rubIsTheKeyNeverPressed();
    void farFromLastTimeIsDoubted_data();
    void farFromLastTimeIsDoubted();
    void doubtIsTheSameBothWays();
};

void NumberEntryTest::farFromLastTimeIsDoubted_data()
{
    QTest::addColumn<double>("keyed");
    QTest::addColumn<double>("last");
    QTest::addColumn<Doubt>("doubt");
    QTest::newRow("the same") << 100.0 << 100.0 << Doubt::None;
    QTest::newRow("20 % up") << 120.0 << 100.0 << Doubt::None;
    QTest::newRow("20 % down") << 80.0 << 100.0 << Doubt::None;
    QTest::newRow("more than 20 % up") << 122.5 << 100.0 << Doubt::FarOff;
    QTest::newRow("more than 20 % down") << 77.5 << 100.0 << Doubt::FarOff;
    // 1 lb is 0.45359237 kg: the international yard and pound agreement of 1959
    QTest::newRow("pounds for kilograms") << 225.0 << 102.5 << Doubt::PoundsForKilograms;
    QTest::newRow("kilograms for pounds") << 102.5 << 225.0 << Doubt::PoundsForKilograms;
    QTest::newRow("between them") << 190.0 << 100.0 << Doubt::FarOff;
    QTest::newRow("three times") << 300.0 << 100.0 << Doubt::FarOff;
    QTest::newRow("8 times") << 800.0 << 100.0 << Doubt::TenTimes;
    QTest::newRow("a nought too many") << 1000.0 << 100.0 << Doubt::TenTimes;
    QTest::newRow("12 times") << 1200.0 << 100.0 << Doubt::TenTimes;
    QTest::newRow("13 times") << 1300.0 << 100.0 << Doubt::FarOff;
    QTest::newRow("a point too many") << 10.0 << 100.0 << Doubt::TenTimes;
    QTest::newRow("nothing last time") << 100.0 << 0.0 << Doubt::None;
    QTest::newRow("nothing keyed") << 0.0 << 100.0 << Doubt::None;
    QTest::newRow("no number") << std::nan("") << 100.0 << Doubt::None;
}

void NumberEntryTest::farFromLastTimeIsDoubted()
{
    QFETCH(const double, keyed);
    QFETCH(const double, last);
    QTEST(doubtOf(keyed, last), "doubt");
}

/// Unless it is a matter of a fifth, which is of last time's number.
void NumberEntryTest::doubtIsTheSameBothWays()
{
    const bool same = rc::check("up or down", [] {
        const double last = *rc::gen::inRange(1, 6000) / 10.0, ratio = *rc::gen::inRange(130, 2000) / 100.0;
        RC_ASSERT(doubtOf(last * ratio, last) == doubtOf(last, last * ratio));
    });
    QVERIFY(same);
}

void NumberEntryTest::keyStrings_data()
{
    QTest::addColumn<EntryLimits>("limits");
    QTest::addColumn<QString>("keys");
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("refused");
    const EntryLimits load{3, 2, 0, 600}, tape{3, 1, 1, 300}, whole{2, 0, 0, 99};
    const auto row = [](const char* name, const EntryLimits& limits, const char* keys, const char* text, const char* refused) {
        QTest::newRow(name) << limits << QString::fromLatin1(keys) << QString::fromLatin1(text) << QString::fromLatin1(refused);
    };
    row("plain", load, "102.5", "102.5", "");
    row("second point", load, "62..5", "62.5", "second");
    row("points apart", load, "6.2.5", "6.25", "second");
    row("leading point", load, ".5", "0.5", "");
    row("leading point twice", load, "..5", "0.5", "second");
    row("trailing point", load, "62.", "62.", "");
    row("a digit too many before", load, "1234", "123", "digits");
    row("point after the last digit", load, "123.4", "123.4", "");
    row("a digit too many after", load, "1.234", "1.23", "decimals");
    row("one place", tape, "88.75", "88.7", "decimals");
    row("whole numbers", whole, "1.5", "15", "decimals");
    row("whole number full", whole, "1234", "12", "digits digits");
    row("leading noughts count as keyed", load, "0005", "000", "digits");
    row("letters", load, "1o5", "15", "nokey");
    row("comma is not this layer's key", load, "1,5", "15", "nokey");
    row("minus", load, "-5", "5", "nokey");
    row("blank", load, "1 0", "10", "nokey");
    row("rub", load, "105<0", "100", "");
    row("rub the point", load, "10.<5", "105", "");
    row("rub a keyed nought's point", load, "0.<", "0", "");
    row("rub a leading point", load, ".<", "", "");
    row("rub past the start", load, "1<<<2", "2", "");
    row("rub makes room before", load, "123<9", "129", "");
    row("rub makes room after", load, "1.23<9", "1.29", "");
    row("second point after rub", load, "1.5<<.2", "1.2", "");
    row("refused key is not rubbed", load, "1234<", "12", "digits");
}

void NumberEntryTest::keyStrings()
{
    QFETCH(EntryLimits, limits);
    QFETCH(QString, keys);
    QFETCH(QString, text);
    QFETCH(QString, refused);
    NumberEntry entry(limits);
    const QStringList said = type(entry, keys.toStdString());
    QCOMPARE(QString::fromStdString(entry.text()), text);
    QCOMPARE(said.join(QLatin1Char(' ')), refused);
}

void NumberEntryTest::nothingIsKeptOfAPointAlone()
{
    NumberEntry entry({3, 2, 0, 600});
    QVERIFY(entry.check() == EntryRefusal::NothingKeyed);
    QVERIFY(!entry.ratioKeyed());
    type(entry, ".");
    QVERIFY(!entry.ratioKeyed());
    QVERIFY(entry.check() == EntryRefusal::NothingKeyed);
    type(entry, "0");
    QCOMPARE(entry.ratioKeyed().value_or(-1), 0.0);
    QVERIFY(!entry.check());
}

void NumberEntryTest::limitsAreOfTheValueNotOfTheKeys_data()
{
    QTest::addColumn<QString>("keys");
    QTest::addColumn<double>("value");
    QTest::addColumn<QString>("refused");
    QTest::newRow("least itself") << "10" << 10.0 << "";
    QTest::newRow("just under the least") << "9.9" << 9.9 << "below";
    QTest::newRow("most itself") << "250" << 250.0 << "";
    QTest::newRow("most with idle places") << "250.0" << 250.0 << "";
    QTest::newRow("just over the most") << "250.1" << 250.1 << "above";
    QTest::newRow("leading noughts") << "010" << 10.0 << "";
    QTest::newRow("nought") << "0" << 0.0 << "below";
}

void NumberEntryTest::limitsAreOfTheValueNotOfTheKeys()
{
    QFETCH(QString, keys);
    QFETCH(double, value);
    QFETCH(QString, refused);
    NumberEntry entry({3, 1, 10, 250});
    QCOMPARE(type(entry, keys.toStdString()), QStringList());
    QCOMPARE(entry.ratioKeyed().value_or(-1), value);
    const auto refusal = entry.check();
    QCOMPARE(refusal ? nameOf(*refusal) : QString(), refused);
}

void NumberEntryTest::clearLeavesNothing()
{
    NumberEntry entry({3, 2, 0, 600});
    type(entry, "102.5");
    entry.clear();
    QVERIFY(entry.text().empty());
    QVERIFY(entry.check() == EntryRefusal::NothingKeyed);
    QCOMPARE(entry.limits().digitCount, 3);
    QVERIFY(type(entry, ".5").isEmpty());
}

namespace {

EntryLimits anyLimits()
{
    return {*rc::gen::inRange(1, 6), *rc::gen::inRange(0, 4), 0, 1e6};
}

std::string anyKeys(const std::string& among)
{
    return *rc::gen::container<std::string>(rc::gen::elementOf(among));
}

}

void NumberEntryTest::anyKeysAreShownOrRefused()
{
    const auto holds = [] {
        const EntryLimits limits = anyLimits();
        const std::string keys = anyKeys("00123456789...,x -");
        NumberEntry entry(limits);
        std::string taken;
        for (const char key : keys) {
            const std::string before = entry.text();
            if (entry.press(key))
                RC_ASSERT(entry.text() == before);
            else
                taken += key;
        }
        const std::string shown = entry.text();
        RC_ASSERT(shown == (taken.starts_with('.') ? "0" + taken : taken));
        const auto point = shown.find('.');
        RC_ASSERT(std::count(shown.begin(), shown.end(), '.') == (point == std::string::npos ? 0 : 1));
        RC_ASSERT(std::min(point, shown.size()) <= static_cast<std::size_t>(limits.digitCount));
        RC_ASSERT(point == std::string::npos || shown.size() - point - 1 <= static_cast<std::size_t>(limits.decimalCount));
        RC_ASSERT(shown.find_first_not_of("0123456789.") == std::string::npos);
        // the C library reads what is shown as the same number
        if (const auto value = entry.ratioKeyed())
            RC_ASSERT(*value == std::strtod(shown.c_str(), nullptr));
        else
            RC_ASSERT(taken.empty() || taken == ".");
    };
    QVERIFY(rc::check("a key is shown or refused", holds));
}

void NumberEntryTest::rubIsTheKeyNeverPressed()
{
    const auto holds = [] {
        const EntryLimits limits = anyLimits();
        const std::string keys = anyKeys("0123456789..<<<");
        NumberEntry entry(limits), straight(limits);
        std::string left;
        for (const char key : keys) {
            if (key == '<') {
                entry.rub();
                if (!left.empty())
                    left.pop_back();
            } else if (!entry.press(key)) {
                left += key;
            }
        }
        RC_ASSERT(type(straight, left).isEmpty());
        RC_ASSERT(entry.text() == straight.text());
        RC_ASSERT(entry.ratioKeyed() == straight.ratioKeyed());
    };
    QVERIFY(rc::check("rubbing out leaves no trace", holds));
}

QTEST_APPLESS_MAIN(NumberEntryTest)
#include "test_numberentry.moc"
