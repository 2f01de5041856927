// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/itemeditor.h"

/** Measuring a chain: weighed, or by its gauge. */
class ChainEditor : public ItemEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString linkText READ linkText NOTIFY changed FINAL)
    Q_PROPERTY(bool gauged READ isGauged WRITE setGauged NOTIFY changed FINAL)

public:
    using ItemEditor::ItemEditor;

    [[nodiscard]] steelyard::ChainMeasurement measurement() const;
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    [[nodiscard]] bool isMeasured() const override;
    [[nodiscard]] QString answer() const override;
    [[nodiscard]] QString trouble() const override;
    [[nodiscard]] std::optional<WeighedOn> weighedOn() const override;
    void weighOn(const WeighedOn& scale) override;
    /// What one link more or less weighs; empty when its pitch is not known.
    [[nodiscard]] QString linkText() const;
    [[nodiscard]] bool isGauged() const;
    void setGauged(bool gauged);

protected:
    [[nodiscard]] steelyard::ItemKind kind() const override { return steelyard::ItemKind::Chain; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;
};
