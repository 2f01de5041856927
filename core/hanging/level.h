// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/setup.h"
#include "core/strength/strengthcurve.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// The part of a path where her strength is known.
struct LevelStretch {
    Height from, to;
};

/// Of less than so much of the path nothing is said (our choice).
inline constexpr double leastLevelShare = 2.0 / 3;

/// Nothing where her pulls cover less than `leastLevelShare` of the path, or there is no path.
[[nodiscard]] std::optional<LevelStretch> levelStretch(const LiftPath& path, const StrengthCurve& strength);

/// A stretch as so many heights, and what a number that is taken at each comes to on the whole: Simpson's weights, which add up to 1.
/// A corner of a chain inside it makes a variation err by 0.0002 at most.
class LevelGrid {
public:
    static constexpr std::size_t heightsCount = 33;
    /// The pull at each of the heights.
    using Along = std::array<Force, heightsCount>;

    LevelGrid(const LevelStretch& stretch, const StrengthCurve& strength);

    [[nodiscard]] Height height(std::size_t index) const { return m_from + static_cast<double>(index) / (heightsCount - 1) * (m_to - m_from); }
    /// What a height counts of the whole.
    [[nodiscard]] static double shareAt(std::size_t index) { return index == 0 || index + 1 == heightsCount ? ends : index % 2 == 1 ? 4 * ends : 2 * ends; }
    [[nodiscard]] Force strength(std::size_t index) const { return m_strength[index]; }
    /// Standard deviation of pull ÷ strength over the stretch, as a share of its mean; nothing where that mean is not above 0.
    [[nodiscard]] std::optional<double> variationRatio(const Along& pull) const;
    /// Mean of pull ÷ strength.
    [[nodiscard]] double ratio(const Along& pull) const;

private:
    static constexpr double ends = 1.0 / (3 * (heightsCount - 1));

    Height m_from, m_to;
    Along m_strength{};
};

/// How evenly a set-up asks of her what she has: 0 where it takes the same share of her strength at every height.
struct LevelReading {
    Height from, to;      ///< over which it was looked at
    double ratio = 0;     ///< mean of pull ÷ strength
    double variationRatio = 0; ///< standard deviation of that over height, as a share of its mean
    double uRatio = 0;    ///< standard uncertainty of the variation: iron, what hangs with its shared measurements, marks, her pulls
    double giveOrTakeRatio = 0;
    double degreesOfFreedom = knownExactly;
};

/// Nothing where her strength is not known far enough, a pull is not known on the stretch, or the pull is not above nothing there.
/// First order in each source of error (JCGM 100:2008, 5.1.2).
[[nodiscard]] std::optional<LevelReading> levelOf(const Setup& setup, const StrengthCurve& strength);

/// One height of the picture: pull and strength, and the share that the one is of the other; `plainRatio` is that of plain iron with
/// the same mean share.
struct LevelSample {
    Height height;
    Force pull, uPull, strength, uStrength;
    double ratio = 0, uRatio = 0, plainRatio = 0;
};

/// From the bottom up; empty where `levelOf` gives nothing, or fewer than two heights are asked for.
[[nodiscard]] std::vector<LevelSample> levelPicture(const Setup& setup, const StrengthCurve& strength, std::size_t heightsCount);

/// The same for a bar with nothing hung: what variation plain iron leaves.
[[nodiscard]] std::optional<LevelReading> levelOfPlainIron(const Setup& setup, const StrengthCurve& strength);

}
