// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/readings/readingseditor.h"

/** Measuring a machine with a cam: by the cam's radius at each angle, or by what it pulls along the handle's way. */
class MachineEditor : public ReadingsEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool byPull READ isByPull WRITE setByPull NOTIFY changed FINAL)

public:
    using ReadingsEditor::ReadingsEditor;

    [[nodiscard]] steelyard::MachineMeasurement measurement() const;
    [[nodiscard]] bool isByPull() const { return measurement().by == steelyard::MachineMeasuring::Pull; }
    void setByPull(bool byPull);
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    [[nodiscard]] bool isMeasured() const override;
    [[nodiscard]] QString answer() const override;
    [[nodiscard]] QString trouble() const override;
    [[nodiscard]] FitPicture picture() const override;
    [[nodiscard]] QString more() const override;
    [[nodiscard]] std::pair<QString, QString> parts() const override;
    [[nodiscard]] int count() const override { return static_cast<int>(measurement().readings.size()); }
    void removeReading(int row) override;
    /// A machine's readings are taken or not: there is nothing to leave out.
    void setLeftOut(int row, bool leftOut) override;

protected:
    void addEmpty() override;
    [[nodiscard]] std::vector<HangingRow> rows() const override;
    [[nodiscard]] steelyard::ItemKind kind() const override { return steelyard::ItemKind::Machine; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;

private:
    void setMeasurement(const steelyard::MachineMeasurement& measurement);
    void readAs(steelyard::MachineReading& reading, const Place& place, const KeyedFigure& keyed) const;
};
