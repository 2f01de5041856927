// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fitpicture.h"
#include "mobile/editors/itemeditor.h"

#include <optional>
#include <utility>

/** Measuring a thing by readings of two numbers each. */
class ReadingsEditor : public ItemEditor {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a form of its own kind")
    Q_PROPERTY(QAbstractListModel* readings READ readings CONSTANT FINAL)
    Q_PROPERTY(FitPicture picture READ picture NOTIFY changed FINAL)
    Q_PROPERTY(QString oddText READ oddText NOTIFY changed FINAL)
    Q_PROPERTY(QString more READ more NOTIFY changed FINAL)

public:
    using ItemEditor::ItemEditor;

    [[nodiscard]] QAbstractListModel* readings() { return &m_readings; }
    [[nodiscard]] virtual FitPicture picture() const = 0;
    /// Which reading does not belong to the others; empty where none stands out.
    [[nodiscard]] virtual QString oddText() const { return {}; }
    /// Its place in the list.
    [[nodiscard]] virtual std::optional<int> oddRow() const { return std::nullopt; }
    /// What it comes to besides the answer.
    [[nodiscard]] virtual QString more() const { return {}; }
    /// What its readings are called in keys, the first asked first: "mass", "height".
    [[nodiscard]] virtual std::pair<QString, QString> parts() const = 0;
    [[nodiscard]] virtual int count() const = 0;
    /// Of a reading's first or second number.
    [[nodiscard]] Q_INVOKABLE QString keyOf(bool first, int row) const { return (first ? parts().first : parts().second) + QLatin1Char(':') + QString::number(row); }
    /// A reading more; the key of its first number.
    Q_INVOKABLE QString addReading();
    Q_INVOKABLE virtual void removeReading(int row) = 0;
    Q_INVOKABLE virtual void setLeftOut(int row, bool leftOut) = 0;

protected:
    void refresh() override;
    virtual void addEmpty() = 0;
    [[nodiscard]] virtual std::vector<HangingRow> rows() const = 0;

    /// What a key is of: the first or the second number, and of which reading.
    struct Place {
        bool first = true;
        std::size_t index = 0;
    };
    /// Nothing for a key of no reading that is there.
    [[nodiscard]] std::optional<Place> placeOf(const QString& key) const;
    [[nodiscard]] static KeepOutcome noSuchEntry();

private:
    RowList<HangingRow> m_readings;
};
