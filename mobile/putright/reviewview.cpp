// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/putright/reviewview.h"

#include "core/work/keeping/putright.h"
#include "mobile/follow.h"
#include "mobile/putright/contestedtexts.h"
#include "mobile/putright/saidtexts.h"

#include <algorithm>

using namespace steelyard;

void ReviewView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &ReviewView::refresh))
        return;
    refresh();
}

void ReviewView::refresh()
{
    std::vector<ContestedRow> rows;
    m_asked.clear();
    for (const Contested& contested : m_book ? m_book->book().review() : std::vector<Contested>()) {
        ContestedRow row{contestedtexts::what(*m_book, contested.key), {}, {}};
        Asked asked{contested, {}};
        for (auto head = contested.heads.begin(); head != contested.heads.end(); ++head) {
            const auto alike = [&head](const journal::Held& other) { return other.body.content == head->body.content; };
            if (std::any_of(contested.heads.begin(), head, alike))
                continue;
            asked.answers.push_back(head->id);
            row.answers << contestedtexts::answer(*m_book, contested.key, *head);
            row.given << saidtexts::whenAndWhere(*m_book, *head);
        }
        rows.push_back(std::move(row));
        m_asked.push_back(std::move(asked));
    }
    m_rows.setRows(std::move(rows));
    Q_EMIT changed();
}

void ReviewView::settle(int row, int answer)
{
    const auto at = static_cast<std::size_t>(row), head = static_cast<std::size_t>(answer);
    if (row < 0 || at >= m_asked.size() || answer < 0 || head >= m_asked[at].answers.size())
        return;
    // the list is read anew while this is kept
    const Asked asked = m_asked[at];
    steelyard::settle(m_book->keeping(), asked.contested, asked.answers[head], m_book->teller());
}
