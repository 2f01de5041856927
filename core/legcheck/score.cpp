// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/score.h"

#include "core/measure/conditions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

constexpr std::size_t mostTriesOfAll = 100;

/// √(∫x²f − (∫xf)²) with f = kφΦᵏ⁻¹, by the script of the second opinion.
constexpr std::array spreadOfBest{1.0, 0.825645, 0.747975, 0.701224, 0.668980, 0.644924, 0.626033, 0.610653, 0.597790, 0.586808};

bool isScore(double score) { return std::isfinite(score) && score > 0; }

}

Result<TestScore> scoreOf(std::span<const double> tryScores, ScoreKind kind, Better better)
{
    if (tryScores.empty())
        return Error{Refusal::TooFewPoints, "tries"};
    if (tryScores.size() > mostTriesOfAll)
        return Error{Refusal::TooMany, "tries"};
    double sum = 0;
    for (std::size_t i = 0; i < tryScores.size(); ++i) {
        const std::string what = "try " + std::to_string(i + 1);
        if (!std::isfinite(tryScores[i]))
            return Error{Refusal::NotFinite, what};
        if (tryScores[i] <= 0)
            return Error{Refusal::OutOfRange, what};
        sum += tryScores[i];
    }
    const auto n = static_cast<double>(tryScores.size());
    const double mean = sum / n;
    double squares = 0;
    for (const double score : tryScores)
        squares += (score - mean) * (score - mean);
    const auto [least, most] = std::minmax_element(tryScores.begin(), tryScores.end());
    TestScore of;
    of.kind = kind;
    of.triesCount = static_cast<int>(tryScores.size());
    of.score = kind == ScoreKind::MeanOfTries ? mean : better == Better::Higher ? *most : *least;
    if (of.triesCount > 1)
        of.tryCvRatio = std::sqrt(squares / (n - 1)) / mean;
    return of;
}

double noiseFactor(ScoreKind kind, int triesCount)
{
    const int tries = std::max(1, triesCount);
    if (kind == ScoreKind::MeanOfTries)
        return 1 / std::sqrt(tries);
    return spreadOfBest[std::min(static_cast<std::size_t>(tries), spreadOfBest.size()) - 1];
}

Result<Estimate<double>> estimateOf(const TestScore& score, const TryNoise& noise)
{
    if (const auto wrong = broken({{isScore(score.score), "score"}, {score.triesCount >= 1, "tries"}, {std::isfinite(noise.cvRatio) && noise.cvRatio >= 0, "CV"}}))
        return *wrong;
    return within(score.score, noise.cvRatio * score.score * noiseFactor(score.kind, score.triesCount), ownSource, noise.degreesOfFreedom);
}

Result<Estimate<double>> estimateOf(const TestScore& score)
{
    if (!score.tryCvRatio)
        return Error{Refusal::TooFewPoints, "tries"};
    return estimateOf(score, {*score.tryCvRatio, static_cast<double>(score.triesCount - 1)});
}

std::optional<int> triesToSettle(int presentTriesCount, const std::function<bool(int triesCount)>& settles)
{
    for (int tries = std::max(presentTriesCount + 1, 2); tries <= mostTriesCount; ++tries)
        if (settles(tries))
            return tries;
    return std::nullopt;
}

}
