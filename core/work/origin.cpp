// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/origin.h"

#include "core/work/measuredkit.h"

#include <algorithm>

namespace steelyard {

namespace {

KnownBy howKnown(const BarRecord& bar, const PlateLoad& load)
{
    const IronKnown known = ironKnown(bar, load);
    if (known.weighed)
        return known.unweighed > Mass{} ? KnownBy::IronPartWeighed : KnownBy::IronWeighed;
    // a bare bar of a stock that nobody has weighed has nothing of it on
    return bar.trust == PlateTrust::Unweighed ? KnownBy::Unweighed : KnownBy::Marked;
}

KnownBy howKnown(const KitItem& item, const SetupRecord& record)
{
    if (const auto* chain = std::get_if<ChainMeasurement>(&item.measurement))
        return chain->by == ChainMeasuring::Weighed ? KnownBy::Weighed : KnownBy::Gauged;
    if (kindOf(item.measurement) == ItemKind::Aid)
        return KnownBy::Rested;
    std::size_t used = 0;
    for (const HungRecord& hung : record.hung)
        if (hung.item == item.id)
            used += hung.on == HungOn::BothSides ? 2 : 1;
    return used > 1 ? KnownBy::HungTwin : KnownBy::Hung;
}

struct Asked {
    const std::optional<Reading>* reading;
    std::optional<Height> from, to;
};

Asked asked(const PullCurve& curve, const LiftPath& path, WhichPull which)
{
    switch (which) {
    case WhichPull::Rack: return {&curve.rack, path.rack, path.rack};
    case WhichPull::Bottom: return {&curve.bottom, path.bottom, path.bottom};
    case WhichPull::Zone: return {&curve.zone, path.zoneFrom, path.zoneTo};
    case WhichPull::Top: return {&curve.top, path.top, path.top};
    case WhichPull::Mean: break;
    }
    return {&curve.mean, path.bottom, path.top};
}

}

std::optional<Origin> originOf(const WeighedUp& answer, const SetupRecord& record, std::span<const KitItem> kit, WhichPull which)
{
    if (!answer.curve || !answer.setup || !answer.load)
        return std::nullopt;
    const auto [reading, from, to] = asked(*answer.curve, answer.setup->path, which);
    if (!*reading || !from || !to)
        return std::nullopt;
    const auto parts = *from == *to ? pullPartsAt(*answer.setup, *from) : pullPartsOfMean(*answer.setup, *from, *to);
    if (!parts)
        return std::nullopt;
    Origin origin{**reading, {}, *from, *to};
    const double whole = parts->u().si() * parts->u().si();
    const auto add = [&](KnownBy by, const RecordId& item, Force pull, Force u) {
        origin.lines.push_back({by, item, pull, u, whole > 0 ? u.si() * u.si() / whole : 0});
    };
    add(howKnown(record.bar, *answer.load), {}, parts->iron, parts->uIron);
    for (const PullPart& part : parts->parts) {
        // a thing of the kit is the source with its place in the kit, counted from 1
        const std::size_t place = part.source.value;
        if (place == 0 || place > kit.size())
            return std::nullopt;
        const KitItem& item = kit[place - 1];
        add(howKnown(item, record), item.id, part.pull, part.u);
    }
    add(KnownBy::Taped, {}, Force{}, parts->uMarks);
    return origin;
}

}
