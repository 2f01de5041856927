// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/forcerecord.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

constexpr Frequency slowest = hertz(50), fastest = hertz(100'000);
constexpr Force strongest = newtons(100'000);
constexpr std::size_t longest = 2'000'000;
constexpr double stillShare = 0.02, bandSds = 5;
constexpr Force leastBand = newtons(1);

}

std::size_t ForceRecord::samplesIn(Seconds time) const
{
    return static_cast<std::size_t>(std::max(0.0, std::round(time.count() * rate.si())));
}

std::optional<Error> faultOf(const ForceRecord& record, Seconds least)
{
    if (!std::isfinite(record.rate.si()))
        return Error{Refusal::NotFinite, "rate"};
    if (record.rate < slowest || record.rate > fastest)
        return Error{Refusal::OutOfRange, "rate"};
    if (record.force.size() > longest)
        return Error{Refusal::TooMany, "force"};
    if (record.force.empty() || record.force.size() < record.samplesIn(least))
        return Error{Refusal::TooFewPoints, "force"};
    for (std::size_t i = 0; i < record.force.size(); ++i) {
        const double force = record.force[i].si();
        if (!std::isfinite(force) || std::abs(force) > strongest.si())
            return Error{std::isfinite(force) ? Refusal::OutOfRange : Refusal::NotFinite, "sample " + std::to_string(i + 1)};
    }
    return std::nullopt;
}

Steady steadyOf(std::span<const Force> force, std::size_t firstIndex, std::size_t samplesCount)
{
    // less the first, so that a record without noise has an SD of 0 and not of rounding
    const double n = static_cast<double>(samplesCount), first = force[firstIndex].si();
    double mean = 0, squares = 0;
    for (std::size_t i = firstIndex; i < firstIndex + samplesCount; ++i)
        mean += (force[i].si() - first) / n;
    for (std::size_t i = firstIndex; i < firstIndex + samplesCount; ++i)
        squares += std::pow(force[i].si() - first - mean, 2);
    return {newtons(first + mean), newtons(std::sqrt(squares / (n - 1))), firstIndex, samplesCount};
}

std::optional<Steady> quietest(std::span<const Force> force, const std::vector<bool>& allowed, std::size_t samplesCount, std::size_t endIndex)
{
    if (samplesCount < 2 || endIndex > force.size() || endIndex < samplesCount)
        return std::nullopt;
    // running sums find what is worth a second look, which is then taken exactly
    std::vector<double> sum(endIndex + 1), squares(endIndex + 1);
    std::vector<std::size_t> barred(endIndex + 1);
    const double n = static_cast<double>(samplesCount), base = force[endIndex / 2].si();
    for (std::size_t i = 0; i < endIndex; ++i) {
        const double off = force[i].si() - base;
        sum[i + 1] = sum[i] + off;
        squares[i + 1] = squares[i] + off * off;
        barred[i + 1] = barred[i] + (allowed[i] ? 0 : 1);
    }
    const auto isAllowed = [&](std::size_t i) { return barred[i + samplesCount] == barred[i]; };
    const auto roughly = [&](std::size_t i) {
        const double s = sum[i + samplesCount] - sum[i];
        return (squares[i + samplesCount] - squares[i] - s * s / n) / n;
    };
    std::optional<double> least;
    for (std::size_t i = 0; i + samplesCount <= endIndex; ++i)
        if (isAllowed(i))
            least = least ? std::min(*least, roughly(i)) : roughly(i);
    if (!least)
        return std::nullopt;
    constexpr double sumError = 1e-13;
    const double near = *least + 1e-9 * std::abs(*least) + sumError * (squares[endIndex] + 1);
    std::optional<Steady> best;
    for (std::size_t i = 0; i + samplesCount <= endIndex; ++i) {
        if (!isAllowed(i) || roughly(i) > near)
            continue;
        const Steady here = steadyOf(force, i, samplesCount);
        if (!best || here.sd < best->sd)
            best = here;
        // nothing is quieter than no noise, and the earliest counts
        if (best->sd == Force{})
            break;
    }
    return best;
}

bool isStill(const Steady& weighing)
{
    return weighing.mean > Force{} && weighing.sd <= stillShare * weighing.mean;
}

Force quietBand(const Steady& weighing)
{
    return std::max(bandSds * weighing.sd, leastBand);
}

std::optional<std::size_t> firstOutsideIndex(std::span<const Force> force, const Steady& weighing, std::size_t firstIndex, std::size_t endIndex)
{
    const double band = quietBand(weighing).si();
    for (std::size_t i = firstIndex; i < std::min(endIndex, force.size()); ++i)
        if (std::abs((force[i] - weighing.mean).si()) > band)
            return i;
    return std::nullopt;
}

}
