// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/desk.h"
#include "core/work/eccentric/release.h"

namespace steelyard {

class SeasonBook;

/// Whom a set-up is for, and when.
struct ReleaseFor {
    RecordId athlete; ///< none where the desk is laid out for nobody
    LiftId lift;
    std::chrono::sys_days day{};
};

/// A plan on the desk with what the book knows of whom it is for.
struct DeskRelease {
    ReleaseAnswer answer;
    std::optional<KnownMaximum> maximum;
    std::optional<GateAnswer> gate; ///< none for nobody, and where there is no load to ask about
    bool lookedOver = false;        ///< every caution of the set-up

    /// Nothing is wanting, every caution is looked over, and she may: a caution of the gate is looked over with those of the set-up, as it
    /// stands on the same page.
    [[nodiscard]] bool isReady() const
    {
        return answer.isComplete() && lookedOver && gate && gate->permission != Permission::Not;
    }
    [[nodiscard]] bool isForbidden() const { return gate && gate->permission == Permission::Not; }
};

/// Percent is of her maximum of plain iron, tested or estimated; the gate is asked with the heaviest that she holds on either way.
[[nodiscard]] DeskRelease deskRelease(const Desk& desk, const SeasonBook& book, const ReleaseFor& whom);

}
