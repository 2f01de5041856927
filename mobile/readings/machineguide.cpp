// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/readings/machineguide.h"

#include "core/work/measuring/machinekit.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/text/say.h"
#include "mobile/text/tooltexts.h"

#include <numbers>

using namespace steelyard;

MachineMeasurement MachineGuide::measurement() const
{
    return machine() && ready() ? machine()->measurement() : MachineMeasurement{};
}

QString MachineGuide::title() const
{
    return tr("Measure a cam machine");
}

QString MachineGuide::question(const QString& part) const
{
    if (part == QLatin1String("stack"))
        return tr("What is pinned on the stack?");
    if (part == QLatin1String("scaleStep"))
        return tr("How fine does it read?");
    if (part == QLatin1String("angle"))
        return tr("How far is it turned?");
    if (part == QLatin1String("radius"))
        return tr("How far from axis to cable?");
    return part == QLatin1String("travel") ? tr("How far did the handle come?") : tr("What does it pull there?");
}

QString MachineGuide::progressAt(int reading) const
{
    if (reading < 0)
        return tr("for all readings");
    return tr("reading %1").arg(reading + 1);
}

QString MachineGuide::how() const
{
    const QString asked = part();
    if (asked == QLatin1String("stack"))
        return machine()->isByPull() ? tr("As it stays for every reading. A printed mass is taken as right within 2 %.")
                                     : tr("Turning moments are shown for it, and it can be changed later. A printed mass is taken as right within 2 %.");
    if (asked == QLatin1String("scaleStep"))
        return tooltexts::stepAsked();
    if (asked == QLatin1String("angle"))
        return tr("From the start of the movement, in degrees; a level on the lever shows it.");
    if (asked == QLatin1String("radius"))
        return tr("Square from the middle of the axis to the cable, where it leaves the cam. Nobody moves the lever meanwhile.");
    if (asked == QLatin1String("travel"))
        return tr("Along the way of the handle, from the start of the movement.");
    if (asked == QLatin1String("pull"))
        return tr("The scale between hand and handle, held still, straight along the way.");
    return {};
}

int MachineGuide::fewest() const
{
    return static_cast<int>(fewestMachineReadingCount);
}

QString MachineGuide::nextPlace() const
{
    const auto next = nextMachineReading(measurement());
    if (!next)
        return {};
    return next->angle ? tr("%1°").arg(say::plain(next->angle->radians * 180 / std::numbers::pi, 0)) : measuretexts::aboutLength(next->travel.value_or(Length{}));
}

std::pair<QString, QString> MachineGuide::nextAdvice() const
{
    const std::size_t count = machineReadingsThatCount(measurement()).size();
    if (count == 0)
        return {tr("Begin at the start"), tr("The first and the last reading say between what ends it is known.")};
    if (count == 1)
        return {tr("Go to the end"), tr("Past the last reading nothing is known.")};
    const QString place = nextPlace();
    return place.isEmpty() ? std::pair<QString, QString>{} : std::pair{tr("Go for about %1").arg(place), tr("There the readings are furthest apart.")};
}

QString MachineGuide::gain() const
{
    if (!ready() || !form()->canKeep())
        return {};
    const QString place = nextPlace();
    return place.isEmpty() ? tr("Enough readings.") : tr("One more at about %1 would make it surer.").arg(place);
}

void MachineGuide::choose(bool byPull)
{
    begin();
    machine()->setByPull(byPull);
    goOn();
}
