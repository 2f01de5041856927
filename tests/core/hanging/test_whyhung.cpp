// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/hanging/whyhung.h"
#include "tests/core/hanging/kits.h"
#include "tests/core/near.h"

#include <cmath>

using namespace steelyard;
using namespace steelyard::kits;

namespace {

std::vector<PlateStock> plates() { return {{plate(20), 2}, {plate(10), 2}, {plate(5), 2}, {plate(2.5), 2}, {plate(1.25), 2}}; }

/// Of all answers that hang something the answer does without, one after another, by the search itself.
std::optional<double> bestWithAnother(const HangQuestion& q, const HangAnswer& best)
{
    std::optional<double> least;
    const auto look = [&](const std::vector<std::size_t>& ways) {
        HangQuestion only = q;
        only.ways.clear();
        for (const std::size_t way : ways) {
            only.wornLeft.insert(only.wornLeft.end(), q.ways[way].left.begin(), q.ways[way].left.end());
            only.wornRight.insert(only.wornRight.end(), q.ways[way].right.begin(), q.ways[way].right.end());
        }
        const auto found = whatToHang(only).best;
        if (found && (!least || found->cost.si() < *least))
            least = found->cost.si();
    };
    for (std::size_t way = 0; way < q.ways.size(); ++way) {
        const auto clashes = [&](std::size_t other) { return (q.ways[other].takenPieces & q.ways[way].takenPieces) != 0; };
        if (std::any_of(best.wayIndex.begin(), best.wayIndex.end(), [&](std::size_t other) { return q.ways[other].thingIndex == q.ways[way].thingIndex; }))
            continue;
        for (std::size_t out = 0; out <= best.wayIndex.size(); ++out) {
            auto ways = best.wayIndex;
            if (out < ways.size())
                ways.erase(ways.begin() + static_cast<std::ptrdiff_t>(out));
            if (ways.size() >= q.mostThingsCount || std::any_of(ways.begin(), ways.end(), clashes))
                continue;
            ways.push_back(way);
            look(ways);
        }
    }
    return least;
}

}

/// Why the best is the best: said of it, and true.
class TestWhyHung : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theChainGivesTheRise();
    void theBandWouldOvershootTheTop();
    void nothingElseMayHang();
    void anotherThatIsForbiddenIsNotNamed();
    void theOtherIsTheNearest();
};

void TestWhyHung::theChainGivesTheRise()
{
    const HangQuestion q{{target(TargetPlace::Bottom, 60), target(TargetPlace::Top, 71.4)}, loadsOf(plates(), path(0.8, 1.3), 0),
                         {chainPair(0, ChainHanging::Straight, 3, 0.8), chainPair(0, ChainHanging::Doubled, 3, 0.8)}, {}, {}, 3, {}, 100000};
    const auto best = whatToHang(q).best;
    const HangReason reason = whyHung(q, *best);
    QCOMPARE(reason.parts.size(), 1u);
    QCOMPARE(reason.parts[0].wayIndex, 1u);
    // four strands of 5.7 kg a metre, half a metre up
    VERIFY_NEAR(inKilograms(asMass(reason.parts[0].atBottom)), 0, 1e-9);
    VERIFY_NEAR(inKilograms(asMass(reason.parts[0].rise())), 11.4, 1e-9);
    // both ways are of one chain, and it hangs: nothing is left that could
    QVERIFY(!reason.other);
}

void TestWhyHung::theBandWouldOvershootTheTop()
{
    HangQuestion q{{target(TargetPlace::Bottom, 60), target(TargetPlace::Top, 71.4)}, loadsOf(plates(), path(0.8, 1.3), 0),
                   {chainPair(0, ChainHanging::Doubled, 3, 0.8), bandPair(1, 0)}, {}, {}, 1, {}, 100000};
    const auto best = whatToHang(q).best;
    QCOMPARE(best->wayIndex, std::vector<std::size_t>{0});
    const HangReason reason = whyHung(q, *best);
    QVERIFY(reason.other);
    QCOMPARE(reason.other->wayIndex, 1u);
    QCOMPARE(reason.other->insteadOfIndex, std::optional<std::size_t>(0));
    // the miss is what the engine says of just that set-up
    const HangAnswer& other = reason.other->answer;
    QCOMPARE(other.wayIndex, std::vector<std::size_t>{1});
    const double miss = inKilograms(asMass(reason.other->miss(q)));
    VERIFY_NEAR(miss, inKilograms(asMass(other.readings[reason.other->targetIndex].value)) - (reason.other->targetIndex == 0 ? 60 : 71.4), 1e-9);
    QVERIFY(std::abs(miss) > 1 && !other.isWithin);
    // with room for both the chain may stay
    q.mostThingsCount = 2;
    QVERIFY(whyHung(q, *best).other->answer.cost <= other.cost);
}

void TestWhyHung::nothingElseMayHang()
{
    const HangQuestion q{{target(TargetPlace::Bottom, 60)}, loadsOf(plates(), path(), 0), {}, {}, {}, 3, {}, 1000};
    const HangReason reason = whyHung(q, *whatToHang(q).best);
    QVERIFY(reason.parts.empty() && !reason.other);
}

/// Over the cap with any load: it is not the nearest, it is none.
void TestWhyHung::anotherThatIsForbiddenIsNotNamed()
{
    HangQuestion q{{target(TargetPlace::Top, 60)}, loadsOf(plates(), path(), 0), {chainPair(0, ChainHanging::Straight, 3, 0, 40)}, {}, {}, 3, {}, 100000};
    q.limits.cap = kilograms(61);
    const auto best = whatToHang(q).best;
    QVERIFY(best && best->wayIndex.empty());
    QVERIFY(!whyHung(q, *best).other);
    q.limits.cap.reset();
    QVERIFY(whyHung(q, *best).other);
}

void TestWhyHung::theOtherIsTheNearest()
{
    int compared = 0;
    for (unsigned seed = 0; seed < 300; ++seed) {
        HangQuestion q = Kits(50'000 + seed).make(2 + seed % 2, 2, 1 + seed % 3);
        const auto best = whatToHang(q).best;
        if (!best)
            continue;
        const HangReason reason = whyHung(q, *best);
        const auto expected = bestWithAnother(q, *best);
        QVERIFY2(reason.other.has_value() == expected.has_value(), qPrintable(QString::number(seed)));
        if (!expected)
            continue;
        ++compared;
        VERIFY_NEAR(reason.other->answer.cost.si(), *expected, 1e-6);
        QVERIFY(reason.other->answer.cost >= best->cost - newtons(1e-7));
    }
    QVERIFY(compared > 100);
}

QTEST_APPLESS_MAIN(TestWhyHung)
#include "test_whyhung.moc"
