// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/booking/sessionload.h"
#include "core/implements/keg.h"
#include "core/implements/sled.h"
#include "core/implements/sledline.h"
#include "core/implements/solids.h"
#include "core/implements/tyre.h"
#include "core/implements/weighing.h"
#include "tests/published/recorded.h"

using namespace steelyard;
using namespace steelyard::published;

namespace {

Estimate<Mass> kg(double mass, double u = 0) { return within(kilograms(mass), kilograms(u)); }
Estimate<Length> m(double length, double u = 0) { return within(metres(length), metres(u)); }
const Estimate<Angle> strap = within(Angle{15 * oneDegree.radians}, Angle{0.02});

/// What the engine says, by thing and quantity; "u " before it for the uncertainty.
class Said {
public:
    Said()
    {
        tyres();
        longThings();
        kegs();
        sleds();
        lines();
        weeks();
    }

    [[nodiscard]] const QMap<QString, double>& all() const { return m_said; }

private:
    void say(const QString& thing, const QString& quantity, double value, double u)
    {
        m_said[thing + '/' + quantity] = value;
        m_said[thing + QStringLiteral("/u ") + quantity] = u;
    }
    template <typename Q>
    void say(const QString& thing, const QString& quantity, const Estimate<Q>& estimate)
    {
        say(thing, quantity, estimate.number(), estimate.uncertainty.standard());
    }

    void tyres()
    {
        say("tyre", "mass", *tyreMassFromEdge({*readingOf({kilograms(0.5), 0.01}, kilograms(62)), m(0.70, 0.01), m(0.55, 0.01)}));
        const TyreFlip flip = *TyreFlip::of({kg(141, 3), m(1.40, 0.01), m(0.38, 0.01)});
        for (const int degrees : {0, 20, 45, 65})
            say("tyre", QStringLiteral("vertical %1").arg(degrees), flip.at(Angle{degrees * oneDegree.radians})->vertical);
        say("tyre", "work", flip.workToBalance());
    }

    void longThings()
    {
        say("log", "mass", *logMass({m(2.2, 0.01), m(0.34, 0.006), m(0.27, 0.006)}, {gravityOfSpecies(0.46), within(18.0, 4.0)}));
        const Scale hanging{kilograms(0.5), 0.01, {}, SourceId{1}};
        say("ends", "mass", *massByEnds({*readingOf(hanging, kilograms(38)), m(0.10, 0.01)}, {*readingOf(hanging, kilograms(29.5)), m(0.15, 0.01)}, m(2.2, 0.02)));
    }

    void kegs()
    {
        const LyingVessel keg{m(0.19, 0.002), m(0.5, 0.005), m(0.14, 0.005)};
        const auto content = *contentLying(keg);
        say("keg", "content", content);
        say("keg", "mass", *filledMass(kg(12.5, 0.05), content, exactly(Density::fromSi(998.2))));
        say("keg", "share", *fillShareLying(keg.radius, keg.depth));
    }

    void sleds()
    {
        for (const auto& [name, way] : {std::pair{"tow", SledWay::Tow}, {"push", SledWay::Push}})
            say("sled", QLatin1String(name), *sledPull(kg(100, 0.5), {within(0.45, 0.02), strap, way}));
        const Scale hanging{kilograms(0.2), 0.02, {}, SourceId{1}};
        std::vector<TowReading> readings;
        for (const auto& [mass, shown] : {std::pair{35.0, 14.9}, {55.0, 22.8}, {75.0, 31.6}, {95.0, 38.9}})
            readings.push_back({kg(mass), pullOf(*readingOf(hanging, kilograms(shown)))});
        const auto friction = frictionFromPulls(readings, strap)->friction;
        say("friction", "value", friction);
    }

    void lines()
    {
        const auto lineOf = [](Seconds uTime) {
            std::vector<SledRun> runs;
            for (const auto& [mass, time] : {std::pair{25.0, 3.05}, {45.0, 3.52}, {65.0, 4.11}, {85.0, 4.93}})
                runs.push_back(*timedRun(kg(mass), m(20), within(Seconds{time}, uTime)));
            return *LoadSpeedLine::of(runs);
        };
        for (const double loss : {0.1, 0.5})
            say("line", QStringLiteral("load %1").arg(loss), *lineOf(Seconds{0}).loadFor(loss));
        m_said["line/u load 0.5 with the watch"] = lineOf(stopwatchU).loadFor(0.5)->u().si();
    }

    void weeks()
    {
        const std::vector<std::optional<Score>> days{Score{300, 17.3}, Score{450, 21.7}, Score{0, 0}, Score{600, 26}, Score{360, 17.3}, Score{0, 0}, Score{690, 26}};
        const WeekLoad week = *weekLoad(days);
        say("week", "monotony", week.monotony->score, week.monotony->uScore);
        say("week", "strain", week.strain->score, week.strain->uScore);
    }

    QMap<QString, double> m_said;
};

}

/// Implements and bookings against numbers that a script worked out by SciPy, and against uncertainties that it drew at random.
class TestSecondImplements : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agrees_data()
    {
        QVERIFY(recordedLines("implements.csv").size() > 30);
        addRecordedColumns();
        addRecordedRows("implements.csv");
    }
    void agrees()
    {
        static const Said engine;
        const QString wrong = recordedVerdict(engine.all());
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
    }
};

QTEST_APPLESS_MAIN(TestSecondImplements)
#include "test_secondimplements.moc"
