// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/venues/loaneditor.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// Whose a thing is and who has it, in the form.
class LoanEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void oursAtFirst();
    void lentUntilADay();
    void borrowedWithoutADay();
    void anotherDayIsKeyed();
    void noSuchDay();
    void halfTypedWaits();
    void backAgain();
    void pastItsDay();
    void theSampleTakesNoNames();

private:
    [[nodiscard]] const KitItem& item() const { return m_house->book.book().kit().front()->item; }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<LoanEditor> m_form;
};

void LoanEditorTest::init()
{
    m_form.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(4, "Long chain", samples::weighed())}, samples::setup(20));
    m_form = std::make_unique<LoanEditor>();
    m_form->setDesk(&m_house->desk);
    m_form->setBook(&m_house->book);
    m_form->setItemId(QString::fromStdString(item().id.hex()));
}

void LoanEditorTest::oursAtFirst()
{
    QCOMPARE(m_form->name(), QStringLiteral("Long chain"));
    QCOMPARE(m_form->kind(), 0);
    QVERIFY(m_form->state().isEmpty() && m_form->dayText().isEmpty() && !m_form->canKeep());
    m_form->keep();
    QVERIFY(!item().lent && !item().borrowed);
}

void LoanEditorTest::lentUntilADay()
{
    m_form->setKind(2);
    QVERIFY2(!m_form->canKeep(), "it is said who, first");
    m_form->setWho(QStringLiteral("  the rowers "));
    m_form->setWhen(LoanEditor::InAWeek);
    QCOMPARE(m_form->when(), int(LoanEditor::InAWeek));
    QCOMPARE(m_form->dayText(), QStringLiteral("Back by 9 Nov."));
    QSignalSpy kept(m_form.get(), &LoanEditor::kept);
    m_form->keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY((item().lent == OnLoan{"the rowers", m_house->today + std::chrono::days(7)}));
    QCOMPARE(m_form->state(), QStringLiteral("lent to the rowers, back by 9 Nov"));
    QVERIFY(!m_form->canKeep());
}

void LoanEditorTest::borrowedWithoutADay()
{
    m_form->setKind(1);
    m_form->setWho(QStringLiteral("the school in Pell"));
    QCOMPARE(m_form->when(), int(LoanEditor::NoDay));
    m_form->keep();
    QVERIFY((item().borrowed == OnLoan{"the school in Pell"}));
    QCOMPARE(m_form->state(), QStringLiteral("borrowed from the school in Pell"));
}

void LoanEditorTest::anotherDayIsKeyed()
{
    m_form->setKind(1);
    m_form->setWho(QStringLiteral("the school in Pell"));
    QCOMPARE(m_form->day()->fields()->rowCount(), 0);
    m_form->setWhen(LoanEditor::OtherDay);
    QCOMPARE(m_form->day()->fields()->rowCount(), 3);
    QVERIFY(m_form->day()->keepNumber(QStringLiteral("day"), 24).kept());
    QVERIFY(m_form->day()->keepNumber(QStringLiteral("month"), 12).kept());
    QCOMPARE(m_form->dayText(), QStringLiteral("Back by 24 Dec."));
    m_form->keep();
    QVERIFY(item().borrowed->backBy == keeping::day(2026, 12, 24));
    // a day that is none of the choices opens as itself
    QCOMPARE(m_form->when(), int(LoanEditor::OtherDay));
    QCOMPARE(m_form->day()->fields()->rowCount(), 3);
}

void LoanEditorTest::noSuchDay()
{
    m_form->setKind(2);
    m_form->setWho(QStringLiteral("the rowers"));
    m_form->setWhen(LoanEditor::OtherDay);
    (void)m_form->day()->keepNumber(QStringLiteral("day"), 31);
    QVERIFY(m_form->dayText().startsWith(QStringLiteral("There is no such day")));
    QVERIFY(!m_form->canKeep());
    m_form->setWhen(LoanEditor::NoDay);
    QVERIFY(m_form->canKeep() && m_form->dayText().isEmpty());
}

void LoanEditorTest::halfTypedWaits()
{
    m_form->setKind(2);
    m_form->setWho(QStringLiteral("the rowers"));
    m_form->setWhen(LoanEditor::Tomorrow);
    LoanEditor again;
    again.setDesk(&m_house->desk);
    again.setBook(&m_house->book);
    again.setItemId(m_form->itemId());
    QCOMPARE(again.kind(), 2);
    QCOMPARE(again.who(), QStringLiteral("the rowers"));
    QCOMPARE(again.when(), int(LoanEditor::Tomorrow));
    QVERIFY(!item().lent);
    // and goes with being kept
    again.keep();
    QVERIFY(item().lent && !m_house->book.draft(QStringLiteral("loan:") + m_form->itemId()));
}

void LoanEditorTest::backAgain()
{
    m_form->setKind(2);
    m_form->setWho(QStringLiteral("the rowers"));
    m_form->keep();
    m_form->setKind(0);
    QVERIFY(m_form->canKeep());
    m_form->keep();
    QVERIFY(!item().lent && m_form->state().isEmpty());
    m_house->book.undo();
    QVERIFY(item().lent.has_value());
}

void LoanEditorTest::pastItsDay()
{
    m_form->setKind(1);
    m_form->setWho(QStringLiteral("the rowers"));
    m_form->setWhen(LoanEditor::Today);
    m_form->keep();
    QCOMPARE(m_form->state(), QStringLiteral("borrowed from the rowers, back by 2 Nov"));
    m_house->today += std::chrono::days(1);
    QCOMPARE(m_form->state(), QStringLiteral("borrowed from the rowers, was due back on 2 Nov"));
}

void LoanEditorTest::theSampleTakesNoNames()
{
    m_house->book.keeping().setSample(true);
    m_form->setKind(2);
    m_form->setWho(QStringLiteral("somebody real"));
    m_form->keep();
    QVERIFY(!item().lent);
    QVERIFY(m_house->book.head().contains(QStringLiteral("example")));
    QCOMPARE(m_form->who(), QStringLiteral("somebody real"));
}

QTEST_GUILESS_MAIN(LoanEditorTest)
#include "test_loaneditor.moc"
