// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/forcefile.h"
#include "core/legcheck/isometric.h"
#include "core/legcheck/jump.h"
#include "core/legcheck/jumprecord.h"
#include "tests/published/rows.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

using namespace steelyard;
using namespace steelyard::published;
using Numbers = Account::Numbers;

namespace {

constexpr Acceleration roundGravity = Acceleration::fromSi(9.81);

ForceRecord recordOf(const char* file, double rate)
{
    ForceRecord record{hertz(rate), {}};
    for (const double force : lastNumbersOf(QStringLiteral("data/") + file))
        record.force.push_back(newtons(force));
    return record;
}

double heightOf(double seconds, Acceleration gravity) { return heightByFlight(exactly(Seconds{seconds}), gravity)->number(); }

/// 1 s of standing, a push-off of half a sine, and nothing after it.
ForceRecord halfSine(double mass, double amplitude, int samplesOfPush, double push)
{
    const double rate = samplesOfPush / push, weight = mass * roundGravity.si();
    ForceRecord record{hertz(rate), std::vector<Force>(static_cast<std::size_t>(std::round(rate)), newtons(weight))};
    for (int i = 0; i <= samplesOfPush; ++i)
        record.force.push_back(newtons(weight + amplitude * std::sin(std::numbers::pi * i / samplesOfPush)));
    record.force.insert(record.force.end(), static_cast<std::size_t>(rate / 2), Force{});
    return record;
}

}

class TestPublishedJumps : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedJumps()
    {
        m_account.computes({"VJ01", "VJ02", "VJ03"}, [](const Row& r) { return Numbers{heightOf(given(r, "t"), roundGravity), heightOf(given(r, "t"), standardGravity)}; });
        m_account.computes({"VJ21"}, [](const Row& r) {
            const auto n = allNumbersIn(r.inputs);
            return Numbers{reactiveStrength(exactly(metres(n[0])), exactly(Seconds{n[1]}))->number(), reactiveStrength(exactly(metres(n[2])), exactly(Seconds{n[3]}))->number()};
        });
        m_account.computes({"IM05"}, [](const Row&) {
            const IsometricTry pull = *isometricTry(recordOf("synthetic_imtp_1000Hz.csv", 1000));
            Numbers net;
            for (const auto& at : pull.at)
                net += (at->gross - pull.weighing.mean).si();
            return net;
        });
        m_account.computes({"IM09"}, [](const Row& r) {
            const IsometricTry pull = *isometricTry(recordOf("synthetic_imtp_1000Hz.csv", 1000));
            const Mass body = pull.weighing.mean / Acceleration::fromSi(given(r, "g"));
            return Numbers{pull.grossPeak.si() / body.si(), pull.netPeak.si() / body.si()};
        });
        m_account.standsAside({"VJ04"}, "written to fewer digits than its tolerance: compared to half of its last one");
        m_account.standsAside({"VJ05", "VJ06", "VJ07", "VJ10"}, "its numbers are named, or its tolerance is in their unit: compared in functions of their own");
        m_account.standsAside({"VJ11", "VJ12", "VJ13", "VJ14", "VJ15"}, "by steps that are not the engine's");
        m_account.standsAside({"VJ16", "VJ17", "VJ18", "VJ19", "VJ20", "VJ22", "VJ23"}, "about groups, or a rule");
        m_account.standsAside({"IM01", "IM02", "IM03", "IM04", "IM10"}, "about groups, or a rule");
    }

private Q_SLOTS:
    /// Duarte, Biomechanical analysis of vertical jumps (data of the same, CC BY 4.0, Zenodo 10.5281/zenodo.4599319), by the recipe printed
    /// there: weight of the first 60 samples, then less the minimum; below 10 N first and last, below 95 % of weight first.
    void publishedRecipeOnARealJump()
    {
        auto force = lastNumbersOf("data/bmc_GRFZjump.txt");
        QCOMPARE(force.size(), 1200u);
        const double weight = std::accumulate(force.begin(), force.begin() + 60, 0.0) / 60, least = *std::min_element(force.begin(), force.end());
        for (double& f : force)
            f -= least;
        const auto takeoff = std::find_if(force.begin(), force.end(), [](double f) { return f < 10; }) - force.begin();
        const auto landing = force.rend() - std::find_if(force.rbegin(), force.rend(), [](double f) { return f < 10; }) - 1;
        const auto start = std::find_if(force.begin(), force.end(), [weight](double f) { return f < 0.95 * weight; }) - force.begin();
        const Row& row = rowNamed("VJ10");
        const auto expected = numbersIn(row.expected);
        const double height = heightOf(static_cast<double>(landing - takeoff) / 600, Acceleration::fromSi(9.8));
        QCOMPARE(expected.size(), 4);
        const std::array actual{static_cast<double>(takeoff) / 600, static_cast<double>(landing) / 600, height, static_cast<double>(start) / 600};
        for (int i = 0; i < 4; ++i)
            QVERIFY2(std::abs(actual[static_cast<std::size_t>(i)] - expected[i]) <= 5e-4, qPrintable(QStringLiteral("%1 for %2 [%3]").arg(actual[static_cast<std::size_t>(i)]).arg(expected[i]).arg(row.source)));
    }

    /// The same jump by the engine's steps. It was recorded with less than a second of standing before it, so it is weighed shortly or not at all.
    void engineOnTheSameJump()
    {
        const ForceRecord record = recordOf("bmc_GRFZjump.txt", 600);
        const auto refused = forceJump(record);
        QVERIFY(!refused);
        QCOMPARE(refused.error(), (Error{Refusal::TooFewPoints, "weighing"}));
        const ForceJump jump = *forceJump(record, ShortWeighing::Allowed);
        QVERIFY(jump.weighing.isShort);
        QCOMPARE(jump.takeoffIndex, 543u);
        QCOMPARE(*jump.landingIndex, 798u);
        QCOMPARE(jump.onsetIndex, 91u);
        QVERIFY(std::abs(jump.flightHeight->number() - 0.2214) < 5e-5);
        // a weight that is 1 % off moves the height by 2.4 cm, so that the two heights lie apart
        QVERIFY(jump.impulseHeight->number() - jump.flightHeight->number() > 0.02);
    }

    /// The open records as they are published: one says times and units, the other neither.
    void filesAsTheyArePublished()
    {
        const auto whole = readForceFile(textOf("data/bmc_jump1.txt"));
        QVERIFY(whole.ok());
        QVERIFY(std::abs(whole->rate.si() - 450) < 1e-6);
        QCOMPARE(whole->plates[0], recordOf("bmc_jump1.txt", 450).force);
        const std::string bare = textOf("data/bmc_GRFZjump.txt");
        QCOMPARE(readForceFile(bare).error(), (Error{Refusal::UnknownUnit, "unit of force"}));
        QCOMPARE(readForceFile(bare, {hertz(600), ForceUnit::Newton})->plates[0], recordOf("bmc_GRFZjump.txt", 600).force);
    }

    /// Half a sine over its weight has a trapezoid of closed form, A(T/N)cot(π/2N), at every rate.
    void trapezoidOfClosedForm()
    {
        const auto rates = allNumbersIn(rowNamed("VJ07").inputs.section('(', 0, 0)), expected = allNumbersIn(rowNamed("VJ07").expected);
        QCOMPARE(rates.size(), 4);
        QCOMPARE(expected.size(), 4);
        for (int i = 0; i < 4; ++i) {
            const ForceJump jump = *forceJump(halfSine(80, 1000, static_cast<int>(rates[i]), 0.3), ShortWeighing::No, roundGravity);
            QVERIFY2(std::abs(jump.takeoffSpeed.number() - expected[i]) <= 1e-8, qPrintable(QString::number(jump.takeoffSpeed.number(), 'g', 12)));
            QVERIFY(std::abs(jump.body.number() - 80) < 1e-12);
        }
        // the integral itself, printed to six places
        const auto exact = allNumbersIn(rowNamed("VJ06").expected);
        const ForceJump file = *forceJump(recordOf("synthetic_halfsine_1000Hz.csv", 1000), ShortWeighing::No, roundGravity);
        QVERIFY(std::abs(file.takeoffSpeed.number() - exact[1]) < 3e-5);
        QVERIFY(!file.landing && !file.flightHeight);
    }

    void heightOfATakeoffSpeed()
    {
        const Row& row = rowNamed("VJ04");
        const double height = heightByTakeoff(exactly(Speed::fromSi(given(row, "v"))), Acceleration::fromSi(given(row, "g")))->number();
        QVERIFY2(std::abs(height - numbersIn(row.expected)[0]) <= 5e-7, qPrintable(row.source));
    }

    /// 2000 N for 0.2 s on 80 kg.
    void constantPush()
    {
        const Row& row = rowNamed("VJ05");
        const auto expected = allNumbersIn(row.expected);
        ForceRecord record{hertz(1000), std::vector<Force>(1001, newtons(given(row, "m") * roundGravity.si()))};
        record.force.insert(record.force.end(), 200, newtons(given(row, "F")));
        record.force.insert(record.force.end(), 400, Force{});
        const ForceJump jump = *forceJump(record, ShortWeighing::No, roundGravity);
        // edges of one sample: the trapezoid from standing to pushing has half a sample more, the last one half less than none after it
        const double speed = expected[0] * (0.2 - 0.0005) / 0.2;
        QVERIFY2(std::abs(jump.takeoffSpeed.number() - speed) < 1e-6 * speed, qPrintable(QString::number(jump.takeoffSpeed.number(), 'g', 9)));
    }

private:
    [[nodiscard]] const Row& rowNamed(const char* id) const
    {
        return *std::find_if(m_account.rows().begin(), m_account.rows().end(), [id](const Row& r) { return r.id == QLatin1String(id); });
    }

    Account m_account{"data/legcheck.csv", {"4 jump", "5 isometric"}};
};

QTEST_APPLESS_MAIN(TestPublishedJumps)
#include "test_jumps.moc"
