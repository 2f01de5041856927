// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/booking/counts.h"
#include "core/booking/volume.h"
#include "core/implements/keg.h"
#include "core/implements/sled.h"
#include "core/implements/sledline.h"
#include "tests/published/rows.h"

#include <QJsonArray>
#include <QJsonObject>

using namespace steelyard;
using namespace steelyard::published;

namespace {

Estimate<Mass> kg(const QJsonValue& mass) { return exactly(kilograms(mass.toDouble())); }

std::vector<CarryLap> lapsOf(const QJsonValue& distances, const QJsonValue& times = {})
{
    std::vector<CarryLap> laps;
    for (const QJsonValue& distance : distances.toArray())
        laps.push_back({exactly(metres(distance.toDouble())), std::nullopt, 0});
    for (std::size_t i = 0; i < laps.size() && times.isArray(); ++i)
        laps[i].time = exactly(Seconds{times.toArray().at(static_cast<int>(i)).toDouble()});
    return laps;
}

}

/// Worked examples of implements through the engine, at the tolerance they state.
class TestImplementExamples : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void kegPartFullLyingOnItsSide()
    {
        read("WE07");
        const auto size = [this](const QString& name) {
            return within(metres(m_inputs[name + "_m"].toDouble()), metres(m_inputs["u_" + name + "_m"].toDouble()));
        };
        const LyingVessel keg{size("radius"), size("length"), size("depth")};
        const auto content = *contentLying(keg);
        const auto tare = within(kilograms(m_inputs["tare_kg"].toDouble()), kilograms(m_inputs["u_tare_kg"].toDouble()));
        const auto mass = *filledMass(tare, content, exactly(Density::fromSi(m_inputs["density_kg_m3"].toDouble())));
        const double full = contentLying({keg.radius, keg.length, times(keg.radius, 2)})->value / litre;
        compare(content.value / litre, "volume_l");
        compare(full, "full_l");
        compare(fillShareLying(keg.radius, keg.depth)->value, "fill");
        compare(mass.number(), "mass_kg");
        compare(mass.u().si(), "u_kg", 1e-2);
    }

    void carriesByHandWithADrop()
    {
        read("WE08");
        const QJsonObject suitcase = m_inputs["suitcase"].toObject(), farmers = m_inputs["farmers"].toObject();
        const auto load = kg(suitcase["kg"]), handle = sumOf(kg(farmers["handle_kg_each"]), kg(farmers["plates_kg_each"]));
        Carry left{CarryKind::OneHand, {load, {}, {}}, lapsOf(suitcase["left_laps_m"]), suitcase["left_left_out"].toInt()};
        left.laps.back().drops = suitcase["left_drops"].toInt();
        const std::vector carries{*carryDone({CarryKind::OneHand, {{}, load, {}}, lapsOf(suitcase["right_laps_m"]), 0}), *carryDone(left),
                                  *carryDone({CarryKind::Farmers, {handle, handle, {}}, lapsOf(farmers["runs_m"], farmers["times_s"]), 0})};
        const auto body = kg(m_inputs["body_kg"]);
        compare(carries[0].right.number(), "right_hand_kgm");
        compare(carries[1].left.number(), "left_hand_kgm");
        compare(carries[2].all.number(), "farmers_kgm");
        compare(carriedIn(carries).all.number(), "total_kgm");
        compare(percentOf(carries[0].load, body)->value, "suitcase_pct_body");
        compare(percentOf(carries[2].load, body)->value, "farmers_pct_body");
        compare(carries[2].speed->value.si(), "farmers_speed_m_s");
        QCOMPARE(carries[1].drops, m_expected["drops"].toObject()["left"].toInt());
        QCOMPARE(carries[0].drops, m_expected["drops"].toObject()["right"].toInt());
        QCOMPARE(carries[1].lapsLeftOut, 1);
    }

    void sledFromTurfToAWetPitch()
    {
        read("WE12");
        std::vector<SledRun> runs;
        for (const QJsonValue& run : m_inputs["runs"].toArray())
            runs.push_back({kg(run.toArray().at(0)), exactly(Speed::fromSi(run.toArray().at(1).toDouble()))});
        const LoadSpeedLine line = *LoadSpeedLine::of(runs);
        const auto total = *line.loadFor(m_inputs["speed_loss"].toDouble());
        const double sled = m_inputs["sled_kg"].toDouble();
        compare(line.freeSpeed().number(), "v0_m_s");
        compare(line.loadFor(1)->number(), "lmax_kg");
        compare(total.number(), "total_home_kg");
        compare(total.number() - sled, "plates_home_kg");
        compare(total.u().si(), "u_total_kg");
        compare(total.degreesOfFreedom(), "dof", 1e-9);
        compare(total.giveOrTake().si() / total.u().si(), "k95");
        const auto on = [this](const char* friction) {
            return Haul{exactly(m_inputs[QLatin1String(friction)].toDouble()), exactly(Angle{m_inputs["tow_angle_deg"].toDouble() * oneDegree.radians})};
        };
        const auto away = *sameElsewhere(total, on("mu_home"), on("mu_away"));
        compare(sledPull(total, on("mu_home"))->number(), "pull_n");
        compare(away.number(), "total_away_kg");
        compare(away.number() - sled, "plates_away_kg");
        // carried as kilograms it would pull little more than half as hard
        QVERIFY(sledPull(total, on("mu_away"))->value < 0.6 * sledPull(total, on("mu_home"))->value);
    }

private:
    void read(const QString& id)
    {
        const QJsonObject example = workedExample(id);
        m_inputs = example["inputs"].toObject();
        m_expected = example["expected"].toObject();
        QVERIFY(!m_inputs.isEmpty() && !m_expected.isEmpty());
    }
    void compare(double actual, const char* key, double share = 5e-4)
    {
        const QJsonValue expected = m_expected[QLatin1String(key)];
        QVERIFY2(expected.isDouble(), key);
        const double e = expected.toDouble();
        QVERIFY2(std::abs(actual - e) <= share * std::abs(e), qPrintable(QStringLiteral("%1: %2 for %3").arg(QLatin1String(key)).arg(actual, 0, 'g', 12).arg(e)));
    }

    QJsonObject m_inputs, m_expected;
};

QTEST_APPLESS_MAIN(TestImplementExamples)
#include "test_implementexamples.moc"
