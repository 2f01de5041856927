// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/plates.h"
#include "tests/probe/parts.h"

#include <charconv>

namespace steelyard::probe {

namespace {

double massNamed(const std::string& key, const std::string& name)
{
    double mass = 0;
    const char* end = key.data() + key.size();
    const auto [at, wrong] = std::from_chars(key.data(), end, mass, std::chars_format::fixed);
    if (wrong != std::errc{} || at != end)
        Fields::refuse(name, "must be named by its kilograms");
    return Fields::checked(mass, name, aboveZero);
}

Out totalOf(const PlateLoad* load) { return load ? Out(load->total.si()) : Out(nullptr); }

}

std::vector<PlateStock> stockFrom(Fields& in)
{
    constexpr int most = 1000;
    Fields given = in.object("stock");
    std::vector<PlateStock> stock;
    for (const auto& [key, count] : given.json().items()) {
        const PlateType type{kilograms(massNamed(key, given.name(key))), {}, {}};
        for (const PlateStock& other : stock)
            if (other.type == type)
                Fields::refuse(given.name(key), "stands twice");
        stock.push_back({type, given.whole(key.c_str(), 0, most)});
    }
    return stock;
}

Out plates(Fields& in)
{
    const Mass target = kilograms(in.number("target_kg", notBelowZero));
    const Mass base = kilograms(in.number("bar_kg", notBelowZero)) + kilograms(in.number("collars_kg", notBelowZero));
    const auto loads = accepted(PlateLoads::of(stockFrom(in), base));
    const PlateLoad& nearest = loads.nearest(target);
    Out side = Out::array();
    for (const PlateType& plate : nearest.eachSide)
        side.push_back(plate.mass.si());
    return {{"each_side", side},
            {"total_kg", nearest.total.si()},
            {"below_kg", totalOf(loads.atOrBelow(target))},
            {"above_kg", totalOf(loads.atOrAbove(target))}};
}

}
