// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/pages/athleteeditor.h"

#include "tests/mobile/lookback.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// What is typed about somebody waits until it is kept, and more than name, squad and loads waits for whoever has to agree.
class AthleteEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void aNameIsEnough();
    void whatIsTypedWaits();
    void theDraftIsThereAfterTheNextStart();
    void underEighteenWaits();
    void bodySizeIsKeptToo();
    void aRefusalLeavesTheForm();
    void takenOutAndUndone();
    void marksToTakeAgain();

private:
    [[nodiscard]] QStringList keys() const;

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<AthleteEditor> m_form;
};

void AthleteEditorTest::init()
{
    m_form.reset();
    m_house = std::make_unique<StandInHouse>();
    m_form = std::make_unique<AthleteEditor>();
    m_form->setDeskService(&m_house->desk);
    m_form->setBook(&m_house->book);
}

QStringList AthleteEditorTest::keys() const
{
    QStringList list;
    for (const FieldSpec& spec : m_form->specs())
        list << spec.key;
    return list;
}

void AthleteEditorTest::aNameIsEnough()
{
    QVERIFY(!m_form->canKeep());
    m_form->setName(QStringLiteral("  "));
    QVERIFY(!m_form->canKeep());
    m_form->setName(QStringLiteral("Ana M."));
    m_form->setSquad(QStringLiteral("Rowers"));
    QVERIFY(m_form->canKeep() && m_form->isDrafted());
    QSignalSpy kept(m_form.get(), &AthleteEditor::kept);
    m_form->keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY(!m_form->isDrafted() && !m_form->canKeep());
    QCOMPARE(m_house->book.book().athletes().size(), std::size_t(1));
    QCOMPARE(m_form->athleteId().size(), 32);
    QCOMPARE(m_house->book.undoFact(), QStringLiteral("kept Ana M."));
}

void AthleteEditorTest::whatIsTypedWaits()
{
    m_form->setName(QStringLiteral("Bo"));
    AthleteEditor again;
    again.setDeskService(&m_house->desk);
    again.setBook(&m_house->book);
    QCOMPARE(again.name(), QStringLiteral("Bo"));
    QVERIFY(m_house->book.book().athletes().empty());
    again.throwDraft();
    QVERIFY(again.name().isEmpty() && !again.isDrafted());
    QVERIFY(m_house->keeper.saved.empty());
}

void AthleteEditorTest::theDraftIsThereAfterTheNextStart()
{
    m_form->setName(QStringLiteral("Bo"));
    (void)m_form->keepNumber(QStringLiteral("birthYear"), 1990);
    (void)m_form->keepNumber(QStringLiteral("mass"), 81.5);
    m_form->setNotes(QStringLiteral("left-handed"));
    m_form->agree(QStringLiteral("K."));
    vault::Opened opened;
    opened.drafts = m_house->keeper.saved;
    StandInHouse next;
    next.book.load(opened);
    AthleteEditor again;
    again.setDeskService(&next.desk);
    again.setBook(&next.book);
    QCOMPARE(again.name(), QStringLiteral("Bo"));
    QCOMPARE(again.notes(), QStringLiteral("left-handed"));
    QCOMPARE(again.agreement(), m_form->agreement());
    QCOMPARE(again.spec(QStringLiteral("birthYear"))->shown, std::optional(1990.0));
    QVERIFY(std::abs(*again.spec(QStringLiteral("mass"))->shown - 81.5) < 1e-9);
    QVERIFY(!formIn(QByteArray("something else")).has_value());
}

void AthleteEditorTest::underEighteenWaits()
{
    m_form->setName(QStringLiteral("Cleo"));
    QVERIFY(m_form->isWaiting() && !m_form->isMinor());
    QCOMPARE(keys(), QStringList({QStringLiteral("birthYear")}));
    (void)m_form->keepNumber(QStringLiteral("birthYear"), 2010);
    QVERIFY(m_form->isWaiting() && m_form->isMinor());
    QCOMPARE(keys().size(), 1);
    m_form->agree(QStringLiteral(" "));
    QVERIFY(m_form->agreement().isEmpty());
    m_form->agree(QStringLiteral("A parent"));
    QVERIFY(!m_form->isWaiting() && m_form->isMinor());
    QCOMPARE(m_form->agreement(), QStringLiteral("A parent, 2 Nov"));
    QCOMPARE(keys().size(), 3);
}

void AthleteEditorTest::bodySizeIsKeptToo()
{
    m_form->setName(QStringLiteral("Dario"));
    (void)m_form->keepNumber(QStringLiteral("birthYear"), 1990);
    (void)m_form->keepNumber(QStringLiteral("mass"), 81.5);
    (void)m_form->keepNumber(QStringLiteral("height"), 178);
    m_form->keep();
    const auto* athlete = m_house->book.book().athletes().front();
    QCOMPARE(athlete->sizes.size(), std::size_t(1));
    QVERIFY(std::abs(inKilograms(*athlete->sizes.front().mass) - 81.5) < 1e-6);
    QVERIFY(!m_form->isDrafted());
}

void AthleteEditorTest::aRefusalLeavesTheForm()
{
    m_form->setName(QStringLiteral("Edda"));
    m_house->keeper.refusal = vault::Refusal{vault::Code::DiskFullFreeSpace, 3000000, 400000};
    QSignalSpy kept(m_form.get(), &AthleteEditor::kept);
    m_form->keep();
    QCOMPARE(kept.count(), 0);
    QCOMPARE(m_form->name(), QStringLiteral("Edda"));
    QVERIFY(m_form->isDrafted());
    QCOMPARE(m_house->book.head(), QStringLiteral("Not saved: 3 MB needed, 0.4 MB free."));
    m_house->keeper.refusal.reset();
    m_form->keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY(m_house->book.head().isEmpty());
}

void AthleteEditorTest::takenOutAndUndone()
{
    m_form->setName(QStringLiteral("Femi"));
    m_form->keep();
    QSignalSpy out(m_form.get(), &AthleteEditor::takenOut);
    m_form->takeOut();
    QCOMPARE(out.count(), 1);
    QVERIFY(m_house->book.book().athletes().empty());
    m_house->book.undo();
    QCOMPARE(m_house->book.book().athletes().size(), std::size_t(1));
}

void AthleteEditorTest::marksToTakeAgain()
{
    people::fill(m_house->book, 1);
    m_form->setAthleteId(QString::fromStdString(m_house->book.book().athletes().front()->id.hex()));
    QVERIFY(m_form->again().isEmpty());
    lookback::grown(m_house->book);
    // the front squat's are a hundred days old, the back squat's of today
    QCOMPARE(m_form->again(), (QStringList{QStringLiteral("the height has changed since they were taken"), QStringLiteral("front squat")}));
    Athlete athlete = *m_house->book.book().athletes().front();
    athlete.marks[LiftId{2}].top = metres(1.27);
    keepAthlete(m_house->book.keeping(), athlete, [](const Told&) {});
    QVERIFY(m_form->again().isEmpty());
}

QTEST_GUILESS_MAIN(AthleteEditorTest)
#include "test_athleteeditor.moc"
