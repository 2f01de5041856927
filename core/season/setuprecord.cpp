// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/setuprecord.h"

namespace steelyard {

std::vector<PlatesHere> usualStock()
{
    const auto plate = [](const char* mark, double kg, double diameter, double thickness, int count) {
        return PlatesHere{{kilograms(kg), metres(diameter), metres(thickness)}, count, AsTyped{mark, Unit::Kilogram}};
    };
    return {plate("25", 25, 0.450, 0.045, 2), plate("20", 20, 0.450, 0.040, 2), plate("15", 15, 0.400, 0.035, 2), plate("10", 10, 0.325, 0.031, 4),
            plate("5", 5, 0.228, 0.025, 2),  plate("2.5", 2.5, 0.190, 0.019, 2), plate("1.25", 1.25, 0.160, 0.014, 2)};
}

std::optional<Placing> firstPlacing(ItemKind kind)
{
    switch (kind) {
    case ItemKind::Chain: return ChainPlacing{};
    case ItemKind::Band: return BandPlacing{};
    case ItemKind::Aid: return AidPlacing{};
    default: return std::nullopt;
    }
}

}
