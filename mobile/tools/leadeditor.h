// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/tools/tooleditor.h"

/** Measuring a strap or cord that something is hung by: its length and what it weighs with its hooks. */
class LeadEditor : public ToolEditor {
    Q_OBJECT
    QML_ELEMENT

public:
    using ToolEditor::ToolEditor;

    [[nodiscard]] steelyard::LeadMeasurement measurement() const;
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    [[nodiscard]] ToolWords words() const override;
    [[nodiscard]] QString question(const QString& key) const override;
    [[nodiscard]] QString how(const QString& key) const override;
    [[nodiscard]] QString answer() const override;

protected:
    [[nodiscard]] steelyard::ItemKind kind() const override { return steelyard::ItemKind::Lead; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;
    [[nodiscard]] std::optional<steelyard::Error> refusalOf(const steelyard::Measured& measured) const override;
};
