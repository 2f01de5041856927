// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"

/** What the vault's numbers are shown and keyed in; a choice holds once it is on the disk. */
class UnitsChoice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(int mass READ mass WRITE setMass NOTIFY changed FINAL)
    Q_PROPERTY(int length READ length WRITE setLength NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    /// 0 kilograms, 1 pounds; anything else is passed over.
    [[nodiscard]] int mass() const { return m_book ? static_cast<int>(m_book->book().settings().mass) : 0; }
    void setMass(int mass);
    /// 0 centimetres, 1 inches.
    [[nodiscard]] int length() const { return m_book ? static_cast<int>(m_book->book().settings().length) : 0; }
    void setLength(int length);

Q_SIGNALS:
    void changed();

private:
    void keep(const steelyard::VaultSettings& settings);

    BookService* m_book = nullptr;
};
