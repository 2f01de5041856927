// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/resistance/constant.h"

#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// How many single plates of a type are here.
struct PlateStock {
    PlateType type;
    int count = 0;
};

/// One load the kit can make: the same plates on both sides, each side from the inside out (heaviest first).
struct PlateLoad {
    Mass total;                      ///< bar, collars and the plates of both sides
    std::vector<PlateType> eachSide;

    [[nodiscard]] Mass plates() const;        ///< of both sides
    [[nodiscard]] Length thickness() const;   ///< of one side
    [[nodiscard]] Length largestDiameter() const;
};

/// Whether two come to the same; sums that are added up in another order differ by less than a milligram.
[[nodiscard]] bool isSameTotal(const PlateLoad& a, const PlateLoad& b);

/// Every load that a stock of plates can make on a bar, both sides alike. Single plates left over from a pair are not
/// hung. Of several ways to make a load it keeps the one with the fewest plates, then with the taller ones.
class PlateLoads {
public:
    /// `base` is the bar with its collars. Refuses plates without mass, counts below 0, a base below 0, and a stock
    /// that makes more loads than can be worked through (100,000). `sleeve`, when given, leaves out what does not fit.
    [[nodiscard]] static Result<PlateLoads> of(std::span<const PlateStock> stock, Mass base, std::optional<Length> sleeve = std::nullopt);

    /// All loads, lightest (the bare bar) first.
    [[nodiscard]] const std::vector<PlateLoad>& all() const { return m_loads; }
    /// Nearest to a target; on a tie the lighter.
    [[nodiscard]] const PlateLoad& nearest(Mass target) const;
    /// Heaviest load not above the target, lightest not below it; none when the kit has none.
    [[nodiscard]] const PlateLoad* atOrBelow(Mass target) const;
    [[nodiscard]] const PlateLoad* atOrAbove(Mass target) const;
    /// The next load up or down from one that hangs: the step that the kit really makes.
    [[nodiscard]] const PlateLoad* nextBelow(Mass load) const;
    [[nodiscard]] const PlateLoad* nextAbove(Mass load) const;

private:
    std::vector<PlateLoad> m_loads;
};

/// What changes on each side between two loads.
struct PlateChange {
    std::vector<PlateType> takeOff, putOn;
    [[nodiscard]] bool nothing() const { return takeOff.empty() && putOn.empty(); }
};

/// What to take off and what to put on, each in the order in which it hangs; a plate that stays is in neither.
[[nodiscard]] PlateChange changeBetween(const PlateLoad& from, const PlateLoad& to);

}
