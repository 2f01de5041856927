// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/asking/kitquestion.h"

#include "core/resistance/pullsum.h"
#include "core/work/asking/ironloads.h"
#include "core/work/measuredkit.h"
#include "core/work/measuring/keptkit.h"

#include <algorithm>

namespace steelyard {

namespace {

/// A pair of straps that a chain may hang by; the first is none at all.
struct Strap {
    Entered<Length> length;
    Entered<Mass> mass;
    std::uint64_t piece = 0; ///< the bit that says it is taken
};

const KitItem* itemOf(std::span<const KitItem> kit, const RecordId& id)
{
    const auto at = std::find_if(kit.begin(), kit.end(), [&](const KitItem& item) { return item.id == id; });
    return at == kit.end() ? nullptr : &*at;
}

std::vector<Strap> strapsOf(std::span<const KitItem> kit)
{
    std::vector<Strap> straps{{metres(0), kilograms(0), 0}};
    std::uint64_t piece = 1;
    for (const KeptLead& lead : leadsIn(kit))
        if (const KitItem* item = itemOf(kit, lead.item); item && item->pair && !item->lent && piece != 0) {
            straps.push_back({lead.length, lead.mass, piece});
            piece <<= 1;
        }
    return straps;
}

std::vector<Entered<Height>> anchorsOf(std::span<const KitItem> kit)
{
    std::vector<Entered<Height>> anchors;
    for (const KeptRack& rack : racksIn(kit))
        if (const KitItem* item = itemOf(kit, rack.item); item && !item->lent)
            anchors.insert(anchors.end(), rack.check.anchors.begin(), rack.check.anchors.end());
    std::sort(anchors.begin(), anchors.end(), [](const auto& a, const auto& b) { return a.quantity() < b.quantity(); });
    anchors.erase(std::unique(anchors.begin(), anchors.end(), [](const auto& a, const auto& b) { return a.quantity() == b.quantity(); }), anchors.end());
    return anchors;
}

class Choices {
public:
    Choices(KitQuestion& out, const SetupRecord& now, std::span<const KitItem> kit, const BarMarks& marks, const AllowedKinds& allowed, const HeldTo& heldTo)
        : m_out(out), m_now(now), m_kit(kit), m_marks(marks), m_allowed(allowed), m_heldTo(heldTo), m_straps(strapsOf(kit)), m_anchors(anchorsOf(kit))
    {
    }

    void add(const KitItem& item)
    {
        const ItemKind kind = kindOf(item.measurement);
        const bool hangs = kind == ItemKind::Chain ? m_allowed.chains : kind == ItemKind::Band && (m_allowed.bandsBelow || m_allowed.bandsAbove);
        if (!hangs)
            return;
        if (item.lent || item.isOutOfUse())
            return leave(item, NotChosen::NotToBeUsed);
        if (!item.isMeasured())
            return leave(item, NotChosen::NotMeasured);
        if (!item.pair)
            return leave(item, NotChosen::NoPair);
        m_tried = 0;
        const std::size_t before = m_out.ways.size();
        for (const HungRecord& hung : m_now.hung)
            if (hung.item == item.id && hung.on == HungOn::BothSides)
                tryOut(hung, strapOf(hung));
        if (kind == ItemKind::Chain)
            chain(item);
        else
            band(item);
        if (m_out.ways.size() == before)
            leave(item, m_tried == 0 ? NotChosen::NoAnchor : NotChosen::NotFarEnough);
        else
            ++m_thingIndex;
    }

private:
    /// Which pair of straps a chain hangs by now.
    [[nodiscard]] std::uint64_t strapOf(const HungRecord& hung) const
    {
        const auto* placing = std::get_if<ChainPlacing>(&hung.placing);
        const auto at = std::find_if(m_straps.begin(), m_straps.end(), [&](const Strap& strap) {
            return placing && strap.length.quantity() == placing->lead.quantity() && strap.mass.quantity() == placing->leadMass.quantity();
        });
        return at == m_straps.end() ? 0 : at->piece;
    }
    void leave(const KitItem& item, NotChosen why) { m_out.leftOut.push_back({item.id, why}); }

    void chain(const KitItem& item)
    {
        for (const ChainHangingWay way : {ChainHangingWay::Straight, ChainHangingWay::Doubled})
            for (const Strap& strap : m_straps) {
                ChainPlacing placing;
                placing.way = way;
                placing.lead = strap.length;
                placing.leadMass = strap.mass;
                tryOut({item.id, HungOn::BothSides, placing}, strap.piece);
            }
    }

    void band(const KitItem& item)
    {
        for (const Entered<Height>& anchor : m_anchors) {
            BandPlacing placing;
            placing.anchorHeight = anchor;
            placing.above = m_marks.top && anchor.quantity() > *m_marks.top;
            if (placing.above ? m_allowed.bandsAbove : m_allowed.bandsBelow)
                tryOut({item.id, HungOn::BothSides, placing});
        }
    }

    /// As the engine weighs it up by itself: what it refuses, does not know or holds to be weak is no choice.
    void tryOut(const HungRecord& record, std::uint64_t takenPieces = 0)
    {
        const bool hangsNow = std::find(m_now.hung.begin(), m_now.hung.end(), record) != m_now.hung.end();
        if (std::find(m_out.ways.begin(), m_out.ways.end(), record) != m_out.ways.end())
            return;
        SetupRecord alone = m_now;
        alone.hung = {record};
        const WeighedUp weighed = weighUp(alone, m_kit, m_marks, {}, 0, m_heldTo);
        if (!weighed.setup || weighed.error || !weighed.weakAnchors.empty())
            return;
        ++m_tried;
        if (!weighed.curve || !weighed.curve->ready)
            return;
        m_out.question.ways.push_back({m_thingIndex, takenPieces, weighed.setup->left, weighed.setup->right, 2, hangsNow});
        m_out.ways.push_back(record);
    }

    KitQuestion& m_out;
    const SetupRecord& m_now;
    std::span<const KitItem> m_kit;
    const BarMarks& m_marks;
    const AllowedKinds& m_allowed;
    const HeldTo& m_heldTo;
    std::vector<Strap> m_straps;
    std::vector<Entered<Height>> m_anchors;
    std::size_t m_thingIndex = 0;
    int m_tried = 0;
};

/// The bar with nothing on it but what is worn.
SetupRecord onlyWorn(SetupRecord setup)
{
    std::erase_if(setup.hung, [](const HungRecord& hung) { return !std::holds_alternative<AidPlacing>(hung.placing); });
    return setup;
}

}

Result<KitQuestion> kitQuestion(const SetupRecord& now, std::span<const KitItem> kit, const BarMarks& marks, const AllowedKinds& allowed, std::vector<HangTarget> targets, std::optional<StrengthCurve> strength, const HeldTo& heldTo)
{
    const auto hangs = loadsOf(now.bar);
    if (!hangs)
        return hangs.error();
    const auto loads = ironLoads(now.bar, marks);
    if (!loads)
        return loads.error();
    KitQuestion out;
    HangQuestion& question = out.question;
    question.targets = std::move(targets);
    question.strength = std::move(strength);
    question.collars = now.bar.collars;
    question.limits.sleeve = now.bar.sleeve;
    const Mass totalNow = hangs->nearest(now.bar.wanted).total;
    for (const IronLoad& iron : *loads) {
        if (question.strength && !levelStretch(iron.path, *question.strength))
            continue;
        if (iron.load.total == totalNow)
            question.loadNowIndex = question.loads.size();
        question.loads.push_back(iron);
    }
    if (question.loads.empty())
        return Error{Refusal::TooFewPoints, "strength"};
    const SetupRecord worn = onlyWorn(now);
    if (!worn.hung.empty()) {
        const WeighedUp weighed = weighUp(worn, kit, marks, {}, 0);
        if (weighed.error || !weighed.setup)
            return weighed.error.value_or(Error{Refusal::NotThere, "aid"});
        question.wornLeft = weighed.setup->left;
        question.wornRight = weighed.setup->right;
    }
    Choices choices(out, now, kit, marks, allowed, heldTo);
    for (const KitItem& item : kit)
        choices.add(item);
    return out;
}

SetupRecord setupOf(const SetupRecord& now, const KitQuestion& asked, const HangAnswer& answer)
{
    SetupRecord setup = onlyWorn(now);
    setup.bar.wanted = asked.question.loads[answer.loadIndex].load.total;
    for (const std::size_t way : answer.wayIndex)
        setup.hung.push_back(asked.ways[way]);
    return setup;
}

}
