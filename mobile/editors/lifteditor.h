// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"

/** A lift that the coach adds: what is typed waits as a draft until it is kept. */
class LiftEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString lift READ lift WRITE setLift NOTIFY liftChanged FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(bool fromFloor READ isFromFloor WRITE setFromFloor NOTIFY changed FINAL)
    Q_PROPERTY(QStringList likes READ likes CONSTANT FINAL)
    Q_PROPERTY(int like READ like WRITE setLike NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    /// As DeskWork says it; empty is a new one.
    [[nodiscard]] QString lift() const { return QString::fromStdString(m_id.hex()); }
    void setLift(const QString& lift);
    [[nodiscard]] QString name() const { return QString::fromStdString(form().name); }
    void setName(const QString& name);
    [[nodiscard]] bool isFromFloor() const { return form().start == steelyard::LiftStart::Floor; }
    void setFromFloor(bool fromFloor);
    /// "none of these", then each lift that ships and is done with a bar.
    [[nodiscard]] QStringList likes() const;
    [[nodiscard]] int like() const;
    /// The start is that lift's too, until another is said.
    void setLike(int index);
    [[nodiscard]] bool isDrafted() const { return m_book && m_book->draft(draftKey()); }
    [[nodiscard]] bool canKeep() const;

    /// Keeps what differs; `kept` follows once it is on the disk.
    Q_INVOKABLE void keep();
    Q_INVOKABLE void throwDraft();
    /// Takes it off the list of lifts; marks and set-ups that name it stay.
    Q_INVOKABLE void takeOut();

Q_SIGNALS:
    void changed();
    void liftChanged();
    void kept();

private:
    [[nodiscard]] QString draftKey() const { return QStringLiteral("lift:") + lift(); }
    [[nodiscard]] steelyard::OwnLift keptForm() const;
    [[nodiscard]] steelyard::OwnLift form() const;
    void setForm(const steelyard::OwnLift& form);

    BookService* m_book = nullptr;
    steelyard::RecordId m_id;
};
