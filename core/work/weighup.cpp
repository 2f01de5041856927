// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/weighup.h"

#include "core/resistance/pullsum.h"
#include "core/work/measuredkit.h"
#include "core/work/measuring/aidkit.h"

#include <algorithm>
#include <map>
#include <numbers>
#include <string>

namespace steelyard {

namespace {

const KitItem* find(std::span<const KitItem> kit, const RecordId& id)
{
    const auto at = std::find_if(kit.begin(), kit.end(), [&](const KitItem& i) { return i.id == id; });
    return at == kit.end() ? nullptr : &*at;
}

Error inItem(const KitItem& item, const Error& error) { return {error.code, item.name + ": " + error.what}; }

ChainHang chainHang(const ChainPlacing& placing)
{
    ChainHang hang;
    hang.how = static_cast<ChainHanging>(placing.way);
    hang.lead = placing.lead;
    hang.leadMass = placing.leadMass;
    hang.bunch = placing.bunch;
    return hang;
}

BandHang bandHang(const BandPlacing& placing)
{
    BandHang hang;
    hang.doubled = placing.doubled;
    hang.above = placing.above;
    hang.anchorHeight = placing.anchorHeight;
    hang.offset = placing.offset;
    if (placing.doubled)
        hang.wrap = std::numbers::pi / 2 * placing.handle;
    return hang;
}

/// Hangs the records on the two sides of a set-up; `bottom` is where the bar touches the chest, unless an aid says otherwise.
class Hanger {
public:
    Hanger(Setup& setup, std::span<const KitItem> kit, Height bottom, const HeldTo& heldTo) : m_setup(setup), m_kit(kit), m_bottom(bottom), m_heldTo(heldTo) {}

    [[nodiscard]] std::vector<WeakAnchor> weakAnchors(const LiftPath& path) const
    {
        std::vector<WeakAnchor> weak;
        for (const HeldBand& held : m_held) {
            const auto found = weakAnchor(held.item, held.band, held.by, path, m_heldTo.limits.holdFactor());
            if (!found)
                continue;
            // of a pair the twin is the less sure, and speaks for both
            if (!weak.empty() && weak.back().item == found->item)
                weak.pop_back();
            weak.push_back(*found);
        }
        return weak;
    }
    [[nodiscard]] std::vector<OldBand> oldBands() const { return m_old; }
    std::optional<Error> hang(const HungRecord& record)
    {
        const KitItem* item = find(m_kit, record.item);
        if (!item)
            return Error{Refusal::NotThere, "item"};
        if (std::holds_alternative<AidPlacing>(record.placing) || std::holds_alternative<AidMeasurement>(item->measurement))
            return worn(*item, record);
        int& used = m_used[record.item];
        const int pieces = record.on == HungOn::BothSides ? 2 : 1;
        if (used + pieces > (item->pair ? 2 : 1))
            return Error{Refusal::TooMany, item->name};
        for (const Side side : {Side::Left, Side::Right}) {
            if (record.on == (side == Side::Left ? HungOn::RightOnly : HungOn::LeftOnly))
                continue;
            if (auto wrong = one(*item, record, side, used++ > 0))
                return wrong;
        }
        return std::nullopt;
    }

private:
    [[nodiscard]] bool isOld(const KitItem& item) const
    {
        return m_heldTo.day && item.measuredOn && *m_heldTo.day - *item.measuredOn > m_heldTo.limits.bandGoodFor();
    }
    void sayOld(const OldBand& band)
    {
        if (std::find(m_old.begin(), m_old.end(), band) == m_old.end())
            m_old.push_back(band);
    }
    /// What stems from one measurement is told by the item's place in the kit, counted from 1.
    [[nodiscard]] SourceId sourceOf(const KitItem& item) const { return {static_cast<std::uint32_t>(&item - m_kit.data()) + 1}; }
    /// Worn in the middle of the bar, so each side has half of it, whatever the record says of sides.
    std::optional<Error> worn(const KitItem& item, const HungRecord& record)
    {
        const auto* placing = std::get_if<AidPlacing>(&record.placing);
        const auto* measured = std::get_if<AidMeasurement>(&item.measurement);
        if (!placing || !measured)
            return Error{Refusal::OutOfRange, item.name};
        if (++m_used[record.item] > 1)
            return Error{Refusal::TooMany, item.name};
        const auto help = aidFrom(*measured, sourceOf(item));
        if (!help)
            return inItem(item, help.error());
        for (auto* side : {&m_setup.left, &m_setup.right})
            side->emplace_back(HungHelp{*help, placing->chest.value_or(m_bottom), true, 0.5});
        return std::nullopt;
    }
    std::optional<Error> one(const KitItem& item, const HungRecord& record, Side side, bool second)
    {
        const SourceId source = sourceOf(item);
        auto& list = side == Side::Left ? m_setup.left : m_setup.right;
        if (const auto* measured = std::get_if<ChainMeasurement>(&item.measurement)) {
            const auto* placing = std::get_if<ChainPlacing>(&record.placing);
            const auto chain = chainFrom(*measured, source);
            if (!placing || !chain)
                return placing ? inItem(item, chain.error()) : Error{Refusal::OutOfRange, item.name};
            auto hung = HungChain::of(*chain, chainHang(*placing));
            if (!hung)
                return inItem(item, hung.error());
            list.emplace_back(*hung);
            return std::nullopt;
        }
        const auto* placing = std::get_if<BandPlacing>(&record.placing);
        const auto* band = std::get_if<BandMeasurement>(&item.measurement);
        if (!band)
            return Error{Refusal::OutOfRange, item.name};
        const auto fit = bandFitFrom(*band);
        if (!placing || !fit)
            return placing ? inItem(item, fit.error()) : Error{Refusal::OutOfRange, item.name};
        const bool old = isOld(item);
        if (old)
            sayOld({item.name, *item.measuredOn});
        auto hung = HungBand::of(Band{*fit, source, second, old}, bandHang(*placing));
        if (!hung)
            return inItem(item, hung.error());
        m_held.push_back({item.name, *hung, placing->heldBy});
        list.emplace_back(*hung);
        return std::nullopt;
    }

    struct HeldBand {
        std::string item;
        HungBand band;
        std::optional<Mass> by;
    };

    Setup& m_setup;
    std::span<const KitItem> m_kit;
    Height m_bottom;
    std::map<RecordId, int> m_used;
    std::vector<HeldBand> m_held;
    std::vector<OldBand> m_old;
    const HeldTo& m_heldTo;
};

bool anyOf(const Setup& setup, const auto& is)
{
    return std::any_of(setup.left.begin(), setup.left.end(), is) || std::any_of(setup.right.begin(), setup.right.end(), is);
}

std::vector<Caution> cautionsFor(const SetupRecord& record, const Setup& setup, const PullCurve& curve, std::span<const CautionCode> lookedOver)
{
    std::vector<Caution> cautions;
    const auto add = [&](CautionCode code, std::optional<Mass> mass) {
        const bool looked = std::find(lookedOver.begin(), lookedOver.end(), code) != lookedOver.end();
        cautions.push_back({code, mass, looked});
    };
    const auto band = [](bool above) {
        return [above](const HungItem& item) {
            const auto* b = std::get_if<HungBand>(&item);
            return b && b->hang().above == above;
        };
    };
    if (anyOf(setup, [](const HungItem& item) { return std::holds_alternative<HungChain>(item); }))
        add(CautionCode::Chains, std::nullopt);
    if (anyOf(setup, band(false)))
        add(CautionCode::BandsBelow, curve.ready && curve.anchorPull ? std::optional(asMass(*curve.anchorPull)) : std::nullopt);
    // what helps her and may let go: she then holds the rest
    const auto mayLetGo = [&](CautionCode code, const auto& helps) {
        if (!anyOf(setup, helps))
            return;
        Setup slipped = setup;
        for (auto* side : {&slipped.left, &slipped.right})
            std::erase_if(*side, helps);
        const PullSum left(slipped);
        const bool known = left.knows(setup.path.bottom);
        add(code, known ? std::optional(asMass(left.total(setup.path.bottom))) : std::nullopt);
    };
    mayLetGo(CautionCode::BandsAbove, band(true));
    mayLetGo(CautionCode::BenchAid, [](const HungItem& item) { return std::holds_alternative<HungHelp>(item); });
    if (record.release)
        add(CautionCode::Release, std::nullopt);
    return cautions;
}

/// A band said to hang from above must be anchored above the whole path, and the other way round: else the caution
/// that goes with it would be the wrong one.
std::optional<Error> wrongAnchor(const SetupRecord& record, std::span<const KitItem> kit, const LiftPath& path)
{
    for (const HungRecord& hung : record.hung) {
        const auto* band = std::get_if<BandPlacing>(&hung.placing);
        const KitItem* item = find(kit, hung.item);
        if (band && item && (band->above ? band->anchorHeight <= path.top : band->anchorHeight >= path.bottom))
            return inItem(*item, {Refusal::AnchorOnWrongSide, "anchor height"});
    }
    return std::nullopt;
}

bool isLimit(const SetupWarning& w)
{
    return w.code == SetupWarningCode::OverCap || w.code == SetupWarningCode::OverRackRating
        || w.code == SetupWarningCode::OverSafetyRating || w.code == SetupWarningCode::SleeveFull;
}

/// What forbids the lift for what hangs comes before what is not known of it, and that before what is too much of it.
Readiness readinessOf(const WeighedUp& out, const PullCurve& curve)
{
    if (!out.outOfUse.empty() || !out.lentOut.empty())
        return Readiness::NotToBeUsed;
    if (!curve.ready)
        return Readiness::PullUnknown;
    if (!out.weakAnchors.empty() || std::any_of(curve.warnings.begin(), curve.warnings.end(), isLimit))
        return Readiness::NotToBeUsed;
    const bool allLookedOver = std::all_of(out.cautions.begin(), out.cautions.end(), [](const Caution& c) { return c.lookedOver; });
    return allLookedOver ? Readiness::Ready : Readiness::LookOver;
}

}

Result<LiftPath> liftPath(const BarMarks& marks, const PlateLoad& load)
{
    LiftPath path;
    if (marks.start == LiftStart::Floor) {
        if (load.eachSide.empty())
            return Error{Refusal::NotThere, "plates"};
        path.bottom = load.largestDiameter() / 2 + marks.blocks.value_or(Length{});
    } else {
        if (!marks.bottom)
            return Error{Refusal::NotThere, "bottom"};
        path.bottom = *marks.bottom;
    }
    if (!marks.top)
        return Error{Refusal::NotThere, "top"};
    path.top = *marks.top;
    path.zoneFrom = marks.zoneFrom;
    path.zoneTo = marks.zoneTo;
    path.rack = marks.start == LiftStart::Floor ? std::nullopt : marks.rack;
    path.uMark = uBarMark;
    return path;
}

WeighedUp weighUp(const SetupRecord& record, std::span<const KitItem> kit, const BarMarks& marks,
                  std::span<const CautionCode> lookedOver, std::size_t samples, const HeldTo& heldTo, const PlateLoad* chosen)
{
    WeighedUp out;
    const auto refuse = [&out](const Error& error) {
        out.readiness = Readiness::Refused;
        out.error = error;
        return out;
    };
    const auto loads = loadsOf(record.bar);
    if (!loads)
        return refuse(loads.error());
    out.load = loads->nearest(record.bar.wanted);
    if (chosen && isSameTotal(*chosen, *out.load))
        out.load = *chosen;

    Setup setup;
    setup.bar = record.bar.bar;
    setup.collars = record.bar.collars;
    setup.plates = out.load->plates();
    setup.uIron = ironUncertainty(record.bar, *out.load);
    setup.platesThickness = out.load->thickness();
    setup.limits.sleeve = record.bar.sleeve;
    for (const KitItem& item : kit) {
        const bool hangs = std::any_of(record.hung.begin(), record.hung.end(), [&](const HungRecord& hung) { return hung.item == item.id; });
        if (!hangs && !isOnTheBar(record.bar, *out.load, item.id))
            continue;
        if (item.isOutOfUse())
            out.outOfUse.push_back(item.name);
        if (item.lent)
            out.lentOut.push_back(item.name);
    }
    const auto path = liftPath(marks, *out.load);
    Hanger hanger(setup, kit, path ? path->bottom : Height{}, heldTo);
    for (const HungRecord& hung : record.hung)
        if (auto wrong = hanger.hang(hung))
            return refuse(*wrong);

    if (!path) {
        out.readiness = Readiness::MarksMissing;
        out.error = path.error();
        return out;
    }
    setup.path = *path;
    out.path = *path;
    if (auto wrong = wrongAnchor(record, kit, *path))
        return refuse(*wrong);
    auto curve = pullCurve(setup, samples);
    if (!curve)
        return refuse(curve.error());
    out.cautions = cautionsFor(record, setup, *curve, lookedOver);
    out.weakAnchors = hanger.weakAnchors(*path);
    out.oldBands = hanger.oldBands();
    out.readiness = readinessOf(out, *curve);
    out.curve = std::move(*curve);
    out.setup = std::move(setup);
    return out;
}

}
