// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/measuretexts.h"

#include "core/work/measuredkit.h"
#include "mobile/measuring/lookovertexts.h"
#include "mobile/readings/readingtexts.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <cmath>

using namespace steelyard;

namespace measuretexts {

namespace {

/// With a count the words bend to it.
QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("measuretexts", text, about, count); }

}

QString percent(double share)
{
    const double shown = 100 * std::abs(share);
    return tr("%1 %").arg(say::plain(shown, shown < 1 ? 1 : 0));
}

namespace {

std::optional<Length> longestRead(const BandMeasurement& measurement)
{
    std::optional<Length> longest;
    for (const BandPoint& point : pointsOnFit(measurement))
        longest = std::max(longest.value_or(point.length), point.length);
    return longest;
}

}

QString aboutLength(Length length)
{
    return say::inLengthUnit(say::plain(say::shown(length), 0));
}

QString aboutMass(Mass mass)
{
    const double shown = say::shown(mass);
    return say::inMassUnit(say::plain(shown, shown < 10 ? 1 : 0));
}

QString drift(const Compared& both, const MeasurementRecord& last, std::chrono::sys_days today)
{
    const QString since = keepingtexts::day(last.day, today);
    const bool band = std::holds_alternative<BandMeasurement>(last.measured), less = both.difference < Force{};
    if (std::holds_alternative<AidMeasurement>(last.measured)) {
        const QString where = readingtexts::aboveChest(both.length), share = percent(both.share());
        if (!both.clear())
            return tr("Since %1: no clear change %2. The difference of %3 is within the give-or-take.").arg(since, where, share);
        return (less ? tr("Since %1 it helps %2 less %3: more than measuring error.") : tr("Since %1 it helps %2 more %3: more than measuring error.")).arg(since, share, where);
    }
    if (!both.clear())
        return band ? tr("Since %1: no clear change at %2. The difference of %3 is within the give-or-take.").arg(since, aboutLength(both.length), percent(both.share()))
                    : tr("Since %1: no clear change. The difference of %2 is within the give-or-take.").arg(since, percent(both.share()));
    if (band)
        return (less ? tr("Since %1 it pulls %2 less at %3: more than measuring error.") : tr("Since %1 it pulls %2 more at %3: more than measuring error."))
            .arg(since, percent(both.share()), aboutLength(both.length));
    const QString apart = percent(both.share());
    if (say::units().length == LengthUnit::Inch)
        return (less ? tr("%1 lighter a foot than on %2: more than measuring error.") : tr("%1 heavier a foot than on %2: more than measuring error.")).arg(apart, since);
    return (less ? tr("%1 lighter a metre than on %2: more than measuring error.") : tr("%1 heavier a metre than on %2: more than measuring error.")).arg(apart, since);
}

QString pair(const Compared& both, const KitItem& other)
{
    const QString name = QString::fromStdString(other.name), share = percent(both.share());
    if (!both.clear())
        return tr("Too close to call: they differ by %1, which is within the give-or-take.").arg(share);
    const bool band = std::holds_alternative<BandMeasurement>(other.measurement), less = both.difference < Force{};
    if (std::holds_alternative<AidMeasurement>(other.measurement))
        return (less ? tr("It helps %1 less than %2 %3.") : tr("It helps %1 more than %2 %3.")).arg(share, name, readingtexts::aboveChest(both.length));
    const QString differs = band ? (less ? tr("It pulls %1 less than %2 at %3.") : tr("It pulls %1 more than %2 at %3.")).arg(share, name, aboutLength(both.length))
                                 : (less ? tr("It weighs %1 less than %2 for its length.") : tr("It weighs %1 more than %2 for its length.")).arg(share, name);
    return std::abs(both.share()) > unevenPairShare ? tr("%1 One side would be heavier: find each another partner.").arg(differs) : tr("%1 Close enough for a pair.").arg(differs);
}

QString goFor(const LengthAdvice& advice, const BandMeasurement& measurement)
{
    const auto mass = massFor(measurement, advice.length);
    return mass ? tr("About %1, to reach %2").arg(aboutMass(*mass), aboutLength(advice.length)) : tr("As much as brings it to about %1").arg(aboutLength(advice.length));
}

QString oneReadingMoreThanNeeded(std::size_t readings)
{
    return tr("Where the shade is wide, %n readings cannot yet tell their own scatter from the curve: one more narrows it most.", nullptr, static_cast<int>(readings));
}

QString whyThere(const LengthAdvice& advice, const BandMeasurement& measurement)
{
    switch (advice.reason) {
    case LengthReason::Spread:
        return tr("Three lengths, spread out, make a curve.");
    case LengthReason::Further:
        if (const auto longest = longestRead(measurement))
            return tr("You use it to %1; so far it is read only to %2.").arg(aboutLength(advice.length), aboutLength(*longest));
        return tr("You use it to %1.").arg(aboutLength(advice.length));
    case LengthReason::Weakest:
        break;
    }
    return tr("There the curve is least sure.");
}

QString wayBack(const WayBack& back)
{
    return back.unloading < back.loading
               ? tr("While taking off it pulls %1 less at %2. What counts is the way up.").arg(percent(back.lessShare()), aboutLength(back.length))
               : tr("While taking off it pulls as much at %1.").arg(aboutLength(back.length));
}

QString age(const MeasurementRecord& last, std::chrono::sys_days today)
{
    const Due due = dueOn(last, today);
    const QString day = keepingtexts::day(last.day, today);
    const auto left = (due.next - today).count();
    if (due.state == DueState::Due)
        return tr("measured %1, due again").arg(day);
    if (left < 14)
        return tr("measured %1, due in %n days", nullptr, static_cast<int>(left)).arg(day);
    return tr("measured %1, due in %n weeks", nullptr, static_cast<int>(left / 7)).arg(day);
}

QString outOfUse(const Inspection& inspection, std::chrono::sys_days today)
{
    const QString day = keepingtexts::day(inspection.day, today), what = lookovertexts::fault(inspection.fault.value_or(KitFault::Other));
    const QString note = QString::fromStdString(inspection.note);
    return note.isEmpty() ? tr("out of use since %1: %2").arg(day, what) : tr("out of use since %1: %2, %3").arg(day, what, note);
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
