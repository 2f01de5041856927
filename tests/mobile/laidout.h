// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/desk.h"
#include "core/work/keeping/keepkititem.h"
#include "mobile/bookservice.h"

#include <map>

/// A set-up on the desk whose kit is kept in the book, as it is in the app; what was in the book before is gone.
inline void layOut(BookService& book, steelyard::Desk& desk, const steelyard::BarMarks& marks, std::vector<steelyard::KitItem> kit,
                   steelyard::SetupRecord setup)
{
    using namespace steelyard;
    desk.replaceAll({}, {}, {});
    book.load({});
    std::map<RecordId, RecordId> keptAs;
    for (KitItem& item : kit) {
        const RecordId before = std::exchange(item.id, RecordId{});
        keepKitItem(book.keeping(), item, [&](const Told& told) { keptAs[before] = item.id = told.id; });
    }
    for (HungRecord& hung : setup.hung)
        hung.item = keptAs[hung.item];
    book.keeping().forget();
    kit.clear();
    for (const KitRecord* record : book.book().kit())
        kit.push_back(record->item);
    desk.replaceAll(marks, std::move(kit), std::move(setup));
}
