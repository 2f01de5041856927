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
    void factRepeatsTheNumber();
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
    void pasted_data();
    void pasted();
    void saysWhatChangesOnTheBar_data();
    void saysWhatChangesOnTheBar();
    void asksBeforeANumberFarFromLastTime_data();
    void asksBeforeANumberFarFromLastTime();
    void anotherKeyTakesTheQuestionBack();
    void noQuestionWithoutALastTime();

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
    QCOMPARE(m_pad->fact(), QStringLiteral("once keyed"));
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

void NumberPadTest::factRepeatsTheNumber()
{
    QLocale::setDefault(QLocale(QStringLiteral("de")));
    type(*m_pad, QStringLiteral("151,5"));
    QCOMPARE(m_pad->fact(), QStringLiteral("151,5 cm"));
    QCOMPARE(m_pad->unit(), QStringLiteral("cm"));
    m_pad->keep();
    m_pad->setKey(QStringLiteral("top"));
    QCOMPARE(m_pad->hint(), QStringLiteral("now 151,5 cm"));
}

void NumberPadTest::saysWhatItWaitsFor()
{
    QCOMPARE(m_pad->fact(), QStringLiteral("once keyed"));
    type(*m_pad, QStringLiteral("."));
    QCOMPARE(m_pad->fact(), QStringLiteral("once keyed"));
    m_pad->press(QStringLiteral("rub"));
    type(*m_pad, QStringLiteral("350"));
    QCOMPARE(m_pad->fact(), QStringLiteral("300 cm at most"));
    QVERIFY(!m_pad->keep());
    for (int i = 0; i < 3; ++i)
        m_pad->press(QStringLiteral("rub"));
    type(*m_pad, QStringLiteral("0.5"));
    QCOMPARE(m_pad->fact(), QStringLiteral("1 cm at least"));
    m_pad->press(QStringLiteral("rub"));
    m_pad->press(QStringLiteral("rub"));
    m_pad->press(QStringLiteral("rub"));
    type(*m_pad, QStringLiteral("150"));
    // nothing is wanting any more, and it keeps
    QCOMPARE(m_pad->state(), NumberPad::Ready);
    QCOMPARE(m_pad->fact(), QStringLiteral("150 cm"));
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

void NumberPadTest::pasted_data()
{
    QTest::addColumn<QString>("locale");
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("shown");
    QTest::addColumn<bool>("refused");
    // the load takes two decimals; a point or a comma once, and nothing groups digits
    QTest::newRow("English, three decimals") << "en" << "1.250" << "1.25" << true;
    QTest::newRow("English, a comma") << "en" << "62,5" << "62.5" << false;
    QTest::newRow("German, three decimals") << "de" << "1.250" << "1,25" << true;
    QTest::newRow("German, a comma") << "de" << "62,5" << "62,5" << false;
    QTest::newRow("with its unit") << "en" << "62.5 kg" << "62.5" << true;
    QTest::newRow("blanks round it") << "en" << " 62.5\n" << "62.5" << false;
    QTest::newRow("a thousand, grouped") << "en" << "1,250.5" << "1.25" << true;
    QTest::newRow("words") << "en" << "heavy" << "" << true;
    QTest::newRow("nothing") << "en" << "" << "" << false;
}

void NumberPadTest::pasted()
{
    QFETCH(const QString, locale);
    QFETCH(const QString, text);
    QLocale::setDefault(QLocale(locale));
    m_pad->setEditor(m_bar);
    m_pad->setKey(QStringLiteral("load"));
    m_pad->paste(text);
    QTEST(m_pad->text(), "shown");
    QTEST(!m_pad->refusal().isEmpty(), "refused");
}

void NumberPadTest::saysWhatChangesOnTheBar_data()
{
    QTest::addColumn<QString>("load");
    QTest::addColumn<QString>("said");
    // 100 kg hang: 25 and 15 on each side of a bar of 20
    QTest::newRow("as it hangs") << "100" << "it hangs already";
    QTest::newRow("more") << "105" << "put on 2.5, each side";
    QTest::newRow("less") << "70" << "take off 15, each side";
    QTest::newRow("otherwise") << "110" << "take off 15, put on 20, each side";
    QTest::newRow("cannot be hung") << "108.5" << "now 100 kg";
    QTest::newRow("half keyed") << "1" << "now 100 kg";
}

void NumberPadTest::saysWhatChangesOnTheBar()
{
    QFETCH(const QString, load);
    m_pad->setEditor(m_bar);
    m_pad->setKey(QStringLiteral("load"));
    type(*m_pad, QStringLiteral("100"));
    QVERIFY(m_pad->keep());
    m_pad->setKey(QStringLiteral("load"));
    type(*m_pad, load);
    QTEST(m_pad->hint(), "said");
    // and it is what happens: the plates of both sides before, less those taken off, and those put on
    const auto plates = m_service->desk().answer().load->eachSide;
    if (load == QLatin1String("110")) {
        QVERIFY(m_pad->keep());
        QCOMPARE(m_service->desk().answer().load->eachSide.size(), plates.size());
        QCOMPARE(m_service->desk().answer().load->total.si(), 110.0);
    }
}

void NumberPadTest::asksBeforeANumberFarFromLastTime_data()
{
    QTest::addColumn<QString>("load");
    QTest::addColumn<QString>("question");
    QTest::newRow("near") << "85" << "";
    QTest::newRow("far") << "120" << "120 kg? Last time it was 80 kg.";
    QTest::newRow("pounds") << "177.5" << "177.5 kg? Last time it was 80 kg. Pounds for kilograms?";
}

void NumberPadTest::asksBeforeANumberFarFromLastTime()
{
    QFETCH(const QString, load);
    QFETCH(const QString, question);
    m_service->desk().setLastTime(kilograms(80));
    m_pad->setEditor(m_bar);
    m_pad->setKey(QStringLiteral("load"));
    type(*m_pad, load);
    QCOMPARE(m_pad->state(), NumberPad::Ready);
    if (!question.isEmpty()) {
        QVERIFY(!m_pad->keep());
        QCOMPARE(m_pad->refusal(), question);
        QCOMPARE(m_pad->state(), NumberPad::Asking);
        // nothing has been kept, and nothing is lost
        QCOMPARE(m_service->desk().setup().bar.wanted.si(), 20.0);
        QCOMPARE(m_pad->text(), load);
    }
    QVERIFY(m_pad->keep());
    QCOMPARE(m_service->desk().setup().bar.wanted.si(), load.toDouble());
}

void NumberPadTest::anotherKeyTakesTheQuestionBack()
{
    m_service->desk().setLastTime(kilograms(80));
    m_pad->setEditor(m_bar);
    m_pad->setKey(QStringLiteral("load"));
    type(*m_pad, QStringLiteral("120"));
    QVERIFY(!m_pad->keep());
    m_pad->press(QStringLiteral("rub"));
    QCOMPARE(m_pad->state(), NumberPad::Ready);
    QVERIFY(m_pad->refusal().isEmpty());
    // and another number is asked about anew
    type(*m_pad, QStringLiteral("5"));
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->state(), NumberPad::Asking);
}

void NumberPadTest::noQuestionWithoutALastTime()
{
    m_pad->setEditor(m_bar);
    m_pad->setKey(QStringLiteral("load"));
    type(*m_pad, QStringLiteral("180"));
    QVERIFY(m_pad->keep());
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
