// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/weighediron.h"

#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/tooltexts.h"

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

QString WeighedIronView::nameOf(const RecordId& id) const
{
    const KitItem* item = m_desk->desk().item(id);
    return item ? QString::fromStdString(item->name) : QString();
}

QString WeighedIronView::about(const KnownIron& iron) const
{
    const QString mass = tooltexts::tight(iron.check.each, iron.check.u);
    const KitRecord* record = m_book ? m_book->book().item(iron.item) : nullptr;
    return record && !record->measurements.empty() ? tr("%1, weighed %2").arg(mass, keepingtexts::day(record->measurements.front().day, m_book->today())) : mass;
}

QStringList WeighedIronView::bars() const
{
    QStringList list;
    for (const KnownIron& bar : iron(IronSort::Bar))
        list << tr("%1: %2").arg(nameOf(bar.item), about(bar));
    if (!list.isEmpty())
        list.prepend(tr("as keyed"));
    return list;
}

int WeighedIronView::bar() const
{
    if (!m_desk || !record().barWeighed)
        return 0;
    const auto all = iron(IronSort::Bar);
    const auto at = std::find_if(all.begin(), all.end(), [this](const KnownIron& bar) { return bar.item == record().barWeighed->item; });
    return at == all.end() ? 0 : static_cast<int>(at - all.begin()) + 1;
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
    if (row < 0 || static_cast<std::size_t>(row) >= all.size())
        return;
    const KnownIron& plates = all[static_cast<std::size_t>(row)];
    m_desk->desk().setBar(isTaken(record(), plates.item) ? withPlatesByMark(record(), plates.item) : withWeighedPlates(record(), plates));
}

void WeighedIronView::refresh()
{
    if (m_desk) {
        std::vector<WeighedRow> rows;
        for (const KnownIron& plates : iron(IronSort::Plates))
            rows.push_back({nameOf(plates.item), plates.measured.count > 1 ? tr("each %1").arg(about(plates)) : about(plates), isTaken(record(), plates.item)});
        m_plates.setRows(std::move(rows));
    }
    Q_EMIT changed();
}
