// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/weighediron.h"

#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/tooltexts.h"

#include <algorithm>

using namespace steelyard;

void WeighedIronView::setDesk(DeskService* desk)
{
    if (follow(this, m_desk, desk, &WeighedIronView::refresh))
        refresh();
}

void WeighedIronView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &WeighedIronView::refresh))
        refresh();
}

std::vector<KnownIron> WeighedIronView::iron(IronSort sort) const
{
    return m_desk ? ironIn(m_desk->desk().kit(), sort) : std::vector<KnownIron>();
}

std::vector<RecordId> WeighedIronView::takenAndGone() const
{
    const auto here = m_desk ? iron(IronSort::Plates) : std::vector<KnownIron>();
    std::vector<RecordId> gone;
    for (const PlatesHere& row : m_desk ? record().stock : std::vector<PlatesHere>())
        if (row.weighed && std::none_of(here.begin(), here.end(), [&row](const KnownIron& plates) { return plates.item == row.weighed->item; }) &&
            std::find(gone.begin(), gone.end(), row.weighed->item) == gone.end())
            gone.push_back(row.weighed->item);
    return gone;
}

QString WeighedIronView::nameOf(const RecordId& id) const
{
    const KitItem* item = m_desk->desk().item(id);
    return item ? QString::fromStdString(item->name) : tr("Plates that are not here");
}

QString WeighedIronView::about(const KnownIron& iron) const
{
    const QString mass = tooltexts::give(iron.check.each, iron.check.u);
    const KitRecord* record = m_book ? m_book->book().item(iron.item) : nullptr;
    return record && !record->measurements.empty() ? tr("%1, weighed %2").arg(mass, keepingtexts::day(record->measurements.front().day, m_book->today())) : mass;
}

QStringList WeighedIronView::bars() const
{
    QStringList list;
    for (const KnownIron& bar : iron(IronSort::Bar))
        list << tr("%1: %2").arg(nameOf(bar.item), about(bar));
    if (!list.isEmpty() || (m_desk && record().barWeighed))
        list.prepend(tr("as keyed"));
    return list;
}

int WeighedIronView::bar() const
{
    if (!m_desk || !record().barWeighed)
        return 0;
    const auto all = iron(IronSort::Bar);
    const auto at = std::find_if(all.begin(), all.end(), [this](const KnownIron& bar) { return bar.item == record().barWeighed->item; });
    return at == all.end() ? -1 : static_cast<int>(at - all.begin()) + 1;
}

void WeighedIronView::setBar(int place)
{
    const auto all = iron(IronSort::Bar);
    if (place < 0 || static_cast<std::size_t>(place) > all.size())
        return;
    m_desk->desk().setBar(place == 0 ? withBar(record(), record().bar) : withWeighedBar(record(), all[static_cast<std::size_t>(place) - 1]));
}

void WeighedIronView::takePlates(int row)
{
    const auto all = iron(IronSort::Plates);
    if (row < 0)
        return;
    if (static_cast<std::size_t>(row) >= all.size()) {
        const auto gone = takenAndGone();
        if (const std::size_t place = static_cast<std::size_t>(row) - all.size(); place < gone.size())
            m_desk->desk().setBar(withPlatesByMark(record(), gone[place]));
        return;
    }
    const KnownIron& plates = all[static_cast<std::size_t>(row)];
    m_desk->desk().setBar(isTaken(record(), plates.item) ? withPlatesByMark(record(), plates.item) : withWeighedPlates(record(), plates));
}

void WeighedIronView::refresh()
{
    if (m_desk) {
        std::vector<WeighedRow> rows;
        for (const KnownIron& plates : iron(IronSort::Plates))
            rows.push_back({nameOf(plates.item), plates.measured.count > 1 ? tr("each %1").arg(about(plates)) : about(plates), isTaken(record(), plates.item)});
        for (const RecordId& id : takenAndGone())
            rows.push_back({nameOf(id), tr("not here, or not to be used: tap to load by the mark again"), true});
        m_plates.setRows(std::move(rows));
    }
    Q_EMIT changed();
}
