// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/putright/sizesview.h"

#include "mobile/follow.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/text/keepingtexts.h"

using namespace steelyard;

void SizesView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &SizesView::refresh))
        return;
    refresh();
}

void SizesView::setAthleteId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString SizesView::name() const
{
    const Athlete* athlete = m_book ? m_book->book().athlete(m_id) : nullptr;
    return athlete ? QString::fromStdString(athlete->name) : QString();
}

void SizesView::refresh()
{
    std::vector<DatedRow> rows;
    if (const Athlete* athlete = m_book ? m_book->book().athlete(m_id) : nullptr)
        for (auto size = athlete->sizes.rbegin(); size != athlete->sizes.rend(); ++size) {
            const QString id = QString::fromStdString(size->id.hex());
            const bool begun = m_book->draft(QStringLiteral("size:") + id).has_value();
            rows.push_back({id, keepingtexts::day(size->day, m_book->today()),
                            begun ? tr("changes not kept") : saidtexts::bodySizeBefore(*m_book, m_id, *size), saidtexts::bodySize(*size)});
        }
    m_sizes.setRows(std::move(rows));
    Q_EMIT changed();
}
