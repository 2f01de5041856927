// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/models/rowlist.h"

#ifndef Q_MOC_RUN
#include "core/work/implements/sledwork.h"
#endif

#include <QStringList>

/** One of her runs, as a line. */
struct RunRow {
    QString what, value;
    bool operator==(const RunRow&) const = default;
    static std::vector<RowRole<RunRow>> roles()
    {
        return {{"what", [](const RunRow& r) { return r.what; }}, {"value", [](const RunRow& r) { return r.value; }}};
    }
};

/** What leads the page of a sled. */
struct SledWords {
    Q_GADGET
    QML_VALUE_TYPE(sledWords)
    Q_PROPERTY(QString thing MEMBER thing)
    Q_PROPERTY(QString who MEMBER who)
    Q_PROPERTY(QString friction MEMBER friction)
    Q_PROPERTY(QString added MEMBER added)
    Q_PROPERTY(QString pull MEMBER pull)
    Q_PROPERTY(QString pushAngle MEMBER pushAngle)
    Q_PROPERTY(QString push MEMBER push)
    Q_PROPERTY(QString line MEMBER line)
    Q_PROPERTY(QString loss MEMBER loss)
    Q_PROPERTY(QString load MEMBER load)
    Q_PROPERTY(QStringList elsewhere MEMBER elsewhere)

public:
    bool operator==(const SledWords&) const = default;

    QString thing, who;
    QString friction;      ///< of the surface that is chosen; else what to do
    QString added, pull;   ///< what lies on it, and what it takes to walk with that
    QString pushAngle, push; ///< how steep she pushes down, and what that takes, or that it locks
    QString line;          ///< how fast she runs free, or what is missing for a line
    QString loss, load;    ///< "50 %", and what to put on for it
    QStringList elsewhere; ///< the same pull on the other surfaces
};

/** How a sled slides here, what it takes to pull it, and what to put on it for one athlete to lose so much speed. */
class SledView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QStringList surfaces READ surfaces NOTIFY changed FINAL)
    Q_PROPERTY(int surface READ surface WRITE setSurface NOTIFY changed FINAL)
    Q_PROPERTY(SledWords words READ words NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* runs READ runs CONSTANT FINAL)

public:
    /// Steps of what lies on it, of the speed lost, and of how steep it is pushed; ours.
    static constexpr double addedStepKg = 5, lossStepPercent = 5, pushStepDegrees = 5;

    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString venueId() const { return QString::fromStdString(m_venue.hex()); }
    void setVenueId(const QString& id);
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_item.hex()); }
    void setItemId(const QString& id);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    void setAthleteId(const QString& id);
    /// Of the venue, that this sled was pulled on.
    [[nodiscard]] QStringList surfaces() const;
    [[nodiscard]] int surface() const { return m_surface; }
    void setSurface(int surface);
    [[nodiscard]] const SledWords& words() const { return m_words; }
    [[nodiscard]] QAbstractListModel* runs() { return &m_runs; }

    Q_INVOKABLE void stepAdded(bool up);
    Q_INVOKABLE void stepLoss(bool up);
    Q_INVOKABLE void stepPush(bool up);

Q_SIGNALS:
    void changed();

private:
    void refresh();
    [[nodiscard]] const steelyard::SledMeasurement* sled() const;
    [[nodiscard]] std::vector<const steelyard::SledSurface*> known() const;
    void readSurface(SledWords& words, const steelyard::SledSurface& surface) const;
    void readRuns(SledWords& words, const steelyard::SledSurface& surface, std::vector<RunRow>& rows) const;

    BookService* m_book = nullptr;
    steelyard::RecordId m_venue, m_item, m_athlete;
    int m_surface = 0;
    double m_addedKg = 20, m_lossPercent = 50, m_pushDegrees = 15;
    SledWords m_words;
    RowList<RunRow> m_runs;
};
