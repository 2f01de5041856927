// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/tools/tooleditor.h"

/** Measuring a rack: its lowest hole, from hole to hole, how many; and where bands can be anchored at it. */
class RackEditor : public ToolEditor {
    Q_OBJECT
    QML_ELEMENT

public:
    static constexpr std::size_t mostAnchors = 8;

    using ToolEditor::ToolEditor;

    [[nodiscard]] steelyard::RackMeasurement measurement() const;
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override { return placeIn(key, "anchor").has_value(); }
    [[nodiscard]] ToolWords words() const override;
    /// 0 with holes, 1 only places to anchor bands at.
    [[nodiscard]] int choice() const override;
    void setChoice(int choice) override;
    [[nodiscard]] QString question(const QString& key) const override;
    [[nodiscard]] QString how(const QString& key) const override;
    [[nodiscard]] QString answer() const override;
    [[nodiscard]] QString verdict() const override;
    [[nodiscard]] QString gain() const override;
    QString addEntry() override;

protected:
    [[nodiscard]] steelyard::ItemKind kind() const override { return steelyard::ItemKind::Rack; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;
    [[nodiscard]] std::optional<steelyard::Error> refusalOf(const steelyard::Measured& measured) const override;

private:
    bool m_anchorsOnly = false; ///< before the first of them is there
};
