// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/fillings.h"

#include <cmath>

namespace steelyard {

Estimate<Density> densityBetween(Density least, Density greatest)
{
    return within((least + greatest) / 2, (greatest - least) / (2 * std::sqrt(3.0)));
}

Estimate<Density> densityOf(Filling filling)
{
    const auto between = [](double least, double greatest) { return densityBetween(Density::fromSi(least), Density::fromSi(greatest)); };
    switch (filling) {
    case Filling::DrySand: return between(1500, 1600);
    case Filling::WetSand: return between(1900, 2000);
    case Filling::LeadShot: return between(6500, 7000);
    case Filling::RubberCrumb: return between(400, 500);
    case Filling::Water: break;
    }
    return between(994, 1000);
}

}
