// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/desk.h"
#include "mobile/models/rows.h"
#include "mobile/pages/setuptext.h"

/** Turns what the desk worked out into what the set-up page shows. */
namespace setuptexts {

/// What a set-up comes to by itself; and on the desk, where what is known of the lifter stands beside it.
[[nodiscard]] SetupAnswer answer(const steelyard::WeighedUp& weighed);
[[nodiscard]] SetupAnswer answer(const steelyard::Desk& desk);
[[nodiscard]] PullPicture picture(const steelyard::WeighedUp& weighed);
[[nodiscard]] BeamText beam(const steelyard::Desk& desk);
[[nodiscard]] QVariantList marks(const steelyard::WeighedUp& weighed);
[[nodiscard]] QVariantList plates(const steelyard::Desk& desk);
[[nodiscard]] QVariantList strip(const steelyard::Desk& desk);
[[nodiscard]] QVariantList elevation(const steelyard::WeighedUp& weighed);
[[nodiscard]] std::vector<ThingRow> hanging(const steelyard::Desk& desk);
/// What forbids it for her, then what the set-up itself has to say.
[[nodiscard]] std::vector<NoticeRow> notices(const steelyard::Desk& desk);
[[nodiscard]] std::vector<NoticeRow> notices(const steelyard::WeighedUp& weighed);
[[nodiscard]] std::vector<CautionRow> cautions(const steelyard::WeighedUp& weighed);
/// What hangs first, then what of hers is to be looked over.
[[nodiscard]] std::vector<CautionRow> cautions(const steelyard::Desk& desk);
[[nodiscard]] QString readingAt(const steelyard::WeighedUp& weighed, steelyard::Height height);
/// "take off 5, put on 10, each side"; from the inside out.
[[nodiscard]] QString plateChange(const steelyard::BarRecord& bar, const steelyard::PlateChange& change);
/// How a thing hangs, in words: "doubled, on a lead of 45 cm".
[[nodiscard]] QString howItHangs(const steelyard::HungRecord& record);

}
