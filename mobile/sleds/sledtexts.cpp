// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/sleds/sledtexts.h"

#include "core/measure/rounding.h"
#include "core/work/implements/implementmass.h"
#include "mobile/text/giving.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <QCoreApplication>

using namespace steelyard;

namespace sledtexts {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("sledtexts", text); }

}

QString friction(const SurfaceFriction& friction)
{
    const QString ratio = say::withGive(roundTogether(friction.friction.value, friction.friction.uncertainty.giveOrTake(), 3));
    return tr("Friction %1, found with %2 to %3 in all").arg(ratio, say::plain(say::shown(friction.lightest), 0), say::massWithUnit(kilograms(std::round(inKilograms(friction.heaviest)))));
}

QString pull(const Estimate<Force>& pull)
{
    return tr("%1 N, as much as %2 weigh").arg(say::withGive(roundTogether(pull.value.si(), pull.giveOrTake().si(), 0)), say::massWithUnit(kilograms(std::round(inKilograms(asMass(pull.value)) * 10) / 10)));
}

QString speed(const Estimate<Speed>& speed)
{
    return tr("%1 m/s").arg(say::withGive(roundTogether(speed.value.si(), speed.giveOrTake().si(), 2)));
}

QString speed(const SledRunTimed& run)
{
    const Seconds time = std::chrono::duration_cast<Seconds>(run.time.quantity());
    if (time.count() <= 0 || run.distance.quantity() <= Length{})
        return tr("How fast: not known yet");
    return speed(speedOf(within(run.distance.quantity(), uTape), within(time, stopwatchU)));
}

QString mass(const Estimate<Mass>& mass)
{
    return say::inMassUnit(say::withGive(roundTogether(say::shown(mass.value), say::shown(mass.giveOrTake()), 1)));
}

QString refusal(const Error& error)
{
    if (error.what == "push angle")
        return tr("Pushed like this it locks: the push presses it down as hard as it moves it. Push lower, or with less on it.");
    if (error.what == "sled" && error.code == Refusal::NotThere)
        return tr("Nobody knows what the sled weighs: measure it in Kit.");
    if (error.what == "strap" || error.what == "hook")
        return tr("Measure its strap and the height of its hook in Kit, then it is known how steep it pulls.");
    if (error.code == Refusal::TooFewPoints)
        return tr("Three timed runs with different loads make a line; two do not say how sure it is.");
    return sentences::refusal(error);
}

}
