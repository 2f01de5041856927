// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/plates.h"
#include "core/resistance/band.h"
#include "core/resistance/chain.h"
#include "core/season/setuprecord.h"

#include <optional>
#include <vector>

namespace steelyard {

/// The chain that a measurement makes; the refusal names the entry that is missing or wrong.
[[nodiscard]] Result<Chain> chainFrom(const ChainMeasurement& measurement, SourceId source = ownSource);

/// The points of a band that are on its fit: both numbers there, not left out, read while the load went on.
[[nodiscard]] std::vector<BandPoint> pointsOnFit(const BandMeasurement& measurement);
/// Those read while it came off again.
[[nodiscard]] std::vector<BandPoint> pointsOnTheWayBack(const BandMeasurement& measurement);

/// The fit that a band's measurement makes, by its own model or the best.
[[nodiscard]] Result<BandFit> bandFitFrom(const BandMeasurement& measurement);

/// Give-or-take of one such band's own pull at a length; a judged floor among it has no degrees of freedom to lose.
[[nodiscard]] Force bandGiveOrTake(const BandFit& fit, Length length);

/// A band's odd hanging by its index in the list, with how far off the curve through the others it lies.
[[nodiscard]] std::optional<OddPoint> oddHanging(const BandMeasurement& measurement);

/// Loads that the plates here make with this bar and these collars.
[[nodiscard]] Result<PlateLoads> loadsOf(const BarRecord& bar);

/// Standard uncertainty of bar and plates together. What one scale said is out by the same error, so that of weighed iron adds straight,
/// bar and plates; so does that of one set that nobody has weighed (2 % either way, rectangular; our choice). The two know nothing of
/// each other and add in quadrature. Where weighed and unweighed plates are alike, the unweighed count as hung first.
[[nodiscard]] Mass ironUncertainty(const BarRecord& bar, const PlateLoad& load);

/// How much of the plates that hang nobody has weighed, and whether any iron on the bar was.
struct IronKnown {
    Mass unweighed; ///< plates by a mark that is not trusted
    bool weighed = false;
};
/// By the rows of the stock, as ironUncertainty counts them.
[[nodiscard]] IronKnown ironKnown(const BarRecord& bar, const PlateLoad& load);

/// Whether iron of that thing of the kit is on the bar: the bar itself, or plates that the load hangs.
[[nodiscard]] bool isOnTheBar(const BarRecord& bar, const PlateLoad& load, const RecordId& item);

}
