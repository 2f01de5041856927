// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/hanging/whattohang.h"
#include "tests/core/hanging/kits.h"
#include "tests/core/near.h"

#include <algorithm>

using namespace steelyard;
using namespace steelyard::kits;

namespace {

std::optional<Reading> readingAt(const PullCurve& curve, TargetPlace place)
{
    switch (place) {
    case TargetPlace::Bottom: return curve.bottom;
    case TargetPlace::Zone: return curve.zone;
    case TargetPlace::Top: return curve.top;
    case TargetPlace::Mean: break;
    }
    return curve.mean;
}

/// What comes of one choice, by the engine's whole curve, and how it is ranked.
struct Tried {
    double cost = 0;
    int pieces = 0, changes = 0;
    std::size_t load = 0;
    std::vector<std::size_t> ways;
};

std::optional<Tried> tried(const HangQuestion& q, std::size_t load, const std::vector<std::size_t>& ways)
{
    const IronLoad& iron = q.loads[load];
    Setup setup;
    setup.bar = kilograms(20);
    setup.plates = iron.load.plates();
    setup.uIron = iron.uIron;
    setup.platesThickness = iron.load.thickness();
    setup.path = iron.path;
    setup.limits = q.limits;
    Tried out{0, 2 * static_cast<int>(iron.load.eachSide.size()), 0, load, ways};
    for (const std::size_t w : ways) {
        setup.left.insert(setup.left.end(), q.ways[w].left.begin(), q.ways[w].left.end());
        setup.right.insert(setup.right.end(), q.ways[w].right.begin(), q.ways[w].right.end());
        out.pieces += q.ways[w].pieceCount;
    }
    for (std::size_t w = 0; w < q.ways.size(); ++w)
        if (q.ways[w].hangsNow != (std::find(ways.begin(), ways.end(), w) != ways.end()))
            out.changes += q.ways[w].pieceCount;
    if (q.loadNowIndex) {
        const PlateChange change = changeBetween(q.loads[*q.loadNowIndex].load, iron.load);
        out.changes += 2 * static_cast<int>(change.takeOff.size() + change.putOn.size());
    }
    const auto curve = pullCurve(setup, 0);
    if (!curve || !curve->ready)
        return std::nullopt;
    for (const SetupWarning& w : curve->warnings)
        if (w.code == SetupWarningCode::OverCap || w.code == SetupWarningCode::SleeveFull)
            return std::nullopt;
    double square = 0;
    for (const HangTarget& t : q.targets) {
        const auto reading = readingAt(*curve, t.place);
        const double miss = (reading->value - t.wanted).si();
        square += miss * miss + reading->u.si() * reading->u.si();
    }
    if (q.strength) {
        const auto level = levelOf(setup, *q.strength);
        if (!level)
            return std::nullopt;
        double wanted = 0;
        for (const HangTarget& t : q.targets)
            wanted += t.wanted.si() / static_cast<double>(q.targets.size());
        square += wanted * wanted * (level->variationRatio * level->variationRatio + level->uRatio * level->uRatio);
    }
    out.cost = std::sqrt(square);
    return out;
}

/// Every choice there is.
std::optional<Tried> byForce(const HangQuestion& q)
{
    std::optional<Tried> best;
    std::vector<std::size_t> ways;
    const auto look = [&] {
        for (std::size_t load = 0; load < q.loads.size(); ++load)
            if (const auto one = tried(q, load, ways)) {
                const bool better = !best || one->cost < best->cost - 1e-9
                    || (one->cost <= best->cost + 1e-9 && std::tie(one->pieces, one->changes) < std::tie(best->pieces, best->changes));
                if (better)
                    best = one;
            }
    };
    const auto choose = [&](const auto& self, std::size_t from) -> void {
        look();
        if (ways.size() == q.mostThingsCount)
            return;
        for (std::size_t w = from; w < q.ways.size(); ++w) {
            const bool apart = std::none_of(ways.begin(), ways.end(), [&](std::size_t other) { return q.ways[other].thingIndex == q.ways[w].thingIndex || (q.ways[other].takenPieces & q.ways[w].takenPieces); });
            if (!apart)
                continue;
            ways.push_back(w);
            self(self, w + 1);
            ways.pop_back();
        }
    };
    choose(choose, 0);
    return best;
}

}

/// What to hang is the best there is, and what is said of it comes true.
class TestWhatToHang : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void ironAloneIsTheNearestLoad();
    void theChainGivesTheRise();
    void notKnowingIsNotRewarded();
    void fewerPiecesThenLessChange();
    void oneStrapHangsOneChain();
    void neverPastACap();
    void saysWhichTargetFails();
    void absurdQuestions();
    void stopsWhenTold();
    void boundHoldsWhenItGivesUp();
    void asGoodAsEveryChoiceTried_data();
    void asGoodAsEveryChoiceTried();
    void levelIsLevel();
    void levelOnlyWhereHerStrengthIsKnown();
};

void TestWhatToHang::ironAloneIsTheNearestLoad()
{
    const std::vector<PlateStock> stock{{plate(20), 2}, {plate(10), 2}, {plate(2.5), 2}};
    HangQuestion q{{target(TargetPlace::Bottom, 71, 8)}, loadsOf(stock, path(), 0), {}, {}, {}, 3, {}, 1000};
    const auto answers = whatToHang(q);
    QVERIFY(answers.best && answers.isProved && answers.best->isWithin && !answers.failing);
    // 20 + 2 · 22.5 is 65, six away; the next is 20 + 2 · 30, nine away
    QCOMPARE(inKilograms(q.loads[answers.best->loadIndex].load.total), 65.0);
}

/// 60 kg at the bottom and 71.4 at the top: iron cannot rise, a chain of 5.7 kg a metre on both ends rises 5.7 kg in half a metre, doubled twice that.
void TestWhatToHang::theChainGivesTheRise()
{
    const std::vector<PlateStock> stock{{plate(20), 2}, {plate(10), 2}, {plate(5), 2}, {plate(2.5), 2}, {plate(1.25), 2}};
    HangQuestion q{{target(TargetPlace::Bottom, 60), target(TargetPlace::Top, 71.4)}, loadsOf(stock, path(0.8, 1.3), 0),
                   {chainPair(0, ChainHanging::Straight, 3, 0.8), chainPair(0, ChainHanging::Doubled, 3, 0.8)}, {}, {}, 3, {}, 100000};
    const auto answers = whatToHang(q);
    QVERIFY(answers.best && answers.isProved && answers.best->isWithin);
    QCOMPARE(answers.best->wayIndex, std::vector<std::size_t>{1});
    QCOMPARE(inKilograms(q.loads[answers.best->loadIndex].load.total), 60.0);
    VERIFY_NEAR(inKilograms(asMass(answers.best->readings[1].value)), 71.4, 1e-9);
}

/// Of two chains that pull alike, the one that is known better, though a kilogram is missed by neither.
void TestWhatToHang::notKnowingIsNotRewarded()
{
    const std::vector<PlateStock> stock{{plate(10), 4}};
    HangQuestion q{{target(TargetPlace::Top, 65.7)}, loadsOf(stock, path(0.8, 1.3), 0),
                   {chainPair(0, ChainHanging::Straight, 3, 0.8, 5.7, 0.5), chainPair(1, ChainHanging::Straight, 3, 0.8, 5.7, 0.05)}, {}, {}, 3, {}, 100000};
    const auto answers = whatToHang(q);
    QVERIFY(answers.best && answers.next);
    QCOMPARE(answers.best->wayIndex, std::vector<std::size_t>{1});
    QVERIFY(answers.best->cost < answers.next->cost);
}

void TestWhatToHang::fewerPiecesThenLessChange()
{
    // two chains alike: the one that hangs already
    const std::vector<PlateStock> stock{{plate(10), 4}};
    HangQuestion q{{target(TargetPlace::Top, 65.7)}, loadsOf(stock, path(0.8, 1.3), 0),
                   {chainPair(0, ChainHanging::Straight, 3, 0.8), chainPair(1, ChainHanging::Straight, 3, 0.8)}, {}, {}, 3, {}, 100000};
    q.ways[1].hangsNow = true;
    QCOMPARE(whatToHang(q).best->wayIndex, std::vector<std::size_t>{1});
    q.ways[1].hangsNow = false;
    q.ways[0].hangsNow = true;
    QCOMPARE(whatToHang(q).best->wayIndex, std::vector<std::size_t>{0});
    // and one in fewer pieces before that
    q.ways[1].pieceCount = 1;
    QCOMPARE(whatToHang(q).best->wayIndex, std::vector<std::size_t>{1});
}

void TestWhatToHang::oneStrapHangsOneChain()
{
    const std::vector<PlateStock> stock{{plate(10), 2}};
    HangQuestion q{{target(TargetPlace::Bottom, 20), target(TargetPlace::Top, 31.4)}, loadsOf(stock, path(0.8, 1.3), 0),
                   {chainPair(0, ChainHanging::Straight, 3, 0.8, 5.7, 0.01, 1), chainPair(1, ChainHanging::Straight, 3, 0.8, 5.7, 0.01, 1)}, {}, {}, 3, {}, 100000};
    QCOMPARE(whatToHang(q).best->wayIndex.size(), 1u);
    q.ways[1].takenPieces = 2;
    QCOMPARE(whatToHang(q).best->wayIndex.size(), 2u);
}

/// At the unfavourable end: the load that would be best is over it by its give-or-take alone.
void TestWhatToHang::neverPastACap()
{
    const std::vector<PlateStock> stock{{plate(10), 6}, {plate(1.25), 2}};
    HangQuestion q{{target(TargetPlace::Bottom, 60)}, loadsOf(stock, path(), 0.02), {}, {}, {}, 3, {}, 100000};
    QCOMPARE(inKilograms(q.loads[whatToHang(q).best->loadIndex].load.total), 60.0);
    q.limits.cap = kilograms(60.5);
    const auto answers = whatToHang(q);
    QCOMPARE(inKilograms(q.loads[answers.best->loadIndex].load.total), 42.5);
    q.limits.cap = kilograms(10);
    QVERIFY(!whatToHang(q).best);
}

void TestWhatToHang::saysWhichTargetFails()
{
    const std::vector<PlateStock> stock{{plate(10), 4}};
    // the top cannot be met even alone
    HangQuestion q{{target(TargetPlace::Bottom, 40), target(TargetPlace::Top, 90)}, loadsOf(stock, path(), 0), {}, {}, {}, 3, {}, 100000};
    auto answers = whatToHang(q);
    QVERIFY(answers.best && answers.next && !answers.best->isWithin);
    QCOMPARE(answers.failing, TargetPlace::Top);
    // each can be met alone, both cannot: the worse of the two
    q.targets = {target(TargetPlace::Bottom, 40, 5), target(TargetPlace::Top, 60, 2)};
    answers = whatToHang(q);
    QVERIFY(!answers.best->isWithin && answers.failing);
}

void TestWhatToHang::absurdQuestions()
{
    const std::vector<PlateStock> stock{{plate(10), 2}};
    HangQuestion q{{}, loadsOf(stock, path(), 0), {}, {}, {}, 3, {}, 1000};
    QVERIFY(!whatToHang(q).best);
    q.targets = {target(TargetPlace::Zone, 40)};
    for (IronLoad& iron : q.loads)
        iron.path.zoneFrom = iron.path.zoneTo = std::nullopt;
    QVERIFY(!whatToHang(q).best);
    q.targets = {target(TargetPlace::Top, 40)};
    q.loads.clear();
    QVERIFY(!whatToHang(q).best);
}

void TestWhatToHang::stopsWhenTold()
{
    HangQuestion q = Kits(3).make(6, 3, 2);
    q.limits = {};
    std::vector<double> costs;
    const auto all = whatToHang(q, {[&](const HangAnswer& answer) { costs.push_back(answer.cost.si()); }, {}});
    QVERIFY(all.isProved && !costs.empty());
    // each better than the one before, the last the best
    QVERIFY(std::is_sorted(costs.rbegin(), costs.rend()));
    QCOMPARE(costs.back(), all.best->cost.si());
    const HangQuestion large = Kits(4).large(30);
    const auto stopped = whatToHang(large, {{}, [] { return false; }});
    QVERIFY(stopped.best && !stopped.isProved && stopped.bound == Force{});
    QVERIFY(stopped.looksCount < whatToHang(large).looksCount);
}

/// A search that may not look on says how good an answer could be at most, and that is no more than the best there is.
void TestWhatToHang::boundHoldsWhenItGivesUp()
{
    int gaveUp = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        HangQuestion q = Kits(seed).make(7, 3, 2);
        const auto whole = whatToHang(q);
        if (!whole.best)
            continue;
        QCOMPARE(whole.bound.si(), whole.best->cost.si());
        q.mostLooksCount = 5;
        const auto some = whatToHang(q);
        QVERIFY(some.bound.si() <= whole.best->cost.si() + 1e-7);
        gaveUp += some.isProved ? 0 : 1;
    }
    QVERIFY(gaveUp > 20);
}

void TestWhatToHang::asGoodAsEveryChoiceTried_data()
{
    QTest::addColumn<unsigned>("first");
    for (unsigned first = 0; first < 2400; first += 300)
        QTest::newRow(qPrintable(QStringLiteral("kits from %1").arg(first))) << first;
}

void TestWhatToHang::asGoodAsEveryChoiceTried()
{
    QFETCH(const unsigned, first);
    int answered = 0;
    for (unsigned seed = first; seed < first + 300; ++seed) {
        Kits kits(10'000 + seed);
        HangQuestion q = kits.make(1 + seed % 3, 2, 1 + seed % 4);
        if (seed % 3 == 0)
            q.strength = kits.strength();
        const auto answers = whatToHang(q);
        const auto forced = byForce(q);
        QVERIFY2(answers.best.has_value() == forced.has_value(), qPrintable(QString::number(seed)));
        if (!forced)
            continue;
        ++answered;
        QVERIFY2(answers.isProved, qPrintable(QString::number(seed)));
        QVERIFY2(std::abs(answers.best->cost.si() - forced->cost) <= 1e-7, qPrintable(QStringLiteral("%1: %2 and %3").arg(seed).arg(answers.best->cost.si()).arg(forced->cost)));
        QVERIFY2(answers.best->pieceCount == forced->pieces && answers.best->changeCount == forced->changes,
                 qPrintable(QStringLiteral("%1: %2, %3 and %4, %5").arg(seed).arg(answers.best->pieceCount).arg(answers.best->changeCount).arg(forced->pieces).arg(forced->changes)));
    }
    QVERIFY(answered > 200);
}

/// She is a third stronger at the top: of two chains the one that follows her, though both meet the mean.
void TestWhatToHang::levelIsLevel()
{
    const std::vector<PlateStock> stock{{plate(20), 2}, {plate(10), 2}, {plate(5), 2}, {plate(2.5), 2}, {plate(1.25), 2}};
    HangQuestion q{{target(TargetPlace::Mean, 80)}, loadsOf(stock, path(0.8, 1.3), 0),
                   {chainPair(0, ChainHanging::Straight, 3, 0.8, 2), chainPair(1, ChainHanging::Doubled, 3, 0.8, 8)}, {}, {}, 3, {}, 100000};
    const std::vector<IsometricReading> pulls{{metres(0.75), newtons(900), {}}, {metres(1.05), newtons(1050), {}}, {metres(1.35), newtons(1200), {}}};
    q.strength = *StrengthCurve::of(pulls);
    const auto answers = whatToHang(q);
    QVERIFY(answers.best && answers.best->level && answers.isProved);
    QCOMPARE(answers.best->wayIndex, std::vector<std::size_t>{1});
    const HangAnswer& best = *answers.best;
    // and without her strength the lighter chain would have done as well
    Setup plain;
    plain.bar = kilograms(80);
    plain.path = q.loads.front().path;
    QVERIFY(best.level->variationRatio < levelOf(plain, *q.strength)->variationRatio / 2);
    QVERIFY(best.level->uRatio > 0);
    q.strength.reset();
    QVERIFY(!whatToHang(q).best->level);
}

void TestWhatToHang::levelOnlyWhereHerStrengthIsKnown()
{
    const std::vector<PlateStock> stock{{plate(20), 2}};
    HangQuestion q{{target(TargetPlace::Mean, 60)}, loadsOf(stock, path(0.8, 1.3), 0), {}, {}, {}, 3, {}, 100000};
    const std::vector<IsometricReading> pulls{{metres(1.1), newtons(900), {}}, {metres(1.2), newtons(1050), {}}, {metres(1.35), newtons(1200), {}}};
    q.strength = *StrengthCurve::of(pulls);
    QVERIFY(!whatToHang(q).best);
}

QTEST_APPLESS_MAIN(TestWhatToHang)
#include "test_whattohang.moc"
