// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/agreement.h"
#include "core/legcheck/bilateral.h"
#include "core/legcheck/isometric.h"
#include "core/legcheck/jumprecord.h"
#include "core/legcheck/reliability.h"
#include "core/legcheck/sides.h"
#include "core/measure/distributions.h"
#include "tests/published/recorded.h"

#include <cmath>

using namespace steelyard;
using namespace steelyard::published;

namespace {

Estimate<double> scored(double score, double cv) { return within(score, score * cv); }
Estimate<Mass> kg(double mass, double u) { return within(kilograms(mass), kilograms(u)); }

ForceRecord recordOf(const char* file, double rate)
{
    ForceRecord record{hertz(rate), {}};
    for (const double force : lastNumbersOf(QStringLiteral("data/") + file))
        record.force.push_back(newtons(force));
    return record;
}

QMap<QString, std::vector<SubjectScores>> repeatedDays()
{
    QMap<QString, std::vector<SubjectScores>> sets;
    for (const QStringList& line : recordedLines("repeated_days.csv")) {
        auto& scores = sets[line[0]];
        scores.resize(std::max(scores.size(), line[1].toULong()));
        scores[line[1].toULong() - 1].push_back(line[3].toDouble());
    }
    return sets;
}

/// What the engine says, by thing and quantity.
class Said {
public:
    Said()
    {
        reliability();
        distributions();
        indices();
        sides();
        records();
    }

    [[nodiscard]] const QMap<QString, double>& all() const { return m_said; }

private:
    void say(const QString& thing, const QString& quantity, double value) { m_said[thing + '/' + quantity] = value; }
    void say(const QString& thing, const QString& quantity, const std::optional<WithInterval>& value)
    {
        say(thing, quantity, value->score);
        say(thing, quantity + QStringLiteral(" low"), *value->lowScore);
        say(thing, quantity + QStringLiteral(" high"), *value->highScore);
    }

    void reliability()
    {
        const auto sets = repeatedDays();
        for (auto at = sets.begin(); at != sets.end(); ++at) {
            const Reliability r = *reliabilityOf(*at);
            say(at.key(), "typical error", r.typicalErrorScore);
            say(at.key(), "typical error of two days", r.typicalErrorScore.score);
            say(at.key(), "mdc95", r.mdc95Score);
            say(at.key(), "cv", r.cvPercent);
            if (r.worthwhileChangeScore)
                say(at.key(), "worthwhile change", *r.worthwhileChangeScore);
            say(at.key(), "icc 11", r.icc11Ratio);
            say(at.key(), "icc 21", r.icc21Ratio);
            say(at.key(), "icc 31", r.icc31Ratio);
            say(at.key(), "icc 1k", r.icc1kRatio);
            say(at.key(), "icc 2k", r.icc2kRatio);
            say(at.key(), "icc 3k", r.icc3kRatio);
        }
        const QMap<QString, CountTable> tables{{"sides", {{9, 2}, {3, 12}}}, {"three", {{0, 4, 1}, {0, 8, 0}, {0, 1, 5}}}, {"apart", {{2, 8}, {7, 3}}}};
        for (auto at = tables.begin(); at != tables.end(); ++at) {
            const Kappa kappa = **kappaOf(*at);
            say(at.key(), "kappa", kappa.coefficient);
            say(at.key(), "u kappa", *kappa.uCoefficient);
        }
    }

    void distributions()
    {
        for (const QStringList& line : recordedLines("legcheck.csv")) {
            std::vector<double> at;
            for (const QString& number : line[1].split(' '))
                at.push_back(number.toDouble());
            if (line[0] == "F")
                say(line[0], line[1], fQuantile(at[0], at[1], at[2]));
            if (line[0] == "chi squared")
                say(line[0], line[1], chiSquaredQuantile(at[0], at[1]));
            if (line[0] == "normal")
                say(line[0], line[1], normalProbability(at[0]));
            if (line[0] == "best of")
                say(line[0], line[1], noiseFactor(ScoreKind::BestOfTries, static_cast<int>(at[0])));
            if (line[0] == "same side") {
                std::vector<std::optional<Leg>> days(static_cast<std::size_t>(at[1]), Leg::Left);
                std::fill_n(days.begin(), static_cast<std::size_t>(at[0]), Leg::Right);
                say(line[0], line[1], sameSideOf(days).chanceProbability);
            }
        }
    }

    void indices()
    {
        const auto index = *bilateralIndex({scored(2050, 0.03), scored(1120, 0.04), scored(1065, 0.035)});
        say("index", "percent", index.percent.number());
        say("index", "u", index.percent.u());
        const auto lifted = *bilateralIndexOfLoads({kg(140, 2.8), kg(52, 1.56), kg(55, 1.65)}, kg(82, 0.8), BodyInTest::Lifted);
        say("lifted", "percent", lifted.percent.number());
        say("lifted", "u", lifted.percent.u());
        say("lifted", "u of the body alone", bilateralIndexOfLoads({kg(140, 0), kg(52, 0), kg(55, 0)}, kg(82, 0.8), BodyInTest::Lifted)->percent.u());
    }

    void sides()
    {
        const auto limit = [](SideFormula formula, ScoreKind kind, int tries) { return *noiseLimitPercent(182, 171, formula, {0.04, 0.03, tries, tries, kind}); };
        say("limit", "percentage difference", limit(SideFormula::PercentageDifference, ScoreKind::MeanOfTries, 3));
        say("limit", "two plates", limit(SideFormula::TwoPlates, ScoreKind::MeanOfTries, 3));
        say("limit", "best of four", limit(SideFormula::PercentageDifference, ScoreKind::BestOfTries, 4));
        for (const auto& [name, formula] : {std::pair{"percentage difference", SideFormula::PercentageDifference}, {"two plates", SideFormula::TwoPlates}})
            for (const auto& [cv, tries] : {std::pair{0.05, 3}, {0.02, 1}, {0.1, 2}})
                say("pure noise", QStringLiteral("%1 %2 %3").arg(QLatin1String(name)).arg(cv).arg(tries), *pureNoiseMeanPercent(formula, cv, ScoreKind::MeanOfTries, tries));
    }

    void records()
    {
        const IsometricTry pull = *isometricTry(recordOf("synthetic_imtp_1000Hz.csv", 1000));
        say("pull", "peak", pull.grossPeak.si());
        for (const auto& at : pull.at) {
            const QString ms = QString::number(at->after.count());
            say("pull", "force " + ms, at->gross.si());
            say("pull", "rfd " + ms, at->development.si());
            say("pull", "impulse " + ms, at->netImpulse.si());
        }
        jump("short stand", *forceJump(recordOf("bmc_GRFZjump.txt", 600), ShortWeighing::Allowed));
        jump("step on and off", *forceJump(recordOf("bmc_jump1.txt", 450)));
        jump("half sine", *forceJump(recordOf("synthetic_halfsine_1000Hz.csv", 1000), ShortWeighing::No, Acceleration::fromSi(9.81)));
    }
    void jump(const QString& name, const ForceJump& jump)
    {
        say(name, "body", jump.body.number());
        say(name, "onset", jump.onset.count());
        say(name, "takeoff", jump.takeoff.count());
        say(name, "takeoff speed", jump.takeoffSpeed.number());
        say(name, "impulse height", jump.impulseHeight->number());
        if (!jump.landing)
            return;
        say(name, "landing", jump.landing->count());
        say(name, "flight height", jump.flightHeight->number());
    }

    QMap<QString, double> m_said;
};

}

/// The leg check against SciPy, NumPy and R's psych: second_opinion_legcheck.py and second_opinion_legcheck.R wrote the files down.
class TestSecondLegCheck : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agrees_data()
    {
        QVERIFY(recordedLines("legcheck.csv").size() > 100 && recordedLines("r_legcheck.csv").size() > 90);
        addRecordedColumns();
        addRecordedRows("legcheck.csv");
        // its intervals come from qf(), which is good to about ten figures
        addRecordedRows("r_legcheck.csv", QStringLiteral("R "), 1e-8);
    }
    void agrees()
    {
        static const Said engine;
        const QString wrong = recordedVerdict(engine.all());
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
    }
};

QTEST_APPLESS_MAIN(TestSecondLegCheck)
#include "test_secondlegcheck.moc"
