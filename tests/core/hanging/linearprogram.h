// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/whattohang.h"

#include <optional>

/// The same question put to a general solver of mixed-integer linear programs (GLPK), which knows nothing of ours.
namespace linearprogram {

/// Least Σ(miss² + u²) in kg², by whole-numbered choices of a load and of ways; the squares come from below by tangents, which are added
/// where the last answer lay until the answer lies on them. Asked for one path, without limits and without an uncertainty of the marks,
/// so that all else is linear. Nothing where the solver does not finish in time.
[[nodiscard]] std::optional<double> leastSquares(const steelyard::HangQuestion& question);

}
