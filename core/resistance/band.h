// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/bandfit.h"
#include "core/resistance/hungstate.h"

#include <optional>

namespace steelyard {

/// A band as a thing of the kit: a fit, and whether it was made on this band.
struct Band {
    BandFit fit;
    SourceId measurement = ownSource; ///< bands that use one measurement share its error
    bool twin = false;                ///< the fit is its twin's: adds 3 % on the rest length
    bool old = false;                 ///< measured longer ago than the coach's own limit: u × 1.5
};

/// How a band hangs from one end of the bar. `offset` is how far the anchor stands in front of (+) or behind (−) the bar.
struct BandHang {
    bool doubled = false;   ///< over the anchor or handle, both ends on the bar
    bool above = false;     ///< anchored above the bar: it helps, and slackens towards the top
    Height anchorHeight;
    Length offset;
    Length wrap;            ///< half the circumference of what a doubled band goes round
};

/// One band on one end of the bar. Down counts positive: a band anchored above gives negative pulls.
/// Single `T(ℓ)`, doubled `2T(2ℓ + wrap)`; vertical share z/ℓ, ℓ = √(z² + x²), z the height over the anchor, x the offset.
/// Since dℓ = (z/ℓ)dh, the vertical pull's integral over height is the band's work, so means are exact.
class HungBand {
public:
    /// Refuses numbers that are not finite, a wrap below 0, an anchor below the floor.
    [[nodiscard]] static Result<HungBand> of(const Band& band, const BandHang& hang);

    [[nodiscard]] const Band& band() const { return m_band; }
    [[nodiscard]] const BandHang& hang() const { return m_hang; }

    /// Length of the whole band with the bar there (both strands and the wrap when doubled).
    [[nodiscard]] Length bandLength(Height bar) const;
    [[nodiscard]] bool knows(Height bar) const { return m_band.fit.knows(bandLength(bar)); }
    /// Everything below at once, for whoever asks at many heights.
    [[nodiscard]] HungState stateAt(Height bar) const;
    /// Vertical pull on the bar, also past what is known: ask `knows` first.
    [[nodiscard]] Force verticalPull(Height bar) const;
    [[nodiscard]] Stiffness verticalSlope(Height bar) const;
    /// Pull along the floor, with the sign of the offset.
    [[nodiscard]] Force pullAlongFloor(Height bar) const;
    /// Exact mean of the vertical pull between two heights.
    [[nodiscard]] Force meanPull(Height from, Height to) const;

    /// Heights at which the band comes taut or goes slack, and at which its measurement ends; empty when never.
    [[nodiscard]] std::optional<Length> reachAtRest() const;
    [[nodiscard]] std::optional<Length> reachKnown() const;

    /// Effect of the measurement on the vertical pull at a height (N), and on its mean.
    [[nodiscard]] Effect effectAt(Height bar) const;
    [[nodiscard]] Effect meanEffect(Height from, Height to) const;
    /// Standard uncertainty from standing in for its twin; independent for each band; 0 when measured itself.
    [[nodiscard]] Force twinUncertaintyAt(Height bar) const;
    [[nodiscard]] Force meanTwinUncertainty(Height from, Height to) const;

private:
    HungBand(const Band& band, const BandHang& hang) : m_band(band), m_hang(hang) {}
    [[nodiscard]] Length span(Height bar) const;
    [[nodiscard]] double strands() const { return m_hang.doubled ? 2 : 1; }
    [[nodiscard]] double ageFactor() const { return m_band.old ? 1.5 : 1; }
    /// Two fitted components with the floor under them.
    [[nodiscard]] std::array<Force, Effect::components> finished(Force first, Force second, Force pull) const;
    [[nodiscard]] Effect effectOf(const std::array<Force, Effect::components>& effect) const;
    /// Vertical distance from the anchor at which the band has this whole length.
    [[nodiscard]] std::optional<Length> reach(Length whole) const;

    Band m_band;
    BandHang m_hang;
};

}
