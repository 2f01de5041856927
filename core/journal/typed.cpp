// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/typed.h"

#include <cmath>
#include <limits>

namespace steelyard::journal {

namespace {

__extension__ using Wide = __int128;

constexpr std::size_t mostDigits = 18;

/// Base units in one unit, as a fraction in whole numbers.
struct Scale {
    Dimension dimension;
    std::int64_t over, under;
};

Scale scaleOf(Unit unit)
{
    switch (unit) {
    case Unit::Kilogram: return {Dimension::Mass, 1'000'000, 1};
    case Unit::Gram: return {Dimension::Mass, 1'000, 1};
    case Unit::Pound: return {Dimension::Mass, 45'359'237, 100};
    case Unit::Metre: return {Dimension::Length, 1'000'000, 1};
    case Unit::Centimetre: return {Dimension::Length, 10'000, 1};
    case Unit::Millimetre: return {Dimension::Length, 1'000, 1};
    case Unit::Inch: return {Dimension::Length, 25'400, 1};
    case Unit::Foot: return {Dimension::Length, 304'800, 1};
    case Unit::Second: return {Dimension::Duration, 1'000, 1};
    case Unit::Minute: return {Dimension::Duration, 60'000, 1};
    case Unit::Newton: return {Dimension::Force, 1'000, 1};
    case Unit::Kilonewton: return {Dimension::Force, 1'000'000, 1};
    case Unit::Litre: return {Dimension::Volume, 1'000, 1};
    }
    return {};
}

Wide roundedQuotient(Wide over, Wide under)
{
    const Wide half = under / 2;
    return over < 0 ? -((-over + half) / under) : (over + half) / under;
}

Wide tenTo(std::size_t power)
{
    Wide value = 1;
    for (std::size_t i = 0; i < power; ++i)
        value *= 10;
    return value;
}

std::optional<std::int64_t> asNumber(Wide wide)
{
    if (wide < std::numeric_limits<std::int64_t>::min() || wide > std::numeric_limits<std::int64_t>::max())
        return std::nullopt;
    return static_cast<std::int64_t>(wide);
}

/// The digits of `number`, the last `places` of them behind a point.
std::string decimalOf(Wide number, std::size_t places)
{
    std::string digits;
    for (Wide rest = number < 0 ? -number : number; rest != 0 || digits.size() <= places; rest /= 10)
        digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(rest % 10)));
    if (places != 0)
        digits.insert(digits.size() - places, 1, '.');
    return number < 0 ? '-' + digits : digits;
}

std::optional<Typed> untyped(std::int64_t baseNumber, Unit unit)
{
    const Scale scale = scaleOf(unit);
    for (std::size_t places = 0; places < mostDigits; ++places) {
        const Wide number = roundedQuotient(Wide(baseNumber) * scale.under * tenTo(places), scale.over);
        std::optional<Typed> candidate = typed(decimalOf(number, places), unit);
        if (candidate && candidate->baseNumber == baseNumber)
            return candidate;
    }
    return std::nullopt;
}

std::optional<Typed> untyped(double baseUnitCount, Dimension dimension, Unit unit)
{
    constexpr double pastRange = 9.2e18;
    if (!std::isfinite(baseUnitCount) || std::abs(baseUnitCount) > pastRange || dimensionOf(unit) != dimension)
        return std::nullopt;
    return untyped(std::llround(baseUnitCount), unit);
}

std::optional<double> siOf(const Typed& typed, Dimension dimension, double perBaseUnit)
{
    if (dimensionOf(typed.unit) != dimension)
        return std::nullopt;
    return static_cast<double>(typed.baseNumber) / perBaseUnit;
}

constexpr double milligramsInKilogram = 1e6, micrometresInMetre = 1e6, millinewtonsInNewton = 1e3, millilitresInCubicMetre = 1e6;

}

std::optional<Unit> unitOf(std::uint64_t unitNumber)
{
    if (unitNumber > std::numeric_limits<std::uint16_t>::max() || scaleOf(static_cast<Unit>(unitNumber)).under == 0)
        return std::nullopt;
    return static_cast<Unit>(unitNumber);
}

Dimension dimensionOf(Unit unit)
{
    return scaleOf(unit).dimension;
}

std::optional<Typed> typed(std::string_view decimal, Unit unit)
{
    std::string_view rest = decimal;
    const bool negative = !rest.empty() && rest.front() == '-';
    if (negative)
        rest.remove_prefix(1);
    Wide number = 0;
    std::size_t digits = 0;
    std::optional<std::size_t> places;
    for (const char c : rest) {
        if (c >= '0' && c <= '9') {
            number = number * 10 + (c - '0');
            if (++digits > mostDigits)
                return std::nullopt;
            if (places)
                ++*places;
        } else if ((c == '.' || c == ',') && !places && digits != 0) {
            places = 0;
        } else {
            return std::nullopt;
        }
    }
    if (digits == 0)
        return std::nullopt;
    const Scale scale = scaleOf(unit);
    const Wide under = scale.under * tenTo(places.value_or(0));
    const std::optional<std::int64_t> base = asNumber(roundedQuotient((negative ? -number : number) * scale.over, under));
    return base ? std::optional(Typed{*base, std::string(decimal), unit}) : std::nullopt;
}

std::optional<Typed> typed(Mass mass, Unit unit)
{
    return untyped(mass.si() * milligramsInKilogram, Dimension::Mass, unit);
}

std::optional<Typed> typed(Length length, Unit unit)
{
    return untyped(length.si() * micrometresInMetre, Dimension::Length, unit);
}

std::optional<Typed> typed(Force force, Unit unit)
{
    return untyped(force.si() * millinewtonsInNewton, Dimension::Force, unit);
}

std::optional<Typed> typed(std::chrono::milliseconds duration, Unit unit)
{
    return dimensionOf(unit) == Dimension::Duration ? untyped(duration.count(), unit) : std::nullopt;
}

std::optional<Typed> typed(Volume volume, Unit unit)
{
    return untyped(volume.si() * millilitresInCubicMetre, Dimension::Volume, unit);
}

std::optional<Mass> massOf(const Typed& typed)
{
    const std::optional<double> si = siOf(typed, Dimension::Mass, milligramsInKilogram);
    return si ? std::optional(Mass::fromSi(*si)) : std::nullopt;
}

std::optional<Length> lengthOf(const Typed& typed)
{
    const std::optional<double> si = siOf(typed, Dimension::Length, micrometresInMetre);
    return si ? std::optional(Length::fromSi(*si)) : std::nullopt;
}

std::optional<Force> forceOf(const Typed& typed)
{
    const std::optional<double> si = siOf(typed, Dimension::Force, millinewtonsInNewton);
    return si ? std::optional(Force::fromSi(*si)) : std::nullopt;
}

std::optional<Volume> volumeOf(const Typed& typed)
{
    const std::optional<double> si = siOf(typed, Dimension::Volume, millilitresInCubicMetre);
    return si ? std::optional(Volume::fromSi(*si)) : std::nullopt;
}

std::optional<std::chrono::milliseconds> durationOf(const Typed& typed)
{
    if (dimensionOf(typed.unit) != Dimension::Duration)
        return std::nullopt;
    return std::chrono::milliseconds(typed.baseNumber);
}

}
