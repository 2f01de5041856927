// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/keepkititem.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"

namespace steelyard {

void keepKitItem(SeasonKeeping& keeping, KitItem item, const WhenTold& told)
{
    const KitRecord* known = keeping.book().item(item.id);
    if (!known && !item.id.isNone())
        return told({item.id, Unfit::ItemUnknown, std::nullopt});
    auto unfit = unfitName(item.name);
    if (!unfit && !item.venue.isNone() && !keeping.book().venue(item.venue))
        unfit = Unfit::VenueUnknown;
    const VaultSettings& typedIn = keeping.book().settings();
    const Content measured = contentOf(MeasurementRecord{{}, item.id, {}, item.measurement}, typedIn);
    if (!unfit && !measured)
        unfit = Unfit::QuantityUnfit;
    if (unfit)
        return told({item.id, unfit, std::nullopt});
    // what is kept is whole base units, so that is what is compared
    const bool measuredAnew = item.isMeasured() && (!known || known->measurements.empty() || measurementIn(*measured)->measured != known->item.measurement);
    if (!known)
        item.id = keeping.newId();
    Drafting drafting(keeping);
    const Place place = itemPlace(item.id);
    drafting.setText(place, field::itemNameNumber, item.name);
    drafting.set(place, field::itemPairNumber, journal::flagItem(item.pair));
    drafting.set(place, field::itemVenueNumber, item.venue.isNone() ? std::nullopt : Content(journal::idItem(item.venue)));
    if (!known && !item.isMeasured())
        drafting.set(place, field::itemKindNumber, contentOf(kindOf(item.measurement)));
    if (measuredAnew)
        drafting.add(measurementPlace(keeping.newId()), keeping.here().day, *contentOf(MeasurementRecord{{}, item.id, {}, item.measurement}, typedIn));
    keeping.keep(Deed::ItemKept, item.id, std::move(drafting).drafts(), told);
}

void keepInspection(SeasonKeeping& keeping, const RecordId& item, const std::optional<KitFault>& fault, const std::string& note, const WhenTold& told)
{
    if (!keeping.book().item(item))
        return told({item, Unfit::ItemUnknown, std::nullopt});
    if (const auto unfit = unfitText(note, mostNotesByteCount))
        return told({item, unfit, std::nullopt});
    Drafting drafting(keeping);
    drafting.set(itemPlace(item), field::itemInspectionNumber, contentOf(Inspection{fault, note, keeping.here().day}));
    keeping.keep(Deed::Inspected, item, std::move(drafting).drafts(), told);
}

}
