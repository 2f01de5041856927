// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/ironload.h"

namespace steelyard {

Setup setupOf(const IronLoad& iron, Mass collars, const Limits& limits)
{
    Setup setup;
    setup.plates = iron.load.plates();
    setup.collars = collars;
    setup.bar = iron.load.total - setup.plates - setup.collars;
    setup.uIron = iron.uIron;
    setup.platesThickness = iron.load.thickness();
    setup.path = iron.path;
    setup.limits = limits;
    return setup;
}

bool isMean(TargetPlace place) { return place == TargetPlace::Mean || place == TargetPlace::Zone; }

std::optional<PlaceStretch> stretchOf(const LiftPath& path, TargetPlace place)
{
    switch (place) {
    case TargetPlace::Bottom: return PlaceStretch{path.bottom, path.bottom};
    case TargetPlace::Top: return PlaceStretch{path.top, path.top};
    case TargetPlace::Mean: return PlaceStretch{path.bottom, path.top};
    case TargetPlace::Zone: break;
    }
    return path.zoneFrom && path.zoneTo ? std::optional(PlaceStretch{*path.zoneFrom, *path.zoneTo}) : std::nullopt;
}

Reading readingOf(const PullSum& sum, const LiftPath& path, TargetPlace place)
{
    const PlaceStretch over = *stretchOf(path, place);
    return isMean(place) ? sum.meanReading(over.from, over.to) : sum.at(over.from);
}

}
