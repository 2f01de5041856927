// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/kitcomparison.h"

#include "mobile/follow.h"
#include "mobile/measuring/measuretexts.h"

#include <algorithm>

using namespace steelyard;

void KitComparison::setForm(ItemEditor* form)
{
    if (follow(this, m_form, form, &KitComparison::changed))
        Q_EMIT changed();
}

std::vector<const KitItem*> KitComparison::others() const
{
    std::vector<const KitItem*> list;
    if (!m_form || !m_form->deskService())
        return list;
    const Measured now = m_form->measured();
    if (!canCompare(kindOf(now)))
        return list;
    for (const KitItem& item : m_form->deskService()->desk().kit())
        if (mayPair(item) && item.measurement.index() == now.index() && QString::fromStdString(item.id.hex()) != m_form->itemId())
            list.push_back(&item);
    return list;
}

QStringList KitComparison::names() const
{
    QStringList list;
    for (const KitItem* item : others())
        list << QString::fromStdString(item->name);
    return list;
}

int KitComparison::chosen() const
{
    const auto all = others();
    const auto at = std::find_if(all.begin(), all.end(), [this](const KitItem* item) { return item->id == m_other; });
    return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

void KitComparison::setChosen(int place)
{
    const auto all = others();
    m_other = place >= 0 && static_cast<std::size_t>(place) < all.size() ? all[static_cast<std::size_t>(place)]->id : RecordId{};
    Q_EMIT changed();
}

QString KitComparison::text() const
{
    const int at = chosen();
    if (at < 0)
        return {};
    const KitItem& other = *others()[static_cast<std::size_t>(at)];
    const auto both = compared(other.measurement, m_form->measured());
    return both ? measuretexts::pair(*both, other) : tr("They have no length in common to compare them at.");
}
