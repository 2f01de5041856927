// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/fieldspec.h"

#include "mobile/text/say.h"

#include <QCoreApplication>

using namespace steelyard;

namespace {

template <typename Quantity>
FieldNumber number(const std::optional<Entered<Quantity>>& entered, NumberKind kind)
{
    if (!entered)
        return {kind, std::nullopt, {}, {}};
    const Unit unit = unitFor(kind, say::units());
    const double ratio = ratioIn(*entered, unit);
    const auto& typed = entered->typed();
    if (say::typedIn(typed, kind))
        return {kind, ratio, say::digits(*typed), {}};
    // nothing is nothing in any unit
    return {kind, ratio, {}, ratio == 0 ? QString() : say::enteredAs(typed, unit)};
}

/// What was keyed, exact; or the bare number in the unit.
template <typename Quantity>
Entered<Quantity> quantity(const std::optional<Entered<Quantity>>& typed, double ratio, Unit unit)
{
    return typed ? *typed : Entered<Quantity>(Quantity::fromSi(ratio / ratioIn(Quantity::fromSi(1), unit)));
}

/// In kg, cm and mm with the decimals that can be keyed.
QString textOf(const FieldNumber& now, const EntryLimits& limits)
{
    if (!now.shown || !now.text.isEmpty())
        return now.text;
    const Unit unit = unitFor(now.kind, say::units());
    const bool asKeyed = now.kind == NumberKind::Unitless || (unit != Unit::Pound && unit != Unit::Inch);
    return asKeyed ? say::plain(*now.shown, limits.decimalCount) : say::figure(*now.shown, now.kind);
}

}

FieldNumber inMass(const std::optional<Entered<Mass>>& mass)
{
    return number(mass, NumberKind::InMass);
}

FieldNumber inLength(const std::optional<Entered<Length>>& length)
{
    return number(length, NumberKind::InLength);
}

FieldNumber inWire(const std::optional<Entered<Length>>& length)
{
    return number(length, NumberKind::InWire);
}

FieldNumber unitless(std::optional<double> number)
{
    return {NumberKind::Unitless, number, {}, {}};
}

FieldSpec::FieldSpec(QString keyOf, QString labelOf, const FieldNumber& now, const EntryLimits& metric, bool isFilledIn, QString hintOf, bool isNeeded)
    : key(std::move(keyOf)), label(std::move(labelOf)), unit(say::unit(now.kind)), kind(now.kind), limits(limitsIn(metric, now.kind, say::units())), shown(now.shown),
      text(textOf(now, limits)), enteredAs(isFilledIn ? QString() : now.enteredAs), filledIn(isFilledIn), hint(std::move(hintOf)), needed(isNeeded)
{
}

QString FieldSpec::about() const
{
    if (enteredAs.isEmpty() || hint.isEmpty())
        return hint + enteredAs;
    return QCoreApplication::translate("FieldEditor", "%1 · %2").arg(hint, enteredAs);
}

KeyedFigure::KeyedFigure(const NumberEntry& entry) : ratio(entry.ratioKeyed().value_or(0)), decimal(entry.text())
{
    // a point with nothing behind it says nothing
    if (decimal.ends_with('.'))
        decimal.pop_back();
}

Entered<Mass> KeyedFigure::mass() const
{
    const Unit unit = unitFor(NumberKind::InMass, say::units());
    return quantity(massTyped(decimal, unit), ratio, unit);
}

Entered<Length> KeyedFigure::length() const
{
    const Unit unit = unitFor(NumberKind::InLength, say::units());
    return quantity(lengthTyped(decimal, unit), ratio, unit);
}

Entered<Length> KeyedFigure::wire() const
{
    const Unit unit = unitFor(NumberKind::InWire, say::units());
    return quantity(lengthTyped(decimal, unit), ratio, unit);
}
