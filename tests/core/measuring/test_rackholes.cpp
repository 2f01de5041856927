// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/rackholes.h"

#include "tests/core/near.h"

#include <QtTest>

#include <limits>
#endif

using namespace steelyard;

namespace {

/// 28 holes, the lowest at 41.5 cm, 5 cm apart; bands can be anchored near the floor and over the head.
RackMeasurement uprights()
{
    return {metres(0.415), metres(0.05), 28, {metres(2.14), metres(0.06)}};
}

}

/// A rack by its holes.
class RackHolesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void heightsByHand();
    void noSuchHole();
    void anchorsFromTheFloorUp();
    void oneHoleNeedsNoDistance();
    void anchorsAlone();
    void inchesComeOutToTheMicrometre();
    void refusalsNameTheEntry();
};

void RackHolesTest::heightsByHand()
{
    const auto rack = checked(uprights());
    QVERIFY(rack.ok());
    // 41.5 + 7 · 5 = 76.5 and 41.5 + 27 · 5 = 176.5
    QCOMPARE(heightOfHole(uprights(), 8)->si(), 0.765);
    QCOMPARE(rack->lowest->si(), 0.415);
    QCOMPARE(rack->highest->si(), 1.765);
    QCOMPARE(heightOfHole(uprights(), 28)->si(), 1.765);
    QCOMPARE(rack->holeCount, 28);
}

void RackHolesTest::noSuchHole()
{
    for (const int hole : {-1, 0, 29})
        QVERIFY(!heightOfHole(uprights(), hole));
    QVERIFY(!heightOfHole(RackMeasurement{}, 1));
}

void RackHolesTest::anchorsFromTheFloorUp()
{
    const auto rack = checked(uprights());
    QCOMPARE(rack->anchors.size(), std::size_t{2});
    QCOMPARE(rack->anchors[0].si(), 0.06);
    QCOMPARE(rack->anchors[1].si(), 2.14);
}

void RackHolesTest::oneHoleNeedsNoDistance()
{
    RackMeasurement stand;
    stand.firstHole = metres(1.3);
    stand.holeCount = 1;
    QCOMPARE(heightOfHole(stand, 1)->si(), 1.3);
}

void RackHolesTest::anchorsAlone()
{
    RackMeasurement hooks;
    hooks.anchors = {Height{}};
    const auto rack = checked(hooks);
    QVERIFY(rack.ok() && !rack->lowest && !rack->highest);
}

void RackHolesTest::inchesComeOutToTheMicrometre()
{
    // 16 3/8 in and 2 in, 1 in = 25.4 mm: hole 5 at 24.375 in is 619.125 mm
    const RackMeasurement rack{16.375 * inch, 2 * inch, 20, {}};
    VERIFY_NEAR(heightOfHole(rack, 5)->si(), 0.619125, 1e-12);
}

void RackHolesTest::refusalsNameTheEntry()
{
    QCOMPARE(checked(RackMeasurement{}).error(), (Error{Refusal::NotThere, "lowest hole"}));
    RackMeasurement rack = uprights();
    rack.firstHole.reset();
    QCOMPARE(checked(rack).error(), (Error{Refusal::NotThere, "lowest hole"}));
    rack = uprights();
    rack.spacing.reset();
    QCOMPARE(checked(rack).error(), (Error{Refusal::NotThere, "hole to hole"}));
    rack.spacing = Length{};
    QCOMPARE(checked(rack).error(), (Error{Refusal::OutOfRange, "hole to hole"}));
    for (const int count : {-1, mostHoleCount + 1}) {
        rack = uprights();
        rack.holeCount = count;
        QCOMPARE(checked(rack).error(), (Error{Refusal::OutOfRange, "count of holes"}));
    }
    rack = {metres(0.4), {}, 0, {}};
    QCOMPARE(checked(rack).error(), (Error{Refusal::NotThere, "count of holes"}));
    rack = uprights();
    rack.anchors[1] = metres(-0.01);
    QCOMPARE(checked(rack).error(), (Error{Refusal::OutOfRange, "anchor 2"}));
    rack.anchors[1] = metres(std::numeric_limits<double>::infinity());
    QCOMPARE(checked(rack).error(), (Error{Refusal::NotFinite, "anchor 2"}));
}

QTEST_APPLESS_MAIN(RackHolesTest)

#include "test_rackholes.moc"
