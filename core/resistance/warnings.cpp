// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/roots.h"
#include "core/resistance/pullsum.h"

#include <algorithm>
#include <array>
#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <limits>

namespace steelyard {

namespace {

using Code = SetupWarningCode;

/// Left and right may differ by this share of the total pull (our choice).
constexpr double unevenShare = 0.02;
/// Bands may pull along the floor by this share of the total pull (our choice).
constexpr double alongShare = 0.03;
/// A band's length error of a nanometre must not count as a crossing.
constexpr double hair = 1e-9;

/// Collects warnings; what both sides say at the same height is said once.
class Warnings {
public:
    void add(Code code, Side side, std::optional<Height> height)
    {
        for (SetupWarning& w : m_list) {
            const bool sameHeight = w.height.has_value() == height.has_value() && (!height || std::abs((*w.height - *height).si()) < hair);
            if (w.code == code && sameHeight) {
                if (w.side != side)
                    w.side = Side::Both;
                return;
            }
        }
        m_list.push_back({code, side, height});
    }
    [[nodiscard]] std::vector<SetupWarning> sorted()
    {
        std::stable_sort(m_list.begin(), m_list.end(), [](const SetupWarning& a, const SetupWarning& b) {
            return a.code != b.code ? a.code < b.code : a.height && b.height && *a.height < *b.height;
        });
        return std::move(m_list);
    }

private:
    std::vector<SetupWarning> m_list;
};

bool inside(const LiftPath& path, Height h)
{
    return (h - path.bottom).si() > hair && (path.top - h).si() > hair;
}

void chainWarnings(Warnings& out, const HungChain& chain, Side side, const LiftPath& path)
{
    if (inside(path, chain.firstLinkUp()))
        out.add(Code::FirstLinkUp, side, chain.firstLinkUp());
    if (inside(path, chain.lastLinkOff()))
        out.add(Code::LastLinkOff, side, chain.lastLinkOff());
    else if ((chain.lastLinkOff() - path.bottom).si() <= hair)
        out.add(Code::LastLinkOff, side, path.bottom);
}

/// Says where knowledge ends that reaches from `first` to `last`, for all heights the bar comes to, the rack among them.
void knowledgeWarnings(Warnings& out, Height first, Height last, Side side, const LiftPath& path)
{
    const Height low = std::min(path.bottom, path.rack.value_or(path.bottom)), high = std::max(path.top, path.rack.value_or(path.top));
    if ((first - low).si() > hair)
        out.add(Code::BeyondMeasured, side, std::min(first, high));
    if ((high - last).si() > hair)
        out.add(Code::BeyondMeasured, side, std::max(last, low));
}

void bandWarnings(Warnings& out, const HungBand& band, Side side, const LiftPath& path)
{
    const Height anchor = band.hang().anchorHeight;
    const auto slack = [&](Height h) { return band.bandLength(h) < band.band().fit.rest(); };
    const bool slackLow = slack(path.bottom), slackHigh = slack(path.top);
    if (slackLow && slackHigh)
        out.add(Code::BandSlack, side, band.hang().above ? path.bottom : path.top);
    if (const auto reach = band.reachAtRest()) {
        if (slackLow && !slackHigh)
            out.add(Code::BandSlack, side, anchor + *reach);
        if (!slackLow && slackHigh)
            out.add(Code::BandSlack, side, anchor - *reach);
    }
    // a band that cannot even reach its anchor's offset is unknown everywhere, seen from its own side
    const auto reach = band.reachKnown();
    const Height none = band.hang().above ? Height::fromSi(std::numeric_limits<double>::infinity()) : Height{};
    knowledgeWarnings(out, reach ? anchor - *reach : none, reach ? anchor + *reach : none, side, path);
}

/// The lowest height on a stretch from which f is above 0; pieces between corners are smooth. A hump that stays below 0
/// at the heights looked at is climbed to its summit.
template <typename F>
std::optional<Height> firstAbove(const F& f, const std::vector<Height>& stops)
{
    constexpr int parts = 8;
    for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
        const double a = stops[i].si(), b = stops[i + 1].si();
        const double inset = std::min(hair, (b - a) / 10);
        std::array<double, parts + 1> at{}, value{};
        for (int k = 0; k <= parts; ++k) {
            at[k] = k == 0 ? a + inset : k == parts ? b - inset : a + (b - a) * k / parts;
            value[k] = f(at[k]);
            if (value[k] > 0)
                return k == 0 ? stops[i] : metres(signChange(f, at[k - 1], at[k]));
            if (k < 2 || value[k - 1] <= value[k] || value[k - 1] < value[k - 2])
                continue;
            // a smooth summit stands no higher over the middle of three heights than the middle over the lower of the others
            if (2 * value[k - 1] - std::min(value[k - 2], value[k]) <= 0)
                continue;
            constexpr int bits = 26;
            const auto [summit, depth] = boost::math::tools::brent_find_minima([&](double h) { return -f(h); }, at[k - 2], at[k], bits);
            if (depth < 0)
                return metres(signChange(f, at[k - 2], summit));
        }
    }
    return std::nullopt;
}

void wholeWarnings(Warnings& out, const Setup& setup, const PullSum& sum)
{
    const LiftPath& path = setup.path;
    std::vector<Height> stops = sum.kinksBetween(path.bottom, path.top);
    stops.insert(stops.begin(), path.bottom);
    stops.push_back(path.top);
    // what lies past the ends of a measurement is not warned about as if it were known
    const auto known = [&](std::size_t piece) { return sum.knows(stops[piece] + (stops[piece + 1] - stops[piece]) / 2); };
    while (stops.size() > 1 && !known(stops.size() - 2))
        stops.pop_back();
    while (stops.size() > 1 && !known(0))
        stops.erase(stops.begin());
    if (stops.size() < 2)
        return;

    const auto difference = [&](double h) { return (sum.ofSide(Side::Left, metres(h)) - sum.ofSide(Side::Right, metres(h))).si(); };
    const auto total = [&](double h) { return sum.total(metres(h)).si(); };
    if (const auto h = firstAbove([&](double at) { return std::abs(difference(at)) - unevenShare * std::abs(total(at)); }, stops)) {
        const double just = std::min(h->si() + hair, path.top.si());
        out.add(Code::SidesUneven, difference(just) > 0 ? Side::Left : Side::Right, h);
    }
    const double steady = 1e-9 * std::abs(total(path.bottom.si()));
    if (const auto h = firstAbove([&](double at) { return -sum.slope(metres(at)).si() - steady; }, stops))
        out.add(Code::NotRising, Side::Both, h);

    const auto along = [&](double sign) {
        return [&sum, &total, sign](double at) { return sign * sum.alongFloor(metres(at)).si() - alongShare * std::abs(total(at)); };
    };
    if (const auto h = firstAbove(along(1), stops))
        out.add(Code::PulledForward, Side::Both, h);
    if (const auto h = firstAbove(along(-1), stops))
        out.add(Code::PulledBack, Side::Both, h);

    const auto over = [&](Code code, const std::optional<Mass>& limit) {
        if (!limit)
            return;
        const double most = weight(*limit).si();
        if (const auto h = firstAbove([&](double at) { return sum.at(metres(at)).unfavourable().si() - most; }, stops))
            out.add(code, Side::Both, h);
    };
    over(Code::OverCap, setup.limits.cap);
    over(Code::OverSafetyRating, setup.limits.safetyRating);
    if (setup.limits.rackRating && path.rack && sum.knows(*path.rack) && sum.at(*path.rack).unfavourable() > weight(*setup.limits.rackRating))
        out.add(Code::OverRackRating, Side::Both, path.rack);
}

}

std::vector<SetupWarning> setupWarnings(const Setup& setup, const PullSum& sum)
{
    Warnings out;
    const auto items = [&](const std::vector<HungItem>& list, Side side) {
        for (const HungItem& item : list) {
            if (const auto* chain = std::get_if<HungChain>(&item))
                chainWarnings(out, *chain, side, setup.path);
            else if (const auto* band = std::get_if<HungBand>(&item))
                bandWarnings(out, *band, side, setup.path);
            else if (const auto* help = std::get_if<HungHelp>(&item))
                knowledgeWarnings(out, help->origin + help->pull.first(), help->origin + help->pull.last(), side, setup.path);
        }
    };
    items(setup.left, Side::Left);
    items(setup.right, Side::Right);
    wholeWarnings(out, setup, sum);
    if (setup.limits.sleeve && setup.platesThickness > *setup.limits.sleeve)
        out.add(Code::SleeveFull, Side::Both, std::nullopt);
    return out.sorted();
}

}
