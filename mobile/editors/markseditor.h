// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/measuring/keptkit.h"
#endif
#include "mobile/editors/fieldeditor.h"

/** A lifter's bar marks for the lift at hand. */
class MarksEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool fromFloor READ fromFloor WRITE setFromFloor NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed FINAL)
    Q_PROPERTY(QStringList racks READ racks NOTIFY changed FINAL)
    Q_PROPERTY(int rack READ rack WRITE setRack NOTIFY changed FINAL)
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
    /// "tape", then each rack here that has holes; none where there is no such rack.
    [[nodiscard]] QStringList racks() const;
    /// 0 by tape. By a rack the marks are keyed as its holes, and kept as the heights of those.
    [[nodiscard]] int rack() const;
    void setRack(int place);
    /// Metres of one unit of the ruler.
    [[nodiscard]] double unitLength() const;

private:
    [[nodiscard]] std::vector<steelyard::KeptRack> racksHere() const;
    [[nodiscard]] std::optional<steelyard::KeptRack> rackRead() const;
    /// A mark as it is keyed: a height, or a hole of the rack.
    [[nodiscard]] FieldSpec markSpec(const QString& key, const QString& label, const QString& hint, bool needed = false) const;

    steelyard::RecordId m_rack;
};
