// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/putright/rightrows.h"

/** What an athlete may do today, what was set for other days, and what she is cleared for. */
class StandingView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString today READ today NOTIFY changed FINAL)
    Q_PROPERTY(QString what READ what NOTIFY changed FINAL)
    Q_PROPERTY(bool stop READ isStop NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* inForce READ inForce CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* otherDays READ otherDays CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* clearances READ clearances CONSTANT FINAL)
    Q_PROPERTY(QString cleared READ cleared NOTIFY changed FINAL)
    Q_PROPERTY(QString waits READ waits NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_id.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString name() const;
    /// "all", "some, until 14 Nov", "none".
    [[nodiscard]] QString today() const { return m_today; }
    /// "not: overhead, presses"; several add up. Empty where nothing is named.
    [[nodiscard]] QString what() const { return m_what; }
    /// Does not train, or what she may do cannot be read here.
    [[nodiscard]] bool isStop() const { return m_stop; }
    /// Day status in force today; and those to come or over, the last first.
    [[nodiscard]] QAbstractListModel* inForce() { return &m_inForce; }
    [[nodiscard]] QAbstractListModel* otherDays() { return &m_otherDays; }
    /// Those that hold first.
    [[nodiscard]] QAbstractListModel* clearances() { return &m_clearances; }
    /// How many hold; "nothing yet" where none does.
    [[nodiscard]] QString cleared() const { return m_cleared; }
    /// Why none can be given yet; empty where one can.
    [[nodiscard]] QString waits() const { return m_waits; }
    /// Drafts change without word from the book: a page that comes back asks.
    Q_INVOKABLE void refresh();

Q_SIGNALS:
    void changed();

private:
    void readStatuses();
    void readClearances();

    BookService* m_book = nullptr;
    steelyard::RecordId m_id;
    QString m_today, m_what, m_cleared, m_waits;
    bool m_stop = false;
    RowList<DatedRow> m_inForce, m_otherDays, m_clearances;
};
