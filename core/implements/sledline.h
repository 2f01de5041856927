// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/leastsquares.h"
#include "core/measure/result.h"

#include <span>
#include <utility>
#include <vector>

namespace steelyard {

/// Standard uncertainty of a time taken by hand with a stopwatch; this project's choice.
inline constexpr Seconds stopwatchU{0.1};

/// One run with a sled: its total mass, sled included, and the speed over the timed stretch.
struct SledRun {
    Estimate<Mass> total;
    Estimate<Speed> speed;
};

/// Speed of a timed run, distance over time, u of both. Refuses a distance, a time or a mass that is not above 0.
[[nodiscard]] Result<SledRun> timedRun(const Estimate<Mass>& total, const Estimate<Length>& distance, const Estimate<Seconds>& time);

/// One athlete's speed by load on one surface: `v = v₀ + sM` by least squares over her own runs, never a line of others. A speed loss is a
/// share of the fitted v₀, so the load that costs it is `−share·v₀/s`. u is that of the fit (n − 2 degrees of freedom) beside what the
/// stopwatch, the lane and the masses bring through the fit; chance errors of the watch are in the scatter too and so counted on the safe
/// side. The line is an approximation that holds where it was run.
class LoadSpeedLine {
public:
    /// Refuses fewer than three runs, masses or speeds not above 0, runs that all have one mass, and a line that does not fall.
    [[nodiscard]] static Result<LoadSpeedLine> of(std::span<const SledRun> runs);

    /// The fitted speed without a sled.
    [[nodiscard]] Estimate<Speed> freeSpeed() const;
    [[nodiscard]] Estimate<Speed> speedAt(Mass total) const;
    /// Total mass for a speed loss as a share of the free speed. Refuses a share outside 0–1.
    [[nodiscard]] Result<Estimate<Mass>> loadFor(double speedLossShare) const;
    /// Whether a total lies between the lightest and the heaviest run; past them it is guessed.
    [[nodiscard]] bool covers(Mass total) const { return total >= m_lightest && total <= m_heaviest; }
    /// Whether the slope is below 0 by more than its own give-or-take; if not, a load from it says little.
    [[nodiscard]] bool fallsClearly() const;

private:
    explicit LoadSpeedLine(PolynomialFit line) : m_line(std::move(line)) {}
    [[nodiscard]] double free() const { return m_line.fit().coefficients[0]; }
    [[nodiscard]] double slope() const { return m_line.fit().coefficients[1]; }
    /// Of anything that changes by these with v₀ and with s.
    [[nodiscard]] Uncertainty uncertaintyFor(double byFree, double bySlope) const;

    PolynomialFit m_line;
    std::vector<SledRun> m_runs;
    Mass m_lightest, m_heaviest;
};

}
