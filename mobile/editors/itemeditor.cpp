// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/itemeditor.h"

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
    m_id = desk().keepItem(now);
    Q_EMIT itemIdChanged();
    refresh();
    return itemId();
}

void ItemEditor::throwDraft()
{
    desk().throwDraft(m_id, makesChains());
    refresh();
}

void ItemEditor::remove()
{
    desk().removeItem(m_id);
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
