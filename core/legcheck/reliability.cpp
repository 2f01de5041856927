// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/reliability.h"

#include "core/measure/distributions.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

constexpr double high = 0.975, normalFactor = 1.96;
constexpr std::size_t mostScores = 1'000'000;
/// Deviations below this share of the largest score are rounding.
constexpr double roundingShare = 1e-13, cancelledShare = 1e-12;

struct MeanSquares {
    double n, k;                          ///< subjects and days
    double between, within, days, residual;

    [[nodiscard]] double residualFreedom() const { return (n - 1) * (k - 1); }
};

std::optional<Error> faultOf(std::span<const SubjectScores> scores)
{
    if (scores.size() < 2)
        return Error{Refusal::TooFewPoints, "subjects"};
    const std::size_t days = scores.front().size();
    if (days < 2)
        return Error{Refusal::TooFewPoints, "repeated days"};
    if (scores.size() > mostScores / days)
        return Error{Refusal::TooMany, "scores"};
    for (std::size_t i = 0; i < scores.size(); ++i) {
        const std::string row = "scores row " + std::to_string(i + 1);
        if (scores[i].size() != days)
            return Error{Refusal::NotFinite, row};
        for (std::size_t j = 0; j < days; ++j)
            if (!std::isfinite(scores[i][j]))
                return Error{Refusal::NotFinite, row + ", day " + std::to_string(j + 1)};
    }
    return std::nullopt;
}

template <typename Of>
MeanSquares meanSquaresOf(std::span<const SubjectScores> scores, Of&& of)
{
    const std::size_t rows = scores.size(), columns = scores.front().size();
    const double n = static_cast<double>(rows), k = static_cast<double>(columns), shift = of(scores[0][0]);
    std::vector<double> subject(rows), day(columns);
    double grand = 0, largest = std::abs(shift);
    // less the first score, so that large scores that hardly differ keep their digits
    const auto at = [&](std::size_t i, std::size_t j) { return of(scores[i][j]) - shift; };
    for (std::size_t i = 0; i < rows; ++i)
        for (std::size_t j = 0; j < columns; ++j) {
            subject[i] += at(i, j) / k;
            day[j] += at(i, j) / n;
            grand += at(i, j) / (n * k);
            largest = std::max(largest, std::abs(of(scores[i][j])));
        }
    double between = 0, within = 0, days = 0, residual = 0;
    for (std::size_t i = 0; i < rows; ++i) {
        between += k * std::pow(subject[i] - grand, 2);
        for (std::size_t j = 0; j < columns; ++j) {
            within += std::pow(at(i, j) - subject[i], 2);
            residual += std::pow(at(i, j) - subject[i] - day[j] + grand, 2);
        }
    }
    for (std::size_t j = 0; j < columns; ++j)
        days += n * std::pow(day[j] - grand, 2);
    const double nothing = std::pow(roundingShare * largest, 2);
    const auto mean = [nothing](double squares, double freedom) { return squares / freedom > nothing ? squares / freedom : 0; };
    return {n, k, mean(between, n - 1), mean(within, n * (k - 1)), mean(days, k - 1), mean(residual, (n - 1) * (k - 1))};
}

/// An end that is no number is not known.
void keepFinite(std::optional<double>& end)
{
    if (end && !std::isfinite(*end))
        end.reset();
}

/// Of the mean of k days from that of one (Spearman–Brown); below −1/(k − 1) one day is worse than any mean can be, and nothing follows.
std::optional<double> stepUp(std::optional<double> ratio, double k)
{
    const double below = ratio ? 1 + *ratio * (k - 1) : 0;
    return below > 0 ? std::optional(*ratio * k / below) : std::nullopt;
}

WithInterval typicalErrorOf(const MeanSquares& ms)
{
    const double freedom = ms.residualFreedom(), error = std::sqrt(ms.residual);
    return {error, error * std::sqrt(freedom / chiSquaredQuantile(high, freedom)), error * std::sqrt(freedom / chiSquaredQuantile(1 - high, freedom))};
}

/// One-way and consistency: one F each, with its two degrees of freedom.
void setByF(const MeanSquares& ms, double noise, double noiseFreedom, std::optional<WithInterval>& single, std::optional<WithInterval>& mean)
{
    if (!(ms.between > 0) && !(noise > 0))
        return;
    single = WithInterval{(ms.between - noise) / (ms.between + (ms.k - 1) * noise)};
    if (ms.between > 0)
        mean = WithInterval{(ms.between - noise) / ms.between};
    if (!(noise > 0))
        return;
    const double f = ms.between / noise;
    const double low = f / fQuantile(high, ms.n - 1, noiseFreedom), above = f * fQuantile(high, noiseFreedom, ms.n - 1);
    single->lowScore = (low - 1) / (low + ms.k - 1);
    single->highScore = (above - 1) / (above + ms.k - 1);
    if (mean) {
        mean->lowScore = 1 - 1 / low;
        mean->highScore = 1 - 1 / above;
    }
}

/// Absolute agreement; Satterthwaite's degrees of freedom.
void setAgreement(const MeanSquares& ms, Reliability& out)
{
    const double n = ms.n, k = ms.k, b = ms.between, d = ms.days, e = ms.residual;
    const double below = b + (k - 1) * e + k * (d - e) / n, belowMean = b + (d - e) / n;
    // as good as 0 where the terms of either sum cancel: the ratio is then of rounding
    const double nothing = cancelledShare * (b + d + e);
    if (!(std::abs(below) > nothing))
        return;
    const double ratio = (b - e) / below;
    out.icc21Ratio = WithInterval{ratio};
    if (std::abs(belowMean) > nothing)
        out.icc2kRatio = WithInterval{(b - e) / belowMean};
    if (!(e > 0))
        return;
    const double f = d / e, own = n * (1 + (k - 1) * ratio) - k * ratio;
    const double freedom = ms.residualFreedom() * std::pow(k * ratio * f + own, 2) / ((n - 1) * k * k * ratio * ratio * f * f + own * own);
    if (!(freedom > 0))
        return;
    const double up = fQuantile(high, n - 1, freedom), down = fQuantile(high, freedom, n - 1), rest = k * d + (k * n - k - n) * e;
    out.icc21Ratio->lowScore = n * (b - up * e) / (up * rest + n * b);
    out.icc21Ratio->highScore = n * (down * b - e) / (rest + n * down * b);
    if (out.icc2kRatio) {
        out.icc2kRatio->lowScore = stepUp(out.icc21Ratio->lowScore, k);
        out.icc2kRatio->highScore = stepUp(out.icc21Ratio->highScore, k);
    }
}

}

Result<Reliability> reliabilityOf(std::span<const SubjectScores> scores)
{
    if (const auto wrong = faultOf(scores))
        return *wrong;
    const MeanSquares ms = meanSquaresOf(scores, [](double score) { return score; });
    Reliability out;
    out.subjectsCount = scores.size();
    out.daysCount = scores.front().size();
    out.betweenScore = ms.between;
    out.withinScore = ms.within;
    out.daysScore = ms.days;
    out.residualScore = ms.residual;
    setByF(ms, ms.within, ms.n * (ms.k - 1), out.icc11Ratio, out.icc1kRatio);
    setByF(ms, ms.residual, ms.residualFreedom(), out.icc31Ratio, out.icc3kRatio);
    setAgreement(ms, out);
    for (auto* icc : {&out.icc11Ratio, &out.icc21Ratio, &out.icc31Ratio, &out.icc1kRatio, &out.icc2kRatio, &out.icc3kRatio})
        if (*icc) {
            keepFinite((*icc)->lowScore);
            keepFinite((*icc)->highScore);
        }
    out.typicalErrorScore = typicalErrorOf(ms);
    out.mdc95Score = normalFactor * std::sqrt(2 * ms.residual);
    if (ms.between > ms.residual)
        out.worthwhileChangeScore = 0.2 * std::sqrt((ms.between - ms.residual) / ms.k);
    const bool haveLogarithms = std::all_of(scores.begin(), scores.end(), [](const SubjectScores& row) { return std::all_of(row.begin(), row.end(), [](double score) { return score > 0; }); });
    if (haveLogarithms) {
        const WithInterval s = typicalErrorOf(meanSquaresOf(scores, [](double score) { return std::log(score); }));
        out.cvPercent = WithInterval{100 * std::expm1(s.score), 100 * std::expm1(*s.lowScore), 100 * std::expm1(*s.highScore)};
    }
    return out;
}

}
