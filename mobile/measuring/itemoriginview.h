// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/models/rows.h"

/** Where the number of a kept thing comes from: formula, inputs, day. */
class ItemOriginView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString number READ number NOTIFY changed FINAL)
    Q_PROPERTY(QString formula READ formula NOTIFY changed FINAL)
    Q_PROPERTY(QString measured READ measured NOTIFY changed FINAL)
    Q_PROPERTY(QString advice READ advice NOTIFY changed FINAL)
    Q_PROPERTY(QString sources READ sources NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* lines READ lines CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_item.hex()); }
    void setItemId(const QString& id);
    [[nodiscard]] QString name() const { return m_name; }
    /// With its give-or-take; empty where there is none.
    [[nodiscard]] QString number() const { return m_number; }
    [[nodiscard]] QString formula() const { return m_formula; }
    /// "measured 12 Sep, due in 3 weeks".
    [[nodiscard]] QString measured() const { return m_measured; }
    /// What would make it surer most; empty where nothing is worth the while.
    [[nodiscard]] QString advice() const { return m_advice; }
    /// Whose word formula and parts are, in one line; empty where they are nobody's.
    [[nodiscard]] QString sources() const { return m_sources; }
    [[nodiscard]] QAbstractListModel* lines() { return &m_lines; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    BookService* m_book = nullptr;
    steelyard::RecordId m_item;
    QString m_name, m_number, m_formula, m_measured, m_advice, m_sources;
    RowList<OriginRow> m_lines;
};
