// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/models/seasonrows.h"

/** The last things done, to be undone one by one. */
class DeedsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QAbstractListModel* deeds READ deeds CONSTANT FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QAbstractListModel* deeds() { return &m_deeds; }
    [[nodiscard]] bool isEmpty() const { return m_deeds.rowCount() == 0; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    BookService* m_book = nullptr;
    RowList<DeedRow> m_deeds;
};
