// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/keepseason.h"
#include "mobile/door/samplehouse.h"
#include "tests/mobile/standinhouse.h"

/// The sample season as the app carries it, in the memory of a house.
namespace club {

/// What is wrong with its files, or was not kept; none is how it should be. The house's day stays what it was.
[[nodiscard]] inline QStringList keep(StandInHouse& house)
{
    using namespace steelyard;
    const auto today = house.today;
    QStringList troubles;
    const sample::Season season = samplehouse::carried(today, troubles);
    house.book.load({});
    const auto trouble = sample::keepSeason(house.book.keeping(), season, {[&house](std::chrono::sys_days day) { house.today = day; }, [] {}});
    house.today = today;
    house.book.keeping().forget();
    house.book.keeping().setSample(true);
    if (trouble)
        troubles << QStringLiteral("the sample season is not kept: ") + QString::fromStdString(trouble->what);
    return troubles;
}

}
