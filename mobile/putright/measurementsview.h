// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/putright/rightrows.h"

/** What was ever measured on one thing of the kit, the last first, each with its age. */
class MeasurementsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString kind READ kind NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* measurements READ measurements CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_id.hex()); }
    void setItemId(const QString& id);
    [[nodiscard]] QString name() const;
    /// Of the thing, in one word.
    [[nodiscard]] QString kind() const;
    [[nodiscard]] QAbstractListModel* measurements() { return &m_measurements; }

Q_SIGNALS:
    void changed();

private:
    void refresh();
    [[nodiscard]] const steelyard::KitRecord* record() const { return m_book ? m_book->book().item(m_id) : nullptr; }

    BookService* m_book = nullptr;
    steelyard::RecordId m_id;
    RowList<DatedRow> m_measurements;
};
