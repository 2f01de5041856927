// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/editors/hangeditor.h"

#include "mobile/pages/hungdrawing.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

namespace {

QString idOf(std::uint64_t number) { return QString::fromStdString(samples::numbered(number).hex()); }

}

/// How a thing hangs, changed on the set-up at once.
class HangEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void hangsThePlainWay();
    void everyKeyComesBack();
    void limitsCanBeKeyed();
    void unknownKeys();
    void nothingIsKeptWithoutARow();
    void sidesAndWays();
    void anchorAboveOrBelow();
    void leanTurnsTheOffset();
    void leanIsReadFromWhatHangs();
    void optionalNumbers();
    void filledInUntilEntered();
    void troubleIsOfThisThingOnly();
    void takenOff();
    void drawnAlone();

private:
    [[nodiscard]] const HungRecord& record() const { return m_service->desk().setup().hung.at(static_cast<std::size_t>(m_form->row())); }
    [[nodiscard]] BandPlacing band() const { return std::get<BandPlacing>(record().placing); }

    DeskService* m_service = nullptr;
    HangEditor* m_form = nullptr;
};

void HangEditorTest::init()
{
    m_service = new DeskService(this);
    m_service->desk().replaceAll(samples::marks(0.9, 1.5),
                                 {samples::item(1, "Chain", samples::weighed()), samples::item(2, "Chain, long", samples::gauged(), false), samples::item(3, "Band", samples::band())},
                                 samples::setup(60));
    m_form = new HangEditor(this);
    m_form->setDeskService(m_service);
}

void HangEditorTest::cleanup()
{
    delete m_form;
    delete m_service;
}

void HangEditorTest::hangsThePlainWay()
{
    QCOMPARE(m_form->hang(idOf(1)), 0);
    QCOMPARE(m_form->row(), 0);
    QCOMPARE(m_form->itemId(), idOf(1));
    QVERIFY(m_form->kind() == QStringLiteral("chain"));
    QCOMPARE(m_form->what(), QStringLiteral("Chain"));
    QVERIFY(record() == samples::hung(1, ChainPlacing{}));
    // one alone goes on one side
    QCOMPARE(m_form->hang(idOf(2)), 1);
    QCOMPARE(m_form->sides(), 1);
    QCOMPARE(m_form->hang(idOf(3)), 2);
    QVERIFY(m_form->kind() == QStringLiteral("band"));
    QVERIFY(record() == samples::hung(3, BandPlacing{}));
    QCOMPARE(m_form->hang(idOf(9)), -1);
    QCOMPARE(m_service->desk().setup().hung.size(), std::size_t(3));
}

void HangEditorTest::everyKeyComesBack()
{
    m_form->hang(idOf(1));
    QCOMPARE(m_form->specs().size(), std::size_t(2));
    m_form->setWay(2);
    QCOMPARE(m_form->specs().size(), std::size_t(3));
    QCOMPARE(formcheck::keepEveryKey(*m_form), QStringList());
    m_form->hang(idOf(3));
    m_form->setWay(1);
    for (int lean = 0; lean <= 2; ++lean) {
        m_form->setLean(lean);
        QCOMPARE(m_form->spec(QStringLiteral("offset")).has_value(), lean != 0);
        QCOMPARE(formcheck::keepEveryKey(*m_form), QStringList());
    }
    QVERIFY(m_form->spec(QStringLiteral("handle")));
    m_form->setWay(0);
    QVERIFY(!m_form->spec(QStringLiteral("handle")));
}

void HangEditorTest::limitsCanBeKeyed()
{
    m_form->hang(idOf(1));
    m_form->setWay(2);
    QCOMPARE(formcheck::limitsOfEveryKey(*m_form), QStringList());
    m_form->hang(idOf(3));
    m_form->setWay(1);
    m_form->setLean(1);
    QCOMPARE(formcheck::limitsOfEveryKey(*m_form), QStringList());
}

void HangEditorTest::unknownKeys()
{
    m_form->hang(idOf(1));
    const HungRecord chain = record();
    QVERIFY(!m_form->keepNumber(QStringLiteral("anchor"), 10).kept());
    QVERIFY(!m_form->keepNumber(QString(), 10).kept());
    QVERIFY(!m_form->clearNumber(QStringLiteral("lead")));
    QVERIFY(record() == chain);
    m_form->hang(idOf(3));
    const HungRecord other = record();
    QVERIFY(!m_form->keepNumber(QStringLiteral("lead"), 10).kept());
    QVERIFY(record() == other);
}

void HangEditorTest::nothingIsKeptWithoutARow()
{
    QVERIFY(!m_form->keepNumber(QStringLiteral("lead"), 10).kept());
    m_form->hang(idOf(1));
    m_form->setRow(4);
    QVERIFY(m_form->specs().empty());
    QVERIFY(!m_form->keepNumber(QStringLiteral("lead"), 10).kept());
    QCOMPARE(m_form->what(), QString());
    QVERIFY(m_form->itemId().isEmpty());
    QVERIFY(m_form->kind().isEmpty());
    m_form->setSides(2);
    m_form->setWay(1);
    m_form->takeOff();
    QVERIFY(m_service->desk().setup().hung == std::vector{samples::hung(1, ChainPlacing{})});
}

void HangEditorTest::sidesAndWays()
{
    m_form->hang(idOf(1));
    for (int sides = 2; sides >= 0; --sides) {
        m_form->setSides(sides);
        QCOMPARE(m_form->sides(), sides);
        QVERIFY(record().on == static_cast<HungOn>(sides));
    }
    m_form->setSides(3);
    m_form->setSides(-1);
    QCOMPARE(m_form->sides(), 0);
    for (int way = 2; way >= 0; --way) {
        m_form->setWay(way);
        QCOMPARE(m_form->way(), way);
        QVERIFY(std::get<ChainPlacing>(record().placing).way == static_cast<ChainHangingWay>(way));
    }
    m_form->setWay(3);
    m_form->setWay(-1);
    QCOMPARE(m_form->way(), 0);
    m_form->hang(idOf(3));
    m_form->setWay(1);
    QVERIFY(band().doubled);
    QCOMPARE(m_form->way(), 1);
    m_form->setWay(0);
    QVERIFY(!band().doubled);
}

void HangEditorTest::anchorAboveOrBelow()
{
    m_form->hang(idOf(3));
    QCOMPARE(m_form->anchor(), 0);
    m_form->setAnchor(1);
    QVERIFY(band().above);
    QCOMPARE(m_form->anchor(), 1);
    m_form->setAnchor(0);
    QVERIFY(!band().above);
    m_form->hang(idOf(1));
    m_form->setAnchor(1);
    QCOMPARE(m_form->anchor(), 0);
}

void HangEditorTest::leanTurnsTheOffset()
{
    m_form->hang(idOf(3));
    m_form->setLean(1);
    m_form->keepNumber(QStringLiteral("offset"), 20);
    QCOMPARE(band().offset.si(), 0.20);
    m_form->setLean(2);
    QCOMPARE(band().offset.si(), -0.20);
    QCOMPARE(m_form->spec(QStringLiteral("offset"))->shown.value_or(0), 20.0);
    m_form->keepNumber(QStringLiteral("offset"), 15);
    QCOMPARE(band().offset.si(), -0.15);
    m_form->setLean(0);
    QCOMPARE(band().offset.si(), 0.0);
    m_form->setLean(3);
    m_form->setLean(-1);
    QCOMPARE(m_form->lean(), 0);
}

void HangEditorTest::leanIsReadFromWhatHangs()
{
    BandPlacing behind = samples::bandAt(0);
    behind.offset = metres(-0.25);
    m_service->desk().hang(samples::hung(3, behind));
    m_service->desk().hang(samples::hung(1, ChainPlacing{}));
    m_form->setRow(0);
    QCOMPARE(m_form->lean(), 2);
    // a page may give the row before the desk
    HangEditor later;
    later.setRow(0);
    later.setDeskService(m_service);
    QCOMPARE(later.lean(), 2);
    QCOMPARE(later.spec(QStringLiteral("offset"))->shown.value_or(0), 25.0);
    m_form->setRow(1);
    QCOMPARE(m_form->lean(), 0);
}

void HangEditorTest::optionalNumbers()
{
    m_form->hang(idOf(3));
    QVERIFY(!m_form->spec(QStringLiteral("heldBy"))->shown);
    QVERIFY(m_form->keepNumber(QStringLiteral("heldBy"), 60).kept());
    QCOMPARE(band().heldBy->si(), 60.0);
    for (const FieldSpec& spec : m_form->specs())
        QCOMPARE(m_form->canClear(spec.key), spec.key == QStringLiteral("heldBy"));
    QVERIFY(m_form->clearNumber(QStringLiteral("heldBy")));
    QVERIFY(!band().heldBy);
    QVERIFY(!m_form->clearNumber(QStringLiteral("anchor")));
    // nothing holds an anchor above down
    m_form->setAnchor(1);
    QVERIFY(!m_form->spec(QStringLiteral("heldBy")));
}

void HangEditorTest::filledInUntilEntered()
{
    m_form->hang(idOf(1));
    QVERIFY(m_form->spec(QStringLiteral("lead"))->filledIn);
    m_form->keepNumber(QStringLiteral("lead"), 40);
    QVERIFY(!m_form->spec(QStringLiteral("lead"))->filledIn);
}

void HangEditorTest::troubleIsOfThisThingOnly()
{
    m_form->hang(idOf(1));
    m_form->hang(idOf(2));
    m_form->setSides(0);
    QVERIFY2(m_form->trouble().contains(QStringLiteral("Chain, long")), qPrintable(m_form->trouble()));
    m_form->setRow(0);
    QCOMPARE(m_form->trouble(), QString());
    m_form->setRow(1);
    m_form->setSides(1);
    QCOMPARE(m_form->trouble(), QString());
    m_form->keepNumber(QStringLiteral("lead"), -5);
    QVERIFY2(m_form->trouble().contains(QStringLiteral("Chain, long, lead")), qPrintable(m_form->trouble()));
    m_form->setRow(0);
    QCOMPARE(m_form->trouble(), QString());
}

void HangEditorTest::takenOff()
{
    m_form->hang(idOf(1));
    m_form->hang(idOf(3));
    m_form->setRow(0);
    m_form->takeOff();
    QVERIFY(m_service->desk().setup().hung == std::vector{samples::hung(3, BandPlacing{})});
}

void HangEditorTest::drawnAlone()
{
    HungDrawing drawing;
    drawing.setForm(m_form);
    QVERIFY(drawing.items().isEmpty() && drawing.caption().isEmpty());
    (void)m_form->hang(idOf(1));
    (void)m_form->hang(idOf(3));
    // this one alone, whatever hangs beside it
    QCOMPARE(drawing.items().size(), 1);
    QCOMPARE(drawing.items().first().toMap().value(QStringLiteral("kind")).toString(), QStringLiteral("band"));
    QCOMPARE(drawing.caption(), QStringLiteral("one loop, anchored on the floor; the bar half way, at 120 cm"));
    QVERIFY(std::abs(drawing.barHeight() - 1.2) < 1e-12 && std::abs(drawing.reach() - 1.5) < 1e-12);
    m_form->keepNumber(QStringLiteral("anchor"), 240);
    m_form->setAnchor(1);
    QVERIFY(drawing.items().first().toMap().value(QStringLiteral("above")).toBool());
    QVERIFY(drawing.reach() > 2.4);
    m_form->setRow(0);
    QCOMPARE(drawing.items().first().toMap().value(QStringLiteral("kind")).toString(), QStringLiteral("chain"));
    m_form->setWay(1);
    QCOMPARE(drawing.items().first().toMap().value(QStringLiteral("hang")).toString(), QStringLiteral("doubled"));
    // without marks nothing says where the bar is
    m_service->desk().setMarks({});
    QVERIFY(drawing.items().isEmpty() && drawing.caption().isEmpty());
}

QTEST_GUILESS_MAIN(HangEditorTest)
#include "test_hangeditor.moc"
