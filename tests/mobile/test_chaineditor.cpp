// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/editors/chaineditor.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// A chain, weighed or gauged, from the first key to the kit.
class ChainEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void everyKeyComesBack();
    void limitsCanBeKeyed();
    void unknownKeys();
    void nothingMayBeLeftOut();
    void troubleNamesWhatIsMissing();
    void weighedAndGaugedKeepTheirNumbers();
    void answerIsRounded();
    void nameComesFromTheEntries();
    void ownNameStays();
    void draftWaitsUntilKept();
    void thrownDraftLeavesWhatWasKept();
    void keptAgain();
    void removed();
    void idsComeFromTheDesk();
    void noIdIsANewOne();

private:
    void keepWeighed();

    DeskService* m_service = nullptr;
    ChainEditor* m_form = nullptr;
};

void ChainEditorTest::init()
{
    m_service = new DeskService(this);
    m_form = new ChainEditor(this);
    m_form->setDeskService(m_service);
}

void ChainEditorTest::cleanup()
{
    delete m_form;
    delete m_service;
}

void ChainEditorTest::keepWeighed()
{
    for (const auto& [key, number] : {std::pair("length", 150.0), {"mass", 8.55}, {"scaleStep", 0.1}})
        QVERIFY(m_form->keepNumber(QString::fromLatin1(key), number).kept());
}

void ChainEditorTest::everyKeyComesBack()
{
    QCOMPARE(formcheck::keepEveryKey(*m_form), QStringList());
    m_form->setGauged(true);
    QCOMPARE(formcheck::keepEveryKey(*m_form), QStringList());
}

void ChainEditorTest::limitsCanBeKeyed()
{
    QCOMPARE(formcheck::limitsOfEveryKey(*m_form), QStringList());
    m_form->setGauged(true);
    QCOMPARE(formcheck::limitsOfEveryKey(*m_form), QStringList());
}

void ChainEditorTest::unknownKeys()
{
    QVERIFY(!m_form->keepNumber(QStringLiteral("links"), 20).kept());
    QVERIFY(!m_form->keepNumber(QString(), 20).kept());
    QVERIFY(!m_form->isDrafted());
}

void ChainEditorTest::nothingMayBeLeftOut()
{
    keepWeighed();
    for (const FieldSpec& spec : m_form->specs()) {
        QVERIFY(spec.needed);
        QVERIFY(!m_form->canClear(spec.key));
        QVERIFY(!m_form->clearNumber(spec.key));
    }
}

void ChainEditorTest::troubleNamesWhatIsMissing()
{
    QCOMPARE(m_form->trouble(), QStringLiteral("Still to enter: length."));
    QVERIFY(!m_form->canKeep());
    QVERIFY(m_form->keep().isEmpty());
    QCOMPARE(m_form->nextMissing(QStringLiteral("length")), QStringLiteral("mass"));
    m_form->keepNumber(QStringLiteral("length"), 150);
    QCOMPARE(m_form->trouble(), QStringLiteral("Still to enter: mass."));
    m_form->keepNumber(QStringLiteral("mass"), 8.55);
    QCOMPARE(m_form->trouble(), QStringLiteral("Still to enter: step of the scale."));
    m_form->keepNumber(QStringLiteral("scaleStep"), 0.1);
    QCOMPARE(m_form->trouble(), QString());
    QVERIFY(m_form->canKeep());
    m_form->setGauged(true);
    QCOMPARE(m_form->trouble(), QStringLiteral("Still to enter: wire."));
    m_form->keepNumber(QStringLiteral("wire"), 16);
    QCOMPARE(m_form->trouble(), QStringLiteral("Still to enter: pitch."));
    m_form->keepNumber(QStringLiteral("pitch"), 10);
    m_form->keepNumber(QStringLiteral("innerWidth"), 21.6);
    QCOMPARE(m_form->trouble(), QStringLiteral("This cannot be right: pitch. Enter it again."));
    QVERIFY(!m_form->canKeep());
}

void ChainEditorTest::weighedAndGaugedKeepTheirNumbers()
{
    keepWeighed();
    m_form->setGauged(true);
    QVERIFY(m_form->isGauged());
    QVERIFY(!m_form->spec(QStringLiteral("mass")));
    m_form->keepNumber(QStringLiteral("wire"), 16);
    m_form->setGauged(false);
    QCOMPARE(m_form->spec(QStringLiteral("mass"))->shown.value_or(0), 8.55);
    m_form->setGauged(true);
    QCOMPARE(m_form->spec(QStringLiteral("wire"))->shown.value_or(0), 16.0);
    QCOMPARE(m_form->spec(QStringLiteral("length"))->shown.value_or(0), 150.0);
}

void ChainEditorTest::answerIsRounded()
{
    QCOMPARE(m_form->answer(), QStringLiteral("Mass per metre: not known yet"));
    keepWeighed();
    // u = 0.1/√12/1.5 = 0.0192 kg/m, times 1.96
    QCOMPARE(m_form->answer(), QStringLiteral("5.70 ± 0.04 kg a metre"));
    m_form->setGauged(true);
    for (const auto& [key, number] : {std::pair("wire", 16.0), {"pitch", 45.0}, {"innerWidth", 21.6}})
        m_form->keepNumber(QString::fromLatin1(key), number);
    QCOMPARE(m_form->answer(), QStringLiteral("5.8 ± 0.3 kg a metre"));
}

void ChainEditorTest::nameComesFromTheEntries()
{
    QCOMPARE(m_form->name(), QStringLiteral("Chain"));
    keepWeighed();
    QCOMPARE(m_form->name(), QStringLiteral("Chain, 150 cm"));
    m_form->setGauged(true);
    m_form->keepNumber(QStringLiteral("wire"), 16);
    QCOMPARE(m_form->name(), QStringLiteral("Chain, 16 mm, 150 cm"));
    m_form->setGauged(false);
    const QString id = m_form->keep();
    QVERIFY(!id.isEmpty());
    QCOMPARE(QString::fromStdString(m_service->desk().item(*RecordId::fromHex(id.toStdString()))->name), QStringLiteral("Chain, 150 cm"));
}

void ChainEditorTest::ownNameStays()
{
    m_form->setName(QStringLiteral("  Long one "));
    QCOMPARE(m_form->name(), QStringLiteral("Long one"));
    keepWeighed();
    QCOMPARE(m_form->name(), QStringLiteral("Long one"));
    m_form->setName(QStringLiteral("   "));
    QCOMPARE(m_form->name(), QStringLiteral("Chain, 150 cm"));
}

void ChainEditorTest::draftWaitsUntilKept()
{
    keepWeighed();
    m_form->setPair(false);
    QVERIFY(m_form->isDrafted());
    QVERIFY(m_service->desk().kit().empty());
    // another form of the same kind finds it again
    ChainEditor later;
    later.setDeskService(m_service);
    QCOMPARE(later.spec(QStringLiteral("mass"))->shown.value_or(0), 8.55);
    QVERIFY(!later.isPair());

    QSignalSpy moved(m_form, &ItemEditor::itemIdChanged);
    const QString id = m_form->keep();
    QCOMPARE(moved.count(), 1);
    QCOMPARE(m_form->itemId(), id);
    QVERIFY(!m_form->isDrafted());
    QCOMPARE(m_service->desk().kit().size(), std::size_t(1));
    QVERIFY(!m_service->desk().kit().front().pair);
    QCOMPARE(m_form->spec(QStringLiteral("mass"))->shown.value_or(0), 8.55);
}

void ChainEditorTest::thrownDraftLeavesWhatWasKept()
{
    keepWeighed();
    m_form->keep();
    m_form->keepNumber(QStringLiteral("mass"), 9);
    QVERIFY(m_form->isDrafted());
    m_form->throwDraft();
    QVERIFY(!m_form->isDrafted());
    QCOMPARE(m_form->spec(QStringLiteral("mass"))->shown.value_or(0), 8.55);
}

void ChainEditorTest::keptAgain()
{
    keepWeighed();
    const QString id = m_form->keep();
    m_form->keepNumber(QStringLiteral("mass"), 9);
    QCOMPARE(m_form->keep(), id);
    QCOMPARE(m_service->desk().kit().size(), std::size_t(1));
    const auto& measured = std::get<ChainMeasurement>(m_service->desk().kit().front().measurement);
    QCOMPARE(measured.mass->si(), 9.0);
    // a number that stands already changes nothing
    m_form->keepNumber(QStringLiteral("mass"), 9);
    QVERIFY(!m_form->isDrafted());
}

void ChainEditorTest::removed()
{
    keepWeighed();
    const QString id = m_form->keep();
    m_service->desk().hang({*RecordId::fromHex(id.toStdString()), HungOn::BothSides, ChainPlacing{}});
    m_form->remove();
    QVERIFY(m_service->desk().kit().empty());
    QVERIFY(m_service->desk().setup().hung.empty());
}

void ChainEditorTest::idsComeFromTheDesk()
{
    DeskService counted(samples::counted(41));
    m_form->setDeskService(&counted);
    keepWeighed();
    QCOMPARE(m_form->keep(), QStringLiteral("0000000000000000000000000000002a"));
    // the system's are not alike
    QStringList ids;
    for (int i = 0; i < 3; ++i) {
        DeskService service;
        m_form->setDeskService(&service);
        m_form->setItemId({});
        keepWeighed();
        ids << m_form->keep();
        QCOMPARE(ids.back().size(), 32);
        // before the desk goes
        m_form->setDeskService(m_service);
    }
    QCOMPARE(ids.removeDuplicates(), 0);
}

void ChainEditorTest::noIdIsANewOne()
{
    keepWeighed();
    const QString id = m_form->keep();
    QSignalSpy moved(m_form, &ItemEditor::itemIdChanged);
    m_form->setItemId(id.toUpper());
    QCOMPARE(moved.count(), 0);
    for (const char* other : {"7", "no id at all", "00000000000000000000000000000000"}) {
        m_form->setItemId(QLatin1String(other));
        QVERIFY(m_form->itemId().isEmpty());
    }
    QCOMPARE(moved.count(), 1);
}

QTEST_GUILESS_MAIN(ChainEditorTest)
#include "test_chaineditor.moc"
