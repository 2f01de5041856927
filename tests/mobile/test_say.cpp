// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/text/say.h"

#include <QLocale>
#include <QtTest>
#endif

using namespace steelyard;

namespace {

Force kilogramsOfPull(double kg) { return weight(kilograms(kg)); }

}

/// Numbers as a coach reads them, in the locale's own digits.
class SayTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { QLocale::setDefault(QLocale(QStringLiteral("en"))); }
    void plainDropsIdleNoughts_data();
    void plainDropsIdleNoughts();
    void fixedKeepsItsPlaces_data();
    void fixedKeepsItsPlaces();
    void unitsAreThoseOfTheGym();
    void digitsAndPointAreTheLocales_data();
    void digitsAndPointAreTheLocales();
    void pullIsRoundedWhereItsGiveOrTakeSays_data();
    void pullIsRoundedWhereItsGiveOrTakeSays();
    void readingIsItsValueAndGiveOrTake();
    void pullInTheLocalesDigits();
};

void SayTest::plainDropsIdleNoughts_data()
{
    QTest::addColumn<double>("value");
    QTest::addColumn<int>("decimals");
    QTest::addColumn<QString>("text");
    const auto row = [](const char* name, double value, int decimals, const char* text) {
        QTest::newRow(name) << value << decimals << QString::fromLatin1(text);
    };
    row("whole", 82, 2, "82");
    row("half", 82.5, 2, "82.5");
    row("quarter", 1.25, 2, "1.25");
    row("more places than asked for", 1.256, 2, "1.26");
    row("just under a half", 82.499, 2, "82.5");
    row("rounds up to whole", 99.999, 2, "100");
    row("sum with a binary tail", 0.1 + 0.2, 2, "0.3");
    row("no place", 82.4, 0, "82");
    row("nought", 0, 2, "0");
    row("a hair under nought", -0.001, 2, "0");
    row("under nought", -2.5, 1, "-2.5");
    row("no grouping", 12345.6, 1, "12345.6");
}

void SayTest::plainDropsIdleNoughts()
{
    QFETCH(double, value);
    QFETCH(int, decimals);
    QFETCH(QString, text);
    QCOMPARE(say::plain(value, decimals), text);
}

void SayTest::fixedKeepsItsPlaces_data()
{
    QTest::addColumn<double>("value");
    QTest::addColumn<int>("decimals");
    QTest::addColumn<QString>("text");
    QTest::newRow("idle noughts stay") << 82.0 << 2 << "82.00";
    QTest::newRow("rounded") << 82.46 << 1 << "82.5";
    QTest::newRow("rounded nothing has no sign") << -0.04 << 1 << "0.0";
    QTest::newRow("what still shows has one") << -0.06 << 1 << "-0.1";
    QTest::newRow("no grouping") << 1000.0 << 0 << "1000";
}

void SayTest::fixedKeepsItsPlaces()
{
    QFETCH(double, value);
    QFETCH(int, decimals);
    QFETCH(QString, text);
    QCOMPARE(say::fixed(value, decimals), text);
}

void SayTest::unitsAreThoseOfTheGym()
{
    QCOMPARE(say::mass(kilograms(102.5)), QStringLiteral("102.5"));
    QCOMPARE(say::mass(pounds(45)), QStringLiteral("20.41"));
    QCOMPARE(say::length(metres(1.04)), QStringLiteral("104"));
    QCOMPARE(say::length(metres(1.045)), QStringLiteral("104.5"));
}

void SayTest::digitsAndPointAreTheLocales_data()
{
    QTest::addColumn<QString>("locale");
    QTest::addColumn<QString>("load");
    QTest::addColumn<QString>("large");
    // digits and signs as the Unicode CLDR gives them
    QTest::newRow("en") << "en" << "82.5" << "1234.5";
    QTest::newRow("de") << "de" << "82,5" << "1234,5";
    QTest::newRow("fr") << "fr" << "82,5" << "1234,5";
    QTest::newRow("ar") << "ar" << QString::fromUtf8("٨٢٫٥") << QString::fromUtf8("١٢٣٤٫٥");
}

void SayTest::digitsAndPointAreTheLocales()
{
    QFETCH(QString, locale);
    QFETCH(QString, load);
    QFETCH(QString, large);
    QLocale::setDefault(QLocale(locale));
    QCOMPARE(say::mass(kilograms(82.5)), load);
    QCOMPARE(say::plain(1234.5, 2), large);
    QCOMPARE(say::fixed(1234.5, 1), large);
}

void SayTest::pullIsRoundedWhereItsGiveOrTakeSays_data()
{
    QTest::addColumn<double>("kg");
    QTest::addColumn<double>("give");
    QTest::addColumn<QString>("tight");
    QTest::addColumn<QString>("sentence");
    const auto row = [](const char* name, double kg, double give, const char* tight, const char* sentence) {
        QTest::newRow(name) << kg << give << QString::fromUtf8(tight) << QString::fromUtf8(sentence);
    };
    row("one figure", 126.3, 4.2, "126 ± 4", "126 ± 4");
    row("two figures after a leading 1", 103.26, 1.42, "103.3 ± 1.4", "103.3 ± 1.4");
    row("tenths", 91.216, 0.4526, "91.2 ± 0.5", "91.2 ± 0.5");
    row("nothing uncertain", 102.5, 0, "102.5", "102.5");
    row("less than a scale shows", 91.216, 0.049, "91.2", "91.2");
    row("as little as a scale shows", 91.216, 0.051, "91.22 ± 0.05", "91.22 ± 0.05");
    row("just a tenth", 100, 10, "100 ± 10", "100 ± 10");
    row("over a tenth", 12, 1.3, "12.0 ± 1.3", "about 12.0 ± 1.3");
    row("tens", 126, 23, "130 ± 20", "about 130 ± 20");
    row("nearly ten", 126, 9.7, "126 ± 10", "126 ± 10");
    row("around nought", 0.2, 3, "0 ± 3", "about 0 ± 3");
    row("help that lifts", -15.3, 0.7, "-15.3 ± 0.7", "-15.3 ± 0.7");
}

void SayTest::pullIsRoundedWhereItsGiveOrTakeSays()
{
    QFETCH(double, kg);
    QFETCH(double, give);
    QFETCH(QString, tight);
    QFETCH(QString, sentence);
    const say::Pull pull = say::pull(kilogramsOfPull(kg), kilogramsOfPull(give));
    QCOMPARE(pull.tight(), tight);
    QCOMPARE(pull.sentence(), sentence);
    QCOMPARE(pull.about, sentence.startsWith(QStringLiteral("about")));
}

void SayTest::readingIsItsValueAndGiveOrTake()
{
    Reading reading;
    reading.value = kilogramsOfPull(126.3);
    reading.u = kilogramsOfPull(2);
    reading.giveOrTake = kilogramsOfPull(4.2);
    QCOMPARE(say::pull(reading).tight(), QString::fromUtf8("126 ± 4"));
}

void SayTest::pullInTheLocalesDigits()
{
    QLocale::setDefault(QLocale(QStringLiteral("de")));
    QCOMPARE(say::pull(kilogramsOfPull(103.26), kilogramsOfPull(1.42)).tight(), QString::fromUtf8("103,3 ± 1,4"));
    QLocale::setDefault(QLocale(QStringLiteral("ar")));
    QCOMPARE(say::pull(kilogramsOfPull(103.26), kilogramsOfPull(1.42)).tight(), QString::fromUtf8("١٠٣٫٣ ± ١٫٤"));
}

QTEST_GUILESS_MAIN(SayTest)
#include "test_say.moc"
