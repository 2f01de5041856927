// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/aidkit.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

using Indices = std::vector<std::size_t>;

PositionPull pointOf(const AidReading& reading)
{
    return {*reading.aboveChest, weight(*reading.mass)};
}

Error inReading(Refusal code, std::size_t index)
{
    return {code, "reading " + std::to_string(index + 1)};
}

bool isNumber(double si) { return std::isfinite(si) && si >= 0; }

/// Nothing more on it the higher it stands, from the lowest reading up.
bool falls(const AidMeasurement& aid, const Indices& lowestFirst)
{
    return std::is_sorted(lowestFirst.begin(), lowestFirst.end(), [&](std::size_t a, std::size_t b) { return *aid.readings[a].mass > *aid.readings[b].mass; });
}

Indices without(Indices all, std::size_t index)
{
    std::erase(all, index);
    return all;
}

std::vector<PositionPull> pointsOf(const AidMeasurement& aid, const Indices& lowestFirst)
{
    std::vector<PositionPull> points;
    for (const std::size_t i : lowestFirst)
        points.push_back(pointOf(aid.readings[i]));
    return points;
}

/// How far a reading lies from the curve through the others; past its ends, from the nearest of them.
Force apart(const AidMeasurement& aid, const Indices& others, std::size_t index)
{
    const auto points = pointsOf(aid, others);
    const PositionPull own = pointOf(aid.readings[index]);
    const auto curve = MeasuredPull::of(points);
    const auto there = curve ? curve->at(own.position) : std::nullopt;
    const Force expected = there ? *there : own.position < points.front().position ? points.front().pull : points.back().pull;
    return own.pull > expected ? own.pull - expected : expected - own.pull;
}

/// Of two points that lie one after the other: how far the curve leaves the straight line between them, at the most.
Force bend(const MeasuredPull& curve, const PositionPull& from, const PositionPull& to)
{
    constexpr int parts = 8;
    Force most;
    for (int i = 1; i < parts; ++i) {
        const double part = static_cast<double>(i) / parts;
        const Force straight = from.pull + part * (to.pull - from.pull), there = curve.at(from.position + part * (to.position - from.position)).value_or(straight);
        most = std::max(most, there > straight ? there - straight : straight - there);
    }
    return most;
}

}

std::vector<std::size_t> aidReadingsThatCount(const AidMeasurement& measurement)
{
    Indices counting;
    for (std::size_t i = 0; i < measurement.readings.size(); ++i)
        if (const AidReading& r = measurement.readings[i]; r.mass && r.aboveChest && !r.leftOut)
            counting.push_back(i);
    std::stable_sort(counting.begin(), counting.end(), [&](std::size_t a, std::size_t b) { return *measurement.readings[a].aboveChest < *measurement.readings[b].aboveChest; });
    return counting;
}

std::optional<std::size_t> oddAidReadingIndex(const AidMeasurement& measurement)
{
    const Indices all = aidReadingsThatCount(measurement);
    if (all.size() < 3 || falls(measurement, all))
        return std::nullopt;
    std::optional<std::size_t> odd;
    Force most;
    for (const std::size_t i : all) {
        const Indices others = without(all, i);
        if (!falls(measurement, others))
            continue;
        if (const Force off = apart(measurement, others, i); !odd || off > most) {
            odd = i;
            most = off;
        }
    }
    return odd;
}

Result<MeasuredPull> aidFrom(const AidMeasurement& measurement, SourceId source)
{
    const Indices all = aidReadingsThatCount(measurement);
    for (const std::size_t i : all)
        if (!isNumber(measurement.readings[i].mass->si()) || !isNumber(measurement.readings[i].aboveChest->si()))
            return inReading(Refusal::OutOfRange, i);
    if (all.size() < 2)
        return Error{Refusal::TooFewPoints, "heights"};
    for (std::size_t at = 1; at < all.size(); ++at)
        if (*measurement.readings[all[at]].aboveChest == *measurement.readings[all[at - 1]].aboveChest)
            return inReading(Refusal::PointsNotApart, std::max(all[at], all[at - 1]));
    for (std::size_t at = 1; at < all.size(); ++at)
        if (*measurement.readings[all[at]].mass > *measurement.readings[all[at - 1]].mass)
            return inReading(Refusal::NotFalling, oddAidReadingIndex(measurement).value_or(all[at]));
    const auto points = pointsOf(measurement, all);
    constexpr double eitherWay = 0.02;
    const auto help = MeasuredPull::of(points, {Force{}, eitherWay / std::sqrt(3.0), uAboveChest}, source);
    return help && points.back().pull == Force{} ? help->slackPast(slackAbove) : help;
}

std::optional<AidAdvice> nextAidReading(const AidMeasurement& measurement, double goodShare)
{
    const Indices all = aidReadingsThatCount(measurement);
    const auto points = pointsOf(measurement, all);
    if (std::none_of(points.begin(), points.end(), [](const PositionPull& p) { return p.pull == Force{}; }))
        return AidAdvice{points.empty() ? Length{} : points.back().position, AidReason::Slack};
    constexpr Length touching = metres(0.005);
    if (points.front().position > touching)
        return AidAdvice{Length{}, AidReason::Chest};
    const auto curve = aidFrom(measurement);
    if (points.size() >= mostAidReadingCount || points.size() < 2 || !curve)
        return std::nullopt;
    const bool few = points.size() < fewestAidReadingCount;
    double widest = few ? 0 : goodShare * points.front().pull.si();
    std::optional<AidAdvice> advice;
    for (std::size_t i = 1; i < points.size(); ++i) {
        // where it is slack there is nothing to read
        if (points[i - 1].pull == Force{})
            break;
        const double gap = few ? (points[i].position - points[i - 1].position).si() : bend(*curve, points[i - 1], points[i]).si();
        if (gap > widest) {
            widest = gap;
            advice = AidAdvice{points[i - 1].position + (points[i].position - points[i - 1].position) / 2, AidReason::Gap};
        }
    }
    return advice;
}

}
