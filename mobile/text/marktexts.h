// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"
#include "core/work/measuring/rackholes.h"
#include "core/work/origin.h"

#include <QString>

#include <span>

/** How bar marks came to their heights, in words. */
namespace marktexts {

/// "41.5 + 7 × 5 = 76.5 cm"; empty where the rack is not here, or was measured anew and comes to another height.
[[nodiscard]] QString sum(const steelyard::MarkOrigin& origin);
/// "hole 8 of Uprights: 41.5 + 7 × 5 = 76.5 cm"; where that is no more so, that the mark stands as it was read then.
[[nodiscard]] QString readAt(const steelyard::HoleRead& read, const steelyard::Height& height, std::span<const steelyard::KitItem> kit);
/// How the marks that a number of a set-up is asked at were read: "bottom 76.5 cm by tape; top by hole 18 of Uprights: …".
[[nodiscard]] QString read(const steelyard::BarMarks& marks, steelyard::WhichPull which, std::span<const steelyard::KitItem> kit);

}
