// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/keepsetup.h"

#include "core/work/records/codec.h"

#include <algorithm>

namespace steelyard {

void keepSetup(SeasonKeeping& keeping, SavedSetup setup, const WhenTold& told)
{
    const SeasonBook& book = keeping.book();
    const SavedSetup* known = book.setup(setup.id);
    std::optional<Unfit> unfit;
    if (!setup.id.isNone() && (!known || known->athlete != setup.athlete))
        unfit = Unfit::SetupUnknown;
    else if (!book.athlete(setup.athlete))
        unfit = Unfit::AthleteUnknown;
    else if (setup.lift == LiftId{})
        unfit = Unfit::LiftUnknown;
    const Content content = contentOf(setup.setup, book.settings());
    const Content release = setup.setup.release ? contentOf(*setup.setup.release, book.settings()) : std::nullopt;
    if (!unfit && (!content || release.has_value() != setup.setup.release.has_value()))
        unfit = Unfit::QuantityUnfit;
    if (unfit)
        return told({setup.id, unfit, std::nullopt});
    const auto said = [](SetupRecord record) {
        record.release.reset();
        return record;
    };
    const bool changed = !known || !keptAlike(said(known->setup), said(setup.setup));
    const bool releaseChanged = !keptAlike(known ? known->setup.release : std::nullopt, setup.setup.release);
    if (!known)
        setup.id = keeping.newId();
    Drafting drafting(keeping);
    const Place place = setupPlace(setup.id, setup.athlete);
    drafting.set(place, field::setupLiftNumber, contentOf(setup.lift));
    if (changed)
        drafting.set(place, field::setupLoadNumber, content);
    if (releaseChanged)
        drafting.set(place, field::setupReleaseNumber, release);
    keeping.keep(Deed::SetupKept, setup.id, std::move(drafting).drafts(), told);
}

std::optional<Mass> loadLastTime(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, const RecordId& opened)
{
    const auto same = [&](const SavedSetup* saved) { return saved && saved->athlete == athlete && saved->lift == lift; };
    if (const SavedSetup* saved = book.setup(opened); same(saved))
        return saved->setup.bar.wanted.quantity();
    // the newest comes first
    const auto all = book.setupsOf(athlete);
    const auto last = std::find_if(all.begin(), all.end(), same);
    return last == all.end() ? std::nullopt : std::optional((*last)->setup.bar.wanted.quantity());
}

}
