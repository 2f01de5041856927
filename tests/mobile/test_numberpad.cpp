// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/editors/bandeditor.h"
#include "mobile/editors/bareditor.h"
#include "mobile/editors/markseditor.h"
#include "mobile/editors/numberpad.h"

#include "tests/core/work/samples.h"

#include <QLocale>
#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

namespace {

void type(NumberPad& pad, const QString& keys)
{
    for (const QChar key : keys)
        pad.press(QString(key));
}

}

/// The one keypad: what is typed, what it says, and what comes of it.
class NumberPadTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void keysOfEveryLocale_data();
    void keysOfEveryLocale();
    void aKeyThatIsNoneIsSaid();
    void refusalStaysUntilTheNextKey();
    void rubsAndStartsAnew();
    void keepsWithinLimits();
    void keepFactRepeatsTheNumber();
    void saysWhatItWaitsFor();
    void loadThatCannotHangIsOffered();
    void offersOfAnEnd();
    void takesAnOffer();
    void formsOwnRefusal();
    void leavesOut();
    void subjects_data();
    void subjects();
    void nextMissingNumber();
    void goneKey();

private:
    DeskService* m_service = nullptr;
    MarksEditor* m_marks = nullptr;
    BarEditor* m_bar = nullptr;
    NumberPad* m_pad = nullptr;
};

void NumberPadTest::init()
{
    QLocale::setDefault(QLocale(QStringLiteral("en")));
    m_service = new DeskService(this);
    m_marks = new MarksEditor(this);
    m_marks->setDeskService(m_service);
    m_bar = new BarEditor(this);
    m_bar->setDeskService(m_service);
    m_pad = new NumberPad(this);
    m_pad->setEditor(m_marks);
    m_pad->setKey(QStringLiteral("top"));
}

void NumberPadTest::cleanup()
{
    delete m_pad;
    delete m_bar;
    delete m_marks;
    delete m_service;
}

void NumberPadTest::keysOfEveryLocale_data()
{
    QTest::addColumn<QString>("locale");
    QTest::addColumn<QString>("keys");
    QTest::addColumn<QString>("text");
    QTest::addColumn<bool>("refused");
    const auto row = [](const char* name, const char* locale, const char* keys, const char* text, bool refused) {
        QTest::newRow(name) << QString::fromLatin1(locale) << QString::fromUtf8(keys) << QString::fromUtf8(text) << refused;
    };
    row("en, point", "en", "62.5", "62.5", false);
    row("en, comma", "en", "62,5", "62.5", false);
    row("en, two points", "en", "62..", "62.", true);
    row("en, comma after point", "en", "62.,", "62.", true);
    row("de, comma", "de", "62,5", "62,5", false);
    row("de, point", "de", "62.5", "62,5", false);
    row("fr, comma", "fr", "62,5", "62,5", false);
    row("ar, its own point", "ar", "62٫5", "62٫5", false);
    row("ar, its own digits", "ar", "٦٢٫٥", "62٫5", false);
    row("en, arabic digits", "en", "٦٢", "62", false);
    row("en, arabic point", "en", "62٫", "62", true);
    row("en, devanagari digits", "en", "६२", "62", false);
    row("leading point", "de", ",5", "0,5", false);
    row("letter", "en", "6o", "6", true);
    row("sign", "en", "6-", "6", true);
}

void NumberPadTest::keysOfEveryLocale()
{
    QFETCH(QString, locale);
    QFETCH(QString, keys);
    QFETCH(QString, text);
    QFETCH(bool, refused);
    QLocale::setDefault(QLocale(locale));
    type(*m_pad, keys);
    QCOMPARE(m_pad->text(), text);
    QCOMPARE(!m_pad->refusal().isEmpty(), refused);
}

void NumberPadTest::aKeyThatIsNoneIsSaid()
{
    type(*m_pad, QStringLiteral("15"));
    for (const QString& key : {QStringLiteral("x"), QStringLiteral("12"), QStringLiteral("½"), QStringLiteral("back")}) {
        m_pad->press(key);
        QCOMPARE(m_pad->refusal(), QStringLiteral("Not part of a number."));
        QCOMPARE(m_pad->text(), QStringLiteral("15"));
    }
    // nothing pressed is nothing said
    m_pad->press(QString());
    QVERIFY(m_pad->refusal().isEmpty());
}

void NumberPadTest::refusalStaysUntilTheNextKey()
{
    QSignalSpy keyed(m_pad, &NumberPad::keyed);
    type(*m_pad, QStringLiteral("1234"));
    QCOMPARE(keyed.count(), 4);
    QCOMPARE(m_pad->text(), QStringLiteral("123"));
    QCOMPARE(m_pad->refusal(), QStringLiteral("No more than 3 figures before the point."));
    m_pad->press(QStringLiteral("."));
    QVERIFY(m_pad->refusal().isEmpty());
    type(*m_pad, QStringLiteral("55"));
    QCOMPARE(m_pad->refusal(), QStringLiteral("One figure after the point, no more."));
    m_pad->press(QStringLiteral("rub"));
    QVERIFY(m_pad->refusal().isEmpty());
    QCOMPARE(m_pad->text(), QStringLiteral("123."));
}

void NumberPadTest::rubsAndStartsAnew()
{
    type(*m_pad, QStringLiteral("15"));
    m_pad->press(QStringLiteral("rub"));
    m_pad->press(QStringLiteral("rub"));
    m_pad->press(QStringLiteral("rub"));
    QVERIFY(m_pad->text().isEmpty());
    QVERIFY(m_pad->keepFact().isEmpty());
    type(*m_pad, QStringLiteral("15"));
    // another number starts empty
    m_pad->setKey(QStringLiteral("bottom"));
    QVERIFY(m_pad->text().isEmpty());
}

void NumberPadTest::keepsWithinLimits()
{
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->refusal(), QStringLiteral("Key a number first."));
    type(*m_pad, QStringLiteral("0.5"));
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->refusal(), QStringLiteral("Less than 1 cm: read it again."));
    m_pad->setKey(QStringLiteral("top"));
    type(*m_pad, QStringLiteral("300.5"));
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->refusal(), QStringLiteral("More than 300 cm: read it again."));
    QVERIFY(!m_service->desk().marks().top);
    m_pad->setKey(QStringLiteral("top"));
    type(*m_pad, QStringLiteral("151.5"));
    QVERIFY(m_pad->keep());
    QVERIFY(m_pad->refusal().isEmpty());
    QCOMPARE(m_service->desk().marks().top->si(), 1.515);
}

void NumberPadTest::keepFactRepeatsTheNumber()
{
    QLocale::setDefault(QLocale(QStringLiteral("de")));
    type(*m_pad, QStringLiteral("151,5"));
    QCOMPARE(m_pad->keepFact(), QStringLiteral("151,5 cm"));
    QCOMPARE(m_pad->unit(), QStringLiteral("cm"));
    m_pad->keep();
    m_pad->setKey(QStringLiteral("top"));
    QCOMPARE(m_pad->hint(), QStringLiteral("now 151,5 cm"));
}

void NumberPadTest::saysWhatItWaitsFor()
{
    QCOMPARE(m_pad->wanting(), QStringLiteral("once keyed"));
    type(*m_pad, QStringLiteral("."));
    QCOMPARE(m_pad->wanting(), QStringLiteral("once keyed"));
    m_pad->press(QStringLiteral("rub"));
    type(*m_pad, QStringLiteral("350"));
    QCOMPARE(m_pad->wanting(), QStringLiteral("300 cm at most"));
    QVERIFY(!m_pad->keep());
    for (int i = 0; i < 3; ++i)
        m_pad->press(QStringLiteral("rub"));
    type(*m_pad, QStringLiteral("0.5"));
    QCOMPARE(m_pad->wanting(), QStringLiteral("1 cm at least"));
    m_pad->press(QStringLiteral("rub"));
    m_pad->press(QStringLiteral("rub"));
    m_pad->press(QStringLiteral("rub"));
    type(*m_pad, QStringLiteral("150"));
    // nothing is wanting any more, and it keeps
    QVERIFY(m_pad->wanting().isEmpty());
    QVERIFY(m_pad->keep());
}

void NumberPadTest::loadThatCannotHangIsOffered()
{
    m_pad->setEditor(m_bar);
    m_pad->setKey(QStringLiteral("load"));
    type(*m_pad, QStringLiteral("108.5"));
    QVERIFY(!m_pad->keep());
    QVERIFY2(m_pad->refusal().startsWith(QStringLiteral("108.5 kg cannot be hung")), qPrintable(m_pad->refusal()));
    QCOMPARE(m_pad->offers(), QStringList({QStringLiteral("107.5 kg"), QStringLiteral("110 kg")}));
    QCOMPARE(m_service->desk().setup().bar.wanted.si(), 20.0);
    // the next key takes the offers away
    m_pad->press(QStringLiteral("rub"));
    QVERIFY(m_pad->offers().isEmpty());
    QVERIFY(!m_pad->take(0));
    m_pad->press(QStringLiteral("rub"));
    m_pad->press(QStringLiteral("rub"));
    type(*m_pad, QStringLiteral("0"));
    QCOMPARE(m_pad->text(), QStringLiteral("100"));
    QVERIFY(m_pad->keep());
    QCOMPARE(m_service->desk().setup().bar.wanted.si(), 100.0);
}

void NumberPadTest::offersOfAnEnd()
{
    m_pad->setEditor(m_bar);
    m_pad->setKey(QStringLiteral("load"));
    type(*m_pad, QStringLiteral("5"));
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->offers(), QStringList(QStringLiteral("20 kg")));
    m_pad->setKey(QStringLiteral("load"));
    type(*m_pad, QStringLiteral("400"));
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->offers(), QStringList(QStringLiteral("197.5 kg")));
}

void NumberPadTest::takesAnOffer()
{
    for (const int which : {0, 1}) {
        m_pad->setEditor(m_bar);
        m_pad->setKey(QStringLiteral("load"));
        type(*m_pad, QStringLiteral("108.5"));
        QVERIFY(!m_pad->keep());
        QVERIFY(!m_pad->take(2));
        QVERIFY(!m_pad->take(-1));
        QCOMPARE(m_pad->offers().size(), 2);
        QVERIFY(m_pad->take(which));
        QVERIFY(m_pad->refusal().isEmpty() && m_pad->offers().isEmpty());
        QCOMPARE(m_service->desk().setup().bar.wanted.si(), which == 0 ? 107.5 : 110.0);
    }
}

void NumberPadTest::formsOwnRefusal()
{
    BandEditor band;
    band.setDeskService(m_service);
    band.keepNumber(QStringLiteral("rest"), 100);
    band.addHanging();
    m_pad->setEditor(&band);
    m_pad->setKey(QStringLiteral("length:0"));
    type(*m_pad, QStringLiteral("90"));
    QVERIFY(!m_pad->keep());
    QVERIFY2(m_pad->refusal().contains(QStringLiteral("100 cm")), qPrintable(m_pad->refusal()));
    QVERIFY(m_pad->offers().isEmpty());
    QCOMPARE(m_pad->text(), QStringLiteral("90"));
    m_pad->setEditor(nullptr);
    QVERIFY(!m_pad->canClear());
}

void NumberPadTest::leavesOut()
{
    m_pad->setKey(QStringLiteral("rack"));
    QVERIFY(!m_pad->canClear());
    type(*m_pad, QStringLiteral("142"));
    QVERIFY(m_pad->keep());
    m_pad->setKey(QStringLiteral("rack"));
    QVERIFY(m_pad->canClear());
    QVERIFY(m_pad->clear());
    QVERIFY(!m_service->desk().marks().rack);
    m_pad->setKey(QStringLiteral("top"));
    type(*m_pad, QStringLiteral("150"));
    QVERIFY(m_pad->keep());
    m_pad->setKey(QStringLiteral("top"));
    QVERIFY(!m_pad->canClear());
    QVERIFY(!m_pad->clear());
    QVERIFY(m_service->desk().marks().top);
}

void NumberPadTest::subjects_data()
{
    QTest::addColumn<QString>("subject");
    QTest::newRow("load") << "Load on the bar";
    QTest::newRow("newPlate") << "A pair of plates, each";
    QTest::newRow("bar") << "Bar";
    QTest::newRow("sleeve") << "Room on one sleeve";
}

void NumberPadTest::subjects()
{
    QFETCH(QString, subject);
    m_pad->setEditor(m_bar);
    m_pad->setKey(QString::fromLatin1(QTest::currentDataTag()));
    QCOMPARE(m_pad->subject(), subject);
}

void NumberPadTest::nextMissingNumber()
{
    BandEditor band;
    band.setDeskService(m_service);
    band.addHanging();
    band.addHanging();
    m_pad->setEditor(&band);
    m_pad->setKey(QStringLiteral("mass:1"));
    QCOMPARE(m_pad->subject(), QStringLiteral("Hanging 2: mass"));
    QCOMPARE(m_pad->next(), QStringLiteral("length:1"));
    m_pad->setKey(m_pad->next());
    QCOMPARE(m_pad->subject(), QStringLiteral("Hanging 2: length"));
    QCOMPARE(m_pad->next(), QString());
    m_pad->setEditor(nullptr);
}

void NumberPadTest::goneKey()
{
    m_pad->setKey(QStringLiteral("no such key"));
    type(*m_pad, QStringLiteral("5"));
    QVERIFY(!m_pad->keep());
    QVERIFY(!m_pad->refusal().isEmpty());
    NumberPad loose;
    type(loose, QStringLiteral("5"));
    QVERIFY(!loose.keep());
    QVERIFY(!loose.clear());
    QVERIFY(loose.next().isEmpty());
}

QTEST_GUILESS_MAIN(NumberPadTest)
#include "test_numberpad.moc"
