// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/say.h"

#include "core/measure/rounding.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace say {

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

QString mass(steelyard::Mass mass)
{
    return plain(inKilograms(mass), 2);
}

QString centimetres(steelyard::Length length)
{
    return plain(inMetres(length) * 100, 1);
}

QString Pull::tight() const
{
    return give.isEmpty() ? value : value + QChar(0x00b1) + give;
}

QString Pull::sentence() const
{
    if (give.isEmpty())
        return value;
    if (about)
        return QCoreApplication::translate("say", "about %1 ± %2").arg(value, give);
    return QCoreApplication::translate("say", "%1 ± %2").arg(value, give);
}

Pull pull(steelyard::Force value, steelyard::Force giveOrTake)
{
    const double kg = inKilograms(asMass(value)), give = inKilograms(asMass(giveOrTake));
    // a kitchen scale's step: less than that nobody can see on a bar
    if (give < 0.05)
        return {plain(kg, 1), {}, false};
    const auto rounded = steelyard::roundTogether(kg, give, 1);
    return {fixed(rounded.value, rounded.decimals), fixed(rounded.give, rounded.decimals), give > 0.1 * std::abs(kg)};
}

Pull pull(const steelyard::Reading& reading)
{
    return pull(reading.value, reading.giveOrTake);
}

}
