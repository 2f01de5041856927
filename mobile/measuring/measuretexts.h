// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/measuring/bandlengths.h"
#include "core/work/measuring/comparing.h"
#include "core/work/measuring/due.h"
#include "core/work/measuring/guiding.h"

#include <QString>

/** Sentences of measuring on site. */
namespace measuretexts {

/// "Since 12 Sep it pulls 3 % less at 104 cm: more than noise."
[[nodiscard]] QString drift(const steelyard::Compared& both, const steelyard::MeasurementRecord& last, std::chrono::sys_days today);
/// "It pulls 6 % less than Band B1 at 104 cm: more than the give-or-take", and whether that matters on a bar.
[[nodiscard]] QString pair(const steelyard::Compared& both, const steelyard::KitItem& other);
/// "About 16 kg, to reach 78 cm", the mass first since it is asked, and why.
[[nodiscard]] QString goFor(const steelyard::LengthAdvice& advice, const steelyard::BandMeasurement& measurement);
[[nodiscard]] QString whyThere(const steelyard::LengthAdvice& advice, const steelyard::BandMeasurement& measurement);
/// Why the give-or-take of a curve with one reading more than it needs is wide in places.
[[nodiscard]] QString oneReadingMoreThanNeeded(std::size_t readings);
[[nodiscard]] QString wayBack(const steelyard::WayBack& back);
/// "measured 12 Sep, due in 3 weeks".
[[nodiscard]] QString age(const steelyard::MeasurementRecord& last, std::chrono::sys_days today);
/// "out of use since 12 Sep: worn link", with the note.
[[nodiscard]] QString outOfUse(const steelyard::Inspection& inspection, std::chrono::sys_days today);
[[nodiscard]] QString gain(steelyard::ChainGain gain);
/// A length as it is aimed for: to the whole unit.
[[nodiscard]] QString aboutLength(steelyard::Length length);
[[nodiscard]] QString aboutMass(steelyard::Mass mass);
[[nodiscard]] QString percent(double share);

}
