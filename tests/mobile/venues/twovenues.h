// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/venues/keepvenuekit.h"
#include "mobile/bookservice.h"

#include <array>

/// Books whose kit stands in two venues, some of it borrowed, lent, or taken along.
namespace twovenues {

using namespace steelyard;

struct Places {
    RecordId home, hall;
};

inline RecordId venue(BookService& book, const std::string& name)
{
    RecordId id;
    keepVenue(book.keeping(), {{}, name, {}}, [&id](const Told& told) { id = told.id; });
    return id;
}

/// Two venues, the first with all of the kit that is in the book.
inline Places fill(BookService& book)
{
    const Places places{venue(book, "Home weight room"), venue(book, "School hall")};
    std::vector<KitItem> items;
    for (const KitRecord* record : book.book().kit())
        items.push_back(record->item);
    for (KitItem& item : items) {
        item.venue = places.home;
        keepKitItem(book.keeping(), item, [](const Told&) {});
    }
    book.keeping().forget();
    return places;
}

/// And of those the first borrowed until in three days, the second lent without a day, the third taken along to the other venue.
inline Places mixed(BookService& book)
{
    const Places places = fill(book);
    std::vector<RecordId> ids;
    for (const KitRecord* record : book.book().kit())
        ids.push_back(record->item.id);
    const auto told = [](const Told&) {};
    if (!ids.empty())
        keepLoan(book.keeping(), ids[0], LoanKind::Borrowed, {"the school in Pell", book.today() + std::chrono::days(3)}, told);
    if (ids.size() > 1)
        keepLoan(book.keeping(), ids[1], LoanKind::Lent, {"the rowers"}, told);
    if (ids.size() > 2)
        takeAlong(book.keeping(), places.hall, std::array{ids[2]}, {}, told);
    book.keeping().forget();
    return places;
}

}
