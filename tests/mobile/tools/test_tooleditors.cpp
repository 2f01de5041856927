// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/putright/saidtexts.h"
#include "mobile/tools/ironeditor.h"
#include "mobile/tools/leadeditor.h"
#include "mobile/tools/rackeditor.h"
#include "mobile/tools/scaleeditor.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QtTest>
#endif

using namespace steelyard;

namespace {

void keepAll(FieldEditor& form, std::initializer_list<std::pair<const char*, double>> numbers)
{
    for (const auto& [key, number] : numbers)
        QVERIFY2(form.keepNumber(QLatin1String(key), number).kept(), key);
}

}

/// Scale, iron, strap and rack as forms: what is keyed stands, what it comes to is said, what is missing is named.
class ToolEditorsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void everyKeyComesBack();
    void limitsCanBeKeyed();
    void unknownKeys();
    void scaleSaysHowGoodItIs();
    void scaleUnderNothing();
    void scaleReadingsComeAndGo();
    void ironAgainstItsMark();
    void anotherScaleHasNoAccuracy();
    void aBarByItsEnds();
    void leadNeedsNoMore();
    void rackWithHoles();
    void rackWithPlacesForBandsOnly();
    void whatIsMissingIsNamed();
    void onlyStrapsArePairs();
    void keptUnderTheirOwnNames();

private:
    DeskService* m_desk = nullptr;
    ScaleEditor* m_scale = nullptr;
    IronEditor* m_iron = nullptr;
    LeadEditor* m_lead = nullptr;
    RackEditor* m_rack = nullptr;
};

void ToolEditorsTest::init()
{
    m_desk = new DeskService(this);
    m_scale = new ScaleEditor(m_desk);
    m_iron = new IronEditor(m_desk);
    m_lead = new LeadEditor(m_desk);
    m_rack = new RackEditor(m_desk);
    for (ToolEditor* form : {static_cast<ToolEditor*>(m_scale), static_cast<ToolEditor*>(m_iron), static_cast<ToolEditor*>(m_lead), static_cast<ToolEditor*>(m_rack)})
        form->setDeskService(m_desk);
}

void ToolEditorsTest::cleanup()
{
    delete m_desk;
}

void ToolEditorsTest::everyKeyComesBack()
{
    m_scale->addEntry();
    m_iron->setChoice(1);
    const QHash<QString, double> whole{{QStringLiteral("count"), 4}};
    for (FieldEditor* form : {static_cast<FieldEditor*>(m_scale), static_cast<FieldEditor*>(m_iron), static_cast<FieldEditor*>(m_lead), static_cast<FieldEditor*>(m_rack)})
        QCOMPARE(formcheck::keepEveryKey(*form, whole), QStringList());
}

void ToolEditorsTest::limitsCanBeKeyed()
{
    m_scale->addEntry();
    m_iron->setChoice(1);
    for (FieldEditor* form : {static_cast<FieldEditor*>(m_scale), static_cast<FieldEditor*>(m_iron), static_cast<FieldEditor*>(m_lead), static_cast<FieldEditor*>(m_rack)})
        QCOMPARE(formcheck::limitsOfEveryKey(*form), QStringList());
}

void ToolEditorsTest::unknownKeys()
{
    for (FieldEditor* form : {static_cast<FieldEditor*>(m_scale), static_cast<FieldEditor*>(m_iron), static_cast<FieldEditor*>(m_lead), static_cast<FieldEditor*>(m_rack)})
        for (const char* key : {"", "known:", "known:9", "read:x", "anchor:7", "nothing"}) {
            QVERIFY2(!form->keepNumber(QLatin1String(key), 1).kept(), key);
            QVERIFY2(!form->clearNumber(QLatin1String(key)), key);
        }
}

void ToolEditorsTest::scaleSaysHowGoodItIs()
{
    QCOMPARE(m_scale->addEntry(), QStringLiteral("known:0"));
    keepAll(*m_scale, {{"empty", 0.2}, {"step", 0.1}, {"known:0", 20}, {"read:0", 20.3}});
    // 20.3 − 0.2 − 20 = 0.1: a step, and more than half of one
    QCOMPARE(m_scale->answer(), QStringLiteral("Good: within 0.1 kg up to 20 kg"));
    QVERIFY2(m_scale->verdict().contains(QStringLiteral("0.2 kg with nothing on it")), qPrintable(m_scale->verdict()));
    QVERIFY2(m_scale->gain().contains(QStringLiteral("second mass")), qPrintable(m_scale->gain()));
    m_scale->keepNumber(QStringLiteral("read:0"), 19.6);
    QCOMPARE(m_scale->answer(), QStringLiteral("Not good: 0.6 kg too little at 20 kg"));
    QVERIFY2(m_scale->gain().contains(QStringLiteral("set right")), qPrintable(m_scale->gain()));
    QCOMPARE(saidtexts::measured(m_scale->measured()), QStringLiteral("1 known mass, 20 kg"));
}

void ToolEditorsTest::scaleUnderNothing()
{
    QCOMPARE(m_scale->choice(), 0);
    m_scale->setChoice(1);
    QCOMPARE(m_scale->choice(), 1);
    keepAll(*m_scale, {{"empty", 0.2}});
    QCOMPARE(m_scale->measurement().empty->si(), -0.2);
    QCOMPARE(m_scale->spec(QStringLiteral("empty"))->text, QStringLiteral("0.2"));
    m_scale->setChoice(0);
    QCOMPARE(m_scale->measurement().empty->si(), 0.2);
    QCOMPARE(m_scale->choice(), 0);
}

void ToolEditorsTest::scaleReadingsComeAndGo()
{
    for (std::size_t i = 0; i < ScaleEditor::mostReadings; ++i)
        QCOMPARE(m_scale->addEntry(), QStringLiteral("known:%1").arg(i));
    QVERIFY(m_scale->addEntry().isEmpty());
    QVERIFY(m_scale->words().more.isEmpty());
    keepAll(*m_scale, {{"known:0", 5}, {"read:0", 5}, {"known:1", 10}, {"read:1", 10}});
    QVERIFY(m_scale->canClear(QStringLiteral("read:0")) && !m_scale->canClear(QStringLiteral("empty")));
    QVERIFY(m_scale->clearNumber(QStringLiteral("read:0")));
    QCOMPARE(m_scale->measurement().readings.size(), ScaleEditor::mostReadings - 1);
    QCOMPARE(m_scale->measurement().readings[0].known->si(), 10.0);
}

void ToolEditorsTest::ironAgainstItsMark()
{
    m_iron->setChoice(1);
    keepAll(*m_iron, {{"marked", 20}, {"count", 2}, {"read", 40.6}, {"step", 0.1}});
    // 1.96 · 0.1/√12 / 2 = 0.0283
    QCOMPARE(m_iron->answer(), QStringLiteral("Each weighs 20.30 ± 0.03 kg"));
    QCOMPARE(m_iron->verdict(), QStringLiteral("0.3 kg more than its mark, by 1.5 %: more than the scale's step explains; the scale itself is not checked."));
    m_iron->weighOn({kilograms(0.1), kilograms(0.1), {}});
    QCOMPARE(m_iron->verdict(), QStringLiteral("0.3 kg more than its mark, by 1.5 %: more than the scale can be wrong."));
    m_iron->keepNumber(QStringLiteral("step"), 0.1);
    QVERIFY2(m_iron->gain().contains(QStringLiteral("checked")), qPrintable(m_iron->gain()));
    m_iron->keepNumber(QStringLiteral("read"), 40.04);
    QVERIFY2(m_iron->verdict().contains(QStringLiteral("Too close to call")), qPrintable(m_iron->verdict()));
    QCOMPARE(saidtexts::measured(m_iron->measured()), QStringLiteral("40.04 kg for 2 marked 20 kg"));
    m_iron->setChoice(0);
    QCOMPARE(m_iron->measurement().count, 1);
    QVERIFY(!m_iron->spec(QStringLiteral("count")));
}

void ToolEditorsTest::anotherScaleHasNoAccuracy()
{
    keepAll(*m_iron, {{"marked", 20}, {"read", 20.3}});
    m_iron->weighOn({kilograms(0.1), kilograms(0.2), {}});
    QCOMPARE(m_iron->measurement().accuracy->si(), 0.2);
    QCOMPARE(m_iron->measurement().read->si(), 20.3);
    m_iron->keepNumber(QStringLiteral("step"), 0.1);
    QVERIFY(!m_iron->measurement().accuracy);
}

void ToolEditorsTest::aBarByItsEnds()
{
    m_iron->setChoice(2);
    QCOMPARE(m_iron->choice(), 2);
    QVERIFY(!m_iron->spec(QStringLiteral("read")) && !m_iron->spec(QStringLiteral("marked"))->needed);
    QCOMPARE(formcheck::limitsOfEveryKey(*m_iron), QStringList());
    keepAll(*m_iron, {{"first", 10.2}, {"second", 9.9}});
    QVERIFY(!m_iron->isMeasured());
    keepAll(*m_iron, {{"step", 0.1}});
    // 10.2 + 9.9, each within a step: √2 · 0.1/√12
    QVERIFY2(m_iron->answer().contains(QStringLiteral("20.1")), qPrintable(m_iron->answer()));
    QVERIFY(m_iron->isMeasured() && m_iron->verdict().isEmpty());
    for (const char* key : {"first", "second"})
        QVERIFY(!m_iron->question(QLatin1String(key)).isEmpty() && m_iron->how(QLatin1String(key)).contains(QStringLiteral("other end")));
    keepAll(*m_iron, {{"marked", 20}});
    QVERIFY(!m_iron->verdict().isEmpty());
    m_iron->setChoice(0);
    QVERIFY(!m_iron->measurement().ends && !m_iron->isMeasured());
    QVERIFY(!m_iron->keepNumber(QStringLiteral("first"), 10).kept());
}

void ToolEditorsTest::leadNeedsNoMore()
{
    keepAll(*m_lead, {{"length", 62}, {"mass", 0.35}});
    QCOMPARE(m_lead->answer(), QStringLiteral("62 cm, weighs 0.35 kg"));
    QCOMPARE(m_lead->name(), QStringLiteral("Lead, 62 cm"));
    QVERIFY(m_lead->trouble().isEmpty());
}

void ToolEditorsTest::rackWithHoles()
{
    keepAll(*m_rack, {{"lowest", 41.5}, {"spacing", 5}, {"count", 28}});
    QCOMPARE(m_rack->answer(), QStringLiteral("28 holes, 41.5 to 176.5 cm"));
    keepAll(*m_rack, {{"anchor:0", 214}, {"anchor:1", 6}});
    QCOMPARE(m_rack->answer(), QStringLiteral("28 holes, 41.5 to 176.5 cm · bands at 6 and 214 cm"));
    QVERIFY(m_rack->clearNumber(QStringLiteral("anchor:0")));
    QCOMPARE(m_rack->answer(), QStringLiteral("28 holes, 41.5 to 176.5 cm · bands at 6 cm"));
}

void ToolEditorsTest::rackWithPlacesForBandsOnly()
{
    m_rack->setChoice(1);
    QVERIFY(m_rack->spec(QStringLiteral("anchor:0"))->needed && !m_rack->spec(QStringLiteral("lowest")));
    keepAll(*m_rack, {{"anchor:0", 0}});
    QCOMPARE(m_rack->answer(), QStringLiteral("bands at 0 cm"));
    QCOMPARE(m_rack->choice(), 1);
    QVERIFY(m_rack->canKeep());
}

void ToolEditorsTest::whatIsMissingIsNamed()
{
    keepAll(*m_scale, {{"empty", 0}, {"step", 0.1}});
    QVERIFY2(m_scale->trouble().contains(QStringLiteral("known mass")), qPrintable(m_scale->trouble()));
    QVERIFY2(m_iron->trouble().contains(QStringLiteral("what is marked on it")), qPrintable(m_iron->trouble()));
    QVERIFY2(m_lead->trouble().contains(QStringLiteral("length")), qPrintable(m_lead->trouble()));
    QVERIFY2(m_rack->trouble().contains(QStringLiteral("height of the lowest hole")), qPrintable(m_rack->trouble()));
    for (ToolEditor* form : {static_cast<ToolEditor*>(m_scale), static_cast<ToolEditor*>(m_iron), static_cast<ToolEditor*>(m_lead), static_cast<ToolEditor*>(m_rack)})
        QVERIFY(!form->canKeep());
}

void ToolEditorsTest::onlyStrapsArePairs()
{
    QVERIFY(m_lead->mayBePair() && m_lead->isPair());
    for (ToolEditor* form : {static_cast<ToolEditor*>(m_scale), static_cast<ToolEditor*>(m_iron), static_cast<ToolEditor*>(m_rack)})
        QVERIFY(!form->mayBePair() && !form->isPair());
}

void ToolEditorsTest::keptUnderTheirOwnNames()
{
    m_scale->addEntry();
    keepAll(*m_scale, {{"empty", 0}, {"step", 0.1}, {"known:0", 20}, {"read:0", 20}});
    keepAll(*m_iron, {{"marked", 20}, {"read", 20.3}, {"step", 0.1}});
    keepAll(*m_rack, {{"lowest", 41.5}, {"spacing", 5}, {"count", 28}});
    for (ToolEditor* form : {static_cast<ToolEditor*>(m_scale), static_cast<ToolEditor*>(m_iron), static_cast<ToolEditor*>(m_rack)})
        QVERIFY(!form->keep().isEmpty());
    QStringList names;
    for (const KitItem& item : m_desk->desk().kit())
        names << QString::fromStdString(item.name);
    QCOMPARE(names, (QStringList{"Scale, steps of 0.1 kg", "Bar of 20 kg", "Rack, 28 holes"}));
}

QTEST_GUILESS_MAIN(ToolEditorsTest)
#include "test_tooleditors.moc"
