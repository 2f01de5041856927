// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/measuring/kitcomparison.h"
#include "mobile/measuring/measurewhat.h"
#include "mobile/readings/aidguide.h"
#include "mobile/readings/machineguide.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QtTest>
#endif

using namespace steelyard;

namespace {

/// Keeps a number under the key at hand and goes on.
void key(MeasureGuide& guide, double number)
{
    QVERIFY2(guide.form()->keepNumber(guide.key(), number).kept(), qPrintable(guide.key()));
    guide.next();
}

}

/// A bench aid and a cam machine in steps: which number comes next, where to read, back and on again, and where it ends.
class ReadingGuidesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void aidAsksTheEndsFirst();
    void aidEndsWhenItIsEnough();
    void aidGoesOnWhereItWas();
    void aidBackTakesNothingAway();
    void aidOddReadAgainOrLeftOut();
    void aidEndedEarlySaysWhatIsNotKnown();
    void aidMeasuredAgainStartsEmpty();
    void machineByRadiusToItsEnd();
    void machineByPullAsksStackAndStepFirst();
    void machineGoesOnWhereItWas();
    void everyStepHasItsWords();
    void othersToCompareWith();
    void whatThereIsToMeasure();

private:
    void readAid();

    DeskService* m_desk = nullptr;
    AidEditor* m_aidForm = nullptr;
    MachineEditor* m_machineForm = nullptr;
    AidGuide* m_aid = nullptr;
    MachineGuide* m_machine = nullptr;
};

void ReadingGuidesTest::init()
{
    m_desk = new DeskService(this);
    m_aidForm = new AidEditor(m_desk);
    m_machineForm = new MachineEditor(m_desk);
    m_aidForm->setDeskService(m_desk);
    m_machineForm->setDeskService(m_desk);
    m_aid = new AidGuide(m_desk);
    m_machine = new MachineGuide(m_desk);
    m_aid->setForm(m_aidForm);
    m_machine->setForm(m_machineForm);
}

void ReadingGuidesTest::cleanup()
{
    delete m_desk;
}

/// Four on a straight line, which is enough.
void ReadingGuidesTest::readAid()
{
    m_aid->next();
    for (const double number : {0.0, 30.0, 60.0, 0.0, 40.0, 10.0, 20.0, 20.0})
        key(*m_aid, number);
}

void ReadingGuidesTest::aidAsksTheEndsFirst()
{
    QVERIFY(m_aid->page() == MeasureGuide::Page::Begin && !m_aid->back());
    m_aid->next();
    QCOMPARE(m_aid->key(), QStringLiteral("mass:0"));
    QVERIFY(m_aid->advice().head.contains("begins to help") && m_aid->isBare());
    key(*m_aid, 0);
    QCOMPARE(m_aid->key(), QStringLiteral("height:0"));
    QVERIFY(m_aid->isBare());
    QCOMPARE(m_aid->advice().head, QString());
    key(*m_aid, 30);
    QVERIFY(m_aid->advice().head.contains("down to the chest") && !m_aid->isBare());
    key(*m_aid, 60);
    key(*m_aid, 0);
    QCOMPARE(m_aid->advice().head, QStringLiteral("About 30 kg, to rest at 15 cm"));
    QVERIFY2(m_aid->advice().body.contains("least sure"), qPrintable(m_aid->advice().body));
    QVERIFY(!m_aid->advice().enough);
}

void ReadingGuidesTest::aidEndsWhenItIsEnough()
{
    readAid();
    QVERIFY(m_aid->page() == MeasureGuide::Page::Result);
    QCOMPARE(m_aid->heading(), QStringLiteral("Measure a bench aid"));
    QCOMPARE(m_aid->progress(), QStringLiteral("readings: 4"));
    QVERIFY(m_aid->gain().contains("Enough"));
    m_aid->next();
    QVERIFY(m_aid->page() == MeasureGuide::Page::Result);
    m_aid->more();
    QCOMPARE(m_aid->key(), QStringLiteral("mass:4"));
    QCOMPARE(m_aid->advice().head, QStringLiteral("Good enough as it is"));
    m_aid->enough();
    QCOMPARE(m_aidForm->count(), 4);
    QVERIFY(!m_aidForm->keep().isEmpty());
}

void ReadingGuidesTest::aidGoesOnWhereItWas()
{
    m_aid->next();
    key(*m_aid, 0);
    key(*m_aid, 30);
    key(*m_aid, 60);
    AidGuide later;
    later.setForm(m_aidForm);
    QCOMPARE(later.key(), QStringLiteral("height:1"));
    m_aidForm->throwDraft();
    later.resume();
    QVERIFY(later.page() == MeasureGuide::Page::Begin);
}

void ReadingGuidesTest::aidBackTakesNothingAway()
{
    readAid();
    QVERIFY(m_aid->back());
    QStringList seen{m_aid->key()};
    while (m_aid->back() && m_aid->page() == MeasureGuide::Page::Number)
        seen << m_aid->key();
    QCOMPARE(seen, (QStringList{"height:3", "mass:3", "height:2", "mass:2", "height:1", "mass:1", "height:0", "mass:0"}));
    for (int i = 0; i < 9; ++i)
        m_aid->next();
    QVERIFY(m_aid->page() == MeasureGuide::Page::Result);
    QCOMPARE(m_aidForm->count(), 4);
}

void ReadingGuidesTest::aidOddReadAgainOrLeftOut()
{
    m_aid->next();
    for (const double number : {0.0, 30.0, 60.0, 0.0, 20.0, 20.0, 4.0, 10.0})
        key(*m_aid, number);
    QVERIFY2(m_aid->advice().odd.contains("Reading 4"), qPrintable(m_aid->advice().odd));
    QVERIFY(!m_aid->advice().enough);
    m_aid->readAgain();
    QCOMPARE(m_aid->key(), QStringLiteral("height:3"));
    key(*m_aid, 28);
    QCOMPARE(m_aid->advice().odd, QString());
    QVERIFY(m_aidForm->keepNumber(QStringLiteral("height:3"), 10).kept());
    m_aid->leaveOut();
    QCOMPARE(m_aid->advice().odd, QString());
    QVERIFY(m_aidForm->canKeep());
}

void ReadingGuidesTest::aidEndedEarlySaysWhatIsNotKnown()
{
    m_aid->next();
    for (const double number : {40.0, 5.0, 20.0, 15.0})
        key(*m_aid, number);
    m_aid->enough();
    QVERIFY2(m_aid->gain().contains("slack was not read"), qPrintable(m_aid->gain()));
    m_aid->more();
    key(*m_aid, 0);
    key(*m_aid, 30);
    m_aid->enough();
    QVERIFY2(m_aid->gain().contains("not read at the chest"), qPrintable(m_aid->gain()));
}

void ReadingGuidesTest::aidMeasuredAgainStartsEmpty()
{
    const RecordId id = m_desk->desk().keepItem(samples::item(RecordId{}, "Aid", samples::aid(), false));
    m_aidForm->setItemId(QString::fromStdString(id.hex()));
    QVERIFY(m_aid->page() == MeasureGuide::Page::Begin && m_aidForm->canKeep());
    m_aid->next();
    QVERIFY(!m_aidForm->canKeep());
    QCOMPARE(m_aid->key(), QStringLiteral("mass:0"));
    m_aidForm->throwDraft();
    QVERIFY(m_aidForm->canKeep());
}

void ReadingGuidesTest::machineByRadiusToItsEnd()
{
    m_machine->choose(false);
    QCOMPARE(m_machine->key(), QStringLiteral("stack"));
    key(*m_machine, 40);
    QVERIFY(m_machine->advice().head.contains("at the start"));
    for (const double number : {0.0, 8.1})
        key(*m_machine, number);
    QVERIFY(m_machine->advice().head.contains("to the end"));
    for (const double number : {120.0, 8.8})
        key(*m_machine, number);
    QCOMPARE(m_machine->advice().head, QStringLiteral("Go for about 60°"));
    for (const double number : {60.0, 12.3, 30.0, 10.6, 90.0, 11.2})
        key(*m_machine, number);
    QVERIFY(m_machine->page() == MeasureGuide::Page::Result);
    QVERIFY2(m_machineForm->answer().contains("N·m at 60°"), qPrintable(m_machineForm->answer()));
    QVERIFY(!m_machineForm->keep().isEmpty());
}

void ReadingGuidesTest::machineByPullAsksStackAndStepFirst()
{
    m_machine->choose(true);
    QStringList asked;
    for (const double number : {40.0, 0.5, 0.0, 31.5, 50.0, 30.5}) {
        asked << m_machine->key();
        key(*m_machine, number);
    }
    QCOMPARE(asked, (QStringList{"stack", "scaleStep", "travel:0", "pull:0", "travel:1", "pull:1"}));
    QCOMPARE(m_machine->advice().head, QStringLiteral("Go for about 25 cm"));
    m_machine->enough();
    QVERIFY(m_machineForm->canKeep());
    QVERIFY2(m_machine->gain().contains("about 25 cm"), qPrintable(m_machine->gain()));
}

void ReadingGuidesTest::machineGoesOnWhereItWas()
{
    m_machine->choose(true);
    key(*m_machine, 40);
    MachineGuide later;
    later.setForm(m_machineForm);
    QCOMPARE(later.key(), QStringLiteral("scaleStep"));
    QVERIFY(later.back());
    QCOMPARE(later.key(), QStringLiteral("stack"));
    QVERIFY(later.back());
    QVERIFY(later.page() == MeasureGuide::Page::Begin && !later.back());
}

void ReadingGuidesTest::everyStepHasItsWords()
{
    const auto said = [](const MeasureGuide& guide) { return !guide.heading().isEmpty() && !guide.progress().isEmpty() && !guide.how().isEmpty(); };
    m_aid->next();
    QVERIFY(said(*m_aid));
    key(*m_aid, 0);
    QVERIFY(said(*m_aid));
    for (const bool byPull : {false, true}) {
        m_machineForm->throwDraft();
        m_machine->resume();
        QVERIFY(!m_machine->heading().isEmpty() && !m_machine->progress().isEmpty());
        m_machine->choose(byPull);
        QStringList headings;
        for (const double number : {40.0, 0.5, 1.0, 2.0}) {
            if (m_machine->key().startsWith(QLatin1String("angle:1")))
                break;
            QVERIFY2(said(*m_machine), qPrintable(m_machine->key()));
            QVERIFY2(!headings.contains(m_machine->heading()), qPrintable(m_machine->heading()));
            headings << m_machine->heading();
            key(*m_machine, number);
        }
    }
}

void ReadingGuidesTest::othersToCompareWith()
{
    m_desk->desk().keepItem(samples::item(RecordId{}, "Stiff aid", samples::aid(), false));
    m_desk->desk().keepItem(samples::item(RecordId{}, "Curl", MachineMeasurement{}, false));
    readAid();
    KitComparison comparison;
    comparison.setForm(m_aidForm);
    QCOMPARE(comparison.names(), QStringList{"Stiff aid"});
    comparison.setChosen(0);
    QVERIFY2(comparison.text().contains("Too close to call"), qPrintable(comparison.text()));
    QVERIFY(m_aidForm->keepNumber(QStringLiteral("mass:1"), 250).kept());
    QVERIFY2(comparison.text().contains("more than Stiff aid at the chest"), qPrintable(comparison.text()));
    comparison.setForm(m_machineForm);
    QCOMPARE(comparison.names(), QStringList());
}

void ReadingGuidesTest::whatThereIsToMeasure()
{
    MeasureWhat what;
    what.setDesk(m_desk);
    QVERIFY(what.kinds()->rowCount() >= 2);
    QCOMPARE(formcheck::shown(*what.kinds(), 2, "kind"), QVariant(QStringLiteral("aid")));
    QVERIFY(!formcheck::shown(*what.kinds(), 0, "takes").toString().isEmpty());
    QCOMPARE(what.begun(), QString());
    m_machine->choose(true);
    what.refresh();
    QCOMPARE(formcheck::shown(*what.kinds(), 0, "begun"), QVariant(QString()));
    QCOMPARE(formcheck::shown(*what.kinds(), 3, "begun"), QVariant(QStringLiteral("begun, not kept")));
    QCOMPARE(what.begun(), QStringLiteral("begun, not kept"));
}

QTEST_GUILESS_MAIN(ReadingGuidesTest)
#include "test_readingguides.moc"
