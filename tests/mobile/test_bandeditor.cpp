// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/editors/bandeditor.h"

#include "core/work/measuredkit.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QtTest>
#endif

using namespace steelyard;

/// A band, hung with plates until its fit is good.
class BandEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void everyKeyComesBack();
    void limitsCanBeKeyed();
    void unknownKeys_data();
    void unknownKeys();
    void loadedIsLongerThanAtRest();
    void hangingsComeAndGo();
    void readAgainItCounts();
    void troubleNamesWhatIsMissing();
    void answerIsOfTheLongestReading();
    void modelsByNumber();
    void oddHangingIsSaid();
    void pictureIsTheFit();
    void pictureOfNothing();
    void keptBandIsAsMeasured();

private:
    void hang(const BandMeasurement& measurement);

    DeskService* m_service = nullptr;
    BandEditor* m_form = nullptr;
};

void BandEditorTest::init()
{
    m_service = new DeskService(this);
    m_form = new BandEditor(this);
    m_form->setDeskService(m_service);
}

void BandEditorTest::cleanup()
{
    delete m_form;
    delete m_service;
}

void BandEditorTest::hang(const BandMeasurement& measurement)
{
    QVERIFY(m_form->keepNumber(QStringLiteral("rest"), measurement.rest->si() * 100).kept());
    for (const BandHanging& h : measurement.hangings) {
        const QString mass = m_form->addHanging();
        QVERIFY(m_form->keepNumber(mass, h.mass->si()).kept());
        QVERIFY(m_form->keepNumber(QString(mass).replace(QStringLiteral("mass"), QStringLiteral("length")), h.length->si() * 100).kept());
    }
}

void BandEditorTest::everyKeyComesBack()
{
    m_form->addHanging();
    m_form->addHanging();
    QCOMPARE(m_form->specs().size(), std::size_t(5));
    QCOMPARE(formcheck::keepEveryKey(*m_form, {{QStringLiteral("rest"), 100.5}, {QStringLiteral("length:1"), 180.5}}), QStringList());
}

void BandEditorTest::limitsCanBeKeyed()
{
    m_form->addHanging();
    QCOMPARE(formcheck::limitsOfEveryKey(*m_form), QStringList());
}

void BandEditorTest::unknownKeys_data()
{
    QTest::addColumn<QString>("key");
    for (const char* key : {"", "pull", "mass", "mass:", "mass:x", "mass:-1", "mass:1", "length:", "length:0x0", "length:7", "width:0", "rest:0"})
        QTest::newRow(*key ? key : "none") << QString::fromLatin1(key);
}

void BandEditorTest::unknownKeys()
{
    QFETCH(QString, key);
    m_form->addHanging();
    const KitItem before = *m_service->desk().draft({}, ItemKind::Band);
    QVERIFY(!m_form->keepNumber(key, 50).kept());
    QVERIFY(!m_form->clearNumber(key));
    QVERIFY(*m_service->desk().draft({}, ItemKind::Band) == before);
}

void BandEditorTest::loadedIsLongerThanAtRest()
{
    m_form->keepNumber(QStringLiteral("rest"), 100);
    m_form->addHanging();
    for (const double cm : {99.0, 100.0}) {
        const KeepOutcome outcome = m_form->keepNumber(QStringLiteral("length:0"), cm);
        QVERIFY(!outcome.kept());
        QVERIFY2(outcome.refusal.contains(QStringLiteral("100 cm")), qPrintable(outcome.refusal));
    }
    QVERIFY(m_form->keepNumber(QStringLiteral("length:0"), 100.1).kept());
}

void BandEditorTest::hangingsComeAndGo()
{
    QCOMPARE(m_form->addHanging(), QStringLiteral("mass:0"));
    QCOMPARE(m_form->addHanging(), QStringLiteral("mass:1"));
    auto* list = m_form->hangings();
    QCOMPARE(list->rowCount(), 2);
    QCOMPARE(formcheck::shown(*list, 0, "mass").toString(), QStringLiteral("mass"));
    QCOMPARE(formcheck::shown(*list, 0, "length").toString(), QStringLiteral("length"));
    m_form->keepNumber(QStringLiteral("mass:1"), 7.5);
    m_form->keepNumber(QStringLiteral("length:1"), 124.5);
    QCOMPARE(formcheck::shown(*list, 1, "mass").toString(), QStringLiteral("7.5 kg"));
    QCOMPARE(formcheck::shown(*list, 1, "length").toString(), QStringLiteral("124.5 cm"));
    m_form->removeHanging(5);
    m_form->removeHanging(-1);
    QCOMPARE(list->rowCount(), 2);
    m_form->removeHanging(0);
    QCOMPARE(list->rowCount(), 1);
    QCOMPARE(formcheck::shown(*list, 0, "mass").toString(), QStringLiteral("7.5 kg"));
    QCOMPARE(m_form->spec(QStringLiteral("mass:0"))->shown.value_or(0), 7.5);
}

void BandEditorTest::readAgainItCounts()
{
    hang(samples::band());
    m_form->setLeftOut(2, true);
    m_form->setLeftOut(-1, true);
    m_form->setLeftOut(6, true);
    auto* list = m_form->hangings();
    QVERIFY(formcheck::shown(*list, 2, "leftOut").toBool());
    QCOMPARE(formcheck::shown(*list, 2, "note").toString(), QStringLiteral("left out"));
    m_form->keepNumber(QStringLiteral("length:2"), 137.5);
    QVERIFY(!formcheck::shown(*list, 2, "leftOut").toBool());
    m_form->setLeftOut(2, true);
    m_form->setLeftOut(2, false);
    QVERIFY(formcheck::shown(*list, 2, "note").toString().isEmpty());
}

void BandEditorTest::troubleNamesWhatIsMissing()
{
    QCOMPARE(m_form->trouble(), QStringLiteral("Still to enter: length at rest."));
    QCOMPARE(m_form->answer(), QStringLiteral("Pull by length: not known yet"));
    QCOMPARE(m_form->modelText(), QString());
    QVERIFY(!m_form->canKeep());
    m_form->keepNumber(QStringLiteral("rest"), 100);
    QCOMPARE(m_form->trouble(), QStringLiteral("Still to enter: hangings."));
    m_form->addHanging();
    m_form->keepNumber(QStringLiteral("mass:0"), 5);
    m_form->keepNumber(QStringLiteral("length:0"), 115);
    QVERIFY2(m_form->trouble().contains(QStringLiteral("at least two")), qPrintable(m_form->trouble()));
    m_form->addHanging();
    m_form->keepNumber(QStringLiteral("mass:1"), 15);
    m_form->keepNumber(QStringLiteral("length:1"), 172);
    QCOMPARE(m_form->trouble(), QString());
    QVERIFY(m_form->canKeep());
    m_form->keepNumber(QStringLiteral("rest"), 120);
    QVERIFY2(m_form->trouble().contains(QStringLiteral("hanging 1")), qPrintable(m_form->trouble()));
    QVERIFY(!m_form->canKeep());
}

void BandEditorTest::answerIsOfTheLongestReading()
{
    hang(samples::band());
    m_form->setModel(3);
    // 17.506 kg and 1.1584 N/9.80665 by least squares and Student's t, see the tests of measured kit
    QCOMPARE(m_form->answer(), QStringLiteral("Pulls 17.51 ± 0.12 kg at 195 cm"));
}

void BandEditorTest::modelsByNumber()
{
    hang(samples::band());
    QCOMPARE(m_form->model(), 0);
    QVERIFY2(m_form->modelText().endsWith(QStringLiteral("which fits best.")), qPrintable(m_form->modelText()));
    for (int model = 1; model <= 3; ++model) {
        m_form->setModel(model);
        QCOMPARE(m_form->model(), model);
        QVERIFY2(m_form->modelText().endsWith(QStringLiteral("your choice.")), qPrintable(m_form->modelText()));
    }
    for (const int none : {0, 4, -1}) {
        m_form->setModel(2);
        m_form->setModel(none);
        QCOMPARE(m_form->model(), 0);
    }
    m_form->setLeftOut(0, true);
    m_form->setLeftOut(1, true);
    QVERIFY2(m_form->modelText().endsWith(QStringLiteral("until there are five of them.")), qPrintable(m_form->modelText()));
}

void BandEditorTest::oddHangingIsSaid()
{
    BandMeasurement m = samples::band();
    m.hangings[3].length = metres(1.40);
    hang(m);
    m_form->setModel(3);
    QVERIFY2(m_form->oddText().startsWith(QStringLiteral("Hanging 4 lies ")), qPrintable(m_form->oddText()));
    QVERIFY2(m_form->oddText().contains(QStringLiteral(" kg over the line of the others")), qPrintable(m_form->oddText()));
    auto* list = m_form->hangings();
    for (int row = 0; row < 6; ++row)
        QCOMPARE(formcheck::shown(*list, row, "odd").toBool(), row == 3);
    QCOMPARE(formcheck::shown(*list, 3, "note").toString(), QStringLiteral("odd"));
    m_form->setLeftOut(3, true);
    QVERIFY(m_form->oddText().isEmpty());
    QVERIFY(!formcheck::shown(*list, 3, "odd").toBool());
}

void BandEditorTest::pictureIsTheFit()
{
    hang(samples::band());
    m_form->setModel(3);
    m_form->setLeftOut(1, true);
    const auto fit = bandFitFrom(std::get<BandMeasurement>(m_service->desk().draft({}, ItemKind::Band)->measurement));
    const FitPicture p = m_form->picture();
    QCOMPARE(p.points.size(), 6);
    const QVariantMap second = p.points.at(1).toMap();
    QCOMPARE(second.value(QStringLiteral("x")).toDouble(), 7.5);
    QCOMPARE(second.value(QStringLiteral("y")).toDouble(), 124.5);
    QVERIFY(second.value(QStringLiteral("odd")).toBool());
    QCOMPARE(second.value(QStringLiteral("label")).toString(), QStringLiteral("2, left out"));
    QVERIFY(!p.points.at(0).toMap().value(QStringLiteral("odd")).toBool());
    QCOMPARE(p.fit.size(), p.low.size());
    QCOMPARE(p.fit.size(), p.high.size());
    QCOMPARE(p.measuredTo, 195.0);
    QCOMPARE(p.measuredText, QStringLiteral("measured up to 195 cm"));
    QCOMPARE(p.fit.first().y(), 100.0);
    QVERIFY(qFuzzyCompare(p.fit.last().y(), 1.05 * 195));
    for (int i = 0; i < p.fit.size(); ++i) {
        QVERIFY(std::abs(p.fit[i].x() - inKilograms(asMass(fit->pull(metres(p.fit[i].y() / 100))))) < 1e-9);
        QVERIFY(p.low[i].x() <= p.fit[i].x() && p.fit[i].x() <= p.high[i].x());
        QVERIFY(p.fit[i].y() >= p.lengthFrom && p.fit[i].y() <= p.lengthTo);
        QVERIFY(p.high[i].x() <= p.pullTo);
    }
}

void BandEditorTest::pictureOfNothing()
{
    QVERIFY(m_form->picture().fit.isEmpty());
    QVERIFY(m_form->picture().points.isEmpty());
    m_form->keepNumber(QStringLiteral("rest"), 100);
    m_form->addHanging();
    m_form->keepNumber(QStringLiteral("mass:0"), 5);
    m_form->keepNumber(QStringLiteral("length:0"), 115);
    const FitPicture p = m_form->picture();
    QCOMPARE(p.points.size(), 1);
    QVERIFY(p.fit.isEmpty());
    QVERIFY(p.lengthFrom < 100 && p.lengthTo > 115 && p.pullTo > 5);
}

void BandEditorTest::keptBandIsAsMeasured()
{
    hang(samples::band());
    m_form->setModel(3);
    QCOMPARE(m_form->name(), QStringLiteral("Band, 100 cm at rest"));
    const QString id = m_form->keep();
    QVERIFY(!id.isEmpty());
    const KitItem* kept = m_service->desk().item(*RecordId::fromHex(id.toStdString()));
    const auto& measured = std::get<BandMeasurement>(kept->measurement);
    const BandMeasurement expected = samples::band();
    QVERIFY(measured.model == expected.model);
    QCOMPARE(measured.hangings.size(), expected.hangings.size());
    for (std::size_t i = 0; i < expected.hangings.size(); ++i) {
        QCOMPARE(measured.hangings[i].mass->si(), expected.hangings[i].mass->si());
        QCOMPARE(measured.hangings[i].length->si(), expected.hangings[i].length->si());
    }
}

QTEST_GUILESS_MAIN(BandEditorTest)
#include "test_bandeditor.moc"
