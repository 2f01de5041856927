// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/measuretexts.h"

#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <cmath>

using namespace steelyard;

namespace measuretexts {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("measuretexts", text); }

}

QString percent(double share)
{
    const double shown = 100 * std::abs(share);
    return tr("%1 %").arg(say::plain(shown, shown < 1 ? 1 : 0));
}

QString aboutLength(Length length)
{
    return tr("%1 cm").arg(say::plain(inMetres(length) * 100, 0));
}

QString aboutMass(Mass mass)
{
    const double kg = inKilograms(mass);
    return tr("%1 kg").arg(say::plain(kg, kg < 10 ? 1 : 0));
}

QString drift(const Compared& both, const MeasurementRecord& last, std::chrono::sys_days today)
{
    const QString since = keepingtexts::day(last.day, today);
    const bool band = std::holds_alternative<BandMeasurement>(last.measured), less = both.difference < Force{};
    if (!both.clear())
        return band ? tr("Since %1: no clear change at %2. The difference of %3 is within the give-or-take.").arg(since, aboutLength(both.length), percent(both.share()))
                    : tr("Since %1: no clear change. The difference of %2 is within the give-or-take.").arg(since, percent(both.share()));
    if (band)
        return (less ? tr("Since %1 it pulls %2 less at %3: more than the give-or-take.") : tr("Since %1 it pulls %2 more at %3: more than the give-or-take."))
            .arg(since, percent(both.share()), aboutLength(both.length));
    return (less ? tr("Since %1 a metre weighs %2 less: more than the give-or-take.") : tr("Since %1 a metre weighs %2 more: more than the give-or-take."))
        .arg(since, percent(both.share()));
}

QString goFor(const LengthAdvice& advice)
{
    return tr("Go for about %1").arg(aboutLength(advice.length));
}

QString whyThere(const LengthAdvice& advice, const BandMeasurement& measurement)
{
    QString why;
    switch (advice.reason) {
    case LengthReason::Spread:
        why = tr("Three lengths, spread out, make a curve.");
        break;
    case LengthReason::Further:
        why = tr("It is used that far; its pull is known only to the longest reading.");
        break;
    case LengthReason::Weakest:
        why = tr("There the curve is least sure.");
        break;
    }
    const auto mass = massFor(measurement, advice.length);
    return mass ? tr("%1 About %2 should do.").arg(why, aboutMass(*mass)) : why;
}

QString wayBack(const WayBack& back)
{
    return back.unloading < back.loading
               ? tr("On the way back it pulls %1 less at %2. What counts is the way up.").arg(percent(back.lessShare()), aboutLength(back.length))
               : tr("On the way back it pulls as much at %1.").arg(aboutLength(back.length));
}

QString gain(ChainGain gain)
{
    switch (gain) {
    case ChainGain::Weigh:
        return tr("Gauged is within 6 %. Weighing it would be surer.");
    case ChainGain::FinerScale:
        return tr("The scale is coarse for it: one with a finer step would be surer, or both of a pair on it at once.");
    case ChainGain::Nothing:
        break;
    }
    return {};
}

}
