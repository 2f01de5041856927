// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <optional>
#include <vector>

namespace steelyard {

/// A drained tyre that lies on its side, one edge just lifted: what the scale shows, and the lever, both from the middle of the
/// tyre: to where the hook holds, and to the far side of the ring that it rests on.
struct TyreEdge {
    Estimate<Mass> shown;
    Estimate<Length> liftPoint, farContact;
};

/// Mass from one edge: `M = R(a + b)/b`, a the lift point, b the far contact. It rests on the ring of its sidewall, which is
/// narrower than the tyre, so twice the reading is too little, the unsafe side. Lifted far it reads low as well: at a tilt θ
/// by about (w/2)·tanθ/b, w the width, 1 % for 3 cm on a large tyre. Water in it is weighed too, and runs. A tyre whose mass is
/// not about its middle reads right as the mean of two opposite edges. Source: moments about the far contact.
/// Refuses a reading or a lever that is not above 0.
[[nodiscard]] Result<Estimate<Mass>> tyreMassFromEdge(const TyreEdge& edge);

/// A tyre as it is flipped: over its far lower edge, uniform, without slipping.
struct TyreSize {
    Estimate<Mass> mass;
    Estimate<Length> diameter, width;
};

/// What it takes at one angle of the flip, at rest; a moving tyre takes more at first and less later.
struct FlipPoint {
    Angle angle;
    Height edge; ///< of the near lower edge above the ground, where hands begin
    Estimate<Force> vertical, perpendicular; ///< of a lift straight up, and of a push square to the tyre's side
};

/// Force over the flip: vertical `(Mg/2)(1 − (w/D)tanθ)`, square to the side `(Mg/2)(cosθ − (w/D)sinθ)`, both at the near lower
/// edge; it stands by itself at `tanθ = D/w`, and the way there takes `Mg(√(D² + w²)/2 − w/2)`. Past that the forces are below 0:
/// it has to be held back. Exact for the uniform block; a real tyre is near it. Source: statics about the far lower edge.
class TyreFlip {
public:
    /// Refuses a mass, a diameter or a width that is not above 0.
    [[nodiscard]] static Result<TyreFlip> of(const TyreSize& size);

    [[nodiscard]] const TyreSize& size() const { return m_size; }
    [[nodiscard]] Estimate<Angle> balance() const;
    [[nodiscard]] Estimate<Energy> workToBalance() const;
    /// Nothing outside 0 to under 90°.
    [[nodiscard]] std::optional<FlipPoint> at(Angle angle) const;
    /// From flat to the balance, both ends included, in even steps of angle; fewer than 2 points are 2, more than 200 are 200.
    [[nodiscard]] std::vector<FlipPoint> curve(std::size_t points = 60) const;

private:
    explicit TyreFlip(TyreSize size) : m_size(std::move(size)) {}

    TyreSize m_size;
};

}
