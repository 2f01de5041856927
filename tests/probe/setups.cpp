// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/setup.h"
#include "tests/probe/parts.h"

#include <algorithm>
#include <map>

namespace steelyard::probe {

namespace {

const char* word(SetupWarningCode code)
{
    switch (code) {
    case SetupWarningCode::FirstLinkUp: return "first_link_up";
    case SetupWarningCode::LastLinkOff: return "last_link_off";
    case SetupWarningCode::BandSlack: return "band_slack";
    case SetupWarningCode::BeyondMeasured: return "beyond_measured";
    case SetupWarningCode::SidesUneven: return "sides_uneven";
    case SetupWarningCode::NotRising: return "not_rising";
    case SetupWarningCode::PulledForward: return "pulled_forward";
    case SetupWarningCode::PulledBack: return "pulled_back";
    case SetupWarningCode::OverCap: return "over_cap";
    case SetupWarningCode::OverRackRating: return "over_rack_rating";
    case SetupWarningCode::OverSafetyRating: return "over_safety_rating";
    case SetupWarningCode::SleeveFull: return "sleeve_full";
    }
    return "";
}

const char* word(Side side)
{
    return side == Side::Left ? "left" : side == Side::Right ? "right" : "both";
}

/// The measurements that items name: one number for each name, and no name for two different things.
class Measurements {
public:
    /// `what` is all that was measured under the name, as text.
    SourceId of(Fields& item, const std::string& what)
    {
        if (!item.has("measurement"))
            return ownSource;
        const Json& name = item.value("measurement");
        if (!name.is_string() && !name.is_number())
            Fields::refuse(item.name("measurement"), "must be a string or a number");
        const auto [at, isNew] = m_known.try_emplace(name.dump(), Entry{m_known.size() + 1, what});
        if (!isNew && at->second.what != what)
            Fields::refuse(item.name("measurement"), "names what was measured otherwise on another item");
        return {at->second.number};
    }

private:
    struct Entry {
        std::size_t number;
        std::string what;
    };
    std::map<std::string, Entry> m_known;
};

HungItem itemFrom(const Json& json, const std::string& place, const LiftPath& path, Measurements& measurements)
{
    Fields outer(json, place);
    if (json.size() != 1 || !(outer.has("chain") || outer.has("band")))
        Fields::refuse(place, "must hold one chain or one band");
    const auto taken = [](Fields& item, HungItem hung) {
        item.nothingElse();
        return hung;
    };
    if (outer.has("chain")) {
        Fields chain = outer.object("chain");
        const Mass u = kilograms(chain.number("u_kg_per_m", notBelowZero, 0));
        // chains of any length weighed together share the scale's error, so they need not be alike
        const SourceId measurement = measurements.of(chain, "chain");
        return taken(chain, chainFrom(chain, u, measurement));
    }
    Fields band = outer.object("band");
    const auto bar = std::minmax({path.bottom, path.top, path.rack.value_or(path.bottom)});
    Band kind{.fit = fitFrom(band)};
    kind.measurement = measurements.of(band, band.value("rest_m").dump() + band.value("points").dump() + band.value("model").dump());
    kind.twin = band.flag("twin", false);
    return taken(band, accepted(HungBand::of(kind, bandHangFrom(band, bar.first, bar.second))));
}

std::vector<HungItem> sideFrom(Fields& in, const char* key, const LiftPath& path, Measurements& measurements)
{
    constexpr std::size_t most = 100;
    std::vector<HungItem> items;
    const Json& list = in.list(key);
    if (list.size() > most)
        Fields::refuse(key, "has more than " + std::to_string(most) + " entries");
    for (const Json& item : list)
        items.push_back(itemFrom(item, std::string(key) + "[" + std::to_string(items.size()) + "]", path, measurements));
    return items;
}

Out kilogramsOrNull(const std::optional<Force>& pull) { return pull ? Out(asMass(*pull).si()) : Out(nullptr); }
Out valueOf(const std::optional<Reading>& r) { return r ? kilogramsOrNull(r->value) : Out(nullptr); }
Out uOf(const std::optional<Reading>& r) { return r ? kilogramsOrNull(r->u) : Out(nullptr); }

}

Out setUp(Fields& in)
{
    Setup setup;
    setup.bar = kilograms(in.number("bar_kg", notBelowZero));
    setup.collars = kilograms(in.number("collars_kg", notBelowZero));
    setup.plates = kilograms(in.number("plates_kg", notBelowZero));
    setup.uIron = kilograms(in.number("u_plates_kg", notBelowZero, 0));
    const auto mark = [&](const char* key) {
        const auto height = in.maybe(key, notBelowZero);
        return height ? std::optional(metres(*height)) : std::nullopt;
    };
    setup.path.bottom = metres(in.number("bottom_m", notBelowZero));
    setup.path.top = metres(in.number("top_m", notBelowZero));
    setup.path.rack = mark("rack_m");
    setup.path.zoneFrom = mark("sticking_from_m");
    setup.path.zoneTo = mark("sticking_to_m");
    setup.path.uMark = metres(in.number("u_mark_m", notBelowZero, 0));
    Measurements measurements;
    setup.left = sideFrom(in, "left", setup.path, measurements);
    setup.right = sideFrom(in, "right", setup.path, measurements);

    const PullCurve curve = accepted(pullCurve(setup, 0));
    Out warnings = Out::array();
    for (const SetupWarning& w : curve.warnings)
        warnings.push_back({{"code", word(w.code)}, {"side", word(w.side)}, {"height_m", w.height ? Out(w.height->si()) : Out(nullptr)}});
    return {{"rack_kg", valueOf(curve.rack)},
            {"bottom_kg", valueOf(curve.bottom)},
            {"sticking_kg", valueOf(curve.zone)},
            {"sticking_min_kg", valueOf(curve.zoneLeast)},
            {"sticking_max_kg", valueOf(curve.zoneGreatest)},
            {"top_kg", valueOf(curve.top)},
            {"mean_kg", valueOf(curve.mean)},
            {"two_point_mean_kg", kilogramsOrNull(curve.twoPointMean)},
            {"work_j", curve.work ? Out(curve.work->si()) : Out(nullptr)},
            {"moving_mass_bottom_kg", curve.movingBottom.si()},
            {"moving_mass_top_kg", curve.movingTop.si()},
            {"u_rack_kg", uOf(curve.rack)},
            {"u_bottom_kg", uOf(curve.bottom)},
            {"u_sticking_kg", uOf(curve.zone)},
            {"u_top_kg", uOf(curve.top)},
            {"u_mean_kg", uOf(curve.mean)},
            {"ready", curve.ready},
            {"warnings", warnings}};
}

}
