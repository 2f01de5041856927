// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/implements/implementmass.h"

#include "core/implements/solids.h"
#include "core/implements/tyre.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

/// Half-width of a rectangle as a standard uncertainty (JCGM 100:2008, 4.3.7).
const double ofHalfWidth = 1 / std::sqrt(3.0);

ImplementMass unknown(MassGap gap, std::string what = {})
{
    ImplementMass none;
    none.gap = gap;
    none.what = std::move(what);
    return none;
}

ImplementMass unlessRefused(const Result<Estimate<Mass>>& result)
{
    if (!result)
        return unknown(MassGap::DoesNotFit, result.error().what);
    ImplementMass found;
    found.mass = *result;
    return found;
}

/// The same value with its u under a source of its own.
template <typename Quantity>
Estimate<Quantity> told(const Estimate<Quantity>& estimate, SourceId source)
{
    return within(estimate.value, estimate.u(), source);
}

/// Works out one thing, its inputs under sources that begin at one number.
class Weighed {
public:
    explicit Weighed(SourceId first) : m_first(first) {}

    [[nodiscard]] ImplementMass of(const TyreMeasurement& tyre) const
    {
        if (tyre.by == TyreMeasuring::Unknown)
            return unknown(MassGap::SaidUnknown);
        if (!tyre.drained)
            return unknown(MassGap::NotDrained);
        return tyre.by == TyreMeasuring::Whole ? whole(tyre.whole) : byEdges(tyre);
    }

    [[nodiscard]] ImplementMass of(const LogMeasurement& log) const
    {
        switch (log.by) {
        case LogMeasuring::Unknown: return unknown(MassGap::SaidUnknown);
        case LogMeasuring::Ends: return byEnds(log.ends, log.whole);
        case LogMeasuring::Whole: return whole(log.whole);
        case LogMeasuring::Size: break;
        }
        if (!log.length || !log.firstAcross || !log.secondAcross)
            return unknown(MassGap::SizeMissing, !log.length ? "length" : "diameter");
        if (!log.gravityRatio || !log.moisturePercent)
            return unknown(MassGap::WoodMissing, !log.gravityRatio ? "specific gravity" : "moisture");
        const TaperedRound round{taped(*log.length, MassInput::SizeLength), across(*log.firstAcross, log.girths), across(*log.secondAcross, log.girths, MassInput::SecondAcross)};
        const Wood wood{told(gravityOfSpecies(*log.gravityRatio), source(MassInput::Gravity)),
                        within(*log.moisturePercent, uMoisturePercent, source(MassInput::Moisture))};
        return unlessRefused(logMass(round, wood));
    }

    [[nodiscard]] ImplementMass of(const StoneMeasurement& stone) const
    {
        if (stone.by == StoneMeasuring::Unknown)
            return unknown(MassGap::SaidUnknown);
        if (stone.by == StoneMeasuring::Whole)
            return whole(stone.whole);
        if (!stone.across)
            return unknown(MassGap::SizeMissing, "diameter");
        const auto density = between(stone.density);
        if (!density)
            return unknown(stone.density ? MassGap::DoesNotFit : MassGap::DensityMissing, "density");
        return unlessRefused(stoneMass(across(*stone.across, stone.girth), *density));
    }

    [[nodiscard]] ImplementMass of(const KegMeasurement& keg) const
    {
        if (keg.by == KegMeasuring::Unknown)
            return unknown(MassGap::SaidUnknown);
        if (keg.by == KegMeasuring::Whole)
            return whole(keg.whole);
        if (!keg.empty)
            return unknown(MassGap::EmptyMissing, "empty");
        const auto scale = scaleOf(keg.whole, source(MassInput::ScaleError));
        if (!scale)
            return unknown(MassGap::StepMissing, "scale step");
        const auto tare = readingOf(*scale, *keg.empty);
        if (!tare)
            return unknown(MassGap::DoesNotFit, "empty");
        const auto density = keg.filling ? std::optional(told(densityOf(*keg.filling), source(MassInput::StuffDensity))) : between(keg.density);
        if (!density)
            return unknown(keg.density ? MassGap::DoesNotFit : MassGap::FillingMissing, "density");
        const auto content = contentOf(keg);
        if (!content)
            return unknown(content.error().code == Refusal::NotThere ? MassGap::ContentMissing : MassGap::DoesNotFit, content.error().what);
        return unlessRefused(filledMass(*tare, *content, *density));
    }

    [[nodiscard]] ImplementMass of(const SledMeasurement& sled) const { return wholeOrMarked(sled.whole); }
    [[nodiscard]] ImplementMass of(const CarryMeasurement& carry) const { return wholeOrMarked(carry.whole); }
    [[nodiscard]] ImplementMass of(const BellMeasurement& bell) const
    {
        if (bell.settings.empty())
            return wholeOrMarked(bell.whole);
        const auto settings = bellSettings(bell, m_first);
        if (settings.empty())
            return unknown(MassGap::DoesNotFit, "setting");
        ImplementMass lightest = unlessRefused(settings.front());
        lightest.byMark = true;
        return lightest;
    }
    template <typename Other>
    [[nodiscard]] ImplementMass of(const Other&) const
    {
        return unknown(MassGap::NotMeasured);
    }

private:
    [[nodiscard]] SourceId source(MassInput input) const { return sourceOf(input, m_first); }
    [[nodiscard]] Estimate<Length> taped(Length length, MassInput input) const { return within(length, uTape, source(input)); }
    /// A diameter as it was read, or from what a tape read round it.
    [[nodiscard]] Estimate<Length> across(Length read, bool isGirth, MassInput input = MassInput::Across) const
    {
        const Estimate<Length> own = taped(read, input);
        return isGirth ? diameterFromGirth(own) : own;
    }
    [[nodiscard]] std::optional<Estimate<Density>> between(const std::optional<DensityRange>& range) const
    {
        if (!range || range->leastCount <= 0 || range->mostCount < range->leastCount)
            return std::nullopt;
        return told(densityBetween(Density::fromSi(range->leastCount), Density::fromSi(range->mostCount)), source(MassInput::StuffDensity));
    }

    [[nodiscard]] ImplementMass whole(const WholeMass& on) const
    {
        if (!on.read)
            return unknown(MassGap::ReadingMissing, "reading");
        const auto scale = scaleOf(on, source(MassInput::ScaleError));
        if (!scale)
            return unknown(MassGap::StepMissing, "scale step");
        if (on.read->si() <= 0)
            return unknown(MassGap::DoesNotFit, "reading");
        return unlessRefused(readingOf(*scale, *on.read));
    }

    [[nodiscard]] ImplementMass wholeOrMarked(const WholeMass& on) const
    {
        if (on.read || !on.marked)
            return whole(on);
        ImplementMass found = unlessRefused(markedMass(*on.marked, markToleranceShare, source(MassInput::Mark)));
        found.byMark = true;
        return found;
    }

    [[nodiscard]] ImplementMass byEdges(const TyreMeasurement& tyre) const
    {
        // the mean of two that lie opposite is right wherever its mass lies; more say nothing new
        if (tyre.edges.empty() || tyre.edges.size() > 2)
            return unknown(tyre.edges.empty() ? MassGap::ReadingMissing : MassGap::DoesNotFit, "edges");
        const auto scale = scaleOf(tyre.whole, source(MassInput::ScaleError));
        Estimate<Mass> mean{};
        for (const TyreEdgeReading& edge : tyre.edges) {
            if (!edge.shown)
                return unknown(MassGap::ReadingMissing, "reading");
            if (!scale)
                return unknown(MassGap::StepMissing, "scale step");
            if (!edge.liftPoint || !edge.farContact)
                return unknown(MassGap::LeverMissing, !edge.liftPoint ? "lift point" : "far contact");
            const auto shown = readingOf(*scale, *edge.shown);
            if (!shown)
                return unknown(MassGap::DoesNotFit, shown.error().what);
            // levers of both edges are taken from one middle, so what that is off by they share
            const auto one = tyreMassFromEdge({*shown, taped(*edge.liftPoint, MassInput::LiftPoint), taped(*edge.farContact, MassInput::FarContact)});
            if (!one)
                return unknown(MassGap::DoesNotFit, one.error().what);
            addTo(mean, *one, 1.0 / static_cast<double>(tyre.edges.size()));
        }
        return unlessRefused(mean);
    }

    [[nodiscard]] ImplementMass byEnds(const BothEnds& ends, const WholeMass& on) const
    {
        if (!ends.first || !ends.second)
            return unknown(MassGap::ReadingMissing, !ends.first ? "first end" : "second end");
        const auto scale = scaleOf(on, source(MassInput::ScaleError));
        if (!scale)
            return unknown(MassGap::StepMissing, "scale step");
        const auto first = readingOf(*scale, *ends.first), second = readingOf(*scale, *ends.second);
        if (!first || !second)
            return unknown(MassGap::DoesNotFit, !first ? "first end" : "second end");
        if (!ends.firstInset && !ends.secondInset)
            return unlessRefused(massByEnds(*first, *second));
        if (!ends.span)
            return unknown(MassGap::SizeMissing, "length");
        const auto inset = [this](const std::optional<Entered<Length>>& read, MassInput input) { return read ? taped(*read, input) : Estimate<Length>{}; };
        return unlessRefused(massByEnds({*first, inset(ends.firstInset, MassInput::FirstInset)}, {*second, inset(ends.secondInset, MassInput::SecondInset)},
                                        taped(*ends.span, MassInput::EndSpan)));
    }

    [[nodiscard]] Estimate<Volume> litres(Volume volume) const { return within(volume, ofHalfWidth * litreToleranceShare * volume, source(MassInput::Filled)); }

    [[nodiscard]] Result<Estimate<Volume>> contentOf(const KegMeasurement& keg) const
    {
        const auto missing = [](const char* what) { return Error{Refusal::NotThere, what}; };
        if (keg.by == KegMeasuring::Litres)
            return keg.content ? Result<Estimate<Volume>>(litres(*keg.content)) : missing("litres");
        if (!keg.across || !keg.depth)
            return missing(!keg.across ? "diameter" : "depth");
        const Estimate<Length> radius = times(taped(*keg.across, MassInput::Across), 0.5), depth = taped(*keg.depth, MassInput::Depth);
        if (keg.by == KegMeasuring::Standing)
            return contentStanding(radius, depth);
        if (keg.capacity) {
            const auto share = fillShareLying(radius, depth);
            return share ? contentByFill(litres(*keg.capacity), *share) : Result<Estimate<Volume>>(share.error());
        }
        return keg.length ? contentLying({radius, taped(*keg.length, MassInput::SizeLength), depth}) : missing("length");
    }

    SourceId m_first;
};

}

MassRemedy remedyFor(MassGap gap)
{
    switch (gap) {
    case MassGap::NotMeasured: return MassRemedy::Measure;
    case MassGap::SaidUnknown: return MassRemedy::WeighIt;
    case MassGap::NotDrained: return MassRemedy::DrainAndWeigh;
    case MassGap::ReadingMissing: return MassRemedy::ReadScale;
    case MassGap::StepMissing: return MassRemedy::SayStep;
    case MassGap::LeverMissing: return MassRemedy::TapeLevers;
    case MassGap::SizeMissing: return MassRemedy::TapeSize;
    case MassGap::WoodMissing: return MassRemedy::SayWood;
    case MassGap::DensityMissing: return MassRemedy::SayDensity;
    case MassGap::FillingMissing: return MassRemedy::SayFilling;
    case MassGap::EmptyMissing: return MassRemedy::WeighEmpty;
    case MassGap::ContentMissing: return MassRemedy::SayContent;
    case MassGap::DoesNotFit: break;
    }
    return MassRemedy::LookAtNumbers;
}

std::optional<Scale> scaleOf(const WholeMass& whole, SourceId own)
{
    if (!whole.step)
        return std::nullopt;
    return Scale{*whole.step, 0, whole.accuracy ? whole.accuracy->quantity() : Mass{}, own};
}

ImplementMass implementMass(const Measured& measured, SourceId first)
{
    const ItemKind kind = kindOf(measured);
    if (!isImplement(kind) || measured == notYetMeasured(kind))
        return unknown(MassGap::NotMeasured);
    return std::visit([first](const auto& one) { return Weighed(first).of(one); }, measured);
}

std::vector<Estimate<Mass>> bellSettings(const BellMeasurement& bell, SourceId first)
{
    std::vector<Estimate<Mass>> settings;
    settings.reserve(bell.settings.size());
    for (const Entered<Mass>& setting : bell.settings)
        if (const auto marked = markedMass(setting, markToleranceShare, sourceOf(MassInput::Mark, first)))
            settings.push_back(*marked);
    std::sort(settings.begin(), settings.end(), [](const auto& a, const auto& b) { return a.value < b.value; });
    return settings;
}

Estimate<Mass> heldAtOnce(const Measured& measured, const Estimate<Mass>& one)
{
    const auto* carry = std::get_if<CarryMeasurement>(&measured);
    return carry && carry->sort == CarrySort::Handles ? times(one, 2) : one;
}

}
