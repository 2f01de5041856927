// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/deskservice.h"
#include "mobile/models/rows.h"

#ifndef Q_MOC_RUN
#include "core/work/origin.h"
#endif

/** Where the numbers of the set-up come from, one at a time. */
class OriginView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QStringList numbers READ numbers NOTIFY changed FINAL)
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY changed FINAL)
    Q_PROPERTY(QString number READ number NOTIFY changed FINAL)
    Q_PROPERTY(QString advice READ advice NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* lines READ lines CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    /// Those that the set-up has, by name.
    [[nodiscard]] QStringList numbers() const;
    [[nodiscard]] int current() const;
    void setCurrent(int index);
    /// The chosen one with its give-or-take and height; empty where there is none.
    [[nodiscard]] QString number() const { return m_number; }
    [[nodiscard]] QString advice() const { return m_advice; }
    [[nodiscard]] QAbstractListModel* lines() { return &m_lines; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    DeskService* m_desk = nullptr;
    BookService* m_book = nullptr;
    std::vector<steelyard::WhichPull> m_there;
    steelyard::WhichPull m_which = steelyard::WhichPull::Bottom;
    QString m_number, m_advice;
    RowList<OriginRow> m_lines;
};
