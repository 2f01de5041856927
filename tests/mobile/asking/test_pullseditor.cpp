// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/asking/pullseditor.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QtTest>
#endif

using namespace steelyard;

/// Isometric pulls: keyed, kept for whom the desk is laid out, taken out again, and gone with the lifter.
class PullsEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void keptForHer();
    void halfKeyedItWaits();
    void takenOutAndUndone();
    void anotherLiftHasItsOwn();
    void notKept();
    void ofSomebodyUnderAge();
    void nobodys();
    void numbers();

private:
    void key(const char* which, double shown) { QVERIFY(m_editor->keepNumber(QLatin1String(which), shown).kept()); }
    void pull(double height, double kg)
    {
        key("height", height);
        key("pull", kg);
        m_editor->keep();
    }
    [[nodiscard]] QString cell(int row, const char* role) const
    {
        const auto* model = m_editor->pulls();
        return model->data(model->index(row, 0), model->roleNames().key(role, -1)).toString();
    }
    [[nodiscard]] QString idOf(std::size_t athlete) const { return QString::fromStdString(m_house->book.book().athletes().at(athlete)->id.hex()); }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<DeskWork> m_work;
    std::unique_ptr<PullsEditor> m_editor;
};

void PullsEditorTest::init()
{
    m_editor.reset();
    m_work.reset();
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 3);
    m_work = std::make_unique<DeskWork>();
    m_work->setDesk(&m_house->desk);
    m_work->setBook(&m_house->book);
    m_editor = std::make_unique<PullsEditor>();
    m_editor->setDeskService(&m_house->desk);
    m_editor->setWork(m_work.get());
    m_work->take(idOf(0), QStringLiteral("1"));
}

void PullsEditorTest::keptForHer()
{
    QVERIFY(!m_editor->isNobodys());
    QCOMPARE(m_editor->counts(), QStringLiteral("none yet"));
    QVERIFY(m_editor->fact().isEmpty());
    m_editor->keep(); // nothing is keyed, so nothing is kept
    QVERIFY(m_house->book.book().athletes()[0]->pulls.empty());
    key("step", 0.5);
    pull(92.5, 140);
    const auto& pulls = m_house->book.book().athletes()[0]->pulls;
    QCOMPARE(pulls.size(), std::size_t(1));
    QVERIFY(pulls[0].height == metres(0.925) && pulls[0].pull == kilograms(140) && pulls[0].lift == LiftId{1} && pulls[0].scaleStep == Entered<Mass>(kilograms(0.5)));
    QCOMPARE(pulls[0].day, m_house->book.today());
    // the scale's step stays for the next pull
    QVERIFY(m_editor->fact().isEmpty());
    QCOMPARE(m_editor->spec(QStringLiteral("step"))->shown, 0.5);
    pull(110, 150);
    QCOMPARE(m_editor->counts(), QStringLiteral("2 pulls at 2 heights"));
    // the highest first, as on the rack
    QCOMPARE(cell(0, "label"), QStringLiteral("110 cm"));
    QCOMPARE(cell(1, "value"), QStringLiteral("140 kg"));
    QCOMPARE(m_house->desk.desk().pulls().size(), std::size_t(2));
}

void PullsEditorTest::halfKeyedItWaits()
{
    key("height", 92.5);
    m_editor = std::make_unique<PullsEditor>();
    m_editor->setDeskService(&m_house->desk);
    m_editor->setWork(m_work.get());
    QCOMPARE(m_editor->spec(QStringLiteral("height"))->shown, 92.5);
    // and never for another person
    m_work->take(idOf(2), QStringLiteral("1"));
    QVERIFY(!m_editor->spec(QStringLiteral("height"))->shown);
    m_work->take(idOf(0), QStringLiteral("1"));
    QCOMPARE(m_editor->spec(QStringLiteral("height"))->shown, 92.5);
    key("pull", 140);
    QCOMPARE(m_editor->fact(), QStringLiteral("92.5 cm, 140 kg"));
    QVERIFY(m_editor->canClear(QStringLiteral("pull")) && m_editor->clearNumber(QStringLiteral("pull")));
    QVERIFY(!m_editor->clearNumber(QStringLiteral("pull")) && m_editor->fact().isEmpty());
}

void PullsEditorTest::takenOutAndUndone()
{
    pull(92.5, 140);
    m_editor->takeOut(QStringLiteral("no such"));
    QCOMPARE(m_house->book.book().athletes()[0]->pulls.size(), std::size_t(1));
    m_house->book.hush();
    m_editor->takeOut(cell(0, "recordId"));
    QVERIFY(m_house->book.book().athletes()[0]->pulls.empty() && m_house->desk.desk().pulls().empty());
    QCOMPARE(m_editor->pulls()->rowCount(), 0);
    m_house->book.undo();
    QCOMPARE(m_editor->pulls()->rowCount(), 1);
}

void PullsEditorTest::anotherLiftHasItsOwn()
{
    pull(92.5, 140);
    m_work->take(idOf(0), QStringLiteral("4"));
    QCOMPARE(m_editor->pulls()->rowCount(), 0);
    m_work->take(idOf(0), QStringLiteral("1"));
    QCOMPARE(m_editor->pulls()->rowCount(), 1);
}

void PullsEditorTest::notKept()
{
    m_house->keeper.refusal = vault::Refusal{vault::Code::DiskFullFreeSpace, 3'000'000, 400'000, 0};
    pull(92.5, 140);
    QVERIFY(!m_house->book.head().isEmpty());
    QVERIFY(m_house->book.book().athletes()[0]->pulls.empty());
    // what was keyed is there still
    QCOMPARE(m_editor->fact(), QStringLiteral("92.5 cm, 140 kg"));
}

void PullsEditorTest::ofSomebodyUnderAge()
{
    m_work->take(idOf(1), QStringLiteral("1"));
    pull(92.5, 140);
    QVERIFY(!m_house->book.head().isEmpty());
    QVERIFY(m_house->book.book().athletes()[1]->pulls.empty());
    QCOMPARE(m_editor->fact(), QStringLiteral("92.5 cm, 140 kg"));
}

void PullsEditorTest::nobodys()
{
    pull(92.5, 140);
    m_work->take(QString(), QString());
    QVERIFY(m_editor->isNobodys() && m_editor->pulls()->rowCount() == 0);
    pull(80, 120);
    pull(100, 130);
    QCOMPARE(m_house->desk.desk().pulls().size(), std::size_t(2));
    QCOMPARE(cell(0, "label"), QStringLiteral("100 cm"));
    QVERIFY(cell(0, "hint").isEmpty());
    m_editor->takeOut(cell(0, "recordId"));
    QCOMPARE(m_house->desk.desk().pulls().size(), std::size_t(1));
    QVERIFY(m_house->desk.desk().pulls()[0].height == metres(0.8));
    m_editor->takeOut(QStringLiteral("7"));
    QCOMPARE(m_house->desk.desk().pulls().size(), std::size_t(1));
    m_work->take(idOf(0), QStringLiteral("1"));
    QCOMPARE(m_editor->pulls()->rowCount(), 1);
    QCOMPARE(cell(0, "label"), QStringLiteral("92.5 cm"));
}

void PullsEditorTest::numbers()
{
    QVERIFY(!m_editor->keepNumber(QStringLiteral("weight"), 12).kept());
    QVERIFY(!m_editor->clearNumber(QStringLiteral("weight")));
    QCOMPARE(m_editor->specs().size(), std::size_t(3));
    QCOMPARE(m_editor->nextMissing(QStringLiteral("height")), QStringLiteral("pull"));
}

QTEST_GUILESS_MAIN(PullsEditorTest)
#include "test_pullseditor.moc"
