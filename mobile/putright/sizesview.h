// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/putright/rightrows.h"

/** One athlete's body masses and heights, the last day first. */
class SizesView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* sizes READ sizes CONSTANT FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_id.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString name() const;
    [[nodiscard]] QAbstractListModel* sizes() { return &m_sizes; }
    [[nodiscard]] bool isEmpty() const { return m_sizes.rowCount() == 0; }
    /// Drafts change without word from the book: a page that comes back asks.
    Q_INVOKABLE void refresh();

Q_SIGNALS:
    void changed();

private:
    BookService* m_book = nullptr;
    steelyard::RecordId m_id;
    RowList<DatedRow> m_sizes;
};
