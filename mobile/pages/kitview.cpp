// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/kitview.h"

#include "core/work/measuredkit.h"
#include "mobile/follow.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <array>

using namespace steelyard;

void KitView::setDesk(DeskService* desk)
{
    if (!follow(this, m_desk, desk, &KitView::refresh))
        return;
    Q_EMIT deskChanged();
    refresh();
}

void KitView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &KitView::refresh))
        return;
    Q_EMIT deskChanged();
    refresh();
}

void KitView::refresh()
{
    if (!m_desk)
        return;
    // what is due to be measured comes first, what is out of use last
    std::array<std::vector<ThingRow>, 3> ranked;
    for (const KitItem& item : m_desk->desk().kit()) {
        ThingRow row;
        row.itemId = QString::fromStdString(item.id.hex());
        row.what = QString::fromStdString(item.name);
        row.kind = QString::fromStdString(wordOf(kindOf(item.measurement)));
        row.leftPiece = item.pair ? tr("a pair") : tr("one");
        if (const auto* measured = std::get_if<ChainMeasurement>(&item.measurement)) {
            const auto chain = chainFrom(*measured);
            row.usable = chain.ok();
            row.how = chain ? tr("%1, %2").arg(say::perLength(chain->perLength.value), say::lengthWithUnit(chain->length))
                            : sentences::refusal(chain.error());
        } else if (const auto* band = std::get_if<BandMeasurement>(&item.measurement)) {
            const auto fit = bandFitFrom(*band);
            row.usable = fit.ok();
            row.how = fit ? tr("pulls %1 at %2").arg(say::inMassUnit(say::plain(say::shownPull(fit->pull(fit->longestMeasured())), 1)), say::lengthWithUnit(fit->longestMeasured()))
                          : sentences::refusal(fit.error());
        } else {
            row.usable = false;
            row.how = saidtexts::measured(item.measurement);
        }
        if (m_desk->desk().draft(item.id, kindOf(item.measurement)))
            row.how = tr("%1 · changes not kept").arg(row.how);
        const KitRecord* record = m_book ? m_book->book().item(item.id) : nullptr;
        bool due = false;
        if (item.isOutOfUse()) {
            row.outOfUse = true;
            row.usable = false;
            row.how = measuretexts::outOfUse(*item.inspection, m_book ? m_book->today() : item.inspection->day);
        } else if (record && !record->measurements.empty()) {
            const MeasurementRecord& last = record->measurements.front();
            due = dueOn(last, m_book->today()).state == DueState::Due;
            row.how = tr("%1 · %2").arg(row.how, measuretexts::age(last, m_book->today()));
        }
        ranked[row.outOfUse ? 2 : due ? 0 : 1].push_back(row);
    }
    std::vector<ThingRow> rows;
    for (const auto& part : ranked)
        rows.insert(rows.end(), part.begin(), part.end());
    m_things.setRows(std::move(rows));
    Q_EMIT changed();
}

QString KitView::draftText(ItemKind kind) const
{
    return m_desk && m_desk->desk().draft(RecordId{}, kind) ? tr("begun, not kept") : QString();
}
