// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/deskservice.h"
#include "mobile/models/rows.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

/** The kit measured so far, as a list to hang from or to measure again. */
class KitView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY deskChanged REQUIRED FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY deskChanged FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY deskChanged FINAL)
    Q_PROPERTY(QAbstractListModel* things READ things CONSTANT FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    /// Where there is one, each thing says when it was measured and when it is due again.
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    /// Whose things that were taken elsewhere are listed behind those that are here; empty for none.
    [[nodiscard]] QString venueId() const { return m_venueId; }
    void setVenueId(const QString& id);
    [[nodiscard]] QAbstractListModel* things() { return &m_things; }
    [[nodiscard]] bool isEmpty() const { return m_things.rowCount() == 0; }
    /// Drafts change without word from the desk: a page that comes back asks.
    Q_INVOKABLE void refresh();

Q_SIGNALS:
    void deskChanged();
    void changed();

private:
    [[nodiscard]] std::chrono::sys_days today() const;
    /// How much of what goes on a bar is free; of the rest, and of what may not hang, how many there are.
    [[nodiscard]] QString freeText(const steelyard::KitItem& item, bool usable) const;
    /// Whose a thing is and where it belongs, where that is not here; `due` where it is to be back soon.
    [[nodiscard]] QString whereFrom(const steelyard::KitItem& item, bool& due) const;
    void addAway(std::vector<KitRow>& rows) const;

    DeskService* m_desk = nullptr;
    BookService* m_book = nullptr;
    QString m_venueId;
    RowList<KitRow> m_things;
};
