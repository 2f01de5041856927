// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/models/seasonrows.h"

/** One athlete's lifts with the marks known of each, and the set-ups kept. */
class LiftsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* lifts READ lifts CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* setups READ setups CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_id.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString name() const;
    /// Those with marks first, then the others in their usual order; among either those that the coach added come first.
    [[nodiscard]] QAbstractListModel* lifts() { return &m_lifts; }
    [[nodiscard]] QAbstractListModel* setups() { return &m_setups; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    BookService* m_book = nullptr;
    steelyard::RecordId m_id;
    RowList<LiftRow> m_lifts;
    RowList<SavedRow> m_setups;
};
