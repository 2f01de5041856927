// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/measuring/keptkit.h"

#include <QString>

/** Sentences about what helps to measure and to hang: scales, weighed iron, straps, racks. */
namespace tooltexts {

/// "20.30 ± 0.06 kg".
[[nodiscard]] QString give(steelyard::Mass mass, steelyard::Mass u);
/// The same without the unit.
[[nodiscard]] QString giveNumber(steelyard::Mass mass, steelyard::Mass u);

/// What the step of a scale is: "the least it shows: 0.1, or 0.05", and as a sentence.
[[nodiscard]] QString stepHint();
[[nodiscard]] QString stepAsked();

/// "Good: within 0.1 kg up to 20 kg".
[[nodiscard]] QString scale(const steelyard::ScaleCheck& check);
/// How to read it, and how far it counts: its zero, its accuracy.
[[nodiscard]] QString howToRead(const steelyard::ScaleCheck& check);
/// That a mass is more than it was checked with; empty where it is not.
[[nodiscard]] QString beyond(const steelyard::ScaleCheck& check, steelyard::Mass read);

/// "Each weighs 20.30 ± 0.06 kg".
[[nodiscard]] QString iron(const steelyard::IronMeasurement& measured, const steelyard::IronCheck& check);
/// "0.3 kg more than its mark, by 1.5 %: more than the scale can be wrong."
[[nodiscard]] QString offMark(const steelyard::IronCheck& check, bool scaleChecked);

[[nodiscard]] QString lead(const steelyard::KeptLead& lead);
/// "28 holes, 41.5 to 176.5 cm · bands at 6 and 214 cm".
[[nodiscard]] QString rack(const steelyard::RackHeights& rack);

/// What a thing that is not hung comes to, in a line of a list; empty for chains, bands and what else is hung or pulled.
[[nodiscard]] QString comesTo(const steelyard::Measured& measured);
/// What was read on it, for the list of its measurements.
[[nodiscard]] QString said(const steelyard::Measured& measured);

}
