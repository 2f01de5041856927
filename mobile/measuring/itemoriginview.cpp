// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/itemoriginview.h"

#include "mobile/follow.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/text/itemorigintexts.h"

#include <algorithm>

using namespace steelyard;

namespace {

QString adviceOf(const ItemOrigin& origin, const Measured& measured)
{
    if (const auto* chain = std::get_if<ChainMeasurement>(&measured))
        return measuretexts::gain(chainGain(*chain));
    const bool few = std::any_of(origin.lines.begin(), origin.lines.end(), [](const ItemInputLine& line) { return line.input == ItemInput::FewReadings && line.share > 0.5; });
    return few ? ItemOriginView::tr("A few more readings would make it surer.") : QString();
}

}

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
    for (QString* text : {&m_name, &m_number, &m_formula, &m_measured, &m_advice})
        text->clear();
    std::vector<OriginRow> rows;
    if (record) {
        m_name = QString::fromStdString(record->item.name);
        if (!record->measurements.empty())
            m_measured = measuretexts::age(record->measurements.front(), m_book->today());
        if (const auto origin = originOf(record->item.measurement)) {
            m_number = itemorigintexts::number(*origin);
            m_formula = itemorigintexts::formula(*origin, record->item.measurement);
            m_advice = adviceOf(*origin, record->item.measurement);
            rows = itemorigintexts::lines(*origin, record->item.measurement);
        }
    }
    m_lines.setRows(std::move(rows));
    Q_EMIT changed();
}
