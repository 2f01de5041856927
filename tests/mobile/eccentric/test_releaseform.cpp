// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/eccentric/releaseform.h"

#include "tests/mobile/formcheck.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QtTest>
#endif

using namespace steelyard;

/// The numbers of a heavier way down, part by part.
class ReleaseFormTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup() { m_form.reset(); m_work.reset(); m_house.reset(); }
    void withoutAPlanThereIsNothing();
    void everyKeyOfEveryPart();
    void repsAreAList();
    void aBoxInPlaceOfReps();
    void settingsAreAList();
    void whatTheWayAsksFor();
    void lyingUnderTheBar();
    void takenAway();

private:
    void plan(ReleaseWay way)
    {
        ReleasePlan plan;
        plan.way = way;
        m_house->desk.desk().setRelease(plan);
    }
    [[nodiscard]] const ReleasePlan& kept() const { return *m_house->desk.desk().setup().release; }
    [[nodiscard]] QStringList keys() const
    {
        QStringList keys;
        for (const FieldSpec& spec : m_form->specs())
            keys << spec.key;
        return keys;
    }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<DeskWork> m_work;
    std::unique_ptr<ReleaseForm> m_form;
};

void ReleaseFormTest::init()
{
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 1);
    m_work = std::make_unique<DeskWork>();
    m_work->setDesk(&m_house->desk);
    m_work->setBook(&m_house->book);
    m_form = std::make_unique<ReleaseForm>();
    m_form->setDeskService(&m_house->desk);
    m_form->setWork(m_work.get());
    m_work->take(QString::fromStdString(m_house->book.book().athletes().front()->id.hex()), QStringLiteral("1"));
}

void ReleaseFormTest::withoutAPlanThereIsNothing()
{
    QVERIFY(m_form->specs().empty());
    QVERIFY(!m_form->keepNumber(QStringLiteral("frame"), 3).kept());
    QVERIFY(!m_form->clearNumber(QStringLiteral("frame")));
}

void ReleaseFormTest::everyKeyOfEveryPart()
{
    for (const ReleaseWay way : {ReleaseWay::Hooks, ReleaseWay::PartnerLiftsOff, ReleaseWay::PartnerAdds, ReleaseWay::BandsLetGo, ReleaseWay::DumbbellsDropped})
        for (const ReleaseForm::Part part : {ReleaseForm::Set, ReleaseForm::Hook, ReleaseForm::Depth, ReleaseForm::Places}) {
            plan(way);
            m_form->setPart(part);
            // a box is there in place of watched reps: keyed last, it takes them away
            const QStringList faults = formcheck::keepEveryKey(*m_form, {{QStringLiteral("reps"), 4}, {QStringLiteral("rep:0"), 70}, {QStringLiteral("box"), 70}});
            QStringList real;
            for (const QString& fault : faults)
                if (!fault.startsWith(QLatin1String("box ")))
                    real << fault;
            QVERIFY2(real.isEmpty(), qPrintable(real.join(QStringLiteral("; "))));
        }
}

void ReleaseFormTest::repsAreAList()
{
    plan(ReleaseWay::Hooks);
    m_form->setPart(ReleaseForm::Depth);
    QVERIFY(keys().contains(QStringLiteral("rep:0")) && !keys().contains(QStringLiteral("rep:1")));
    for (int i = 0; i < 12; ++i)
        QVERIFY(m_form->keepNumber(QStringLiteral("rep:%1").arg(i), 70 + i).kept());
    QCOMPARE(kept().measures.lowest.size(), std::size_t(12));
    QVERIFY(!keys().contains(QStringLiteral("rep:12")));
    QVERIFY(m_form->keepNumber(QStringLiteral("rep:3"), 65).kept());
    QVERIFY(kept().measures.lowest[3] == metres(0.65));
    QVERIFY(m_form->clearNumber(QStringLiteral("rep:0")));
    QCOMPARE(kept().measures.lowest.size(), std::size_t(11));
    QVERIFY(kept().measures.lowest[0] == metres(0.71));
    QVERIFY(!m_form->keepNumber(QStringLiteral("rep:13"), 70).kept());
}

void ReleaseFormTest::aBoxInPlaceOfReps()
{
    plan(ReleaseWay::Hooks);
    m_form->setPart(ReleaseForm::Depth);
    QVERIFY(m_form->keepNumber(QStringLiteral("box"), 45).kept());
    QCOMPARE(keys(), (QStringList{QStringLiteral("box"), QStringLiteral("margin")}));
    QVERIFY(m_form->clearNumber(QStringLiteral("box")));
    QVERIFY(m_form->keepNumber(QStringLiteral("rep:0"), 45).kept());
    QVERIFY(!keys().contains(QStringLiteral("box")));
}

void ReleaseFormTest::settingsAreAList()
{
    plan(ReleaseWay::Hooks);
    m_form->setPart(ReleaseForm::Hook);
    for (int i = 0; i < 8; ++i)
        QVERIFY(m_form->keepNumber(QStringLiteral("setting:%1").arg(i), 70 + 2 * i).kept());
    QVERIFY(!keys().contains(QStringLiteral("setting:8")));
    QVERIFY(m_form->clearNumber(QStringLiteral("setting:7")));
    QCOMPARE(kept().hook.settings.size(), std::size_t(7));
}

void ReleaseFormTest::whatTheWayAsksFor()
{
    m_form->setPart(ReleaseForm::Set);
    plan(ReleaseWay::Hooks);
    QCOMPARE(keys(), (QStringList{QStringLiteral("reps"), QStringLiteral("tempo")}));
    plan(ReleaseWay::PartnerAdds);
    QVERIFY(keys().contains(QStringLiteral("push")));
    plan(ReleaseWay::DumbbellsDropped);
    QVERIFY(keys().contains(QStringLiteral("dumbbell")));
    ReleasePlan clustered = kept();
    clustered.set.putBack = PutBack::EachCluster;
    m_house->desk.desk().setRelease(clustered);
    QVERIFY(keys().contains(QStringLiteral("cluster")) && keys().contains(QStringLiteral("rest")));
    m_form->setPart(ReleaseForm::Places);
    QVERIFY(!keys().contains(QStringLiteral("spacing")));
    plan(ReleaseWay::PartnerLiftsOff);
    QVERIFY(keys().contains(QStringLiteral("spacing")));
}

void ReleaseFormTest::lyingUnderTheBar()
{
    plan(ReleaseWay::Hooks);
    m_form->setPart(ReleaseForm::Places);
    QVERIFY(!keys().contains(QStringLiteral("throat")));
    m_work->take(m_work->athleteId(), QStringLiteral("6"));
    QVERIFY(keys().contains(QStringLiteral("chest")) && keys().contains(QStringLiteral("throat")));
}

void ReleaseFormTest::takenAway()
{
    plan(ReleaseWay::Hooks);
    m_form->setPart(ReleaseForm::Set);
    QVERIFY(!m_form->clearNumber(QStringLiteral("reps")) && !m_form->clearNumber(QStringLiteral("tempo")));
    QVERIFY(m_form->keepNumber(QStringLiteral("tempo"), 4.5).kept());
    QCOMPARE(kept().set.tempoDown, std::chrono::milliseconds(4500));
    m_form->setPart(ReleaseForm::Hook);
    QVERIFY(!m_form->canClear(QStringLiteral("frame")));
    QVERIFY(m_form->keepNumber(QStringLiteral("frame"), 3.2).kept());
    QVERIFY(m_form->keepNumber(QStringLiteral("drop"), 12).kept());
    QVERIFY(kept().measures.lipDrop == metres(0.012));
    QVERIFY(m_form->clearNumber(QStringLiteral("frame")) && m_form->clearNumber(QStringLiteral("drop")));
    QVERIFY(!kept().hook.frame && !kept().measures.lipDrop);
}

QTEST_MAIN(ReleaseFormTest)
#include "test_releaseform.moc"
