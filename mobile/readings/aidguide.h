// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/readings/aideditor.h"
#include "mobile/readings/readingsguide.h"

/** Measuring an elastic bench aid in steps: what rests on it and how high it holds the bar, in turn. */
class AidGuide : public ReadingsGuide {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool bare READ isBare NOTIFY changed FINAL)

public:
    using ReadingsGuide::ReadingsGuide;

    [[nodiscard]] QString how() const override;
    [[nodiscard]] QString gain() const override;

    /// Nothing rests on it at this reading, or is to rest on it: where it goes slack is read by hand.
    [[nodiscard]] bool isBare() const;

protected:
    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString question(const QString& part) const override;
    [[nodiscard]] QString progressAt(int reading) const override;
    [[nodiscard]] int fewest() const override;
    [[nodiscard]] std::pair<QString, QString> nextAdvice() const override;

private:
    [[nodiscard]] steelyard::AidMeasurement measurement() const;
};
