// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/gates/limitseditor.h"

#include "mobile/editors/numberpad.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// The coach's own limits: stepped, keyed, kept, and put back to what they were shipped as.
class LimitsEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void oursAreNamedAsOurs();
    void steppedAndKept();
    void keyedWithinItsRange();
    void asItWasShipped();
    void steppedBackIsNoChange();
    void waitsAsADraft();
    void atItsEnd();

private:
    [[nodiscard]] const LimitRow& row(LimitKind kind) { return dynamic_cast<RowList<LimitRow>*>(m_form->limits())->rows().at(static_cast<std::size_t>(kind)); }
    [[nodiscard]] QString key(LimitKind kind) { return row(kind).key; }
    [[nodiscard]] const CoachLimits& kept() const { return m_house->book.book().limits(); }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<LimitsEditor> m_form;
};

void LimitsEditorTest::init()
{
    m_form.reset();
    m_house = std::make_unique<StandInHouse>();
    m_form = std::make_unique<LimitsEditor>();
    m_form->setDeskService(&m_house->desk);
    m_form->setBook(&m_house->book);
}

void LimitsEditorTest::oursAreNamedAsOurs()
{
    QCOMPARE(m_form->limits()->rowCount(), static_cast<int>(allLimits.size()));
    const QStringList values{QStringLiteral("70 %"), QStringLiteral("120 %"), QStringLiteral("90 days"), QStringLiteral("182 days"), QStringLiteral("1.5 times"), QStringLiteral("18 years")};
    for (const LimitKind kind : allLimits) {
        QCOMPARE(row(kind).value, values.at(static_cast<int>(kind)));
        QVERIFY(!row(kind).own && row(kind).shipped.contains(QLatin1String("ours")));
        QVERIFY(!row(kind).label.isEmpty() && !row(kind).hint.isEmpty());
    }
    QVERIFY(!m_form->isDrafted() && m_form->keeps().isEmpty());
    QCOMPARE(m_form->ownCount(), 0);
}

void LimitsEditorTest::steppedAndKept()
{
    m_form->step(key(LimitKind::TyrePercent), false);
    QCOMPARE(row(LimitKind::TyrePercent).value, QStringLiteral("65 %"));
    QVERIFY2(kept() == CoachLimits{}, "not kept yet");
    QCOMPARE(m_form->keeps(), QStringLiteral("65 %"));
    QSignalSpy kept(m_form.get(), &LimitsEditor::kept);
    m_form->keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY(this->kept().tyrePercent == 65 && !this->kept().holdPercent);
    QVERIFY(!m_form->isDrafted());
    QCOMPARE(m_form->ownCount(), 1);
    QVERIFY(row(LimitKind::TyrePercent).own && row(LimitKind::TyrePercent).shipped.contains(QLatin1String("70 %")));
    m_house->book.undo();
    QVERIFY(this->kept() == CoachLimits{});
}

void LimitsEditorTest::keyedWithinItsRange()
{
    NumberPad pad;
    pad.setEditor(m_form.get());
    pad.setKey(key(LimitKind::HoldPercent));
    for (const char digit : {'2', '.', '2', '5'})
        pad.press(QString(QLatin1Char(digit)));
    QVERIFY2(pad.keep(), qPrintable(pad.refusal()));
    QCOMPARE(row(LimitKind::HoldPercent).value, QStringLiteral("2.25 times"));
    m_form->keep();
    QCOMPARE(kept().holdFactor(), 2.25);
    pad.setKey(key(LimitKind::OfAge));
    for (const char digit : {'1', '5'})
        pad.press(QString(QLatin1Char(digit)));
    QVERIFY2(!pad.keep(), "below what can be");
    QVERIFY(!m_form->keepNumber(QStringLiteral("mood"), 3).kept());
}

void LimitsEditorTest::asItWasShipped()
{
    m_form->step(key(LimitKind::MaximumAge), true);
    m_form->step(key(LimitKind::BandAge), true);
    m_form->keep();
    QVERIFY(kept().maximumAge == std::chrono::days(95) && kept().bandAge == std::chrono::days(189));
    m_form->asShipped(key(LimitKind::MaximumAge));
    QCOMPARE(row(LimitKind::MaximumAge).value, QStringLiteral("90 days"));
    m_form->keep();
    QVERIFY(!kept().maximumAge && kept().bandAge == std::chrono::days(189));
}

void LimitsEditorTest::steppedBackIsNoChange()
{
    m_form->step(key(LimitKind::TyrePercent), true);
    m_form->asShipped(key(LimitKind::TyrePercent));
    QVERIFY(!m_form->isDrafted());
}

void LimitsEditorTest::waitsAsADraft()
{
    m_form->step(key(LimitKind::EccentricPercent), false);
    m_form->asShipped(key(LimitKind::TyrePercent));
    LimitsEditor again;
    again.setDeskService(&m_house->desk);
    again.setBook(&m_house->book);
    QVERIFY(again.isDrafted());
    QCOMPARE(again.keeps(), QStringLiteral("115 %"));
    again.throwDraft();
    QVERIFY(!again.isDrafted() && again.keeps().isEmpty());
}

void LimitsEditorTest::atItsEnd()
{
    for (int i = 0; i < 3; ++i)
        m_form->step(key(LimitKind::EccentricPercent), true);
    QCOMPARE(row(LimitKind::EccentricPercent).value, QStringLiteral("130 %"));
    QVERIFY(!row(LimitKind::EccentricPercent).canUp && row(LimitKind::EccentricPercent).canDown);
}

QTEST_GUILESS_MAIN(LimitsEditorTest)
#include "test_limitseditor.moc"
