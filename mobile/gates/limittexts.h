// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/limits.h"

#include <QString>

/** The coach's own limits, in words. */
namespace limittexts {

/// "Tyre: share of the deadlift".
[[nodiscard]] QString name(steelyard::LimitKind kind);
/// What it is held against, and how.
[[nodiscard]] QString meaning(steelyard::LimitKind kind);
/// "70 %", "182 days", "1.5 times", "18 years".
[[nodiscard]] QString value(steelyard::LimitKind kind, int count);

}
