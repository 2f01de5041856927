// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/deskservice.h"
#include "mobile/models/rowlist.h"

/** One thing of a venue, on the way through all of them: what it weighs, or that it is still to be measured. */
struct ArrivalRow {
    QString itemId, kind, name, what, value;
    bool open = false; ///< still to do
    bool operator==(const ArrivalRow&) const = default;
    static std::vector<RowRole<ArrivalRow>> roles()
    {
        return {{"itemId", [](const ArrivalRow& r) { return r.itemId; }}, {"kind", [](const ArrivalRow& r) { return r.kind; }},
                {"thing", [](const ArrivalRow& r) { return r.name; }},     {"what", [](const ArrivalRow& r) { return r.what; }},
                {"value", [](const ArrivalRow& r) { return r.value; }},   {"open", [](const ArrivalRow& r) { return r.open; }}};
    }
};

/** What lies at a venue and is not known yet, one after the other; what was begun is gone on with. */
class ArrivalView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venue READ venue NOTIFY changed FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY changed FINAL)
    Q_PROPERTY(QString nextItem READ nextItem NOTIFY changed FINAL)
    Q_PROPERTY(QString nextKind READ nextKind NOTIFY changed FINAL)
    Q_PROPERTY(QString nextName READ nextName NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* things READ things CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString venueId() const { return QString::fromStdString(m_venue.hex()); }
    void setVenueId(const QString& id);
    [[nodiscard]] QString venue() const;
    /// "3 of 5 are known"
    [[nodiscard]] QString progress() const { return m_progress; }
    /// What is to be measured next: what was begun, then what stands on the list; without a kind there is nothing more.
    [[nodiscard]] QString nextItem() const { return m_next.itemId; }
    [[nodiscard]] QString nextKind() const { return m_next.kind; }
    [[nodiscard]] QString nextName() const { return m_next.name; }
    [[nodiscard]] QAbstractListModel* things() { return &m_things; }
    /// Drafts change without word from the desk: a page that comes back asks.
    Q_INVOKABLE void refresh();

Q_SIGNALS:
    void changed();

private:
    DeskService* m_desk = nullptr;
    BookService* m_book = nullptr;
    steelyard::RecordId m_venue;
    QString m_progress;
    ArrivalRow m_next;
    RowList<ArrivalRow> m_things;
};
