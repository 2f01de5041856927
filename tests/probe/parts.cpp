// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/probe/parts.h"

#include <map>

namespace steelyard::probe {

namespace {

const char* sentence(Refusal code)
{
    switch (code) {
    case Refusal::NotFinite: return "out of range: not finite";
    case Refusal::OutOfRange: return "out of range";
    case Refusal::TooFewPoints: return "too few points";
    case Refusal::PointsNotApart: return "out of range: points too close together";
    case Refusal::BelowRest: return "out of range: not longer than at rest";
    case Refusal::NoRisingFit: return "no model rises over these points";
    case Refusal::HeightsOutOfOrder: return "out of range: heights out of order";
    case Refusal::AnchorOnWrongSide: return "out of range: the anchor stands on the other side";
    case Refusal::NotThere: return "not there";
    case Refusal::TooMany: return "out of range: too many";
    case Refusal::NotFalling: return "does not fall where it has to";
    case Refusal::NotStill: return "not still while weighed";
    case Refusal::NoFlight: return "no flight";
    case Refusal::NoPull: return "no pull";
    case Refusal::DipBeforePull: return "a dip before the pull";
    case Refusal::RearFootSupported: return "the rear foot is supported";
    case Refusal::NotComparable: return "cannot be compared";
    case Refusal::UnknownUnit: return "unit unknown";
    }
    return "refused";
}

std::string keyOf(const std::string& what)
{
    static const std::map<std::string, std::string> keys{
        {"wire", "wire_m"}, {"pitch", "pitch_m"}, {"inner width", "inner_width_m"}, {"density", "density_kg_m3"},
        {"length", "length_m"}, {"bunch", "bunch_m"}, {"rest length", "rest_m"}, {"bottom", "bottom_m"}, {"top", "top_m"},
        {"sticking zone", "sticking_from_m, sticking_to_m"}, {"plates", "stock"}, {"heights", "strength"}, {"eccentric load", "eccentric_percent"},
        {"depth", "depth_m"}, {"specific gravity", "specific_gravity"}, {"moisture", "moisture_percent"}, {"pull", "pull_n"}, {"angle", "angle_deg"},
        {"rate", "rate_hz"}, {"force", "force_n"}, {"weighing", "force_n"}, {"subjects", "scores"}, {"repeated days", "scores"},
    };
    const auto at = keys.find(what);
    return at == keys.end() ? what : at->second;
}

}

Refused refusal(const Error& error, const std::string& points)
{
    return {(error.what == "points" ? points : keyOf(error.what)) + ": " + sentence(error.code)};
}

Out orNull(const std::optional<double>& value)
{
    return value ? Out(*value) : Out(nullptr);
}

HungChain chainFrom(Fields& in, Mass uPerMetre, SourceId measurement)
{
    Chain chain;
    chain.perLength = {kilogramsPerMetre(in.number("kg_per_m", aboveZero)), uPerMetre / metres(1)};
    chain.measurement = measurement;
    chain.length = metres(in.number("length_m", aboveZero));
    ChainHang hang;
    hang.how = in.oneOf<ChainHanging>("hang", {{"straight", ChainHanging::Straight}, {"doubled", ChainHanging::Doubled}, {"bunched", ChainHanging::Bunched}});
    hang.lead = metres(in.number("lead_m", notBelowZero));
    hang.leadMass = kilograms(in.number("lead_kg", notBelowZero, 0));
    hang.bunch = metres(hang.how == ChainHanging::Bunched ? in.number("bunch_m", aboveZero) : in.number("bunch_m", notBelowZero, 0));
    return accepted(HungChain::of(chain, hang));
}

BandFit fitFrom(Fields& in)
{
    const Length rest = metres(in.number("rest_m", aboveZero));
    std::vector<BandPoint> points;
    for (const auto& [length, pull] : in.pairs("points", aboveZero, notBelowZero))
        points.push_back({metres(length), newtons(pull)});
    const auto model = in.oneOf<std::optional<BandModel>>(
        "model", {{"line", BandModel::Line}, {"quadratic", BandModel::Quadratic}, {"rubber", BandModel::Rubber}, {"best", std::nullopt}});
    return accepted(model ? BandFit::with(*model, rest, points) : BandFit::best(rest, points));
}

BandHang bandHangFrom(Fields& in, Height lowest, Height highest)
{
    BandHang hang;
    hang.doubled = in.oneOf<bool>("hang", {{"single", false}, {"doubled", true}});
    hang.above = in.oneOf<bool>("anchor", {{"below", false}, {"above", true}});
    hang.anchorHeight = metres(in.number("anchor_height_m", notBelowZero));
    hang.offset = metres(in.number("offset_m", anySize));
    hang.wrap = metres(in.number("wrap_m", notBelowZero, 0));
    if (hang.above ? hang.anchorHeight < highest : hang.anchorHeight > lowest)
        Fields::refuse(in.name("anchor_height_m"), hang.above ? "is out of range: below the bar, yet anchor is above" : "is out of range: above the bar, yet anchor is below");
    return hang;
}

}
