// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/setup.h"

#include "core/measure/roots.h"
#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

bool notNegative(double v) { return std::isfinite(v) && v >= 0; }

/// Where the pull is least and greatest on a stretch: at its ends, its corners, and where the slope turns within a piece.
std::pair<Height, Height> extremes(const PullSum& sum, Height from, Height to)
{
    auto stops = sum.kinksBetween(from, to);
    stops.push_back(to);
    std::pair<Force, Height> least{sum.total(from), from}, greatest = least;
    const auto take = [&](Height h) {
        const std::pair<Force, Height> here{sum.total(h), h};
        if (here.first < least.first)
            least = here;
        if (here.first > greatest.first)
            greatest = here;
    };
    Height before = from;
    for (const Height stop : stops) {
        take(stop);
        constexpr int parts = 8;
        const auto slope = [&](double h) { return sum.slope(metres(h)).si(); };
        const Length inset = 1e-6 * (stop - before), step = (stop - before - 2 * inset) / parts;
        for (int i = 0; i < parts; ++i) {
            const double a = (before + inset + i * step).si(), b = a + step.si();
            if (slope(a) * slope(b) < 0)
                take(metres(signChange(slope, a, b)));
        }
        before = stop;
    }
    return {least.second, greatest.second};
}

std::vector<Height> sampleHeights(const PullSum& sum, Height from, Height to, std::size_t count)
{
    std::vector<Height> heights;
    if (count < 2)
        return heights;
    auto stops = sum.kinksBetween(from, to);
    if (stops.size() + 2 > count)
        stops.resize(count - 2);
    const std::size_t even = count - stops.size();
    heights.reserve(count);
    for (std::size_t i = 0; i < even; ++i)
        heights.push_back(from + static_cast<double>(i) / static_cast<double>(even - 1) * (to - from));
    heights.back() = to;
    const auto corners = heights.insert(heights.end(), stops.begin(), stops.end());
    std::inplace_merge(heights.begin(), corners, heights.end());
    return heights;
}

std::optional<Force> greatestAnchorPull(const Setup& setup, const PullSum& sum)
{
    std::optional<Force> greatest;
    const auto look = [&](const std::vector<HungItem>& items) {
        for (const HungItem& item : items) {
            const auto* band = std::get_if<HungBand>(&item);
            if (!band)
                continue;
            auto stops = sum.kinksBetween(setup.path.bottom, setup.path.top);
            stops.insert(stops.end(), {setup.path.bottom, setup.path.top});
            for (const Height h : stops)
                if (band->knows(h))
                    greatest = std::max(greatest.value_or(Force{}), band->verticalPull(h));
        }
    };
    look(setup.left);
    look(setup.right);
    return greatest;
}

}

std::optional<Error> setupFault(const Setup& s)
{
    const std::pair<double, const char*> amounts[] = {
        {s.bar.si(), "bar"}, {s.collars.si(), "collars"}, {s.plates.si(), "plates"},
        {s.uIron.si(), "uncertainty of the plates"}, {s.path.bottom.si(), "bottom"}, {s.path.top.si(), "top"},
        {s.path.uMark.si(), "uncertainty of the marks"}, {s.path.rack.value_or(Height{}).si(), "rack mark"},
        {s.path.zoneFrom.value_or(Height{}).si(), "sticking zone"}, {s.path.zoneTo.value_or(Height{}).si(), "sticking zone"},
        {s.limits.cap.value_or(Mass{}).si(), "cap"}, {s.limits.rackRating.value_or(Mass{}).si(), "rack rating"},
        {s.limits.safetyRating.value_or(Mass{}).si(), "safety rating"}, {s.limits.sleeve.value_or(Length{}).si(), "sleeve"},
        {s.platesThickness.si(), "plates"},
    };
    for (const auto& [value, name] : amounts)
        if (!notNegative(value))
            return Error{Refusal::OutOfRange, name};
    if (s.path.top <= s.path.bottom)
        return Error{Refusal::HeightsOutOfOrder, "top"};
    if (s.path.zoneFrom.has_value() != s.path.zoneTo.has_value())
        return Error{Refusal::HeightsOutOfOrder, "sticking zone"};
    if (s.path.zoneFrom && (*s.path.zoneFrom < s.path.bottom || *s.path.zoneTo > s.path.top || *s.path.zoneFrom >= *s.path.zoneTo))
        return Error{Refusal::HeightsOutOfOrder, "sticking zone"};
    return std::nullopt;
}

Result<PullCurve> pullCurve(const Setup& setup, std::size_t samples)
{
    if (auto wrong = setupFault(setup))
        return *wrong;
    const PullSum sum(setup);
    const LiftPath& path = setup.path;
    const auto readAt = [&](Height h) { return sum.knows(h) ? std::optional(sum.at(h)) : std::nullopt; };

    PullCurve curve;
    curve.bottom = readAt(path.bottom);
    curve.top = readAt(path.top);
    if (path.rack)
        curve.rack = readAt(*path.rack);
    if (path.zoneFrom && sum.knowsAll(*path.zoneFrom, *path.zoneTo)) {
        curve.zone = sum.meanReading(*path.zoneFrom, *path.zoneTo);
        const auto [least, greatest] = extremes(sum, *path.zoneFrom, *path.zoneTo);
        curve.zoneLeast = sum.at(least);
        curve.zoneGreatest = sum.at(greatest);
    }
    const bool pathKnown = sum.knowsAll(path.bottom, path.top);
    if (pathKnown) {
        curve.mean = sum.meanReading(path.bottom, path.top);
        curve.work = curve.mean->value * (path.top - path.bottom);
    }
    if (curve.bottom && curve.top)
        curve.twoPointMean = (curve.bottom->value + curve.top->value) / 2;
    curve.movingBottom = sum.movingMass(path.bottom);
    curve.movingTop = sum.movingMass(path.top);
    curve.anchorPull = greatestAnchorPull(setup, sum);
    curve.ready = pathKnown && (!path.rack || curve.rack);
    curve.warnings = setupWarnings(setup, sum);
    const auto heights = sampleHeights(sum, path.bottom, path.top, std::min<std::size_t>(samples, 200));
    curve.samples.reserve(heights.size());
    for (const Height h : heights)
        curve.samples.push_back(sum.sample(h));
    return curve;
}

}
