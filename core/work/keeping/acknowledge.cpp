// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/acknowledge.h"

#include "core/work/records/codec.h"

#include <algorithm>
#include <map>

namespace steelyard {

namespace {

/// What a thing that hangs so calls for.
CautionCode cautionOf(const Placing& placing)
{
    if (std::holds_alternative<AidPlacing>(placing))
        return CautionCode::BenchAid;
    const auto* band = std::get_if<BandPlacing>(&placing);
    return !band ? CautionCode::Chains : band->above ? CautionCode::BandsAbove : CautionCode::BandsBelow;
}

}

void acknowledge(SeasonKeeping& keeping, const RecordId& setup, CautionCode caution, const WhenTold& told)
{
    const SavedSetup* known = keeping.book().setup(setup);
    if (!known)
        return told({setup, Unfit::SetupUnknown, std::nullopt});
    const std::chrono::sys_days today = keeping.here().day;
    const RecordId mark = hungMark(known->setup);
    const auto all = keeping.book().acknowledgementsOf(setup);
    const auto same = std::find_if(all.begin(), all.end(), [&](const Acknowledgement* looked) {
        return looked->caution == caution && looked->hungMark == mark && looked->day == today;
    });
    if (same != all.end())
        return told({(*same)->id, std::nullopt, std::nullopt});
    Acknowledgement looked;
    looked.id = keeping.newId();
    looked.setup = setup;
    looked.caution = caution;
    looked.hungMark = mark;
    Drafting drafting(keeping);
    drafting.add(acknowledgementPlace(looked.id, known->athlete), today, *contentOf(looked));
    keeping.keepUnlisted(looked.id, std::move(drafting).drafts(), told);
}

std::optional<std::chrono::sys_days> lastLookedOver(const SeasonBook& book, const SavedSetup& setup)
{
    std::map<CautionCode, std::optional<std::chrono::sys_days>> days;
    for (const HungRecord& hung : setup.setup.hung)
        days[cautionOf(hung.placing)];
    if (setup.setup.release)
        days[CautionCode::Release];
    const RecordId mark = hungMark(setup.setup);
    // the last of each caution is behind the earlier ones
    for (const Acknowledgement* looked : book.acknowledgementsOf(setup.id))
        if (const auto at = days.find(looked->caution); at != days.end() && looked->hungMark == mark)
            at->second = looked->day;
    const auto earliest = std::min_element(days.begin(), days.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    return earliest == days.end() ? std::nullopt : earliest->second;
}

}
