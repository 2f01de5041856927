// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fieldeditor.h"

/** The bar, its collars, the load on it and the plates that are here. */
class BarEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QAbstractListModel* stock READ stock CONSTANT FINAL)
    Q_PROPERTY(bool asMarked READ asMarked WRITE setAsMarked NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] QString changes(const QString& key, const KeyedFigure& keyed) const override;
    [[nodiscard]] bool canClear(const QString& key) const override { return key == QLatin1String("sleeve"); }

    [[nodiscard]] QAbstractListModel* stock() { return &m_stock; }
    [[nodiscard]] bool asMarked() const;
    void setAsMarked(bool asMarked);
    /// One pair more or less of the plates in a row.
    Q_INVOKABLE void stepPairs(int row, bool up);
    /// The next load that the plates make.
    Q_INVOKABLE void stepLoad(bool up);

protected:
    void refresh() override;

private:
    RowList<StockRow> m_stock;
};
