// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/editors/lifteditor.h"

#include "mobile/pages/liftsview.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// A lift of the coach's own: typed, kept, changed, taken out, and in the list of everybody's lifts.
class LiftEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void startsWhereTheOneLikeItDoes();
    void inEverybodysList();
    void halfTypedWaits();
    void notKept();
    void takenOut();

private:
    [[nodiscard]] const std::vector<LiftRow>& rows() { return dynamic_cast<RowList<LiftRow>*>(m_list->lifts())->rows(); }
    void add(const char* name)
    {
        m_form->setLift({});
        m_form->setName(QLatin1String(name));
        m_form->keep();
    }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<LiftsView> m_list;
    std::unique_ptr<LiftEditor> m_form;
};

void LiftEditorTest::init()
{
    m_form.reset();
    m_list.reset();
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 1);
    m_form = std::make_unique<LiftEditor>();
    m_form->setBook(&m_house->book);
    m_list = std::make_unique<LiftsView>();
    m_list->setBook(&m_house->book);
    m_list->setAthleteId(QString::fromStdString(m_house->book.book().athletes().front()->id.hex()));
}

void LiftEditorTest::startsWhereTheOneLikeItDoes()
{
    QCOMPARE(m_form->likes().front(), QStringLiteral("none of these"));
    QVERIFY(m_form->likes().contains(QStringLiteral("deadlift")) && !m_form->likes().contains(QStringLiteral("jump")));
    QVERIFY(!m_form->canKeep() && m_form->like() == 0);
    m_form->setLike(static_cast<int>(m_form->likes().indexOf(QStringLiteral("deadlift"))));
    QVERIFY(m_form->isFromFloor() && !m_form->canKeep());
    m_form->setFromFloor(false);
    m_form->setName(QStringLiteral(" Block pull "));
    QVERIFY(m_form->canKeep());
    QSignalSpy kept(m_form.get(), &LiftEditor::kept);
    m_form->keep();
    QCOMPARE(kept.count(), 1);
    const OwnLift& lift = *m_house->book.book().lifts().front();
    QVERIFY((lift == OwnLift{lift.id, "Block pull", LiftId{14}, LiftStart::OwnBottom}));
    QCOMPARE(m_form->lift(), QString::fromStdString(lift.id.hex()));
    QCOMPARE(m_form->name(), QStringLiteral("Block pull"));
    QCOMPARE(m_house->book.undoFact(), QStringLiteral("kept Block pull"));
    m_form->setLike(0);
    m_form->keep();
    QVERIFY(m_house->book.book().lifts().front()->like == LiftId{});
    m_form->setLike(99);
    m_form->setLike(-1);
    QVERIFY(!m_form->isDrafted());
}

void LiftEditorTest::inEverybodysList()
{
    const std::size_t before = rows().size();
    add("Pin squat");
    QCOMPARE(rows().size(), before + 1);
    // behind those with marks, before those without
    QVERIFY(!rows()[0].own && rows()[0].lift == QLatin1String("1"));
    QVERIFY(rows()[1].own && rows()[1].label == QLatin1String("Pin squat") && rows()[1].lift == m_form->lift());
    QCOMPARE(rows()[1].hint, QStringLiteral("yours"));
    m_form->setLike(static_cast<int>(m_form->likes().indexOf(QStringLiteral("front squat"))));
    m_form->keep();
    QCOMPARE(rows()[1].hint, QStringLiteral("yours, like the front squat"));
    QVERIFY(rows()[1].value.isEmpty());
}

void LiftEditorTest::halfTypedWaits()
{
    m_form->setName(QStringLiteral("Pin"));
    m_form->setFromFloor(true);
    LiftEditor other;
    other.setBook(&m_house->book);
    QVERIFY(other.isDrafted() && other.isFromFloor());
    QCOMPARE(other.name(), QStringLiteral("Pin"));
    other.throwDraft();
    QVERIFY(!m_form->isDrafted() && m_form->name().isEmpty());
    // typed back to what it was
    m_form->setName(QStringLiteral("Pin"));
    m_form->setName({});
    QVERIFY(!m_form->isDrafted());
}

void LiftEditorTest::notKept()
{
    m_form->setName(QStringLiteral("Pin squat"));
    m_house->keeper.refusal = vault::Refusal{vault::Code::WriteFailedTryAgain};
    m_form->keep();
    QVERIFY(!m_house->book.head().isEmpty() && m_form->isDrafted() && m_house->book.book().lifts().empty());
}

void LiftEditorTest::takenOut()
{
    m_form->takeOut();
    add("Pin squat");
    const std::size_t before = rows().size();
    QSignalSpy kept(m_form.get(), &LiftEditor::kept);
    m_form->takeOut();
    QCOMPARE(kept.count(), 1);
    QCOMPARE(rows().size(), before - 1);
    m_house->book.undo();
    QCOMPARE(rows().size(), before);
}

QTEST_GUILESS_MAIN(LiftEditorTest)
#include "test_lifteditor.moc"
