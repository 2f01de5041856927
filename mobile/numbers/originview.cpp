// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/numbers/originview.h"

#include "mobile/follow.h"
#include "mobile/text/origintexts.h"
#include "mobile/text/say.h"

#include <algorithm>

using namespace steelyard;

void OriginView::setDesk(DeskService* desk)
{
    if (follow(this, m_desk, desk, &OriginView::refresh))
        refresh();
}

void OriginView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &OriginView::refresh))
        refresh();
}

QStringList OriginView::numbers() const
{
    QStringList names;
    for (const WhichPull which : m_there)
        names << origintexts::which(which);
    return names;
}

int OriginView::current() const
{
    const auto at = std::find(m_there.begin(), m_there.end(), m_which);
    return at == m_there.end() ? -1 : static_cast<int>(at - m_there.begin());
}

void OriginView::setCurrent(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= m_there.size())
        return;
    m_which = m_there[static_cast<std::size_t>(index)];
    refresh();
}

void OriginView::refresh()
{
    if (!m_desk || !m_book)
        return;
    const Desk& desk = m_desk->desk();
    m_there.clear();
    std::vector<OriginRow> rows;
    m_number.clear();
    m_advice.clear();
    for (const WhichPull which : {WhichPull::Rack, WhichPull::Bottom, WhichPull::Zone, WhichPull::Top, WhichPull::Mean}) {
        const auto origin = originOf(desk.answer(), desk.setup(), desk.kit(), which);
        if (!origin)
            continue;
        m_there.push_back(which);
        if (which != m_which)
            continue;
        m_number = origintexts::number(*origin);
        m_advice = origintexts::advice(*origin, desk);
        const double factor = origin->reading.u.si() > 0 ? origin->reading.giveOrTake / origin->reading.u : 0;
        for (const OriginLine& line : origin->lines) {
            const Force give = factor * line.u;
            rows.push_back({origintexts::what(line, desk), line.by == KnownBy::Taped ? origintexts::howMarked(which, desk) : origintexts::how(line, m_book->book(), m_book->today()), origintexts::adds(line, give),
                            tr("%1 % of what makes it uncertain").arg(say::plain(100 * line.share, 0)), line.share});
        }
    }
    m_lines.setRows(std::move(rows));
    Q_EMIT changed();
}
