// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>

namespace steelyard {

/// Which way a score of a test is better: a jump the higher, a timed hop the shorter.
enum class Better : std::uint8_t { Higher, Lower };

/// What of several tries the score of a day is. It is kept with the score, since the best of several is no mean and their noise differs.
enum class ScoreKind : std::uint8_t { MeanOfTries, BestOfTries };

/// The more often somebody may try on one day to settle a comparison (our choice): past that tiredness tells more than another try.
inline constexpr int mostTriesCount = 6;

/// What was scored on a day in one condition of a test, in the unit of the test.
struct TestScore {
    double score = 0;
    ScoreKind kind = ScoreKind::MeanOfTries;
    int triesCount = 1;
    /// SD (by n − 1) of the tries over their mean: the coefficient of variation of one try; none of a single try.
    std::optional<double> tryCvRatio{};
};

/// From the tries that count, spoiled ones left out. Refuses none or more than 100 tries, and a try that is not a number above 0.
[[nodiscard]] Result<TestScore> scoreOf(std::span<const double> tryScores, ScoreKind kind, Better better);

/// How the noise of a score is to that of one try. Mean of k: 1/√k. Best of k: SD of the largest of k standard normal values (0.8256,
/// 0.7480, 0.7012 … for 2, 3, 4), which falls off more slowly; integrated by SciPy to six places, past ten tries that of ten.
[[nodiscard]] double noiseFactor(ScoreKind kind, int triesCount);

/// How much one try scatters, as a coefficient of variation, and how well that is known.
struct TryNoise {
    double cvRatio = 0;
    double degreesOfFreedom = knownExactly; ///< infinite for the squad's own between-day figure, k − 1 for k tries of today
};

/// A score with its standard uncertainty, CV · score · noiseFactor. Refuses a score not above 0, no tries, and a CV below 0.
[[nodiscard]] Result<Estimate<double>> estimateOf(const TestScore& score, const TryNoise& noise);
/// The same by the scatter of its own tries. Refuses a single try, which has none.
[[nodiscard]] Result<Estimate<double>> estimateOf(const TestScore& score);

/// How many tries of each condition would settle what stands now: the least count above the present one, up to mostTriesCount, for which
/// `settles` says yes; none: not today.
[[nodiscard]] std::optional<int> triesToSettle(int presentTriesCount, const std::function<bool(int triesCount)>& settles);

}
