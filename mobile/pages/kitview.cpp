// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/kitview.h"

#include "core/work/measuredkit.h"
#include "core/work/venues/keepvenuekit.h"
#include "mobile/follow.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/readings/readingtexts.h"
#include "mobile/text/implementtexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"
#include "mobile/text/tooltexts.h"
#include "mobile/venues/venuetexts.h"

#include <array>

using namespace steelyard;

namespace {

/// What is said of a thing besides stands on a line of its own.
QString beneath(const QString& said, const QString& besides)
{
    return said + QLatin1Char('\n') + besides;
}

QString pullAtLongest(const BandFit& fit)
{
    const Length longest = fit.longestMeasured();
    return say::pull(fit.pull(longest), bandGiveOrTake(fit, longest)).withUnit();
}

}

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
    // what is due to be measured comes first, then what hangs, what helps to measure and to hang, and what is out of use
    std::array<std::vector<KitRow>, 4> ranked;
    for (const KitItem& item : m_desk->desk().kit()) {
        KitRow row;
        row.itemId = QString::fromStdString(item.id.hex());
        row.what = QString::fromStdString(item.name);
        row.kind = QString::fromStdString(wordOf(kindOf(item.measurement)));
        if (!item.isMeasured()) {
            row.usable = false;
            row.how = tr("not measured yet");
        } else if (const auto* measured = std::get_if<ChainMeasurement>(&item.measurement)) {
            const auto chain = chainFrom(*measured);
            row.usable = chain.ok();
            row.how = chain ? tr("%1, %2").arg(say::perLength(chain->perLength.value, coverageFactor95(knownExactly) * chain->perLength.u), say::lengthWithUnit(chain->length))
                            : sentences::refusal(chain.error());
        } else if (const auto* band = std::get_if<BandMeasurement>(&item.measurement)) {
            const auto fit = bandFitFrom(*band);
            row.usable = fit.ok();
            row.how = fit ? tr("pulls %1 at %2").arg(pullAtLongest(*fit), say::lengthWithUnit(fit->longestMeasured()))
                          : sentences::refusal(fit.error());
        } else if (const auto* aid = std::get_if<AidMeasurement>(&item.measurement)) {
            const auto help = aidFrom(*aid);
            row.usable = help.ok();
            row.how = help ? tr("helps %1").arg(readingtexts::help(*help, help->first(), true)) : sentences::refusal(help.error());
        } else if (const auto* machine = std::get_if<MachineMeasurement>(&item.measurement)) {
            // it stands by itself: there is nothing to hang
            row.usable = false;
            const auto answer = answerOf(*machine);
            row.how = answer ? readingtexts::hardest(*machine) : sentences::refusal(answer.error());
        } else {
            row.usable = false;
            row.how = tooltexts::comesTo(item.measurement);
        }
        if (m_desk->desk().draft(item.id, kindOf(item.measurement)))
            row.how = beneath(row.how, tr("changes not kept"));
        const KitRecord* record = m_book ? m_book->book().item(item.id) : nullptr;
        bool due = false;
        if (isImplement(kindOf(item.measurement)))
            row.how = beneath(row.how, implementtexts::what(kindOf(item.measurement)));
        if (item.lent) {
            row.leads = QStringLiteral("loan");
            row.usable = false;
            row.how = venuetexts::lent(*item.lent, today());
        } else if (item.isOutOfUse()) {
            row.outOfUse = true;
            row.usable = false;
            row.how = measuretexts::outOfUse(*item.inspection, today());
        } else if (record && !record->measurements.empty()) {
            const MeasurementRecord& last = record->measurements.front();
            due = dueOn(last, m_book->today()).state == DueState::Due;
            row.how = beneath(row.how, measuretexts::age(last, m_book->today()));
        }
        row.free = item.lent ? tr("lent") : row.outOfUse ? tr("out of use") : freeText(item, row.usable);
        if (const QString where = m_book ? whereFrom(item, due) : QString(); !where.isEmpty())
            row.how = beneath(row.how, where);
        const bool hangs = firstPlacing(kindOf(item.measurement)).has_value();
        ranked[row.outOfUse || item.lent ? 3 : due ? 0 : hangs ? 1 : 2].push_back(row);
    }
    addAway(ranked[3]);
    std::vector<KitRow> rows;
    for (const auto& part : ranked)
        rows.insert(rows.end(), part.begin(), part.end());
    m_things.setRows(std::move(rows));
    Q_EMIT changed();
}

std::chrono::sys_days KitView::today() const
{
    return m_book ? m_book->today() : std::chrono::sys_days{};
}

QString KitView::freeText(const KitItem& item, bool usable) const
{
    const ItemKind kind = kindOf(item.measurement);
    if (kind == ItemKind::Scale || kind == ItemKind::Iron || kind == ItemKind::Rack || (isImplement(kind) && !item.pair))
        return {};
    Pieces pieces = piecesOf(item, m_desk->desk().setup());
    if (!firstPlacing(kindOf(item.measurement)) || (!usable && pieces.hangingCount == 0))
        return item.pair ? tr("a pair") : tr("one");
    // what may not hang is not free, whatever is left of it
    if (!usable)
        pieces.allCount = pieces.hangingCount;
    return venuetexts::freeNow(pieces);
}

QString KitView::whereFrom(const KitItem& item, bool& due) const
{
    QStringList parts;
    if (item.borrowed) {
        const BackState back = backOn(*item.borrowed, today());
        due = due || back == BackState::Soon || back == BackState::Past;
        parts << venuetexts::borrowed(*item.borrowed, today());
    }
    const SeasonBook& book = m_book->book();
    if (const Venue* home = venueNow(book, item) == item.venue ? nullptr : book.venue(item.venue))
        parts << tr("belongs to %1").arg(QString::fromStdString(home->name));
    return parts.join(QLatin1Char('\n'));
}

void KitView::addAway(std::vector<KitRow>& rows) const
{
    const auto venue = RecordId::fromHex(m_venueId.toStdString());
    if (!m_book || !venue || venue->isNone())
        return;
    for (const KitRecord* record : m_book->book().kitAt(*venue)) {
        const Venue* at = m_book->book().venue(venueNow(m_book->book(), record->item));
        if (!at || at->id == *venue || m_desk->desk().item(record->item.id))
            continue;
        KitRow row;
        row.itemId = QString::fromStdString(record->item.id.hex());
        row.kind = QString::fromStdString(wordOf(kindOf(record->item.measurement)));
        row.leads = QStringLiteral("along");
        row.usable = false;
        row.what = QString::fromStdString(record->item.name);
        row.how = tr("taken along to %1").arg(QString::fromStdString(at->name));
        row.free = record->item.pair ? tr("a pair") : tr("one");
        rows.push_back(row);
    }
}

void KitView::setVenueId(const QString& id)
{
    if (m_venueId == id)
        return;
    m_venueId = id;
    Q_EMIT deskChanged();
    refresh();
}
