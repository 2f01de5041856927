// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/kit.h"

#include <array>

namespace steelyard {

static_assert(std::variant_size_v<Measured> == static_cast<std::size_t>(ItemKind::Rack) + 1);

Measured notYetMeasured(ItemKind kind)
{
    switch (kind) {
    case ItemKind::Chain: return ChainMeasurement{};
    case ItemKind::Band: return BandMeasurement{};
    case ItemKind::Aid: return AidMeasurement{};
    case ItemKind::Machine: return MachineMeasurement{};
    case ItemKind::Scale: return ScaleMeasurement{};
    case ItemKind::Iron: return IronMeasurement{};
    case ItemKind::Lead: return LeadMeasurement{};
    case ItemKind::Rack: break;
    }
    return RackMeasurement{};
}

bool KitItem::isMeasured() const
{
    return measurement != notYetMeasured(kindOf(measurement));
}

std::string wordOf(ItemKind kind)
{
    constexpr std::array words{"chain", "band", "aid", "machine", "scale", "iron", "lead", "rack"};
    return words.at(static_cast<std::size_t>(kind));
}

}
