// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/setuprecord.h"
#include "core/work/measuring/scalecheck.h"

#include <cstddef>

namespace steelyard {

/// The record with another bar or other collars; the plates that hang stay, so the total moves with them.
[[nodiscard]] BarRecord withBar(BarRecord record, const Entered<Mass>& bar);
[[nodiscard]] BarRecord withCollars(BarRecord record, const Entered<Mass>& collars);

/// What is marked on plates, which of weighed ones is not their mass.
[[nodiscard]] Entered<Mass> markedMass(const PlatesHere& plates);

/// Iron of the kit with what weighing it said.
struct KnownIron {
    RecordId item;
    IronMeasurement measured;
    IronCheck check;
};

/// The record with the mass of a weighed bar; the plates that hang stay.
[[nodiscard]] BarRecord withWeighedBar(BarRecord record, const KnownIron& bar);

/// The record with as many plates as were weighed, of those with their mark, as a row of their own with the scale's mass; plates that were
/// not here are added. Those of the same thing that were taken before are taken anew.
[[nodiscard]] BarRecord withWeighedPlates(BarRecord record, const KnownIron& plates);

/// Whether plates of that thing are in the stock with what they weigh.
[[nodiscard]] bool isTaken(const BarRecord& record, const RecordId& item);

/// The record with the plates of that thing by their mark again.
[[nodiscard]] BarRecord withPlatesByMark(BarRecord record, const RecordId& item);

/// The record with one pair more of plates of this mass, which is their mark. A mass that was not here takes its size from the usual plate
/// nearest in mass: only drawings and the start of a floor lift ask for it.
[[nodiscard]] BarRecord withPairMore(BarRecord record, const Entered<Mass>& plate);

/// The record with one pair more or less in a row of the stock, from none to twenty; as it was when there is no row.
[[nodiscard]] BarRecord withPairsStepped(BarRecord record, std::size_t rowIndex, bool up);

}
