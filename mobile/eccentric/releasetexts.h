// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/eccentric/release.h"
#include "mobile/eccentric/releaseshown.h"
#include "mobile/models/rows.h"

#include <QStringList>

/** What a heavier way down comes to, in words. */
namespace releasetexts {

/// "116 ± 1 kg", "75 ± 2 cm"; without a give-or-take where there is none.
[[nodiscard]] QString give(const steelyard::Uncertain<steelyard::Mass>& mass);
[[nodiscard]] QString give(const steelyard::Uncertain<steelyard::Length>& length);

/// Hooks, a partner, bands, dumbbells, in the order of their numbers.
[[nodiscard]] QStringList ways();
/// "release hooks: 70 % up, 110 % down"
[[nodiscard]] QString asked(const steelyard::ReleasePlan& plan);
/// Why something is not known, and what settles it.
[[nodiscard]] QString refusal(const steelyard::Error& error);

/// What leads the page; its state is left to whoever knows who may lift it.
[[nodiscard]] ReleaseShown shown(const steelyard::SetupRecord& setup, const steelyard::ReleaseAnswer& answer);
/// What else there is to know: safeties, reps, pulls on both ways, and published loads as context.
[[nodiscard]] std::vector<NoticeRow> facts(const steelyard::ReleasePlan& plan, const steelyard::ReleaseAnswer& answer);
[[nodiscard]] ReleaseDrawn drawn(const steelyard::BarMarks& marks, const steelyard::ReleaseAnswer& answer);

}
