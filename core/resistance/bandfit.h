// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/measure/units.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace steelyard {

/// One reading of a band: its length between the hooks, and what pulled it there.
struct BandPoint {
    Length length;
    Force pull;
    bool operator==(const BandPoint&) const = default;
};

/// The curve laid through a band's points. All pass through zero at rest; λ = length/rest.
enum class BandModel : std::uint8_t {
    Line,      ///< k(λ−1)
    Quadratic, ///< c₁(λ−1)+c₂(λ−1)²; second order fits loop bands best (McMaster, Cronin & McGuigan 2010)
    Rubber,    ///< a(λ−λ⁻²)+b(1−λ⁻³) (Mooney 1940, Rivlin 1948)
};

/// What a fit says of one length: pull, slope, and the independent effects of its coefficients' uncertainty on the pull.
struct BandPull {
    Force pull;
    Stiffness slope;
    std::array<Force, 2> effects{};
};

/// What a band pulls at a length, as measured: never beyond the longest length measured + 5 %, zero at and below rest.
class BandFit {
public:
    /// Least squares on the points. Refuses a rest length that is not above 0, points at or below rest, pulls below 0,
    /// and fewer points than coefficients.
    [[nodiscard]] static Result<BandFit> with(BandModel model, Length rest, std::span<const BandPoint> points);

    /// The model with the least AICc (K = coefficients + 1; no residual ranks best; ties take fewer coefficients) among
    /// those that rise from the shortest to the longest measured length; with fewer than 5 points, rubber.
    /// Source of AICc: Hurvich & Tsai, Biometrika 76:297–307, 1989. Refuses as `with`, and when no model rises.
    [[nodiscard]] static Result<BandFit> best(Length rest, std::span<const BandPoint> points);

    [[nodiscard]] BandModel model() const { return m_model; }
    [[nodiscard]] Length rest() const { return m_rest; }
    [[nodiscard]] Length longestMeasured() const { return m_longest; }
    /// The pull is known up to here: longest measured + 5 %.
    [[nodiscard]] Length knownUpTo() const { return 1.05 * m_longest; }
    [[nodiscard]] std::span<const Force> coefficients() const { return {m_coefficients.data(), m_count}; }
    [[nodiscard]] std::optional<Force> residualSd() const { return m_residualSd; }
    [[nodiscard]] std::size_t points() const { return m_points; }
    [[nodiscard]] std::size_t degreesOfFreedom() const { return m_points - m_count; }
    /// Unknown when the correction's divisor is not above 0, or there is no residual.
    [[nodiscard]] std::optional<double> aiccScore() const { return m_aicc; }
    /// Rises (or stays) from the shortest to the longest measured length.
    [[nodiscard]] bool rises() const { return m_rises; }
    [[nodiscard]] bool knows(Length length) const;

    /// The fitted curve, also past what is known: ask `knows` first. Zero at and below rest.
    [[nodiscard]] Force pull(Length length) const;
    [[nodiscard]] Stiffness slope(Length length) const;
    /// Pull, slope and effects in one go, for whoever asks at many lengths.
    [[nodiscard]] BandPull at(Length length) const;
    /// Work to stretch from rest to a length, exact.
    [[nodiscard]] Energy work(Length length) const;
    /// Independent effects of the coefficients' uncertainty: on the pull at a length (N), on the work to it (J).
    [[nodiscard]] std::array<Force, 2> pullEffects(Length length) const;
    [[nodiscard]] std::array<Energy, 2> workEffects(Length length) const;
    /// Share of the pull below which u is not believed: 5 % when n < coefficients + 3, else 0 (our choice).
    [[nodiscard]] double leastShareOfPull() const { return m_points < m_count + 3 ? 0.05 : 0; }
    /// Standard uncertainty of the pull of one band measured itself.
    [[nodiscard]] Force uncertainty(Length length) const;

private:
    using Pair = std::array<double, 2>;
    [[nodiscard]] Pair basisIntegral(double stretch) const;
    [[nodiscard]] Pair effects(const Pair& gradient) const;
    [[nodiscard]] double combine(const Pair& terms) const;

    BandModel m_model = BandModel::Line;
    Length m_rest, m_shortest, m_longest;
    std::array<Force, 2> m_coefficients{};
    std::size_t m_count = 0, m_points = 0;
    std::array<double, 3> m_root{}; ///< lower Cholesky root of the covariance: l11, l21, l22
    std::optional<Force> m_residualSd;
    std::optional<double> m_aicc;
    bool m_rises = false, m_exact = false;
};

/// A point that does not belong: each is held against the curve through the others (the deleted residual), and the
/// furthest tested with Bonferroni's correction at 5 % (Cook & Weisberg, Residuals and Influence in Regression, 1982, 2.2).
struct OddPoint {
    std::size_t index = 0;
    Force off; ///< reading minus the curve through the other points
};

/// Looks for one odd point by the given model, or by whichever lies closest to the others; none when fewer than
/// coefficients + 3 points, when none stands out, or when a centimetre on the tape would explain it.
[[nodiscard]] std::optional<OddPoint> oddPoint(std::optional<BandModel> model, Length rest, std::span<const BandPoint> points);

}
