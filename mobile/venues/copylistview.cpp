// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/venues/copylistview.h"

#include "core/work/venues/keepvenuekit.h"
#include "mobile/follow.h"

#include <QPointer>

#include <algorithm>

using namespace steelyard;

void CopyListView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &CopyListView::refresh))
        refresh();
}

void CopyListView::setVenueId(const QString& id)
{
    m_venue = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString CopyListView::venue() const
{
    const Venue* venue = m_book ? m_book->book().venue(m_venue) : nullptr;
    return venue ? QString::fromStdString(venue->name) : QString();
}

std::vector<const Venue*> CopyListView::others() const
{
    auto all = m_book ? m_book->book().venues() : std::vector<const Venue*>();
    std::erase_if(all, [this](const Venue* venue) { return venue->id == m_venue; });
    return all;
}

QStringList CopyListView::sources() const
{
    QStringList names;
    for (const Venue* venue : others())
        names << QString::fromStdString(venue->name);
    return names;
}

int CopyListView::source() const
{
    const auto all = others();
    const auto at = std::find_if(all.begin(), all.end(), [this](const Venue* venue) { return venue->id == m_source; });
    return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

void CopyListView::setSource(int index)
{
    const auto all = others();
    if (index < 0 || static_cast<std::size_t>(index) >= all.size())
        return;
    m_source = all[static_cast<std::size_t>(index)]->id;
    refresh();
}

void CopyListView::refresh()
{
    if (!m_book)
        return;
    if (source() < 0 && m_book->book().venue(m_venue))
        m_source = longestList();
    std::vector<VenueRow> rows;
    for (const KitRecord* record : listToCopy(m_book->book(), m_source, m_venue))
        rows.push_back({QString::fromStdString(record->item.id.hex()), QString::fromStdString(record->item.name), record->item.pair ? tr("a pair") : tr("one"), false, false});
    m_things.setRows(std::move(rows));
    Q_EMIT changed();
}

RecordId CopyListView::longestList() const
{
    const auto all = others();
    const auto most = std::max_element(all.begin(), all.end(), [this](const Venue* a, const Venue* b) {
        return listToCopy(m_book->book(), a->id, m_venue).size() < listToCopy(m_book->book(), b->id, m_venue).size();
    });
    return most == all.end() ? RecordId{} : (*most)->id;
}

QString CopyListView::fact() const
{
    const int count = m_things.rowCount();
    return count == 0 ? tr("nothing to copy") : tr("%n things, still to be measured", nullptr, count);
}

void CopyListView::keep()
{
    if (!m_book || !canKeep())
        return;
    copyList(m_book->keeping(), m_source, m_venue, m_book->teller([self = QPointer(this)](const RecordId&) {
        if (!self)
            return;
        self->refresh();
        Q_EMIT self->kept();
    }));
}
