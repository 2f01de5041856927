// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/numberentry.h"
#include "core/work/typing.h"
#endif

#include <QString>

#include <optional>

/** What stands in a field now: the number in the shown unit, and its text, which is what was typed where that was in this unit. */
struct FieldNumber {
    steelyard::NumberKind kind = steelyard::NumberKind::Unitless;
    std::optional<double> shown;
    QString text;      ///< as typed in this unit; else empty
    QString enteredAs; ///< "entered as 225 lb", where it was typed in another unit than is shown
};

[[nodiscard]] FieldNumber inMass(const std::optional<steelyard::Entered<steelyard::Mass>>& mass);
[[nodiscard]] FieldNumber inLength(const std::optional<steelyard::Entered<steelyard::Length>>& length);
[[nodiscard]] FieldNumber inWire(const std::optional<steelyard::Entered<steelyard::Length>>& length);
[[nodiscard]] FieldNumber unitless(std::optional<double> number);

/** One number of a form: what it is, what may be keyed, what stands there now. */
struct FieldSpec {
    FieldSpec() = default;
    /// The limits in kg, cm or mm; here they are in the shown unit.
    FieldSpec(QString key, QString label, const FieldNumber& now, const steelyard::EntryLimits& metric, bool filledIn, QString hint, bool needed = false);

    QString key, label, unit;
    steelyard::NumberKind kind = steelyard::NumberKind::Unitless;
    steelyard::EntryLimits limits;
    std::optional<double> shown;
    QString text, enteredAs;
    bool filledIn = false;
    QString hint;
    bool needed = false; ///< nothing comes out without it
    std::optional<double> last; ///< what it was last time, in the shown unit: far from it, a number is asked about

    /// The hint with how it was entered.
    [[nodiscard]] QString about() const;
};

/** A number as it was keyed, in the shown unit; a bare one was not keyed by anybody. */
struct KeyedFigure {
    KeyedFigure(double shown) : ratio(shown) {}
    explicit KeyedFigure(const steelyard::NumberEntry& entry);

    [[nodiscard]] steelyard::Entered<steelyard::Mass> mass() const;
    [[nodiscard]] steelyard::Entered<steelyard::Length> length() const;
    [[nodiscard]] steelyard::Entered<steelyard::Length> wire() const;

    double ratio = 0;
    std::string decimal;
};
