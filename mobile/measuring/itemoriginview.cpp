// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/itemoriginview.h"

#include "mobile/follow.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/text/itemorigintexts.h"

using namespace steelyard;

void ItemOriginView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &ItemOriginView::refresh))
        refresh();
}

void ItemOriginView::setItemId(const QString& id)
{
    m_item = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void ItemOriginView::refresh()
{
    const KitRecord* record = m_book ? m_book->book().item(m_item) : nullptr;
    for (QString* text : {&m_name, &m_number, &m_formula, &m_measured, &m_advice, &m_sources})
        text->clear();
    std::vector<OriginRow> rows;
    if (record) {
        m_name = QString::fromStdString(record->item.name);
        if (!record->measurements.empty())
            m_measured = measuretexts::age(record->measurements.front(), m_book->today());
        if (const auto origin = originOf(record->item.measurement)) {
            m_number = itemorigintexts::number(*origin);
            m_formula = itemorigintexts::formula(*origin, record->item.measurement);
            m_sources = itemorigintexts::sources(*origin, record->item.measurement);
            const auto* chain = std::get_if<ChainMeasurement>(&record->item.measurement);
            m_advice = chain ? measuretexts::gain(chainGain(*chain)) : itemorigintexts::advice(*origin);
            rows = itemorigintexts::lines(*origin, record->item.measurement);
        }
    }
    m_lines.setRows(std::move(rows));
    Q_EMIT changed();
}
