// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/typing.h"

#include "core/journal/typed.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace steelyard {

namespace {

/// In SI units; not a number where the unit is none of the dimension.
double siOf(Unit unit, journal::Dimension dimension)
{
    if (journal::dimensionOf(unit) != dimension)
        return std::numeric_limits<double>::quiet_NaN();
    switch (unit) {
    case Unit::Gram: return 1e-3;
    case Unit::Pound: return pound.si();
    case Unit::Centimetre: return 1e-2;
    case Unit::Millimetre: return 1e-3;
    case Unit::Inch: return inch.si();
    case Unit::Foot: return 12 * inch.si();
    default: return 1;
    }
}

double metricSi(NumberKind kind)
{
    return kind == NumberKind::InLength ? 1e-2 : kind == NumberKind::InWire ? 1e-3 : 1;
}

}

Unit unitFor(NumberKind kind, const VaultSettings& settings)
{
    const bool inches = settings.length == LengthUnit::Inch;
    switch (kind) {
    case NumberKind::InLength: return inches ? Unit::Inch : Unit::Centimetre;
    case NumberKind::InWire: return inches ? Unit::Inch : Unit::Millimetre;
    case NumberKind::InMass: return settings.mass == MassUnit::Pound ? Unit::Pound : Unit::Kilogram;
    case NumberKind::Unitless: break;
    }
    return Unit::Kilogram;
}

double ratioIn(Mass mass, Unit unit)
{
    return mass.si() / siOf(unit, journal::Dimension::Mass);
}

double ratioIn(Length length, Unit unit)
{
    // a length in the unit's own fractions: 1.27 m is 127 cm, and not a bit more
    const double si = siOf(unit, journal::Dimension::Length), parts = std::round(1 / si);
    return parts * si == 1 ? length.si() * parts : length.si() / si;
}

std::optional<Entered<Mass>> massTyped(std::string_view decimal, Unit unit)
{
    const auto typed = journal::typed(decimal, unit);
    const auto mass = typed ? journal::massOf(*typed) : std::nullopt;
    return mass ? std::optional(Entered<Mass>(*mass, AsTyped{typed->decimal, unit})) : std::nullopt;
}

std::optional<Entered<Length>> lengthTyped(std::string_view decimal, Unit unit)
{
    const auto typed = journal::typed(decimal, unit);
    const auto length = typed ? journal::lengthOf(*typed) : std::nullopt;
    return length ? std::optional(Entered<Length>(*length, AsTyped{typed->decimal, unit})) : std::nullopt;
}

namespace {

template <typename Quantity>
Entered<Quantity> turned(const Entered<Quantity>& entered)
{
    if (!entered.typed() || entered.si() == 0)
        return -entered.quantity();
    const std::string_view text = entered.typed()->decimal.text();
    const TypedDigits digits = text.starts_with('-') ? TypedDigits(text.substr(1)) : TypedDigits('-' + std::string(text));
    return {-entered.quantity(), AsTyped{digits, entered.typed()->unit}};
}

}

Entered<Length> opposite(const Entered<Length>& length)
{
    return turned(length);
}

Entered<Mass> opposite(const Entered<Mass>& mass)
{
    return turned(mass);
}

EntryLimits limitsIn(const EntryLimits& metric, NumberKind kind, const VaultSettings& settings)
{
    const Unit unit = unitFor(kind, settings);
    if (unit != Unit::Pound && unit != Unit::Inch)
        return metric;
    EntryLimits limits = metric;
    if (unit == Unit::Inch)
        limits.decimalCount = kind == NumberKind::InWire ? 4 : 3;
    const double perUnit = metricSi(kind) / siOf(unit, journal::dimensionOf(unit)), places = std::pow(10.0, limits.decimalCount);
    constexpr double hair = 1e-9;
    limits.leastRatio = std::ceil(metric.leastRatio * perUnit * places - hair) / places;
    limits.mostRatio = std::floor(metric.mostRatio * perUnit * places + hair) / places;
    limits.digitCount = std::max(1, static_cast<int>(std::floor(std::log10(std::max(1.0, limits.mostRatio)))) + 1);
    return limits;
}

bool isShort(double ratio)
{
    constexpr double hundredths = 100, within = 0.01;
    return std::abs(ratio * hundredths - std::round(ratio * hundredths)) < within;
}

namespace {

bool means(const Entered<Mass>& keyed, const PlateLoad& load)
{
    const AsTyped typed = keyed.typed().value_or(AsTyped{});
    const double shown = ratioIn(load.total, typed.unit), away = std::abs(shown - ratioIn(keyed, typed.unit));
    constexpr double hair = 1e-9;
    const double within = isShort(shown) ? 1e-4 : 0.5 * std::pow(10.0, -std::max(1, typed.decimal.placeCount()));
    return away <= within + hair;
}

}

const PlateLoad* loadMeant(const PlateLoads& loads, const Entered<Mass>& keyed)
{
    const PlateLoad& near = loads.nearest(keyed);
    return means(keyed, near) ? &near : nullptr;
}

Entered<Mass> loadAsAskedFor(const Entered<Mass>& wanted, const PlateLoad& load)
{
    return wanted.typed() && means(wanted, load) ? Entered<Mass>(load.total, *wanted.typed()) : Entered<Mass>(load.total);
}

}
