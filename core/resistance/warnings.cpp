// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/roots.h"
#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>
#include <functional>

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
    else if (chain.lastLinkOff() <= path.bottom)
        out.add(Code::LastLinkOff, side, path.bottom);
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
    if (!band.knows(path.bottom))
        out.add(Code::BeyondMeasured, side, path.bottom);
    else if (!band.knows(path.top)) {
        const auto reach = band.reachKnown();
        out.add(Code::BeyondMeasured, side, reach ? std::max(anchor + *reach, path.bottom) : path.bottom);
    }
}

void helpWarnings(Warnings& out, const HungItem& item, const HungHelp& help, Side side, const LiftPath& path)
{
    if (!hung::knows(item, path.bottom))
        out.add(Code::BeyondMeasured, side, path.bottom);
    else if (!hung::knows(item, path.top))
        out.add(Code::BeyondMeasured, side, help.origin + help.pull.last());
}

/// The lowest height on a stretch from which f is above 0; pieces between corners are smooth.
std::optional<Height> firstAbove(const std::function<double(double)>& f, const std::vector<Height>& stops)
{
    for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
        const double a = stops[i].si(), b = stops[i + 1].si();
        const double inset = std::min(1e-9, (b - a) / 10);
        constexpr int parts = 8;
        double before = a + inset;
        if (f(before) > 0)
            return stops[i];
        for (int k = 1; k <= parts; ++k) {
            const double at = k == parts ? b - inset : a + (b - a) * k / parts;
            if (f(at) > 0)
                return metres(signChange(f, before, at));
            before = at;
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
    // what lies past the end of a measurement is not warned about as if it were known
    while (stops.size() > 1 && !sum.knowsAll(path.bottom, stops.back()))
        stops.pop_back();
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
                helpWarnings(out, item, *help, side, setup.path);
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
