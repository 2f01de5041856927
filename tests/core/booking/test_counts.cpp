// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/booking/counts.h"
#include "core/booking/volume.h"
#include "tests/core/near.h"

#include <type_traits>

using namespace steelyard;

namespace {

template <typename A, typename B>
concept CanBeAdded = requires(A a, B b) { a + b; };

// a carry is booked beside the tonnage and cannot be added to it
static_assert(CanBeAdded<Mass, Mass> && CanBeAdded<MassDistance, MassDistance> && !CanBeAdded<Mass, MassDistance>);

CarryDone farmers(double each, double distance, std::uint64_t handles)
{
    const auto hand = within(kilograms(each), kilograms(0.2), SourceId{handles});
    return *carryDone({CarryKind::Farmers, {hand, hand, {}}, {{exactly(metres(distance)), {}, 1}}, 0});
}

}

class TestCounts : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void contactsByLeg()
    {
        const std::vector<CountedSet> sets{{10, Limbs::Both}, {6, Limbs::Left}, {5, Limbs::Right}, {6, Limbs::Left}};
        const Counts counts = *countsOf(sets);
        QCOMPARE(counts.countBoth, 10);
        QCOMPARE(counts.countLeft, 12);
        QCOMPARE(counts.countRight, 5);
        QCOMPARE(counts.countOfAll(), 27);
        QCOMPARE(countsOf({})->countOfAll(), 0);
        for (const int wrong : {-1, 100'001})
            QCOMPARE(countsOf(std::vector{CountedSet{wrong, Limbs::Both}}).error(), (Error{Refusal::OutOfRange, "count"}));
    }

    void carriesByHand()
    {
        const std::vector<CarryDone> carries{farmers(30, 40, 4), farmers(20, 60, 4)};
        const Carried sum = carriedIn(carries);
        QCOMPARE(sum.left.value.si(), 30.0 * 40 + 20 * 60);
        QCOMPARE(sum.right.value, sum.left.value);
        QCOMPARE(sum.whole.value.si(), 0.0);
        QCOMPARE(sum.all.value.si(), 2 * sum.left.value.si());
        QCOMPARE(sum.drops, 2);
        // the same handles in both hands and both carries: every part is off the same way
        VERIFY_NEAR_SHARE(sum.all.u().si(), 2 * 0.2 * 100, 1e-14);
        QCOMPARE(carriedIn({}).all.value.si(), 0.0);
    }
};

QTEST_APPLESS_MAIN(TestCounts)
#include "test_counts.moc"
