// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/hanging/plates.h"
#include "tests/core/near.h"

#include <algorithm>
#include <map>
#include <rapidcheck.h>

using namespace steelyard;
using Stock = std::vector<PlateStock>;

namespace {

PlateType plate(double kg, double diameter = 0.45, double thickness = 0.03)
{
    return {kilograms(kg), metres(diameter), metres(thickness)};
}

Stock stockOf(std::initializer_list<std::pair<double, int>> plates)
{
    Stock stock;
    for (const auto& [kg, count] : plates)
        stock.push_back({plate(kg), count});
    return stock;
}

std::vector<double> masses(const std::vector<PlateType>& plates)
{
    std::vector<double> kg;
    for (const PlateType& p : plates)
        kg.push_back(p.mass.si());
    return kg;
}

/// Every load by trying every number of pairs: total in grams to the fewest plates that make it.
std::map<long long, std::size_t> everyLoad(const Stock& stock, Mass base, std::optional<Length> sleeve)
{
    std::map<long long, std::size_t> loads;
    const std::function<void(std::size_t, double, double, std::size_t)> hang = [&](std::size_t type, double side, double thick, std::size_t plates) {
        if (sleeve && thick > sleeve->si() + 1e-12)
            return;
        if (type == stock.size()) {
            const auto [at, isNew] = loads.try_emplace(std::llround((base.si() + 2 * side) * 1e3), plates);
            at->second = isNew ? plates : std::min(at->second, plates);
            return;
        }
        for (int pairs = 0; pairs <= stock[type].count / 2; ++pairs)
            hang(type + 1, side + pairs * stock[type].type.mass.si(), thick + pairs * stock[type].type.thickness.si(), plates + static_cast<std::size_t>(pairs));
    };
    hang(0, 0, 0, 0);
    return loads;
}

Stock anyStock()
{
    Stock stock;
    for (const double kg : {25.0, 20.0, 15.0, 10.0, 10.0, 5.0, 2.5, 1.25, 0.5})
        if (*rc::gen::arbitrary<bool>())
            stock.push_back({plate(kg, 0.2 + kg / 100, 0.01 + kg / 1000), *rc::gen::inRange(0, 6)});
    return stock;
}

}
Q_DECLARE_METATYPE(Stock)

class TestPlates : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nearestLoad_data()
    {
        QTest::addColumn<Stock>("stock");
        QTest::addColumn<double>("target");
        QTest::addColumn<double>("total");
        QTest::addColumn<QVector<double>>("side");
        const auto gym = stockOf({{25, 4}, {20, 2}, {15, 2}, {10, 2}, {5, 2}, {2.5, 2}, {1.25, 2}});
        QTest::newRow("just made") << gym << 110.0 << 110.0 << QVector{25.0, 20.0};
        QTest::newRow("with fewest plates") << gym << 75.0 << 75.0 << QVector{25.0, 2.5};
        QTest::newRow("nearest above") << gym << 76.9 << 77.5 << QVector{25.0, 2.5, 1.25};
        QTest::newRow("a tie goes down") << gym << 76.25 << 75.0 << QVector{25.0, 2.5};
        QTest::newRow("below the bar") << gym << 3.0 << 20.0 << QVector<double>{};
        QTest::newRow("more than there is") << gym << 900.0 << 227.5 << QVector{25.0, 25.0, 20.0, 15.0, 10.0, 5.0, 2.5, 1.25};
        QTest::newRow("single plates are no pair") << stockOf({{25, 1}, {20, 3}}) << 110.0 << 60.0 << QVector{20.0};
        QTest::newRow("no plates at all") << Stock{} << 60.0 << 20.0 << QVector<double>{};
        QTest::newRow("counted, but none there") << stockOf({{25, 0}}) << 70.0 << 20.0 << QVector<double>{};
    }
    void nearestLoad()
    {
        QFETCH(Stock, stock);
        QFETCH(double, target);
        QFETCH(double, total);
        QFETCH(QVector<double>, side);
        const auto loads = *PlateLoads::of(stock, kilograms(20));
        const PlateLoad& nearest = loads.nearest(kilograms(target));
        VERIFY_NEAR(nearest.total.si(), total, 1e-12);
        QCOMPARE(masses(nearest.eachSide), std::vector<double>(side.begin(), side.end()));
        VERIFY_NEAR(nearest.plates().si(), total - 20, 1e-12);
    }

    /// Pounds beside kilograms: 45 lb is 20.41165665 kg, and neither stands in for the other.
    void poundsAndKilogramsOnOneBar()
    {
        const Stock stock{{{pounds(45), metres(0.45), metres(0.05)}, 4}, {plate(20), 2}, {{pounds(2.5), metres(0.2), metres(0.01)}, 2}};
        const auto loads = *PlateLoads::of(stock, pounds(45));
        QCOMPARE(loads.all().size(), 3u * 2 * 2);
        const PlateLoad& near = loads.nearest(pounds(135));
        VERIFY_NEAR(inPounds(near.total), 135, 1e-12);
        QCOMPARE(near.eachSide, std::vector{stock[0].type});
        VERIFY_NEAR(inKilograms(loads.nextBelow(near.total)->total), inKilograms(pounds(45)) + 40, 1e-12);
    }

    void neighbours()
    {
        const auto loads = *PlateLoads::of(stockOf({{20, 2}, {2.5, 2}}), kilograms(20));
        QCOMPARE(loads.all().size(), 4u);
        QVERIFY(!loads.nextBelow(kilograms(20)) && !loads.nextAbove(kilograms(65)));
        QCOMPARE(loads.nextBelow(kilograms(60))->total, kilograms(25));
        QCOMPARE(loads.nextAbove(kilograms(60))->total, kilograms(65));
        QCOMPARE(loads.nextAbove(kilograms(30))->total, kilograms(60));
        QCOMPARE(loads.atOrBelow(kilograms(60))->total, kilograms(60));
        QCOMPARE(loads.atOrAbove(kilograms(60))->total, kilograms(60));
        QCOMPARE(loads.atOrBelow(kilograms(59.9))->total, kilograms(25));
        QCOMPARE(loads.atOrAbove(kilograms(60.1))->total, kilograms(65));
        QVERIFY(!loads.atOrBelow(kilograms(19)) && !loads.atOrAbove(kilograms(70)));
    }

    void tallerPlatesFirstWhenAsMany()
    {
        const Stock stock{{plate(10, 0.23), 2}, {plate(10, 0.45), 2}};
        const auto loads = *PlateLoads::of(stock, kilograms(20));
        QCOMPARE(loads.nearest(kilograms(40)).largestDiameter(), metres(0.45));
        QCOMPARE(loads.nearest(kilograms(60)).eachSide.front().diameter, metres(0.45));
        QCOMPARE(loads.all().front().largestDiameter(), Length{});
    }

    void theSleeveLeavesOutWhatDoesNotFit()
    {
        const auto loads = *PlateLoads::of(stockOf({{20, 10}}), kilograms(20), metres(0.1));
        QCOMPARE(loads.all().size(), 4u);
        VERIFY_NEAR(loads.all().back().thickness().si(), 0.09, 1e-15);
    }

    /// Two thick plates fill the sleeve; four thin ones of the same mass leave room for more.
    void thinnerPlatesGoFurtherOnAShortSleeve()
    {
        const Stock stock{{plate(20, 0.45, 0.1), 2}, {plate(10, 0.23, 0.02), 4}, {plate(5, 0.2, 0.05), 2}};
        const auto loads = *PlateLoads::of(stock, kilograms(20), metres(0.1));
        QCOMPARE(masses(loads.nearest(kilograms(60)).eachSide), std::vector{20.0});
        QCOMPARE(masses(loads.nearest(kilograms(70)).eachSide), (std::vector{10.0, 10.0, 5.0}));
        QCOMPARE(loads.all().back().total, kilograms(70));
    }

    void refusals_data()
    {
        QTest::addColumn<Stock>("stock");
        QTest::addColumn<double>("base");
        QTest::addColumn<QString>("what");
        const double notANumber = std::numeric_limits<double>::quiet_NaN();
        QTest::newRow("a plate of no mass") << stockOf({{0, 2}}) << 20.0 << "plate";
        QTest::newRow("a plate not a number") << stockOf({{notANumber, 2}}) << 20.0 << "plate";
        QTest::newRow("fewer than none") << stockOf({{20, -1}}) << 20.0 << "count of plates";
        QTest::newRow("a bar below 0") << stockOf({{20, 2}}) << -1.0 << "bar";
        QTest::newRow("a bar not a number") << stockOf({{20, 2}}) << notANumber << "bar";
        QTest::newRow("two thousand million of one plate") << stockOf({{20, 2'000'000'000}}) << 20.0 << "plates";
        QTest::newRow("five hundred of each of many") << stockOf({{20.001, 500}, {19.37, 500}, {7.123, 500}, {1.017, 500}}) << 20.0 << "plates";
    }
    void refusals()
    {
        QFETCH(Stock, stock);
        QFETCH(double, base);
        QFETCH(QString, what);
        const auto loads = PlateLoads::of(stock, kilograms(base));
        QVERIFY(!loads);
        QCOMPARE(loads.error().what, what.toStdString());
        QCOMPARE(loads.error().code, what == "plates" ? Refusal::TooMany : Refusal::OutOfRange);
    }

    void everyLoadIsThereWithItsFewestPlates()
    {
        QVERIFY(rc::check("against trying every number of pairs", [] {
            const Stock stock = anyStock();
            const auto sleeve = *rc::gen::arbitrary<bool>() ? std::optional(metres(*rc::gen::inRange(20, 120) * 1e-3 + 1e-6)) : std::nullopt;
            const auto wanted = everyLoad(stock, kilograms(20), sleeve);
            const auto loads = *PlateLoads::of(stock, kilograms(20), sleeve);
            RC_ASSERT(loads.all().size() == wanted.size());
            Mass before = kilograms(-1);
            for (const PlateLoad& load : loads.all()) {
                const auto at = wanted.find(std::llround(load.total.si() * 1e3));
                RC_ASSERT(at != wanted.end());
                RC_ASSERT(load.eachSide.size() == at->second);
                RC_ASSERT(load.total > before);
                RC_ASSERT(std::is_sorted(load.eachSide.begin(), load.eachSide.end(), [](const auto& a, const auto& b) { return a.mass > b.mass; }));
                RC_ASSERT((!sleeve || load.thickness() <= *sleeve));
                before = load.total;
            }
        }));
    }

    void nearestBeatsAll()
    {
        QVERIFY(rc::check("and below ≤ target ≤ above, with no load between", [] {
            const auto loads = *PlateLoads::of(anyStock(), kilograms(20));
            const Mass target = kilograms(*rc::gen::inRange(0, 400'000) * 1e-3);
            const PlateLoad& nearest = loads.nearest(target);
            const PlateLoad *below = loads.atOrBelow(target), *above = loads.atOrAbove(target);
            RC_ASSERT((below || above));
            for (const PlateLoad& load : loads.all()) {
                const double miss = std::abs((load.total - target).si()), best = std::abs((nearest.total - target).si());
                RC_ASSERT(best <= miss + 1e-6);
                RC_ASSERT((miss > best + 1e-6 || load.total >= nearest.total));
                RC_ASSERT((load.total <= target + kilograms(1e-6) ? below && load.total <= below->total : above && load.total >= above->total));
            }
            if (const PlateLoad* up = loads.nextAbove(nearest.total))
                RC_ASSERT(loads.nextBelow(up->total)->total == nearest.total);
        }));
    }

    void changeGetsFromOneToTheOther()
    {
        QVERIFY(rc::check("taking off and putting on what it says, and nothing that stays", [] {
            const auto loads = *PlateLoads::of(anyStock(), kilograms(20));
            const auto pick = [&] { return loads.all()[*rc::gen::inRange<std::size_t>(0, loads.all().size())]; };
            const PlateLoad from = pick(), to = pick();
            const PlateChange change = changeBetween(from, to);
            auto hung = from.eachSide;
            for (const PlateType& p : change.takeOff) {
                const auto at = std::find(hung.begin(), hung.end(), p);
                RC_ASSERT(at != hung.end());
                hung.erase(at);
                RC_ASSERT(std::find(change.putOn.begin(), change.putOn.end(), p) == change.putOn.end());
            }
            hung.insert(hung.end(), change.putOn.begin(), change.putOn.end());
            RC_ASSERT(std::is_permutation(hung.begin(), hung.end(), to.eachSide.begin(), to.eachSide.end()));
            RC_ASSERT(change.nothing() == (from.total == to.total));
        }));
    }
};

QTEST_APPLESS_MAIN(TestPlates)
#include "test_plates.moc"
