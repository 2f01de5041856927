// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/readings/aidguide.h"

#include "core/work/measuring/aidkit.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/readings/readingtexts.h"

using namespace steelyard;

AidMeasurement AidGuide::measurement() const
{
    const auto* aid = qobject_cast<AidEditor*>(form());
    return aid && ready() ? aid->measurement() : AidMeasurement{};
}

QString AidGuide::title() const
{
    return tr("Measure a bench aid");
}

QString AidGuide::question(const QString& part) const
{
    return part == QLatin1String("mass") ? tr("What rests on it?") : tr("How high over the chest?");
}

QString AidGuide::progressAt(int reading) const
{
    return tr("reading %1").arg(reading + 1);
}

QString AidGuide::how() const
{
    if (part() == QLatin1String("mass"))
        return tr("Bar, collars and plates: all that the aid carries by itself.");
    if (part() == QLatin1String("height"))
        return tr("From where the bar touches the chest up to where it rests. Her hands stay round the bar.");
    return {};
}

int AidGuide::fewest() const
{
    return static_cast<int>(fewestAidReadingCount);
}

std::pair<QString, QString> AidGuide::nextAdvice() const
{
    const AidMeasurement now = measurement();
    const auto next = nextAidReading(now);
    if (!next)
        return {};
    switch (next->reason) {
    case AidReason::Slack:
        return {tr("First where it begins to help"), tr("Key 0: let the bar down by hand until the aid just comes taut, and read the height.")};
    case AidReason::Chest:
        return {tr("Go down to the chest"), tr("Put on what just brings the bar to touch it: height 0. There it helps most.")};
    case AidReason::Gap:
        break;
    }
    const auto help = aidFrom(now);
    const auto there = help ? help->at(next->aboveChest) : std::nullopt;
    const QString height = measuretexts::aboutLength(next->aboveChest);
    // a mass is asked: it comes first
    const QString head = there ? tr("About %1, to rest at %2").arg(measuretexts::aboutMass(asMass(*there)), height) : tr("Go for about %1 above the chest").arg(height);
    return {head, tr("There the curve is least sure.")};
}

bool AidGuide::isBare() const
{
    const auto readings = measurement().readings;
    const int at = atReading();
    if (at < 0 || at >= static_cast<int>(readings.size()))
        return false;
    if (const auto& mass = readings[static_cast<std::size_t>(at)].mass)
        return *mass == Mass{};
    const auto next = nextAidReading(measurement());
    return next && next->reason == AidReason::Slack;
}

QString AidGuide::gain() const
{
    if (!ready() || !form()->canKeep())
        return {};
    const auto next = nextAidReading(measurement());
    if (!next)
        return tr("Enough readings.");
    switch (next->reason) {
    case AidReason::Slack:
        return tr("Where it goes slack was not read: above the highest reading its help is not known.");
    case AidReason::Chest:
        return tr("It was not read at the chest: below the lowest reading its help is not known.");
    case AidReason::Gap:
        break;
    }
    return tr("One more at about %1 above the chest would make it surer.").arg(measuretexts::aboutLength(next->aboveChest));
}
