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
    Q_PROPERTY(QString lookAt READ lookAt NOTIFY changed FINAL)
    Q_PROPERTY(QStringList findings READ findings NOTIFY changed FINAL)
    Q_PROPERTY(int found MEMBER m_found NOTIFY changed FINAL)
    Q_PROPERTY(bool fit READ isFit NOTIFY changed FINAL)
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
    /// Where to look on a thing of its kind, and what for.
    [[nodiscard]] QString lookAt() const;
    /// That nothing is wrong, then what can be wrong with a thing of its kind.
    [[nodiscard]] QStringList findings() const;
    /// Nothing wrong was chosen; of what is out of use, that it is fit again is all there is to say.
    [[nodiscard]] bool isFit() const { return isOutOfUse() || m_found == 0; }
    /// Keeps what was chosen, with today's day: fit, or out of use for that. Nothing while nothing is chosen.
    Q_INVOKABLE void keep();

Q_SIGNALS:
    void changed();
    void kept();

private:
    [[nodiscard]] const steelyard::KitItem* item() const;

    BookService* m_book = nullptr;
    steelyard::RecordId m_item;
    int m_found = -1;
    QString m_note;
};
