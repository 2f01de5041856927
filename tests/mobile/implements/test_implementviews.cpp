// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/implements/arrivalview.h"
#include "mobile/implements/capeditor.h"
#include "mobile/implements/hereview.h"
#include "mobile/implements/usetexts.h"
#include "mobile/implements/useview.h"

#include "core/work/keeping/keepathlete.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/implements/awaypitch.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;
using awaypitch::tyre, awaypitch::keg;

/// What is here that she may use: listed, with every reason in words, what is looked over before, and what it is held against.
class ImplementViewsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void listed();
    void nowhereAndNobody();
    void whyNot();
    void lookedOver();
    void flipInFigures();
    void heldAgainst();
    void platesOnHandles();
    void aBellThatIsSet();
    void capTakenBack();
    void capIsKeyed();
    void onArrival();
    void eachReasonIsSaid();

private:
    [[nodiscard]] RecordId ana() const { return m_house->book.book().athletes().front()->id; }
    RecordId add(const char* name, const Measured& measured) { return awaypitch::add(m_house->book, m_venue, name, measured); }
    void tested(LiftId lift, double kg) { awaypitch::tested(m_house->book, ana(), lift, kg); }
    [[nodiscard]] QStringList heads(QAbstractListModel* model) const
    {
        QStringList all;
        for (int i = 0; i < model->rowCount(); ++i)
            all << formcheck::shown(*model, i, "head").toString();
        return all;
    }
    [[nodiscard]] QVariant here(int row, const char* role) { return formcheck::shown(*m_here->things(), row, role); }
    void use(const RecordId& item)
    {
        m_use->setAthleteId(QString::fromStdString(ana().hex()));
        m_use->setItemId(QString::fromStdString(item.hex()));
    }
    void lookAllOver()
    {
        for (int i = 0; i < m_use->cautions()->rowCount(); ++i)
            m_use->lookOver(formcheck::shown(*m_use->cautions(), i, "code").toInt());
    }

    RecordId m_venue;
    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<HereView> m_here;
    std::unique_ptr<UseView> m_use;
};

void ImplementViewsTest::init()
{
    m_here.reset();
    m_use.reset();
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 2);
    m_venue = awaypitch::venue(m_house->book);
    m_here = std::make_unique<HereView>();
    m_here->setBook(&m_house->book);
    m_here->setAthleteId(QString::fromStdString(ana().hex()));
    m_here->setVenueId(QString::fromStdString(m_venue.hex()));
    m_use = std::make_unique<UseView>();
    m_use->setBook(&m_house->book);
}

void ImplementViewsTest::listed()
{
    QVERIFY(m_here->trouble().contains(QStringLiteral("Enter it in Kit")) && m_here->counts().isEmpty());
    add("Old tyre", tyre());
    add("Blue keg", keg(KegPressure::NotKnown));
    add("Tractor tyre", awaypitch::unknownTyre());
    QCOMPARE(m_here->things()->rowCount(), 3);
    QCOMPARE(m_here->name(), QStringLiteral("Ana M."));
    QCOMPARE(m_here->venue(), QStringLiteral("Away pitch"));
    QVERIFY(m_here->trouble().isEmpty());
    QCOMPARE(m_here->counts(), QStringLiteral("0 she may use, 0 to look over first, 3 not now"));
    QVERIFY(here(0, "stop").toBool() && !here(0, "permits").toBool());
    QStringList things, masses;
    for (int i = 0; i < 3; ++i) {
        things << here(i, "thing").toString();
        masses << here(i, "mass").toString();
        QCOMPARE(here(i, "may").toString(), QStringLiteral("not now"));
        QVERIFY2(!here(i, "why").toString().isEmpty(), qPrintable(things.back()));
    }
    things.sort();
    QCOMPARE(things, (QStringList{QStringLiteral("Blue keg"), QStringLiteral("Old tyre"), QStringLiteral("Tractor tyre")}));
    QVERIFY(masses.filter(QStringLiteral("150 ± ")).size() == 1 && masses.filter(QStringLiteral("mass not known")).size() == 1);
}

void ImplementViewsTest::nowhereAndNobody()
{
    add("Old tyre", tyre());
    m_here->setVenueId({});
    QVERIFY(m_here->trouble().contains(QStringLiteral("where you are")) && m_here->things()->rowCount() == 0);
    m_here->setVenueId(QString::fromStdString(m_venue.hex()));
    m_here->setAthleteId(QStringLiteral("nobody"));
    QVERIFY(m_here->trouble().contains(QStringLiteral("whom it is for")) && m_here->things()->rowCount() == 0);
    QVERIFY(m_use->words() == UseWords{} && m_use->lifts().isEmpty() && m_use->kind().isEmpty());
}

void ImplementViewsTest::whyNot()
{
    use(add("Blue keg", keg(KegPressure::Holding)));
    QCOMPARE(m_use->words().thing, QStringLiteral("Blue keg"));
    QCOMPARE(m_use->words().who, QStringLiteral("Ana M."));
    QVERIFY(m_use->words().stop && !m_use->words().ready);
    QVERIFY2(heads(m_use->stops()).contains(QStringLiteral("It holds gas")), qPrintable(heads(m_use->stops()).join(QLatin1Char('|'))));
    QCOMPARE(m_use->kind(), QStringLiteral("keg"));
    QVERIFY(m_use->lifts().size() >= 2);
    m_use->setLift(9);
    QCOMPARE(m_use->lift(), 0);
    m_use->setLift(1);
    QCOMPARE(m_use->lift(), 1);
}

void ImplementViewsTest::lookedOver()
{
    const RecordId blue = add("Blue keg", keg(KegPressure::Released));
    use(blue);
    m_use->setLift(1);
    QVERIFY2(!m_use->words().stop, qPrintable(heads(m_use->stops()).join(QLatin1Char('|'))));
    QVERIFY(!m_use->words().ready && m_use->cautions()->rowCount() > 0);
    QVERIFY(heads(m_use->cautions()).contains(QStringLiteral("Held against no lift of hers")));
    m_use->lookOver(-1);
    m_use->lookOver(99);
    QVERIFY(!m_use->words().ready);
    lookAllOver();
    QVERIFY(m_use->words().ready);
    // for another lift, and for somebody else, it is looked over anew
    m_use->setLift(0);
    QVERIFY(!m_use->words().ready);
    m_use->setLift(1);
    QVERIFY(m_use->words().ready);
    m_use->setAthleteId(QString::fromStdString(m_house->book.book().athletes()[1]->id.hex()));
    m_use->setAthleteId(QString::fromStdString(ana().hex()));
    QVERIFY(!m_use->words().ready);
}

void ImplementViewsTest::flipInFigures()
{
    TyreMeasurement small = tyre(24);
    const RecordId id = add("Small tyre", small);
    use(id);
    QVERIFY2(m_use->words().figures.contains(QStringLiteral("N straight up")), qPrintable(m_use->words().figures));
    QVERIFY(m_use->words().against.isEmpty());
    // 60 kg, 1.3 m by 0.4 m: half its weight flat, less at each angle, and nothing at 72.9°
    QCOMPARE(m_use->words().flip.size(), 5);
    QVERIFY2(m_use->words().flip[0].startsWith(QStringLiteral("0°, edge at 0 cm: 29")), qPrintable(m_use->words().flip[0]));
    QVERIFY2(m_use->words().flip[4].startsWith(QStringLiteral("60°, edge at 11")), qPrintable(m_use->words().flip[4]));
    tested(deadliftId, 130);
    QVERIFY2(m_use->words().figures.contains(QStringLiteral("% of her lowest deadlift")), qPrintable(m_use->words().figures));
    small.width.reset();
    use(add("Half read", small));
    QVERIFY(m_use->words().figures.contains(QStringLiteral("Read its diameter and width")) && m_use->words().flip.isEmpty());
}

void ImplementViewsTest::heldAgainst()
{
    use(add("Blue keg", keg(KegPressure::Released)));
    m_use->setLift(1);
    QCOMPARE(m_use->words().against, QStringLiteral("no lift"));
    CapEditor cap;
    cap.setDeskService(&m_house->desk);
    cap.setBook(&m_house->book);
    cap.setAthleteId(m_use->athleteId());
    cap.setLiftId(m_use->liftId());
    QCOMPARE(cap.who(), QStringLiteral("Ana M."));
    QCOMPARE(cap.share(), QStringLiteral("70 %"));
    QVERIFY(!cap.canKeep() && !cap.isThere() && cap.comesTo().contains(QStringLiteral("Choose the lift")));
    cap.setOf(static_cast<int>(cap.lifts().indexOf(QStringLiteral("deadlift"))));
    QVERIFY(cap.canKeep() && cap.comesTo().contains(QStringLiteral("No maximum")));
    tested(deadliftId, 100);
    QVERIFY2(cap.comesTo().contains(QStringLiteral("at most 70 kg")), qPrintable(cap.comesTo()));
    QSignalSpy done(&cap, &CapEditor::done);
    cap.keep();
    QCOMPARE(done.count(), 1);
    QVERIFY(cap.isThere() && !cap.canKeep());
    QCOMPARE(m_use->words().against, QStringLiteral("70 % of her deadlift"));
    QVERIFY(!heads(m_use->cautions()).contains(QStringLiteral("Held against no lift of hers")));
    QVERIFY(heads(m_use->stops()).isEmpty());
    // 30 kg is more than a quarter of 100 kg
    while (cap.share() != QStringLiteral("25 %"))
        cap.step(false);
    cap.keep();
    QVERIFY2(heads(m_use->stops()).contains(QStringLiteral("Over your cap")), qPrintable(heads(m_use->stops()).join(QLatin1Char('|'))));
    QVERIFY(m_use->words().stop);
}

void ImplementViewsTest::platesOnHandles()
{
    keepBodySize(m_house->book.keeping(), ana(), {{}, m_house->today, kilograms(72), std::nullopt}, [](const Told&) {});
    Venue venue = *m_house->book.book().venue(m_venue);
    venue.lane = metres(30);
    keepVenue(m_house->book.keeping(), venue, [](const Told&) {});
    tested(deadliftId, 120);
    use(add("Handles", awaypitch::handles()));
    QCOMPARE(m_use->words().setLabel, QStringLiteral("Plates on each handle"));
    QCOMPARE(m_use->words().set, QStringLiteral("0 kg"));
    QVERIFY2(m_use->words().figures.contains(QStringLiteral("In her hands at once: 17")), qPrintable(m_use->words().figures));
    lookAllOver();
    QVERIFY(m_use->words().ready);
    for (int i = 0; i < 8; ++i)
        m_use->step(true);
    // two handles of 8.5 kg with 20 kg each are 57 kg: 79 % of 72 kg, 47.5 % of 120 kg, and 57 · 30 = 1710 kg·m
    QCOMPARE(m_use->words().set, QStringLiteral("20 kg"));
    const QString said = m_use->words().figures;
    QVERIFY2(said.contains(QStringLiteral("57 ± ")) || said.contains(QStringLiteral("57.0 ± ")), qPrintable(said));
    QVERIFY2(said.contains(QStringLiteral("79 ± ")) && (said.contains(QStringLiteral("48 ± ")) || said.contains(QStringLiteral("47.5"))), qPrintable(said));
    QVERIFY2(said.contains(QStringLiteral("17")) && said.contains(QStringLiteral("kg·m")), qPrintable(said));
    QVERIFY2(!m_use->words().ready, "another load is looked over anew");
    for (int i = 0; i < 20; ++i)
        m_use->step(false);
    QCOMPARE(m_use->words().set, QStringLiteral("0 kg"));
}

void ImplementViewsTest::aBellThatIsSet()
{
    BellMeasurement bell = awaypitch::bell();
    bell.whole = {};
    bell.settings = {kilograms(12), kilograms(20)};
    use(add("Bell that can be set", bell));
    QVERIFY2(here(0, "may").toString().endsWith(QStringLiteral(", set to 20 kg at most")), qPrintable(here(0, "may").toString()));
    QCOMPARE(m_use->words().setLabel, QStringLiteral("Set to"));
    QCOMPARE(m_use->words().set, QStringLiteral("12 kg"));
    m_use->step(true);
    m_use->step(true);
    QCOMPARE(m_use->words().set, QStringLiteral("20 kg"));
    use(add("Blue keg", keg(KegPressure::Released)));
    m_use->step(true);
    QVERIFY(m_use->words().set.isEmpty());
}

void ImplementViewsTest::capTakenBack()
{
    use(add("Blue keg", keg(KegPressure::Released)));
    CapEditor cap;
    cap.setDeskService(&m_house->desk);
    cap.setBook(&m_house->book);
    cap.setAthleteId(m_use->athleteId());
    cap.setLiftId(m_use->liftId());
    cap.takeBack();
    cap.setOf(static_cast<int>(cap.lifts().indexOf(QStringLiteral("deadlift"))));
    cap.keep();
    QCOMPARE(m_use->words().against, QStringLiteral("70 % of her deadlift"));
    cap.takeBack();
    QVERIFY(!cap.isThere());
    QCOMPARE(m_use->words().against, QStringLiteral("no lift"));
}

void ImplementViewsTest::capIsKeyed()
{
    CapEditor cap;
    cap.setDeskService(&m_house->desk);
    cap.setBook(&m_house->book);
    cap.setAthleteId(QString::fromStdString(ana().hex()));
    cap.setLiftId(QStringLiteral("36"));
    QCOMPARE(formcheck::limitsOfEveryKey(cap), QStringList());
    QVERIFY(cap.keepNumber(QStringLiteral("share"), 55).kept() && !cap.keepNumber(QStringLiteral("other"), 55).kept());
    QCOMPARE(cap.share(), QStringLiteral("55 %"));
    for (int i = 0; i < 30; ++i)
        cap.step(true);
    QCOMPARE(cap.share(), QStringLiteral("100 %"));
    for (int i = 0; i < 30; ++i)
        cap.step(false);
    QCOMPARE(cap.share(), QStringLiteral("5 %"));
    cap.setOf(-1);
    cap.setOf(999);
    QCOMPARE(cap.of(), -1);
}

void ImplementViewsTest::onArrival()
{
    ArrivalView view;
    view.setDesk(&m_house->desk);
    view.setBook(&m_house->book);
    view.setVenueId(QString::fromStdString(m_venue.hex()));
    QVERIFY(view.nextKind().isEmpty() && view.progress().contains(QStringLiteral("Nothing")));
    add("Old tyre", tyre());
    const RecordId listed = add("Log by the gate", LogMeasurement{});
    QCOMPARE(view.venue(), QStringLiteral("Away pitch"));
    QCOMPARE(view.progress(), QStringLiteral("1 of 2 are known"));
    QCOMPARE(view.nextItem(), QString::fromStdString(listed.hex()));
    QCOMPARE(view.nextKind(), QStringLiteral("log"));
    QCOMPARE(view.nextName(), QStringLiteral("Log by the gate"));
    const auto said = [&view](int row, const char* role) { return formcheck::shown(*view.things(), row, role); };
    QCOMPARE(said(0, "value").toString(), QStringLiteral("to do"));
    QVERIFY(said(1, "value").toString().startsWith(QStringLiteral("150 ± ")) && !said(1, "open").toBool());
    // one that was begun comes first, and is gone on with
    KitItem half;
    half.measurement = StoneMeasurement{};
    m_house->desk.desk().setDraft(half);
    view.refresh();
    QVERIFY(view.nextItem() == QString::fromStdString(RecordId{}.hex()) || view.nextItem().isEmpty());
    QCOMPARE(view.nextKind(), QStringLiteral("stone"));
    QCOMPARE(said(0, "value").toString(), QStringLiteral("begun, not kept"));
    QCOMPARE(view.progress(), QStringLiteral("1 of 3 are known"));
}

void ImplementViewsTest::eachReasonIsSaid()
{
    QStringList said;
    for (int code = 0; code <= static_cast<int>(UseCode::ReachNotAsked); ++code) {
        UseReason reason;
        reason.code = static_cast<UseCode>(code);
        reason.of = deadliftId;
        reason.from = m_house->today;
        reason.percent = 81.2;
        reason.capPercent = 70;
        reason.text = "rough horns";
        const auto one = usetexts::reason(reason, m_house->book.book(), m_house->today);
        QVERIFY(!one.head.isEmpty() && !one.body.isEmpty());
        QVERIFY2(!one.body.contains(QStringLiteral("%1")) && !one.body.contains(QStringLiteral("%2")), qPrintable(one.body));
        QVERIFY2(!said.contains(one.head), qPrintable(one.head));
        said << one.head;
    }
    QCOMPARE(usetexts::permission(Permission::Caution), QStringLiteral("look over first"));
}

QTEST_MAIN(ImplementViewsTest)
#include "test_implementviews.moc"
