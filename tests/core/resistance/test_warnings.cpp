// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/setup.h"
#include "tests/core/near.h"
#include "tests/core/resistance/kit.h"

#include <tuple>

using namespace steelyard;
using tests::benchAid;
using tests::hungAbove;
using tests::hungBelow;
using tests::hungChain;
using tests::lineBand;
using tests::onBothEnds;
using tests::rubberBand;
using Code = SetupWarningCode;

namespace {

/// A row of the table: a set-up and every warning of one code that it raises.
struct Case {
    Setup setup;
    Code code;
    std::vector<SetupWarning> expected;
};

SetupWarning at(Code code, double height, Side side = Side::Both) { return {code, side, metres(height)}; }

Setup onOneEnd(std::vector<HungItem> items)
{
    Setup setup = onBothEnds(std::move(items));
    setup.right.clear();
    return setup;
}

Setup withPath(Setup setup, double bottom, double top, std::optional<double> rack = std::nullopt)
{
    setup.path.bottom = metres(bottom);
    setup.path.top = metres(top);
    if (rack)
        setup.path.rack = metres(*rack);
    return setup;
}

/// Chains of 10 kg/m all the way up on a bar of 80 kg: 80 + 20·h kg, u of every mark 1 cm.
Setup heavyChains(Limits limits)
{
    Setup setup = onBothEnds({hungChain(ChainHanging::Straight, 3, 0, 10)});
    setup.limits = limits;
    setup.path.uMark = metres(0.01);
    return setup;
}

Limits limit(std::optional<double> cap, std::optional<double> rack, std::optional<double> safety)
{
    const auto mass = [](std::optional<double> kg) { return kg ? std::optional(kilograms(*kg)) : std::nullopt; };
    return {mass(cap), mass(rack), mass(safety), std::nullopt};
}

/// Give-or-take of the heavy chains: 20 kg/m · 1 cm, marks known well.
constexpr double heavyGive = 0.2 * 1.959963984540054;

HungHelp fallingMachine()
{
    HungHelp machine = benchAid(0.9);
    machine.helps = false;
    return machine;
}

Setup withSleeve(double room)
{
    Setup setup = onBothEnds({});
    setup.platesThickness = metres(0.3);
    setup.limits.sleeve = metres(room);
    return setup;
}

/// Height at which a straight band of k newtons at double length, 1 m at rest, offset by x, pulls along the floor by 3 % of the
/// whole: found here by halving.
double alongCrossing(double k, double x, double ironNewtons, double anchor)
{
    double low = anchor, high = 3;
    for (int i = 0; i < 200; ++i) {
        const double h = (low + high) / 2, z = h - anchor, l = std::hypot(z, x), pull = k * std::max(0.0, l - 1);
        (2 * pull * std::abs(x) / l > 0.03 * (ironNewtons + 2 * pull * z / l) ? high : low) = h;
    }
    return (low + high) / 2;
}

}
Q_DECLARE_METATYPE(Case)

class TestWarnings : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void chains_data()
    {
        QTest::addColumn<Case>("c");
        const auto up = [](double lead, std::vector<SetupWarning> expected) {
            return Case{onBothEnds({hungChain(ChainHanging::Straight, 3, lead)}), Code::FirstLinkUp, std::move(expected)};
        };
        QTest::newRow("first link inside the path") << up(0.8, {at(Code::FirstLinkUp, 0.8)});
        QTest::newRow("first link below it") << up(0.7, {});
        QTest::newRow("first link at the bottom") << up(0.77, {});
        QTest::newRow("first link at the top") << up(1.27, {});
        QTest::newRow("first link above it") << up(1.4, {});
        QTest::newRow("two leads on one side") << Case{onOneEnd({hungChain(ChainHanging::Straight, 3, 1.0), hungChain(ChainHanging::Straight, 3, 0.9)}), Code::FirstLinkUp, {at(Code::FirstLinkUp, 0.9, Side::Left), at(Code::FirstLinkUp, 1.0, Side::Left)}};
        const auto off = [](double length, std::vector<SetupWarning> expected) {
            return Case{onBothEnds({hungChain(ChainHanging::Straight, length, 0.2)}), Code::LastLinkOff, std::move(expected)};
        };
        QTest::newRow("last link inside the path") << off(0.8, {at(Code::LastLinkOff, 1.0)});
        QTest::newRow("last link above it") << off(1.2, {});
        QTest::newRow("swings all the way") << off(0.3, {at(Code::LastLinkOff, 0.77)});
        QTest::newRow("last link at the bottom, but for rounding") << off(0.57, {at(Code::LastLinkOff, 0.77)});
        QTest::newRow("doubled: in half the travel") << Case{onBothEnds({hungChain(ChainHanging::Doubled, 1.5, 0.2)}), Code::LastLinkOff, {at(Code::LastLinkOff, 0.95)}};
    }
    void chains() { check(); }

    void bands_data()
    {
        QTest::addColumn<Case>("c");
        const auto slack = [](Setup setup, std::vector<SetupWarning> expected) { return Case{std::move(setup), Code::BandSlack, std::move(expected)}; };
        QTest::newRow("slack at the bottom") << slack(onBothEnds({hungBelow(rubberBand())}), {at(Code::BandSlack, 1.05)});
        QTest::newRow("slack at the bottom, slanted") << slack(onBothEnds({hungBelow(rubberBand(), 0.05, 0.2)}), {at(Code::BandSlack, 0.05 + std::sqrt(0.96))});
        QTest::newRow("taut all the way") << slack(withPath(onBothEnds({hungBelow(rubberBand())}), 1.06, 1.27), {});
        QTest::newRow("slack all the way") << slack(withPath(onOneEnd({hungBelow(rubberBand())}), 0.5, 1), {at(Code::BandSlack, 1, Side::Left)});
        QTest::newRow("above: slack at the top") << slack(onBothEnds({hungAbove(rubberBand(), 2.1)}), {at(Code::BandSlack, 1.1)});
        QTest::newRow("above: slack all the way") << slack(onBothEnds({hungAbove(rubberBand(), 1.5)}), {at(Code::BandSlack, 0.77)});
        QTest::newRow("above: taut all the way") << slack(onBothEnds({hungAbove(rubberBand(), 2.6)}), {});
        QTest::newRow("always taut by its offset") << slack(onBothEnds({hungBelow(rubberBand(), 0.05, 1.1)}), {});

        const auto beyond = [](Setup setup, std::vector<SetupWarning> expected) { return Case{std::move(setup), Code::BeyondMeasured, std::move(expected)}; };
        const double known = 2.0475;
        QTest::newRow("measured all the way") << beyond(withPath(onBothEnds({hungBelow(rubberBand())}), 1, 0.05 + known), {});
        QTest::newRow("past its measurement") << beyond(withPath(onBothEnds({hungBelow(rubberBand())}), 1, 2.3), {at(Code::BeyondMeasured, 0.05 + known)});
        QTest::newRow("past it from the bottom on") << beyond(withPath(onBothEnds({hungBelow(rubberBand())}), 2.2, 2.3), {at(Code::BeyondMeasured, 2.2)});
        QTest::newRow("past it at the rack only") << beyond(withPath(onOneEnd({hungBelow(rubberBand())}), 1, 1.5, 2.2), {at(Code::BeyondMeasured, 0.05 + known, Side::Left)});
        QTest::newRow("above: past it below a height") << beyond(onBothEnds({hungAbove(rubberBand(), 3)}), {at(Code::BeyondMeasured, 3 - known)});
        QTest::newRow("above: past it all the way") << beyond(onBothEnds({hungAbove(rubberBand(), 4)}), {at(Code::BeyondMeasured, 1.27)});
        QTest::newRow("above: past it at a low rack") << beyond(withPath(onBothEnds({hungAbove(rubberBand(), 3)}), 1, 1.5, 0.6), {at(Code::BeyondMeasured, 3 - known)});
        QTest::newRow("too far in front at any height") << beyond(onBothEnds({hungBelow(rubberBand(), 0.05, 2.1)}), {at(Code::BeyondMeasured, 0.77)});
        QTest::newRow("too far in front, above") << beyond(onBothEnds({hungAbove(rubberBand(), 2, 2.1)}), {at(Code::BeyondMeasured, 1.27)});
        QTest::newRow("bench aid from the chest up") << beyond(onBothEnds({benchAid(0.77)}), {});
        QTest::newRow("bench aid below the chest") << beyond(onBothEnds({benchAid(0.9)}), {at(Code::BeyondMeasured, 0.9)});
        QTest::newRow("bench aid past both its ends") << beyond(withPath(onBothEnds({benchAid(0.9)}), 0.8, 2.1), {at(Code::BeyondMeasured, 0.9), at(Code::BeyondMeasured, 1.9)});
    }
    void bands() { check(); }

    void wholeSetup_data()
    {
        QTest::addColumn<Case>("c");
        const auto uneven = [](Setup setup, std::vector<SetupWarning> expected) { return Case{std::move(setup), Code::SidesUneven, std::move(expected)}; };
        // one chain of 5.7 kg/m from 0.8 m: 5.7(h − 0.8) = 0.02(80 + 5.7(h − 0.8))
        const double oneChain = 0.8 + 0.02 * 80 / (0.98 * 5.7);
        Setup right = onOneEnd({hungChain(ChainHanging::Straight, 3, 0.8)});
        std::swap(right.left, right.right);
        QTest::newRow("a chain on the left only") << uneven(onOneEnd({hungChain(ChainHanging::Straight, 3, 0.8)}), {at(Code::SidesUneven, oneChain, Side::Left)});
        QTest::newRow("a chain on the right only") << uneven(right, {at(Code::SidesUneven, oneChain, Side::Right)});
        QTest::newRow("uneven from the bottom") << uneven(onOneEnd({hungChain(ChainHanging::Straight, 3)}), {at(Code::SidesUneven, 0.77, Side::Left)});
        QTest::newRow("the lighter side is helped") << uneven(onOneEnd({hungAbove(lineBand(200), 2.5)}), {at(Code::SidesUneven, 0.77, Side::Right)});
        QTest::newRow("alike") << uneven(onBothEnds({hungChain(ChainHanging::Straight, 3)}), {});
        QTest::newRow("within 2 %") << uneven(onOneEnd({hungChain(ChainHanging::Straight, 3, 0.8, 3.4)}), {});
        QTest::newRow("uneven only past the measurement") << uneven(withPath(onOneEnd({hungBelow(lineBand(40, 1, 1.2), 0)}), 0.9, 1.6), {});
        // a short hump: one side's chain lifts off before the other's, and stops at the same load
        Setup hump = onBothEnds({});
        hump.left = {hungChain(ChainHanging::Straight, 0.32, 0.9)};
        hump.right = {hungChain(ChainHanging::Straight, 0.32, 0.901)};
        QTest::newRow("a hair's lead apart") << uneven(hump, {});

        const auto falling = [](Setup setup, std::vector<SetupWarning> expected) { return Case{std::move(setup), Code::NotRising, std::move(expected)}; };
        QTest::newRow("iron alone stays as it is") << falling(onBothEnds({}), {});
        QTest::newRow("a chain that has run out") << falling(onBothEnds({hungChain(ChainHanging::Straight, 0.5)}), {});
        QTest::newRow("a machine that falls from its start") << falling(withPath(onBothEnds({fallingMachine()}), 0.9, 1.4), {at(Code::NotRising, 0.9)});
        QTest::newRow("help that lets go") << falling(withPath(onBothEnds({benchAid(0.9)}), 0.9, 1.4), {});
        Setup chainThenMachine = withPath(onBothEnds({hungChain(ChainHanging::Straight, 0.15, 0.9, 300), fallingMachine()}), 0.9, 1.2);
        QTest::newRow("rises until the chain is off") << falling(chainThenMachine, {at(Code::NotRising, 1.05)});

        const auto pulled = [](Code code, Setup setup, std::vector<SetupWarning> expected) { return Case{std::move(setup), code, std::move(expected)}; };
        const Setup front = onBothEnds({hungBelow(lineBand(200), 0.05, 0.6)}), back = onBothEnds({hungBelow(lineBand(200), 0.05, -0.6)});
        const double crossing = alongCrossing(200, 0.6, weight(kilograms(80)).si(), 0.05);
        QTest::newRow("pulled to the front") << pulled(Code::PulledForward, front, {at(Code::PulledForward, crossing)});
        QTest::newRow("to the front, not to the back") << pulled(Code::PulledBack, front, {});
        QTest::newRow("pulled to the back") << pulled(Code::PulledBack, back, {at(Code::PulledBack, crossing)});
        QTest::newRow("straight up and down") << pulled(Code::PulledForward, onBothEnds({hungBelow(lineBand(200))}), {});
        Setup crossed = front;
        crossed.right = {hungBelow(lineBand(200), 0.05, -0.6)};
        QTest::newRow("one each way cancels") << pulled(Code::PulledForward, crossed, {});
    }
    void wholeSetup() { check(); }

    void limits_data()
    {
        QTest::addColumn<Case>("c");
        const auto over = [](Code code, Setup setup, std::vector<SetupWarning> expected) { return Case{std::move(setup), code, std::move(expected)}; };
        // 80 + 20h + give-or-take = 100
        const double crossing = (20 - heavyGive) / 20;
        QTest::newRow("over the cap from a height on") << over(Code::OverCap, heavyChains(limit(100, {}, {})), {at(Code::OverCap, crossing)});
        QTest::newRow("over the cap at the bottom") << over(Code::OverCap, heavyChains(limit(90, {}, {})), {at(Code::OverCap, 0.77)});
        QTest::newRow("over it by the give-or-take alone") << over(Code::OverCap, heavyChains(limit(105.4 + 0.9 * heavyGive, {}, {})), {at(Code::OverCap, 1.27 - 0.1 * heavyGive / 20)});
        QTest::newRow("under the cap with its give-or-take") << over(Code::OverCap, heavyChains(limit(105.4 + 1.1 * heavyGive, {}, {})), {});
        QTest::newRow("no cap") << over(Code::OverCap, heavyChains({}), {});
        QTest::newRow("over the safeties") << over(Code::OverSafetyRating, heavyChains(limit({}, {}, 100)), {at(Code::OverSafetyRating, crossing)});
        QTest::newRow("under the safeties") << over(Code::OverSafetyRating, heavyChains(limit({}, {}, 200)), {});
        const auto racked = [](double rating, double rack) { return withPath(heavyChains(limit({}, rating, {})), 0.77, 1.27, rack); };
        QTest::newRow("over the rack's hooks") << over(Code::OverRackRating, racked(100, 1.2), {at(Code::OverRackRating, 1.2)});
        QTest::newRow("the hooks hold what hangs at the rack") << over(Code::OverRackRating, racked(100, 0.9), {});
        QTest::newRow("no rack mark") << over(Code::OverRackRating, heavyChains(limit({}, 50, {})), {});
        QTest::newRow("more plates than the sleeve holds") << over(Code::SleeveFull, withSleeve(0.299), {{Code::SleeveFull, Side::Both, std::nullopt}});
        QTest::newRow("the sleeve just holds them") << over(Code::SleeveFull, withSleeve(0.3), {});
    }
    void limits() { check(); }

    /// What is advised does what it says: a shorter lead lets a chain pull sooner, a longer one keeps its last link down.
    void leadsMoveTheEndsOfAChain()
    {
        const auto first = [](double length, double lead) { return pullCurve(onBothEnds({hungChain(ChainHanging::Straight, length, lead)}))->warnings; };
        QCOMPARE(first(3, 0.9), std::vector{at(Code::FirstLinkUp, 0.9)});
        QCOMPARE(first(3, 0.8), std::vector{at(Code::FirstLinkUp, 0.8)});
        QVERIFY(first(3, 0.7).empty());
        QCOMPARE(first(0.8, 0.2), std::vector{at(Code::LastLinkOff, 1.0)});
        QCOMPARE(first(0.8, 0.3), std::vector{at(Code::LastLinkOff, 1.1)});
        QVERIFY(first(0.8, 0.5).empty());
    }

    void sidesAreNamed()
    {
        Setup setup = onBothEnds({hungChain(ChainHanging::Straight, 3, 0.8)});
        setup.right = {hungChain(ChainHanging::Straight, 3, 0.9)};
        const auto warnings = pullCurve(setup)->warnings;
        QCOMPARE(warnings.size(), 2u);
        QCOMPARE(warnings[0], at(Code::FirstLinkUp, 0.8, Side::Left));
        QCOMPARE(warnings[1], at(Code::FirstLinkUp, 0.9, Side::Right));
    }

    void comeInTheOrderOfTheirCodes()
    {
        Setup setup = onBothEnds({hungBelow(rubberBand(), 0.05, 0.2), hungChain(ChainHanging::Straight, 0.2, 0.8)});
        setup.limits = limit(81, {}, 81);
        const auto warnings = pullCurve(setup)->warnings;
        QVERIFY(warnings.size() >= 5);
        QVERIFY(std::is_sorted(warnings.begin(), warnings.end(), [](const auto& a, const auto& b) { return a.code < b.code; }));
    }

    /// Rubber bends where a straight line does not: the sides differ most somewhere between. With just so much iron that
    /// 2 % is passed on a millimetre or two, the warning stands there; with a little more it is gone.
    void aShortHumpIsClimbed()
    {
        const auto rubber = hungBelow(rubberBand()), line = hungBelow(lineBand(178), 0.05);
        const auto ironAtTwoPercent = [&](double h) {
            const double l = rubber.verticalPull(metres(h)).si(), r = line.verticalPull(metres(h)).si();
            return 50 * std::abs(l - r) - l - r;
        };
        double most = 0, summit = 0;
        for (int i = 0; i <= 500000; ++i) {
            const double h = 1.2 + 0.7 * i / 500000, iron = ironAtTwoPercent(h);
            if (iron > most)
                std::tie(most, summit) = std::pair(iron, h);
        }
        QVERIFY(summit > 1.21 && summit < 1.89);
        Setup setup = withPath(onBothEnds({}), 1.2, 1.9);
        setup.left = {rubber};
        setup.right = {line};
        setup.bar = Mass{};
        setup.plates = asMass(newtons(most * (1 - 1e-6)));
        const auto warnings = pullCurve(setup)->warnings;
        const auto uneven = std::find_if(warnings.begin(), warnings.end(), [](const auto& w) { return w.code == Code::SidesUneven; });
        QVERIFY(uneven != warnings.end());
        QVERIFY(uneven->height->si() < summit && uneven->height->si() > summit - 0.002);
        VERIFY_NEAR_SHARE(ironAtTwoPercent(uneven->height->si()), most * (1 - 1e-6), 1e-12);
        setup.plates = asMass(newtons(most * (1 + 1e-6)));
        const auto after = pullCurve(setup)->warnings;
        QVERIFY(std::none_of(after.begin(), after.end(), [](const auto& w) { return w.code == Code::SidesUneven; }));
    }

private:
    static void check()
    {
        QFETCH(Case, c);
        const auto curve = pullCurve(c.setup);
        QVERIFY(curve.ok());
        std::vector<SetupWarning> found;
        for (const SetupWarning& w : curve->warnings)
            if (w.code == c.code)
                found.push_back(w);
        QCOMPARE(found.size(), c.expected.size());
        for (std::size_t i = 0; i < found.size(); ++i) {
            QCOMPARE(found[i].side, c.expected[i].side);
            QCOMPARE(found[i].height.has_value(), c.expected[i].height.has_value());
            if (found[i].height)
                VERIFY_NEAR(found[i].height->si(), c.expected[i].height->si(), 2e-9);
        }
    }
};

QTEST_APPLESS_MAIN(TestWarnings)
#include "test_warnings.moc"
