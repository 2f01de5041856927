// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/records/fields.h"

#include <algorithm>
#include <map>
#include <vector>

namespace steelyard {

/// Those of an athlete that `fits` takes, by day, and by the order they were kept in. `Ranked` has a `value` with a day, and a `rank`.
template <typename Ranked, typename Fits>
auto byDay(const std::map<Place, Ranked>& map, const RecordId& athlete, const Fits& fits)
{
    std::vector<const Ranked*> those;
    for (const auto& [place, ranked] : map)
        if (place.athlete == athlete && fits(ranked.value))
            those.push_back(&ranked);
    std::sort(those.begin(), those.end(), [](const Ranked* a, const Ranked* b) {
        return a->value.day != b->value.day ? a->value.day < b->value.day : a->rank < b->rank;
    });
    std::vector<decltype(&those.front()->value)> values;
    values.reserve(those.size());
    for (const Ranked* ranked : those)
        values.push_back(&ranked->value);
    return values;
}

}
