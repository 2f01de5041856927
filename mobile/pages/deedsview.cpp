// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/deedsview.h"

#include "core/work/keeping/undo.h"
#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"

using namespace steelyard;

void DeedsView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &DeedsView::refresh))
        return;
    refresh();
}

void DeedsView::refresh()
{
    std::vector<DeedRow> rows;
    if (m_book) {
        const SeasonKeeping& keeping = m_book->keeping();
        for (std::size_t i = 0; i < keeping.deeds().size(); ++i) {
            const bool free = canUndo(keeping, i);
            rows.push_back({keepingtexts::deed(keeping.deeds()[i], m_book->book()), free ? QString() : tr("something newer stands there: undo that first"), free});
        }
    }
    m_deeds.setRows(std::move(rows));
    Q_EMIT changed();
}
