// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/venues/alongview.h"

#include "core/work/venues/freenow.h"
#include "core/work/venues/keepvenuekit.h"
#include "mobile/follow.h"

#include <QPointer>

using namespace steelyard;

void AlongView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &AlongView::refresh))
        refresh();
}

void AlongView::setVenueId(const QString& id)
{
    m_venue = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    m_turned.clear();
    refresh();
}

QString AlongView::venue() const
{
    const Venue* venue = m_book ? m_book->book().venue(m_venue) : nullptr;
    return venue ? QString::fromStdString(venue->name) : QString();
}

bool AlongView::isHere(const RecordId& item) const
{
    const KitRecord* record = m_book->book().item(item);
    return record && venueNow(m_book->book(), record->item) == m_venue;
}

void AlongView::refresh()
{
    if (!m_book)
        return;
    const SeasonBook& book = m_book->book();
    const auto nameOf = [&book](const RecordId& id) {
        const Venue* venue = book.venue(id);
        return venue ? QString::fromStdString(venue->name) : QString();
    };
    std::vector<VenueRow> rows;
    std::set<RecordId> turned;
    for (const KitRecord* record : book.kit()) {
        const KitItem& item = record->item;
        const RecordId now = venueNow(book, item);
        if (item.venue == m_venue && now == m_venue)
            continue; // it is here and belongs here
        if (now != m_venue && !mayBeTakenAlong(item))
            continue;
        const QString belongs = nameOf(item.venue), at = nameOf(now);
        QString hint = belongs.isEmpty() ? tr("belongs to no venue") : tr("belongs to %1").arg(belongs);
        if (now != m_venue && now != item.venue)
            hint = tr("%1, at %2 now").arg(hint, at);
        const bool turns = m_turned.contains(item.id);
        if (turns)
            turned.insert(item.id);
        rows.push_back({QString::fromStdString(item.id.hex()), QString::fromStdString(item.name), hint, (now == m_venue) != turns, turns});
    }
    // what went meanwhile is nobody's to take along
    m_turned = std::move(turned);
    m_things.setRows(std::move(rows));
    Q_EMIT changed();
}

QString AlongView::fact() const
{
    int come = 0, go = 0;
    for (const RecordId& id : m_turned)
        ++(isHere(id) ? go : come);
    const QString coming = tr("%n come along", nullptr, come), going = tr("%n go back", nullptr, go);
    if (come > 0 && go > 0)
        return tr("%1, %2").arg(coming, going);
    return come > 0 ? coming : go > 0 ? going : tr("tick what comes along");
}

void AlongView::turn(const QString& itemId)
{
    const RecordId id = RecordId::fromHex(itemId.toStdString()).value_or(RecordId{});
    if (!m_turned.erase(id))
        m_turned.insert(id);
    refresh();
}

void AlongView::keep()
{
    if (!m_book || !canKeep())
        return;
    std::vector<RecordId> coming, back;
    for (const RecordId& id : m_turned)
        (isHere(id) ? back : coming).push_back(id);
    takeAlong(m_book->keeping(), m_venue, coming, back, m_book->teller([self = QPointer(this)](const RecordId&) {
        if (!self)
            return;
        self->m_turned.clear();
        self->refresh();
        Q_EMIT self->kept();
    }));
}
