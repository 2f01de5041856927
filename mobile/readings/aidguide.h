// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/readings/aideditor.h"
#include "mobile/readings/readingsguide.h"

/** Measuring an elastic bench aid in steps: what rests on it and how high it holds the bar, in turn. */
class AidGuide : public ReadingsGuide {
    Q_OBJECT
    QML_ELEMENT

public:
    using ReadingsGuide::ReadingsGuide;

    [[nodiscard]] QString how() const override;
    [[nodiscard]] QString gain() const override;

protected:
    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString question(const QString& part) const override;
    [[nodiscard]] QString progressAt(int reading) const override;
    [[nodiscard]] int fewest() const override;
    [[nodiscard]] std::pair<QString, QString> nextAdvice() const override;

private:
    [[nodiscard]] steelyard::AidMeasurement measurement() const;
};
