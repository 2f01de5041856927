// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/deskservice.h"
#include "mobile/models/rowlist.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

/** A kind of kit to measure: what it is, what measuring it takes, and whether one was begun. */
struct KindRow {
    QString kind, what, takes, begun;
    bool operator==(const KindRow&) const = default;
    static std::vector<RowRole<KindRow>> roles()
    {
        return {{"kind", [](const KindRow& r) { return r.kind; }},
                {"what", [](const KindRow& r) { return r.what; }},
                {"takes", [](const KindRow& r) { return r.takes; }},
                {"begun", [](const KindRow& r) { return r.begun; }}};
    }
};

/** What there is to measure besides chains and bands. */
class MeasureWhat : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QAbstractListModel* kinds READ kinds CONSTANT FINAL)
    Q_PROPERTY(QString begun READ begun NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    [[nodiscard]] QAbstractListModel* kinds() { return &m_kinds; }
    /// Says that one of any of these kinds was begun and not kept; empty when none was.
    [[nodiscard]] QString begun() const;
    /// Drafts change without word from the desk: a page that comes back asks.
    Q_INVOKABLE void refresh();

Q_SIGNALS:
    void changed();

private:
    DeskService* m_desk = nullptr;
    RowList<KindRow> m_kinds;
};
