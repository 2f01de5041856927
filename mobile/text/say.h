// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/units.h"
#include "core/resistance/setup.h"

#include <QString>

/** The one place where core values become text: units, decimals, give-or-take, the locale's digits. */
namespace say {

/// At most `decimals` places, none of them an idle zero.
[[nodiscard]] QString plain(double value, int decimals);
/// Just so many places.
[[nodiscard]] QString fixed(double value, int decimals);
/// "82.5": a mass as plates carry it.
[[nodiscard]] QString mass(steelyard::Mass mass);
/// "104" or "104.5": a height or length in centimetres.
[[nodiscard]] QString centimetres(steelyard::Length length);

/** A pull with its give-or-take, in kilograms, ready to be set in a sentence. */
struct Pull {
    QString value;      ///< "122"
    QString give;       ///< "6"; empty when nothing is uncertain
    bool about = false; ///< give-or-take above a tenth of the value

    [[nodiscard]] QString tight() const;    ///< "122±6"
    [[nodiscard]] QString sentence() const; ///< "122 ± 6", led by "about" when it is
};
[[nodiscard]] Pull pull(const steelyard::Reading& reading);
[[nodiscard]] Pull pull(steelyard::Force value, steelyard::Force giveOrTake);

}
