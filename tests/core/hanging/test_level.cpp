// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/hanging/level.h"
#include "tests/core/hanging/kits.h"
#include "tests/core/near.h"

#include <cmath>
#include <random>
#include <vector>

using namespace steelyard;

namespace {

/// A lifter whose strength is a straight line over height.
StrengthCurve strengthOf(double low, double high, double from = 0.77, double to = 1.27)
{
    const std::vector<IsometricReading> readings{{metres(from), newtons(low), {}}, {metres((from + to) / 2), newtons((low + high) / 2), {}}, {metres(to), newtons(high), {}}};
    return *StrengthCurve::of(readings);
}

Setup ironOnly(double kg, double uKg = 0)
{
    Setup setup;
    setup.bar = kilograms(kg);
    setup.uIron = kilograms(uKg);
    setup.path = kits::path();
    return setup;
}

Setup withChains(double kg, double kgPerMetre, double u = 0)
{
    Setup setup = ironOnly(kg, 0.5);
    setup.left = setup.right = {tests::hungChain(ChainHanging::Straight, 3, 0.5, kgPerMetre, u, 7)};
    return setup;
}

}

/// How evenly a set-up takes of her strength.
class TestLevel : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void plainIronAgainstAStraightLine_data();
    void plainIronAgainstAStraightLine();
    void aPullThatIsAShareOfHerStrengthIsLevel();
    void onlyTheShapeCounts();
    void cornersAreCaughtByTheGrid();
    void uncertaintyAsByManyDraws();
    void whatIronAloneLeavesOpen();
    void onlyWhereHerStrengthIsKnown();
    void notWhereAPullIsUnknown();
    void pictureAndReadingAgree();
};

void TestLevel::plainIronAgainstAStraightLine_data()
{
    QTest::addColumn<double>("high");
    QTest::newRow("as strong at the top") << 800.0;
    QTest::newRow("a quarter stronger") << 1000.0;
    QTest::newRow("twice as strong") << 1600.0;
    QTest::newRow("weaker at the top") << 500.0;
}

/// Integrals of 1/S and 1/S² over a straight line from a to b: ln(b/a)/(b − a) and 1/(a·b).
void TestLevel::plainIronAgainstAStraightLine()
{
    QFETCH(const double, high);
    const double low = 800;
    const double mean = high == low ? 1 / low : std::log(high / low) / (high - low);
    const double expected = std::sqrt(std::max(0.0, 1 / (low * high) / (mean * mean) - 1));
    const auto level = levelOf(ironOnly(60), strengthOf(low, high));
    QVERIFY(level);
    VERIFY_NEAR(level->variationRatio, expected, 1e-6);
    VERIFY_NEAR_SHARE(level->ratio, weight(kilograms(60)).si() * mean, 1e-6);
    QCOMPARE(level->from, metres(0.77));
    QCOMPARE(level->to, metres(1.27));
}

void TestLevel::aPullThatIsAShareOfHerStrengthIsLevel()
{
    // chains of 11.4 kg a metre on both ends, off the floor from 50 cm on
    const Setup setup = withChains(60, 5.7);
    const auto at = [](double h) { return 1.5 * weight(kilograms(60 + 11.4 * (h - 0.5))).si(); };
    const auto level = levelOf(setup, strengthOf(at(0.77), at(1.27)));
    VERIFY_NEAR(level->variationRatio, 0, 1e-9);
    VERIFY_NEAR(level->ratio, 1 / 1.5, 1e-9);
    QVERIFY(level->variationRatio < levelOfPlainIron(setup, strengthOf(at(0.77), at(1.27)))->variationRatio);
    QVERIFY(level->uRatio > 0);
}

void TestLevel::onlyTheShapeCounts()
{
    const auto one = levelOf(withChains(60, 5.7), strengthOf(800, 1400)), twice = levelOf(withChains(60, 5.7), strengthOf(1600, 2800));
    VERIFY_NEAR(one->variationRatio, twice->variationRatio, 1e-12);
    VERIFY_NEAR(one->ratio, 2 * twice->ratio, 1e-12);
    QVERIFY(levelOf(withChains(60, 5.7), strengthOf(800, 1000))->variationRatio != one->variationRatio);
}

/// A chain that starts to leave the floor inside the path: against the integral over a thousand times as many heights.
void TestLevel::cornersAreCaughtByTheGrid()
{
    for (double lead = 0.8; lead < 1.2; lead += 0.031) {
        Setup setup = ironOnly(40);
        setup.left = setup.right = {tests::hungChain(ChainHanging::Doubled, 3, lead)};
        const StrengthCurve strength = strengthOf(800, 1300);
        double mean = 0, squares = 0;
        constexpr int n = 33'000;
        for (int i = 0; i < n; ++i) {
            const double h = 0.77 + 0.5 * (i + 0.5) / n;
            const double pull = weight(kilograms(40 + 22.8 * std::max(0.0, h - lead))).si();
            const double ratio = pull / (800 + 1000 * (h - 0.77));
            mean += ratio / n;
            squares += ratio * ratio / n;
        }
        const double expected = std::sqrt(squares - mean * mean) / mean;
        VERIFY_NEAR(levelOf(setup, strength)->variationRatio, expected, 2e-4);
    }
}

/// Propagation of distributions (JCGM 101:2008, 7): each pull of hers and each mass drawn 20,000 times.
void TestLevel::uncertaintyAsByManyDraws()
{
    const std::vector<IsometricReading> readings{{metres(0.75), newtons(800), newtons(20)}, {metres(1.0), newtons(1000), newtons(20)}, {metres(1.3), newtons(1500), newtons(20)}};
    const StrengthCurve strength = *StrengthCurve::of(readings);
    const Setup setup = withChains(60, 5.7, 0.3);
    const auto level = levelOf(setup, strength);
    std::mt19937 random(1795);
    std::normal_distribution<double> unit;
    double sum = 0, squares = 0;
    constexpr int draws = 20'000;
    for (int i = 0; i < draws; ++i) {
        StrengthCurve drawn = strength;
        for (std::size_t p = 0; p < strength.points().size(); ++p)
            drawn = drawn.withMore(p, unit(random) * strength.points()[p].u);
        Setup other = withChains(60 + 0.5 * unit(random), 5.7 + 0.3 * unit(random));
        other.path.bottom = setup.path.bottom + unit(random) * setup.path.uMark;
        other.path.top = setup.path.top + unit(random) * setup.path.uMark;
        const auto one = levelOf(other, drawn);
        sum += one->variationRatio;
        squares += one->variationRatio * one->variationRatio;
    }
    const double mean = sum / draws;
    VERIFY_NEAR_SHARE(level->uRatio, std::sqrt(squares / draws - mean * mean), 0.06);
    VERIFY_NEAR(level->giveOrTakeRatio, 1.959964 * level->uRatio, 1e-6);
}

/// The mass of the iron alone moves no share against another; that her pulls are uncertain does.
void TestLevel::whatIronAloneLeavesOpen()
{
    const auto exact = levelOf(ironOnly(60), strengthOf(800, 1400)), rough = levelOf(ironOnly(60, 2), strengthOf(800, 1400));
    VERIFY_NEAR(exact->uRatio, rough->uRatio, 1e-12);
    QVERIFY(exact->uRatio > 0.01);
}

void TestLevel::onlyWhereHerStrengthIsKnown()
{
    // half of the path, then just enough of it
    QVERIFY(!levelOf(ironOnly(60), strengthOf(800, 1000, 1.02, 1.27)));
    const auto most = levelOf(ironOnly(60), strengthOf(800, 1000, 0.9, 1.6));
    QVERIFY(most);
    QCOMPARE(most->from, metres(0.9));
    QCOMPARE(most->to, metres(1.27));
    QVERIFY(!levelOf(ironOnly(60), strengthOf(800, 1000, 1.5, 1.9)));
    LiftPath none;
    QVERIFY(!levelStretch(none, strengthOf(800, 1000)));
}

void TestLevel::notWhereAPullIsUnknown()
{
    Setup setup = ironOnly(60);
    setup.left = setup.right = {tests::hungBelow(tests::lineBand(200, 0.6, 1.0))};
    QVERIFY(!levelOf(setup, strengthOf(800, 1400)));
    QVERIFY(levelPicture(setup, strengthOf(800, 1400), 20).empty());
    QVERIFY(!levelOf(ironOnly(0), strengthOf(800, 1400)));
}

void TestLevel::pictureAndReadingAgree()
{
    const Setup setup = withChains(60, 5.7, 0.1);
    const StrengthCurve strength = strengthOf(800, 1400);
    const auto level = levelOf(setup, strength);
    const auto samples = levelPicture(setup, strength, 1001);
    QCOMPARE(samples.size(), 1001u);
    double ratio = 0, plain = 0, squares = 0;
    for (const LevelSample& sample : samples) {
        VERIFY_NEAR(sample.ratio, sample.pull / sample.strength, 1e-12);
        QVERIFY(sample.uRatio > 0 && sample.uStrength > Force{} && sample.uPull > Force{});
        ratio += sample.ratio / 1001;
        plain += sample.plainRatio / 1001;
        squares += sample.ratio * sample.ratio / 1001;
    }
    VERIFY_NEAR_SHARE(ratio, level->ratio, 1e-3);
    VERIFY_NEAR_SHARE(plain, level->ratio, 1e-3);
    VERIFY_NEAR(std::sqrt(squares - ratio * ratio) / ratio, level->variationRatio, 1e-3);
    QCOMPARE(samples.front().height, level->from);
    QCOMPARE(samples.back().height, level->to);
    QVERIFY(levelPicture(setup, strength, 1).empty());
}

QTEST_APPLESS_MAIN(TestLevel)
#include "test_level.moc"
