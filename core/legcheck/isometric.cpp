// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/isometric.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

constexpr Seconds weighed{1}, shortestRecord{1.1};
/// Half a nanosecond in samples at most: a time that falls on a sample by rounding is on it.
constexpr double onSample = 1e-6;

std::optional<PullAt> pullAt(const ForceRecord& record, const IsometricTry& pull, std::chrono::milliseconds after)
{
    const auto& force = record.force;
    const double time = Seconds(after).count();
    double samples = time * record.rate.si();
    if (std::abs(samples - std::round(samples)) < onSample)
        samples = std::round(samples);
    const auto whole = static_cast<std::size_t>(samples);
    const double share = samples - static_cast<double>(whole);
    const std::size_t before = pull.onsetIndex + whole;
    if (before >= force.size() || (share > 0 && before + 1 >= force.size()))
        return std::nullopt;
    const Force here = share > 0 ? force[before] + share * (force[before + 1] - force[before]) : force[before];
    double sum = 0;
    for (std::size_t i = pull.onsetIndex; i < before; ++i)
        sum += ((force[i] + force[i + 1]) / 2 - pull.weighing.mean).si();
    sum += share * ((force[before] + here) / 2 - pull.weighing.mean).si();
    return PullAt{after, here, ForceRate::fromSi((here - force[pull.onsetIndex]).si() / time), Impulse::fromSi(sum / record.rate.si())};
}

}

Result<IsometricTry> isometricTry(const ForceRecord& record)
{
    if (const auto wrong = faultOf(record, shortestRecord))
        return *wrong;
    IsometricTry pull;
    pull.weighing = steadyOf(record.force, 0, record.samplesIn(weighed));
    if (!isStill(pull.weighing))
        return Error{Refusal::NotStill, "weighing"};
    const auto outside = firstOutsideIndex(record.force, pull.weighing, pull.weighing.endIndex(), record.force.size());
    if (!outside)
        return Error{Refusal::NoPull, "force"};
    const auto from = record.force.begin() + static_cast<std::ptrdiff_t>(*outside);
    const auto peak = std::max_element(from, record.force.end());
    const Force lowest = pull.weighing.mean - quietBand(pull.weighing);
    if (std::any_of(from, peak, [lowest](Force force) { return force < lowest; }) || *peak < lowest)
        return Error{Refusal::DipBeforePull, "force"};
    pull.onsetIndex = *outside - 1;
    pull.onset = record.timeAt(static_cast<double>(pull.onsetIndex));
    pull.grossPeak = *peak;
    pull.netPeak = *peak - pull.weighing.mean;
    pull.uNetPeak = pull.weighing.sd / std::sqrt(static_cast<double>(pull.weighing.samplesCount));
    for (std::size_t i = 0; i < isometricTimes.size(); ++i)
        pull.at[i] = pullAt(record, pull, isometricTimes[i]);
    return pull;
}

}
