// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/kitview.h"

#include "core/work/measuredkit.h"
#include "mobile/follow.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

using namespace steelyard;

void KitView::setDesk(DeskService* desk)
{
    if (!follow(this, m_desk, desk, &KitView::refresh))
        return;
    Q_EMIT deskChanged();
    refresh();
}

void KitView::refresh()
{
    if (!m_desk)
        return;
    std::vector<ThingRow> rows;
    for (const KitItem& item : m_desk->desk().kit()) {
        ThingRow row;
        row.itemId = QString::fromStdString(item.id.hex());
        row.what = QString::fromStdString(item.name);
        row.leftPiece = item.pair ? tr("a pair") : tr("one");
        if (const auto* measured = std::get_if<ChainMeasurement>(&item.measurement)) {
            row.chain = true;
            const auto chain = chainFrom(*measured);
            row.usable = chain.ok();
            row.how = chain ? tr("%1, %2").arg(say::perLength(chain->perLength.value), say::lengthWithUnit(chain->length))
                            : sentences::refusal(chain.error());
        } else {
            const auto fit = bandFitFrom(std::get<BandMeasurement>(item.measurement));
            row.usable = fit.ok();
            row.how = fit ? tr("pulls %1 at %2").arg(say::inMassUnit(say::plain(say::shownPull(fit->pull(fit->longestMeasured())), 1)), say::lengthWithUnit(fit->longestMeasured()))
                          : sentences::refusal(fit.error());
        }
        if (m_desk->desk().draft(item.id, row.chain))
            row.how = tr("%1 · changes not kept").arg(row.how);
        rows.push_back(row);
    }
    m_things.setRows(std::move(rows));
    Q_EMIT changed();
}

QString KitView::draftText(bool chain) const
{
    return m_desk && m_desk->desk().draft(RecordId{}, chain) ? tr("begun, not kept") : QString();
}
