// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/setup.h"

#include <span>
#include <vector>

namespace steelyard::tests {

/// Invented kit from which tests hang set-ups: chains of 5.7 kg/m, and a band read with 5 to 17.5 kg on it.
[[nodiscard]] inline std::vector<BandPoint> bandPoints()
{
    std::vector<BandPoint> points;
    double kg = 5;
    for (const double length : {1.15, 1.245, 1.37, 1.525, 1.72, 1.95}) {
        points.push_back({metres(length), weight(kilograms(kg))});
        kg += 2.5;
    }
    return points;
}

/// Points that lie on a curve of the model, lengths as shares of a rest length of 1 m.
[[nodiscard]] inline std::vector<BandPoint> pointsOn(double first, double second, BandModel model, std::initializer_list<double> stretches)
{
    std::vector<BandPoint> points;
    for (const double l : stretches) {
        const double s = l - 1;
        const double pull = model == BandModel::Rubber ? first * (l - 1 / (l * l)) + second * (1 - 1 / (l * l * l)) : first * s + second * s * s;
        points.push_back({metres(l), newtons(pull)});
    }
    return points;
}

[[nodiscard]] inline Band rubberBand(std::uint64_t measurement = 0, bool twin = false, bool old = false)
{
    return {*BandFit::with(BandModel::Rubber, metres(1), bandPoints()), SourceId{measurement}, twin, old};
}

/// A straight-line band, `k(λ − 1)`, that has no error of its own.
[[nodiscard]] inline Band lineBand(double newtonsAtDouble, double rest = 1, double longest = 3)
{
    std::vector<BandPoint> points;
    for (int i = 1; i <= 6; ++i) {
        const double length = rest + (longest - rest) * i / 6;
        points.push_back({metres(length), newtons(newtonsAtDouble * (length / rest - 1))});
    }
    return {.fit = *BandFit::with(BandModel::Line, metres(rest), points)};
}

[[nodiscard]] inline HungChain hungChain(ChainHanging how, double length, double lead = 0, double kgPerMetre = 5.7, double u = 0,
    std::uint64_t measurement = 0, double leadMass = 0, double bunch = 0.2)
{
    Chain chain{{kilogramsPerMetre(kgPerMetre), kilogramsPerMetre(u)}, SourceId{measurement}, metres(length), std::nullopt};
    return *HungChain::of(chain, {how, metres(lead), kilograms(leadMass), metres(bunch)});
}

[[nodiscard]] inline HungBand hungBelow(const Band& band, double anchor = 0.05, double offset = 0)
{
    return *HungBand::of(band, {false, false, metres(anchor), metres(offset), {}});
}

[[nodiscard]] inline HungBand hungAbove(const Band& band, double anchor, double offset = 0)
{
    return *HungBand::of(band, {false, true, metres(anchor), metres(offset), {}});
}

/// An elastic bench aid: most help at the chest, none at the top.
[[nodiscard]] inline HungHelp benchAid(double chest, const PullDoubt& doubt = {}, std::uint64_t measurement = 0)
{
    const std::vector<PositionPull> points{{metres(0), newtons(300)}, {metres(0.1), newtons(180)}, {metres(0.2), newtons(80)}, {metres(0.35), newtons(0)}, {metres(1), newtons(0)}};
    return {*MeasuredPull::of(points, doubt, SourceId{measurement}), metres(chest), true};
}

/// A bar of 20 kg with 60 kg of plates on the path from 0.77 to 1.27 m, the same item on both ends.
[[nodiscard]] inline Setup onBothEnds(std::vector<HungItem> items)
{
    Setup setup;
    setup.bar = kilograms(20);
    setup.plates = kilograms(60);
    setup.left = items;
    setup.right = std::move(items);
    setup.path.bottom = metres(0.77);
    setup.path.top = metres(1.27);
    return setup;
}

/// Mean of a function between two heights by the trapezium rule on many steps: another way than the engine's.
template <typename F>
[[nodiscard]] double roughMean(const F& f, double from, double to, int steps = 20000)
{
    double sum = (f(from) + f(to)) / 2;
    for (int i = 1; i < steps; ++i)
        sum += f(from + (to - from) * i / steps);
    return sum / steps;
}

}
