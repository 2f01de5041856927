// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/putright/rightrows.h"

/** What several devices said differently, each to be settled by choosing one answer. */
class ReviewView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QAbstractListModel* contested READ contested CONSTANT FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QAbstractListModel* contested() { return &m_rows; }
    [[nodiscard]] int count() const { return m_rows.rowCount(); }

    /// Settles a row by one of its answers, in the order shown.
    Q_INVOKABLE void settle(int row, int answer);

Q_SIGNALS:
    void changed();

private:
    void refresh();

    BookService* m_book = nullptr;
    /// A contested register with the heads that its answers stand for: what several devices said alike is one answer.
    struct Asked {
        steelyard::Contested contested;
        std::vector<steelyard::journal::EntryId> answers;
    };
    std::vector<Asked> m_asked;
    RowList<ContestedRow> m_rows;
};
