// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/hanging/eccentricload.h"
#include "tests/core/hanging/stocks.h"
#include "tests/core/near.h"

#include <bit>
#include <limits>
#include <map>
#include <optional>
#include <rapidcheck.h>

using namespace steelyard;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();

std::vector<double> masses(const std::vector<PlateType>& plates)
{
    std::vector<double> kg;
    for (const PlateType& p : plates)
        kg.push_back(p.mass.si());
    return kg;
}

double thickness(const std::vector<PlateType>& plates)
{
    double sum = 0;
    for (const PlateType& p : plates)
        sum += p.thickness.si();
    return sum;
}

EccentricTarget target(double concentric, double eccentric) { return *eccentricTarget(kilograms(concentric), kilograms(eccentric)); }

/// Every way to put some pairs on the bar and some on the hooks, one after the other.
class EveryWay {
public:
    EveryWay(const EccentricKit& kit, const EccentricTarget& target) : m_kit(kit), m_target(target) { hang(0); }

    std::optional<stocks::Judged> best;
    long long leastBarMiss = std::numeric_limits<long long>::max(); ///< whatever the hooks may carry
    /// Of each load of the bar that is as near as the best: what else the hooks can weigh, and how near.
    std::map<long long, std::vector<long long>> hooksOf;

private:
    void hang(std::size_t type)
    {
        if (type < m_kit.stock.size()) {
            const PlateStock& s = m_kit.stock[type];
            for (int n = 0; n <= s.count / 2; ++n)
                for (int k = 0; k <= s.count / 2 - n; ++k) {
                    add(s.type, n, k, 1);
                    hang(type + 1);
                    add(s.type, n, k, -1);
                }
            return;
        }
        const double slack = 1e-9;
        if ((m_kit.sleeve && m_sideThick > m_kit.sleeve->si() + slack) || (m_kit.hookRoom && m_hookThick > m_kit.hookRoom->si() + slack))
            return;
        const double base = m_kit.base.value.si(), frame = m_kit.frame.value.si(), share = m_kit.platesUShare;
        const double concentric = base + 2 * m_side, all = 2 * (m_side + m_hook), eccentric = base + 2 * frame + all;
        const auto small = [](double kg) { return stocks::small(kilograms(kg)); };
        leastBarMiss = std::min(leastBarMiss, std::abs(small(concentric - m_target.concentric.si())));
        const double wanted = m_target.eccentric ? m_target.eccentric->si() : *m_target.eccentricRatio * concentric;
        const double u = std::hypot(m_kit.base.u.si(), 2 * m_kit.frame.u.si(), share * all);
        constexpr double k95 = 1.9599639845400545;
        if (m_kit.eccentricCap && eccentric + k95 * u > m_kit.eccentricCap->si())
            return;
        if (m_kit.hookRating && m_hook + k95 * share * m_hook > m_kit.hookRating->si())
            return;
        const stocks::Judged here{std::abs(small(concentric - m_target.concentric.si())), std::abs(small(eccentric - wanted)), 2 * m_count, small(concentric), small(m_hook)};
        if (!best || here < *best)
            best = here;
        hooksOf[small(concentric)].push_back(small(m_hook));
    }
    void add(const PlateType& type, int n, int k, int sign)
    {
        m_side += sign * n * type.mass.si();
        m_hook += sign * k * type.mass.si();
        m_sideThick += sign * n * type.thickness.si();
        m_hookThick += sign * k * type.thickness.si();
        m_count += sign * (n + k);
    }

    const EccentricKit& m_kit;
    const EccentricTarget& m_target;
    double m_side = 0, m_hook = 0, m_sideThick = 0, m_hookThick = 0;
    int m_count = 0;
};

/// Over the whole range from the first test on.
int whole(int from, int to) { return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(from, to)); }
double pick(std::initializer_list<double> of) { return *rc::gen::elementOf(std::vector<double>(of)); }

/// Few enough plates that every way can be gone through: round ones, pounds among them, or weighed to a gram.
EccentricKit anyKit()
{
    const int kind = whole(0, 3);
    std::vector<PlateStock> stock;
    for (int types = whole(1, kind == 2 ? 8 : 6); types > 0; --types) {
        double kg = pick({25, 20, 15, 10, 5, 2.5, 1.25, 0.5});
        if (kind == 1 && *rc::gen::arbitrary<bool>())
            kg = pick({45, 35, 25, 10, 5, 2.5}) * 0.45359237;
        if (kind == 2)
            kg = whole(400, 26000) / 1000.0;
        // thick ones may be light and thin ones heavy, so that fewer plates are not always thinner
        stock.push_back({{kilograms(kg), metres(0.3), metres(whole(3, 60) / 1000.0)}, kind == 2 ? 2 : whole(0, 8)});
    }
    EccentricKit kit = stocks::kit(std::move(stock));
    kit.base.value = kilograms(pick({20, 25, 17.5, 20.411657, 0}));
    kit.frame.value = kilograms(pick({0, 3.2, 4.15}));
    if (whole(0, 3) == 0) {
        kit.base.u = kilograms(0.1);
        kit.frame.u = kilograms(0.05);
        kit.platesUShare = 0.0123;
    }
    if (whole(0, 3) == 0)
        kit.sleeve = metres(whole(0, 160) / 1000.0);
    if (whole(0, 3) == 0)
        kit.hookRoom = metres(whole(0, 120) / 1000.0);
    if (whole(0, 3) == 0)
        kit.hookRating = kilograms(whole(0, 40000) / 1000.0 + 0.000317);
    if (whole(0, 3) == 0)
        kit.eccentricCap = kilograms(whole(40000, 200000) / 1000.0 + 0.000317);
    return kit;
}

EccentricTarget anyTarget()
{
    const double concentric = whole(1, 800) / 4.0, more = whole(1, 400) / 4.0;
    if (whole(0, 4) == 0)
        return {kilograms(concentric), {}, 1 + std::ceil(more) / 100};
    return target(concentric, concentric + more);
}

}
Q_DECLARE_METATYPE(EccentricKit)
Q_DECLARE_METATYPE(EccentricTarget)

class TestEccentricLoad : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void targetsFromPercentages()
    {
        const auto ofMax = *eccentricTarget(kilograms(105), 70, 110, PercentBase::OneRepMax);
        VERIFY_NEAR(ofMax.concentric.si(), 73.5, 1e-12);
        VERIFY_NEAR(ofMax.eccentric->si(), 115.5, 1e-12);
        VERIFY_NEAR(idealHook(ofMax).si(), 21, 1e-12);
        const auto ofConcentric = *eccentricTarget(kilograms(105), 70, 140, PercentBase::ConcentricLoad);
        QVERIFY(!ofConcentric.eccentric);
        VERIFY_NEAR(idealHook(ofConcentric).si(), 14.7, 1e-12);
        VERIFY_NEAR(idealHook(target(80, 100)).si(), 10, 1e-15);
    }

    void targetRefusals()
    {
        const auto wrong = [](double max, double concentric, double eccentric, PercentBase base) { return eccentricTarget(kilograms(max), concentric, eccentric, base).error(); };
        QCOMPARE(wrong(0, 70, 110, PercentBase::OneRepMax), (Error{Refusal::OutOfRange, "base"}));
        QCOMPARE(wrong(100, 70, 110, PercentBase::SystemMax), (Error{Refusal::OutOfRange, "base"}));
        QCOMPARE(wrong(100, 0, 110, PercentBase::OneRepMax), (Error{Refusal::OutOfRange, "percent"}));
        QCOMPARE(wrong(100, 70, 301, PercentBase::OneRepMax), (Error{Refusal::OutOfRange, "percent"}));
        QCOMPARE(wrong(100, 70, 70, PercentBase::OneRepMax), (Error{Refusal::OutOfRange, "eccentric load"}));
        QCOMPARE(wrong(100, 70, 100, PercentBase::ConcentricLoad), (Error{Refusal::OutOfRange, "eccentric load"}));
        QCOMPARE(eccentricTarget(kilograms(100), kilograms(100)).error(), (Error{Refusal::OutOfRange, "eccentric load"}));
        QCOMPARE(eccentricTarget(kilograms(0), kilograms(100)).error(), (Error{Refusal::OutOfRange, "concentric load"}));
        QCOMPARE(eccentricTarget(kilograms(100), kilograms(notANumber)).error(), (Error{Refusal::OutOfRange, "eccentric load"}));
        QCOMPARE(eccentricTarget(kilograms(endless), kilograms(endless)).error(), (Error{Refusal::OutOfRange, "concentric load"}));
    }

    /// Of a bar as it comes to hang: 140 % of 72.5 kg, not of the 73.5 that were wanted.
    void ofTheConcentricLoadAsItHangs()
    {
        const auto answer = *eccentricLoad(stocks::kit(stocks::pairs({{20, 1}, {10, 2}, {5, 2}, {2.5, 2}, {1.25, 2}})), *eccentricTarget(kilograms(105), 70, 140, PercentBase::ConcentricLoad));
        VERIFY_NEAR(answer.best.concentric.value.si(), 72.5, 1e-12);
        VERIFY_NEAR((answer.best.eccentric.value - answer.best.eccentricMiss).si(), 101.5, 1e-9);
    }

    /// The bar alone would take the 10: two fives on it leave the 10 for the hook, which then comes out.
    void theBarIsLoadedSoThatTheHooksComeOut()
    {
        const auto answer = *eccentricLoad(stocks::kit(stocks::pairs({{10, 1}, {5, 2}})), target(45, 71.4));
        QCOMPARE(answer.best.concentricMiss, Mass{});
        VERIFY_NEAR(answer.best.eccentricMiss.si(), 0, 1e-12);
        QCOMPARE(masses(answer.best.bar.eachSide).size() + masses(answer.best.onEachHook).size(), 3u);
        QCOMPARE(answer.best.plateCount, 6);
        // the lighter hooks want the fives, so that the ten goes on the bar
        QVERIFY(answer.lighter && !answer.heavier);
        QCOMPARE(masses(answer.lighter->onEachHook), std::vector{5.0});
        QCOMPARE(masses(answer.lighter->bar.eachSide), std::vector{10.0});
    }

    void frameAloneMayBeTooHeavy()
    {
        const auto answer = *eccentricLoad(stocks::kit(stocks::pairs({{10, 2}})), target(45, 47));
        QVERIFY(answer.best.onEachHook.empty());
        VERIFY_NEAR(answer.best.eccentricMiss.si(), 4.4, 1e-12);
        QVERIFY(!answer.lighter);
        QCOMPARE(masses(answer.heavier->onEachHook), std::vector{10.0});
    }

    void aBarAsFarBelowAsAbove()
    {
        // 45 or 65 for 55; only beside 45 do the hooks come to 20 + 3.2 each
        const auto answer = *eccentricLoad(stocks::kit(stocks::pairs({{20, 1}, {10, 1}})), target(55, 91.4));
        VERIFY_NEAR(answer.best.concentric.value.si(), 45, 1e-12);
        VERIFY_NEAR(answer.best.eccentric.value.si(), 91.4, 1e-12);
    }

    void uncertaintyOfEach()
    {
        EccentricKit kit = stocks::kit(stocks::pairs({{20, 2}, {10, 2}}));
        kit.base.u = kilograms(0.3);
        kit.frame.u = kilograms(0.2);
        kit.platesUShare = 0.02;
        const auto best = eccentricLoad(kit, target(85, 131.4))->best;
        QCOMPARE(masses(best.bar.eachSide), (std::vector{20.0, 10.0}));
        QCOMPARE(masses(best.onEachHook), std::vector{20.0});
        VERIFY_NEAR(best.concentric.u.si(), std::hypot(0.3, 1.2), 1e-12);
        VERIFY_NEAR(best.eachHook.u.si(), std::hypot(0.2, 0.4), 1e-12);
        VERIFY_NEAR(best.eccentric.u.si(), std::hypot(0.3, 0.4, 2.0), 1e-12);
    }

    /// 131.4 kg give or take 1.96·0.02·100 are under a cap of 135.4, and not under one of 135.3.
    void capIsComparedAtTheUnfavourableEnd()
    {
        EccentricKit kit = stocks::kit(stocks::pairs({{20, 2}, {10, 2}}));
        kit.platesUShare = 0.02;
        kit.eccentricCap = kilograms(135.4);
        QCOMPARE(masses(eccentricLoad(kit, target(85, 131.4))->best.onEachHook), std::vector{20.0});
        QVERIFY(!eccentricLoad(kit, target(85, 131.4))->heavier);
        kit.eccentricCap = kilograms(135.3);
        QCOMPARE(masses(eccentricLoad(kit, target(85, 131.4))->best.onEachHook), std::vector{10.0});
        kit.eccentricCap = kilograms(80);
        QCOMPARE(eccentricLoad(kit, target(85, 131.4)).error(), (Error{Refusal::OutOfRange, "cap"}));
        kit.eccentricCap.reset();
        kit.hookRating = kilograms(20.5);
        QCOMPARE(masses(eccentricLoad(kit, target(85, 131.4))->best.onEachHook), std::vector{10.0});
        kit.hookRating = kilograms(-1);
        QCOMPARE(eccentricLoad(kit, target(85, 131.4)).error(), (Error{Refusal::OutOfRange, "hook rating"}));
    }

    /// 15 + 10 are too thick for the room, 15 + 5 + 5 are not, though they are one plate more; on the hook, and on the sleeve.
    void morePlatesWhereTheyAreThinner()
    {
        const auto thick = [](double kg, double m, int count) { return PlateStock{{kilograms(kg), metres(0.3), metres(m)}, count}; };
        EccentricKit kit = stocks::kit({thick(25, 0.06, 2), thick(20, 0.04, 2), thick(15, 0.02, 2), thick(10, 0.04, 2), thick(5, 0.015, 4)});
        const auto thin = std::vector{15.0, 5.0, 5.0};
        kit.hookRoom = metres(0.05);
        QCOMPARE(masses(eccentricLoad(kit, target(25, 81.4))->best.onEachHook), thin);
        kit.hookRoom.reset();
        kit.sleeve = metres(0.05);
        QCOMPARE(masses(eccentricLoad(kit, target(75, 81.4))->best.bar.eachSide), thin);
        kit.sleeve.reset();
        QCOMPARE(masses(eccentricLoad(kit, target(75, 81.4))->best.bar.eachSide), std::vector{25.0});
    }

    void refusals_data()
    {
        QTest::addColumn<EccentricKit>("kit");
        QTest::addColumn<QString>("what");
        const auto row = [](const char* name, const char* what, const auto& change) {
            EccentricKit kit = stocks::kit(stocks::pairs({{20, 2}, {10, 2}}));
            change(kit);
            QTest::newRow(name) << kit << what;
        };
        row("a bar below 0", "bar", [](auto& k) { k.base.value = kilograms(-1); });
        row("a bar that is no number", "bar", [](auto& k) { k.base.value = kilograms(notANumber); });
        row("a bar heavier than anything", "bar", [](auto& k) { k.base.value = kilograms(1e9); });
        row("a frame below 0", "hook frame", [](auto& k) { k.frame.value = kilograms(-1); });
        row("a frame whose u is no number", "hook frame", [](auto& k) { k.frame.u = kilograms(notANumber); });
        row("a share below 0", "uncertainty of the plates", [](auto& k) { k.platesUShare = -0.02; });
        row("a share that is endless", "uncertainty of the plates", [](auto& k) { k.platesUShare = endless; });
        row("a plate of no mass", "plate", [](auto& k) { k.stock[0].type.mass = {}; });
        row("a plate heavier than any", "plate", [](auto& k) { k.stock[0].type.mass = kilograms(1e6); });
        row("a plate thicker than any", "plate", [](auto& k) { k.stock[0].type.thickness = metres(1e12); });
        row("fewer than none", "count of plates", [](auto& k) { k.stock[1].count = -2; });
        row("a sleeve that is no number", "room for plates", [](auto& k) { k.sleeve = metres(notANumber); });
        row("room below 0 on a hook", "room for plates", [](auto& k) { k.hookRoom = metres(-0.01); });
    }
    void refusals()
    {
        QFETCH(EccentricKit, kit);
        QFETCH(QString, what);
        const auto answer = eccentricLoad(kit, target(85, 131.4));
        QVERIFY(!answer);
        QCOMPARE(answer.error(), (Error{Refusal::OutOfRange, what.toStdString()}));
    }

    void targetsMadeByHandAreLookedAt()
    {
        const EccentricKit kit = stocks::kit(stocks::pairs({{20, 2}}));
        QCOMPARE(eccentricLoad(kit, {kilograms(80), {}, {}}).error(), (Error{Refusal::NotThere, "eccentric load"}));
        QCOMPARE(eccentricLoad(kit, {kilograms(80), kilograms(100), 1.4}).error(), (Error{Refusal::NotThere, "eccentric load"}));
        QCOMPARE(eccentricLoad(kit, {kilograms(80), {}, notANumber}).error(), (Error{Refusal::OutOfRange, "eccentric load"}));
        QCOMPARE(eccentricLoad(kit, {kilograms(80), {}, 1e9}).error(), (Error{Refusal::OutOfRange, "eccentric load"}));
    }

    void moreThanCanBeWorkedThrough()
    {
        EccentricKit kit = stocks::kit({});
        for (int i = 0; i < 100; ++i)
            kit.stock.push_back({stocks::plate(1 + 0.2 * i + 1e-6 * i * i * i), 2});
        QCOMPARE(eccentricLoad(kit, target(85, 131.4)).error(), (Error{Refusal::TooMany, "plates"}));
        kit.stock = {{stocks::plate(20), 2'000'000'000}};
        QCOMPARE(eccentricLoad(kit, target(85, 131.4)).error(), (Error{Refusal::TooMany, "plates"}));
        kit.sleeve = kit.hookRoom = metres(0.3);
        QVERIFY(eccentricLoad(kit, target(85, 131.4)));
        kit.stock = {};
        QCOMPARE(eccentricLoad(kit, target(85, 131.4))->best.plateCount, 0);
    }

    /// Against a million loads of the bar, and all hooks beside those that come nearest.
    void fortyPlatesNoTwoAlike_data()
    {
        QTest::addColumn<unsigned>("seed");
        for (const unsigned seed : {1U, 2U, 3U})
            QTest::addRow("stock %u", seed) << seed;
    }
    void fortyPlatesNoTwoAlike()
    {
        QFETCH(unsigned, seed);
        const EccentricKit kit = stocks::kit(stocks::weighed(seed));
        std::vector<long long> grams;
        for (const PlateStock& s : kit.stock)
            grams.push_back(std::llround(s.type.mass.si() * 1000));
        QCOMPARE(grams.size(), 20u);
        const auto sumsWithin = [&](unsigned plates) {
            std::vector<std::pair<long long, unsigned>> sums{{0, 0}};
            for (unsigned i = 0; i < grams.size(); ++i)
                if (plates & 1U << i)
                    for (std::size_t n = sums.size(), k = 0; k < n; ++k)
                        sums.emplace_back(sums[k].first + grams[i], sums[k].second | 1U << i);
            return sums;
        };
        const unsigned all = (1U << grams.size()) - 1;
        long long leastBar = std::numeric_limits<long long>::max();
        const auto bars = sumsWithin(all);
        for (const auto& [side, plates] : bars)
            leastBar = std::min(leastBar, std::abs(25'000 + 2 * side - 101'700));
        std::tuple<long long, int> least{std::numeric_limits<long long>::max(), 0};
        for (const auto& [side, plates] : bars)
            if (std::abs(25'000 + 2 * side - 101'700) == leastBar)
                for (const auto& [hook, others] : sumsWithin(all & ~plates))
                    least = std::min(least, {std::abs(25'000 + 2 * side + 6'400 + 2 * hook - 143'300), 2 * std::popcount(plates | others)});
        const auto best = eccentricLoad(kit, target(101.7, 143.3))->best;
        QCOMPARE(std::llround(std::abs(best.concentricMiss.si()) * 1000), leastBar);
        QCOMPARE(std::llround(std::abs(best.eccentricMiss.si()) * 1000), std::get<0>(least));
        QCOMPARE(best.plateCount, std::get<1>(least));
    }

    void everyWayTriedFindsNoBetter()
    {
        QVERIFY(rc::check("and the answer is what it says", [] {
            const EccentricKit kit = anyKit();
            const EccentricTarget wanted = anyTarget();
            EveryWay all(kit, wanted);
            const auto answer = eccentricLoad(kit, wanted);
            // limits that leave nothing on the nearest bar are refused, also where another bar would pass
            if (!answer) {
                RC_ASSERT(answer.error().code == Refusal::OutOfRange && (kit.eccentricCap || kit.hookRating));
                RC_ASSERT(!all.best || std::get<0>(*all.best) > all.leastBarMiss);
                RC_TAG("refused");
                return;
            }
            const EccentricLoad& best = answer->best;
            RC_ASSERT(stocks::judged(kit, best) == *all.best);
            holds(kit, wanted, best);
            neighboursAreNext(kit, wanted, *answer, all);
        }));
    }

private:
    /// Plates that are there, within their room, and the numbers that they make.
    static void holds(const EccentricKit& kit, const EccentricTarget& wanted, const EccentricLoad& load)
    {
        auto left = kit.stock;
        for (const auto& plates : {load.bar.eachSide, load.onEachHook})
            for (const PlateType& p : plates) {
                const auto at = std::find_if(left.begin(), left.end(), [&](const PlateStock& s) { return s.type == p && s.count >= 2; });
                RC_ASSERT(at != left.end());
                at->count -= 2;
            }
        double side = 0, hook = 0;
        for (const double kg : masses(load.bar.eachSide))
            side += kg;
        for (const double kg : masses(load.onEachHook))
            hook += kg;
        RC_ASSERT(tests::near(load.bar.total.si(), kit.base.value.si() + 2 * side, 1e-9));
        RC_ASSERT(load.concentric.value == load.bar.total);
        RC_ASSERT(tests::near(load.eachHook.value.si(), kit.frame.value.si() + hook, 1e-9));
        RC_ASSERT(tests::near(load.eccentric.value.si(), load.bar.total.si() + 2 * load.eachHook.value.si(), 1e-9));
        RC_ASSERT(tests::near(load.concentricMiss.si(), (load.bar.total - wanted.concentric).si(), 1e-9));
        RC_ASSERT(load.plateCount == 2 * static_cast<int>(load.bar.eachSide.size() + load.onEachHook.size()));
        RC_ASSERT(!kit.sleeve || thickness(load.bar.eachSide) <= kit.sleeve->si() + 1e-9);
        RC_ASSERT(!kit.hookRoom || thickness(load.onEachHook) <= kit.hookRoom->si() + 1e-9);
        for (const auto& kg : {masses(load.bar.eachSide), masses(load.onEachHook)})
            RC_ASSERT(std::is_sorted(kg.rbegin(), kg.rend()));
    }

    static void neighboursAreNext(const EccentricKit& kit, const EccentricTarget& wanted, const EccentricAnswer& answer, const EveryWay& all)
    {
        const auto hookOf = [&](const EccentricLoad& load) { return stocks::small(load.eachHook.value - kit.frame.value); };
        const long long hook = hookOf(answer.best);
        std::optional<long long> below, above;
        for (const long long other : all.hooksOf.at(stocks::small(answer.best.bar.total))) {
            if (other < hook)
                below = std::max(below.value_or(other), other);
            if (other > hook)
                above = std::min(above.value_or(other), other);
        }
        for (const auto& [next, other] : {std::pair{below, answer.lighter}, {above, answer.heavier}}) {
            RC_ASSERT(next.has_value() == other.has_value());
            if (!other)
                continue;
            RC_ASSERT(hookOf(*other) == *next);
            RC_ASSERT(stocks::small(other->bar.total) == stocks::small(answer.best.bar.total));
            holds(kit, wanted, *other);
        }
    }
};

QTEST_APPLESS_MAIN(TestEccentricLoad)
#include "test_eccentricload.moc"
