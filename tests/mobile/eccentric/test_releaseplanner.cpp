// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/eccentric/releaseplanner.h"

#include "core/work/keeping/keepathlete.h"
#include "mobile/eccentric/releaseform.h"
#include "mobile/eccentric/releasetexts.h"
#include "mobile/text/say.h"
#include "tests/mobile/eccentric/cleared.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QtTest>
#endif

using namespace steelyard;

/// Heavier on the way down: what is asked, what hangs for it, and whether she may.
class ReleasePlannerTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void aFirstChoiceBeginsIt();
    void whatToHang();
    void forbiddenUntilCleared();
    void readyOnceLookedOver();
    void underAge();
    void forNobody();
    void stepsAndKeys();
    void saidOfAnotherBase();
    void asLoads();
    void hungOnTheBar();
    void whoPutsBack();
    void drawnToScale();
    void inPounds();
    void eachRefusalIsSaid();

private:
    [[nodiscard]] RecordId ana() const { return m_house->book.book().athletes().front()->id; }
    void key(ReleaseForm::Part part, const char* which, double shown)
    {
        m_form->setPart(part);
        const KeepOutcome outcome = m_form->keepNumber(QLatin1String(which), shown);
        QVERIFY2(outcome.kept(), which);
    }
    /// All that is measured for hooks in her squat.
    void measure()
    {
        m_planner->setWay(0);
        key(ReleaseForm::Hook, "frame", 3.2);
        key(ReleaseForm::Hook, "scaleStep", 0.05);
        key(ReleaseForm::Hook, "radius", 25);
        key(ReleaseForm::Hook, "drop", 12);
        key(ReleaseForm::Depth, "rep:0", 77);
        key(ReleaseForm::Depth, "rep:1", 78.5);
        key(ReleaseForm::Depth, "rep:2", 76);
        key(ReleaseForm::Places, "spacing", 160);
    }
    [[nodiscard]] QString fact(const QString& head) const
    {
        const auto* facts = m_planner->facts();
        for (int i = 0; i < facts->rowCount(); ++i)
            if (formcheck::shown(*facts, i, "head").toString() == head)
                return formcheck::shown(*facts, i, "body").toString();
        return {};
    }
    [[nodiscard]] QStringList gate() const
    {
        QStringList heads;
        for (int i = 0; i < m_planner->gate()->rowCount(); ++i)
            heads << formcheck::shown(*m_planner->gate(), i, "head").toString();
        return heads;
    }
    [[nodiscard]] QString asked(int row) const { return formcheck::shown(*m_planner->asked(), row, "value").toString(); }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<DeskWork> m_work;
    std::unique_ptr<ReleasePlanner> m_planner;
    std::unique_ptr<ReleaseForm> m_form;
};

void ReleasePlannerTest::init()
{
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 3);
    m_work = std::make_unique<DeskWork>();
    m_work->setDesk(&m_house->desk);
    m_work->setBook(&m_house->book);
    m_planner = std::make_unique<ReleasePlanner>();
    m_planner->setDeskService(&m_house->desk);
    m_planner->setWork(m_work.get());
    m_form = std::make_unique<ReleaseForm>();
    m_form->setDeskService(&m_house->desk);
    m_form->setWork(m_work.get());
    m_work->take(QString::fromStdString(ana().hex()), QStringLiteral("1"));
    BarRecord bar = m_house->desk.desk().setup().bar;
    bar.trust = PlateTrust::AsMarked;
    m_house->desk.desk().setBar(bar);
}

void ReleasePlannerTest::cleanup()
{
    say::setUnits({});
    m_form.reset();
    m_planner.reset();
    m_work.reset();
    m_house.reset();
}

void ReleasePlannerTest::aFirstChoiceBeginsIt()
{
    QVERIFY(!m_planner->isPlanned());
    QCOMPARE(m_planner->way(), -1);
    QVERIFY(m_planner->shown() == ReleaseShown{});
    QCOMPARE(m_planner->facts()->rowCount(), 0);
    m_planner->setWay(7);
    QVERIFY(!m_planner->isPlanned());
    m_planner->setWay(0);
    QVERIFY(m_planner->isPlanned() && m_house->desk.desk().setup().release);
    QVERIFY2(m_planner->shown().title.contains(QStringLiteral("1RM")), qPrintable(m_planner->shown().title));
    QVERIFY(m_planner->shown().hangs.isEmpty());
    m_planner->throwAway();
    QVERIFY(!m_planner->isPlanned() && !m_house->desk.desk().setup().release);
}

void ReleasePlannerTest::whatToHang()
{
    cleared::tested(m_house->book, ana(), 100);
    measure();
    const ReleaseShown& shown = m_planner->shown();
    // 70 up and 105 down: 35 more, 17.5 a hook, 14.3 of plates; 13.75 comes nearest
    QCOMPARE(shown.hangs, QStringLiteral("70 kg"));
    QVERIFY2(shown.title.startsWith(QStringLiteral("70 kg up · 103.9")), qPrintable(shown.title));
    QVERIFY2(shown.title.contains(QStringLiteral("±")), qPrintable(shown.title));
    QVERIFY2(shown.letGo.startsWith(QStringLiteral("Each hook: ")), qPrintable(shown.letGo));
    QVERIFY2(shown.bar.startsWith(QStringLiteral("Bar, each side: ")), qPrintable(shown.bar));
    QVERIFY2(shown.length.contains(QStringLiteral("or longer")), qPrintable(shown.length));
    QVERIFY2(shown.free.contains(QStringLiteral("free at")), qPrintable(shown.free));
    QVERIFY2(fact(QStringLiteral("If one side stays on")).contains(QStringLiteral("do not press, ride to the safeties")), qPrintable(fact(QStringLiteral("If one side stays on"))));
    QVERIFY(fact(QStringLiteral("Safeties")).contains(QStringLiteral("tried with an empty bar")));
    QVERIFY(fact(QStringLiteral("Published loads, as context and no advice")).count(QLatin1Char('\n')) == 5);
    QVERIFY(fact(QStringLiteral("What she holds")).contains(QStringLiteral("Up: 70 kg at the bottom")));
}

void ReleasePlannerTest::forbiddenUntilCleared()
{
    cleared::tested(m_house->book, ana(), 100);
    measure();
    QVERIFY(m_planner->shown().forbidden && !m_planner->shown().ready);
    QCOMPARE(gate(), QStringList{QStringLiteral("Not cleared: eccentric overload")});
    QVERIFY(formcheck::shown(*m_planner->gate(), 0, "stop").toBool());
    // what is forbidden is not hung
    const Mass before = m_house->desk.desk().setup().bar.wanted;
    m_planner->hang();
    QVERIFY(m_house->desk.desk().setup().bar.wanted == before);
    cleared::byName(m_house->book, ana());
    QVERIFY(!m_planner->shown().forbidden);
    QVERIFY(gate().isEmpty());
    // over the cap it is forbidden again, with what would do
    QVERIFY(m_planner->keepNumber(QStringLiteral("down"), 140).kept());
    QVERIFY(m_planner->shown().forbidden);
    QCOMPARE(gate(), QStringList{QStringLiteral("Over the limit of 120 % of her maximum")});
    QVERIFY(formcheck::shown(*m_planner->gate(), 0, "body").toString().contains(QStringLiteral("would do")));
}

void ReleasePlannerTest::readyOnceLookedOver()
{
    cleared::tested(m_house->book, ana(), 100);
    cleared::byName(m_house->book, ana());
    measure();
    QVERIFY(!m_planner->shown().ready);
    QCOMPARE(m_planner->shown().state, QStringLiteral("Not ready: hang this bar first"));
    m_planner->hang();
    QCOMPARE(m_planner->shown().state, QStringLiteral("Look the cautions over first"));
    m_house->desk.desk().lookOver(CautionCode::Release);
    QVERIFY(m_planner->shown().ready);
    QCOMPARE(m_planner->shown().state, QStringLiteral("Ready"));
    // another step leaves it so; another bar, and what is no longer measured, do not
    m_planner->step(QStringLiteral("down"), true);
    QVERIFY(m_planner->shown().ready);
    m_house->desk.desk().stepLoad(true);
    QCOMPARE(m_planner->shown().state, QStringLiteral("Not ready: hang this bar first"));
    m_house->desk.desk().stepLoad(false);
    QVERIFY(m_planner->shown().ready);
    m_form->setPart(ReleaseForm::Hook);
    QVERIFY(m_form->clearNumber(QStringLiteral("drop")));
    QVERIFY(!m_planner->shown().ready);
    QCOMPARE(m_planner->shown().state, QStringLiteral("Not ready: something is still to measure"));
}

void ReleasePlannerTest::underAge()
{
    const RecordId bo = m_house->book.book().athletes()[1]->id;
    Athlete agreed = *m_house->book.book().athlete(bo);
    agreed.agreement = GuardianAgreement{"his mother", m_house->today};
    agreed.marks[LiftId{1}] = m_house->desk.desk().marks();
    keepAthlete(m_house->book.keeping(), agreed, m_house->book.teller());
    m_work->take(QString::fromStdString(bo.hex()), QStringLiteral("1"));
    cleared::tested(m_house->book, bo, 100);
    cleared::byName(m_house->book, bo);
    measure();
    // cleared, but not by somebody who knew it
    QVERIFY(m_planner->shown().forbidden);
    QVERIFY(gate().contains(QStringLiteral("May be under age: eccentric overload")));
}

void ReleasePlannerTest::forNobody()
{
    m_work->take({}, {});
    measure();
    m_planner->setInPercent(false);
    QVERIFY(!m_planner->shown().hangs.isEmpty() || !m_planner->shown().title.isEmpty());
    QVERIFY(!m_planner->shown().ready && !m_planner->shown().forbidden);
    QCOMPARE(m_planner->gate()->rowCount(), 0);
}

void ReleasePlannerTest::stepsAndKeys()
{
    m_planner->setWay(0);
    QCOMPARE(asked(0), QStringLiteral("70 %"));
    QCOMPARE(asked(1), QStringLiteral("105 %"));
    m_planner->step(QStringLiteral("up"), false);
    m_planner->step(QStringLiteral("down"), true);
    QCOMPARE(asked(0), QStringLiteral("67.5 %"));
    QCOMPARE(asked(1), QStringLiteral("107.5 %"));
    QVERIFY(m_planner->keepNumber(QStringLiteral("down"), 112.5).kept());
    QCOMPARE(asked(1), QStringLiteral("112.5 %"));
    QVERIFY(!m_planner->keepNumber(QStringLiteral("sideways"), 1).kept());
    m_planner->step(QStringLiteral("sideways"), true);
    for (int i = 0; i < 200; ++i)
        m_planner->step(QStringLiteral("down"), true);
    QCOMPARE(asked(1), QStringLiteral("300 %"));
}

void ReleasePlannerTest::saidOfAnotherBase()
{
    cleared::tested(m_house->book, ana(), 100);
    measure();
    m_planner->setDownOfWayUp(true);
    QCOMPARE(asked(1), QStringLiteral("150 %"));
    QVERIFY2(m_planner->shown().title.startsWith(QStringLiteral("70 kg up · 103.9")), qPrintable(m_planner->shown().title));
    m_planner->setDownOfWayUp(false);
    QCOMPARE(asked(1), QStringLiteral("105 %"));
}

void ReleasePlannerTest::asLoads()
{
    BarRecord bar = m_house->desk.desk().setup().bar;
    bar.wanted = kilograms(75);
    m_house->desk.desk().setBar(bar);
    measure();
    m_planner->setInPercent(false);
    QCOMPARE(asked(0), QStringLiteral("75 kg"));
    QCOMPARE(asked(1), QStringLiteral("90 kg"));
    m_planner->step(QStringLiteral("down"), true);
    QCOMPARE(asked(1), QStringLiteral("92.5 kg"));
    // the way up steps by what the plates make, and is the set-up's
    m_planner->step(QStringLiteral("up"), true);
    QVERIFY(m_house->desk.desk().setup().bar.wanted > kilograms(75));
    QVERIFY(m_planner->keepNumber(QStringLiteral("up"), 80).kept());
    QVERIFY(m_house->desk.desk().setup().bar.wanted == kilograms(80));
    QVERIFY(m_planner->keepNumber(QStringLiteral("down"), 110).kept());
    QCOMPARE(asked(1), QStringLiteral("110 kg"));
    QVERIFY(m_planner->shown().title.startsWith(QStringLiteral("80 kg up")));
}

void ReleasePlannerTest::hungOnTheBar()
{
    cleared::tested(m_house->book, ana(), 100);
    cleared::byName(m_house->book, ana());
    measure();
    m_planner->hang();
    QVERIFY(m_house->desk.desk().setup().bar.wanted == kilograms(70));
    QVERIFY(m_house->desk.desk().setup().release);
}

void ReleasePlannerTest::whoPutsBack()
{
    measure();
    key(ReleaseForm::Set, "reps", 6);
    QVERIFY(fact(QStringLiteral("Overloaded")).startsWith(QStringLiteral("Rep 1 of 6")));
    m_planner->setPutBack(2);
    QCOMPARE(m_planner->putBackBy(), 1);
    QVERIFY(fact(QStringLiteral("Overloaded")).startsWith(QStringLiteral("The set cannot be done")));
    key(ReleaseForm::Set, "cluster", 2);
    key(ReleaseForm::Set, "rest", 30);
    QCOMPARE(fact(QStringLiteral("Overloaded")), QStringLiteral("Reps 1, 3, 5 of 6: spotters put it back in rests of 30 s."));
    m_planner->setPutBackBy(2);
    QVERIFY(fact(QStringLiteral("Overloaded")).contains(QStringLiteral("herself, the bar in the rack")));
    m_planner->setPutBack(0);
    QCOMPARE(m_planner->putBackBy(), 0);
    m_planner->setPutBack(3);
    QCOMPARE(m_planner->putBack(), 0);
}

void ReleasePlannerTest::drawnToScale()
{
    m_planner->setWay(0);
    QVERIFY(!m_planner->drawn().there);
    measure();
    const ReleaseDrawn& drawn = m_planner->drawn();
    QVERIFY(drawn.there);
    QCOMPARE(drawn.top, 1.27);
    QVERIFY(std::abs(drawn.touch - drawn.free - 0.012) < 1e-9);
    QVERIFY(std::abs(drawn.length - drawn.touch - 0.025) < 1e-9 && std::abs(drawn.radius - 0.025) < 1e-9);
    QVERIFY(drawn.free > drawn.lowest);
    QVERIFY(drawn.freeText.contains(QStringLiteral("cm")) && drawn.sentence.contains(QStringLiteral("to scale")));
}

void ReleasePlannerTest::inPounds()
{
    cleared::tested(m_house->book, ana(), 100);
    measure();
    say::setUnits({MassUnit::Pound, LengthUnit::Inch});
    m_planner->step(QStringLiteral("down"), true);
    const ReleaseShown& shown = m_planner->shown();
    QVERIFY2(shown.title.contains(QStringLiteral("lb")) && !shown.title.contains(QStringLiteral("kg")), qPrintable(shown.title));
    QVERIFY2(shown.length.contains(QStringLiteral("in")) && !shown.length.contains(QStringLiteral("cm")), qPrintable(shown.length));
}

void ReleasePlannerTest::eachRefusalIsSaid()
{
    const QString other = releasetexts::refusal({Refusal::OutOfRange, "something else"});
    QStringList said;
    for (const char* what : {"maximum", "concentric load", "eccentric load", "base", "hook frame", "hook rating", "plates", "sleeve", "dumbbell", "depth", "reps", "sleeve radius",
                             "lip drop", "margin", "hook length", "hook spacing", "grip", "touch", "bottom", "bands", "chest", "throat"}) {
        const QString one = releasetexts::refusal({Refusal::NotThere, what});
        QVERIFY2(one != other && !said.contains(one), what);
        said << one;
    }
}

QTEST_MAIN(ReleasePlannerTest)
#include "test_releaseplanner.moc"
