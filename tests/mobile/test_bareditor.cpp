// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/editors/bareditor.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QtTest>
#endif

using namespace steelyard;

/// The bar, its collars, its load and the plates that are here, as a form.
class BarEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void everyKeyComesBack();
    void limitsCanBeKeyed();
    void unknownKeys();
    void onlyTheSleeveIsLeftOut();
    void barIsFilledInUntilEntered();
    void loadThatCannotHangOffersItsNeighbours_data();
    void loadThatCannotHangOffersItsNeighbours();
    void newPlatesAreAPairMore();
    void trustIsKept();
    void stockRows();
    void pairsStep();
    void loadSteps();

private:
    DeskService* m_service = nullptr;
    BarEditor* m_form = nullptr;
};

void BarEditorTest::init()
{
    m_service = new DeskService(this);
    m_form = new BarEditor(this);
    m_form->setDeskService(m_service);
}

void BarEditorTest::cleanup()
{
    delete m_form;
    delete m_service;
}

void BarEditorTest::everyKeyComesBack()
{
    // plates added are no number that stands there, so their key shows none
    QStringList faults = formcheck::keepEveryKey(*m_form, {{QStringLiteral("bar"), 15}, {QStringLiteral("collars"), 0}, {QStringLiteral("load"), 60}});
    QCOMPARE(faults.size(), 1);
    QVERIFY2(faults.first().startsWith(QStringLiteral("newPlate came back as -1")), qPrintable(faults.first()));
}

void BarEditorTest::limitsCanBeKeyed()
{
    QCOMPARE(formcheck::limitsOfEveryKey(*m_form), QStringList());
}

void BarEditorTest::unknownKeys()
{
    const BarRecord before = m_service->desk().setup().bar;
    QVERIFY(!m_form->keepNumber(QStringLiteral("plates"), 20).kept());
    QVERIFY(!m_form->clearNumber(QStringLiteral("plates")));
    QVERIFY(m_service->desk().setup().bar == before);
}

void BarEditorTest::onlyTheSleeveIsLeftOut()
{
    QVERIFY(m_form->keepNumber(QStringLiteral("sleeve"), 41.5).kept());
    QCOMPARE(m_service->desk().setup().bar.sleeve->si(), 0.415);
    for (const FieldSpec& spec : m_form->specs())
        QCOMPARE(m_form->canClear(spec.key), spec.key == QStringLiteral("sleeve"));
    QVERIFY(m_form->clearNumber(QStringLiteral("sleeve")));
    QVERIFY(!m_service->desk().setup().bar.sleeve);
    QVERIFY(!m_form->clearNumber(QStringLiteral("bar")));
}

void BarEditorTest::barIsFilledInUntilEntered()
{
    const int row = formcheck::rowOf(*m_form, QStringLiteral("bar"));
    QVERIFY(formcheck::shown(*m_form->fields(), row, "filledIn").toBool());
    QVERIFY(m_form->keepNumber(QStringLiteral("bar"), 20).kept());
    QVERIFY(!formcheck::shown(*m_form->fields(), row, "filledIn").toBool());
    // what is only keyed has no row of its own
    QCOMPARE(formcheck::rowOf(*m_form, QStringLiteral("load")), -1);
    QCOMPARE(formcheck::rowOf(*m_form, QStringLiteral("newPlate")), -1);
}

void BarEditorTest::loadThatCannotHangOffersItsNeighbours_data()
{
    QTest::addColumn<double>("keyed");
    QTest::addColumn<QList<double>>("offers");
    QTest::newRow("can hang") << 102.5 << QList<double>();
    QTest::newRow("bare bar") << 20.0 << QList<double>();
    QTest::newRow("between two") << 108.5 << QList<double>{107.5, 110};
    QTest::newRow("nearer the upper") << 109.9 << QList<double>{107.5, 110};
    QTest::newRow("under the bar") << 15.0 << QList<double>{20};
    QTest::newRow("over all plates") << 300.0 << QList<double>{197.5};
}

void BarEditorTest::loadThatCannotHangOffersItsNeighbours()
{
    QFETCH(double, keyed);
    QFETCH(QList<double>, offers);
    const Mass before = m_service->desk().setup().bar.wanted;
    const KeepOutcome outcome = m_form->keepNumber(QStringLiteral("load"), keyed);
    QCOMPARE(QList<double>(outcome.offers.begin(), outcome.offers.end()), offers);
    QCOMPARE(outcome.kept(), offers.isEmpty());
    QCOMPARE(m_service->desk().setup().bar.wanted.si(), offers.isEmpty() ? keyed : before.si());
    if (!offers.isEmpty())
        QVERIFY2(outcome.refusal.contains(QStringLiteral("cannot be hung")), qPrintable(outcome.refusal));
}

void BarEditorTest::newPlatesAreAPairMore()
{
    const int before = m_form->stock()->rowCount();
    QVERIFY(m_form->keepNumber(QStringLiteral("newPlate"), 0.5).kept());
    QCOMPARE(m_form->stock()->rowCount(), before + 1);
    QVERIFY(m_form->keepNumber(QStringLiteral("load"), 21).kept());
    QVERIFY(m_form->keepNumber(QStringLiteral("newPlate"), 0.5).kept());
    QCOMPARE(m_form->stock()->rowCount(), before + 1);
    QVERIFY(m_form->keepNumber(QStringLiteral("load"), 22).kept());
}

void BarEditorTest::trustIsKept()
{
    QVERIFY(!m_form->asMarked());
    m_form->setAsMarked(true);
    QVERIFY(m_form->asMarked());
    QVERIFY(m_service->desk().setup().bar.trust == PlateTrust::AsMarked);
    m_form->setAsMarked(false);
    QVERIFY(m_service->desk().setup().bar.trust == PlateTrust::Unweighed);
}

void BarEditorTest::stockRows()
{
    const auto* list = m_form->stock();
    QCOMPARE(list->rowCount(), static_cast<int>(usualStock().size()));
    QCOMPARE(formcheck::shown(*list, 0, "label").toString(), QStringLiteral("25 kg"));
    QCOMPARE(formcheck::shown(*list, 6, "label").toString(), QStringLiteral("1.25 kg"));
    for (int row = 0; row < list->rowCount(); ++row) {
        const QString count = formcheck::shown(*list, row, "pairs").toString();
        QVERIFY2(count.contains(QRegularExpression(QStringLiteral("[0-9]"))) && !count.contains(QStringLiteral("(s)")), qPrintable(count));
        QVERIFY(formcheck::shown(*list, row, "canLess").toBool());
    }
}

void BarEditorTest::pairsStep()
{
    m_form->stepPairs(0, false);
    QCOMPARE(m_service->desk().setup().bar.stock[0].count, 0);
    QVERIFY(!formcheck::shown(*m_form->stock(), 0, "canLess").toBool());
    m_form->stepPairs(0, true);
    m_form->stepPairs(0, true);
    QCOMPARE(m_service->desk().setup().bar.stock[0].count, 4);
    const BarRecord before = m_service->desk().setup().bar;
    m_form->stepPairs(-1, true);
    m_form->stepPairs(50, true);
    QVERIFY(m_service->desk().setup().bar == before);
}

void BarEditorTest::loadSteps()
{
    m_form->stepLoad(true);
    QCOMPARE(m_form->spec(QStringLiteral("load"))->shown.value_or(0), 22.5);
    m_form->stepLoad(false);
    m_form->stepLoad(false);
    QCOMPARE(m_form->spec(QStringLiteral("load"))->shown.value_or(0), 20.0);
}

QTEST_GUILESS_MAIN(BarEditorTest)
#include "test_bareditor.moc"
