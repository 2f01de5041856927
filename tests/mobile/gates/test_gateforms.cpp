// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/gates/clearanceeditor.h"
#include "mobile/gates/standingview.h"
#include "mobile/gates/statuseditor.h"

#include "core/work/keeping/athlete/keepstatus.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;
using keeping::day;

/// What somebody may do and is cleared for: set, put right, taken back and lifted, and listed as it stands.
class GateFormsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void nothingYet();
    void aClearanceGiven();
    void needsLiftMethodAndWho();
    void anotherDayIsKeyed();
    void endsBeforeItBegins();
    void putRight();
    void takenBackWithAllLikeIt();
    void whoIsNamedBefore();
    void draftsAreOfOnePerson();
    void aMinorWaits();
    void approvesAMinor();
    void someWithWhatNot();
    void notThisLift();
    void severalAddUp();
    void lifted();
    void allAndNoneNameNothing();
    void aMinorCanBeKeptFromTraining();
    void notKept();

private:
    [[nodiscard]] QString id(int place) const { return QString::fromStdString(m_house->book.book().athletes().at(static_cast<std::size_t>(place))->id.hex()); }
    [[nodiscard]] std::vector<const Clearance*> clearances(int place = 0) const { return m_house->book.book().clearancesOf(m_house->book.book().athletes().at(static_cast<std::size_t>(place))->id); }
    [[nodiscard]] std::vector<const DayStatus*> statuses(int place = 0) const { return m_house->book.book().statusesOf(m_house->book.book().athletes().at(static_cast<std::size_t>(place))->id); }
    [[nodiscard]] static const std::vector<DatedRow>& rows(QAbstractListModel* model) { return dynamic_cast<RowList<DatedRow>*>(model)->rows(); }
    template <typename Editor>
    [[nodiscard]] std::unique_ptr<Editor> form(int place = 0, const QString& record = {})
    {
        auto made = std::make_unique<Editor>();
        made->setDesk(&m_house->desk);
        made->setBook(&m_house->book);
        made->setAthleteId(id(place));
        made->setRecordId(record);
        return made;
    }
    void give(int method = 1, const QString& who = QStringLiteral("the head coach"));
    void set(int fitness, const QList<int>& methods, int until);

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<StandingView> m_view;
};

void GateFormsTest::init()
{
    m_view.reset();
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 3);
    m_view = std::make_unique<StandingView>();
    m_view->setBook(&m_house->book);
    m_view->setAthleteId(id(0));
}

/// For the back squat, for four weeks.
void GateFormsTest::give(int method, const QString& who)
{
    const auto editor = form<ClearanceEditor>();
    editor->setLift(0);
    editor->setMethod(method);
    editor->setWho(who);
    editor->chooseUntil(2);
    QVERIFY2(editor->canKeep(), qPrintable(editor->words().trouble));
    editor->keep();
}

void GateFormsTest::set(int fitness, const QList<int>& methods, int until)
{
    const auto editor = form<StatusEditor>();
    editor->setFitness(fitness);
    for (const int method : methods)
        editor->turnMethod(method);
    editor->setWho(QStringLiteral("the physiotherapist"));
    editor->chooseUntil(until);
    QVERIFY2(editor->canKeep(), qPrintable(editor->words().trouble));
    editor->keep();
}

void GateFormsTest::nothingYet()
{
    QCOMPARE(m_view->name(), QStringLiteral("Ana M."));
    QCOMPARE(m_view->today(), QStringLiteral("all"));
    QVERIFY(m_view->what().isEmpty() && !m_view->isStop() && m_view->waits().isEmpty());
    QCOMPARE(m_view->cleared(), QStringLiteral("nothing yet"));
    QCOMPARE(m_view->clearances()->rowCount() + m_view->inForce()->rowCount() + m_view->otherDays()->rowCount(), 0);
    const auto editor = form<ClearanceEditor>();
    QVERIFY(!editor->isDrafted() && !editor->canKeep() && !editor->words().isThere);
    QCOMPARE(editor->lift(), -1);
    QCOMPARE(editor->method(), -1);
    QCOMPARE(editor->methods().mid(0, 2), (QStringList{QStringLiteral("maximal test"), QStringLiteral("eccentric overload")}));
    QCOMPARE(editor->lifts().front(), QStringLiteral("back squat"));
    QCOMPARE(editor->lifts().size(), static_cast<int>(shippedLifts().size()));
    QVERIFY(!editor->mayBeMinor());
}

void GateFormsTest::aClearanceGiven()
{
    give();
    QCOMPARE(clearances().size(), std::size_t(1));
    const Clearance& kept = *clearances().front();
    QVERIFY(kept.lift == LiftId{1} && kept.method == Method::EccentricRelease && kept.day == m_house->today && kept.until == m_house->today + std::chrono::weeks(4));
    QCOMPARE(kept.who, std::string("the head coach"));
    QVERIFY(!kept.approvesMinor && !kept.takenBack);
    QCOMPARE(m_view->cleared(), QStringLiteral("1 holds"));
    QCOMPARE(rows(m_view->clearances())[0].label, QStringLiteral("back squat: eccentric overload"));
    QCOMPARE(rows(m_view->clearances())[0].hint, QStringLiteral("the head coach, from 2 Nov until 30 Nov"));
    QCOMPARE(rows(m_view->clearances())[0].value, QStringLiteral("holds"));
    QCOMPARE(m_house->book.undoFact(), QStringLiteral("gave a clearance"));
    m_house->book.undo();
    QVERIFY(clearances().empty());
    m_house->today = day(2026, 12, 1);
}

void GateFormsTest::needsLiftMethodAndWho()
{
    const auto editor = form<ClearanceEditor>();
    editor->setWho(QStringLiteral("the head coach"));
    QVERIFY(!editor->canKeep() && editor->words().trouble.contains(QLatin1String("lift")));
    editor->setLift(0);
    QVERIFY(!editor->canKeep() && editor->words().trouble.contains(QLatin1String("method")));
    editor->setMethod(0);
    QVERIFY(editor->canKeep());
    editor->setWho(QStringLiteral("  "));
    QVERIFY(!editor->canKeep());
    editor->keep();
    QVERIFY(clearances().empty());
    for (const int outside : {-1, 99}) {
        editor->setLift(outside);
        editor->setMethod(outside);
    }
    QCOMPARE(editor->lift(), 0);
    QCOMPARE(editor->method(), 0);
}

void GateFormsTest::anotherDayIsKeyed()
{
    const auto editor = form<ClearanceEditor>();
    QVERIFY(editor->from()->specs().empty() && editor->until()->specs().empty());
    editor->chooseFrom(1);
    QVERIFY(editor->from()->keepNumber(QStringLiteral("month"), 12.0).kept());
    QCOMPARE(editor->period().text, QStringLiteral("from 2 Dec on"));
    const int other = static_cast<int>(editor->period().untils.size()) - 1;
    editor->chooseUntil(other);
    QVERIFY(editor->until()->keepNumber(QStringLiteral("day"), 24.0).kept());
    QCOMPARE(editor->period().text, QStringLiteral("from 2 Dec to the end of 24 Dec"));
    editor->setLift(0);
    editor->setMethod(0);
    editor->setWho(QStringLiteral("Kim"));
    editor->keep();
    QVERIFY(clearances().front()->day == day(2026, 12, 2) && clearances().front()->until == day(2026, 12, 24));
    QCOMPARE(rows(m_view->clearances())[0].value, QStringLiteral("from 2 Dec on"));
    QCOMPARE(m_view->cleared(), QStringLiteral("nothing yet"));
}

void GateFormsTest::endsBeforeItBegins()
{
    const auto editor = form<ClearanceEditor>();
    editor->setLift(0);
    editor->setMethod(0);
    editor->setWho(QStringLiteral("Kim"));
    editor->chooseUntil(static_cast<int>(editor->period().untils.size()) - 1);
    QVERIFY(editor->until()->keepNumber(QStringLiteral("day"), 1.0).kept());
    QVERIFY(!editor->canKeep() && editor->words().trouble.contains(QLatin1String("before it begins")));
    QVERIFY(editor->until()->keepNumber(QStringLiteral("day"), 31.0).kept());
    QVERIFY2(!editor->canKeep() && editor->words().trouble.contains(QLatin1String("no such day")), "November has thirty");
}

void GateFormsTest::putRight()
{
    give();
    const QString which = rows(m_view->clearances())[0].recordId;
    const auto editor = form<ClearanceEditor>(0, which);
    QVERIFY(editor->words().isThere && !editor->isDrafted() && !editor->canKeep());
    QCOMPARE(editor->method(), 1);
    editor->setMethod(0);
    m_view->refresh();
    QCOMPARE(rows(m_view->clearances())[0].hint, QStringLiteral("changes not kept"));
    editor->setMethod(1);
    QVERIFY2(!editor->isDrafted(), "chosen back to what it was");
    editor->setMethod(0);
    QSignalSpy kept(editor.get(), &GateForm::kept);
    editor->keep();
    QCOMPARE(kept.count(), 1);
    QCOMPARE(clearances().size(), std::size_t(1));
    QVERIFY(clearances().front()->method == Method::MaximalTest && clearances().front()->until == day(2026, 11, 30));
}

void GateFormsTest::takenBackWithAllLikeIt()
{
    give();
    give();
    give(0);
    const QString which = rows(m_view->clearances())[2].recordId;
    const auto editor = form<ClearanceEditor>(0, which);
    editor->end({});
    QVERIFY2(!clearances().front()->takenBack, "nobody is named");
    QVERIFY(!m_house->book.head().isEmpty());
    editor->end(QStringLiteral("the doctor"));
    int taken = 0;
    for (const Clearance* one : clearances())
        taken += one->takenBack ? 1 : 0;
    QCOMPARE(taken, 2);
    QCOMPARE(m_view->cleared(), QStringLiteral("1 holds"));
    QCOMPARE(rows(m_view->clearances())[0].label, QStringLiteral("back squat: maximal test"));
    QCOMPARE(rows(m_view->clearances())[2].value, QStringLiteral("taken back"));
    QVERIFY(rows(m_view->clearances())[2].hint.endsWith(QLatin1String("; taken back: the doctor, 2 Nov")));
    m_house->book.undo();
    QCOMPARE(m_view->cleared(), QStringLiteral("3 hold"));
}

void GateFormsTest::whoIsNamedBefore()
{
    QVERIFY(form<ClearanceEditor>()->names().isEmpty());
    give(0, QStringLiteral("Kim"));
    give(1, QStringLiteral("Lee"));
    give(2, QStringLiteral("Kim"));
    QStringList names = form<StatusEditor>(2)->names();
    names.sort();
    QCOMPARE(names, (QStringList{QStringLiteral("Kim"), QStringLiteral("Lee")}));
}

void GateFormsTest::draftsAreOfOnePerson()
{
    const auto hers = form<StatusEditor>(0), other = form<StatusEditor>(2);
    hers->setFitness(2);
    QVERIFY(hers->isDrafted() && !other->isDrafted());
    QCOMPARE(other->fitness(), -1);
    QCOMPARE(form<StatusEditor>(0)->fitness(), 2);
    hers->throwDraft();
    QCOMPARE(hers->fitness(), -1);
}

void GateFormsTest::aMinorWaits()
{
    m_view->setAthleteId(id(1));
    QVERIFY(m_view->waits().contains(QLatin1String("guardian")));
    m_view->setAthleteId(id(2));
    QVERIFY(m_view->waits().contains(QLatin1String("birth year")));
    const auto editor = form<ClearanceEditor>(1);
    editor->setLift(0);
    editor->setMethod(0);
    editor->setWho(QStringLiteral("Kim"));
    QVERIFY(!editor->canKeep() && editor->words().trouble == editor->words().waits);
}

void GateFormsTest::approvesAMinor()
{
    Athlete bo = *m_house->book.book().athletes()[1];
    bo.agreement = GuardianAgreement{"his father", m_house->today};
    keepAthlete(m_house->book.keeping(), bo, [](const Told&) {});
    const auto editor = form<ClearanceEditor>(1);
    QVERIFY(editor->mayBeMinor() && !editor->approvesMinor());
    editor->setLift(0);
    editor->setMethod(0);
    editor->setWho(QStringLiteral("Kim"));
    editor->setApprovesMinor(true);
    editor->keep();
    QVERIFY(clearances(1).front()->approvesMinor);
}

void GateFormsTest::someWithWhatNot()
{
    const auto editor = form<StatusEditor>();
    editor->setWho(QStringLiteral("the physiotherapist"));
    QVERIFY(!editor->canKeep() && editor->words().trouble.contains(QLatin1String("all, some or none")));
    editor->setFitness(1);
    QVERIFY2(!editor->canKeep() && editor->words().trouble.contains(QLatin1String("what not")), "some, and nothing named");
    editor->turnMethod(8);
    editor->turnGroup(2);
    editor->turnGroup(0);
    editor->turnGroup(0);
    QCOMPARE(editor->notMethods(), QList<int>{8});
    QCOMPARE(editor->notGroups(), QList<int>{2});
    editor->turnMethod(99);
    editor->turnGroup(-1);
    QCOMPARE(editor->notMethods(), QList<int>{8});
    editor->setText(QStringLiteral("left shoulder"));
    editor->chooseUntil(4);
    editor->keep();
    const DayStatus& kept = *statuses().front();
    QVERIFY(kept.fitness == Fitness::Some && kept.notMethods == std::set{Method::Overhead} && kept.notGroups == std::set{LiftGroup::Press} && kept.text == "left shoulder");
    QVERIFY(kept.until == day(2026, 11, 16));
    QCOMPARE(m_view->today(), QStringLiteral("some, until 16 Nov"));
    QCOMPARE(m_view->what(), QStringLiteral("not: presses, overhead · left shoulder"));
    QCOMPARE(rows(m_view->inForce())[0].hint, QStringLiteral("the physiotherapist, from 2 Nov until 16 Nov"));
}

void GateFormsTest::notThisLift()
{
    const auto editor = form<StatusEditor>();
    editor->setWho(QStringLiteral("the physiotherapist"));
    editor->setFitness(1);
    const auto hers = m_house->book.book().athletes().front()->marks.size();
    QCOMPARE(editor->herLiftCount(), static_cast<int>(hers));
    QVERIFY(editor->lifts().size() > editor->herLiftCount() && editor->notLifts().isEmpty());
    const auto step = static_cast<int>(editor->lifts().indexOf(QStringLiteral("step-up")));
    QVERIFY(step >= editor->herLiftCount());
    editor->turnLift(step);
    // named, it stands among hers
    QCOMPARE(editor->herLiftCount(), static_cast<int>(hers) + 1);
    QCOMPARE(editor->notLifts().size(), 1);
    QVERIFY(editor->notLifts().front() < editor->herLiftCount());
    QCOMPARE(editor->lifts().at(editor->notLifts().front()), QStringLiteral("step-up"));
    editor->turnLift(-1);
    editor->turnLift(static_cast<int>(editor->lifts().size()));
    QVERIFY(editor->canKeep());
    editor->keep();
    const DayStatus kept = *statuses().front();
    QCOMPARE(kept.notLifts.size(), std::size_t(1));
    QVERIFY(m_view->what().startsWith(QStringLiteral("not: step-up")));
    // put right, it may be done again, and then nothing is said
    const auto again = form<StatusEditor>(0, QString::fromStdString(kept.id.hex()));
    again->turnLift(again->notLifts().front());
    QVERIFY(again->notLifts().isEmpty() && !again->canKeep());
}

void GateFormsTest::severalAddUp()
{
    set(1, {8}, 4);
    set(1, {15}, 1);
    QCOMPARE(m_view->inForce()->rowCount(), 2);
    QCOMPARE(m_view->what(), QStringLiteral("not: overhead, jumps and landings"));
    QVERIFY(!m_view->isStop());
    set(2, {}, 1);
    QCOMPARE(m_view->today(), QStringLiteral("none, until 16 Nov"));
    QVERIFY(m_view->isStop());
    // a new one ends none of the others
    set(0, {}, 0);
    QVERIFY(m_view->isStop());
    m_house->today = day(2026, 11, 3);
    m_view->refresh();
    QCOMPARE(m_view->today(), QStringLiteral("some, until 16 Nov"));
    QCOMPARE(m_view->what(), QStringLiteral("not: overhead"));
    QCOMPARE(m_view->otherDays()->rowCount(), 2);
    QCOMPARE(rows(m_view->otherDays())[0].value, QStringLiteral("over"));
}

void GateFormsTest::lifted()
{
    set(2, {}, 0);
    QCOMPARE(m_view->today(), QStringLiteral("none"));
    const auto editor = form<StatusEditor>(0, rows(m_view->inForce())[0].recordId);
    QVERIFY(editor->words().isThere);
    QSignalSpy kept(editor.get(), &GateForm::kept);
    editor->end(QStringLiteral("the physiotherapist"));
    QCOMPARE(kept.count(), 1);
    QCOMPARE(m_view->today(), QStringLiteral("all"));
    QCOMPARE(rows(m_view->otherDays())[0].value, QStringLiteral("lifted"));
    m_house->book.undo();
    QCOMPARE(m_view->today(), QStringLiteral("none"));
}

void GateFormsTest::allAndNoneNameNothing()
{
    const auto editor = form<StatusEditor>();
    editor->setFitness(1);
    editor->turnMethod(8);
    editor->setFitness(2);
    editor->setWho(QStringLiteral("Kim"));
    editor->keep();
    QVERIFY(statuses().front()->fitness == Fitness::None && statuses().front()->notMethods.empty());
}

void GateFormsTest::aMinorCanBeKeptFromTraining()
{
    const auto editor = form<StatusEditor>(1);
    editor->setWho(QStringLiteral("Kim"));
    editor->setFitness(1);
    editor->turnMethod(8);
    QVERIFY(!editor->canKeep() && editor->words().trouble == editor->words().waits && !editor->words().waits.isEmpty());
    editor->setFitness(2);
    QVERIFY(editor->canKeep());
    editor->setText(QStringLiteral("knee"));
    QVERIFY2(!editor->canKeep(), "words wait too");
    editor->setText({});
    editor->keep();
    QVERIFY(statuses(1).front()->fitness == Fitness::None);
}

void GateFormsTest::notKept()
{
    m_house->keeper.refusal = vault::Refusal{vault::Code::DiskFullFreeSpace};
    const auto editor = form<StatusEditor>();
    editor->setFitness(2);
    editor->setWho(QStringLiteral("Kim"));
    editor->keep();
    QVERIFY(!m_house->book.head().isEmpty() && editor->isDrafted());
    QCOMPARE(editor->fitness(), 2);
    QCOMPARE(m_view->today(), QStringLiteral("all"));
}

QTEST_GUILESS_MAIN(GateFormsTest)
#include "test_gateforms.moc"
