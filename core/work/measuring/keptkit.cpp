// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/keptkit.h"

#include <cmath>

namespace steelyard {

namespace {

/// Calls with each thing of a kind that is here and in use, its measurement and what the check of it gave.
template <typename Measurement, typename Each>
void eachKept(std::span<const KitItem> kit, const Each& each)
{
    for (const KitItem& item : kit) {
        const auto* measured = std::get_if<Measurement>(&item.measurement);
        if (!measured || item.isOutOfUse() || item.lent)
            continue;
        if (const auto check = checked(*measured))
            each(item, *measured, *check);
    }
}

template <typename Kept, typename Measurement>
std::vector<Kept> allKept(std::span<const KitItem> kit)
{
    std::vector<Kept> all;
    eachKept<Measurement>(kit, [&all](const KitItem& item, const Measurement& measured, const auto& check) { all.push_back({item.id, item.name, measured, check}); });
    return all;
}

}

std::vector<KeptScale> scalesIn(std::span<const KitItem> kit)
{
    return allKept<KeptScale, ScaleMeasurement>(kit);
}

std::vector<KeptRack> racksIn(std::span<const KitItem> kit)
{
    return allKept<KeptRack, RackMeasurement>(kit);
}

std::vector<KeptLead> leadsIn(std::span<const KitItem> kit)
{
    std::vector<KeptLead> all;
    eachKept<LeadMeasurement>(kit, [&all](const KitItem& item, const LeadMeasurement&, const KeptLead& lead) { all.push_back({item.id, item.name, lead.length, lead.mass}); });
    return all;
}

std::vector<KnownIron> ironIn(std::span<const KitItem> kit, IronSort sort)
{
    std::vector<KnownIron> all;
    eachKept<IronMeasurement>(kit, [&all, sort](const KitItem& item, const IronMeasurement& measured, const IronCheck& check) {
        if (measured.sort == sort)
            all.push_back({item.id, measured, check});
    });
    return all;
}

Result<KeptLead> checked(const LeadMeasurement& lead)
{
    if (!lead.length)
        return Error{Refusal::NotThere, "length"};
    if (!std::isfinite(lead.length->si()) || lead.length->si() <= 0)
        return Error{Refusal::OutOfRange, "length"};
    const Entered<Mass> mass = lead.mass.value_or(Entered<Mass>());
    if (!std::isfinite(mass.si()) || mass.si() < 0)
        return Error{Refusal::OutOfRange, "mass"};
    return KeptLead{{}, {}, *lead.length, mass};
}

}
