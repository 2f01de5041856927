// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/gates/gatetexts.h"
#include "mobile/pages/deskwork.h"
#include "mobile/pages/setupview.h"

#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keepstatus.h"
#include "core/work/keeping/athlete/keeptest.h"
#include "core/work/keeping/keepvenue.h"
#include "tests/core/work/gates/gating.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSet>
#include <QtTest>
#endif

using namespace steelyard;

/// What the set-up page says of who lifts it: reasons with what would settle them, and a state that follows them.
class GateSetupTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void nobodyIsNotLookedAt();
    void nothingStandsAgainstIt();
    void noMaximumIsLookedOver();
    void doesNotTrain();
    void theFirstReasonLeads();
    void liftedAndItIsReady();
    void aFreshTestSettlesIt();
    void anotherLifterIsAskedAnew();
    void laidOutAnew();
    void limitsReachTheDesk();
    void everyReasonHasWords_data();
    void everyReasonHasWords();
    void everyMethodHasItsCaution();

private:
    [[nodiscard]] const Athlete& person(std::size_t place) const { return *m_house->book.book().athletes().at(place); }
    void take(std::size_t place, const char* lift = "1") { m_work->take(QString::fromStdString(person(place).id.hex()), QLatin1String(lift)); }
    [[nodiscard]] const std::vector<CautionRow>& cautions() { return dynamic_cast<RowList<CautionRow>*>(m_view->cautions())->rows(); }
    [[nodiscard]] const std::vector<NoticeRow>& notices() { return dynamic_cast<RowList<NoticeRow>*>(m_view->notices())->rows(); }
    void status(Fitness fitness, std::set<Method> not_ = {});

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<DeskWork> m_work;
    std::unique_ptr<SetupView> m_view;
};

void GateSetupTest::init()
{
    m_view.reset();
    m_work.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), samples::marks(0.77, 1.27), {samples::item(4, "Long chain", samples::weighed()), samples::item(7, "Wide band", samples::band())},
           samples::setup(60, {samples::hung(4, samples::chainOn(0.1))}));
    people::fill(m_house->book, 3);
    m_work = std::make_unique<DeskWork>();
    m_work->setDesk(&m_house->desk);
    m_work->setBook(&m_house->book);
    m_view = std::make_unique<SetupView>();
    m_view->setDesk(&m_house->desk);
}

void GateSetupTest::status(Fitness fitness, std::set<Method> not_)
{
    DayStatus one;
    one.athlete = person(0).id;
    one.day = m_house->today;
    one.fitness = fitness;
    one.notMethods = std::move(not_);
    one.who = "the physiotherapist";
    keepDayStatus(m_house->book.keeping(), one, [](const Told& told) { QVERIFY(told.kept()); });
}

void GateSetupTest::nobodyIsNotLookedAt()
{
    QVERIFY(m_view->answer().gate.startsWith(QLatin1String("For nobody")));
    m_view->lookOver(static_cast<int>(CautionCode::Chains));
    QVERIFY(m_view->answer().ready);
    m_view->lookOver(gatetexts::firstCode);
    m_view->lookOver(-1);
    QVERIFY(m_view->answer().ready);
}

void GateSetupTest::nothingStandsAgainstIt()
{
    m_house->desk.desk().takeOff(0);
    take(0);
    QVERIFY(m_view->answer().ready && m_view->answer().gate.startsWith(QLatin1String("Nothing")));
}

void GateSetupTest::noMaximumIsLookedOver()
{
    take(0);
    QCOMPARE(cautions().size(), std::size_t(2));
    QCOMPARE(cautions()[0].code, static_cast<int>(CautionCode::Chains));
    QCOMPARE(cautions()[1].code, gatetexts::firstCode);
    QCOMPARE(cautions()[1].head, QStringLiteral("No maximum of hers is known"));
    QVERIFY(m_view->answer().gate.isEmpty() && !m_view->answer().stop);
    m_view->lookOver(cautions()[0].code);
    QCOMPARE(m_view->answer().state, QStringLiteral("NOT READY"));
    m_view->lookOver(cautions()[1].code);
    QCOMPARE(m_view->answer().state, QStringLiteral("READY"));
    QVERIFY(cautions()[1].looked);
}

void GateSetupTest::doesNotTrain()
{
    take(0);
    status(Fitness::None);
    QVERIFY(m_view->answer().stop);
    QCOMPARE(m_view->answer().state, QStringLiteral("DO NOT LIFT"));
    QCOMPARE(m_view->answer().reason, QStringLiteral("She does not train now"));
    QVERIFY(notices().front().stop && notices().front().body.contains(QLatin1String("the physiotherapist")) && notices().front().body.contains(QLatin1String("lifts it")));
}

/// What forbids it for her stands before what the kit has to say.
void GateSetupTest::theFirstReasonLeads()
{
    BandPlacing weak = samples::bandAt(0);
    weak.heldBy = kilograms(2);
    for (const KitItem& item : std::vector(m_house->desk.desk().kit()))
        if (item.name == "Wide band")
            m_house->desk.desk().hang({item.id, HungOn::BothSides, weak});
    QVERIFY(m_view->answer().stop && m_view->answer().reason.contains(QLatin1String("anchor")));
    take(0);
    status(Fitness::Some, {Method::Chains});
    QCOMPARE(m_view->answer().reason, QStringLiteral("Not now: chains"));
    QCOMPARE(notices()[0].head, QStringLiteral("Not now: chains"));
    QVERIFY(std::any_of(notices().begin() + 1, notices().end(), [](const NoticeRow& row) { return row.stop && row.head.contains(QLatin1String("anchor")); }));
}

void GateSetupTest::liftedAndItIsReady()
{
    m_house->desk.desk().takeOff(0);
    take(0);
    status(Fitness::None);
    QVERIFY(m_view->answer().stop);
    const RecordId which = m_house->book.book().statusesOf(person(0).id).front()->id;
    liftDayStatus(m_house->book.keeping(), person(0).id, which, {"the physiotherapist", m_house->today}, [](const Told&) {});
    QVERIFY(m_view->answer().ready);
}

void GateSetupTest::aFreshTestSettlesIt()
{
    take(0);
    StrengthTest test;
    test.athlete = person(0).id;
    test.lift = LiftId{1};
    test.day = m_house->today;
    test.load = kilograms(150);
    test.reps = 3;
    test.repsInReserve = 0;
    keepStrengthTest(m_house->book.keeping(), test, [](const Told& told) { QVERIFY(told.kept()); });
    QCOMPARE(cautions().size(), std::size_t(1));
    m_view->lookOver(static_cast<int>(CautionCode::Chains));
    QVERIFY(m_view->answer().ready && m_view->answer().gate.startsWith(QLatin1String("Nothing")));
}

void GateSetupTest::anotherLifterIsAskedAnew()
{
    take(0, "8");
    QVERIFY(std::any_of(cautions().begin(), cautions().end(), [](const CautionRow& row) { return row.head.contains(QLatin1String("overhead")); }));
    for (const CautionRow& row : std::vector(cautions()))
        m_view->lookOver(row.code);
    QVERIFY(std::all_of(cautions().begin(), cautions().end(), [](const CautionRow& row) { return row.looked; }));
    take(1, "8");
    QVERIFY(std::any_of(cautions().begin(), cautions().end(), [](const CautionRow& row) { return row.code >= gatetexts::firstCode && !row.looked; }));
}

/// As after an unlock: the desk is filled again, and whom it is for stands at the gates at once.
void GateSetupTest::laidOutAnew()
{
    take(0);
    status(Fitness::None);
    Desk& desk = m_house->desk.desk();
    const auto setup = desk.setup();
    desk.replaceAll(desk.marks(), desk.kit(), setup);
    QVERIFY(m_view->answer().stop);
}

void GateSetupTest::limitsReachTheDesk()
{
    BandPlacing held = samples::bandAt(0.05);
    held.heldBy = kilograms(1000);
    for (const KitItem& item : std::vector(m_house->desk.desk().kit()))
        if (item.name == "Wide band")
            m_house->desk.desk().hang({item.id, HungOn::BothSides, held});
    const auto said = [this](const char* words) {
        return std::any_of(notices().begin(), notices().end(), [&](const NoticeRow& row) { return (row.head + row.body).contains(QLatin1String(words)); });
    };
    QVERIFY(!said("Measured long ago") && !said("may lift"));
    m_house->today += std::chrono::days(8);
    keepLimits(m_house->book.keeping(), CoachLimits{{}, {}, {}, std::chrono::days(7), 1000, {}}, [](const Told& told) { QVERIFY(told.kept()); });
    QVERIFY(said("Measured long ago: Wide band"));
    held.heldBy = kilograms(30);
    m_house->desk.desk().rehang(1, {m_house->desk.desk().setup().hung[1].item, HungOn::BothSides, held});
    QVERIFY(said("it takes 10 times the pull"));
}

void GateSetupTest::everyReasonHasWords_data()
{
    QTest::addColumn<int>("code");
    for (int code = 0; code <= static_cast<int>(GateCode::CautionWaits); ++code)
        QTest::addRow("%d", code) << code;
}

void GateSetupTest::everyReasonHasWords()
{
    QFETCH(int, code);
    static QSet<QString> heads;
    Reason reason;
    reason.key = {static_cast<GateCode>(code), Method::Tyre, {}};
    reason.who = "Kim";
    reason.from = gating::today - std::chrono::days(200);
    reason.until = gating::today + std::chrono::days(100);
    reason.percent = 84.2;
    reason.capPercent = 70;
    reason.tested = true;
    reason.atMost = kilograms(71.26);
    const auto said = gatetexts::reason({reason, {Method::Tyre}}, gating::today);
    QVERIFY(!said.head.isEmpty() && !heads.contains(said.head));
    heads.insert(said.head);
    QVERIFY(!said.body.isEmpty() || reason.key.code == GateCode::CautionWaits);
    for (const QString& text : {said.head, said.body})
        QVERIFY2(!text.contains(QLatin1Char('%')) || text.contains(QLatin1String(" %")), qPrintable(text));
    if (reason.key.code == GateCode::OverCap) {
        QVERIFY2(said.body.contains(QLatin1String("85 %")), "a share is never said too low");
        QVERIFY2(said.body.contains(QLatin1String("71.2 kg")), "and what would do never too high");
    }
}

void GateSetupTest::everyMethodHasItsCaution()
{
    QSet<QString> heads;
    for (int number = 1; number <= static_cast<int>(lastMethod); ++number) {
        const auto said = gatetexts::caution(static_cast<Method>(number));
        QVERIFY(!said.points.isEmpty());
        heads.insert(said.head);
    }
    QCOMPARE(heads.size(), static_cast<int>(lastMethod));
}

QTEST_GUILESS_MAIN(GateSetupTest)
#include "test_gatesetup.moc"
