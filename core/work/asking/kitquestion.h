// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/whattohang.h"
#include "core/work/weighup.h"

#include <span>
#include <vector>

namespace steelyard {

/// What of the kit may hang.
struct AllowedKinds {
    bool chains = true, bandsBelow = true, bandsAbove = true;
};

/// Why a thing of the kit is not among the choices.
enum class NotChosen : std::uint8_t {
    NotToBeUsed,  ///< lent, or out of use
    NotMeasured,
    NoPair,       ///< both sides hang alike, and there is one
    NoAnchor,     ///< no measured rack anchors it below the bottom or above the top
    NotFarEnough, ///< its pull is not known along the whole path
};

/// A thing that is not among the choices.
struct LeftOut {
    RecordId item;
    NotChosen why = NotChosen::NotMeasured;
    bool operator==(const LeftOut&) const = default;
};

/// What is asked of the kit that is here, and what each way of it is as a record.
struct KitQuestion {
    HangQuestion question;
    std::vector<HungRecord> ways;  ///< of each of the question's ways
    std::vector<LeftOut> leftOut;
};

/// Every load of the bar's plates; every pair of chains straight and doubled, without a lead and on each pair of leads that is here; every
/// pair of bands at each place of the racks that are here, and each thing as it hangs now. Nothing that is lent, out of use or not
/// measured, no band whose anchor might lift. A bench aid that is worn stays. With `strength` the pull is to be
/// level with it: a load whose path it does not cover is none. Refuses what `liftPath` and the plates refuse, and strength that covers no path.
[[nodiscard]] Result<KitQuestion> kitQuestion(const SetupRecord& now, std::span<const KitItem> kit, const BarMarks& marks, const AllowedKinds& allowed,
                                              std::vector<HangTarget> targets,
                                              std::optional<StrengthCurve> strength = std::nullopt, const HeldTo& heldTo = {});

/// The set-up that an answer means, with the rest of the bar as it stands.
[[nodiscard]] SetupRecord setupOf(const SetupRecord& now, const KitQuestion& asked, const HangAnswer& answer);

}
