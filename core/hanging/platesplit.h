// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/plates.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// Masses of plates as whole tenths of a microgram, so that sums are exact: a quarter pound is 1,133,980,925 of them.
using PlateUnits = std::int64_t;
[[nodiscard]] PlateUnits unitsOf(Mass mass);
[[nodiscard]] Mass massOf(PlateUnits units);
/// No plate and no load is heavier, so that no sum overflows.
inline constexpr Mass heaviestPlate = kilograms(200), heaviestLoad = kilograms(100'000);

/// Room for plates on one sleeve and on one hook.
struct SplitRoom {
    std::optional<Length> sleeve, hook;
};

/// Some of a stock on one side of the bar, some on one hook, heaviest first; the other side and the other hook have the same.
struct PlateSplit {
    PlateUnits side = 0, hook = 0;
    std::vector<PlateType> onSide, onHook;
};

class PlateHalves;

/// All that can hang on a hook beside one load of the bar's side.
class HooksBeside {
public:
    /// The hook nearest to half of `twice`, from the least to the most that it may be; then fewest plates, then the lighter hook, then the
    /// taller plates on the bar. Nothing where none lies between.
    [[nodiscard]] std::optional<PlateSplit> nearest(PlateUnits twice, PlateUnits least, PlateUnits most) const;

private:
    friend class PlateHalves;

    /// What some of the types make, the last of them with so many on side and hook.
    struct State {
        PlateUnits side = 0, hook = 0, sideThick = 0, hookThick = 0, tall = 0;
        int count = 0;
        std::uint32_t beforeIndex = 0; ///< among the states without the last type
        std::uint16_t sidePairs = 0, hookPairs = 0;
    };
    using Levels = std::vector<std::vector<State>>; ///< after no type, after the first, …

    HooksBeside(const PlateHalves& plates, PlateUnits side) : m_plates(plates), m_side(side) {}
    void collect(PlateSplit& split, std::size_t halfIndex, std::size_t state) const;

    const PlateHalves& m_plates;
    PlateUnits m_side;
    std::array<Levels, 2> m_halves; ///< the last level in the order of side, then hook
};

/// A stock of plates in pairs, its types in two halves. Whatever sums it makes are joined from the sums of the halves, of which there are
/// few: of plates of no two alike masses 2^(n/2) for 2^n. Plates and counts are taken as they are, already looked at.
class PlateHalves {
public:
    PlateHalves(std::span<const PlateStock> stock, const SplitRoom& room);

    [[nodiscard]] PlateUnits heaviest() const;
    /// Loads of one side of the bar whose double is nearest to what is wanted on both: one, or two that lie as far below and above, the
    /// lighter first. Refuses too many sums.
    [[nodiscard]] Result<std::vector<PlateUnits>> nearestSides(PlateUnits wantedOnBoth) const;
    /// What can hang on a hook, up to a most, with one load on the side, of all ways to load it so. Refuses too many sums.
    [[nodiscard]] Result<HooksBeside> hooksBeside(PlateUnits side, PlateUnits most) const;

private:
    friend class HooksBeside;
    using State = HooksBeside::State;
    using Levels = HooksBeside::Levels;

    struct Pairs {
        PlateType type;
        PlateUnits mass = 0, thick = 0, tall = 0;
        int count = 0;
    };
    /// A load of one side and the thinnest way to make it.
    struct Sum {
        PlateUnits mass = 0, thick = 0;
    };
    using Half = std::vector<Pairs>;

    [[nodiscard]] std::optional<std::vector<Sum>> sumsOf(const Half& half) const;
    [[nodiscard]] std::optional<Levels> levelsOf(const Half& half, const std::vector<PlateUnits>& sides, PlateUnits most) const;
    [[nodiscard]] std::vector<State> bestOf(std::vector<State> states) const;
    [[nodiscard]] bool hasRoom(PlateUnits sideThick, PlateUnits hookThick) const;

    std::array<Half, 2> m_halves; ///< heavier types first
    std::optional<PlateUnits> m_sleeve, m_hookRoom;
};

}
