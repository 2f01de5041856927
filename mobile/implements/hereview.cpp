// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/implements/hereview.h"

#include "mobile/follow.h"
#include "mobile/implements/usetexts.h"
#include "mobile/text/implementtexts.h"
#include "mobile/text/say.h"

#include <algorithm>

using namespace steelyard;

void HereView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &HereView::refresh))
        refresh();
}

void HereView::setAthleteId(const QString& id)
{
    m_athlete = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void HereView::setVenueId(const QString& id)
{
    m_venue = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString HereView::name() const
{
    const Athlete* known = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    return known ? QString::fromStdString(known->name) : QString();
}

QString HereView::venue() const
{
    const Venue* known = m_book ? m_book->book().venue(m_venue) : nullptr;
    return known ? QString::fromStdString(known->name) : QString();
}

void HereView::refresh()
{
    m_counts.clear();
    m_trouble.clear();
    std::vector<HereThing> rows;
    if (m_book) {
        const SeasonBook& book = m_book->book();
        const auto here = whatIsHere(book, {m_athlete, m_venue, m_book->today(), {}});
        if (!here)
            m_trouble = here.error().what == "venue" ? tr("Choose in Kit where you are: a list is of one venue.") : tr("Choose in Squad whom it is for.");
        else if (here->empty())
            m_trouble = tr("Nothing of the kind is on the list of this venue. Enter it in Kit: a tyre takes a minute.");
        int counts[3] = {};
        for (const HereRow& row : here ? *here : std::vector<HereRow>{}) {
            const KitItem& item = book.item(row.item)->item;
            const auto least = std::min_element(row.uses.begin(), row.uses.end(), [](const ImplementUse& a, const ImplementUse& b) { return a.permission < b.permission; });
            ++counts[static_cast<int>(row.permission)];
            QString may = usetexts::permission(row.permission);
            if (row.heaviestSetting)
                may = tr("%1, set to %2 at most").arg(may, say::massWithUnit(*row.heaviestSetting));
            rows.push_back({QString::fromStdString(row.item.hex()), QString::fromStdString(wordOf(row.kind)), QString::fromStdString(row.name), implementtexts::inShort(item.measurement),
                            may, least == row.uses.end() ? QString() : usetexts::first(*least, book, m_book->today()),
                            row.permission == Permission::Not, row.permission == Permission::Permitted});
        }
        if (!rows.empty())
            m_counts = tr("%1 she may use, %2 to look over first, %3 not now").arg(counts[0]).arg(counts[1]).arg(counts[2]);
    }
    m_things.setRows(std::move(rows));
    Q_EMIT changed();
}
