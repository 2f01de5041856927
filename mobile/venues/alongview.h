// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/venues/venuerows.h"

#include <set>

/** What is taken along to a venue for now: everything that belongs elsewhere, each to be ticked, and what of the venue's own is away. */
class AlongView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venue READ venue NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* things READ things CONSTANT FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)
    Q_PROPERTY(QString fact READ fact NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString venueId() const { return QString::fromStdString(m_venue.hex()); }
    void setVenueId(const QString& id);
    /// Its name.
    [[nodiscard]] QString venue() const;
    [[nodiscard]] QAbstractListModel* things() { return &m_things; }
    [[nodiscard]] bool isEmpty() const { return m_things.rowCount() == 0; }
    /// "2 come along, 1 goes back".
    [[nodiscard]] QString fact() const;
    [[nodiscard]] bool canKeep() const { return !m_turned.empty(); }
    /// Ticks a thing, or unticks it.
    Q_INVOKABLE void turn(const QString& itemId);
    Q_INVOKABLE void keep();

Q_SIGNALS:
    void changed();
    void kept();

private:
    void refresh();
    [[nodiscard]] bool isHere(const steelyard::RecordId& item) const;

    BookService* m_book = nullptr;
    steelyard::RecordId m_venue;
    RowList<VenueRow> m_things;
    std::set<steelyard::RecordId> m_turned; ///< those that are to be where they are not
};
