// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/eccentric/release.h"

#include "core/season/method.h"
#include "core/work/measuredkit.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

/// Iron that nobody has weighed, 2 % either way (our choice), as a standard uncertainty.
const double unweighedRatio = 0.02 / std::sqrt(3.0);

template <typename Value>
std::optional<Value> valueIn(const Result<Value>& result, std::optional<Error>& error)
{
    if (result)
        return *result;
    error = result.error();
    return std::nullopt;
}

Error wanting(const char* what) { return {Refusal::NotThere, what}; }

bool isUnweighed(const BarRecord& bar) { return bar.trust == PlateTrust::Unweighed; }

/// One share for all plates: of those that were weighed the least sure one stands for the rest.
double platesUShare(const BarRecord& bar)
{
    double share = isUnweighed(bar) ? unweighedRatio : 0;
    for (const PlatesHere& plates : bar.stock)
        if (plates.weighed && plates.type.mass > Mass{})
            share = std::max(share, plates.weighed->u.quantity() / plates.type.mass);
    return share;
}

Mass uOfFrame(const HookRecord& hook)
{
    return hook.scaleStep ? hook.scaleStep->quantity() / std::sqrt(12.0) : unweighedRatio * hook.frame->quantity();
}

/// The load of a set-up with its plan, way by way.
class Loading {
public:
    Loading(const SetupRecord& setup, const ReleaseFacts& facts) : m_bar(setup.bar), m_plan(*setup.release), m_facts(facts) {}

    Result<ReleaseLoad> run() const
    {
        if (m_plan.asked.inPercent && !m_facts.maximum)
            return wanting("maximum");
        auto load = m_plan.way == ReleaseWay::Hooks || m_plan.way == ReleaseWay::PartnerLiftsOff ? fromStock() : barAlone();
        if (load)
            addPercents(*load);
        return load;
    }

private:
    /// What is asked of both ways; of the way down nothing where that is not in percent and no load was said.
    [[nodiscard]] Result<EccentricTarget> target() const
    {
        const ReleaseAsked& asked = m_plan.asked;
        if (asked.inPercent)
            return eccentricTarget(m_facts.maximum->value, asked.upPercent, asked.downPercent, asked.downOfWayUp ? PercentBase::ConcentricLoad : PercentBase::OneRepMax);
        if (!asked.down)
            return wanting("eccentric load");
        return eccentricTarget(m_bar.wanted, *asked.down);
    }

    [[nodiscard]] Result<ReleaseLoad> fromStock() const
    {
        const auto wanted = target();
        if (!wanted)
            return wanted.error();
        EccentricKit kit;
        for (const PlatesHere& plates : m_bar.stock)
            kit.stock.push_back({plates.type, plates.count});
        kit.base = {m_bar.bar.quantity() + m_bar.collars.quantity(), m_bar.barWeighed ? m_bar.barWeighed->u.quantity() : Mass{}};
        kit.platesUShare = platesUShare(m_bar);
        kit.sleeve = m_bar.sleeve;
        const bool hooks = m_plan.way == ReleaseWay::Hooks;
        if (hooks) {
            if (!m_plan.hook.frame)
                return wanting("hook frame");
            kit.frame = {m_plan.hook.frame->quantity(), uOfFrame(m_plan.hook)};
            kit.hookRoom = m_plan.hook.room;
            kit.hookRating = m_plan.hook.rating;
        } else {
            kit.hookRoom = m_bar.sleeve;
        }
        const auto answer = eccentricLoad(kit, *wanted);
        if (!answer)
            return answer.error();
        const EccentricLoad& best = answer->best;
        Length onSide = best.bar.thickness();
        for (const PlateType& plate : best.onEachHook)
            onSide += plate.thickness;
        if (!hooks && m_bar.sleeve && onSide > m_bar.sleeve->quantity())
            return Error{Refusal::TooMany, "sleeve"};
        ReleaseLoad load;
        load.bar = best.bar;
        load.onEach = best.onEachHook;
        load.up = best.concentric;
        load.each = best.eachHook;
        load.down = best.eccentric;
        load.upMiss = best.concentricMiss;
        load.downMiss = best.eccentricMiss;
        load.ideal = idealHook(*wanted);
        const auto down = [](const std::optional<EccentricLoad>& other) { return other ? std::optional(other->eccentric.value) : std::nullopt; };
        load.lighterDown = down(answer->lighter);
        load.heavierDown = down(answer->heavier);
        return load;
    }

    /// What is let go comes from elsewhere, and not from the plates.
    [[nodiscard]] Result<ReleaseLoad> barAlone() const
    {
        const auto wanted = target();
        if (!wanted && (m_plan.asked.inPercent || m_plan.asked.down))
            return wanted.error();
        const auto loads = loadsOf(m_bar);
        if (!loads)
            return loads.error();
        const Mass up = wanted ? wanted->concentric : m_bar.wanted.quantity();
        ReleaseLoad load;
        load.bar = loads->nearest(up);
        load.up = {load.bar.total, ironUncertainty(m_bar, load.bar)};
        load.upMiss = load.bar.total - up;
        if (m_plan.way == ReleaseWay::DumbbellsDropped) {
            if (!m_plan.dumbbell)
                return wanting("dumbbell");
            load.each = Uncertain<Mass>{m_plan.dumbbell->quantity(), isUnweighed(m_bar) ? unweighedRatio * m_plan.dumbbell->quantity() : Mass{}};
            load.down = Uncertain<Mass>{load.up.value + 2 * load.each->value, load.up.u + 2 * load.each->u};
        } else if (m_plan.way == ReleaseWay::PartnerAdds && m_plan.push) {
            load.down = Uncertain<Mass>{load.up.value + m_plan.push->quantity(), load.up.u};
        }
        if (wanted) {
            const Mass down = wanted->eccentric ? *wanted->eccentric : *wanted->eccentricRatio * load.up.value;
            load.ideal = (down - load.up.value) / 2;
            if (load.down)
                load.downMiss = load.down->value - down;
        }
        return load;
    }

    void addPercents(ReleaseLoad& load) const
    {
        const auto of = [](const std::optional<Uncertain<Mass>>& part, const std::optional<Uncertain<Mass>>& base) -> std::optional<PercentReached> {
            if (!part || !base)
                return std::nullopt;
            const auto reached = percentReached(*part, *base);
            return reached ? std::optional(*reached) : std::nullopt;
        };
        load.upOfMaximum = of(load.up, m_facts.maximum);
        load.downOfMaximum = of(load.down, m_facts.maximum);
        load.downOfUp = of(load.down, load.up);
    }

    const BarRecord& m_bar;
    const ReleasePlan& m_plan;
    const ReleaseFacts& m_facts;
};

Result<DepthSpread> depthOf(const ReleaseMeasures& measures)
{
    if (measures.box)
        return depthOnBox({measures.box->quantity(), uBarMark});
    if (measures.lowest.empty())
        return wanting("depth");
    const std::vector<Height> lowest(measures.lowest.begin(), measures.lowest.end());
    return depthSpread(lowest, uBarMark);
}

std::optional<TiltedRelease> tiltedOf(const HookHeights& at, const ReleaseMeasures& measures, std::optional<Error>& error)
{
    return measures.spacing ? valueIn(tiltedRelease(at, *measures.spacing, tiltToAllow), error) : std::nullopt;
}

Result<ReleaseHeights> heightsOf(const ReleasePlan& plan)
{
    const ReleaseMeasures& measures = plan.measures;
    const auto depth = depthOf(measures);
    if (!depth)
        return depth.error();
    if (!measures.sleeveRadius)
        return wanting("sleeve radius");
    if (!measures.lipDrop)
        return wanting("lip drop");
    // a box leaves no spread to work a margin out of
    if (measures.box && !measures.margin)
        return wanting("margin");
    ReleaseHeights heights;
    heights.depth = *depth;
    heights.marginIsOwn = measures.margin.has_value();
    heights.margin = measures.margin ? measures.margin->quantity() : depthMargin(*depth);
    const HookFit fit{{measures.sleeveRadius->quantity(), uHookLength}, {measures.lipDrop->quantity(), uHookLength}};
    const auto length = hookLength({depth->lowest, depth->uReading}, {heights.margin, {}}, fit);
    if (!length)
        return length.error();
    heights.length = *length;
    Length set = length->value;
    if (!plan.hook.settings.empty()) {
        const std::vector<Length> settings(plan.hook.settings.begin(), plan.hook.settings.end());
        const auto setting = hookSetting(length->value, settings);
        if (!setting)
            return setting.error();
        heights.setting = *setting;
        set = *setting;
    }
    const auto at = hookHeights({set, uHookLength}, fit);
    if (!at)
        return at.error();
    heights.at = *at;
    heights.releasedRatio = fractionBelow(at->free, *depth);
    std::optional<Error> noTilt;
    heights.tilted = tiltedOf(*at, measures, noTilt);
    if (noTilt)
        return *noTilt;
    if (heights.tilted)
        heights.tiltedRatio = fractionBelow(heights.tilted->lastFree, *depth);
    return heights;
}

bool isSquat(const LiftId& lift)
{
    const auto groups = groupsOf(lift);
    return std::find(groups.begin(), groups.end(), LiftGroup::Squat) != groups.end();
}

Result<ReleaseSafeties> safetiesOf(const ReleaseMeasures& measures, bool squat)
{
    if (squat) {
        const auto depth = depthOf(measures);
        if (!depth)
            return depth.error();
        const auto at = squatSafeties({depth->lowest, depth->uReading});
        return at ? Result<ReleaseSafeties>(ReleaseSafeties{*at, fractionBelow(at->highest, *depth)}) : at.error();
    }
    if (!measures.chest)
        return wanting("chest");
    if (!measures.throat)
        return wanting("throat");
    const auto at = benchSafeties({measures.chest->quantity(), uBarMark}, {measures.throat->quantity(), uBarMark}, shaftRadius);
    return at ? Result<ReleaseSafeties>(ReleaseSafeties{*at, std::nullopt}) : at.error();
}

bool isLetGo(const HungItem& item)
{
    const auto* band = std::get_if<HungBand>(&item);
    return band && !band->hang().above;
}

/// The way down and the way up with all that hangs, and the pulls of both.
Result<DownAndUp> pullsOf(const SetupRecord& setup, const ReleaseFacts& facts, const ReleaseLoad& load, const std::optional<ReleaseHeights>& heights)
{
    SetupRecord lifted = setup;
    lifted.bar.wanted = load.bar.total;
    const WeighedUp weighed = weighUp(lifted, facts.kit, facts.marks, {}, 0, facts.heldTo, &load.bar);
    if (!weighed.setup)
        return weighed.error.value_or(wanting("marks"));
    Setup up = *weighed.setup;
    up.uIron = load.up.u;
    switch (setup.release->way) {
    case ReleaseWay::Hooks:
        if (!heights)
            return wanting("touch");
        return downAndUp(up, HooksReleased{*load.each, heights->at.touch});
    case ReleaseWay::PartnerLiftsOff:
        return downAndUp(up, PartnerLiftsOff{{2 * load.each->value, 2 * load.each->u}});
    case ReleaseWay::PartnerAdds: {
        const auto& push = setup.release->push;
        return downAndUp(up, PartnerAdds{push ? std::optional(Uncertain<Force>{weight(push->quantity())}) : std::nullopt});
    }
    case ReleaseWay::BandsLetGo: {
        BandsLetGo bands;
        const auto move = [](std::vector<HungItem>& from, std::vector<HungItem>& to) {
            std::copy_if(from.begin(), from.end(), std::back_inserter(to), isLetGo);
            std::erase_if(from, isLetGo);
        };
        move(up.left, bands.left);
        move(up.right, bands.right);
        return downAndUp(up, bands);
    }
    case ReleaseWay::DumbbellsDropped: break;
    }
    return downAndUp(up, DumbbellsDropped{*load.each});
}

/// The greatest of the pulls of both ways, at its unfavourable end.
std::optional<LoadAtWorst> worstOf(const DownAndUp& pulls)
{
    std::optional<Reading> worst;
    const auto take = [&worst](const std::optional<Reading>& reading) {
        if (reading && (!worst || reading->unfavourable() > worst->unfavourable()))
            worst = reading;
        return reading.has_value();
    };
    const bool known = take(pulls.downTop) && take(pulls.downEnds) && take(pulls.up.top) && take(pulls.up.bottom);
    return known ? std::optional(LoadAtWorst{asMass(worst->value), asMass(worst->giveOrTake)}) : std::nullopt;
}

bool isHeldApart(ReleaseWay way) { return way == ReleaseWay::Hooks || way == ReleaseWay::PartnerLiftsOff; }

}

bool isLyingPress(const LiftId& alike) { return alike == LiftId{6} || alike == LiftId{7}; }

ReleaseAnswer releaseAnswer(const SetupRecord& setup, const ReleaseFacts& facts)
{
    ReleaseAnswer out;
    if (!setup.release) {
        out.noLoad = wanting("release");
        return out;
    }
    const ReleasePlan& plan = *setup.release;
    out.load = valueIn(Loading(setup, facts).run(), out.noLoad);
    if (plan.way == ReleaseWay::Hooks)
        out.heights = valueIn(heightsOf(plan), out.noHeights);
    if (isSquat(facts.alike) || isLyingPress(facts.alike))
        out.safeties = valueIn(safetiesOf(plan.measures, isSquat(facts.alike)), out.noSafeties);
    if (const auto reps = valueIn(overloadedReps(plan.set), out.setFault))
        out.overloadedReps = *reps;
    if (!out.load)
        return out;
    if (isHeldApart(plan.way)) {
        if (!plan.measures.spacing)
            out.noOneSide = wanting("hook spacing");
        else
            out.oneSide = valueIn(oneSideStaysOn(out.load->up, *out.load->each, *plan.measures.spacing, plan.measures.grip), out.noOneSide);
    }
    out.pulls = valueIn(pullsOf(setup, facts, *out.load, out.heights), out.noPulls);
    if (out.pulls)
        out.worst = worstOf(*out.pulls);
    else if (out.load->down && setup.hung.empty())
        out.worst = LoadAtWorst{out.load->down->value, out.load->down->giveOrTake()};
    return out;
}

ReleaseWants wantedBy(const ReleaseAnswer& answer, const std::optional<PlateLoad>& hung, bool forSomebody)
{
    if (!forSomebody)
        return ReleaseWants::Somebody;
    if (!answer.isComplete() || !answer.worst)
        return ReleaseWants::Measuring;
    return hung && isSameTotal(*hung, answer.load->bar) ? ReleaseWants::Nothing : ReleaseWants::ItsBar;
}

}
