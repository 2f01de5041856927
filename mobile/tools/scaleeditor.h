// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/tools/tooleditor.h"

/** Checking a hanging scale: what it shows empty, its step, and what it reads with known masses on it. */
class ScaleEditor : public ToolEditor {
    Q_OBJECT
    QML_ELEMENT

public:
    static constexpr std::size_t mostReadings = 5;

    using ToolEditor::ToolEditor;

    [[nodiscard]] steelyard::ScaleMeasurement measurement() const;
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;
    [[nodiscard]] ToolWords words() const override;
    [[nodiscard]] int choice() const override;
    void setChoice(int choice) override;
    [[nodiscard]] QString question(const QString& key) const override;
    [[nodiscard]] QString how(const QString& key) const override;
    [[nodiscard]] QString answer() const override;
    [[nodiscard]] QString verdict() const override;
    [[nodiscard]] bool isDoubtful() const override;
    [[nodiscard]] QString gain() const override;
    QString addEntry() override;

protected:
    [[nodiscard]] steelyard::ItemKind kind() const override { return steelyard::ItemKind::Scale; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;
    [[nodiscard]] std::optional<steelyard::Error> refusalOf(const steelyard::Measured& measured) const override;

private:
    bool m_below = false; ///< what it shows empty is under nothing, before it is said how much
};
