// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/codec.h"

#include <cmath>
#include <limits>

namespace steelyard {

namespace {

constexpr Numbered<ReleaseWay, 5> ways{{{{ReleaseWay::Hooks, 1}, {ReleaseWay::PartnerLiftsOff, 2}, {ReleaseWay::PartnerAdds, 3},
                                         {ReleaseWay::BandsLetGo, 4}, {ReleaseWay::DumbbellsDropped, 5}}}};
constexpr Numbered<PutBack, 3> putBacks{{{{PutBack::Never, 1}, {PutBack::EachRep, 2}, {PutBack::EachCluster, 3}}}};
constexpr Numbered<PutBackBy, 3> putBackBys{{{{PutBackBy::Nobody, 1}, {PutBackBy::Spotters, 2}, {PutBackBy::Athlete, 3}}}};

/// More than anybody asks for, and nothing that a number cannot hold.
constexpr double mostPercent = 100'000;

/// In tenths; nothing for what is no percentage.
std::optional<std::int64_t> tenths(double percent)
{
    return std::abs(percent) <= mostPercent ? std::optional<std::int64_t>(std::llround(10 * percent)) : std::nullopt;
}

Content askedContent(const ReleaseAsked& asked, const WrittenIn& in)
{
    const auto up = tenths(asked.upPercent), down = tenths(asked.downPercent);
    if (!up || !down)
        return std::nullopt;
    return RecordWriter(in).flag(1, asked.inPercent).number(2, *up).number(3, *down).flag(4, asked.downOfWayUp).mass(5, asked.down).content();
}

std::optional<ReleaseAsked> askedIn(RecordReader reader)
{
    ReleaseAsked asked;
    asked.inPercent = reader.flag(1);
    asked.upPercent = static_cast<double>(reader.neededNumber(2)) / 10;
    asked.downPercent = static_cast<double>(reader.neededNumber(3)) / 10;
    asked.downOfWayUp = reader.flag(4);
    asked.down = reader.mass(5);
    return ifRead(reader, asked);
}

std::vector<Content> lengthContents(const std::vector<Entered<Length>>& lengths, const WrittenIn& in)
{
    std::vector<Content> contents;
    for (const Entered<Length>& length : lengths)
        contents.push_back(RecordWriter(in).length(1, length).content());
    return contents;
}

std::optional<Entered<Length>> lengthIn(RecordReader reader)
{
    const Entered<Length> length = reader.neededLength(1);
    return ifRead(reader, length);
}

Content hookContent(const HookRecord& hook, const WrittenIn& in)
{
    return RecordWriter(in).mass(1, hook.frame).mass(2, hook.scaleStep).length(3, hook.room).mass(4, hook.rating)
        .list(5, lengthContents(hook.settings, in)).content();
}

std::optional<HookRecord> hookIn(RecordReader reader)
{
    HookRecord hook;
    hook.frame = reader.mass(1);
    hook.scaleStep = reader.mass(2);
    hook.room = reader.length(3);
    hook.rating = reader.mass(4);
    hook.settings = reader.list<Entered<Length>>(5, lengthIn);
    return ifRead(reader, std::move(hook));
}

Content measuresContent(const ReleaseMeasures& measures, const WrittenIn& in)
{
    return RecordWriter(in).fine(1, measures.sleeveRadius).fine(2, measures.lipDrop).list(3, lengthContents(measures.lowest, in))
        .length(4, measures.box).length(5, measures.margin).length(6, measures.spacing).length(7, measures.grip)
        .length(8, measures.chest).length(9, measures.throat).content();
}

std::optional<ReleaseMeasures> measuresIn(RecordReader reader)
{
    ReleaseMeasures measures;
    measures.sleeveRadius = reader.length(1);
    measures.lipDrop = reader.length(2);
    measures.lowest = reader.list<Entered<Height>>(3, lengthIn);
    measures.box = reader.length(4);
    measures.margin = reader.length(5);
    measures.spacing = reader.length(6);
    measures.grip = reader.length(7);
    measures.chest = reader.length(8);
    measures.throat = reader.length(9);
    return ifRead(reader, std::move(measures));
}

Content setContent(const EccentricSet& set)
{
    RecordWriter writer({});
    writer.number(1, set.reps);
    if (set.clusterReps)
        writer.number(2, *set.clusterReps);
    if (set.clusterRest)
        writer.number(3, set.clusterRest->count());
    return writer.number(4, set.tempoDown.count()).number(5, putBacks.numberOf(set.putBack)).number(6, putBackBys.numberOf(set.putBackBy)).content();
}

std::optional<EccentricSet> setIn(RecordReader reader)
{
    // what eccentricSetFault refuses is kept as it was typed, but it has to be a number
    const auto count = [&reader](std::uint32_t keyNumber) {
        const std::int64_t number = reader.neededNumber(keyNumber);
        const bool fits = number >= 0 && number <= std::numeric_limits<int>::max();
        return reader.needed(fits ? std::optional(static_cast<int>(number)) : std::nullopt);
    };
    EccentricSet set;
    set.reps = count(1);
    if (reader.has(2))
        set.clusterReps = count(2);
    if (reader.has(3))
        set.clusterRest = std::chrono::seconds(count(3));
    set.tempoDown = std::chrono::milliseconds(count(4));
    set.putBack = reader.among(5, putBacks);
    set.putBackBy = reader.among(6, putBackBys);
    return ifRead(reader, set);
}

}

Content contentOf(const ReleasePlan& plan, const WrittenIn& in)
{
    return RecordWriter(in).number(1, ways.numberOf(plan.way)).part(2, askedContent(plan.asked, in)).part(3, hookContent(plan.hook, in))
        .part(4, measuresContent(plan.measures, in)).mass(5, plan.push).mass(6, plan.dumbbell).part(7, setContent(plan.set)).content();
}

std::optional<ReleasePlan> releasePlanIn(journal::ByteView content)
{
    RecordReader reader(content);
    ReleasePlan plan;
    plan.way = reader.among(1, ways);
    plan.asked = reader.needed(askedIn(reader.part(2)));
    plan.hook = reader.needed(hookIn(reader.part(3)));
    plan.measures = reader.needed(measuresIn(reader.part(4)));
    plan.push = reader.mass(5);
    plan.dumbbell = reader.mass(6);
    plan.set = reader.needed(setIn(reader.part(7)));
    // half of a plan would be another one
    reader.endsAt(7);
    return ifRead(reader, std::move(plan));
}

}
