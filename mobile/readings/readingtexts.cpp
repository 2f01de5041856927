// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/readings/readingtexts.h"

#include "core/measure/rounding.h"
#include "mobile/text/giving.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <numbers>

using namespace steelyard;

namespace readingtexts {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("readingtexts", text); }

/// A value in the unit that follows it, with its give-or-take.
QString rounded(double value, double u)
{
    const auto said = roundTogether(value, coverageFactor95(knownExactly) * u, 1);
    return say::withGive(said);
}

/// A measured pull; that its ± is wide can be read from it.
QString pulled(Force pull, Force u)
{
    say::Pull said = say::pull(pull, coverageFactor95(knownExactly) * u);
    said.about = false;
    return said.withUnit();
}

}

QString aboveChest(Length height)
{
    return height == Length{} ? tr("at the chest") : tr("%1 above the chest").arg(say::lengthWithUnit(height));
}

QString help(const MeasuredPull& help, Length height, bool withGive)
{
    const Force pull = help.at(height).value_or(Force{}), u = help.uncertaintyAt(height).value_or(Force{});
    const QString said = withGive ? pulled(pull, u) : say::inMassUnit(say::plain(say::shownPull(pull), 1));
    return height == Length{} ? tr("%1 at the chest").arg(said) : tr("%1 at %2 above the chest").arg(said, say::lengthWithUnit(height));
}

QString torque(const TorqueReading& torque)
{
    return tr("%1 N·m").arg(rounded(torque.value.newtonMetres, torque.u.newtonMetres));
}

QString angle(Angle angle)
{
    return tr("%1°").arg(say::plain(angle.radians * 180 / std::numbers::pi, 1));
}

QString work(Energy work, Energy u)
{
    return tr("%1 J").arg(rounded(work.si(), u.si()));
}

QString hardest(const MachineMeasurement& measurement)
{
    const auto answer = answerOf(measurement);
    if (!answer)
        return {};
    const QString stack = say::inMassUnit(say::entered(*measurement.stack));
    if (answer->greatestTorque)
        return tr("up to %1 at %2, stack %3").arg(torque(*answer->greatestTorque), angle(answer->greatestAngle), stack);
    return tr("pulls up to %1 at %2, stack %3").arg(pulled(*answer->greatestPull, *answer->uGreatestPull),
                                                    say::lengthWithUnit(answer->greatestTravel), stack);
}

}
