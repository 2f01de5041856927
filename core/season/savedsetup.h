// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/lifts.h"
#include "core/season/setuprecord.h"

#include <chrono>

namespace steelyard {

/// A set-up kept for an athlete and a lift; the day is that of its last change.
struct SavedSetup {
    RecordId id;
    RecordId athlete;
    LiftId lift;
    SetupRecord setup;
    std::chrono::sys_days day{};
    bool operator==(const SavedSetup&) const = default;
};

/// The cautions about kit; numbers are written down for ever.
enum class CautionCode : std::uint8_t { Chains = 0, BandsBelow = 1, BandsAbove = 2, BenchAid = 3, Release = 4 };

/// That a caution was looked over, for one athlete, and for just what hung then.
struct Acknowledgement {
    RecordId id;
    RecordId athlete;
    RecordId setup;
    CautionCode caution = CautionCode::Chains;
    RecordId hungMark; ///< of what hung, and how: see hungMark()
    std::chrono::sys_days day{};
    bool operator==(const Acknowledgement&) const = default;
};

}
