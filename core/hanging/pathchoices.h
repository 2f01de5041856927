// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/level.h"
#include "core/hanging/whattohang.h"

#include <array>
#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

/// What the search adds up: each way's own numbers at each target, worked out once. Inside of the search only.
namespace steelyard::choices {

inline constexpr std::size_t placesCount = 4;
inline constexpr double never = std::numeric_limits<double>::infinity();

/// Numbers of one target: a pull, its squared uncertainty, and the two slopes that bar marks make uncertain.
struct AtTarget {
    double pull = 0, u2 = 0, one = 0, other = 0;
    AtTarget& operator+=(const AtTarget& b)
    {
        pull += b.pull;
        u2 += b.u2;
        one += b.one;
        other += b.other;
        return *this;
    }
};

using Numbers = std::array<AtTarget, placesCount>;

/// The bar with one load and what stays on it, and some ways hung besides.
[[nodiscard]] Setup setupOf(const HangQuestion& question, std::size_t loadIndex, const std::vector<std::size_t>& ways);
/// By the engine itself, with its cost and whether it is within; not whether it may hang, nor how many pieces it has. Nothing where her
/// strength leaves the level open.
[[nodiscard]] std::optional<HangAnswer> answerOf(const HangQuestion& question, const Setup& setup, std::size_t loadIndex, const std::vector<std::size_t>& ways);
/// Whether a cap, a rating or the sleeve forbids it.
[[nodiscard]] bool isForbidden(const Setup& setup);
/// The mean of what is wanted, in N: what a variation of her share is a part of.
[[nodiscard]] double meanWanted(const HangQuestion& question);

/// How far off level each load would be with some ways hung: exact for the variation, and no more than what her own strength leaves open for
/// its uncertainty. What ways add to the moments is worked out once, for each two of them, so that hanging one costs a few sums.
class LevelCost {
public:
    /// `along` holds the pull of each way of the question; nothing where a way is not known on this path, and is never hung.
    LevelCost(const LiftPath& path, const StrengthCurve& strength, double wanted, const LevelGrid::Along& worn, std::vector<std::optional<LevelGrid::Along>> along);

    void hang(std::size_t way);
    void takeOff();
    /// The square of what `load` newtons of iron cost; and no more than the least of it from one load to another.
    [[nodiscard]] double square(double load) const;
    [[nodiscard]] double leastSquare(double from, double to) const;

private:
    /// Means over the stretch of 1/strength, which iron is spread by, and of what hangs ÷ strength: of themselves, squared, and of both.
    struct Moments {
        double iron = 0, iron2 = 0, hung = 0, hung2 = 0, both = 0;
        [[nodiscard]] double variation2(double load) const;
    };
    [[nodiscard]] double product(std::size_t grid, std::size_t a, std::size_t b) const { return m_products[(grid * m_count + a) * m_count + b]; }

    std::size_t m_count, m_gridsCount;
    std::vector<double> m_hung, m_both, m_products; ///< by grid and way, the last by two ways; the way behind the last is what is worn
    std::vector<std::vector<Moments>> m_moments;    ///< one more for each that hangs: as she is, and with each of her pulls by its uncertainty more
    std::vector<std::size_t> m_hanging;
    double m_wanted;
};

/// What one way adds at each target.
struct Added {
    std::size_t wayIndex = 0;
    Numbers numbers{};
};

/// Loads that give one path, and what each way adds on it.
struct OnPath {
    LiftPath path;
    std::optional<Numbers> worn; ///< what stays adds so much; not known, nothing can be answered here
    std::vector<std::size_t> loads;
    std::vector<double> iron, uIron2;            ///< of those loads, lightest first
    double leastUIron2 = never;
    std::vector<std::vector<Added>> things; ///< ways of each thing that are known
    /// Of the things from one on, with so many more of them: the least and the most that they can add at each target.
    std::vector<std::vector<std::array<double, placesCount>>> least, most;
};

/// Of the ways on a path, for a question that asks for level.
[[nodiscard]] LevelCost levelCostOf(const HangQuestion& question, const LiftPath& path);

/// Every path that a load gives, with everything that may hang on it.
[[nodiscard]] std::vector<OnPath> pathsOf(const HangQuestion& question);

/// Square of what a target's uncertain bar marks make of the pull there.
[[nodiscard]] double marks2(const LiftPath& path, TargetPlace place, const AtTarget& at);

}
