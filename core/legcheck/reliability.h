// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// A number with its 95 % interval; an end is none where it is undefined.
struct WithInterval {
    double score = 0;
    std::optional<double> lowScore{}, highScore{};
};

/// How well a test tells athletes and days apart, from the same athletes on repeated days.
struct Reliability {
    std::size_t subjectsCount = 0, daysCount = 0;
    /// Mean squares: between subjects, within them, between days, and what is left.
    double betweenScore = 0, withinScore = 0, daysScore = 0, residualScore = 0;
    /// Intraclass correlations of one day (11, 21, 31) and of the mean of all days (1k, 2k, 3k); none where undefined.
    std::optional<WithInterval> icc11Ratio{}, icc21Ratio{}, icc31Ratio{}, icc1kRatio{}, icc2kRatio{}, icc3kRatio{};
    WithInterval typicalErrorScore;             ///< √MSE; of two days SD(difference)/√2, which is the same; also the SEM
    double mdc95Score = 0;                      ///< 1.96·√2·SEM: less is no detectable change of one athlete between two days
    std::optional<WithInterval> cvPercent{};    ///< 100(eˢ − 1), s the typical error of the logarithms; none with a score not above 0
    /// 0.2·√((MSB − MSE)/k), a fifth of the spread between athletes once the noise is out; none ("cannot say") when MSB ≤ MSE.
    std::optional<double> worthwhileChangeScore{};
};

/// One athlete's scores, a day each, in the order of the days.
using SubjectScores = std::vector<double>;

/// Two-way analysis of variance of subjects by days. ICCs with intervals from F as in Shrout & Fleiss (1979, Psychol Bull 86:420–428), for
/// ICC(2,1) with Satterthwaite's degrees of freedom, for ICC(2,k) by Spearman–Brown from those; typical error (Hopkins 2000, Sports Med
/// 30:1–15) with its interval from χ² with (n − 1)(k − 1) degrees of freedom; SEM and MDC95 (Weir 2005, J Strength Cond Res 19:231–240).
/// Differences of rounding between scores count as none. Refuses fewer than two subjects or days, missing days (rows of another length,
/// scores that are not finite: an athlete with a day missing is left out by whoever asks, never here), and more than a million scores.
[[nodiscard]] Result<Reliability> reliabilityOf(std::span<const SubjectScores> scores);

}
