// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/editors/unitschoice.h"

#include "core/work/barchanges.h"
#include "mobile/editors/bandeditor.h"
#include "mobile/editors/bareditor.h"
#include "mobile/editors/chaineditor.h"
#include "mobile/editors/hangeditor.h"
#include "mobile/editors/markseditor.h"
#include "mobile/editors/numberpad.h"
#include "mobile/pages/athleteeditor.h"
#include "mobile/pages/deskwork.h"
#include "mobile/pages/kitview.h"
#include "mobile/pages/setupview.h"
#include "mobile/text/say.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>

#include <bit>
#endif

using namespace steelyard;

namespace {

/// A bar of 45 lb with pound plates, and 225 lb asked for.
SetupRecord poundSetup()
{
    SetupRecord setup;
    setup.bar.stock.clear();
    setup.bar = withBar(setup.bar, *massTyped("45", Unit::Pound));
    for (const char* mark : {"45", "45", "25", "10", "5", "2.5"})
        setup.bar = withPairMore(setup.bar, *massTyped(mark, Unit::Pound));
    setup.bar.wanted = *massTyped("225", Unit::Pound);
    setup.hung = {samples::hung(1, samples::chainOn(0.5)), samples::hung(2, samples::bandAt(0.1))};
    return setup;
}

}

/// One choice says what everything is shown and keyed in, and what was typed stays as it was typed.
class UnitsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void theChoiceIsOnTheDisk();
    void whatIsNoChoiceIsPassedOver();
    void refusedChoiceChangesNothing();
    void shownAnewAtOnce();
    void typedInInches();
    void typedInPounds();
    void unkeyableEndsOfInches();
    void limitsOfEveryForm();
    void everyFormTakesPoundsAndInches();
    void loadOfPoundPlates();
    void loadsOfKilogramPlatesInPounds();
    void newPlateCarriesItsMark();
    void bodySizeInPounds();
    void chainAFoot();
    void differsOnlyInWhatIsKept();
    void picturesInTheShownUnits();
    void switchingKeepsEveryBit_data();
    void switchingKeepsEveryBit();

private:
    void choose(bool pounds, bool inches)
    {
        m_units->setMass(pounds ? 1 : 0);
        m_units->setLength(inches ? 1 : 0);
    }
    void key(FieldEditor& form, const char* field, const char* digits)
    {
        m_pad->setEditor(&form);
        m_pad->setKey(QString::fromLatin1(field));
        for (const char c : std::string_view(digits))
            m_pad->press(QString(QLatin1Char(c)));
    }
    [[nodiscard]] QString row(FieldEditor& form, const char* field, const char* role) const
    {
        return formcheck::shown(*form.fields(), formcheck::rowOf(form, QString::fromLatin1(field)), role).toString();
    }
    [[nodiscard]] Desk& desk() { return m_house->desk.desk(); }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<UnitsChoice> m_units;
    std::unique_ptr<NumberPad> m_pad;
};

void UnitsTest::init()
{
    QLocale::setDefault(QLocale(QStringLiteral("en")));
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, desk(), samples::marks(0.77, 1.27), {samples::item(1, "Chain", samples::weighed()), samples::item(2, "Band", samples::band())}, poundSetup());
    m_units = std::make_unique<UnitsChoice>();
    m_units->setBook(&m_house->book);
    m_pad = std::make_unique<NumberPad>();
}

void UnitsTest::cleanup()
{
    m_pad.reset();
    m_units.reset();
    m_house.reset();
    say::setUnits({});
}

void UnitsTest::theChoiceIsOnTheDisk()
{
    const std::size_t before = m_house->keeper.entries.size();
    QCOMPARE(m_units->mass(), 0);
    QSignalSpy changed(m_units.get(), &UnitsChoice::changed);
    m_units->setMass(1);
    QCOMPARE(m_house->keeper.entries.size(), before + 1);
    QVERIFY(changed.count() > 0);
    QCOMPARE(m_units->mass(), 1);
    QVERIFY((say::units() == VaultSettings{MassUnit::Pound, LengthUnit::Centimetre}));
    m_units->setMass(1);
    QCOMPARE(m_house->keeper.entries.size(), before + 1);
    m_units->setLength(1);
    QVERIFY((m_house->book.book().settings() == VaultSettings{MassUnit::Pound, LengthUnit::Inch}));
    // another vault is shown in its own
    m_house->book.load({});
    QVERIFY(say::units() == VaultSettings{});
    QCOMPARE(m_units->length(), 0);
}

void UnitsTest::whatIsNoChoiceIsPassedOver()
{
    for (const int none : {-1, 2}) {
        m_units->setMass(none);
        m_units->setLength(none);
    }
    QVERIFY(m_house->book.book().settings() == VaultSettings{});
    UnitsChoice without;
    without.setMass(1);
    QCOMPARE(without.mass(), 0);
}

void UnitsTest::refusedChoiceChangesNothing()
{
    m_house->keeper.refusal = vault::Refusal{vault::Code::DiskFullFreeSpace};
    m_units->setMass(1);
    QCOMPARE(m_units->mass(), 0);
    QVERIFY(say::units() == VaultSettings{});
    QVERIFY(!m_house->book.head().isEmpty());
}

void UnitsTest::shownAnewAtOnce()
{
    SetupView view;
    view.setDesk(&m_house->desk);
    KitView kit;
    kit.setDesk(&m_house->desk);
    const int chain = formcheck::shown(*kit.things(), 0, "chain").toBool() ? 0 : 1;
    const QString title = view.answer().title, how = formcheck::shown(*kit.things(), chain, "how").toString();
    QVERIFY2(title.contains(QStringLiteral(" kg at the bottom")), qPrintable(title));
    QVERIFY2(how.contains(QStringLiteral("kg a metre")) && how.endsWith(QStringLiteral(", 150 cm")), qPrintable(how));
    QSignalSpy changed(&view, &SetupView::changed);
    choose(true, true);
    QVERIFY(changed.count() > 0);
    QVERIFY2(view.answer().title.contains(QStringLiteral(" lb at the bottom")), qPrintable(view.answer().title));
    const QString inPounds = formcheck::shown(*kit.things(), chain, "how").toString();
    QVERIFY2(inPounds.contains(QStringLiteral("lb a foot")) && inPounds.endsWith(QStringLiteral(", 59.1 in")), qPrintable(inPounds));
    QVERIFY(view.readingAt(1.016).startsWith(QStringLiteral("40 in: ")));
    QVERIFY(view.readingAt(1.016).endsWith(QStringLiteral(" lb")));
    choose(false, false);
    QCOMPARE(view.answer().title, title);
    QCOMPARE(formcheck::shown(*kit.things(), chain, "how").toString(), how);
}

void UnitsTest::typedInInches()
{
    MarksEditor form;
    form.setDeskService(&m_house->desk);
    choose(false, true);
    // what was kept in metres has a figure in inches, and nobody typed it
    QCOMPARE(row(form, "top", "value"), QStringLiteral("50"));
    key(form, "bottom", "30.250");
    QCOMPARE(m_pad->unit(), QStringLiteral("in"));
    QCOMPARE(m_pad->fact(), QStringLiteral("30.250 in"));
    QVERIFY(m_pad->keep());
    QCOMPARE(desk().marks().bottom->si(), 0.76835);
    QCOMPARE(row(form, "bottom", "value"), QStringLiteral("30.250"));
    QVERIFY(!row(form, "bottom", "hint").contains(QStringLiteral("entered as")));
    QCOMPARE(form.marks().first().toMap().value(QStringLiteral("text")).toString(), QStringLiteral("30.250 in"));
    QCOMPARE(form.unitLength(), 0.0254);
    choose(false, false);
    QCOMPARE(row(form, "bottom", "value"), QStringLiteral("76.8"));
    QVERIFY(row(form, "bottom", "hint").endsWith(QStringLiteral(" · entered as 30.250 in")));
    m_pad->setEditor(&form);
    QCOMPARE(m_pad->hint(), QStringLiteral("now 76.8 cm, entered as 30.250 in"));
    QCOMPARE(form.unitLength(), 0.01);
    choose(false, true);
    QCOMPARE(row(form, "bottom", "value"), QStringLiteral("30.250"));
    QCOMPARE(desk().marks().bottom->si(), 0.76835);
    QLocale::setDefault(QLocale(QStringLiteral("de")));
    QCOMPARE(form.spec(QStringLiteral("bottom"))->text, QStringLiteral("30,250"));
}

void UnitsTest::typedInPounds()
{
    BandEditor form;
    form.setDeskService(&m_house->desk);
    form.setItemId(QString::fromStdString(desk().kit().front().name == "Band" ? desk().kit().front().id.hex() : desk().kit().back().id.hex()));
    choose(true, true);
    key(form, "mass:0", "11.");
    QVERIFY(m_pad->keep());
    QCOMPARE(formcheck::shown(*form.hangings(), 0, "mass").toString(), QStringLiteral("11 lb"));
    choose(false, false);
    QCOMPARE(formcheck::shown(*form.hangings(), 0, "mass").toString(), QStringLiteral("4.99 kg"));
    QVERIFY(form.answer().contains(QStringLiteral(" kg at ")));
    QCOMPARE(form.picture().pullUnit, QStringLiteral("kg"));
    choose(true, true);
    QVERIFY(form.answer().contains(QStringLiteral(" lb at ")) && form.answer().endsWith(QStringLiteral(" in")));
    QCOMPARE(form.picture().lengthUnit, QStringLiteral("in"));
}

void UnitsTest::unkeyableEndsOfInches()
{
    MarksEditor form;
    form.setDeskService(&m_house->desk);
    choose(false, true);
    key(form, "top", "118.2");
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->refusal(), QStringLiteral("More than 118.11 in: read it again."));
    key(form, "top", "0.3");
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->refusal(), QStringLiteral("Less than 0.394 in: read it again."));
    key(form, "top", "118.1");
    QVERIFY(m_pad->keep());
}

void UnitsTest::limitsOfEveryForm()
{
    choose(true, true);
    MarksEditor marks;
    BarEditor bar;
    ChainEditor chain;
    BandEditor band;
    HangEditor hang;
    for (FieldEditor* form : {static_cast<FieldEditor*>(&marks), static_cast<FieldEditor*>(&bar), static_cast<FieldEditor*>(&chain), static_cast<FieldEditor*>(&band), static_cast<FieldEditor*>(&hang)}) {
        form->setDeskService(&m_house->desk);
        hang.setRow(0);
        const QStringList faults = formcheck::limitsOfEveryKey(*form);
        QVERIFY2(faults.isEmpty(), qPrintable(faults.join(QLatin1Char('\n'))));
        for (const FieldSpec& spec : form->specs())
            QVERIFY2(spec.unit == QLatin1String("lb") || spec.unit == QLatin1String("in"), qPrintable(spec.key + spec.unit));
    }
}

void UnitsTest::everyFormTakesPoundsAndInches()
{
    choose(true, true);
    MarksEditor marks;
    marks.setDeskService(&m_house->desk);
    ChainEditor chain;
    chain.setDeskService(&m_house->desk);
    HangEditor hang;
    hang.setDeskService(&m_house->desk);
    hang.setRow(1);
    for (FieldEditor* form : {static_cast<FieldEditor*>(&marks), static_cast<FieldEditor*>(&chain), static_cast<FieldEditor*>(&hang)}) {
        const QStringList faults = formcheck::keepEveryKey(*form);
        QVERIFY2(faults.isEmpty(), qPrintable(faults.join(QLatin1Char('\n'))));
    }
}

void UnitsTest::loadOfPoundPlates()
{
    SetupView view;
    view.setDesk(&m_house->desk);
    QCOMPARE(view.beam().valueText, QStringLiteral("102.06 kg"));
    QCOMPARE(view.beam().enteredAs, QStringLiteral("entered as 225 lb"));
    QCOMPARE(view.beam().eachSide, QStringLiteral("45 lb · 45 lb"));
    choose(true, false);
    QCOMPARE(view.beam().valueText, QStringLiteral("225 lb"));
    QVERIFY(view.beam().enteredAs.isEmpty());
    QCOMPARE(view.beam().eachSide, QStringLiteral("45 · 45"));
    QCOMPARE(view.plates().first().toMap().value(QStringLiteral("label")).toString(), QStringLiteral("45"));
    QCOMPARE(view.beam().up, QStringLiteral("+5"));
    view.stepLoad(true);
    QCOMPARE(view.beam().valueText, QStringLiteral("230 lb"));
    BarEditor bar;
    bar.setDeskService(&m_house->desk);
    key(bar, "load", "236");
    QVERIFY(!m_pad->keep());
    QCOMPARE(m_pad->refusal(), QStringLiteral("236 lb cannot be hung with the plates here."));
    QCOMPARE(m_pad->offers(), (QStringList{QStringLiteral("235 lb"), QStringLiteral("240 lb")}));
    QVERIFY(m_pad->take(1));
    QCOMPARE(view.beam().valueText, QStringLiteral("240 lb"));
    key(bar, "load", "135");
    QVERIFY(m_pad->keep());
    QCOMPARE(view.beam().valueText, QStringLiteral("135 lb"));
    QVERIFY((desk().setup().bar.wanted.typed() == AsTyped{"135", Unit::Pound}));
}

void UnitsTest::loadsOfKilogramPlatesInPounds()
{
    SetupView view;
    view.setDesk(&m_house->desk);
    desk().setBar(samples::bar(60));
    choose(true, false);
    QCOMPARE(view.beam().valueText, QStringLiteral("132.3 lb"));
    QVERIFY2(view.beam().eachSide.endsWith(QStringLiteral(" kg")), qPrintable(view.beam().eachSide));
    BarEditor bar;
    bar.setDeskService(&m_house->desk);
    QVERIFY(formcheck::shown(*bar.stock(), 0, "label").toString().endsWith(QStringLiteral(" kg")));
    // what the page shows can be keyed
    desk().setBar(samples::bar(20));
    key(bar, "load", "132.3");
    QVERIFY(m_pad->keep());
    QCOMPARE(desk().answer().load->total.si(), 60.0);
    QCOMPARE(view.beam().valueText, QStringLiteral("132.3 lb"));
    choose(false, false);
    QCOMPARE(view.beam().valueText, QStringLiteral("60 kg"));
    QCOMPARE(view.beam().enteredAs, QStringLiteral("entered as 132.3 lb"));
}

void UnitsTest::newPlateCarriesItsMark()
{
    BarEditor bar;
    bar.setDeskService(&m_house->desk);
    choose(true, false);
    key(bar, "newPlate", "1.25");
    QVERIFY(m_pad->keep());
    const int last = bar.stock()->rowCount() - 1;
    QCOMPARE(formcheck::shown(*bar.stock(), last, "label").toString(), QStringLiteral("1.25 lb"));
    choose(false, false);
    QCOMPARE(formcheck::shown(*bar.stock(), last, "label").toString(), QStringLiteral("1.25 lb"));
}

void UnitsTest::bodySizeInPounds()
{
    people::fill(m_house->book, 1);
    choose(true, true);
    AthleteEditor form;
    form.setDeskService(&m_house->desk);
    form.setBook(&m_house->book);
    form.setAthleteId(QString::fromStdString(m_house->book.book().athletes().front()->id.hex()));
    key(form, "mass", "135.5");
    QVERIFY(m_pad->keep());
    key(form, "height", "67.75");
    QVERIFY(m_pad->keep());
    // half done it waits as it was typed
    QCOMPARE(row(form, "mass", "value"), QStringLiteral("135.5"));
    form.keep();
    const auto& size = m_house->book.book().athletes().front()->sizes.back();
    QVERIFY((size.mass->typed() == AsTyped{"135.5", Unit::Pound} && size.height->typed() == AsTyped{"67.75", Unit::Inch}));
    choose(false, false);
    QCOMPARE(row(form, "mass", "value"), QStringLiteral("61.5"));
    QCOMPARE(row(form, "mass", "hint"), QStringLiteral("entered as 135.5 lb"));
    QCOMPARE(row(form, "height", "value"), QStringLiteral("172.1"));
}

// 5.7 kg/m is 3.830 lb/ft: 5.7 × 0.3048 / 0.45359237, with the exact units of NIST Special Publication 811, appendix B.8
void UnitsTest::chainAFoot()
{
    QCOMPARE(say::perLength(kilogramsPerMetre(5.7)), QStringLiteral("5.7 kg a metre"));
    choose(true, true);
    QCOMPARE(say::perLength(kilogramsPerMetre(5.7)), QStringLiteral("3.83 lb a foot"));
    choose(true, false);
    QCOMPARE(say::perLength(kilogramsPerMetre(5.7)), QStringLiteral("12.57 lb a metre"));
    choose(false, true);
    QCOMPARE(say::perLength(kilogramsPerMetre(5.7)), QStringLiteral("1.74 kg a foot"));
}

void UnitsTest::differsOnlyInWhatIsKept()
{
    people::fill(m_house->book, 1);
    DeskWork work;
    work.setDesk(&m_house->desk);
    work.setBook(&m_house->book);
    work.take(QString::fromStdString(m_house->book.book().athletes().front()->id.hex()), QStringLiteral("1"));
    QVERIFY(!work.marksDiffer());
    choose(false, true);
    QVERIFY(!work.marksDiffer());
    MarksEditor form;
    form.setDeskService(&m_house->desk);
    // 127 cm, the other way
    key(form, "top", "50");
    QVERIFY(m_pad->keep());
    QVERIFY(!work.marksDiffer());
    key(form, "top", "50.125");
    QVERIFY(m_pad->keep());
    QVERIFY(work.marksDiffer());
    work.keepMarks();
    QVERIFY(!work.marksDiffer());
    choose(false, false);
    QVERIFY(!work.marksDiffer());
    work.keepSetup();
    QVERIFY(!work.setupDiffers());
    choose(true, true);
    QVERIFY(!work.setupDiffers());
}

void UnitsTest::switchingKeepsEveryBit_data()
{
    QTest::addColumn<bool>("inches");
    QTest::addColumn<QString>("digits");
    for (const char* digits : {"127.3", "104.1", "99.9", "150"})
        QTest::newRow(digits) << false << QString::fromLatin1(digits);
    for (const char* digits : {"50.125", "41.375", "59.875"})
        QTest::newRow(digits) << true << QString::fromLatin1(digits);
}

/// To and fro, the number that was typed stays as it was typed, to its last bit, and nothing is written because of it.
void UnitsTest::switchingKeepsEveryBit()
{
    QFETCH(const bool, inches);
    QFETCH(const QString, digits);
    choose(inches, inches);
    MarksEditor form;
    form.setDeskService(&m_house->desk);
    key(form, "top", digits.toLatin1().constData());
    QVERIFY(m_pad->keep());
    const auto bits = [this] { return std::bit_cast<std::uint64_t>(m_house->desk.desk().marks().top->quantity().si()); };
    const std::uint64_t before = bits();
    const std::string typed(m_house->desk.desk().marks().top->typed()->decimal.text());
    for (int turn = 0; turn < 3; ++turn) {
        choose(!inches, !inches);
        QCOMPARE(bits(), before);
        choose(inches, inches);
        QCOMPARE(bits(), before);
    }
    QCOMPARE(std::string(m_house->desk.desk().marks().top->typed()->decimal.text()), typed);
    QCOMPARE(typed, digits.toStdString());
}

void UnitsTest::picturesInTheShownUnits()
{
    SetupView view;
    view.setDesk(&m_house->desk);
    const PullPicture kilos = view.picture();
    QCOMPARE(view.answer().unit, QStringLiteral("kg"));
    QCOMPARE(view.readStep(), 0.05);
    const double pull = view.marks().first().toMap().value(QStringLiteral("pull")).toDouble();
    choose(true, true);
    const PullPicture pounds = view.picture();
    QCOMPARE(view.answer().unit, QStringLiteral("lb"));
    QCOMPARE(view.readStep(), 0.0508);
    QCOMPARE(pounds.total.size(), kilos.total.size());
    for (qsizetype i = 0; i < kilos.total.size(); ++i) {
        QVERIFY(std::abs(pounds.total[i].x() * 0.45359237 - kilos.total[i].x()) < 1e-9 * kilos.total[i].x());
        QCOMPARE(pounds.total[i].y(), kilos.total[i].y());
    }
    const QVariantMap top = view.marks().first().toMap();
    QVERIFY(std::abs(top.value(QStringLiteral("pull")).toDouble() * 0.45359237 - pull) < 1e-9 * pull);
    QCOMPARE(top.value(QStringLiteral("heightText")).toString(), QStringLiteral("50 in"));
}

QTEST_GUILESS_MAIN(UnitsTest)
#include "test_units.moc"
