// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/preferences.h"
#include "mobile/text/language.h"

#include <QSettings>
#include <QSignalSpy>
#include <QtTest>

/// How the app looks stays as it was chosen, and never becomes what it cannot show.
class PreferencesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init() { QSettings().clear(); }
    void cleanupTestCase() { QSettings().clear(); }
    void lightAndSmallestAtFirst();
    void comeBackAtTheNextStart();
    void everyThemeAndSize();
    void outOfRangeIsTheFirst_data();
    void outOfRangeIsTheFirst();
    void toldOncePerChange();
    void keysDisplayAndLanguageComeBack();
    void aLanguageIsSpokenAtOnce();
    void aLanguageThatIsGoneIsTheDevices();
};

void PreferencesTest::keysDisplayAndLanguageComeBack()
{
    {
        Preferences preferences;
        QVERIFY(!preferences.bigKeys() && preferences.staysOn());
        QCOMPARE(preferences.language(), 0);
        preferences.setBigKeys(true);
        preferences.setStaysOn(false);
        preferences.setLanguage(2);
    }
    Preferences preferences;
    QVERIFY(preferences.bigKeys() && !preferences.staysOn());
    QCOMPARE(preferences.language(), 2);
    QCOMPARE(preferences.languages().at(2), QStringLiteral("Deutsch"));
    preferences.setLanguage(0);
}

void PreferencesTest::aLanguageIsSpokenAtOnce()
{
    Preferences preferences;
    QSignalSpy told(&preferences, &Preferences::languageChanged);
    QCOMPARE(preferences.languages().size(), language::codes().size() + 1);
    preferences.setLanguage(3);
    QCOMPARE(language::spoken(), QStringLiteral("es"));
    QCOMPARE(preferences.languages().first(), QStringLiteral("como el dispositivo"));
    preferences.setLanguage(3);
    QCOMPARE(told.count(), 1);
    preferences.setLanguage(99);
    QCOMPARE(preferences.language(), 0);
    QCOMPARE(language::spoken(), QStringLiteral("en"));
}

void PreferencesTest::aLanguageThatIsGoneIsTheDevices()
{
    QSettings().setValue(QStringLiteral("look/language"), QStringLiteral("xx"));
    const Preferences preferences;
    QCOMPARE(preferences.language(), 0);
    QCOMPARE(language::spoken(), QStringLiteral("en"));
}

void PreferencesTest::initTestCase()
{
    QCoreApplication::setOrganizationName(QStringLiteral("Steelyard"));
    QCoreApplication::setApplicationName(QStringLiteral("Preferences test"));
}

void PreferencesTest::lightAndSmallestAtFirst()
{
    const Preferences preferences;
    QCOMPARE(preferences.theme(), 0);
    QCOMPARE(preferences.textSize(), 0);
}

void PreferencesTest::comeBackAtTheNextStart()
{
    {
        Preferences preferences;
        preferences.setTheme(2);
        preferences.setTextSize(3);
    }
    {
        Preferences preferences;
        QCOMPARE(preferences.theme(), 2);
        QCOMPARE(preferences.textSize(), 3);
        preferences.setTheme(0);
    }
    const Preferences preferences;
    QCOMPARE(preferences.theme(), 0);
    QCOMPARE(preferences.textSize(), 3);
}

void PreferencesTest::everyThemeAndSize()
{
    Preferences preferences;
    for (int theme = 2; theme >= 0; --theme) {
        preferences.setTheme(theme);
        QCOMPARE(preferences.theme(), theme);
    }
    for (int size = 3; size >= 0; --size) {
        preferences.setTextSize(size);
        QCOMPARE(preferences.textSize(), size);
    }
}

void PreferencesTest::outOfRangeIsTheFirst_data()
{
    QTest::addColumn<QVariant>("theme");
    QTest::addColumn<QVariant>("textSize");
    QTest::newRow("one too many") << QVariant(3) << QVariant(4);
    QTest::newRow("below nought") << QVariant(-1) << QVariant(-1);
    QTest::newRow("far off") << QVariant(1000000) << QVariant(1000000);
    QTest::newRow("not a number") << QVariant(QStringLiteral("dark")) << QVariant(QStringLiteral("large"));
}

void PreferencesTest::outOfRangeIsTheFirst()
{
    QFETCH(QVariant, theme);
    QFETCH(QVariant, textSize);
    QSettings().setValue(QStringLiteral("look/theme"), theme);
    QSettings().setValue(QStringLiteral("look/textSize"), textSize);
    const Preferences read;
    QCOMPARE(read.theme(), 0);
    QCOMPARE(read.textSize(), 0);

    Preferences set;
    set.setTheme(1);
    set.setTextSize(1);
    bool themeIsNumber = false;
    const int number = theme.toInt(&themeIsNumber);
    if (themeIsNumber) {
        set.setTheme(number);
        set.setTextSize(textSize.toInt());
        QCOMPARE(set.theme(), 0);
        QCOMPARE(set.textSize(), 0);
    }
}

void PreferencesTest::toldOncePerChange()
{
    Preferences preferences;
    QSignalSpy told(&preferences, &Preferences::changed);
    preferences.setTheme(1);
    preferences.setTheme(1);
    QCOMPARE(told.count(), 1);
    preferences.setTextSize(2);
    preferences.setTextSize(2);
    QCOMPARE(told.count(), 2);
}

QTEST_GUILESS_MAIN(PreferencesTest)
#include "test_preferences.moc"
