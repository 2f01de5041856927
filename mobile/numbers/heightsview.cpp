// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/numbers/heightsview.h"

#include "core/work/heights.h"
#include "mobile/follow.h"
#include "mobile/pages/setuptexts.h"
#include "mobile/text/say.h"

using namespace steelyard;

namespace {

QString markName(HeightMark mark)
{
    switch (mark) {
    case HeightMark::Bottom: return HeightsView::tr("bottom");
    case HeightMark::ZoneFrom: return HeightsView::tr("sticking zone begins");
    case HeightMark::ZoneTo: return HeightsView::tr("sticking zone ends");
    case HeightMark::Top: return HeightsView::tr("top");
    case HeightMark::None: break;
    }
    return {};
}

/// "chain 18 ± 1"
QString ofKind(PullKind kind, const QString& pull)
{
    switch (kind) {
    case PullKind::Chain: return HeightsView::tr("chain %1").arg(pull);
    case PullKind::Band: return HeightsView::tr("band %1").arg(pull);
    case PullKind::Help: return HeightsView::tr("aid %1").arg(pull);
    case PullKind::Iron: break;
    }
    return HeightsView::tr("iron %1").arg(pull);
}

HeightRow rowOf(const HeightLine& line)
{
    HeightRow row;
    const QString at = say::lengthWithUnit(line.height);
    row.mark = line.mark != HeightMark::None;
    row.at = row.mark ? HeightsView::tr("%1, %2").arg(at, markName(line.mark)) : at;
    if (!line.known) {
        row.pull = HeightsView::tr("not known");
        return row;
    }
    row.pull = say::pull(line.total).withUnit();
    const double factor = line.total.u.si() > 0 ? line.total.giveOrTake / line.total.u : 0;
    QStringList parts{ofKind(PullKind::Iron, say::pull(line.iron, factor * line.uIron).tight())};
    for (const PullOfKind& of : line.hung)
        parts << ofKind(of.kind, say::pull(of.pull, factor * of.u).tight());
    row.made = parts.join(QStringLiteral(" · "));
    return row;
}

}

void HeightsView::setDesk(DeskService* desk)
{
    if (follow(this, m_desk, desk, &HeightsView::refresh))
        refresh();
}

void HeightsView::refresh()
{
    if (!m_desk)
        return;
    const WeighedUp& answer = m_desk->desk().answer();
    const Length step = say::units().length == LengthUnit::Inch ? 2 * inch : metres(0.05);
    std::vector<HeightRow> rows;
    for (const HeightLine& line : heightTable(answer, step))
        rows.push_back(rowOf(line));
    m_title = setuptexts::answer(answer).title;
    m_lines.setRows(std::move(rows));
    Q_EMIT changed();
}
