// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/agreement.h"
#include "core/legcheck/bilateral.h"
#include "core/legcheck/reliability.h"
#include "core/legcheck/sides.h"
#include "tests/published/rows.h"

#include <QJsonArray>
#include <QJsonObject>
#include <algorithm>
#include <cmath>

using namespace steelyard;
using namespace steelyard::published;
using Numbers = Account::Numbers;

namespace {

double indexOf(double both, double left, double right) { return bilateralIndex({exactly(both), exactly(left), exactly(right)})->percent.value; }

double apart(double left, double right, SideFormula formula) { return sideDifference(left, right, formula, Better::Higher)->percent; }

std::vector<SubjectScores> judges()
{
    auto columns = columnsOf("data/shrout_fleiss1979_icc.csv");
    std::vector<SubjectScores> scores(columns["judge1"].size());
    for (const char* judge : {"judge1", "judge2", "judge3", "judge4"})
        for (std::size_t i = 0; i < scores.size(); ++i)
            scores[i].push_back(columns[judge][i]);
    return scores;
}

Account::Compute ofJudges(std::function<Numbers(const Reliability&)> numbers)
{
    return [numbers](const Row&) { return numbers(*reliabilityOf(judges())); };
}

Numbers ends(const std::optional<WithInterval>& icc) { return {*icc->lowScore, *icc->highScore}; }

/// Patients by diagnosis, from who said which.
CountTable diagnoses()
{
    auto columns = columnsOf("data/fleiss1971_diagnoses.csv");
    CountTable table(columns["rater1"].size(), std::vector<double>(5));
    for (int rater = 1; rater <= 6; ++rater)
        for (std::size_t i = 0; i < table.size(); ++i)
            table[i][static_cast<std::size_t>(columns[QStringLiteral("rater%1").arg(rater)][i]) - 1] += 1;
    return table;
}

}

class TestPublishedLegCheck : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedLegCheck()
    {
        bilateralRows();
        asymmetryRows();
        reliabilityRows();
        m_account.standsAside({"SL01", "SL02", "SL03", "SL04", "SL06", "SL07", "SL08", "SL09", "SL10"}, "about groups, or a fixed line that the engine does not draw");
    }

private Q_SLOTS:
    /// Published to two places, and mean squares by their names.
    void meanSquares()
    {
        const Reliability said = *reliabilityOf(judges());
        const auto expected = allNumbersIn(rowNamed("IC07").expected);
        const std::array actual{said.betweenScore, said.withinScore, said.daysScore, said.residualScore};
        QCOMPARE(static_cast<std::size_t>(expected.size()), actual.size());
        for (std::size_t i = 0; i < actual.size(); ++i)
            QVERIFY2(std::abs(actual[i] - expected[static_cast<int>(i)]) <= 1e-6, qPrintable(rowNamed("IC07").source));
        const std::array<std::pair<double, const char*>, 6> published{{{said.icc11Ratio->score, "0.17"}, {said.icc21Ratio->score, "0.29"}, {said.icc31Ratio->score, "0.71"},
                                                                      {said.icc1kRatio->score, "0.44"}, {said.icc2kRatio->score, "0.62"}, {said.icc3kRatio->score, "0.91"}}};
        for (const auto& [icc, printed] : published)
            QCOMPARE(QString::number(icc, 'f', 2), QString(printed));
    }

    /// κ with its standard error as SAS prints them (statsmodels test suite).
    void kappaWithItsError()
    {
        const auto expected = allNumbersIn(rowNamed("KA01").expected);
        const Kappa kappa = **kappaOf({{0, 4, 1}, {0, 8, 0}, {0, 1, 5}});
        QVERIFY2(std::abs(kappa.coefficient - expected[0]) < 1e-6, qPrintable(rowNamed("KA01").source));
        QVERIFY2(std::abs(*kappa.uCoefficient - expected[1]) < 1e-6, qPrintable(rowNamed("KA01").source));
    }

    void toHalfOfTheLastDigit()
    {
        for (const auto& [id, actual] : {std::pair{"IC01", reliabilityOf(judges())->icc11Ratio->score}, {"KA05", **fleissKappaCoefficient(diagnoses())}})
            QVERIFY2(std::abs(actual - numbersIn(rowNamed(id).expected)[0]) <= 5e-7, qPrintable(rowNamed(id).source));
    }

    /// Every row of the table that the two formulas of the engine are in, by whatever name.
    void formulas()
    {
        auto table = columnsOf("data/asymmetry_formula_outputs.csv");
        const auto column = [&](const char* start) {
            for (const QString& name : table.keys())
                if (name.startsWith(QLatin1String(start)))
                    return table[name];
            return std::vector<double>{};
        };
        const auto right = column("right"), left = column("left"), one = column("BSA"), other = column("PD="), two = column("BAI1"), same = column("SI="), sign = column("SA=");
        QVERIFY(right.size() == 8 && one.size() == 8 && other.size() == 8 && two.size() == 8 && same.size() == 8 && sign.size() == 8);
        for (std::size_t i = 0; i < right.size(); ++i) {
            // printed to six places
            QVERIFY2(std::abs(apart(left[i], right[i], SideFormula::PercentageDifference) - one[i]) <= 5.1e-7 && one[i] == other[i], qPrintable(QString::number(i)));
            QVERIFY2(std::abs(apart(left[i], right[i], SideFormula::TwoPlates) - two[i]) <= 5.1e-7 && two[i] == same[i], qPrintable(QString::number(i)));
            const auto better = sideDifference(left[i], right[i], SideFormula::TwoPlates, Better::Higher)->better;
            QCOMPARE(better.has_value(), sign[i] != 0);
            QVERIFY(!better || (*better == Leg::Right) == (sign[i] > 0));
        }
    }

    /// Worked example: jumps of three tries a leg. The squad's noise counts where it is known; today's alone would cry wolf.
    void ownTriesAreNoNoiseEstimate()
    {
        const QJsonObject example = workedExample("WE10"), given = example["inputs"].toObject()["a"].toObject(), expected = example["expected"].toObject()["a"].toObject();
        const auto scoreOfLeg = [&](const char* leg) {
            std::vector<double> tries;
            for (const QJsonValue& jump : given["one_leg_jump_cm"].toObject()[QLatin1String(leg)].toArray())
                tries.push_back(jump.toDouble());
            return *scoreOf(tries, ScoreKind::MeanOfTries, Better::Higher);
        };
        const TestScore left = scoreOfLeg("left"), right = scoreOfLeg("right");
        const auto today = *sidesVerdict(left, right, SideFormula::PercentageDifference, Better::Higher, std::nullopt);
        const auto squad = *sidesVerdict(left, right, SideFormula::PercentageDifference, Better::Higher, given["squad_between_day_cv"].toDouble());
        const auto byNormal = *noiseLimitPercent(left.score, right.score, SideFormula::PercentageDifference, {*left.tryCvRatio, *right.tryCvRatio, 3, 3});
        compare(squad.difference.percent, expected["percent"]);
        compare(byNormal, expected["limit_own_tries_z"]);
        compare(today.limitPercent, expected["limit_own_tries_t4"]);
        compare(squad.limitPercent, expected["limit_squad"]);
        QCOMPARE(today.call, SidesCall::RightBetter);
        QCOMPARE(squad.call, SidesCall::NotBeyondNoise);
    }

    /// Worked example: two plates. Without the half of their formula the limit would be 7.20 and the difference noise.
    void twoPlatesHaveTheirOwnLimit()
    {
        const QJsonObject example = workedExample("WE10"), given = example["inputs"].toObject()["b"].toObject(), expected = example["expected"].toObject()["b"].toObject();
        const QJsonObject peak = given["two_plate_peak_n"].toObject();
        const int tries = given["tries"].toInt();
        const TestScore left{peak["left"].toDouble(), ScoreKind::MeanOfTries, tries}, right{peak["right"].toDouble(), ScoreKind::MeanOfTries, tries};
        const auto verdict = *sidesVerdict(left, right, SideFormula::TwoPlates, Better::Higher, given["cv_each"].toDouble());
        compare(verdict.difference.percent, expected["percent"]);
        compare(verdict.limitPercent, expected["limit"]);
        QCOMPARE(verdict.call, SidesCall::RightBetter);
    }

private:
    void bilateralRows()
    {
        m_account.computes({"BI01", "BI02", "BI04", "BI05"}, [](const Row& r) { return Numbers{indexOf(given(r, "BL"), given(r, "L"), given(r, "R"))}; });
        m_account.computes({"BI06", "BI07"}, [](const Row& r) { return Numbers{indexOf(given(r, "BLR"), 50, 50)}; });
        const auto lifted = [](double both, double leg, double body, BodyInTest inTest) {
            const auto kg = [](double mass) { return exactly(kilograms(mass)); };
            return Numbers{bilateralIndexOfLoads({kg(both), kg(leg), kg(leg)}, kg(body), inTest)->percent.value};
        };
        m_account.computes({"BI15"}, [lifted](const Row& r) { return lifted(given(r, "1RM ext"), given(r, "single-leg ext"), given(r, "BM"), BodyInTest::NotLifted); });
        m_account.computes({"BI16"}, [lifted](const Row& r) { return lifted(given(r, "BL"), given(r, "UL"), given(r, "BM"), BodyInTest::Lifted); });
        m_account.computes({"BI18"}, [](const Row& r) { return Numbers{indexOf(given(r, "BL"), given(r, "SL"), given(r, "SL"))}; });
        m_account.computes({"BI19"}, [this](const Row&) {
            const Row& gross = rowNamed("BI18");
            const double weight = given(gross, "m") * given(gross, "g"), leg = given(gross, "SL") - weight;
            return Numbers{indexOf(given(gross, "BL") - weight, leg, leg)};
        });
        m_account.standsAside({"BI08", "BI09", "BI10", "BI11", "BI12", "BI13", "BI14", "BI20"}, "about groups, or words");
    }

    void asymmetryRows()
    {
        const auto by = [](SideFormula formula, double factor, double from = 0) {
            return [=](const Row& r) { return Numbers{std::abs(from - factor * apart(given(r, "ND"), given(r, "D"), formula))}; };
        };
        m_account.computes({"AS02", "AS04", "AS11"}, by(SideFormula::PercentageDifference, 1));
        m_account.computes({"AS01"}, by(SideFormula::PercentageDifference, 1, 100));
        m_account.computes({"AS05", "AS09"}, by(SideFormula::TwoPlates, 1));
        m_account.computes({"AS03", "AS06", "AS08"}, by(SideFormula::TwoPlates, 2));
        m_account.computes({"AS27"}, [](const Row& r) { return Numbers{apart(given(r, "D"), given(r, "ND"), SideFormula::PercentageDifference)}; });
        m_account.standsAside({"AS07", "AS12", "AS13", "AS14", "AS15"}, "a formula that the engine does not have");
        m_account.standsAside({"AS18"}, "identities: tested beside the formulas");
        m_account.standsAside({"AS19", "AS20", "AS21", "AS22", "AS23", "AS24", "AS25", "AS26", "AS29"}, "about groups, a rule or words");
    }

    void reliabilityRows()
    {
        m_account.computes({"IC02"}, ofJudges([](const Reliability& r) { return Numbers{r.icc21Ratio->score}; }));
        m_account.computes({"IC03"}, ofJudges([](const Reliability& r) { return Numbers{r.icc31Ratio->score}; }));
        m_account.computes({"IC04"}, ofJudges([](const Reliability& r) { return Numbers{r.icc1kRatio->score}; }));
        m_account.computes({"IC05"}, ofJudges([](const Reliability& r) { return Numbers{r.icc2kRatio->score}; }));
        m_account.computes({"IC06"}, ofJudges([](const Reliability& r) { return Numbers{r.icc3kRatio->score}; }));
        m_account.computes({"IC01ci"}, ofJudges([](const Reliability& r) { return ends(r.icc11Ratio); }));
        m_account.computes({"IC02ci"}, ofJudges([](const Reliability& r) { return ends(r.icc21Ratio); }));
        m_account.computes({"IC04ci"}, ofJudges([](const Reliability& r) { return ends(r.icc1kRatio); }));
        m_account.computes({"IC06ci"}, ofJudges([](const Reliability& r) { return ends(r.icc3kRatio); }));
        m_account.computes({"IC08"}, ofJudges([](const Reliability& r) { return Numbers{r.typicalErrorScore.score}; }));
        // the shares of Cohen 1968 as the manual page of psych prints them
        m_account.computes({"KA03"}, [](const Row&) { return Numbers{(*kappaOf({{0.44, 0.07, 0.09}, {0.05, 0.20, 0.05}, {0.01, 0.03, 0.06}}))->coefficient}; });
        m_account.computes({"TI02"}, [](const Row&) { return Numbers{coverageFactor95(9)}; });
        m_account.standsAside({"IC01", "KA05"}, "written to fewer digits than its tolerance: compared to half of its last one");
        m_account.standsAside({"IC07", "KA01"}, "its numbers are named: compared in functions of their own");
        m_account.standsAside({"WE01", "WE02", "WE03"}, "the table was recalled and is not shipped; SEM and MDC95 are held against SciPy");
        m_account.standsAside({"KA02", "KA04"}, "weighted, which the engine does not do");
        m_account.standsAside({"BO01", "BO02"}, "a bootstrap, which the engine does not do");
        m_account.standsAside({"SW01", "SW02"}, "from an SD and an ICC that somebody else made; held against SciPy from scores");
    }

    [[nodiscard]] const Row& rowNamed(const char* id) const
    {
        return *std::find_if(m_account.rows().begin(), m_account.rows().end(), [id](const Row& r) { return r.id == QLatin1String(id); });
    }
    static void compare(double actual, const QJsonValue& expected)
    {
        QVERIFY(expected.isDouble());
        QVERIFY2(std::abs(actual - expected.toDouble()) <= 5e-4 * std::abs(expected.toDouble()), qPrintable(QStringLiteral("%1 for %2").arg(actual).arg(expected.toDouble())));
    }

    Account m_account{"data/legcheck.csv", {"1 bilateral", "2 asymmetry", "3 reliability", "6 single-leg"}};
};

QTEST_APPLESS_MAIN(TestPublishedLegCheck)
#include "test_legcheck.moc"
