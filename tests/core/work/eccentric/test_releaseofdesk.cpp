// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/desk.h"

#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keeptest.h"
#include "tests/core/work/athlete/somebody.h"
#include "tests/core/work/eccentric/releases.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::Device;

namespace {

constexpr LiftId bench{6};

void keepMaximum(Device& device, const RecordId& athlete, std::chrono::days ago, bool plain = true)
{
    StrengthTest test = somebody::test(athlete, device.today - ago, 105, 1);
    test.lift = bench;
    test.maximum = true;
    test.leastJump = kilograms(2.5);
    if (!plain)
        test.conditions.hung = {Method::Chains};
    keepStrengthTest(device.keeping, test, device.told());
    QVERIFY(device.last.kept());
}

void keepCleared(Device& device, const RecordId& athlete, bool approvesMinor = false)
{
    Clearance clearance = somebody::clearance(athlete, device.today);
    clearance.lift = bench;
    clearance.approvesMinor = approvesMinor;
    keepClearance(device.keeping, clearance, device.told());
    QVERIFY(device.last.kept());
}

/// The desk for her, the bar that the plan goes by on it and every caution looked over.
void takeUp(Desk& desk, const Device& device, const RecordId& athlete)
{
    desk.setLifter(gateLifter(device.book, athlete, bench, device.today));
    if (desk.release() && desk.release()->load) {
        BarRecord bar = desk.setup().bar;
        bar.wanted = Entered<Mass>(desk.release()->load->bar.total);
        desk.setBar(bar);
    }
    desk.lookOver(CautionCode::Release);
}

std::vector<GateCode> codes(const Desk& desk)
{
    std::vector<GateCode> all;
    for (const GateReason& one : desk.gate().reasons)
        all.push_back(one.reason.key.code);
    return all;
}

}

/// A plan on the desk, and whether somebody may lift it.
class ReleaseOfDeskTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init()
    {
        m_desk = std::make_unique<Desk>(samples::counted());
        m_desk->lay(samples::marks(0.72, 1.1), releases::byHooks());
    }
    void readyForHer();
    void forNobody();
    void notWithoutItsBar();
    void platesThatLeaveTheHooksTheirs();
    void notWithoutWord();
    void notWithAnOldMaximum();
    void notWithoutPlainIron();
    void neverMinorsByDefault();
    void overTheCap();
    void loadOfTheWayDown();

private:
    void change(const std::function<void(ReleasePlan&)>& how)
    {
        ReleasePlan plan = *m_desk->setup().release;
        how(plan);
        m_desk->setRelease(plan);
    }
    std::unique_ptr<Desk> m_desk;
};

void ReleaseOfDeskTest::readyForHer()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10));
    keepCleared(device, her);
    m_desk->setLifter(gateLifter(device.book, her, bench, device.today));
    QVERIFY(m_desk->release() && m_desk->release()->isComplete() && m_desk->release()->worst);
    QVERIFY(m_desk->gate().permission != Permission::Not && m_desk->readiness() != Readiness::Ready);
    takeUp(*m_desk, device, her);
    QVERIFY(m_desk->releaseWants() == ReleaseWants::Nothing && m_desk->readiness() == Readiness::Ready);
    change([](ReleasePlan& plan) { plan.measures.lipDrop.reset(); });
    m_desk->lookOver(CautionCode::Release);
    QVERIFY(m_desk->releaseWants() == ReleaseWants::Measuring && m_desk->readiness() == Readiness::ReleaseOpen);
    QVERIFY2(m_desk->answer().readiness == Readiness::Ready, "nothing is wrong with what is lifted");
    m_desk->setRelease(std::nullopt);
    QVERIFY(!m_desk->release() && m_desk->releaseWants() == ReleaseWants::Nothing && m_desk->readiness() == Readiness::Ready);
}

void ReleaseOfDeskTest::forNobody()
{
    m_desk->lookOver(CautionCode::Release);
    QVERIFY(m_desk->release()->noLoad && m_desk->release()->noLoad->what == "maximum");
    QVERIFY(m_desk->releaseWants() == ReleaseWants::Somebody && m_desk->readiness() == Readiness::ReleaseOpen);
    // as loads all of it is known, and still it is for nobody
    change([](ReleasePlan& plan) { plan.asked = {false, 0, 0, false, kilograms(116.4)}; });
    QVERIFY(m_desk->release()->isComplete());
    QVERIFY(m_desk->releaseWants() == ReleaseWants::Somebody && m_desk->readiness() == Readiness::ReleaseOpen);
}

void ReleaseOfDeskTest::notWithoutItsBar()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10));
    keepCleared(device, her);
    takeUp(*m_desk, device, her);
    QVERIFY(m_desk->readiness() == Readiness::Ready);
    m_desk->stepLoad(true);
    QVERIFY(m_desk->releaseWants() == ReleaseWants::ItsBar && m_desk->readiness() == Readiness::ReleaseOpen);
    m_desk->stepLoad(false);
    QVERIFY(m_desk->readiness() == Readiness::Ready);
    // asked as loads the way up is what is on the bar, whatever that is
    change([](ReleasePlan& plan) { plan.asked = {false, 0, 0, false, kilograms(116.4)}; });
    m_desk->stepLoad(true);
    QVERIFY(m_desk->releaseWants() == ReleaseWants::Nothing);
}

void ReleaseOfDeskTest::platesThatLeaveTheHooksTheirs()
{
    // one pair of 15 alone makes the hooks right, so the bar is loaded with what comes to the same
    SetupRecord setup = releases::byHooks();
    setup.bar.stock = {{PlateType{kilograms(15), metres(0.45), metres(0.03)}, 2}, {PlateType{kilograms(10), metres(0.45), metres(0.025)}, 2},
                       {PlateType{kilograms(5), metres(0.4), metres(0.02)}, 2}};
    setup.bar.bar = kilograms(20);
    setup.bar.collars = kilograms(0);
    setup.bar.wanted = kilograms(50);
    setup.release->hook.frame = kilograms(3);
    setup.release->asked = {false, 0, 0, false, kilograms(86)};
    m_desk->lay(samples::marks(0.72, 1.1), setup);
    const auto masses = [](const std::vector<PlateType>& plates) {
        std::vector<double> all;
        for (const PlateType& plate : plates)
            all.push_back(inKilograms(plate.mass));
        return all;
    };
    QVERIFY(m_desk->release()->load);
    QCOMPARE(masses(m_desk->release()->load->onEach), std::vector<double>{15});
    QCOMPARE(masses(m_desk->answer().load->eachSide), (std::vector<double>{10, 5}));
    // without the plan fewest plates are best
    m_desk->setRelease(std::nullopt);
    QCOMPARE(masses(m_desk->answer().load->eachSide), std::vector<double>{15});
}

void ReleaseOfDeskTest::notWithoutWord()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10));
    takeUp(*m_desk, device, her);
    QVERIFY(m_desk->readiness() == Readiness::NotToBeUsed);
    QVERIFY(codes(*m_desk).front() == GateCode::ClearanceMissing);
}

void ReleaseOfDeskTest::notWithAnOldMaximum()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(91));
    keepCleared(device, her);
    takeUp(*m_desk, device, her);
    QVERIFY(m_desk->readiness() == Readiness::NotToBeUsed);
    QVERIFY(codes(*m_desk).front() == GateCode::MaximumOld);
}

void ReleaseOfDeskTest::notWithoutPlainIron()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10), false);
    keepCleared(device, her);
    takeUp(*m_desk, device, her);
    // percent is of plain iron, so there is no load to ask about
    QVERIFY(m_desk->lifter()->maximum && !m_desk->lifter()->maximum->plain);
    QVERIFY(m_desk->release()->noLoad && m_desk->release()->noLoad->what == "maximum" && m_desk->readiness() != Readiness::Ready);
    change([](ReleasePlan& plan) { plan.asked = {false, 0, 0, false, kilograms(116.4)}; });
    BarRecord bar = m_desk->setup().bar;
    bar.wanted = kilograms(72.5);
    m_desk->setBar(bar);
    QVERIFY(m_desk->readiness() == Readiness::NotToBeUsed);
    QVERIFY(codes(*m_desk).front() == GateCode::MaximumNotPlain);
}

void ReleaseOfDeskTest::neverMinorsByDefault()
{
    for (const bool approved : {false, true}) {
        Device device;
        const RecordId young = somebody::born(device, 2010, true);
        keepMaximum(device, young, std::chrono::days(10));
        keepCleared(device, young, approved);
        takeUp(*m_desk, device, young);
        QCOMPARE(m_desk->readiness() == Readiness::NotToBeUsed, !approved);
        QCOMPARE(m_desk->readiness() == Readiness::Ready, approved);
    }
}

void ReleaseOfDeskTest::overTheCap()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10));
    keepCleared(device, her);
    change([](ReleasePlan& plan) { plan.asked.downPercent = 125; });
    takeUp(*m_desk, device, her);
    QVERIFY(m_desk->readiness() == Readiness::NotToBeUsed);
    QVERIFY(codes(*m_desk).front() == GateCode::OverCap);
    QVERIFY(m_desk->gate().reasons.front().reason.atMost <= kilograms(126));
}

void ReleaseOfDeskTest::loadOfTheWayDown()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10));
    keepCleared(device, her);
    takeUp(*m_desk, device, her);
    const Desk& desk = *m_desk;
    const auto lifted = loadAtWorst(desk.answer());
    QVERIFY(lifted && desk.release()->worst->value > lifted->value + lifted->giveOrTake);
    // no load yet is none to ask about, and a load whose way down nobody knows is forbidden
    const auto unknown = [&desk](const ReleaseAnswer& release) {
        const SetupGate gate = setupGate(*desk.lifter(), desk.setup(), desk.answer(), release, {});
        return std::any_of(gate.reasons.begin(), gate.reasons.end(), [](const GateReason& one) { return one.reason.key.code == GateCode::LoadUnknown; });
    };
    ReleaseAnswer release = *desk.release();
    QVERIFY(!unknown(release));
    release.worst.reset();
    QVERIFY(unknown(release));
    release.load.reset();
    QVERIFY(!unknown(release));
    release = *desk.release();
    release.worst = LoadAtWorst{2 * lifted->value, {}};
    QVERIFY(setupGate(*desk.lifter(), desk.setup(), desk.answer(), release, {}).permission == Permission::Not);
}

QTEST_APPLESS_MAIN(ReleaseOfDeskTest)
#include "test_releaseofdesk.moc"
