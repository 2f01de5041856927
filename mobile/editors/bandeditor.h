// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fitpicture.h"
#include "mobile/editors/itemeditor.h"

/** Measuring a band by hanging known plates on it. */
class BandEditor : public ItemEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QAbstractListModel* hangings READ hangings CONSTANT FINAL)
    Q_PROPERTY(FitPicture picture READ picture NOTIFY changed FINAL)
    Q_PROPERTY(int model READ model WRITE setModel NOTIFY changed FINAL)
    Q_PROPERTY(QString modelText READ modelText NOTIFY changed FINAL)
    Q_PROPERTY(QString oddText READ oddText NOTIFY changed FINAL)

public:
    using ItemEditor::ItemEditor;

    [[nodiscard]] steelyard::BandMeasurement measurement() const;
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    [[nodiscard]] bool isMeasured() const override;
    [[nodiscard]] QString answer() const override;
    [[nodiscard]] QString trouble() const override;

    [[nodiscard]] QAbstractListModel* hangings() { return &m_hangings; }
    [[nodiscard]] FitPicture picture() const;
    /// 0 the best, then line, curve, rubber.
    [[nodiscard]] int model() const;
    void setModel(int model);
    [[nodiscard]] QString modelText() const;
    [[nodiscard]] QString oddText() const;
    /// A hanging more; the key of its mass.
    Q_INVOKABLE QString addHanging(bool unloading = false);
    /// Read while the load comes off again, apart from the others.
    void setUnloading(int row, bool unloading);
    Q_INVOKABLE void setLeftOut(int row, bool leftOut);
    Q_INVOKABLE void removeHanging(int row);

protected:
    void refresh() override;
    [[nodiscard]] steelyard::ItemKind kind() const override { return steelyard::ItemKind::Band; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;

private:
    void setMeasurement(const steelyard::BandMeasurement& measurement);

    RowList<HangingRow> m_hangings;
};
