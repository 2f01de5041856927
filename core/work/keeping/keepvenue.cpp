// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/keepvenue.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"
#include "core/work/records/implementcodec.h"

namespace steelyard {

void keepVenue(SeasonKeeping& keeping, Venue venue, const WhenTold& told)
{
    if (!venue.id.isNone() && !keeping.book().venue(venue.id))
        return told({venue.id, Unfit::VenueUnknown, std::nullopt});
    auto unfit = unfitName(venue.name);
    if (!unfit)
        unfit = unfitText(venue.notes, mostNotesByteCount);
    if (!unfit && !fits(venue.lane))
        unfit = Unfit::QuantityUnfit;
    if (unfit)
        return told({venue.id, unfit, std::nullopt});
    if (venue.id.isNone())
        venue.id = keeping.newId();
    Drafting drafting(keeping);
    drafting.setText(venuePlace(venue.id), field::venueNameNumber, venue.name);
    drafting.setText(venuePlace(venue.id), field::venueNotesNumber, venue.notes);
    drafting.set(venuePlace(venue.id), field::venueLaneNumber, venue.lane ? laneContent(*venue.lane, keeping.book().settings()) : std::nullopt);
    keeping.keep(Deed::VenueKept, venue.id, std::move(drafting).drafts(), told);
}

void keepSettings(SeasonKeeping& keeping, const VaultSettings& settings, const WhenTold& told)
{
    Drafting drafting(keeping);
    const auto set = [&](std::uint32_t fieldNumber, journal::Unit unit, bool changed) {
        if (changed)
            drafting.set(settingsPlace(), fieldNumber, journal::numberItem(static_cast<std::int64_t>(unit)));
    };
    const VaultSettings& now = keeping.book().settings();
    set(field::settingsMassUnitNumber, unitFor(settings.mass), settings.mass != now.mass);
    set(field::settingsLengthUnitNumber, unitFor(settings.length), settings.length != now.length);
    keeping.keep(Deed::SettingsKept, settingsId, std::move(drafting).drafts(), told);
}

void keepLimits(SeasonKeeping& keeping, const CoachLimits& limits, const WhenTold& told)
{
    if (!canBeLimits(limits))
        return told({settingsId, Unfit::LimitUnfit, std::nullopt});
    Drafting drafting(keeping);
    eachLimit([&](std::uint32_t fieldNumber, auto which) {
        const auto& limit = limits.*which;
        drafting.set(settingsPlace(), fieldNumber, limit ? std::optional(journal::numberItem(limitNumber(*limit))) : std::nullopt);
    });
    keeping.keep(Deed::LimitsKept, settingsId, std::move(drafting).drafts(), told);
}

}
