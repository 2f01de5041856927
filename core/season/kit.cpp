// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/kit.h"

#include <array>

namespace steelyard {

static_assert(std::variant_size_v<Measured> == static_cast<std::size_t>(lastItemKind) + 1);

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
    case ItemKind::Rack: return RackMeasurement{};
    case ItemKind::Tyre: return TyreMeasurement{};
    case ItemKind::Log: return LogMeasurement{};
    case ItemKind::Stone: return StoneMeasurement{};
    case ItemKind::Keg: return KegMeasurement{};
    case ItemKind::Sled: return SledMeasurement{};
    case ItemKind::Carry: return CarryMeasurement{};
    case ItemKind::Bell: break;
    }
    return BellMeasurement{};
}

bool KitItem::isMeasured() const
{
    return measurement != notYetMeasured(kindOf(measurement));
}

std::string wordOf(ItemKind kind)
{
    constexpr std::array words{"chain", "band", "aid", "machine", "scale", "iron", "lead", "rack", "tyre", "log", "stone", "keg", "sled", "carry", "bell"};
    return words.at(static_cast<std::size_t>(kind));
}

}
