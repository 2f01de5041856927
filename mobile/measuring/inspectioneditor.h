// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"

/** A thing looked over: out of use for what was found, or back in use. */
class InspectionEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(bool outOfUse READ isOutOfUse NOTIFY changed FINAL)
    Q_PROPERTY(QString state READ state NOTIFY changed FINAL)
    Q_PROPERTY(QStringList faults READ faults CONSTANT FINAL)
    Q_PROPERTY(int fault MEMBER m_fault NOTIFY changed FINAL)
    Q_PROPERTY(QString note MEMBER m_note NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_item.hex()); }
    void setItemId(const QString& id);
    [[nodiscard]] QString name() const;
    [[nodiscard]] bool isOutOfUse() const;
    /// What the last look over found, and when; empty when there was none.
    [[nodiscard]] QString state() const;
    [[nodiscard]] QStringList faults() const;
    /// Out of use for the fault chosen, or back in use.
    Q_INVOKABLE void keep(bool fit);

Q_SIGNALS:
    void changed();
    void kept();

private:
    [[nodiscard]] const steelyard::KitItem* item() const;

    BookService* m_book = nullptr;
    steelyard::RecordId m_item;
    int m_fault = -1;
    QString m_note;
};
