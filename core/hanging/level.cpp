// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/level.h"

#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

using Along = LevelGrid::Along;

Effect own(double amount, double degreesOfFreedom = knownExactly) { return {ownSource, {amount}, degreesOfFreedom}; }

Along pullAlong(const LevelGrid& grid, const PullSum& sum)
{
    Along pull{};
    for (std::size_t i = 0; i < LevelGrid::heightsCount; ++i)
        pull[i] = sum.total(grid.height(i));
    return pull;
}

/// What one source of error makes of the variation.
class Moved {
public:
    Moved(const LevelGrid& grid, const Along& pull, double variation) : m_grid(grid), m_pull(pull), m_variation(variation) {}

    template <typename More>
    [[nodiscard]] double by(const More& more) const
    {
        Along other = m_pull;
        for (std::size_t i = 0; i < LevelGrid::heightsCount; ++i)
            other[i] += newtons(more(m_grid.height(i)));
        const auto then = m_grid.variationRatio(other);
        return then ? *then - m_variation : 0;
    }

private:
    const LevelGrid& m_grid;
    const Along& m_pull;
    double m_variation;
};

void addItem(Uncertainty& u, const Moved& moved, const HungItem& item)
{
    Effect effect = hung::effect(item, Height{});
    for (std::size_t c = 0; c < Effect::components; ++c)
        effect.amount[c] = moved.by([&](Height h) { return hung::effect(item, h).amount[c]; });
    u.add(effect);
    u.add(own(moved.by([&](Height h) { return hung::stateAt(item, h).own.si(); })));
}

/// Her pulls are independent of each other; how far they spread is one number for all of them.
void addStrength(Uncertainty& u, const StrengthCurve& strength, const LevelStretch& stretch, const Along& pull, double variation)
{
    double squares = 0;
    for (std::size_t i = 0; i < strength.points().size(); ++i) {
        const auto then = LevelGrid(stretch, strength.withMore(i, strength.points()[i].u)).variationRatio(pull);
        const double moved = then ? *then - variation : 0;
        squares += moved * moved;
    }
    constexpr int enoughRepeats = 3;
    u.add(own(std::sqrt(squares), strength.repeatsCount() >= enoughRepeats ? strength.repeatsCount() : knownExactly));
}

/// The ends of the stretch that a bar mark says.
void addMarks(Uncertainty& u, const LiftPath& path, const StrengthCurve& strength, const LevelStretch& stretch, const PullSum& sum, double variation)
{
    const auto moved = [&](const LevelStretch& other) {
        const LevelGrid grid(other, strength);
        const auto then = grid.variationRatio(pullAlong(grid, sum));
        return then ? *then - variation : 0;
    };
    if (stretch.from == path.bottom)
        u.add(own(moved({stretch.from + path.uMark, stretch.to})));
    if (stretch.to == path.top)
        u.add(own(moved({stretch.from, stretch.to - path.uMark})));
}

bool isKnown(const Setup& setup, const PullSum& sum, const LevelStretch& stretch)
{
    return sum.knowsAll(setup.path.bottom, setup.path.top) && stretch.from + 2 * setup.path.uMark < stretch.to;
}

Setup plainIron(const Setup& setup)
{
    Setup plain = setup;
    plain.left.clear();
    plain.right.clear();
    return plain;
}

}

std::optional<LevelStretch> levelStretch(const LiftPath& path, const StrengthCurve& strength)
{
    const LevelStretch stretch{std::max(path.bottom, strength.lowest()), std::min(path.top, strength.highest())};
    const Length travel = path.top - path.bottom;
    if (!(travel > Length{}) || stretch.to - stretch.from < leastLevelShare * travel)
        return std::nullopt;
    return stretch;
}

LevelGrid::LevelGrid(const LevelStretch& stretch, const StrengthCurve& strength) : m_from(stretch.from), m_to(stretch.to)
{
    for (std::size_t i = 0; i < heightsCount; ++i) {
        // a rounding past the last of her heights is that height
        const Height h = std::clamp(height(i), strength.lowest(), strength.highest());
        m_strength[i] = *strength.at(h);
    }
}

double LevelGrid::ratio(const Along& pull) const
{
    double mean = 0;
    for (std::size_t i = 0; i < heightsCount; ++i)
        mean += shareAt(i) * (pull[i] / m_strength[i]);
    return mean;
}

std::optional<double> LevelGrid::variationRatio(const Along& pull) const
{
    const double mean = ratio(pull);
    if (!(mean > 0))
        return std::nullopt;
    double squares = 0;
    for (std::size_t i = 0; i < heightsCount; ++i) {
        const double off = pull[i] / m_strength[i] - mean;
        squares += shareAt(i) * off * off;
    }
    return std::sqrt(squares) / mean;
}

std::optional<LevelReading> levelOf(const Setup& setup, const StrengthCurve& strength)
{
    const auto stretch = levelStretch(setup.path, strength);
    const PullSum sum(setup);
    if (!stretch || !isKnown(setup, sum, *stretch))
        return std::nullopt;
    const LevelGrid grid(*stretch, strength);
    const Along pull = pullAlong(grid, sum);
    const auto variation = grid.variationRatio(pull);
    if (!variation)
        return std::nullopt;
    const Moved moved(grid, pull, *variation);
    Uncertainty u;
    u.add(own(moved.by([&](Height) { return weight(setup.uIron).si(); })));
    for (const auto* side : {&setup.left, &setup.right})
        for (const HungItem& item : *side)
            addItem(u, moved, item);
    addStrength(u, strength, *stretch, pull, *variation);
    addMarks(u, setup.path, strength, *stretch, sum, *variation);
    return LevelReading{stretch->from, stretch->to, grid.ratio(pull), *variation, u.standard(), u.giveOrTake(), u.degreesOfFreedom()};
}

std::optional<LevelReading> levelOfPlainIron(const Setup& setup, const StrengthCurve& strength) { return levelOf(plainIron(setup), strength); }

std::vector<LevelSample> levelPicture(const Setup& setup, const StrengthCurve& strength, std::size_t heightsCount)
{
    const auto level = levelOf(setup, strength);
    const auto plain = levelOfPlainIron(setup, strength);
    if (!level || !plain || heightsCount < 2)
        return {};
    const PullSum sum(setup);
    const Setup iron = plainIron(setup);
    const PullSum ironSum(iron);
    std::vector<LevelSample> samples;
    for (std::size_t i = 0; i < heightsCount; ++i) {
        LevelSample sample;
        sample.height = std::min(level->from + static_cast<double>(i) / static_cast<double>(heightsCount - 1) * (level->to - level->from), level->to);
        const Reading reading = sum.at(sample.height);
        sample.pull = reading.value;
        sample.uPull = reading.u;
        sample.strength = *strength.at(sample.height);
        sample.uStrength = *strength.uAt(sample.height);
        sample.ratio = sample.pull / sample.strength;
        sample.uRatio = std::hypot(sample.uPull / sample.strength, sample.ratio * (sample.uStrength / sample.strength));
        sample.plainRatio = ironSum.total(sample.height) / sample.strength * (level->ratio / plain->ratio);
        samples.push_back(sample);
    }
    return samples;
}

}
