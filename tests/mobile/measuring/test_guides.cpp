// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/measuring/bandguide.h"
#include "mobile/measuring/chainguide.h"
#include "mobile/measuring/kitcomparison.h"

#include "tests/core/work/samples.h"

#include <QtTest>

#include <cmath>
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

/// Measuring in steps: which number comes next, back and on again, and where it ends.
class GuidesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void chainByWeight();
    void chainByItsLink();
    void chainGoesOnWhereItWas();
    void chainMeasuredAgainStartsEmpty();
    void bandAsksMassAndLengthInTurn();
    void bandEndsWhenGoodEnough();
    void bandBackTakesNoReadingAway();
    void bandOddReadAgain();
    void bandOnTheWayBack();
    void everyStepHasItsWords();
    void twinCompared();

private:
    void readBand(std::initializer_list<std::pair<double, double>> hangings);

    DeskService* m_desk = nullptr;
    ChainEditor* m_chainForm = nullptr;
    BandEditor* m_bandForm = nullptr;
    ChainGuide* m_chain = nullptr;
    BandGuide* m_band = nullptr;
};

void GuidesTest::init()
{
    m_desk = new DeskService(this);
    m_chainForm = new ChainEditor(m_desk);
    m_bandForm = new BandEditor(m_desk);
    m_chainForm->setDeskService(m_desk);
    m_bandForm->setDeskService(m_desk);
    m_chain = new ChainGuide(m_desk);
    m_band = new BandGuide(m_desk);
    m_chain->setForm(m_chainForm);
    m_band->setForm(m_bandForm);
}

void GuidesTest::cleanup()
{
    delete m_desk;
}

void GuidesTest::readBand(std::initializer_list<std::pair<double, double>> hangings)
{
    m_band->next();
    key(*m_band, 100);
    for (const auto& [kg, cm] : hangings) {
        if (m_band->page() == MeasureGuide::Page::Result)
            m_band->more(false);
        key(*m_band, kg);
        key(*m_band, cm);
    }
}

void GuidesTest::chainByWeight()
{
    QVERIFY(m_chain->page() == MeasureGuide::Page::Begin);
    QVERIFY(!m_chain->back());
    m_chain->choose(false);
    QStringList asked;
    for (const double number : {150.0, 8.55, 0.1}) {
        QVERIFY(m_chain->page() == MeasureGuide::Page::Number);
        asked << m_chain->key();
        key(*m_chain, number);
    }
    QCOMPARE(asked, (QStringList{"length", "mass", "scaleStep"}));
    QVERIFY(m_chain->page() == MeasureGuide::Page::Result);
    QCOMPARE(m_chain->heading(), QStringLiteral("Measure a chain"));
    // 0.1 in 8.55 is more than a hundredth
    QVERIFY(m_chain->gain().contains("finer"));
    m_chain->next();
    QVERIFY(m_chain->page() == MeasureGuide::Page::Result);
    QVERIFY(m_chain->back());
    QCOMPARE(m_chain->key(), QStringLiteral("scaleStep"));
    QVERIFY(!m_chainForm->keep().isEmpty());
}

void GuidesTest::chainByItsLink()
{
    QCOMPARE(m_chain->progress(), QStringLiteral("step 1"));
    m_chain->choose(true);
    key(*m_chain, 180);
    key(*m_chain, 16);
    key(*m_chain, 48);
    QCOMPARE(m_chain->key(), QStringLiteral("innerWidth"));
    QVERIFY(!m_chain->how().contains("long link") && !m_chain->longLink());
    QVERIFY(m_chain->back());
    key(*m_chain, 56);
    QVERIFY(m_chain->how().contains("long link") && m_chain->longLink());
    QCOMPARE(m_chain->progress(), QStringLiteral("step 5 of 6"));
    key(*m_chain, 20);
    QVERIFY(m_chain->gain().contains("Weighing"));
}

void GuidesTest::chainGoesOnWhereItWas()
{
    m_chain->choose(true);
    key(*m_chain, 180);
    key(*m_chain, 16);
    ChainGuide later;
    later.setForm(m_chainForm);
    QCOMPARE(later.key(), QStringLiteral("pitch"));
    QVERIFY(later.back());
    QCOMPARE(later.key(), QStringLiteral("wire"));
    m_chainForm->throwDraft();
    later.resume();
    QVERIFY(later.page() == MeasureGuide::Page::Begin);
}

void GuidesTest::chainMeasuredAgainStartsEmpty()
{
    const RecordId id = m_desk->desk().keepItem(samples::item(RecordId{}, "Chain", samples::weighed()));
    m_chainForm->setItemId(QString::fromStdString(id.hex()));
    QVERIFY(m_chain->page() == MeasureGuide::Page::Begin);
    QVERIFY(m_chainForm->canKeep());
    m_chain->choose(false);
    QVERIFY(!m_chainForm->canKeep());
    QVERIFY(!m_chainForm->spec("length")->shown);
    m_chainForm->throwDraft();
    QVERIFY(m_chainForm->canKeep());
}

void GuidesTest::bandAsksMassAndLengthInTurn()
{
    QVERIFY(m_band->page() == MeasureGuide::Page::Begin);
    m_band->next();
    QCOMPARE(m_band->key(), QStringLiteral("rest"));
    key(*m_band, 100);
    QCOMPARE(m_band->key(), QStringLiteral("mass:0"));
    // a quarter of the way to twice its rest
    QVERIFY2(m_band->advice().head.contains("125"), qPrintable(m_band->advice().head));
    key(*m_band, 5);
    QCOMPARE(m_band->key(), QStringLiteral("length:0"));
    key(*m_band, 115);
    QCOMPARE(m_band->key(), QStringLiteral("mass:1"));
    QVERIFY(!m_band->advice().curve);
    QCOMPARE(m_band->progress(), QStringLiteral("reading 2"));
    // half a hanging is where it goes on
    key(*m_band, 10);
    BandGuide later;
    later.setForm(m_bandForm);
    QCOMPARE(later.key(), QStringLiteral("length:1"));
}

void GuidesTest::bandEndsWhenGoodEnough()
{
    // the curve 4(r − r⁻²) + 6(1 − r⁻³) kg itself, r the length over the rest
    m_band->next();
    key(*m_band, 100);
    int hangings = 0;
    while (m_band->page() != MeasureGuide::Page::Result && hangings < 9) {
        const double r = 1.25 + 0.11 * hangings++;
        key(*m_band, 4 * (r - 1 / (r * r)) + 6 * (1 - 1 / (r * r * r)));
        key(*m_band, 100 * r);
    }
    QVERIFY2(hangings >= 3 && hangings <= 8, qPrintable(QString::number(hangings)));
    QVERIFY(m_band->gain().startsWith("Good enough") || hangings == 8);
    QVERIFY(m_bandForm->canKeep());
    // nothing empty is kept with it
    for (const BandHanging& hanging : m_bandForm->measurement().hangings)
        QVERIFY(hanging.mass && hanging.length);
}

void GuidesTest::bandBackTakesNoReadingAway()
{
    readBand({{5, 115}, {7.5, 124.5}});
    QCOMPARE(m_band->key(), QStringLiteral("mass:2"));
    const QStringList before{"length:1", "mass:1", "length:0", "mass:0", "rest", ""};
    for (const QString& expected : before) {
        QVERIFY(m_band->back());
        QCOMPARE(m_band->key(), expected);
    }
    QVERIFY(!m_band->back());
    for (const QString& expected : QStringList{"rest", "mass:0", "length:0", "mass:1", "length:1", "mass:2"}) {
        m_band->next();
        QCOMPARE(m_band->key(), expected);
    }
    const auto shown = m_bandForm->spec("length:1")->shown;
    QVERIFY(shown && std::abs(*shown - 124.5) < 1e-9);
}

void GuidesTest::bandOddReadAgain()
{
    readBand({{5, 115}, {7.5, 124.5}, {10, 150}, {12.5, 152.5}, {15, 172}, {17.5, 195}});
    QVERIFY2(m_band->advice().odd.contains("3"), qPrintable(m_band->advice().odd));
    m_band->readAgain();
    QCOMPARE(m_band->key(), QStringLiteral("length:2"));
    key(*m_band, 137);
    QCOMPARE(m_band->advice().odd, QString());
    // not through all that stands already
    QVERIFY(m_band->key() == "mass:6" || m_band->page() == MeasureGuide::Page::Result);
}

void GuidesTest::bandOnTheWayBack()
{
    readBand({{5, 115}, {10, 137}, {17.5, 195}});
    const QString answer = m_bandForm->answer();
    // a mass is asked: it comes before what it is for
    QVERIFY2(m_band->advice().head.startsWith("About ") && m_band->advice().head.contains(" kg, to reach "), qPrintable(m_band->advice().head));
    // two coefficients through three readings
    QVERIFY2(m_band->advice().unsure.contains("3 readings"), qPrintable(m_band->advice().unsure));
    m_band->enough();
    m_band->more(true);
    QVERIFY(m_band->isUnloading());
    QVERIFY(m_band->advice().head.isEmpty());
    for (const auto& [kg, cm] : {std::pair(10.0, 142.0), {5.0, 118.0}}) {
        key(*m_band, kg);
        key(*m_band, cm);
    }
    // it goes on until the coach says so
    QVERIFY(m_band->page() == MeasureGuide::Page::Number);
    m_band->enough();
    QCOMPARE(m_bandForm->answer(), answer);
    QVERIFY2(m_band->advice().wayBack.contains("less"), qPrintable(m_band->advice().wayBack));
}

void GuidesTest::everyStepHasItsWords()
{
    const auto worded = [](const MeasureGuide& guide) { return !guide.heading().isEmpty() && !guide.progress().isEmpty(); };
    for (const bool gauged : {false, true}) {
        m_chainForm->throwDraft();
        m_chain->resume();
        QVERIFY(worded(*m_chain));
        m_chain->choose(gauged);
        while (m_chain->page() == MeasureGuide::Page::Number) {
            QVERIFY(worded(*m_chain) && !m_chain->how().isEmpty());
            m_chain->next();
        }
        QVERIFY(worded(*m_chain));
    }
    QVERIFY(worded(*m_band));
    readBand({{5, 115}, {10, 137}, {17.5, 195}});
    while (m_band->back())
        QVERIFY(worded(*m_band) && (m_band->key().isEmpty() || !m_band->how().isEmpty()));
}

void GuidesTest::twinCompared()
{
    Desk& desk = m_desk->desk();
    desk.keepItem(samples::item(RecordId{}, "Band B1", samples::band(), false));
    desk.keepItem(samples::item(RecordId{}, "Chain", samples::weighed()));
    readBand({{4.5, 115}, {6.75, 124.5}, {9, 137}, {11.25, 152.5}, {13.5, 172}, {15.75, 195}});
    KitComparison twins;
    twins.setForm(m_bandForm);
    QCOMPARE(twins.names(), QStringList{"Band B1"});
    QCOMPARE(twins.text(), QString());
    twins.setChosen(0);
    QCOMPARE(twins.chosen(), 0);
    // nine tenths of its pull at every length
    QVERIFY2(twins.text().contains("10 % less than Band B1"), qPrintable(twins.text()));
    QVERIFY(twins.text().contains("partner"));
}

QTEST_GUILESS_MAIN(GuidesTest)
#include "test_guides.moc"
