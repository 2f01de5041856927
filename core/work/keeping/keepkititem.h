// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// Keeps a thing of the kit as it stands in a form; without an id a new one is added. A measurement that differs from the last one
/// is added as a new one of today; the earlier ones stay.
void keepKitItem(SeasonKeeping& keeping, KitItem item, const WhenTold& told);

/// Keeps that a thing was looked over today: a fault takes it out of use, none puts it back. What was found before stays on record.
void keepInspection(SeasonKeeping& keeping, const RecordId& item, const std::optional<KitFault>& fault, const std::string& note, const WhenTold& told);

}
