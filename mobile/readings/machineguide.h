// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/readings/machineeditor.h"
#include "mobile/readings/readingsguide.h"

/** Measuring a machine with a cam in steps: by its radius or by its pull, then the readings in turn. */
class MachineGuide : public ReadingsGuide {
    Q_OBJECT
    QML_ELEMENT

public:
    using ReadingsGuide::ReadingsGuide;

    [[nodiscard]] QString how() const override;
    [[nodiscard]] QString gain() const override;
    /// By the cam's radius or by pull, and on.
    Q_INVOKABLE void choose(bool byPull);

protected:
    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString question(const QString& part) const override;
    [[nodiscard]] QString progressAt(int reading) const override;
    [[nodiscard]] int fewest() const override;
    [[nodiscard]] std::pair<QString, QString> nextAdvice() const override;

private:
    [[nodiscard]] MachineEditor* machine() const { return qobject_cast<MachineEditor*>(form()); }
    [[nodiscard]] steelyard::MachineMeasurement measurement() const;
    /// Where to read next, in words: "about 60°".
    [[nodiscard]] QString nextPlace() const;
};
