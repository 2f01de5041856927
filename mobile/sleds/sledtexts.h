// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/implements/sledwork.h"
#endif

#include <QString>

/** How a sled slides and how fast somebody runs with it, in words. */
namespace sledtexts {

/// "friction 0.45 ± 0.03, with 25 to 65 kg in all"
[[nodiscard]] QString friction(const steelyard::SurfaceFriction& friction);
/// "148 ± 9 N, as much as 15.1 kg weigh"
[[nodiscard]] QString pull(const steelyard::Estimate<steelyard::Force>& pull);
/// "5.2 ± 0.2 m/s"
[[nodiscard]] QString speed(const steelyard::Estimate<steelyard::Speed>& speed);
/// Of a timed run, whatever lay on the sled.
[[nodiscard]] QString speed(const steelyard::SledRunTimed& run);
/// "75 ± 21 kg"
[[nodiscard]] QString mass(const steelyard::Estimate<steelyard::Mass>& mass);
/// Why there is no answer, and what settles it.
[[nodiscard]] QString refusal(const steelyard::Error& error);

}
