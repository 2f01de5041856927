// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuredkit.h"
#include "mobile/editors/bareditor.h"
#include "mobile/editors/chaineditor.h"
#include "mobile/editors/markseditor.h"
#include "mobile/pages/kitview.h"
#include "mobile/text/say.h"
#include "mobile/tools/hangchoice.h"
#include "mobile/tools/scalechoice.h"
#include "mobile/tools/weighediron.h"

#include "tests/core/near.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/tools/tooldesk.h"

#include <QtTest>
#endif

using namespace steelyard;

/// What of the kit here can be taken where something is weighed, loaded, hung or marked.
class ToolChoicesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void chainOnACheckedScale();
    void noScaleNoChoice();
    void barIsTakenAndGivenBack();
    void platesAreTakenAndGivenBack();
    void someOfAMarkGoByWhatTheyWeigh();
    void leadOfTheKit();
    void anchorOfTheRack();
    void toolsComeBehindWhatHangs();
    void marksByHole();
    void tapeAgain();
    void noSuchHole();
    void whatIsOutOfUseOrLentIsOfferedNowhere_data();
    void whatIsOutOfUseOrLentIsOfferedNowhere();
    void takenIronThatIsGoneCanBeGivenBack();

private:
    DeskService* m_service = nullptr;
};

void ToolChoicesTest::init()
{
    m_service = new DeskService(this);
    m_service->desk().replaceAll({}, tooldesk::kit(), samples::setup(60));
}

void ToolChoicesTest::cleanup()
{
    delete m_service;
}

void ToolChoicesTest::chainOnACheckedScale()
{
    ChainEditor form;
    form.setDeskService(m_service);
    ScaleChoice choice;
    choice.setForm(&form);
    QCOMPARE(choice.names(), (QStringList{"another scale", "scale"}));
    QCOMPARE(choice.chosen(), 0);
    QVERIFY(choice.text().isEmpty());
    form.keepNumber(QStringLiteral("length"), 150);
    form.keepNumber(QStringLiteral("mass"), 8.55);
    choice.setChosen(1);
    QCOMPARE(choice.chosen(), 1);
    QCOMPARE(form.measurement().scaleStep->si(), 0.1);
    VERIFY_NEAR(form.measurement().scaleAccuracy->si(), 0.2, 1e-12);
    QVERIFY2(choice.text().contains(QStringLiteral("0.1 kg with nothing on it")), qPrintable(choice.text()));
    QVERIFY(!choice.text().contains(QStringLiteral("checked with")));
    // √(0.1²/12 + 0.2²/3) = 0.119; 1.96 · 0.119 / 1.5 = 0.155
    QCOMPARE(form.answer(), QStringLiteral("5.70 ± 0.16 kg a metre"));
    form.keepNumber(QStringLiteral("mass"), 30);
    QVERIFY2(choice.text().contains(QStringLiteral("known up to 20 kg")), qPrintable(choice.text()));
    // keyed by hand, it is another scale
    form.keepNumber(QStringLiteral("scaleStep"), 0.1);
    QCOMPARE(choice.chosen(), 0);
    QVERIFY(!form.measurement().scaleAccuracy);
    choice.setChosen(1);
    choice.setChosen(0);
    QVERIFY(!form.measurement().scaleStep && form.measurement().mass);
    form.setGauged(true);
    QVERIFY(choice.names().isEmpty());
}

void ToolChoicesTest::noScaleNoChoice()
{
    m_service->desk().replaceAll({}, {}, samples::setup(60));
    ChainEditor form;
    form.setDeskService(m_service);
    ScaleChoice choice;
    choice.setForm(&form);
    QVERIFY(choice.names().isEmpty());
    choice.setChosen(1);
    QVERIFY(!form.isDrafted());
}

void ToolChoicesTest::barIsTakenAndGivenBack()
{
    WeighedIronView iron;
    iron.setDesk(m_service);
    QCOMPARE(iron.bars().size(), 2);
    QVERIFY2(iron.bars()[1].startsWith(QStringLiteral("old bar: 20.3 ± 0.")), qPrintable(iron.bars()[1]));
    QCOMPARE(iron.bar(), 0);
    iron.setBar(1);
    QCOMPARE(iron.bar(), 1);
    QCOMPARE(m_service->desk().setup().bar.bar.si(), 20.3);
    // said as it is where it is taken, with its give-or-take
    BarEditor form;
    form.setDeskService(m_service);
    QVERIFY2(iron.bars()[1].contains(form.spec(QStringLiteral("bar"))->text), qPrintable(form.spec(QStringLiteral("bar"))->text));
    QVERIFY(form.spec(QStringLiteral("bar"))->text.startsWith(QStringLiteral("20.3 ± 0.")));
    QVERIFY(m_service->desk().answer().load->total == kilograms(60.3));
    iron.setBar(0);
    QVERIFY(!m_service->desk().setup().bar.barWeighed && iron.bar() == 0);
    QCOMPARE(m_service->desk().setup().bar.bar.si(), 20.3);
}

void ToolChoicesTest::platesAreTakenAndGivenBack()
{
    WeighedIronView iron;
    iron.setDesk(m_service);
    BarEditor form;
    form.setDeskService(m_service);
    QCOMPARE(iron.plates()->rowCount(), 1);
    QVERIFY(!formcheck::shown(*iron.plates(), 0, "taken").toBool());
    QVERIFY2(formcheck::shown(*iron.plates(), 0, "how").toString().startsWith(QStringLiteral("each 20.30 ± 0.03 kg")), qPrintable(formcheck::shown(*iron.plates(), 0, "how").toString()));
    iron.takePlates(0);
    QVERIFY(formcheck::shown(*iron.plates(), 0, "taken").toBool());
    QCOMPARE(formcheck::shown(*form.stock(), 1, "label").toString(), QStringLiteral("20 kg"));
    QCOMPARE(formcheck::shown(*form.stock(), 1, "pairs").toString(), QStringLiteral("2 plates, weighed: 20.30 ± 0.03 kg each"));
    iron.takePlates(0);
    QVERIFY(m_service->desk().setup().bar == samples::setup(60).bar);
    iron.takePlates(5);
    QVERIFY(m_service->desk().setup().bar == samples::setup(60).bar);
}

void ToolChoicesTest::someOfAMarkGoByWhatTheyWeigh()
{
    SetupRecord six = samples::setup(60);
    six.bar.stock[1].count = 6;
    m_service->desk().replaceAll({}, tooldesk::kit(), six);
    WeighedIronView iron;
    iron.setDesk(m_service);
    iron.takePlates(0);
    const BarRecord bar = m_service->desk().setup().bar;
    QCOMPARE(say::plateMark(bar, bar.stock[1].type), QStringLiteral("20.3"));
    QCOMPARE(say::plateMark(bar, bar.stock[2].type), QStringLiteral("20"));
}

void ToolChoicesTest::leadOfTheKit()
{
    m_service->desk().hang(samples::hung(1, samples::chainOn(0.3)));
    HangEditor form;
    form.setDeskService(m_service);
    form.setRow(0);
    HangChoice choice;
    choice.setForm(&form);
    QCOMPARE(choice.names(), QStringList{"straps, 62 cm"});
    QCOMPARE(choice.chosen(), -1);
    choice.setChosen(0);
    QCOMPARE(choice.chosen(), 0);
    const auto placing = std::get<ChainPlacing>(m_service->desk().setup().hung[0].placing);
    QCOMPARE(placing.lead.si(), 0.62);
    QCOMPARE(placing.leadMass.si(), 0.35);
    form.keepNumber(QStringLiteral("lead"), 40);
    QCOMPARE(choice.chosen(), -1);
}

void ToolChoicesTest::anchorOfTheRack()
{
    m_service->desk().hang(samples::hung(7, samples::bandAt(0)));
    HangEditor form;
    form.setDeskService(m_service);
    form.setRow(0);
    HangChoice choice;
    choice.setForm(&form);
    QCOMPARE(choice.names(), (QStringList{"rack, 6 cm", "rack, 214 cm"}));
    QCOMPARE(choice.chosen(), -1);
    choice.setChosen(1);
    QCOMPARE(choice.chosen(), 1);
    QCOMPARE(std::get<BandPlacing>(m_service->desk().setup().hung[0].placing).anchorHeight.si(), 2.14);
}

void ToolChoicesTest::toolsComeBehindWhatHangs()
{
    KitView view;
    view.setDesk(m_service);
    QStringList names;
    for (int i = 0; i < view.things()->rowCount(); ++i)
        names << formcheck::shown(*view.things(), i, "what").toString();
    QCOMPARE(names, (QStringList{"chains", "bands", "scale", "old bar", "twenties", "straps", "rack"}));
    const auto row = [&view](int place, const char* role) { return formcheck::shown(*view.things(), place, role).toString(); };
    QCOMPARE(row(2, "how"), QStringLiteral("Not good: 0.2 kg too much at 20 kg"));
    QCOMPARE(row(4, "how"), QStringLiteral("20.30 ± 0.03 kg each, marked 20 kg"));
    QCOMPARE(row(5, "how"), QStringLiteral("62 cm, weighs 0.35 kg"));
    QCOMPARE(row(6, "how"), QStringLiteral("28 holes, 41.5 to 176.5 cm · bands at 6 and 214 cm"));
    QCOMPARE(row(6, "kind"), QStringLiteral("rack"));
    // tapped, they are measured and not hung
    for (int place = 2; place < 7; ++place)
        QVERIFY(!formcheck::shown(*view.things(), place, "usable").toBool());
}

void ToolChoicesTest::marksByHole()
{
    MarksEditor form;
    form.setDeskService(m_service);
    QCOMPARE(form.racks(), (QStringList{"tape", "hole of rack"}));
    QCOMPARE(form.rack(), 0);
    form.setRack(1);
    QCOMPARE(form.rack(), 1);
    QCOMPARE(form.spec(QStringLiteral("bottom"))->limits.mostRatio, 28.0);
    QVERIFY(form.keepNumber(QStringLiteral("bottom"), 8).kept());
    QVERIFY(form.keepNumber(QStringLiteral("top"), 18).kept());
    const BarMarks& marks = m_service->desk().marks();
    // 41.5 + 7 · 5
    QCOMPARE(marks.bottom->si(), 0.765);
    QCOMPARE(marks.top->si(), 1.265);
    QVERIFY((marks.holes.bottom == HoleRead{samples::numbered(6), 8}));
    QCOMPARE(formcheck::shown(*form.fields(), formcheck::rowOf(form, QStringLiteral("bottom")), "value").toString(), QStringLiteral("8"));
    QCOMPARE(formcheck::shown(*form.fields(), formcheck::rowOf(form, QStringLiteral("bottom")), "hint").toString(), QStringLiteral("41.5 + 7 × 5 = 76.5 cm"));
    QVERIFY(form.clearNumber(QStringLiteral("rack")));
}

void ToolChoicesTest::tapeAgain()
{
    MarksEditor form;
    form.setDeskService(m_service);
    form.setRack(1);
    form.keepNumber(QStringLiteral("bottom"), 8);
    form.setRack(0);
    QCOMPARE(form.spec(QStringLiteral("bottom"))->text, QStringLiteral("76.5"));
    QCOMPARE(form.spec(QStringLiteral("bottom"))->hint, QStringLiteral("hole 8 of rack: 41.5 + 7 × 5 = 76.5 cm"));
    form.keepNumber(QStringLiteral("bottom"), 77);
    QVERIFY(!m_service->desk().marks().holes.bottom);
    form.setRack(1);
    QVERIFY(!form.spec(QStringLiteral("bottom"))->shown);
    // the height stands as it is, and the keypad says so
    QCOMPARE(form.spec(QStringLiteral("bottom"))->text, QStringLiteral("77 cm"));
    QCOMPARE(form.spec(QStringLiteral("bottom"))->hint, QStringLiteral("by tape, no hole"));
    QCOMPARE(formcheck::shown(*form.fields(), 0, "value").toString(), QStringLiteral("77 cm"));
}

void ToolChoicesTest::noSuchHole()
{
    MarksEditor form;
    form.setDeskService(m_service);
    form.setRack(1);
    const KeepOutcome outcome = form.keepNumber(QStringLiteral("bottom"), 29);
    QVERIFY(!outcome.kept());
    QVERIFY2(outcome.refusal.contains(QStringLiteral("28 holes")), qPrintable(outcome.refusal));
    QVERIFY(!m_service->desk().marks().bottom);
}

void ToolChoicesTest::whatIsOutOfUseOrLentIsOfferedNowhere_data()
{
    QTest::addColumn<bool>("lent");
    QTest::newRow("out of use") << false;
    QTest::newRow("lent") << true;
}

void ToolChoicesTest::whatIsOutOfUseOrLentIsOfferedNowhere()
{
    QFETCH(bool, lent);
    m_service->desk().hang(samples::hung(1, samples::chainOn(0.3)));
    m_service->desk().hang(samples::hung(7, samples::bandAt(0)));
    ChainEditor chain;
    chain.setDeskService(m_service);
    ScaleChoice scale;
    scale.setForm(&chain);
    WeighedIronView iron;
    iron.setDesk(m_service);
    HangEditor chainHung, bandHung;
    chainHung.setDeskService(m_service);
    chainHung.setRow(0);
    bandHung.setDeskService(m_service);
    bandHung.setRow(1);
    HangChoice strap, anchor;
    strap.setForm(&chainHung);
    anchor.setForm(&bandHung);
    MarksEditor marks;
    marks.setDeskService(m_service);
    QVERIFY(!scale.names().isEmpty() && !iron.bars().isEmpty() && iron.plates()->rowCount() == 1);
    QVERIFY(!strap.names().isEmpty() && !anchor.names().isEmpty() && !marks.racks().isEmpty());
    auto kit = m_service->desk().kit();
    for (KitItem& item : kit) {
        if (lent)
            item.lent = OnLoan{"the rowers"};
        else
            item.inspection = Inspection{KitFault::Other, {}, {}};
    }
    m_service->desk().setKit(kit);
    QVERIFY(scale.names().isEmpty() && iron.bars().isEmpty() && iron.plates()->rowCount() == 0);
    QVERIFY(strap.names().isEmpty() && anchor.names().isEmpty() && marks.racks().isEmpty());
}

void ToolChoicesTest::takenIronThatIsGoneCanBeGivenBack()
{
    WeighedIronView iron;
    iron.setDesk(m_service);
    iron.setBar(1);
    iron.takePlates(0);
    auto kit = m_service->desk().kit();
    kit[2].inspection = Inspection{KitFault::Crack, {}, {}};
    kit[3].lent = OnLoan{"the rowers"};
    m_service->desk().setKit(kit);
    QVERIFY(m_service->desk().answer().readiness == Readiness::NotToBeUsed || !m_service->desk().answer().path);
    QCOMPARE(iron.bars(), QStringList{"as keyed"});
    QCOMPARE(iron.bar(), -1);
    iron.setBar(0);
    QVERIFY(!m_service->desk().setup().bar.barWeighed);
    QVERIFY(iron.bars().isEmpty());
    QCOMPARE(iron.plates()->rowCount(), 1);
    QVERIFY(formcheck::shown(*iron.plates(), 0, "how").toString().contains(QStringLiteral("not to be used")));
    iron.takePlates(0);
    QCOMPARE(iron.plates()->rowCount(), 0);
    QVERIFY(!isTaken(m_service->desk().setup().bar, samples::numbered(4)));
}

QTEST_GUILESS_MAIN(ToolChoicesTest)
#include "test_toolchoices.moc"
