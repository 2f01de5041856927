// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/measure/rounding.h"
#endif

#include <QString>

namespace say {

/// "63 ± 10", each with the places it is rounded to; the unit comes behind.
[[nodiscard]] QString withGive(const steelyard::Rounded& said);

}
