// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/measuring/aidkit.h"
#include "core/work/measuring/machinekit.h"

#include <QString>

/** Sentences of what is measured by readings: bench aids and machines. */
namespace readingtexts {

/// "41 ± 7 kg at 5 cm above the chest", "62 kg at the chest" where no give-or-take is wanted.
[[nodiscard]] QString help(const steelyard::MeasuredPull& help, steelyard::Length aboveChest, bool withGive);
/// "at the chest", "5 cm above the chest".
[[nodiscard]] QString aboveChest(steelyard::Length height);
/// "47 ± 2 N·m"; a turning moment is said so in any unit of mass.
[[nodiscard]] QString torque(const steelyard::TorqueReading& torque);
/// "64°".
[[nodiscard]] QString angle(steelyard::Angle angle);
/// "88 ± 4 J".
[[nodiscard]] QString work(steelyard::Energy work, steelyard::Energy u);
/// How a machine is at its hardest: "up to 47 N·m at 70°, stack 40 kg".
[[nodiscard]] QString hardest(const steelyard::MachineMeasurement& measurement);

}
