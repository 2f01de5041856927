// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/resistance/band.h"
#include "core/hanging/plates.h"
#include "core/resistance/chain.h"
#include "tests/probe/functions.h"

#include <optional>
#include <vector>

namespace steelyard::probe {

/// The engine's refusal in words, with the key that it is about; `points` is what its points are called in the line.
[[nodiscard]] Refused refusal(const Error& error, const std::string& points);

/// The value, or the engine's refusal.
template <typename T>
[[nodiscard]] T accepted(Result<T> result, const std::string& points = "points")
{
    if (!result)
        throw refusal(result.error(), points);
    return std::move(*result);
}

/// What is unknown is null.
[[nodiscard]] Out orNull(const std::optional<double>& value);

/// kg_per_m length_m hang lead_m bunch_m lead_kg; the uncertainty and its source are the set-up's to add.
[[nodiscard]] HungChain chainFrom(Fields& in, Mass uPerMetre = {}, SourceId measurement = ownSource);

/// stock {"25": 4, …}: single plates by their kilograms, without size
[[nodiscard]] std::vector<PlateStock> stockFrom(Fields& in);

/// rest_m points model
[[nodiscard]] BandFit fitFrom(Fields& in);

/// hang anchor anchor_height_m offset_m wrap_m; `lowest` and `highest` are where the bar comes, and the anchor must stand
/// on the side that is said.
[[nodiscard]] BandHang bandHangFrom(Fields& in, Height lowest, Height highest);

}
