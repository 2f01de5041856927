// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/desk.h"
#include "core/work/keeping/acknowledge.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/undo.h"
#include "core/work/records/codec.h"
#include "core/work/waiting/deskdraft.h"
#include "tests/core/work/athlete/somebody.h"
#include "tests/core/work/eccentric/releases.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::Device;
using releases::byHooks;

namespace {

SavedSetup keptByHooks(Device& device)
{
    SavedSetup setup{{}, somebody::adult(device), LiftId{6}, byHooks(), {}};
    keepSetup(device.keeping, setup, device.told());
    return *device.book.setup(device.last.id);
}

}

/// A plan goes with its set-up: on the desk, half done, kept, changed and undone.
class ReleaseKeptTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void comesBackWithItsSetup();
    void isAFieldOfItsOwn();
    void isTakenBackAndUndone();
    void isRefusedWhereItCannotBeWritten();
    void waitsOnTheDesk();
    void goesWithAnotherLifters();
    void cautionIsLookedOver();
};

void ReleaseKeptTest::comesBackWithItsSetup()
{
    Device device;
    const SavedSetup kept = keptByHooks(device);
    QVERIFY(kept.setup == byHooks());
}

void ReleaseKeptTest::isAFieldOfItsOwn()
{
    Device device;
    SavedSetup kept = keptByHooks(device);
    const Place place = setupPlace(kept.id, kept.athlete);
    const auto* load = device.book.said(place, field::setupLoadNumber);
    // asked otherwise on another day: what hangs is not said again, and the set-up is of that day
    device.today += std::chrono::days(3);
    kept.setup.release->asked.downPercent = 115;
    keepSetup(device.keeping, kept, device.told());
    QVERIFY(device.last.kept());
    QCOMPARE(device.book.said(place, field::setupLoadNumber)->id, load->id);
    QVERIFY(device.book.setup(kept.id)->day == device.today);
    QVERIFY(device.book.setup(kept.id)->setup == kept.setup);
    // kept once more as it is, nothing is written
    const std::size_t entries = device.keeper.entries.size();
    keepSetup(device.keeping, kept, device.told());
    QCOMPARE(device.book.said(place, field::setupReleaseNumber)->body.localDay, device.today);
    QVERIFY(device.keeper.entries.size() <= entries + 1);
    // and a set-up without a plan has no such field
    keepSetup(device.keeping, {{}, kept.athlete, LiftId{1}, samples::setup(60), {}}, device.told());
    QVERIFY(!device.book.said(setupPlace(device.last.id, kept.athlete), field::setupReleaseNumber));
}

void ReleaseKeptTest::isTakenBackAndUndone()
{
    Device device;
    SavedSetup kept = keptByHooks(device);
    kept.setup.release.reset();
    keepSetup(device.keeping, kept, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(!device.book.setup(kept.id)->setup.release);
    QVERIFY(device.book.setup(kept.id)->setup.bar == byHooks().bar);
    undo(device.keeping, 0, device.told());
    QVERIFY(device.last.kept());
    QVERIFY(device.book.setup(kept.id)->setup == byHooks());
}

void ReleaseKeptTest::isRefusedWhereItCannotBeWritten()
{
    Device device;
    SavedSetup setup{{}, somebody::adult(device), LiftId{6}, byHooks(), {}};
    setup.setup.release->hook.frame = kilograms(std::numeric_limits<double>::quiet_NaN());
    keepSetup(device.keeping, setup, device.told());
    QVERIFY(device.last.unfit == Unfit::QuantityUnfit);
    setup.setup = byHooks();
    setup.setup.release->asked.downPercent = std::numeric_limits<double>::infinity();
    keepSetup(device.keeping, setup, device.told());
    QVERIFY(device.last.unfit == Unfit::QuantityUnfit);
    QVERIFY(!contentOf(*setup.setup.release, {}));
}

void ReleaseKeptTest::waitsOnTheDesk()
{
    const DeskDraft lying{samples::marks(0.72, 1.1), byHooks()};
    const auto bytes = encodeDraft(lying);
    QVERIFY(bytes);
    QVERIFY(deskDraftIn(*bytes) == lying);
    // without a plan it is the list that it always was
    DeskDraft plain = lying;
    plain.setup.release.reset();
    const auto before = encodeDraft(plain);
    QCOMPARE(journal::listIn(*before)->size(), std::size_t(3));
    QVERIFY(deskDraftIn(*before) == plain);
    // a plan that cannot be read leaves all of it as it is
    auto items = *journal::listIn(*bytes);
    items.back() = journal::numberItem(1);
    QVERIFY(!deskDraftIn(journal::listItem(items)));
    items.push_back(journal::numberItem(1));
    QVERIFY(!deskDraftIn(journal::listItem(items)));
}

void ReleaseKeptTest::goesWithAnotherLifters()
{
    Desk desk(samples::counted());
    int told = 0;
    const Subscription listening = desk.onChanged([&told] { ++told; });
    desk.setRelease(ReleasePlan{});
    QCOMPARE(told, 1);
    QVERIFY(desk.setup().release);
    desk.setRelease(ReleasePlan{});
    QCOMPARE(told, 1);
    desk.lay(samples::marks(0.7, 1.2), samples::setup(60));
    QVERIFY(!desk.setup().release);
}

void ReleaseKeptTest::cautionIsLookedOver()
{
    Desk desk(samples::counted());
    desk.lay(samples::marks(0.72, 1.1), byHooks());
    QCOMPARE(desk.answer().cautions.size(), std::size_t(1));
    QVERIFY(desk.answer().cautions.front().code == CautionCode::Release);
    QVERIFY(desk.answer().readiness == Readiness::LookOver);
    desk.lookOver(CautionCode::Release);
    QVERIFY(desk.answer().readiness == Readiness::Ready);
    // asked otherwise it holds, with another hook it does not
    ReleasePlan plan = *desk.setup().release;
    plan.asked.downPercent = 120;
    plan.set.reps = 3;
    desk.setRelease(plan);
    QVERIFY(desk.answer().readiness == Readiness::Ready);
    plan.hook.frame = kilograms(4);
    desk.setRelease(plan);
    QVERIFY(desk.answer().readiness == Readiness::LookOver);
    desk.lookOver(CautionCode::Release);
    desk.setRelease(std::nullopt);
    QVERIFY(desk.answer().cautions.empty() && desk.answer().readiness == Readiness::Ready);
    // kept, it counts among what was looked over
    Device device;
    const SavedSetup kept = keptByHooks(device);
    QVERIFY(!lastLookedOver(device.book, kept));
    acknowledge(device.keeping, kept.id, CautionCode::Release, device.told());
    QVERIFY(lastLookedOver(device.book, kept) == device.today);
}

QTEST_APPLESS_MAIN(ReleaseKeptTest)
#include "test_releasekept.moc"
