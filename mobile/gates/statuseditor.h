// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/gates/gateform.h"
#include "mobile/gates/liftchoices.h"

#ifndef Q_MOC_RUN
#include "core/season/clearance.h"
#endif

/** How much an athlete may do for some days: all, some with what not, or none. */
class StatusEditor : public GateForm {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int fitness READ fitness WRITE setFitness NOTIFY changed FINAL)
    Q_PROPERTY(QStringList groups READ groups NOTIFY changed FINAL)
    Q_PROPERTY(QList<int> notGroups READ notGroups NOTIFY changed FINAL)
    Q_PROPERTY(QStringList methods READ methods NOTIFY changed FINAL)
    Q_PROPERTY(QList<int> notMethods READ notMethods NOTIFY changed FINAL)
    Q_PROPERTY(QStringList lifts READ lifts NOTIFY changed FINAL)
    Q_PROPERTY(int herLiftCount READ herLiftCount NOTIFY changed FINAL)
    Q_PROPERTY(QList<int> notLifts READ notLifts NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY changed FINAL)

public:
    using GateForm::GateForm;

    /// 0 all, 1 some, 2 none; -1 where it is not said yet.
    [[nodiscard]] int fitness() const;
    void setFitness(int fitness);
    [[nodiscard]] QStringList groups() const;
    /// The places of those that may not be done.
    [[nodiscard]] QList<int> notGroups() const;
    [[nodiscard]] QStringList methods() const;
    [[nodiscard]] QList<int> notMethods() const;
    /// Single lifts, hers and those that are named first.
    [[nodiscard]] QStringList lifts() const;
    [[nodiscard]] int herLiftCount() const { return choices().herCount; }
    [[nodiscard]] QList<int> notLifts() const;
    [[nodiscard]] QString text() const;
    void setText(const QString& text);

    Q_INVOKABLE void turnGroup(int index);
    Q_INVOKABLE void turnMethod(int index);
    Q_INVOKABLE void turnLift(int index);

protected:
    [[nodiscard]] QString kind() const override { return QStringLiteral("status"); }
    [[nodiscard]] std::optional<Form> keptRecord() const override;
    [[nodiscard]] QCborArray nothingSaid() const override;
    [[nodiscard]] std::vector<std::chrono::days> lengths() const override;
    [[nodiscard]] QString withoutEnd() const override { return tr("until it is lifted"); }
    [[nodiscard]] QString troubleIn(const Form& form) const override;
    void keepForm(const Form& form, const steelyard::WhenTold& told) override;
    void endRecord(const steelyard::SaidSo& by, const steelyard::WhenTold& told) override;

private:
    [[nodiscard]] const steelyard::DayStatus* kept() const;
    /// What the form says, without its days and who said so.
    [[nodiscard]] steelyard::DayStatus said() const;
    [[nodiscard]] LiftChoices choices() const;
    void say(const steelyard::DayStatus& status);
};
