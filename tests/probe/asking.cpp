// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/whattohang.h"
#include "tests/probe/parts.h"

#include <algorithm>

namespace steelyard::probe {

namespace {

constexpr std::size_t mostEntries = 200;

const Json& shortList(Fields& in, const char* key)
{
    const Json& list = in.list(key);
    if (list.size() > mostEntries)
        Fields::refuse(key, "has more than " + std::to_string(mostEntries) + " entries");
    return list;
}

const char* word(TargetPlace place)
{
    switch (place) {
    case TargetPlace::Bottom: return "bottom";
    case TargetPlace::Zone: return "sticking";
    case TargetPlace::Top: return "top";
    case TargetPlace::Mean: break;
    }
    return "mean";
}

LiftPath pathFrom(Fields& in)
{
    LiftPath path;
    path.bottom = metres(in.number("bottom_m", notBelowZero));
    path.top = metres(in.number("top_m", notBelowZero));
    const auto from = in.maybe("sticking_from_m", notBelowZero), to = in.maybe("sticking_to_m", notBelowZero);
    if (from.has_value() != to.has_value())
        Fields::refuse("sticking_from_m, sticking_to_m", "must stand together");
    if (from) {
        path.zoneFrom = metres(*from);
        path.zoneTo = metres(*to);
    }
    path.uMark = metres(in.number("u_mark_m", notBelowZero, 0));
    Setup bare;
    bare.path = path;
    (void)accepted(pullCurve(bare, 0)); // marks that are out of order are refused as a set-up's are
    return path;
}

std::vector<HangTarget> targetsFrom(Fields& in, const LiftPath& path)
{
    std::vector<HangTarget> targets;
    for (const Json& one : shortList(in, "targets")) {
        Fields target(one, "targets[" + std::to_string(targets.size()) + "]");
        HangTarget made;
        made.place = target.oneOf<TargetPlace>("place", {{"bottom", TargetPlace::Bottom}, {"sticking", TargetPlace::Zone}, {"top", TargetPlace::Top}, {"mean", TargetPlace::Mean}});
        made.wanted = weight(kilograms(target.number("kg", aboveZero)));
        made.tolerance = weight(kilograms(target.number("tolerance_kg", notBelowZero, 0)));
        target.nothingElse();
        if (made.place == TargetPlace::Zone && !path.zoneFrom)
            Fields::refuse(target.name("place"), "needs sticking_from_m and sticking_to_m");
        for (const HangTarget& other : targets)
            if (other.place == made.place)
                Fields::refuse(target.name("place"), "stands twice");
        targets.push_back(made);
    }
    if (targets.empty())
        Fields::refuse("targets", "must hold one at least");
    return targets;
}

/// What one way is in the answer.
struct Named {
    const char* kind;
    std::size_t index;
    Out way;
};

/// Each chain as a pair: straight and doubled, on each lead.
void addChains(Fields& in, HangQuestion& question, std::vector<Named>& named)
{
    std::size_t index = 0;
    for (const Json& one : shortList(in, "chains")) {
        Fields given(one, "chains[" + std::to_string(index) + "]");
        const auto leads = given.has("leads_m") ? given.numbers("leads_m", notBelowZero) : std::vector<double>{0};
        const Mass u = kilograms(given.number("u_kg_per_m", notBelowZero, 0));
        const Mass perMetre = kilograms(given.number("kg_per_m", aboveZero));
        const Length length = metres(given.number("length_m", aboveZero));
        given.nothingElse();
        for (const ChainHanging how : {ChainHanging::Straight, ChainHanging::Doubled})
            for (const double lead : leads) {
                Chain chain;
                chain.perLength = {perMetre / metres(1), u / metres(1)};
                chain.measurement = SourceId{named.size() + 1};
                chain.length = length;
                const HungItem hung = accepted(HungChain::of(chain, {how, metres(lead), {}, {}}));
                question.ways.push_back({index, 0, {hung}, {hung}, 2, false});
                named.push_back({"chain", index, {{"hang", how == ChainHanging::Straight ? "straight" : "doubled"}, {"lead_m", lead}}});
            }
        ++index;
    }
}

/// Each band as a pair cut from one fit, single, at each anchor; one above the top helps.
void addBands(Fields& in, HangQuestion& question, std::vector<Named>& named, const LiftPath& path)
{
    const std::size_t before = question.ways.empty() ? 0 : question.ways.back().thingIndex + 1;
    std::size_t index = 0;
    for (const Json& one : shortList(in, "bands")) {
        Fields given(one, "bands[" + std::to_string(index) + "]");
        Band band{.fit = fitFrom(given)};
        const auto anchors = given.numbers("anchors_m", notBelowZero);
        given.nothingElse();
        for (const double anchor : anchors) {
            BandHang hang;
            hang.above = metres(anchor) > path.top;
            hang.anchorHeight = metres(anchor);
            band.measurement = SourceId{named.size() + 1};
            const HungItem hung = accepted(HungBand::of(band, hang));
            question.ways.push_back({before + index, 0, {hung}, {hung}, 2, false});
            named.push_back({"band", index, {{"anchor", hang.above ? "above" : "below"}, {"anchor_height_m", anchor}}});
        }
        ++index;
    }
}

std::optional<StrengthCurve> strengthFrom(Fields& in, const LiftPath& path)
{
    if (!in.has("strength"))
        return std::nullopt;
    std::vector<IsometricReading> readings;
    const Force u = newtons(in.number("u_strength_n", notBelowZero, 0));
    for (const auto& [height, pull] : in.pairs("strength", aboveZero, aboveZero))
        readings.push_back({metres(height), newtons(pull), u});
    auto curve = accepted(StrengthCurve::of(readings));
    if (!levelStretch(path, curve))
        Fields::refuse("strength", "covers too little of the path");
    return curve;
}

Out said(const HangQuestion& question, const HangAnswer& answer, const std::vector<Named>& named)
{
    Out side = Out::array(), hung = Out::array(), pulls = Out::array(), us = Out::array();
    for (const PlateType& plate : question.loads[answer.loadIndex].load.eachSide)
        side.push_back(plate.mass.si());
    for (const std::size_t way : answer.wayIndex) {
        Out one{{named[way].kind, named[way].index}};
        one.update(named[way].way);
        hung.push_back(one);
    }
    for (const Reading& reading : answer.readings) {
        pulls.push_back(asMass(reading.value).si());
        us.push_back(asMass(reading.u).si());
    }
    return {{"total_kg", question.loads[answer.loadIndex].load.total.si()},
            {"each_side", side},
            {"hung", hung},
            {"pull_kg", pulls},
            {"u_kg", us},
            {"miss_kg", asMass(answer.cost).si()},
            {"within", answer.isWithin},
            {"level_variation", answer.level ? Out(answer.level->variationRatio) : Out(nullptr)},
            {"u_level_variation", answer.level ? Out(answer.level->uRatio) : Out(nullptr)}};
}

}

Out whatToHangOf(Fields& in)
{
    const LiftPath path = pathFrom(in);
    HangQuestion question;
    question.targets = targetsFrom(in, path);
    question.collars = kilograms(in.number("collars_kg", notBelowZero));
    const auto loads = accepted(PlateLoads::of(stockFrom(in), kilograms(in.number("bar_kg", notBelowZero)) + question.collars));
    const double uShare = in.number("u_plates_share", notBelowZero, 0);
    for (const PlateLoad& load : loads.all())
        question.loads.push_back({load, uShare * load.plates(), path});
    if (const auto cap = in.maybe("cap_kg", notBelowZero))
        question.limits.cap = kilograms(*cap);
    question.mostThingsCount = static_cast<std::size_t>(in.has("most_things") ? in.whole("most_things", 0, 6) : 3);
    std::vector<Named> named;
    addChains(in, question, named);
    addBands(in, question, named, path);
    question.strength = strengthFrom(in, path);
    const HangAnswers answers = whatToHang(question);
    return {{"best", answers.best ? said(question, *answers.best, named) : Out(nullptr)},
            {"next", answers.next ? said(question, *answers.next, named) : Out(nullptr)},
            {"miss", answers.best ? Out(asMass(answers.best->cost).si()) : Out(nullptr)},
            {"bound", asMass(answers.bound).si()},
            {"proved", answers.isProved},
            {"failing", answers.failing ? Out(word(*answers.failing)) : Out(nullptr)}};
}

}
