// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/gates/gateform.h"
#include "mobile/gates/liftchoices.h"

#ifndef Q_MOC_RUN
#include "core/season/clearance.h"
#endif

/** That somebody lets an athlete do a method with a lift. */
class ClearanceEditor : public GateForm {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList lifts READ lifts NOTIFY changed FINAL)
    Q_PROPERTY(int lift READ lift WRITE setLift NOTIFY changed FINAL)
    Q_PROPERTY(QStringList methods READ methods NOTIFY changed FINAL)
    Q_PROPERTY(int method READ method WRITE setMethod NOTIFY changed FINAL)
    Q_PROPERTY(bool mayBeMinor READ mayBeMinor NOTIFY changed FINAL)
    Q_PROPERTY(bool approvesMinor READ approvesMinor WRITE setApprovesMinor NOTIFY changed FINAL)

public:
    using GateForm::GateForm;

    /// As `liftChoices` has them.
    [[nodiscard]] QStringList lifts() const;
    /// The place of the one chosen; -1 where none is.
    [[nodiscard]] int lift() const;
    void setLift(int index);
    /// Those that ask for a clearance or an approval first.
    [[nodiscard]] QStringList methods() const;
    [[nodiscard]] int method() const;
    void setMethod(int index);
    [[nodiscard]] bool mayBeMinor() const;
    [[nodiscard]] bool approvesMinor() const;
    void setApprovesMinor(bool approves);

protected:
    [[nodiscard]] QString kind() const override { return QStringLiteral("clearance"); }
    [[nodiscard]] std::optional<Form> keptRecord() const override;
    [[nodiscard]] QCborArray nothingSaid() const override;
    [[nodiscard]] std::vector<std::chrono::days> lengths() const override;
    [[nodiscard]] QString withoutEnd() const override { return tr("until it is taken back"); }
    [[nodiscard]] QString troubleIn(const Form& form) const override;
    void keepForm(const Form& form, const steelyard::WhenTold& told) override;
    void endRecord(const steelyard::SaidSo& by, const steelyard::WhenTold& told) override;

private:
    [[nodiscard]] const steelyard::Clearance* kept() const;
    [[nodiscard]] LiftChoices choices() const;
    [[nodiscard]] std::vector<steelyard::Method> allMethods() const;
    void setWhat(qsizetype place, const QCborValue& value);
};
