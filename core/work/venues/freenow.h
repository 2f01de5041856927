// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/setuprecord.h"

#include <chrono>
#include <optional>

namespace steelyard {

/// How many pieces of a thing there are, and how many of them hang on a set-up.
struct Pieces {
    int allCount = 0;
    int hangingCount = 0; ///< more than there are where a set-up was kept before one of the pair went
    [[nodiscard]] int freeCount() const { return hangingCount < allCount ? allCount - hangingCount : 0; }
    bool operator==(const Pieces&) const = default;
};
/// A pair is two; what hangs on both sides hangs twice.
[[nodiscard]] Pieces piecesOf(const KitItem& item, const SetupRecord& setup);

/// Where a thing would hang next: on both sides where two are free, on the side that has none where one of a pair is, on the left where
/// there is only one. Nothing where none is free, it is lent, out of use or not measured yet, or it does not go on a bar.
[[nodiscard]] std::optional<HungOn> sidesFree(const KitItem& item, const SetupRecord& setup);

/// Whether it can be taken along to another venue: not what somebody else has.
[[nodiscard]] inline bool mayBeTakenAlong(const KitItem& item) { return !item.lent; }

enum class BackState : std::uint8_t { NoDay, Later, Soon, Past };

/// Whether a thing on loan is to be back soon: within 7 days (our choice); on the day itself it is Soon.
[[nodiscard]] BackState backOn(const OnLoan& loan, std::chrono::sys_days day);

}
