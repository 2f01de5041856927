// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/strictobject.h"
#include "core/season/kit.h"
#include "core/season/marks.h"
#include "core/season/setuprecord.h"

#include <functional>

namespace steelyard::sample {

/// The parts that the files of the sample season are made of; what is not there was not entered. First the heights of the bar's
/// centre line; keys that are not about them are left for others to ask for.
[[nodiscard]] BarMarks marksFrom(StrictObject& from);
/// One kind of thing stands in `from`.
[[nodiscard]] Measured measuredFrom(StrictObject& from);
/// Bar, collars and plates; without a stock the usual pairs are here. `withLoad` says whether the load wanted stands there as well.
[[nodiscard]] BarRecord barFrom(StrictObject from, bool withLoad = true);

/// A thing of the kit by its name; nothing where there is none.
using ItemNamed = std::function<const KitItem*(const std::string&)>;
/// What hangs; a name that is not in the kit is a fault, and so is a thing that hangs as what it is not.
[[nodiscard]] std::vector<HungRecord> hungFrom(std::vector<StrictObject> list, const ItemNamed& named);

}
