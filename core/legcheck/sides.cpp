// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/sides.h"

#include "core/measure/conditions.h"
#include "core/measure/distributions.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace steelyard {

namespace {

/// The two-sided 5 % of the normal distribution to three figures, as the limit is published and agreed.
constexpr double normalFactor = 1.96;

bool isScore(double score) { return std::isfinite(score) && score >= 0; }
bool isCv(double cvRatio) { return std::isfinite(cvRatio) && cvRatio >= 0; }

std::optional<Leg> betterOf(double leftScore, double rightScore, Better better)
{
    if (leftScore == rightScore)
        return std::nullopt;
    return (leftScore > rightScore) == (better == Better::Higher) ? Leg::Left : Leg::Right;
}

SidesCall callFor(Leg leg) { return leg == Leg::Left ? SidesCall::LeftBetter : SidesCall::RightBetter; }

/// Sets call and tries needed; `limitAt` is the limit with so many tries of each leg.
void decide(SidesVerdict& verdict, int triesCount, const std::function<double(int)>& limitAt)
{
    if (verdict.difference.better && verdict.difference.percent > verdict.limitPercent) {
        verdict.call = callFor(*verdict.difference.better);
        return;
    }
    verdict.triesNeededCount = triesToSettle(triesCount, [&](int tries) { return verdict.difference.percent > limitAt(tries); });
    verdict.call = verdict.triesNeededCount ? SidesCall::TooClose : SidesCall::NotBeyondNoise;
}

}

Result<SideDifference> sideDifference(double leftScore, double rightScore, SideFormula formula, Better better)
{
    if (const auto wrong = broken({{isScore(leftScore), "left"}, {isScore(rightScore), "right"}, {leftScore > 0 || rightScore > 0, "left"}}))
        return *wrong;
    const auto [least, most] = std::minmax(leftScore, rightScore);
    const double base = formula == SideFormula::TwoPlates ? most + least : most;
    return SideDifference{100 * (most - least) / base, betterOf(leftScore, rightScore, better)};
}

Result<double> noiseLimitPercent(double leftScore, double rightScore, SideFormula formula, const SideNoise& noise)
{
    if (const auto wrong = broken({{isScore(leftScore) && leftScore > 0, "left"}, {isScore(rightScore) && rightScore > 0, "right"},
                                   {isCv(noise.leftCvRatio), "left CV"}, {isCv(noise.rightCvRatio), "right CV"}, {noise.leftTriesCount >= 1 && noise.rightTriesCount >= 1, "tries"},
                                   {!noise.degreesOfFreedom || *noise.degreesOfFreedom > 0, "tries"}}))
        return *wrong;
    const double spread = std::hypot(noise.leftCvRatio * noiseFactor(noise.kind, noise.leftTriesCount), noise.rightCvRatio * noiseFactor(noise.kind, noise.rightTriesCount));
    const auto [least, most] = std::minmax(leftScore, rightScore);
    const double sum = least + most;
    const double bySpread = formula == SideFormula::TwoPlates ? 2 * least * most / (sum * sum) : least / most;
    const double factor = noise.degreesOfFreedom ? coverageFactor95(*noise.degreesOfFreedom) : normalFactor;
    return 100 * factor * spread * bySpread;
}

Result<SidesVerdict> sidesVerdict(const TestScore& left, const TestScore& right, SideFormula formula, Better better, std::optional<double> squadCvRatio)
{
    if (left.kind != right.kind)
        return Error{Refusal::NotComparable, "score"};
    if (!squadCvRatio && !(left.tryCvRatio && right.tryCvRatio))
        return Error{Refusal::TooFewPoints, "tries"};
    const auto difference = sideDifference(left.score, right.score, formula, better);
    if (!difference)
        return difference.error();
    SideNoise noise{squadCvRatio ? *squadCvRatio : *left.tryCvRatio, squadCvRatio ? *squadCvRatio : *right.tryCvRatio, left.triesCount, right.triesCount, left.kind};
    const auto limitWith = [&](int leftTries, int rightTries) {
        noise.leftTriesCount = leftTries;
        noise.rightTriesCount = rightTries;
        if (!squadCvRatio)
            noise.degreesOfFreedom = leftTries + rightTries - 2;
        return noiseLimitPercent(left.score, right.score, formula, noise);
    };
    const auto limit = limitWith(left.triesCount, right.triesCount);
    if (!limit)
        return limit.error();
    SidesVerdict verdict{*difference, *limit};
    verdict.noise = squadCvRatio ? NoiseSource::SquadBetweenDays : NoiseSource::TodaysTries;
    decide(verdict, std::max(left.triesCount, right.triesCount), [&](int tries) { return *limitWith(tries, tries); });
    return verdict;
}

Result<SidesVerdict> platesVerdict(std::span<const PlatesTry> tries, Better better)
{
    if (tries.size() < 2)
        return Error{Refusal::TooFewPoints, "tries"};
    const auto n = static_cast<double>(tries.size());
    std::vector<double> signedPercents;
    double mean = 0;
    for (const PlatesTry& one : tries) {
        const auto difference = sideDifference(one.leftScore, one.rightScore, SideFormula::TwoPlates, better);
        if (!difference)
            return Error{difference.error().code, "try " + std::to_string(signedPercents.size() + 1) + ", " + difference.error().what};
        signedPercents.push_back(one.rightScore > one.leftScore ? difference->percent : -difference->percent);
        mean += signedPercents.back() / n;
    }
    double squares = 0;
    for (const double percent : signedPercents)
        squares += (percent - mean) * (percent - mean);
    const double sd = std::sqrt(squares / (n - 1));
    const auto limitAt = [sd](int triesCount) { return coverageFactor95(triesCount - 1) * sd / std::sqrt(triesCount); };
    SidesVerdict verdict{{std::abs(mean), betterOf(-mean, mean, better)}, limitAt(static_cast<int>(n))};
    decide(verdict, static_cast<int>(n), limitAt);
    return verdict;
}

Result<double> pureNoiseMeanPercent(SideFormula formula, double tryCvRatio, ScoreKind kind, int triesCount)
{
    if (const auto wrong = broken({{isCv(tryCvRatio) && tryCvRatio <= 1, "CV"}, {triesCount >= 1, "tries"}}))
        return *wrong;
    const double sd = std::numbers::sqrt2 * tryCvRatio * noiseFactor(kind, triesCount);
    if (formula == SideFormula::PercentageDifference)
        return 100 * (1 - 2 * std::exp(sd * sd / 2) * normalProbability(-sd));
    // E|x| = σ√(2/π), E|x|³ = 2σ³√(2/π)
    const double root = std::sqrt(2 / std::numbers::pi);
    return 100 * root * (sd / 2 - sd * sd * sd / 12);
}

Result<double> meanSizePercent(std::span<const double> percents)
{
    if (percents.empty())
        return Error{Refusal::TooFewPoints, "differences"};
    double sum = 0;
    for (std::size_t i = 0; i < percents.size(); ++i) {
        if (!(percents[i] >= 0 && percents[i] <= 100))
            return Error{Refusal::OutOfRange, "difference " + std::to_string(i + 1)};
        sum += percents[i];
    }
    return sum / static_cast<double>(percents.size());
}

}
