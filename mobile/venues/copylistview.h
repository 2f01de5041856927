// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/venues/venuerows.h"

/** The list of another venue, to be copied to this one: names and counts alone, each still to be measured. */
class CopyListView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venue READ venue NOTIFY changed FINAL)
    Q_PROPERTY(QStringList sources READ sources NOTIFY changed FINAL)
    Q_PROPERTY(int source READ source WRITE setSource NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* things READ things CONSTANT FINAL)
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
    /// The other venues, and the one whose list it is; until one is chosen the one with most to copy.
    [[nodiscard]] QStringList sources() const;
    [[nodiscard]] int source() const;
    void setSource(int index);
    /// What would be added.
    [[nodiscard]] QAbstractListModel* things() { return &m_things; }
    /// "5 things, none measured".
    [[nodiscard]] QString fact() const;
    [[nodiscard]] bool canKeep() const { return m_things.rowCount() > 0; }
    Q_INVOKABLE void keep();

Q_SIGNALS:
    void changed();
    void kept();

private:
    void refresh();
    [[nodiscard]] std::vector<const steelyard::Venue*> others() const;
    [[nodiscard]] steelyard::RecordId longestList() const;

    BookService* m_book = nullptr;
    steelyard::RecordId m_venue, m_source;
    RowList<VenueRow> m_things;
};
