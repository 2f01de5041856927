// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/putright/measurementsview.h"

#include "mobile/follow.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/text/keepingtexts.h"

using namespace steelyard;

void MeasurementsView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &MeasurementsView::refresh))
        return;
    refresh();
}

void MeasurementsView::setItemId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString MeasurementsView::name() const
{
    return record() ? QString::fromStdString(record()->item.name) : QString();
}

QString MeasurementsView::kind() const
{
    return record() ? QString::fromStdString(wordOf(kindOf(record()->item.measurement))) : QString();
}

void MeasurementsView::refresh()
{
    std::vector<DatedRow> rows;
    if (record())
        for (const MeasurementRecord& measured : record()->measurements) {
            // the first of the list is the one that set-ups are worked out from
            const QString counts = rows.empty() ? tr("this one counts") : QString();
            const QString before = saidtexts::measurementBefore(*m_book, measured);
            const QString hint = counts.isEmpty() || before.isEmpty() ? counts + before : tr("%1 · %2").arg(counts, before);
            rows.push_back({QString::fromStdString(measured.id.hex()),
                            tr("%1, %2").arg(keepingtexts::day(measured.day, m_book->today()), saidtexts::age(measured.day, m_book->today())), hint,
                            saidtexts::measured(measured.measured)});
        }
    m_measurements.setRows(std::move(rows));
    Q_EMIT changed();
}
