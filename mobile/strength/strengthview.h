// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/strength/strengthrows.h"

/** How strong one athlete is, lift by lift: the maximum that counts today, and what it is by body mass. */
class StrengthView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(bool any READ isAny NOTIFY changed FINAL)
    Q_PROPERTY(bool scaled READ isScaled NOTIFY changed FINAL)
    Q_PROPERTY(QStringList waits READ waits NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* lifts READ lifts CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_id.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString name() const;
    /// Whether there is a test of any lift.
    [[nodiscard]] bool isAny() const;
    /// Whether one of them stands there by body mass.
    [[nodiscard]] bool isScaled() const { return m_scaled; }
    /// What has to come before a test can be kept, and what settles it; empty where nothing does.
    [[nodiscard]] QStringList waits() const { return m_waits; }
    /// Those with tests first, then those with bar marks, then the others that a maximum can be said of.
    [[nodiscard]] QAbstractListModel* lifts() { return &m_lifts; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    BookService* m_book = nullptr;
    steelyard::RecordId m_id;
    RowList<StandingRow> m_lifts;
    QStringList m_waits;
    bool m_scaled = false;
};
