// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/strength/strengthrows.h"

// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/season/lifts.h"
#endif

#include <QVariantList>

/** The tests of one athlete in one lift, by day and never across conditions. */
class LiftStrengthView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString lift READ lift WRITE setLift NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString liftName READ liftName NOTIFY changed FINAL)
    Q_PROPERTY(QStringList counts READ counts NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* tests READ tests CONSTANT FINAL)
    Q_PROPERTY(bool any READ isAny NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList days READ days NOTIFY changed FINAL)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed FINAL)
    Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_id.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString lift() const;
    void setLift(const QString& lift);
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString liftName() const;
    /// What counts today: the range, its middle with how it came, and what it is by body mass; empty where nothing does.
    [[nodiscard]] QStringList counts() const { return m_counts; }
    /// The last day first.
    [[nodiscard]] QAbstractListModel* tests() { return &m_tests; }
    [[nodiscard]] bool isAny() const { return m_tests.rowCount() > 0; }
    /// Of each day that something follows from, the earliest first: {at (days since the first), low, middle, high (in the shown unit),
    /// tested, breaks (other conditions than the day before), day}.
    [[nodiscard]] QVariantList days() const { return m_days; }
    /// The picture in words.
    [[nodiscard]] QString sentence() const { return m_sentence; }
    [[nodiscard]] QString unit() const;

    /// Drafts change without a word.
    Q_INVOKABLE void refresh();

Q_SIGNALS:
    void changed();

private:
    BookService* m_book = nullptr;
    steelyard::RecordId m_id;
    steelyard::LiftId m_lift;
    QStringList m_counts;
    RowList<TestRow> m_tests;
    QVariantList m_days;
    QString m_sentence;
};
