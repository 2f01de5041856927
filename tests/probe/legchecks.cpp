// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/agreement.h"
#include "core/legcheck/bilateral.h"
#include "core/legcheck/reliability.h"
#include "core/legcheck/sides.h"
#include "core/legcheck/trend.h"
#include "tests/probe/parts.h"

namespace steelyard::probe {

namespace {

constexpr Range cvRange{0, 1};
constexpr int mostTries = 100, mostDays = 10'000;

SideFormula formulaFrom(Fields& in)
{
    return in.oneOf<SideFormula>("formula", {{"percentage_difference", SideFormula::PercentageDifference}, {"two_plates", SideFormula::TwoPlates}});
}

Estimate<double> scoreFrom(Fields& in, const char* key, const char* cvKey)
{
    const double score = in.number(key, aboveZero);
    return within(score, score * in.number(cvKey, cvRange));
}

Estimate<Mass> loadFrom(Fields& in, const char* key, const char* cvKey, Range range)
{
    const Mass load = kilograms(in.number(key, range));
    return within(load, in.number(cvKey, cvRange, 0) * load);
}

/// Rows of numbers, of any lengths.
std::vector<std::vector<double>> rowsFrom(Fields& in, const char* key, Range range)
{
    std::vector<std::vector<double>> rows;
    for (const Json& row : in.list(key)) {
        const std::string here = in.name(key) + "[" + std::to_string(rows.size()) + "]";
        if (!row.is_array())
            Fields::refuse(here, "must be a list");
        rows.emplace_back();
        for (const Json& number : row)
            rows.back().push_back(Fields::checked(number, here + "[" + std::to_string(rows.back().size()) + "]", range));
    }
    return rows;
}

}

Out bilateralIndexOf(Fields& in)
{
    const auto index = accepted(bilateralIndex({scoreFrom(in, "both", "cv_both"), scoreFrom(in, "left", "cv_left"), scoreFrom(in, "right", "cv_right")}));
    return {{"percent", index.percent.number()}, {"u", index.percent.u()}};
}

Out bilateralIndexLift(Fields& in)
{
    const bool isLifted = in.flag("body_is_lifted"), saysU = in.has("cv_both") || in.has("cv_left") || in.has("cv_right") || in.has("u_body_kg");
    const Range range = isLifted ? notBelowZero : aboveZero;
    const BilateralLoads loads{loadFrom(in, "both_external_kg", "cv_both", range), loadFrom(in, "left_external_kg", "cv_left", range), loadFrom(in, "right_external_kg", "cv_right", range)};
    const auto body = within(kilograms(in.number("body_kg", aboveZero)), kilograms(in.number("u_body_kg", notBelowZero, 0)));
    const auto index = accepted(bilateralIndexOfLoads(loads, body, isLifted ? BodyInTest::Lifted : BodyInTest::NotLifted));
    Out out{{"percent", index.percent.number()}};
    if (saysU)
        out["u"] = index.percent.u();
    return out;
}

Out asymmetry(Fields& in)
{
    const double left = in.number("left", notBelowZero), right = in.number("right", notBelowZero);
    const SideFormula formula = formulaFrom(in);
    const auto difference = accepted(sideDifference(left, right, formula, in.flag("lower_is_better", false) ? Better::Lower : Better::Higher));
    return {{"percent", difference.percent}, {"side", difference.better ? Out(*difference.better == Leg::Left ? "left" : "right") : Out(nullptr)}};
}

Out asymmetryNoise(Fields& in)
{
    const double left = in.number("left", aboveZero), right = in.number("right", aboveZero);
    const SideFormula formula = formulaFrom(in);
    const double cvLeft = in.number("cv_left", cvRange), cvRight = in.number("cv_right", cvRange);
    const int tries = in.whole("tries", 1, mostTries);
    return {{"percent", accepted(noiseLimitPercent(left, right, formula, {cvLeft, cvRight, tries, tries}))}};
}

Out reliability(Fields& in)
{
    const Reliability of = accepted(reliabilityOf(rowsFrom(in, "scores", anySize)));
    Out out;
    for (const auto& [name, icc] : {std::pair<std::string, const std::optional<WithInterval>&>{"icc11", of.icc11Ratio}, {"icc21", of.icc21Ratio}, {"icc31", of.icc31Ratio},
                                    {"icc1k", of.icc1kRatio}, {"icc2k", of.icc2kRatio}, {"icc3k", of.icc3kRatio}}) {
        out[name] = icc ? Out(icc->score) : Out(nullptr);
        out[name + "_low"] = icc ? orNull(icc->lowScore) : Out(nullptr);
        out[name + "_high"] = icc ? orNull(icc->highScore) : Out(nullptr);
    }
    out["sem"] = of.typicalErrorScore.score;
    out["mdc95"] = of.mdc95Score;
    out["typical_error"] = of.typicalErrorScore.score;
    out["cv_percent"] = of.cvPercent ? Out(of.cvPercent->score) : Out(nullptr);
    out["worthwhile_change"] = orNull(of.worthwhileChangeScore);
    return out;
}

Out kappa(Fields& in)
{
    const auto found = accepted(kappaOf(rowsFrom(in, "table", notBelowZero)));
    return {{"kappa", found ? Out(found->coefficient) : Out(nullptr)}};
}

Out trendWordOf(Fields& in)
{
    const double difference = in.number("difference", anySize), error = in.number("typical_error", notBelowZero);
    const int n1 = in.whole("n1", 1, mostDays), n2 = in.whole("n2", 1, mostDays);
    const auto word = accepted(trendWord(difference, error, n1, n2));
    if (!word)
        return {{"word", nullptr}};
    return {{"word", *word == TrendWord::ClearlyChanged ? "clearly changed" : *word == TrendWord::ProbablyChanged ? "probably changed" : "no clear change"}};
}

}
