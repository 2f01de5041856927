// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/measure/uncertainty.h"
#include "core/measure/units.h"
#include "core/resistance/hungstate.h"

#include <optional>

namespace steelyard {

/// A mass per metre with its standard uncertainty.
struct MeasuredDensity {
    LinearDensity value;
    LinearDensity u;
};

/// Mass per metre of short-link round steel chain from its gauge: `m' = ρ(πd²/4)[2(p−b)+π(b+d)]/p`, d the wire, p the
/// pitch, b the inner width. u = 3 % (published tables differ by −5.6…+1.7 %, DIN 766, DIN 763, EN 818-7).
/// Long-link tables give the least inner and the greatest outer width: use the middle. Measure the wire: a trade size
/// is less than the real wire. Refuses numbers that are not above 0, p < b, and d ≥ p.
[[nodiscard]] Result<MeasuredDensity> gaugedChain(Length wire, Length pitch, Length innerWidth, Density density = steelDensity);

/// Mass per metre from weighing a length of chain on a scale that reads in steps: `M/L`, `u = √(d²/12 + a²/3)/L`.
/// Refuses a mass, length or step that is not above 0, and a step above the mass.
[[nodiscard]] Result<MeasuredDensity> weighedChain(Mass mass, Length length, Mass scaleStep, Mass scaleAccuracy = Mass{});

/// A chain as a thing of the kit.
struct Chain {
    MeasuredDensity perLength;
    SourceId measurement = ownSource; ///< chains weighed together share it
    Length length;
    std::optional<Length> pitch; ///< for the step of one link
};

enum class ChainHanging { Straight, Doubled, Bunched };

/// How a chain hangs from one end of the bar.
struct ChainHang {
    ChainHanging how = ChainHanging::Straight;
    Length lead;      ///< strap between the bar and the first link
    Mass leadMass;    ///< strap and hook
    Length bunch;     ///< vertical size of the bunch; needed for Bunched only
};

/// One chain on one end of the bar: what it adds there at a height, and where that changes.
/// Straight `m'·clamp(h−s, 0, L)`, doubled `2m'·clamp(h−s, 0, L/2)`, bunched `m'L·clamp((h−s)/c, 0, 1)`, and the lead
/// `m_lead·clamp(h/s, 0, 1)`, h the bar's height, s the lead, c the bunch. The true load is a staircase of one link.
/// Source: geometry of a hanging chain. A bar at or below 0 carries nothing.
class HungChain {
public:
    /// Refuses lengths below 0, a chain without length or mass, and a bunch of no size.
    [[nodiscard]] static Result<HungChain> of(const Chain& chain, const ChainHang& hang);

    [[nodiscard]] const Chain& chain() const { return m_chain; }
    [[nodiscard]] const ChainHang& hang() const { return m_hang; }

    /// Pull, slope and effect at once, for whoever asks at many heights.
    [[nodiscard]] HungState stateAt(Height bar) const;
    [[nodiscard]] Mass massAt(Height bar) const;
    [[nodiscard]] LinearDensity massSlopeAt(Height bar) const;
    /// Exact mean between two heights, `from` below `to`.
    [[nodiscard]] Mass meanMass(Height from, Height to) const;
    /// Where the first link comes up, and where the last is off the floor and the chain swings.
    [[nodiscard]] Height firstLinkUp() const { return m_hang.lead; }
    [[nodiscard]] Height lastLinkOff() const { return m_hang.lead + m_moving; }
    /// One step of the true staircase; unknown without a pitch.
    [[nodiscard]] std::optional<Mass> linkStep() const;
    /// Effect of not knowing m' quite, on the mass at a height or on its mean, in kg.
    [[nodiscard]] Mass uncertaintyAt(Height bar) const;
    [[nodiscard]] Mass meanUncertainty(Height from, Height to) const;

private:
    HungChain(const Chain& chain, const ChainHang& hang);
    [[nodiscard]] Length lengthOffFloor(Height bar) const;
    [[nodiscard]] Mass leadMassAt(Height bar) const;
    [[nodiscard]] Length meanLengthOffFloor(Height from, Height to) const;

    Chain m_chain;
    ChainHang m_hang;
    Length m_moving;       ///< travel from the first link up to the last link off
    double m_strands = 1;  ///< metres of chain taken up for each metre of travel
};

}
