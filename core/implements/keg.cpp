// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/keg.h"

#include "core/measure/conditions.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace steelyard {

namespace {

/// The filled segment of a circle of radius r, and how it grows with depth and radius.
struct Segment {
    double area, byDepth, byRadius;

    static double chord(double r, double h) { return 2 * std::sqrt(std::max(0.0, h * (2 * r - h))); }

    Segment(const Estimate<Length>& radius, const Estimate<Length>& depth)
    {
        const double r = radius.number(), h = depth.number();
        const double half = std::acos(std::clamp((r - h) / r, -1.0, 1.0));
        area = r * r * half - (r - h) * chord(r, h) / 2;
        // where a depth is within its u of an end, the slope there would say that the doubt does not matter
        const double u = std::min(depth.uncertainty.standard(), r);
        byDepth = chord(r, std::clamp(h, u, 2 * r - u));
        byRadius = 2 * r * half - chord(r, h);
    }
};

bool isDepthIn(const Estimate<Length>& radius, const Estimate<Length>& depth)
{
    return isNotNegative(depth) && depth.number() <= 2 * radius.number();
}

}

Result<Estimate<Volume>> contentLying(const LyingVessel& vessel)
{
    if (const auto wrong = broken({{isPositive(vessel.radius), "radius"}, {isPositive(vessel.length), "length"}, {isDepthIn(vessel.radius, vessel.depth), "depth"}}))
        return *wrong;
    const Segment segment(vessel.radius, vessel.depth);
    const double l = vessel.length.number();
    return Estimate<Volume>{Volume::fromSi(segment.area * l), propagated({{vessel.length.uncertainty, segment.area}, {vessel.depth.uncertainty, segment.byDepth * l},
                                                                          {vessel.radius.uncertainty, segment.byRadius * l}})};
}

Result<Estimate<double>> fillShareLying(const Estimate<Length>& radius, const Estimate<Length>& depth)
{
    if (const auto wrong = broken({{isPositive(radius), "radius"}, {isDepthIn(radius, depth), "depth"}}))
        return *wrong;
    const Segment segment(radius, depth);
    const double r = radius.number(), circle = std::numbers::pi * r * r, share = segment.area / circle;
    return Estimate<double>{share, propagated({{depth.uncertainty, segment.byDepth / circle}, {radius.uncertainty, segment.byRadius / circle - 2 * share / r}})};
}

Result<Estimate<Volume>> contentStanding(const Estimate<Length>& radius, const Estimate<Length>& depth)
{
    if (const auto wrong = broken({{isPositive(radius), "radius"}, {isNotNegative(depth), "depth"}}))
        return *wrong;
    const double r = radius.number(), h = depth.number(), circle = std::numbers::pi * r * r;
    return Estimate<Volume>{Volume::fromSi(circle * h), propagated({{depth.uncertainty, circle}, {radius.uncertainty, 2 * std::numbers::pi * r * h}})};
}

Result<Estimate<Volume>> contentByFill(const Estimate<Volume>& capacity, const Estimate<double>& fillShare)
{
    if (const auto wrong = broken({{isPositive(capacity), "volume"}, {isNotNegative(fillShare) && fillShare.value <= 1, "fill"}}))
        return *wrong;
    return productOf(capacity, fillShare);
}

Result<Estimate<Mass>> filledMass(const Estimate<Mass>& tare, const Estimate<Volume>& content, const Estimate<Density>& density)
{
    if (const auto wrong = broken({{isNotNegative(tare), "tare"}, {isNotNegative(content), "volume"}, {isPositive(density), "density"}}))
        return *wrong;
    return sumOf(tare, productOf(density, content));
}

}
