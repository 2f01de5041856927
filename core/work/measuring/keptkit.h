// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/barchanges.h"
#include "core/work/measuring/rackholes.h"
#include "core/work/measuring/scalecheck.h"

#include <span>

namespace steelyard {

/// A thing of the kit that helps to measure or to hang, with what it comes to.
template <typename Measurement, typename Check>
struct Kept {
    RecordId item;
    std::string name;
    Measurement measured;
    Check check;
};
using KeptScale = Kept<ScaleMeasurement, ScaleCheck>;
using KeptRack = Kept<RackMeasurement, RackHeights>;

/// A strap with a length that is above 0; one whose mass nobody knows weighs nothing to speak of.
struct KeptLead {
    RecordId item;
    std::string name;
    Entered<Length> length;
    Entered<Mass> mass;
};

/// Those of the kit that are measured and not out of use, in the kit's order.
[[nodiscard]] std::vector<KeptScale> scalesIn(std::span<const KitItem> kit);
[[nodiscard]] std::vector<KeptRack> racksIn(std::span<const KitItem> kit);
[[nodiscard]] std::vector<KeptLead> leadsIn(std::span<const KitItem> kit);
[[nodiscard]] std::vector<KnownIron> ironIn(std::span<const KitItem> kit, IronSort sort);

/// What a lead's measurement says, its length and mass; refuses a missing or impossible length and a mass below 0.
[[nodiscard]] Result<KeptLead> checked(const LeadMeasurement& lead);

}
