// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/implements/maybelifted.h"

namespace steelyard {

/// For whom, where and when, and what was looked over of it.
struct HereQuestion {
    RecordId athlete, venue;
    std::chrono::sys_days day{};
    std::vector<UseLookedOver> lookedOver{};
};

/// One thing that is here: what it weighs, what she may do with it, and why not.
struct HereRow {
    RecordId item;
    std::string name;
    ItemKind kind = ItemKind::Tyre;
    ImplementMass mass;                       ///< of one; see `implementMass`
    std::optional<Estimate<Mass>> held;       ///< in her hands at once
    Permission permission = Permission::Not;  ///< that of the least strict of its uses
    std::vector<ImplementUse> uses;           ///< by the lifts it is used for, the usual one first
    std::optional<Mass> heaviestSetting;      ///< of an adjustable bell the heaviest that may be used as its lightest may, in that use
};

/// Every implement that is here on a day: at the venue now, not lent and not out of use. Those that she may use come first, then those
/// with a caution, then the others; among them by kind, by name, and by id. Refuses an
/// athlete or a venue that is not there (NotThere).
[[nodiscard]] Result<std::vector<HereRow>> whatIsHere(const SeasonBook& book, const HereQuestion& question);

}
