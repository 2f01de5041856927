// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/lookover.h"

namespace steelyard {

std::vector<KitFault> faultsOf(ItemKind kind)
{
    switch (kind) {
    case ItemKind::Chain: return {KitFault::WornLink, KitFault::BentLink, KitFault::Hook, KitFault::Other};
    case ItemKind::Band: return {KitFault::Cut, KitFault::Crack, KitFault::Sticky, KitFault::Other};
    case ItemKind::Aid: return {KitFault::Cut, KitFault::Sticky, KitFault::Seam, KitFault::Other};
    case ItemKind::Machine: return {KitFault::Cable, KitFault::Pin, KitFault::Weld, KitFault::Other};
    case ItemKind::Scale: return {KitFault::ZeroRuns, KitFault::Dropped, KitFault::Hook, KitFault::Other};
    case ItemKind::Iron: return {KitFault::Crack, KitFault::Collar, KitFault::Other};
    case ItemKind::Lead: return {KitFault::Cut, KitFault::Seam, KitFault::Buckle, KitFault::Other};
    case ItemKind::Rack: break;
    case ItemKind::Tyre: return {KitFault::WireShowing, KitFault::Sidewall, KitFault::Other};
    case ItemKind::Log: return {KitFault::Split, KitFault::HandleLoose, KitFault::Other};
    case ItemKind::Stone: return {KitFault::Crack, KitFault::Split, KitFault::Other};
    case ItemKind::Keg: return {KitFault::UnderPressure, KitFault::Leak, KitFault::Seam, KitFault::Other};
    case ItemKind::Sled: return {KitFault::Hook, KitFault::Buckle, KitFault::Weld, KitFault::Other};
    case ItemKind::Carry: return {KitFault::HandleLoose, KitFault::Weld, KitFault::Collar, KitFault::Other};
    case ItemKind::Bell: return {KitFault::HandleLoose, KitFault::Crack, KitFault::Collar, KitFault::Other};
    }
    return {KitFault::Pin, KitFault::Weld, KitFault::Other};
}

}
