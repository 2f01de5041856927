// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/implements/laneeditor.h"
#include "mobile/sleds/runeditor.h"
#include "mobile/sleds/sledtexts.h"
#include "mobile/sleds/sledview.h"
#include "mobile/sleds/surfaceeditor.h"

#include "tests/mobile/formcheck.h"
#include "tests/mobile/implements/awaypitch.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// A sled on the ground of a venue: pulled there, run with, and loaded for a loss of speed.
class SledsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void notPulledYet();
    void pulledOnTheSpot();
    void aPushThatLocks();
    void half();
    void drafts();
    void runsMakeALine();
    void carriedAsItsPull();
    void laneOfTheVenue();
    void laneIsKeyed();
    void formsComeBack();
    void refusals();

private:
    [[nodiscard]] QString ana() const { return QString::fromStdString(m_house->book.book().athletes().front()->id.hex()); }
    /// Pulled level with nothing and with 50 kg on it, so that its friction is this.
    void pull(const char* name, double friction)
    {
        m_surface->setName(QLatin1String(name));
        QVERIFY(m_surface->keepNumber(QStringLiteral("added:0"), 0).kept());
        QVERIFY(m_surface->keepNumber(QStringLiteral("pull:0"), friction * 25).kept());
        QVERIFY(m_surface->keepNumber(QStringLiteral("added:1"), 50).kept());
        QVERIFY(m_surface->keepNumber(QStringLiteral("pull:1"), friction * 75).kept());
        QVERIFY2(m_surface->canKeep(), qPrintable(m_surface->trouble()));
        m_surface->keep();
    }
    /// Twelve metres at this speed with so much on it.
    void run(double added, double speed)
    {
        QVERIFY(m_run->keepNumber(QStringLiteral("added"), added).kept());
        QVERIFY(m_run->keepNumber(QStringLiteral("distance"), 1200).kept());
        QVERIFY(m_run->keepNumber(QStringLiteral("time"), 12 / speed).kept());
        QVERIFY2(m_run->canKeep(), qPrintable(m_run->trouble()));
        m_run->keep();
    }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<SledView> m_view;
    std::unique_ptr<SurfaceEditor> m_surface;
    std::unique_ptr<RunEditor> m_run;
};

void SledsTest::init()
{
    m_view.reset();
    m_surface.reset();
    m_run.reset();
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 2);
    const RecordId venue = awaypitch::venue(m_house->book);
    SledMeasurement sled;
    sled.whole.read = kilograms(25);
    sled.whole.step = kilograms(0.1);
    const QString item = QString::fromStdString(awaypitch::add(m_house->book, venue, "Sled", sled).hex()), place = QString::fromStdString(venue.hex());
    m_view = std::make_unique<SledView>();
    m_view->setBook(&m_house->book);
    m_view->setVenueId(place);
    m_view->setItemId(item);
    m_view->setAthleteId(ana());
    m_surface = std::make_unique<SurfaceEditor>();
    m_surface->setDeskService(&m_house->desk);
    m_surface->setBook(&m_house->book);
    m_surface->setVenueId(place);
    m_surface->setItemId(item);
    m_run = std::make_unique<RunEditor>();
    m_run->setDeskService(&m_house->desk);
    m_run->setBook(&m_house->book);
    m_run->setVenueId(place);
    m_run->setItemId(item);
    m_run->setAthleteId(ana());
}

void SledsTest::notPulledYet()
{
    QCOMPARE(m_view->words().thing, QStringLiteral("Sled"));
    QCOMPARE(m_view->words().who, QStringLiteral("Ana M."));
    QVERIFY(m_view->surfaces().isEmpty() && m_view->words().friction.contains(QStringLiteral("not pulled here yet")));
    QVERIFY(m_view->words().pull.isEmpty() && m_view->words().load.isEmpty());
    m_view->setSurface(1);
    QCOMPARE(m_view->surface(), 0);
}

void SledsTest::pulledOnTheSpot()
{
    QSignalSpy kept(m_surface.get(), &SurfaceEditor::kept);
    pull("turf", 0.45);
    QCOMPARE(kept.count(), 1);
    QVERIFY(!m_surface->isDrafted() && m_surface->name().isEmpty());
    QCOMPARE(m_surface->names(), QStringList{QStringLiteral("turf")});
    QCOMPARE(m_view->surfaces(), QStringList{QStringLiteral("turf")});
    QVERIFY2(m_view->words().friction.startsWith(QStringLiteral("Friction 0.45")), qPrintable(m_view->words().friction));
    // 45 kg in all: 0.45 · 45 · 9.80665 = 198.6 N
    QCOMPARE(m_view->words().added, QStringLiteral("20 kg"));
    QVERIFY2(m_view->words().pull.startsWith(QStringLiteral("19")) || m_view->words().pull.startsWith(QStringLiteral("200")), qPrintable(m_view->words().pull));
    QVERIFY(m_view->words().pull.contains(QStringLiteral("20.3 kg")) || m_view->words().pull.contains(QStringLiteral("20.2 kg")));
    // pushed 15° down it takes more than pulled level: 0.45 · 45 · 9.80665/(cos 15° − 0.45 sin 15°) = 233.8 N
    QCOMPARE(m_view->words().pushAngle, QStringLiteral("15° down"));
    QVERIFY2(m_view->words().push.startsWith(QStringLiteral("Pushed: 23")), qPrintable(m_view->words().push));
    for (int i = 0; i < 20; ++i)
        m_view->stepPush(true);
    // tan 60° is under 1/0.45, so that it still moves, with more than twice as much
    QVERIFY2(m_view->words().push.startsWith(QStringLiteral("Pushed: ")), qPrintable(m_view->words().push));
    for (int i = 0; i < 8; ++i)
        m_view->stepAdded(true);
    QVERIFY2(m_view->words().pull.contains(QStringLiteral("outside the loads")), qPrintable(m_view->words().pull));
    for (int i = 0; i < 30; ++i)
        m_view->stepAdded(false);
    QCOMPARE(m_view->words().added, QStringLiteral("0 kg"));
}

void SledsTest::aPushThatLocks()
{
    pull("rubber", 0.75);
    QVERIFY(m_view->words().push.startsWith(QStringLiteral("Pushed: ")));
    for (int i = 0; i < 20; ++i)
        m_view->stepPush(true);
    // cos 60° is less than 0.75 sin 60°
    QVERIFY2(m_view->words().push.contains(QStringLiteral("it locks")), qPrintable(m_view->words().push));
    for (int i = 0; i < 20; ++i)
        m_view->stepPush(false);
    QCOMPARE(m_view->words().pushAngle, QStringLiteral("0° down"));
}

void SledsTest::half()
{
    QVERIFY(m_surface->trouble().contains(QStringLiteral("which surface")) && !m_surface->canKeep());
    m_surface->setName(QStringLiteral(" turf "));
    QCOMPARE(m_surface->name(), QStringLiteral("turf"));
    m_surface->keepNumber(QStringLiteral("added:0"), 0);
    m_surface->keepNumber(QStringLiteral("pull:0"), 12);
    QVERIFY(m_surface->trouble().contains(QStringLiteral("two different loads")));
    m_surface->keepNumber(QStringLiteral("added:1"), 0);
    m_surface->keepNumber(QStringLiteral("pull:1"), 12);
    QVERIFY2(!m_surface->canKeep() && !m_surface->trouble().isEmpty(), "the same load twice");
    m_surface->keep();
    QVERIFY(m_surface->isDrafted() && m_view->surfaces().isEmpty());
    QVERIFY(m_surface->canClear(QStringLiteral("pull:1")) && m_surface->clearNumber(QStringLiteral("pull:1")));
    QVERIFY(!m_surface->spec(QStringLiteral("added:1"))->shown && !m_surface->clearNumber(QStringLiteral("added:1")));
    QVERIFY(!m_surface->keepNumber(QStringLiteral("added:9"), 3).kept() && !m_surface->keepNumber(QStringLiteral("x"), 3).kept());
}

void SledsTest::drafts()
{
    m_surface->setName(QStringLiteral("turf"));
    m_surface->keepNumber(QStringLiteral("added:0"), 10);
    m_surface->keepNumber(QStringLiteral("step"), 0.5);
    m_surface->keepNumber(QStringLiteral("belt"), 95);
    const auto bytes = m_house->book.draft(QStringLiteral("surface:%1:%2").arg(m_surface->venueId(), m_surface->itemId()));
    QVERIFY(bytes);
    const auto form = sledforms::surfaceIn(*bytes);
    QVERIFY(form && form->name == "turf" && form->pulls.size() == 1 && form->pulls[0].added == kilograms(10) && !form->pulls[0].pull && form->step == kilograms(0.5));
    QVERIFY(!sledforms::surfaceIn(QByteArray("nothing")) && !sledforms::runIn(QByteArray("nothing")) && !sledforms::surfaceIn({}));
    m_surface->throwDraft();
    QVERIFY(!m_surface->isDrafted());
    m_run->setSurface(QStringLiteral("turf"));
    m_run->keepNumber(QStringLiteral("added"), 10);
    m_run->keepNumber(QStringLiteral("belt"), 95);
    QVERIFY(m_run->isDrafted() && m_run->canClear(QStringLiteral("belt")) && m_run->clearNumber(QStringLiteral("belt")) && !m_run->clearNumber(QStringLiteral("belt")));
    m_run->throwDraft();
    QVERIFY(!m_run->isDrafted() && !m_run->keepNumber(QStringLiteral("x"), 1).kept());
}

void SledsTest::runsMakeALine()
{
    pull("turf", 0.45);
    QVERIFY(m_run->trouble().contains(QStringLiteral("surface first")));
    m_run->setSurface(QStringLiteral("turf"));
    QVERIFY(m_run->trouble().contains(QStringLiteral("Still to do")) && !m_run->canKeep());
    QCOMPARE(m_run->who(), QStringLiteral("Ana M."));
    run(0, 6.48);
    QVERIFY(m_view->words().line.contains(QStringLiteral("Three timed runs")));
    run(25, 5.52);
    run(50, 4.63);
    QCOMPARE(m_view->runs()->rowCount(), 3);
    // the worked example of a profile on turf: 7.39 m/s free, and 99.9 kg in all, 74.9 of it plates, for half of it
    QVERIFY2(m_view->words().line.contains(QStringLiteral("7.")), qPrintable(m_view->words().line));
    QCOMPARE(m_view->words().loss, QStringLiteral("50 %"));
    QVERIFY2(m_view->words().load.contains(QStringLiteral("75 ± ")) || m_view->words().load.contains(QStringLiteral("70 ± ")), qPrintable(m_view->words().load));
    QVERIFY(m_view->words().load.contains(QStringLiteral("guessed")));
    for (int i = 0; i < 5; ++i)
        m_view->stepLoss(false);
    QVERIFY2(!m_view->words().load.contains(QStringLiteral("guessed")), qPrintable(m_view->words().load));
    for (int i = 0; i < 10; ++i)
        m_view->stepLoss(false);
    QCOMPARE(m_view->words().load, QStringLiteral("The empty sled costs more than that."));
    // nobody else's
    m_view->setAthleteId(QString::fromStdString(m_house->book.book().athletes()[1]->id.hex()));
    QCOMPARE(m_view->runs()->rowCount(), 0);
}

void SledsTest::carriedAsItsPull()
{
    pull("turf", 0.45);
    pull("wet turf", 0.25);
    m_run->setSurface(QStringLiteral("turf"));
    for (const auto& [added, speed] : {std::pair{0.0, 6.48}, {25.0, 5.52}, {50.0, 4.63}})
        run(added, speed);
    m_view->setSurface(static_cast<int>(m_view->surfaces().indexOf(QStringLiteral("turf"))));
    QCOMPARE(m_view->words().elsewhere.size(), 1);
    // level: 99.9 · 0.45/0.25 = 179.8 in all, 154.8 of it plates
    QVERIFY2(m_view->words().elsewhere[0].startsWith(QStringLiteral("On wet turf 1")), qPrintable(m_view->words().elsewhere[0]));
    m_view->setSurface(static_cast<int>(m_view->surfaces().indexOf(QStringLiteral("wet turf"))));
    QVERIFY2(m_view->words().line.contains(QStringLiteral("Three timed runs")), "she never ran on it");
}

void SledsTest::laneOfTheVenue()
{
    Venue venue = *m_house->book.book().venue(RecordId::fromHex(m_run->venueId().toStdString()).value());
    venue.lane = metres(20);
    keepVenue(m_house->book.keeping(), venue, [](const Told&) {});
    m_run->setSurface(QStringLiteral("turf"));
    const auto distance = m_run->spec(QStringLiteral("distance"));
    QVERIFY(distance && distance->filledIn && distance->shown && std::abs(*distance->shown - 2000) < 1e-6);
    m_run->keepNumber(QStringLiteral("added"), 0);
    m_run->keepNumber(QStringLiteral("time"), 4);
    QVERIFY2(m_run->canKeep() && m_run->answer().startsWith(QStringLiteral("5.0")), qPrintable(m_run->answer()));
}

void SledsTest::laneIsKeyed()
{
    LaneEditor lane;
    lane.setDeskService(&m_house->desk);
    lane.setBook(&m_house->book);
    QVERIFY(!lane.isThere() && lane.specs().empty() && !lane.keepNumber(QStringLiteral("lane"), 2000).kept());
    lane.setVenueId(m_run->venueId());
    QVERIFY(lane.isThere() && !lane.canClear(QStringLiteral("lane")));
    QCOMPARE(formcheck::keepEveryKey(lane), QStringList());
    QCOMPARE(formcheck::limitsOfEveryKey(lane), QStringList());
    QVERIFY(lane.keepNumber(QStringLiteral("lane"), 2500).kept() && !lane.keepNumber(QStringLiteral("width"), 100).kept());
    QVERIFY(m_house->book.book().venue(RecordId::fromHex(lane.venueId().toStdString()).value())->lane == metres(25));
    QVERIFY(lane.clearNumber(QStringLiteral("lane")) && !lane.clearNumber(QStringLiteral("lane")));
}

void SledsTest::formsComeBack()
{
    QCOMPARE(formcheck::keepEveryKey(*m_surface), QStringList());
    QCOMPARE(formcheck::limitsOfEveryKey(*m_surface), QStringList());
    m_run->setSurface(QStringLiteral("turf"));
    QCOMPARE(formcheck::keepEveryKey(*m_run), QStringList());
    QCOMPARE(formcheck::limitsOfEveryKey(*m_run), QStringList());
}

void SledsTest::refusals()
{
    QStringList said;
    for (const Error& error : {Error{Refusal::OutOfRange, "push angle"}, Error{Refusal::NotThere, "sled"}, Error{Refusal::NotThere, "strap"}, Error{Refusal::TooFewPoints, "runs"}}) {
        const QString one = sledtexts::refusal(error);
        QVERIFY(!one.isEmpty() && !said.contains(one));
        said << one;
    }
}

QTEST_MAIN(SledsTest)
#include "test_sleds.moc"
