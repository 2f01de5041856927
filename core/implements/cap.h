// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstdint>
#include <optional>
#include <span>

namespace steelyard {

/// Share of a lift that an implement may weigh: what it is until the coach says otherwise, and what it can be at most.
/// Common practice, no source.
inline constexpr double usualShareOfLift = 0.7, greatestShareOfLift = 1;

/// The most that an implement may weigh for one athlete: the coach's share of the lift that he names (of a tyre her deadlift).
class LoadCap {
public:
    /// Of the lowest of her estimates, each by its own lower end. Refuses no estimate, one not above 0, and a share outside 0–1.
    [[nodiscard]] static Result<LoadCap> of(std::span<const Estimate<Mass>> liftEstimates, double shareOfLift = usualShareOfLift);

    [[nodiscard]] Mass mass() const { return m_mass; }

private:
    explicit LoadCap(Mass mass) : m_mass(mass) {}

    Mass m_mass;
};

enum class CapVerdict : std::uint8_t {
    Under,       ///< mass and give-or-take together are within the cap
    MayBeOver,   ///< the mass is within it, but its give-or-take reaches over: weigh it better, or take another
    Over,
    MassUnknown, ///< nobody weighed it: it is given to nobody
    CapUnknown,  ///< she has no estimate of that lift
};

/// How a load stands against a cap; only `Under` permits it.
struct CapAnswer {
    CapVerdict verdict = CapVerdict::MassUnknown;
    std::optional<Mass> unfavourable; ///< mass + give-or-take
    std::optional<Mass> room;         ///< from there to the cap, below 0 when it is over
    [[nodiscard]] bool permits() const { return verdict == CapVerdict::Under; }
};

/// Compares at the unfavourable end, `M + give-or-take ≤ cap`. A mass or an uncertainty that is not a finite number counts as unknown.
[[nodiscard]] CapAnswer heldAgainst(const std::optional<LoadCap>& cap, const std::optional<Estimate<Mass>>& load);

}
