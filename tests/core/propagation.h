// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/estimate.h"

#include <cmath>
#include <functional>
#include <vector>

namespace steelyard::tests {

/// An input of a formula in SI, with its standard uncertainty.
struct Given {
    double value, u;
};

/// What a formula's result is uncertain by, with derivatives taken by small steps, so that it shares no line with the engine's.
/// Inputs are independent.
[[nodiscard]] inline double numericU(const std::function<double(const std::vector<double>&)>& formula, const std::vector<Given>& inputs)
{
    std::vector<double> at;
    for (const Given& input : inputs)
        at.push_back(input.value);
    double squares = 0;
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        const double step = 1e-5 * std::max(1e-3, std::abs(inputs[i].value));
        auto above = at, below = at;
        above[i] += step;
        below[i] -= step;
        squares += std::pow((formula(above) - formula(below)) / (2 * step) * inputs[i].u, 2);
    }
    return std::sqrt(squares);
}

/// The input as the engine takes it.
template <typename Q>
[[nodiscard]] Estimate<Q> as(const Given& input)
{
    return within(Si<Q>::from(input.value), Si<Q>::from(input.u));
}

}
