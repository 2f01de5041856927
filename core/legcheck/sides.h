// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/legcheck/score.h"

#include <cstdint>
#include <optional>
#include <span>

namespace steelyard {

/// One of two legs.
enum class Leg : std::uint8_t { Left, Right };

/// How a difference between legs is put in percent. The formula goes by the test (Bishop et al. 2018, Strength Cond J 40(4):1–6) and is
/// named beside every number, since one pair of scores gives twice as much by the first.
enum class SideFormula : std::uint8_t {
    PercentageDifference, ///< tests of one leg at a time: 100(max − min)/max
    TwoPlates,            ///< both legs at once on two plates: 100(strong − weak)/(strong + weak)
};

/// How far the legs are apart, and which is the better one; none when they are equal.
struct SideDifference {
    double percent = 0; ///< never below 0
    std::optional<Leg> better{};
};

/// Of two scores; where lower is better the better side is the lower one. Refuses scores below 0, both 0, and numbers that are not finite.
[[nodiscard]] Result<SideDifference> sideDifference(double leftScore, double rightScore, SideFormula formula, Better better);

/// How much each leg's tries scatter, and how many there were.
struct SideNoise {
    double leftCvRatio = 0, rightCvRatio = 0; ///< of one try
    int leftTriesCount = 1, rightTriesCount = 1;
    ScoreKind kind = ScoreKind::MeanOfTries;
    std::optional<double> degreesOfFreedom{}; ///< none: the squad's own figure, taken as known; nL + nR − 2 for today's tries
};

/// What noise alone passes on one day in twenty, in percent: `1.96·√(CVr² + CVl²)/√k` times min/max, or times `2RL/(R + L)²` for two plates,
/// both to first order; each leg with its own k, the best of k by noiseFactor. CVs from today's few tries take Student's t instead of 1.96.
/// Refuses scores not above 0, CVs below 0 and fewer tries than one.
[[nodiscard]] Result<double> noiseLimitPercent(double leftScore, double rightScore, SideFormula formula, const SideNoise& noise);

/// What can be said of left against right.
enum class SidesCall : std::uint8_t {
    LeftBetter,
    RightBetter,
    TooClose,       ///< within the noise, and a few more tries would settle a difference of this size
    NotBeyondNoise, ///< within the noise, and no number of tries that is sensible today would settle it
};

/// Whose scatter the noise is.
enum class NoiseSource : std::uint8_t {
    SquadBetweenDays, ///< the squad's own, from repeated days
    TodaysTries,      ///< of today alone, which leaves out how days differ
};

/// Left against right, with the noise it was held against. No fixed percentage counts as large, and none is a finding about a body.
struct SidesVerdict {
    SideDifference difference;
    double limitPercent = 0;
    SidesCall call = SidesCall::NotBeyondNoise;
    std::optional<int> triesNeededCount{}; ///< of each leg in all, where it is too close to call
    NoiseSource noise = NoiseSource::TodaysTries;
};

/// Held against the squad's between-day CV of one try where it is known, else against today's tries of each leg. Tries needed are counted
/// as if both legs' scores and CVs stay as they are. Refuses legs whose scores are not of one kind, and a single try of a leg where the
/// squad's CV is not known.
[[nodiscard]] Result<SidesVerdict> sidesVerdict(const TestScore& left, const TestScore& right, SideFormula formula, Better better, std::optional<double> squadCvRatio);

/// Both legs in one try on two plates.
struct PlatesTry {
    double leftScore = 0, rightScore = 0;
};

/// Two plates worked try by try, `100(R − L)/(R + L)` with its sign, since the sides of one try go up and down together: the mean over the
/// tries against t·SD/√n with n − 1 degrees of freedom. Refuses what sideDifference does, by try, and fewer than two tries.
[[nodiscard]] Result<SidesVerdict> platesVerdict(std::span<const PlatesTry> tries, Better better);

/// What legs without any difference would show on average from noise alone, in percent: never 0. With x = ln(R/L) of standard deviation
/// √2·CV·noiseFactor it is the mean of `1 − e^(−|x|)`, or of `tanh(|x|/2)` to its third power for two plates. Refuses a CV outside 0–1
/// and fewer tries than one.
[[nodiscard]] Result<double> pureNoiseMeanPercent(SideFormula formula, double tryCvRatio, ScoreKind kind, int triesCount);

/// Mean size of a squad's differences. It says something only beside pureNoiseMeanPercent, and is not the difference of the means of the
/// legs. Refuses none, and sizes below 0 or above 100.
[[nodiscard]] Result<double> meanSizePercent(std::span<const double> percents);

}
