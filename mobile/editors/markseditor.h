// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fieldeditor.h"

/** A lifter's bar marks for the lift at hand. */
class MarksEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool fromFloor READ fromFloor WRITE setFromFloor NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed FINAL)
    Q_PROPERTY(double unitLength READ unitLength NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

    [[nodiscard]] bool fromFloor() const;
    void setFromFloor(bool fromFloor);
    /// Why these marks give no path yet; empty when they do.
    [[nodiscard]] QString trouble() const;
    /// {name, height (m), text} for the ruler.
    [[nodiscard]] QVariantList marks() const;
    /// Metres of one unit of the ruler.
    [[nodiscard]] double unitLength() const;
};
