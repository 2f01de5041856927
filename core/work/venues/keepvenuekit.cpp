// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/venues/keepvenuekit.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"

#include <algorithm>

namespace steelyard {

void keepLoan(SeasonKeeping& keeping, const RecordId& item, LoanKind kind, const OnLoan& loan, const WhenTold& told)
{
    if (!keeping.book().item(item))
        return told({item, Unfit::ItemUnknown, std::nullopt});
    if (kind != LoanKind::None) {
        if (const auto unfit = unfitName(loan.who))
            return told({item, unfit, std::nullopt});
        if (keeping.isSample())
            return told({item, Unfit::SampleTakesNobody, std::nullopt});
    }
    Drafting drafting(keeping);
    const Content content = contentOf(loan);
    drafting.set(itemPlace(item), field::itemBorrowedNumber, kind == LoanKind::Borrowed ? content : std::nullopt);
    drafting.set(itemPlace(item), field::itemLentNumber, kind == LoanKind::Lent ? content : std::nullopt);
    keeping.keep(Deed::LoanKept, item, std::move(drafting).drafts(), told);
}

RecordId venueNow(const SeasonBook& book, const KitItem& item)
{
    return !item.takenTo.isNone() && book.venue(item.takenTo) ? item.takenTo : item.venue;
}

void takeAlong(SeasonKeeping& keeping, const RecordId& venue, std::span<const RecordId> coming, std::span<const RecordId> goingBack,
               const WhenTold& told)
{
    const SeasonBook& book = keeping.book();
    if (!book.venue(venue))
        return told({venue, Unfit::VenueUnknown, std::nullopt});
    const auto gone = [&book](const RecordId& item) { return !book.item(item); };
    if (std::any_of(coming.begin(), coming.end(), gone) || std::any_of(goingBack.begin(), goingBack.end(), gone))
        return told({venue, Unfit::ItemUnknown, std::nullopt});
    Drafting drafting(keeping);
    for (const RecordId& item : coming) {
        const bool home = book.item(item)->item.venue == venue;
        drafting.set(itemPlace(item), field::itemTakenToNumber, home ? std::nullopt : Content(journal::idItem(venue)));
    }
    for (const RecordId& item : goingBack)
        drafting.set(itemPlace(item), field::itemTakenToNumber, std::nullopt);
    keeping.keep(Deed::TakenAlong, venue, std::move(drafting).drafts(), told);
}

std::vector<const KitRecord*> listToCopy(const SeasonBook& book, const RecordId& from, const RecordId& to)
{
    std::vector<const KitRecord*> list;
    if (from == to || !book.venue(from) || !book.venue(to))
        return list;
    const auto there = book.kitAt(to);
    for (const KitRecord* record : book.kitAt(from)) {
        const KitItem& item = record->item;
        const bool known = std::any_of(there.begin(), there.end(), [&item](const KitRecord* other) {
            return other->item.name == item.name && kindOf(other->item.measurement) == kindOf(item.measurement);
        });
        if (!known && !item.borrowed)
            list.push_back(record);
    }
    return list;
}

void copyList(SeasonKeeping& keeping, const RecordId& from, const RecordId& to, const WhenTold& told)
{
    const SeasonBook& book = keeping.book();
    if (!book.venue(from) || !book.venue(to))
        return told({to, Unfit::VenueUnknown, std::nullopt});
    Drafting drafting(keeping);
    for (const KitRecord* record : listToCopy(book, from, to)) {
        const Place place = itemPlace(keeping.newId());
        drafting.setText(place, field::itemNameNumber, record->item.name);
        drafting.set(place, field::itemPairNumber, journal::flagItem(record->item.pair));
        drafting.set(place, field::itemVenueNumber, Content(journal::idItem(to)));
        drafting.set(place, field::itemKindNumber, contentOf(kindOf(record->item.measurement)));
    }
    keeping.keep(Deed::ListCopied, to, std::move(drafting).drafts(), told);
}

}
