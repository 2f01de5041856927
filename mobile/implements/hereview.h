// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/models/rowlist.h"

#ifndef Q_MOC_RUN
#include "core/work/implements/whatishere.h"
#endif

/** One thing that is here: what it weighs, whether she may use it, and what stands against it. */
struct HereThing {
    QString itemId, kind, name, mass, may, why;
    bool stop = false;    ///< she may not
    bool permits = false; ///< nothing stands against it
    bool operator==(const HereThing&) const = default;
    static std::vector<RowRole<HereThing>> roles()
    {
        return {{"itemId", [](const HereThing& r) { return r.itemId; }}, {"kind", [](const HereThing& r) { return r.kind; }},
                {"thing", [](const HereThing& r) { return r.name; }},     {"mass", [](const HereThing& r) { return r.mass; }},
                {"may", [](const HereThing& r) { return r.may; }},       {"why", [](const HereThing& r) { return r.why; }},
                {"stop", [](const HereThing& r) { return r.stop; }},     {"permits", [](const HereThing& r) { return r.permits; }}};
    }
};

/** What is here that an athlete may use: every tyre, log, stone, keg, sled, handle and bell of a venue. */
class HereView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString venue READ venue NOTIFY changed FINAL)
    Q_PROPERTY(QString counts READ counts NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* things READ things CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString venueId() const { return QString::fromStdString(m_venue.hex()); }
    void setVenueId(const QString& id);
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString venue() const;
    /// "2 she may use, 3 to look over, 1 not now".
    [[nodiscard]] QString counts() const { return m_counts; }
    /// Why there is no list, and what to do.
    [[nodiscard]] QString trouble() const { return m_trouble; }
    [[nodiscard]] QAbstractListModel* things() { return &m_things; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    BookService* m_book = nullptr;
    steelyard::RecordId m_athlete, m_venue;
    QString m_counts, m_trouble;
    RowList<HereThing> m_things;
};
