// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/itemeditor.h"

#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/putright.h"
#include "mobile/follow.h"

#include <QPointer>

#include <algorithm>

using namespace steelyard;

void ItemEditor::setItemId(const QString& id)
{
    const RecordId next = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    if (m_id == next)
        return;
    m_id = next;
    Q_EMIT itemIdChanged();
    refresh();
}

void ItemEditor::setBook(BookService* book)
{
    if (!follow(this, m_book, book, [this] { refresh(); }))
        return;
    Q_EMIT bookChanged();
    refresh();
}

QString ItemEditor::name() const
{
    const KitItem now = item();
    return now.name.empty() ? ownName(now) : QString::fromStdString(now.name);
}

void ItemEditor::setName(const QString& name)
{
    KitItem now = item();
    now.name = name.trimmed().toStdString();
    setItem(now);
}

void ItemEditor::setPair(bool pair)
{
    KitItem now = item();
    now.pair = pair;
    setItem(now);
}

QStringList ItemEditor::venues() const
{
    if (!m_book || !m_book->book().item(m_id))
        return {};
    QStringList list;
    for (const Venue* venue : m_book->book().venues())
        list << QString::fromStdString(venue->name);
    if (!list.isEmpty())
        list.prepend(tr("no venue"));
    return list;
}

int ItemEditor::venue() const
{
    const auto all = m_book ? m_book->book().venues() : std::vector<const Venue*>();
    const auto at = std::find_if(all.begin(), all.end(), [this, id = item().venue](const Venue* venue) { return venue->id == id; });
    return at == all.end() ? 0 : static_cast<int>(at - all.begin()) + 1;
}

void ItemEditor::setVenue(int index)
{
    const auto all = m_book ? m_book->book().venues() : std::vector<const Venue*>();
    KitItem now = item();
    now.venue = index > 0 && static_cast<std::size_t>(index) <= all.size() ? all[static_cast<std::size_t>(index) - 1]->id : RecordId{};
    setItem(now);
}

void ItemEditor::measureAnew()
{
    KitItem now = item();
    if (makesChains())
        now.measurement = ChainMeasurement{};
    else
        now.measurement = BandMeasurement{};
    setItem(now);
}

bool ItemEditor::isDrafted() const
{
    return ready() && desk().draft(m_id, makesChains());
}

QString ItemEditor::keep()
{
    if (!canKeep())
        return {};
    KitItem now = item();
    if (now.name.empty())
        now.name = ownName(now).toStdString();
    if (m_book) {
        keepInBook(now);
        return itemId();
    }
    m_id = desk().keepItem(now);
    Q_EMIT itemIdChanged();
    refresh();
    Q_EMIT kept();
    return itemId();
}

void ItemEditor::keepInBook(KitItem item)
{
    if (item.id.isNone())
        item.venue = RecordId::fromHex(m_venueId.toStdString()).value_or(RecordId{});
    // the draft stays until the item is on the disk
    const auto done = [self = QPointer<ItemEditor>(this), desk = QPointer<DeskService>(deskService()), id = item.id, chain = makesChains()](const RecordId& keptAs) {
        if (desk)
            desk->desk().throwDraft(id, chain);
        if (!self)
            return;
        self->m_id = keptAs;
        Q_EMIT self->itemIdChanged();
        self->refresh();
        Q_EMIT self->kept();
    };
    keepKitItem(m_book->keeping(), std::move(item), m_book->teller(done));
}

void ItemEditor::throwDraft()
{
    desk().throwDraft(m_id, makesChains());
    refresh();
}

void ItemEditor::remove()
{
    desk().removeItem(m_id);
    if (m_book && m_book->book().item(m_id))
        takeOut(m_book->keeping(), itemPlace(m_id), m_book->teller());
}

KitItem ItemEditor::item() const
{
    KitItem fresh;
    if (!makesChains())
        fresh.measurement = BandMeasurement{};
    if (!ready())
        return fresh;
    if (const KitItem* draft = desk().draft(m_id, makesChains()))
        return *draft;
    if (const KitItem* kept = desk().item(m_id))
        return *kept;
    return fresh;
}

void ItemEditor::setItem(const KitItem& item)
{
    if (!ready() || this->item() == item)
        return;
    desk().setDraft(item);
    refresh();
}
