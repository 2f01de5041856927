// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/deskservice.h"
#include "mobile/editors/fieldspec.h"
#include "mobile/models/rows.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <vector>

/** What came of keying a number: kept, or why not, with the nearest numbers that can be kept. */
struct KeepOutcome {
    QString refusal;
    std::vector<double> offers; ///< in the shown unit
    [[nodiscard]] bool kept() const { return refusal.isEmpty(); }
};

/** What every form has: numbers by key, shown as rows, keyed on the one keypad page. */
class FieldEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a form of its own kind")
    Q_PROPERTY(DeskService* desk READ deskService WRITE setDeskService NOTIFY deskChanged REQUIRED FINAL)
    Q_PROPERTY(QAbstractListModel* fields READ fields CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* deskService() const { return m_desk; }
    void setDeskService(DeskService* desk);
    [[nodiscard]] QAbstractListModel* fields() { return &m_fields; }

    [[nodiscard]] virtual std::vector<FieldSpec> specs() const = 0;
    /// Keeps a number as it was keyed, in the shown unit.
    virtual KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) = 0;
    /// Takes an optional number away again; false when it cannot be left out.
    virtual bool clearNumber(const QString& key) { Q_UNUSED(key) return false; }
    [[nodiscard]] virtual bool canClear(const QString& key) const { Q_UNUSED(key) return false; }
    /// What else changes when it is kept, in a few words: "take off 5, put on 10, each side".
    [[nodiscard]] virtual QString changes(const QString& key, const KeyedFigure& keyed) const { Q_UNUSED(key) Q_UNUSED(keyed) return {}; }
    [[nodiscard]] std::optional<FieldSpec> spec(const QString& key) const;
    /// The needed number after this one that is still missing; empty when there is none.
    [[nodiscard]] QString nextMissing(const QString& key) const;

Q_SIGNALS:
    void deskChanged();
    void changed();

protected:
    [[nodiscard]] steelyard::Desk& desk() const { return m_desk->desk(); }
    [[nodiscard]] bool ready() const { return m_desk != nullptr; }
    /// Reads everything anew from the desk.
    virtual void refresh();
    void refreshFields();

private:
    DeskService* m_desk = nullptr;
    RowList<FieldRow> m_fields;
};
