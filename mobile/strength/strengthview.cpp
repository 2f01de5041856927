// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/strength/strengthview.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"
#include "core/work/strength/standing.h"
#include "mobile/follow.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/strength/strengthtexts.h"
#include "mobile/text/keepingtexts.h"

#include <algorithm>

using namespace steelyard;

namespace {

QString partText(const LiftId& lift) { return QString::fromStdString(partOf(lift)); }

StandingRow rowOf(const LiftStanding& standing, const BookService& book)
{
    StandingRow row{partText(standing.lift), keepingtexts::lift(standing.lift, book.book()), {}, {}, true};
    if (!standing.maximum) {
        row.value = StrengthView::tr("no maximum");
        row.hint = StrengthView::tr("nothing follows from its tests");
        return row;
    }
    const DayMaximum& max = *standing.maximum;
    row.value = strengthtexts::range(max.max);
    const QString age = saidtexts::age(max.day, book.today());
    QStringList lines{StrengthView::tr("%1, %2, %3").arg(strengthtexts::middle(max.max), max.max.isTested ? StrengthView::tr("tested") : StrengthView::tr("estimated"), age)};
    if (standing.isOld)
        lines << StrengthView::tr("older than your limit: test again");
    if (!max.test.conditions.isPlainIron())
        lines << StrengthView::tr("with %1").arg(strengthtexts::conditions(max.test.conditions, book.book(), book.today()));
    if (max.test.conditions.bodyMass)
        lines << StrengthView::tr("her body is in it");
    if (const QString scaled = strengthtexts::scaled(standing); !scaled.isEmpty())
        lines << scaled;
    row.hint = lines.join(QLatin1Char('\n'));
    return row;
}

}

void StrengthView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &StrengthView::refresh))
        return;
    refresh();
}

void StrengthView::setAthleteId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString StrengthView::name() const
{
    const Athlete* athlete = m_book ? m_book->book().athlete(m_id) : nullptr;
    return athlete ? QString::fromStdString(athlete->name) : QString();
}

bool StrengthView::isAny() const
{
    const auto& rows = m_lifts.rows();
    return !rows.empty() && rows.front().tested;
}

void StrengthView::refresh()
{
    std::vector<StandingRow> rows, marked, others;
    m_waits.clear();
    m_scaled = false;
    if (const Athlete* athlete = m_book ? m_book->book().athlete(m_id) : nullptr) {
        std::set<LiftId> tested;
        for (const LiftStanding& standing : standingOn(m_book->book(), m_id, m_book->today())) {
            tested.insert(standing.lift);
            m_scaled = m_scaled || standing.byMass.has_value();
            rows.push_back(rowOf(standing, *m_book));
        }
        const auto add = [&](const LiftId& lift) {
            if (!tested.contains(lift) && hasMaximum(lift))
                (athlete->marks.contains(lift) ? marked : others).push_back({partText(lift), keepingtexts::lift(lift, m_book->book()), {}, tr("not tested"), false});
        };
        for (const OwnLift* own : m_book->book().lifts())
            add(LiftId::added(own->id));
        for (const Lift& lift : shippedLifts())
            add(lift.id);
        if (const auto unfit = unfitForMore(*athlete, m_book->today())) {
            const auto said = keepingtexts::refusal({{}, unfit, std::nullopt});
            m_waits = {said.head, said.body};
        }
    }
    rows.insert(rows.end(), marked.begin(), marked.end());
    rows.insert(rows.end(), others.begin(), others.end());
    m_lifts.setRows(std::move(rows));
    Q_EMIT changed();
}
