// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/measurewhat.h"

#include "mobile/follow.h"

#include <algorithm>

using namespace steelyard;

void MeasureWhat::setDesk(DeskService* desk)
{
    if (follow(this, m_desk, desk, &MeasureWhat::refresh))
        refresh();
}

void MeasureWhat::refresh()
{
    if (!m_desk)
        return;
    std::vector<KindRow> rows;
    const auto add = [&](ItemKind kind, const QString& what, const QString& takes) {
        const bool isBegun = m_desk->desk().draft(RecordId{}, kind) != nullptr;
        rows.push_back({QString::fromStdString(wordOf(kind)), what, takes, isBegun ? tr("begun, not kept") : QString()});
    };
    add(ItemKind::Chain, tr("A chain"), tr("a minute: a scale and a tape, or a tape and one link"));
    add(ItemKind::Band, tr("A band"), tr("four minutes: plates, somewhere to hang it, a tape"));
    add(ItemKind::Aid, tr("A bench aid"), tr("five minutes: the lifter, a bar, plates, a tape"));
    add(ItemKind::Machine, tr("A cam machine"), tr("five minutes: a ruler and a level, or a hanging scale"));
    add(ItemKind::Scale, tr("A hanging scale"), tr("two minutes: something of known mass"));
    add(ItemKind::Iron, tr("A bar or plates"), tr("a minute: a scale that holds them"));
    add(ItemKind::Lead, tr("A lead strap"), tr("a minute: a tape and a scale"));
    add(ItemKind::Rack, tr("A rack"), tr("two minutes: a tape"));
    add(ItemKind::Tyre, tr("A tyre"), tr("a minute: a hanging scale and a tape"));
    add(ItemKind::Log, tr("A log"), tr("a minute: a hanging scale"));
    add(ItemKind::Stone, tr("A stone"), tr("a minute: a scale, or a tape"));
    add(ItemKind::Keg, tr("A keg or sandbag"), tr("a minute: a scale, or how much is in it"));
    add(ItemKind::Sled, tr("A sled"), tr("a minute: a scale and a tape"));
    add(ItemKind::Carry, tr("Handles, a yoke or a frame"), tr("a minute: a scale, or its mark"));
    add(ItemKind::Bell, tr("A kettlebell or dumbbell"), tr("a minute: a scale, or its mark; a hand to try it"));
    m_kinds.setRows(std::move(rows));
    Q_EMIT changed();
}

QString MeasureWhat::begun() const
{
    const auto& rows = m_kinds.rows();
    const auto at = std::find_if(rows.begin(), rows.end(), [](const KindRow& row) { return !row.begun.isEmpty(); });
    return at == rows.end() ? QString() : at->begun;
}
