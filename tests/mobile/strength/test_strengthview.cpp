// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/strength/strengthview.h"

#include "core/work/keeping/putright.h"
#include "core/work/records/codec.h"
#include "mobile/asking/hangasker.h"
#include "mobile/pages/deskwork.h"
#include "mobile/pages/setupview.h"
#include "mobile/strength/liftstrengthview.h"
#include "mobile/strength/strengthtexts.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"
#include "tests/mobile/strength/tested.h"

#include <QtTest>
#endif

using namespace steelyard;

/// How strong somebody is, as the pages say it.
class StrengthViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void nothingAtFirst();
    void whatCountsOfEachLift();
    void aMinorWaits();
    void theHistoryOfALift();
    void thePicture();
    void refusalsInWords_data();
    void refusalsInWords();
    void percentOnTheSetUp();
    void theMaximumFillsIn();

private:
    [[nodiscard]] QString row(int at, const char* role) const { return formcheck::shown(*m_view->lifts(), at, role).toString(); }
    [[nodiscard]] QString test(int at, const char* role) const { return formcheck::shown(*m_lift->tests(), at, role).toString(); }
    [[nodiscard]] QString idOf(std::size_t place) const { return QString::fromStdString(m_house->book.book().athletes().at(place)->id.hex()); }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<StrengthView> m_view;
    std::unique_ptr<LiftStrengthView> m_lift;
};

void StrengthViewTest::init()
{
    m_view.reset();
    m_lift.reset();
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 2);
    m_view = std::make_unique<StrengthView>();
    m_view->setBook(&m_house->book);
    m_view->setAthleteId(idOf(0));
    m_lift = std::make_unique<LiftStrengthView>();
    m_lift->setBook(&m_house->book);
    m_lift->setAthleteId(idOf(0));
    m_lift->setLift(QStringLiteral("1"));
}

void StrengthViewTest::nothingAtFirst()
{
    QVERIFY(!m_view->isAny() && !m_view->isScaled() && m_view->waits().isEmpty());
    QCOMPARE(m_view->name(), QStringLiteral("Ana M."));
    // the one with bar marks first
    QCOMPARE(row(0, "lift"), QStringLiteral("1"));
    QCOMPARE(row(0, "value"), QStringLiteral("not tested"));
    // no carries, jumps, throws
    QCOMPARE(m_view->lifts()->rowCount(), 27);
    QVERIFY(m_lift->counts().isEmpty() && m_lift->days().isEmpty() && m_lift->tests()->rowCount() == 0);
}

/// 95 kg × 5 with 1 in reserve: six reps by seven formulas, five at the low end, seven at the high one.
void StrengthViewTest::whatCountsOfEachLift()
{
    tested::fill(m_house->book);
    QVERIFY(m_view->isAny() && m_view->isScaled());
    QCOMPARE(row(0, "label"), QStringLiteral("back squat"));
    QCOMPARE(row(0, "value"), QStringLiteral("106 to 118 kg"));
    const QStringList lines = row(0, "hint").split(QLatin1Char('\n'));
    QCOMPARE(lines.size(), 2);
    QVERIFY2(lines[0].startsWith(QStringLiteral("114")) && lines[0].contains(QStringLiteral("estimated, 10 days old")), qPrintable(lines[0]));
    QVERIFY2(lines[1].contains(QStringLiteral("F/M 1.62 ± 0.1")) && lines[1].contains(QStringLiteral("F/M^0.67 ")), qPrintable(lines[1]));
    QCOMPARE(row(1, "label"), QStringLiteral("chin-up"));
    QCOMPARE(row(1, "value"), QStringLiteral("80 to 82.5 kg"));
    QVERIFY(row(1, "hint").contains(QStringLiteral("her body is in it")) && row(1, "hint").contains(QStringLiteral("tested")));
    m_house->today += std::chrono::days(120);
    m_view->setAthleteId(idOf(0));
    QVERIFY2(row(0, "hint").contains(QStringLiteral("older than your limit")), qPrintable(row(0, "hint")));
}

void StrengthViewTest::aMinorWaits()
{
    m_view->setAthleteId(idOf(1));
    QCOMPARE(m_view->waits().value(0), QStringLiteral("A guardian has to agree first."));
}

void StrengthViewTest::theHistoryOfALift()
{
    tested::fill(m_house->book);
    QCOMPARE(m_lift->tests()->rowCount(), 6);
    // the last first: with chains, then plain ones that it is not compared with
    QVERIFY2(test(0, "day").contains(QStringLiteral("chains")), qPrintable(test(0, "day")));
    QVERIFY(test(0, "cut").isEmpty() && !test(1, "cut").isEmpty());
    QCOMPARE(test(1, "range"), QStringLiteral("106 to 118 kg"));
    // the only one of its day says all by its label
    QVERIFY(test(1, "why").isEmpty() && test(1, "hint").isEmpty() && test(1, "label") == QStringLiteral("95 kg × 5, 1 in reserve"));
    QCOMPARE(test(2, "range"), QStringLiteral("no maximum"));
    QVERIFY2(test(2, "hint").contains(QStringLiteral("More than 10 reps")), qPrintable(test(2, "hint")));
    QVERIFY(formcheck::shown(*m_lift->tests(), 2, "refused").toBool() && test(2, "cut").isEmpty());
    // a set of the day that shows more than its test
    QVERIFY2(test(3, "why").contains(QStringLiteral("no maximum")), qPrintable(test(3, "why")));
    QVERIFY(test(4, "day").isEmpty() && test(4, "hint").startsWith(QStringLiteral("by itself: ")));
    QCOMPARE(m_lift->counts().value(0), QStringLiteral("106 to 118 kg"));
    QVERIFY(m_lift->counts().value(1).contains(QStringLiteral("estimated 23 Oct")));
}

void StrengthViewTest::thePicture()
{
    tested::fill(m_house->book);
    const QVariantList days = m_lift->days();
    QCOMPARE(days.size(), 4);
    QCOMPARE(days[0].toMap().value(QStringLiteral("at")).toDouble(), 0.0);
    QCOMPARE(days[1].toMap().value(QStringLiteral("at")).toDouble(), 60.0);
    QVERIFY(days[1].toMap().value(QStringLiteral("tested")).toBool() && !days[1].toMap().value(QStringLiteral("breaks")).toBool());
    QVERIFY(!days[2].toMap().value(QStringLiteral("breaks")).toBool() && days[3].toMap().value(QStringLiteral("breaks")).toBool());
    QCOMPARE(days[1].toMap().value(QStringLiteral("high")).toDouble(), 107.5);
    QCOMPARE(m_lift->sentence().count(QStringLiteral(" to ")), 4);
    QCOMPARE(m_lift->unit(), QStringLiteral("kg"));
}

void StrengthViewTest::refusalsInWords_data()
{
    QTest::addColumn<int>("reps");
    QTest::addColumn<int>("reserve");
    QTest::addColumn<bool>("missed");
    QTest::addColumn<bool>("maximum");
    QTest::addColumn<QString>("head");
    QTest::newRow("missed") << 4 << 0 << true << false << QStringLiteral("A rep was missed");
    QTest::newRow("none done") << 0 << 0 << true << false << QStringLiteral("No rep was done");
    QTest::newRow("too many") << 11 << 0 << false << false << QStringLiteral("More than 10 reps with those in reserve");
    QTest::newRow("too many with the reserve") << 8 << 3 << false << false << QStringLiteral("More than 10 reps with those in reserve");
    QTest::newRow("too far from failure") << 3 << 6 << false << false << QStringLiteral("More than 5 in reserve");
    QTest::newRow("a jump too large") << 1 << 0 << false << true << QStringLiteral("The jump is not smaller than the load");
}

void StrengthViewTest::refusalsInWords()
{
    QFETCH(int, reps);
    QFETCH(int, reserve);
    QFETCH(bool, missed);
    QFETCH(bool, maximum);
    StrengthTest made = tested::set(m_house->book, 1, 60, reps, reserve);
    made.missed = missed;
    made.maximum = maximum;
    if (maximum)
        made.leastJump = Entered<Mass>(kilograms(70));
    const auto max = oneRepMaxFrom(made);
    QVERIFY(!max);
    const auto said = strengthtexts::refusal(max.error(), made);
    QTEST(said.head, "head");
    QVERIFY(!said.body.isEmpty());
}

void StrengthViewTest::percentOnTheSetUp()
{
    DeskWork work;
    work.setDesk(&m_house->desk);
    work.setBook(&m_house->book);
    m_house->desk.desk().setBar(samples::bar(95));
    SetupView view;
    view.setDesk(&m_house->desk);
    work.take(idOf(0), QStringLiteral("1"));
    QCOMPARE(view.answer().percents.value(0), QStringLiteral("not tested"));
    QVERIFY(view.answer().percents.value(1).contains(QStringLiteral("up to 10 reps")));
    tested::fill(m_house->book);
    QVERIFY2(view.answer().percents.value(0).startsWith(QStringLiteral("84 ±")) && view.answer().percents.value(0).endsWith(QStringLiteral("%")), qPrintable(view.answer().percents.value(0)));
    const QString said = view.answer().percents.value(1);
    for (const char* part : {"at the bottom", "in the sticking zone", "at the top", "on the mean of 114", "106 to 118 kg", "estimated 23 Oct"})
        QVERIFY2(said.contains(QLatin1String(part)), qPrintable(said));
    // another lift of hers has its own
    work.take(idOf(0), QStringLiteral("6"));
    QCOMPARE(view.answer().percents.value(0), QStringLiteral("not tested"));
    work.take(idOf(0), QStringLiteral("1"));
    const RecordId id = m_house->book.book().testsOf(m_house->book.book().athletes().front()->id, LiftId{1})[4]->id;
    takeOut(m_house->book.keeping(), strengthTestPlace(id, m_house->book.book().athletes().front()->id), m_house->book.teller());
    QVERIFY2(view.answer().percents.value(1).contains(QStringLiteral("tested 23 Sep")), qPrintable(view.answer().percents.value(1)));
}

void StrengthViewTest::theMaximumFillsIn()
{
    tested::fill(m_house->book);
    DeskWork work;
    work.setDesk(&m_house->desk);
    work.setBook(&m_house->book);
    work.take(idOf(0), QStringLiteral("1"));
    HangAsker asker;
    asker.setDeskService(&m_house->desk);
    asker.setInPercent(true);
    QCOMPARE(asker.maximum().size(), 3);
    QVERIFY(asker.maximum()[0].startsWith(QStringLiteral("114")) && asker.maximum()[1].contains(QStringLiteral("estimated 23 Oct")));
    QVERIFY(asker.spec(QStringLiteral("maximum"))->filledIn && !asker.canClear(QStringLiteral("maximum")));
    QVERIFY(asker.oneRepMax().isEmpty());
    QVERIFY(asker.keepNumber(QStringLiteral("maximum"), 120).kept());
    QCOMPARE(asker.maximum(), QStringList({QStringLiteral("120 kg"), QStringLiteral("typed for now, not tested")}));
    QVERIFY(!asker.spec(QStringLiteral("maximum"))->filledIn && asker.clearNumber(QStringLiteral("maximum")));
    QCOMPARE(asker.maximum().size(), 3);
    asker.stop();
}

QTEST_GUILESS_MAIN(StrengthViewTest)
#include "test_strengthview.moc"
