// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/text/keepingtexts.h"
#include "mobile/text/language.h"
#include "mobile/text/liftnames.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <QLocale>
#include <QtTest>
#endif

using namespace steelyard;

/// The language and its decimal sign change at once, for words and numbers alike.
class SpokenTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() { language::speak({}); }
    void englishAtFirst();
    void wordsAndDecimals_data();
    void wordsAndDecimals();
    void bendsToTheCount_data();
    void bendsToTheCount();
    void whatIsNoLanguageIsTheDevices();
    void toldWhenItChangesOnly();
    void eachByItsOwnName();
};

void SpokenTest::englishAtFirst()
{
    QCOMPARE(language::spoken(), QStringLiteral("en"));
    QCOMPARE(language::codes().first(), QStringLiteral("en"));
}

void SpokenTest::wordsAndDecimals_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<QString>("lift");
    QTest::addColumn<QString>("mass");
    QTest::addColumn<QString>("day");
    // decimal signs and short months: Unicode CLDR, which the toolkit carries
    QTest::newRow("English") << QStringLiteral("en") << QStringLiteral("back squat") << QStringLiteral("82.5 kg") << QStringLiteral("3 Mar");
    QTest::newRow("German") << QStringLiteral("de") << QStringLiteral("Kniebeuge") << QStringLiteral("82,5 kg") << QStringLiteral("3. März");
    QTest::newRow("Spanish") << QStringLiteral("es") << QStringLiteral("sentadilla") << QStringLiteral("82,5 kg") << QStringLiteral("3 mar");
}

void SpokenTest::wordsAndDecimals()
{
    QFETCH(const QString, code);
    language::speak(code);
    QCOMPARE(language::spoken(), code);
    QTEST(liftnames::name(*shippedLift({1})), "lift");
    QTEST(say::massWithUnit(kilograms(82.5)), "mass");
    const std::chrono::sys_days day = std::chrono::year(2026) / 3 / 3;
    QTEST(keepingtexts::day(day, day), "day");
}

void SpokenTest::bendsToTheCount_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<QString>("one");
    QTest::addColumn<QString>("many");
    QTest::newRow("English, counted") << QStringLiteral("en") << QStringLiteral("One figure before the point, no more.") << QStringLiteral("No more than 3 figures before the point.");
    QTest::newRow("German, counted") << QStringLiteral("de") << QStringLiteral("Nur eine Stelle vor dem Komma.") << QStringLiteral("Nicht mehr als 3 Stellen vor dem Komma.");
    QTest::newRow("Spanish, counted") << QStringLiteral("es") << QStringLiteral("Una cifra entera, no más.") << QStringLiteral("No más de 3 cifras enteras.");
}

void SpokenTest::bendsToTheCount()
{
    QFETCH(const QString, code);
    QFETCH(const QString, one);
    QFETCH(const QString, many);
    language::speak(code);
    const auto said = [](int digits) { return sentences::refusal(EntryRefusal::TooManyDigits, EntryLimits{digits, 1, 0, 999}, QStringLiteral("kg")); };
    QCOMPARE(said(1), one);
    QCOMPARE(said(3), many);
}

void SpokenTest::whatIsNoLanguageIsTheDevices()
{
    language::speak(QStringLiteral("de"));
    language::speak(QStringLiteral("xx"));
    // the tests run on a device that speaks English and writes a point
    QCOMPARE(language::spoken(), QStringLiteral("en"));
    QCOMPARE(say::massWithUnit(kilograms(82.5)), QStringLiteral("82.5 kg"));
    QCOMPARE(QLocale(), QLocale::system());
}

void SpokenTest::toldWhenItChangesOnly()
{
    int told = 0;
    const auto listening = language::onSaidOtherwise([&] { ++told; });
    language::speak(QStringLiteral("es"));
    QCOMPARE(told, 1);
    language::speak(QStringLiteral("es"));
    QCOMPARE(told, 1);
    language::speak({});
    QCOMPARE(told, 2);
}

void SpokenTest::eachByItsOwnName()
{
    QStringList names;
    for (const QString& code : language::codes())
        names << language::ownName(code);
    QCOMPARE(names, (QStringList{QStringLiteral("English"), QStringLiteral("Deutsch"), QStringLiteral("Español")}));
    QVERIFY(language::ownName(QStringLiteral("xx")).isEmpty());
}

QTEST_GUILESS_MAIN(SpokenTest)
#include "test_spoken.moc"
