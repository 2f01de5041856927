// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/say.h"

#include "core/measure/rounding.h"
#include "core/work/barchanges.h"
#include "mobile/text/giving.h"
#include "mobile/text/language.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace say {

using namespace steelyard;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("say", text); }

VaultSettings& shownUnits()
{
    static VaultSettings units;
    return units;
}

}

const VaultSettings& units()
{
    return shownUnits();
}

void setUnits(const VaultSettings& units)
{
    if (shownUnits() == units)
        return;
    shownUnits() = units;
    language::tellAnew();
}

QString fixed(double value, int decimals)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    // a rounded nothing has no sign
    const double shown = std::abs(value) < 0.5 * std::pow(10.0, -decimals) ? 0.0 : value;
    return locale.toString(shown, 'f', decimals);
}

QString plain(double value, int decimals)
{
    int needed = 0;
    for (; needed < decimals; ++needed) {
        const double scaled = value * std::pow(10.0, needed);
        if (std::abs(scaled - std::round(scaled)) < 0.5 * std::pow(10.0, needed - decimals))
            break;
    }
    return fixed(value, needed);
}

QString withGive(const Rounded& said)
{
    return tr("%1 ± %2").arg(fixed(said.value, said.decimals), fixed(said.give, said.decimals));
}

QString unit(Unit unit)
{
    switch (unit) {
    case Unit::Kilogram: return tr("kg");
    case Unit::Gram: return tr("g");
    case Unit::Pound: return tr("lb");
    case Unit::Metre: return tr("m");
    case Unit::Centimetre: return tr("cm");
    case Unit::Millimetre: return tr("mm");
    case Unit::Inch: return tr("in");
    case Unit::Foot: return tr("ft");
    case Unit::Litre: return tr("L");
    default: return {};
    }
}

QString unit(NumberKind kind)
{
    return kind == NumberKind::Unitless ? QString() : unit(unitFor(kind, units()));
}

QString massUnit()
{
    return unit(NumberKind::InMass);
}

QString lengthUnit()
{
    return unit(NumberKind::InLength);
}

QString inMassUnit(const QString& number)
{
    return tr("%1 %2").arg(number, massUnit());
}

QString inLengthUnit(const QString& number)
{
    return tr("%1 %2").arg(number, lengthUnit());
}

double shown(Mass mass)
{
    return ratioIn(mass, unitFor(NumberKind::InMass, units()));
}

double shown(Length length)
{
    return ratioIn(length, unitFor(NumberKind::InLength, units()));
}

double shownPull(Force pull)
{
    return shown(asMass(pull));
}

QString figure(double ratio, NumberKind kind)
{
    switch (unitFor(kind, units())) {
    case Unit::Centimetre:
    case Unit::Millimetre: return plain(ratio, 1);
    case Unit::Pound:
    case Unit::Inch: return plain(ratio, std::abs(ratio) < 1 ? 3 : std::abs(ratio) < 10 || isShort(ratio) ? 2 : 1);
    default: return plain(ratio, 2);
    }
}

QString mass(Mass mass)
{
    return figure(shown(mass), NumberKind::InMass);
}

QString length(Length length)
{
    return figure(shown(length), NumberKind::InLength);
}

QString wire(Length length)
{
    return figure(ratioIn(length, unitFor(NumberKind::InWire, units())), NumberKind::InWire);
}

QString massWithUnit(Mass mass)
{
    return inMassUnit(say::mass(mass));
}

QString lengthWithUnit(Length length)
{
    return inLengthUnit(say::length(length));
}

QString wireWithUnit(Length length)
{
    return tr("%1 %2").arg(wire(length), unit(NumberKind::InWire));
}

namespace {

double shownDensity(LinearDensity density)
{
    return shown(density * (units().length == LengthUnit::Inch ? 12 * inch : metres(1)));
}

QString perLengthText(const QString& number)
{
    return (units().length == LengthUnit::Inch ? tr("%1 a foot") : tr("%1 a metre")).arg(inMassUnit(number));
}

}

QString perLength(LinearDensity density)
{
    return perLengthText(plain(shownDensity(density), 2));
}

QString perLength(LinearDensity density, LinearDensity giveOrTake)
{
    const auto said = roundTogether(shownDensity(density), shownDensity(giveOrTake), 2);
    return perLengthText(withGive(said));
}

QString entered(const Entered<Mass>& entered)
{
    return typedIn(entered.typed(), NumberKind::InMass) ? digits(*entered.typed()) : mass(entered);
}

QString entered(const Entered<Length>& entered)
{
    return typedIn(entered.typed(), NumberKind::InLength) ? digits(*entered.typed()) : length(entered);
}

QString digits(const AsTyped& typed)
{
    QLocale locale;
    QString text;
    for (const char c : typed.decimal.text())
        text += c == '.' || c == ',' ? locale.decimalPoint() : c == '-' ? locale.negativeSign() : locale.toString(c - '0');
    return text;
}

bool typedIn(const std::optional<AsTyped>& typed, NumberKind kind)
{
    return typed && typed->unit == unitFor(kind, units()) && isKeyed(*typed);
}

bool isKeyed(const AsTyped& typed)
{
    constexpr int mostKeyed = 4;
    return typed.decimal.placeCount() <= mostKeyed;
}

QString enteredAs(const std::optional<AsTyped>& typed, Unit shownIn)
{
    return typed && typed->unit != shownIn && isKeyed(*typed) ? tr("entered as %1 %2").arg(digits(*typed), unit(typed->unit)) : QString();
}

namespace {

QString markOf(const PlatesHere& plates, bool always)
{
    const Unit shownIn = unitFor(NumberKind::InMass, units());
    const AsTyped* mark = plates.mark && isKeyed(*plates.mark) ? &*plates.mark : nullptr;
    const Unit markIn = mark ? mark->unit : shownIn;
    const QString number = mark ? digits(*mark) : mass(plates.type.mass);
    return always || markIn != shownIn ? tr("%1 %2").arg(number, unit(markIn)) : number;
}

}

QString plateMark(const BarRecord& bar, const PlateType& plate)
{
    const auto at = std::find_if(bar.stock.begin(), bar.stock.end(), [&](const PlatesHere& p) { return p.type == plate; });
    if (at == bar.stock.end())
        return mass(plate.mass);
    // of plates with one mark, the weighed ones are found by what they weigh
    const bool twoKinds = at->weighed && std::any_of(bar.stock.begin(), bar.stock.end(), [&](const PlatesHere& p) { return &p != &*at && markedMass(p) == markedMass(*at); });
    return twoKinds ? mass(plate.mass) : markOf(*at, false);
}

QString plateMarkWithUnit(const PlatesHere& plates)
{
    return markOf(plates, true);
}

QString Pull::tight() const
{
    return give.isEmpty() ? value : value + QStringLiteral("\u00a0±\u00a0") + give;
}

QString Pull::sentence() const
{
    if (give.isEmpty())
        return value;
    if (about)
        return say::tr("about %1 ± %2").arg(value, give);
    return say::tr("%1 ± %2").arg(value, give);
}

QString Pull::withUnit() const
{
    return inMassUnit(sentence());
}

Pull pull(Force value, Force giveOrTake)
{
    // a kitchen scale's step: less than that nobody can see on a bar
    constexpr Mass step = kilograms(0.05);
    const double ratio = shownPull(value), give = shownPull(giveOrTake);
    if (asMass(giveOrTake) < step)
        return {plain(ratio, 1), {}, false};
    const auto rounded = roundTogether(ratio, give, 1);
    return {fixed(rounded.value, rounded.decimals), fixed(rounded.give, rounded.decimals), give > 0.1 * std::abs(ratio)};
}

Pull pull(const Reading& reading)
{
    return pull(reading.value, reading.giveOrTake);
}

}
