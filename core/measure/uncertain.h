// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/uncertainty.h"
#include "core/measure/units.h"

#include <cmath>
#include <concepts>

namespace steelyard {

/// A quantity with its standard uncertainty (JCGM 100:2008, 2.3.1), taken as known and not estimated from a few readings. A u of 0 is
/// a quantity that is exact, as a chosen one is. Two numbers, and so what is kept, compared and handed on; what is added up from parts
/// that may share a measurement, or has degrees of freedom, is an `Estimate`.
template <typename Q>
struct Uncertain {
    Q value;
    Q u{};

    /// Half-width of the 95 % interval, 1.959964·u.
    [[nodiscard]] Q giveOrTake() const { return coverageFactor95(knownExactly) * u; }
    /// Both numbers finite, and u not below 0.
    [[nodiscard]] bool isSound() const { return std::isfinite(value.si()) && std::isfinite(u.si()) && u.si() >= 0; }
    bool operator==(const Uncertain&) const = default;
};

/// Uncertainties that share nothing add in squares: √(a² + b² + …) (JCGM 100:2008, 5.1.2).
template <int M, int L, int T, std::same_as<Quantity<M, L, T>>... More>
[[nodiscard]] Quantity<M, L, T> inSquares(Quantity<M, L, T> first, More... more)
{
    return Quantity<M, L, T>::fromSi(std::sqrt(((first.si() * first.si()) + ... + (more.si() * more.si()))));
}

}
