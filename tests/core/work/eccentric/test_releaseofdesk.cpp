// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/eccentric/releaseofdesk.h"

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

DeskRelease released(const Device& device, const Desk& desk, const RecordId& athlete)
{
    return deskRelease(desk, device.book, {athlete, bench, device.today});
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
    void nobodyIsAsked();
    void notWithoutWord();
    void notWithAnOldMaximum();
    void notWithoutPlainIron();
    void neverMinorsByDefault();
    void overTheCap();

private:
    std::unique_ptr<Desk> m_desk;
};

void ReleaseOfDeskTest::readyForHer()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10));
    keepCleared(device, her);
    DeskRelease release = released(device, *m_desk, her);
    QVERIFY(release.maximum && release.gate && release.answer.isComplete());
    QVERIFY(release.gate->permission == Permission::Caution && !release.isForbidden());
    QVERIFY(!release.lookedOver && !release.isReady());
    m_desk->lookOver(CautionCode::Release);
    release = released(device, *m_desk, her);
    QVERIFY(release.lookedOver && release.isReady());
    ReleasePlan plan = *m_desk->setup().release;
    plan.measures.lipDrop.reset();
    m_desk->setRelease(plan);
    m_desk->lookOver(CautionCode::Release);
    QVERIFY(!released(device, *m_desk, her).isReady());
}

void ReleaseOfDeskTest::nobodyIsAsked()
{
    Device device;
    const DeskRelease release = released(device, *m_desk, {});
    QVERIFY(!release.gate && !release.maximum && !release.isReady() && !release.isForbidden());
    QVERIFY(release.answer.noLoad && release.answer.noLoad->what == "maximum");
}

void ReleaseOfDeskTest::notWithoutWord()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10));
    m_desk->lookOver(CautionCode::Release);
    const DeskRelease release = released(device, *m_desk, her);
    QVERIFY(release.isForbidden() && !release.isReady());
    QVERIFY(release.gate->reasons.front().key.code == GateCode::ClearanceMissing);
}

void ReleaseOfDeskTest::notWithAnOldMaximum()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(91));
    keepCleared(device, her);
    const DeskRelease release = released(device, *m_desk, her);
    QVERIFY(release.isForbidden());
    QVERIFY(release.gate->reasons.front().key.code == GateCode::MaximumOld);
}

void ReleaseOfDeskTest::notWithoutPlainIron()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10), false);
    keepCleared(device, her);
    const DeskRelease release = released(device, *m_desk, her);
    // percent is of plain iron, so there is no load to ask about
    QVERIFY(release.maximum && !release.maximum->plain);
    QVERIFY(release.answer.noLoad && release.answer.noLoad->what == "maximum" && !release.isReady());
    ReleasePlan plan = *m_desk->setup().release;
    plan.asked = {false, 0, 0, false, kilograms(116.4)};
    BarRecord bar = m_desk->setup().bar;
    bar.wanted = kilograms(72.5);
    m_desk->setBar(bar);
    m_desk->setRelease(plan);
    const DeskRelease loads = released(device, *m_desk, her);
    QVERIFY(loads.isForbidden());
    QVERIFY(loads.gate->reasons.front().key.code == GateCode::MaximumNotPlain);
}

void ReleaseOfDeskTest::neverMinorsByDefault()
{
    for (const bool approved : {false, true}) {
        Device device;
        const RecordId young = somebody::born(device, 2010, true);
        keepMaximum(device, young, std::chrono::days(10));
        keepCleared(device, young, approved);
        QCOMPARE(released(device, *m_desk, young).isForbidden(), !approved);
    }
}

void ReleaseOfDeskTest::overTheCap()
{
    Device device;
    const RecordId her = somebody::adult(device);
    keepMaximum(device, her, std::chrono::days(10));
    keepCleared(device, her);
    ReleasePlan plan = *m_desk->setup().release;
    plan.asked.downPercent = 125;
    m_desk->setRelease(plan);
    const DeskRelease release = released(device, *m_desk, her);
    QVERIFY(release.isForbidden());
    QVERIFY(release.gate->reasons.front().key.code == GateCode::OverCap);
    QVERIFY(release.gate->reasons.front().atMost <= kilograms(126));
}

QTEST_APPLESS_MAIN(ReleaseOfDeskTest)
#include "test_releaseofdesk.moc"
