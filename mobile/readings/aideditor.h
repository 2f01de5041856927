// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/readings/readingseditor.h"

/** Measuring an elastic bench aid by what rests on it, and how high it holds the bar. */
class AidEditor : public ReadingsEditor {
    Q_OBJECT
    QML_ELEMENT

public:
    using ReadingsEditor::ReadingsEditor;

    [[nodiscard]] steelyard::AidMeasurement measurement() const;
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    [[nodiscard]] bool isMeasured() const override;
    [[nodiscard]] QString answer() const override;
    [[nodiscard]] QString trouble() const override;
    [[nodiscard]] FitPicture picture() const override;
    [[nodiscard]] QString oddText() const override;
    [[nodiscard]] std::optional<int> oddRow() const override;
    [[nodiscard]] std::pair<QString, QString> parts() const override { return {QStringLiteral("mass"), QStringLiteral("height")}; }
    [[nodiscard]] int count() const override { return static_cast<int>(measurement().readings.size()); }
    void removeReading(int row) override;
    void setLeftOut(int row, bool leftOut) override;

protected:
    void addEmpty() override;
    [[nodiscard]] std::vector<HangingRow> rows() const override;
    [[nodiscard]] steelyard::ItemKind kind() const override { return steelyard::ItemKind::Aid; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;

private:
    void setMeasurement(const steelyard::AidMeasurement& measurement);
};
