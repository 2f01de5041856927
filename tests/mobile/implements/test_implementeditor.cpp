// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/implements/implementeditor.h"
#include "mobile/text/say.h"
#include "mobile/tools/toolguide.h"

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

/// Forms of what is lifted, carried or dragged by itself: what is keyed stands, what it weighs is said, what is missing is named.
class ImplementEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void everyKeyComesBack();
    void everyKeyComesBack_data();
    void askedIsAnswered();
    void askedIsAnswered_data();
    void tyreByItsEdge();
    void oppositeEdgeToo();
    void nobodyKnows();
    void logBySizeAndWood();
    void stoneByItsSize();
    void kegLying();
    void kegThatMayHoldGas();
    void bagsStandNot();
    void byTheMark();
    void adjustableBell();
    void anotherScaleHasNoAccuracy();
    void inSteps();
    void inPounds();
    void keptUnderTheirOwnNames();
    void unknownKeysAndKinds();

private:
    [[nodiscard]] QStringList asked() const;
    void take(const char* what) { m_form->setWhat(QLatin1String(what)); }
    void kinds();

    DeskService* m_desk = nullptr;
    ImplementEditor* m_form = nullptr;
};

void ImplementEditorTest::init()
{
    m_desk = new DeskService(this);
    m_form = new ImplementEditor(m_desk);
    m_form->setDeskService(m_desk);
}

void ImplementEditorTest::cleanup()
{
    say::setUnits({});
    delete m_desk;
}

QStringList ImplementEditorTest::asked() const
{
    QStringList keys;
    for (int i = 0; i < m_form->asked()->rowCount(); ++i)
        keys << formcheck::shown(*m_form->asked(), i, "key").toString();
    return keys;
}

void ImplementEditorTest::kinds()
{
    QTest::addColumn<QString>("what");
    for (const char* what : {"tyre", "log", "stone", "keg", "sled", "carry", "bell"})
        QTest::newRow(what) << QString::fromLatin1(what);
}

void ImplementEditorTest::everyKeyComesBack_data() { kinds(); }

void ImplementEditorTest::everyKeyComesBack()
{
    QFETCH(const QString, what);
    m_form->setWhat(what);
    QCOMPARE(m_form->what(), what);
    const ToolWords words = m_form->words();
    QVERIFY(!words.title.isEmpty() && !words.intro.isEmpty() && !words.drawing.isEmpty());
    QCOMPARE(words.choices.size(), words.choiceFacts.size());
    const int ways = std::max<int>(1, static_cast<int>(words.choices.size()));
    for (int way = 0; way < ways; ++way) {
        m_form->setChoice(way);
        QCOMPARE(m_form->choice(), words.choices.isEmpty() ? -1 : way);
        QCOMPARE(formcheck::limitsOfEveryKey(*m_form), QStringList());
        if (m_form->specs().empty())
            continue;
        QCOMPARE(formcheck::keepEveryKey(*m_form), QStringList());
        for (const FieldSpec& spec : m_form->specs())
            QVERIFY2(!m_form->question(spec.key).isEmpty() && !m_form->how(spec.key).isEmpty(), qPrintable(spec.key));
    }
}

void ImplementEditorTest::askedIsAnswered_data() { kinds(); }

void ImplementEditorTest::askedIsAnswered()
{
    QFETCH(const QString, what);
    m_form->setWhat(what);
    const int ways = std::max<int>(1, static_cast<int>(m_form->words().choices.size()));
    for (int way = 0; way < ways; ++way) {
        m_form->setChoice(way);
        const QStringList keys = asked();
        for (int row = 0; row < keys.size(); ++row) {
            const auto options = formcheck::shown(*m_form->asked(), row, "options").toStringList();
            QVERIFY(options.size() >= 2);
            // the first last, so that the page stays what it is
            for (int index = static_cast<int>(options.size()) - 1; index >= 0; --index) {
                m_form->choose(keys[row], index);
                QVERIFY2(asked().contains(keys[row]), qPrintable(keys[row]));
                QCOMPARE(formcheck::shown(*m_form->asked(), static_cast<int>(asked().indexOf(keys[row])), "current").toInt(), index);
            }
            m_form->choose(keys[row], static_cast<int>(options.size()));
            m_form->choose(keys[row], -1);
            QCOMPARE(formcheck::shown(*m_form->asked(), static_cast<int>(asked().indexOf(keys[row])), "current").toInt(), 0);
        }
    }
}

void ImplementEditorTest::tyreByItsEdge()
{
    keepAll(*m_form, {{"shown:0", 60}, {"lift:0", 60}, {"contact:0", 40}, {"step", 0.5}});
    // water in it is weighed too
    QVERIFY(!m_form->isMeasured() && !m_form->canKeep());
    QVERIFY2(m_form->trouble().contains(QStringLiteral("drain it")), qPrintable(m_form->trouble()));
    m_form->choose(QStringLiteral("drained"), 0);
    // 60 (60 + 40)/40 = 150, and not twice what the edge reads
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("150 ± ")), qPrintable(m_form->answer()));
    QVERIFY(m_form->isMeasured() && m_form->canKeep() && m_form->trouble().isEmpty() && !m_form->isDoubtful());
    QVERIFY(m_form->clearNumber(QStringLiteral("lift:0")));
    QVERIFY2(!m_form->isMeasured() && m_form->trouble().contains(QStringLiteral("from the middle")), qPrintable(m_form->trouble()));
}

void ImplementEditorTest::oppositeEdgeToo()
{
    keepAll(*m_form, {{"shown:0", 60}, {"lift:0", 60}, {"contact:0", 40}, {"step", 0.5}});
    m_form->choose(QStringLiteral("drained"), 0);
    QCOMPARE(m_form->addEntry(), QStringLiteral("shown:1"));
    QCOMPARE(m_form->addEntry(), QString());
    QVERIFY(m_form->words().more.isEmpty() && !m_form->isMeasured());
    keepAll(*m_form, {{"shown:1", 64}, {"lift:1", 60}, {"contact:1", 40}});
    // the mean of 150 and 160
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("155 ± ")), qPrintable(m_form->answer()));
    QVERIFY(m_form->clearNumber(QStringLiteral("contact:0")));
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("160 ± ")), qPrintable(m_form->answer()));
}

void ImplementEditorTest::nobodyKnows()
{
    for (const char* what : {"tyre", "log", "stone", "keg"}) {
        take(what);
        m_form->setChoice(static_cast<int>(m_form->words().choices.size()) - 1);
        QVERIFY2(m_form->isMeasured() && m_form->canKeep(), what);
        QVERIFY2(m_form->answer().startsWith(QStringLiteral("Nobody knows what it weighs")) && m_form->isDoubtful(), qPrintable(m_form->answer()));
        QVERIFY(m_form->trouble().isEmpty());
    }
}

void ImplementEditorTest::logBySizeAndWood()
{
    take("log");
    m_form->setChoice(2);
    keepAll(*m_form, {{"length", 200}, {"first", 30}, {"second", 30}});
    QVERIFY2(m_form->trouble().contains(QStringLiteral("wood")), qPrintable(m_form->trouble()));
    m_form->choose(QStringLiteral("wood"), 0);
    m_form->choose(QStringLiteral("dry"), 0);
    // FPL-GTR-190: 1000 · 0.40 · 1.12 = 448 kg/m³; π · 0.15² · 2 · 448 = 63.3
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("63 ± ")) || m_form->answer().startsWith(QStringLiteral("about 63")), qPrintable(m_form->answer()));
    QCOMPARE(*m_form->spec(QStringLiteral("gravity"))->shown, 0.4);
    m_form->keepNumber(QStringLiteral("gravity"), 0.45);
    QCOMPARE(formcheck::shown(*m_form->asked(), 1, "current").toInt(), -1);
    // the same read round it: 30 cm round is 9.5 across
    m_form->choose(QStringLiteral("girths"), 1);
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("7")), qPrintable(m_form->answer()));
    m_form->setChoice(0);
    keepAll(*m_form, {{"first", 35}, {"second", 31.5}, {"step", 0.1}});
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("66.5")), qPrintable(m_form->answer()));
}

void ImplementEditorTest::stoneByItsSize()
{
    take("stone");
    m_form->setChoice(1);
    keepAll(*m_form, {{"across", 40}});
    m_form->choose(QStringLiteral("stone"), 3);
    // π/6 · 0.4³ · 2350 = 78.7
    QVERIFY2(m_form->answer().contains(QStringLiteral("79 ± ")), qPrintable(m_form->answer()));
}

void ImplementEditorTest::kegLying()
{
    take("keg");
    m_form->setChoice(3);
    m_form->choose(QStringLiteral("filling"), 0);
    keepAll(*m_form, {{"empty", 12.5}, {"depth", 14}, {"across", 38}, {"length", 50}});
    m_form->keepNumber(QStringLiteral("step"), 0.1);
    // a third of the depth is not a third of it: 19.0 litres
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("31")), qPrintable(m_form->answer()));
    // by litres
    m_form->setChoice(1);
    QCOMPARE(m_form->spec(QStringLiteral("content"))->unit, QStringLiteral("L"));
    m_form->keepNumber(QStringLiteral("content"), 20);
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("32.4")) || m_form->answer().startsWith(QStringLiteral("32.5")), qPrintable(m_form->answer()));
    const auto kept = std::get<KegMeasurement>(m_form->measured());
    QVERIFY(kept.content && std::abs(kept.content->quantity() / litre - 20) < 1e-12);
}

void ImplementEditorTest::kegThatMayHoldGas()
{
    take("keg");
    m_form->setChoice(0);
    keepAll(*m_form, {{"read", 42}, {"step", 0.1}});
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("42")), qPrintable(m_form->answer()));
    QVERIFY(m_form->verdict().contains(QStringLiteral("Nobody knows")) && m_form->isDoubtful());
    m_form->choose(QStringLiteral("pressure"), 1);
    QVERIFY(m_form->verdict().contains(QStringLiteral("lets")) || m_form->verdict().contains(QStringLiteral("let it off")));
    m_form->choose(QStringLiteral("pressure"), 2);
    QVERIFY(m_form->verdict().isEmpty() && !m_form->isDoubtful());
}

void ImplementEditorTest::bagsStandNot()
{
    take("keg");
    m_form->setChoice(2);
    m_form->choose(QStringLiteral("sort"), 1);
    QCOMPARE(m_form->words().choices.size(), 3);
    QVERIFY(m_form->choice() >= 0 && m_form->choice() < 3);
    QVERIFY(!asked().contains(QStringLiteral("pressure")) && m_form->verdict().isEmpty());
    QCOMPARE(m_form->words().drawing, QStringLiteral("bag"));
}

void ImplementEditorTest::byTheMark()
{
    for (const char* what : {"sled", "carry", "bell"}) {
        take(what);
        QVERIFY(!m_form->isMeasured());
        m_form->keepNumber(QStringLiteral("marked"), 24);
        QVERIFY2(m_form->isMeasured() && m_form->answer().contains(QStringLiteral("by the mark")), qPrintable(m_form->answer()));
        QVERIFY(!m_form->spec(QStringLiteral("read"))->needed);
        keepAll(*m_form, {{"read", 23.6}, {"step", 0.1}});
        QVERIFY2(m_form->answer().startsWith(QStringLiteral("23.6")), qPrintable(m_form->answer()));
    }
}

void ImplementEditorTest::adjustableBell()
{
    take("bell");
    m_form->keepNumber(QStringLiteral("setting:0"), 12);
    m_form->keepNumber(QStringLiteral("setting:1"), 20);
    QVERIFY2(m_form->answer().contains(QStringLiteral(" to ")), qPrintable(m_form->answer()));
    QVERIFY(!m_form->spec(QStringLiteral("read")));
    QVERIFY(!m_form->canClear(QStringLiteral("setting:2")) && !m_form->clearNumber(QStringLiteral("setting:2")));
    QVERIFY(m_form->canClear(QStringLiteral("setting:0")) && m_form->clearNumber(QStringLiteral("setting:0")));
    QCOMPARE(std::get<BellMeasurement>(m_form->measured()).settings.size(), std::size_t(1));
    QVERIFY(!m_form->words().note.isEmpty());
    m_form->setNote(QStringLiteral("rough horns"));
    QCOMPARE(m_form->note(), QStringLiteral("rough horns"));
    m_form->keepNumber(QStringLiteral("handle"), 35);
    QCOMPARE(m_form->spec(QStringLiteral("handle"))->unit, QStringLiteral("mm"));
    take("tyre");
    m_form->setNote(QStringLiteral("nothing"));
    QVERIFY(m_form->note().isEmpty() && m_form->words().note.isEmpty());
}

void ImplementEditorTest::anotherScaleHasNoAccuracy()
{
    m_form->weighOn({kilograms(0.1), kilograms(0.3), {}});
    QVERIFY(m_form->weighedOn() && m_form->weighedOn()->accuracy == kilograms(0.3) && m_form->weighedOn()->step == kilograms(0.1));
    m_form->keepNumber(QStringLiteral("step"), 0.5);
    QVERIFY(!m_form->weighedOn()->accuracy);
    m_form->setChoice(2);
    QVERIFY(!m_form->weighedOn());
}

void ImplementEditorTest::inSteps()
{
    ToolGuide guide;
    guide.setForm(m_form);
    guide.resume();
    guide.choose(0);
    QStringList keys;
    while (guide.page() == ToolGuide::Page::Number && keys.size() < 20) {
        keys << guide.key();
        QVERIFY(!guide.heading().isEmpty() && !guide.how().isEmpty());
        m_form->keepNumber(guide.key(), keys.size() == 1 ? 60 : guide.key() == QStringLiteral("step") ? 0.5 : 50);
        guide.next();
    }
    QCOMPARE(keys, (QStringList{QStringLiteral("shown:0"), QStringLiteral("lift:0"), QStringLiteral("contact:0"), QStringLiteral("step")}));
    QVERIFY(guide.page() == ToolGuide::Page::Result);
}

void ImplementEditorTest::inPounds()
{
    say::setUnits({MassUnit::Pound, LengthUnit::Inch});
    m_form->setChoice(1);
    m_form->choose(QStringLiteral("drained"), 0);
    keepAll(*m_form, {{"read", 250}, {"step", 0.5}});
    QVERIFY2(m_form->answer().startsWith(QStringLiteral("250")) && m_form->answer().contains(QStringLiteral("lb")), qPrintable(m_form->answer()));
}

void ImplementEditorTest::keptUnderTheirOwnNames()
{
    m_form->setChoice(1);
    m_form->choose(QStringLiteral("drained"), 0);
    keepAll(*m_form, {{"read", 118.4}, {"step", 0.1}});
    QVERIFY(!m_form->keep().isEmpty());
    const KitItem& kept = m_desk->desk().kit().back();
    QCOMPARE(QString::fromStdString(kept.name), QStringLiteral("Tyre, 118 kg"));
    QVERIFY(kindOf(kept.measurement) == ItemKind::Tyre);
}

void ImplementEditorTest::unknownKeysAndKinds()
{
    for (const char* what : {"tyre", "log", "stone", "keg", "sled", "carry", "bell"}) {
        take(what);
        for (const char* key : {"", "shown:7", "read:x", "nothing"}) {
            QVERIFY2(!m_form->keepNumber(QLatin1String(key), 1).kept(), key);
            QVERIFY2(!m_form->clearNumber(QLatin1String(key)), key);
        }
    }
    take("chain");
    take("");
    QCOMPARE(m_form->what(), QStringLiteral("bell"));
}

QTEST_MAIN(ImplementEditorTest)
#include "test_implementeditor.moc"
