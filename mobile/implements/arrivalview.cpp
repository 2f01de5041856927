// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/implements/arrivalview.h"

#include "core/work/venues/keepvenuekit.h"
#include "mobile/follow.h"
#include "mobile/text/implementtexts.h"

#include <algorithm>

using namespace steelyard;

void ArrivalView::setDesk(DeskService* desk)
{
    if (follow(this, m_desk, desk, &ArrivalView::refresh))
        refresh();
}

void ArrivalView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &ArrivalView::refresh))
        refresh();
}

void ArrivalView::setVenueId(const QString& id)
{
    m_venue = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString ArrivalView::venue() const
{
    const Venue* known = m_book ? m_book->book().venue(m_venue) : nullptr;
    return known ? QString::fromStdString(known->name) : QString();
}

void ArrivalView::refresh()
{
    if (!m_desk || !m_book)
        return;
    std::vector<ArrivalRow> rows;
    const auto begun = [&](const RecordId& id, ItemKind kind) { return m_desk->desk().draft(id, kind) != nullptr; };
    // of each kind one that is not on the list yet may be begun
    for (int number = static_cast<int>(ItemKind::Tyre); number <= static_cast<int>(lastItemKind); ++number) {
        const auto kind = static_cast<ItemKind>(number);
        if (begun({}, kind))
            rows.push_back({{}, QString::fromStdString(wordOf(kind)), implementtexts::what(kind), tr("not on the list yet"), tr("begun, not kept"), true});
    }
    for (const KitRecord* record : m_book->book().kit()) {
        const KitItem& item = record->item;
        const ItemKind kind = kindOf(item.measurement);
        if (!isImplement(kind) || venueNow(m_book->book(), item) != m_venue || item.lent)
            continue;
        const bool half = begun(item.id, kind);
        const bool open = half || !item.isMeasured();
        rows.push_back({QString::fromStdString(item.id.hex()), QString::fromStdString(wordOf(kind)), QString::fromStdString(item.name),
                        item.isOutOfUse() ? tr("%1, out of use").arg(implementtexts::what(kind)) : implementtexts::what(kind),
                        half ? tr("begun, not kept") : open ? tr("to do") : implementtexts::inShort(item.measurement), open});
    }
    std::stable_sort(rows.begin(), rows.end(), [](const ArrivalRow& a, const ArrivalRow& b) { return a.open && !b.open; });
    m_next = rows.empty() || !rows.front().open ? ArrivalRow{} : rows.front();
    const auto known = std::count_if(rows.begin(), rows.end(), [](const ArrivalRow& row) { return !row.open; });
    m_progress = rows.empty() ? tr("Nothing is on the list yet") : tr("%1 of %2 are known").arg(known).arg(rows.size());
    m_things.setRows(std::move(rows));
    Q_EMIT changed();
}
