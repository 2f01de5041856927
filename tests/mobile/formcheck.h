// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fieldeditor.h"

#include <QHash>
#include <QStringList>

#include <cmath>

/// What holds for every form, asked of one.
namespace formcheck {

/// A number that the field may take: its own where given, else one between its ends with all its decimals.
inline double numberFor(const FieldSpec& spec, const QHash<QString, double>& own)
{
    const double middle = (spec.limits.leastRatio + spec.limits.mostRatio) / 3 + 0.123, p = std::pow(10.0, spec.limits.decimalCount);
    return own.value(spec.key, std::round(middle * p) / p);
}

/// Keeps a number under every key and reads it back; what went wrong, empty when nothing did.
inline QStringList keepEveryKey(FieldEditor& form, const QHash<QString, double>& own = {})
{
    QStringList faults;
    const std::vector<FieldSpec> specs = form.specs();
    if (specs.empty())
        faults << QStringLiteral("no key at all");
    for (const FieldSpec& spec : specs) {
        const double number = numberFor(spec, own);
        const KeepOutcome outcome = form.keepNumber(spec.key, number);
        if (!outcome.kept())
            faults << spec.key + QStringLiteral(" refused: ") + outcome.refusal;
        const auto again = form.spec(spec.key);
        if (!again || !again->shown || std::abs(*again->shown - number) > 1e-9 * std::abs(number))
            faults << spec.key + QStringLiteral(" came back as %1 instead of %2").arg(again && again->shown ? *again->shown : -1).arg(number);
        else if (again->filledIn)
            faults << spec.key + QStringLiteral(" still looks filled in");
    }
    return faults;
}

/// Whether what may be kept can be keyed; what went wrong, empty when nothing did.
inline QStringList limitsOfEveryKey(const FieldEditor& form)
{
    QStringList faults;
    for (const FieldSpec& spec : form.specs()) {
        const auto& limits = spec.limits;
        const double smallest = std::pow(10.0, -limits.decimalCount);
        if (!(limits.leastRatio >= 0 && limits.leastRatio < limits.mostRatio))
            faults << spec.key + QStringLiteral(": ends out of order");
        if (limits.mostRatio >= std::pow(10.0, limits.digitCount))
            faults << spec.key + QStringLiteral(": its most cannot be keyed");
        if (limits.leastRatio > 0 && limits.leastRatio < smallest)
            faults << spec.key + QStringLiteral(": its least cannot be keyed");
        if (spec.shown && (*spec.shown < limits.leastRatio || *spec.shown > limits.mostRatio))
            faults << spec.key + QStringLiteral(": stands outside its own ends");
        if (spec.unit.isEmpty())
            faults << spec.key + QStringLiteral(": without a unit");
    }
    return faults;
}

/// The row that shows a key; -1 when none does.
inline int rowOf(FieldEditor& form, const QString& key)
{
    const auto* list = form.fields();
    for (int i = 0; i < list->rowCount(); ++i)
        if (list->index(i, 0).data(list->roleNames().key("key")).toString() == key)
            return i;
    return -1;
}

/// What a row shows under one of its names.
inline QVariant shown(const QAbstractItemModel& list, int row, const char* role)
{
    return list.index(row, 0).data(list.roleNames().key(role));
}

}
