// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/measure/units.h"
#include "core/resistance/setup.h"
#include "core/season/setuprecord.h"
#include "core/work/typing.h"
#endif

#include <QString>

/** The one place where core values become text: units, decimals, give-or-take, the locale's digits. */
namespace say {

/// What everything is shown and keyed in. It holds for the whole app, as a locale does; the book of the open vault says what it is.
[[nodiscard]] const steelyard::VaultSettings& units();
/// Whoever shows numbers is told, by `language::onSaidOtherwise`.
void setUnits(const steelyard::VaultSettings& units);

/// At most `decimals` places, none of them an idle zero.
[[nodiscard]] QString plain(double value, int decimals);
/// Just so many places.
[[nodiscard]] QString fixed(double value, int decimals);

/// "kg", "in": of a unit, and of what is shown in.
[[nodiscard]] QString unit(steelyard::Unit unit);
[[nodiscard]] QString unit(steelyard::NumberKind kind);
[[nodiscard]] QString massUnit();
[[nodiscard]] QString lengthUnit();
/// A number with the unit behind it: "82.5 kg".
[[nodiscard]] QString inMassUnit(const QString& number);
[[nodiscard]] QString inLengthUnit(const QString& number);

/// How many of the shown unit: for axes, and for what is rounded with something else.
[[nodiscard]] double shown(steelyard::Mass mass);
[[nodiscard]] double shown(steelyard::Length length);
[[nodiscard]] double shownPull(steelyard::Force pull);

/// A number in the shown unit, with the decimals that its kind has: in pounds and inches one, two where that is all of it
/// or below 10, three below 1.
[[nodiscard]] QString figure(double ratio, steelyard::NumberKind kind);
/// "82.5", "104.5": in the shown unit; and with it, "82.5 kg".
[[nodiscard]] QString mass(steelyard::Mass mass);
[[nodiscard]] QString length(steelyard::Length length);
[[nodiscard]] QString wire(steelyard::Length length);
[[nodiscard]] QString massWithUnit(steelyard::Mass mass);
[[nodiscard]] QString lengthWithUnit(steelyard::Length length);
[[nodiscard]] QString wireWithUnit(steelyard::Length length);
/// "5.7 kg a metre" where lengths are in centimetres, "3.83 lb a foot" where they are in inches; with a give-or-take behind it.
[[nodiscard]] QString perLength(steelyard::LinearDensity density);
[[nodiscard]] QString perLength(steelyard::LinearDensity density, steelyard::LinearDensity giveOrTake);

/// The number as it was typed where that was in the shown unit, else as any other.
[[nodiscard]] QString entered(const steelyard::Entered<steelyard::Mass>& entered);
[[nodiscard]] QString entered(const steelyard::Entered<steelyard::Length>& entered);
/// Digits as they were typed, with the locale's decimal point.
[[nodiscard]] QString digits(const steelyard::AsTyped& typed);
/// Whether somebody typed the digits: what is worked out has more decimals than anybody keys.
[[nodiscard]] bool isKeyed(const steelyard::AsTyped& typed);
/// Whether it was in the unit that the kind is shown in.
[[nodiscard]] bool typedIn(const std::optional<steelyard::AsTyped>& typed, steelyard::NumberKind kind);
/// "entered as 225 lb", where it was typed in another unit than this one; else nothing.
[[nodiscard]] QString enteredAs(const std::optional<steelyard::AsTyped>& typed, steelyard::Unit shownIn);
/// What a plate carries: "20" where that is the shown unit, else "45 lb", as nobody finds a plate by another figure than its mark.
/// Where only some plates of a mark were weighed, those go by what they weigh.
[[nodiscard]] QString plateMark(const steelyard::BarRecord& bar, const steelyard::PlateType& plate);
/// The same, always with its unit.
[[nodiscard]] QString plateMarkWithUnit(const steelyard::PlatesHere& plates);

/** A pull with its give-or-take, in the shown unit, ready to be set in a sentence. */
struct Pull {
    QString value;      ///< "122"
    QString give;       ///< "6"; empty when nothing is uncertain
    bool about = false; ///< give-or-take above a tenth of the value

    [[nodiscard]] QString tight() const;    ///< "122 ± 6", which no line breaks apart
    [[nodiscard]] QString sentence() const; ///< "122 ± 6", led by "about" when it is
    [[nodiscard]] QString withUnit() const; ///< "122 ± 6 kg"
};
[[nodiscard]] Pull pull(const steelyard::Reading& reading);
[[nodiscard]] Pull pull(steelyard::Force value, steelyard::Force giveOrTake);

}
