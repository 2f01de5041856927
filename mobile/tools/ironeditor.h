// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/tools/tooleditor.h"

/** Weighing iron against its mark: a bar, or plates of one kind. */
class IronEditor : public ToolEditor {
    Q_OBJECT
    QML_ELEMENT

public:
    using ToolEditor::ToolEditor;

    [[nodiscard]] steelyard::IronMeasurement measurement() const;
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    [[nodiscard]] ToolWords words() const override;
    /// 0 a bar, 1 plates.
    [[nodiscard]] int choice() const override;
    void setChoice(int choice) override;
    [[nodiscard]] QString question(const QString& key) const override;
    [[nodiscard]] QString how(const QString& key) const override;
    [[nodiscard]] QString answer() const override;
    [[nodiscard]] QString verdict() const override;
    [[nodiscard]] QString gain() const override;
    [[nodiscard]] std::optional<WeighedOn> weighedOn() const override;
    void weighOn(const WeighedOn& scale) override;

protected:
    [[nodiscard]] steelyard::ItemKind kind() const override { return steelyard::ItemKind::Iron; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;
    [[nodiscard]] std::optional<steelyard::Error> refusalOf(const steelyard::Measured& measured) const override;
};
