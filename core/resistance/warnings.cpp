// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/crossings.h"
#include "core/resistance/pullsum.h"

#include <algorithm>
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

/// The corners of the part of the path over which all is known, its ends among them; empty when nothing is.
std::vector<Height> knownCorners(const PullSum& sum, const LiftPath& path)
{
    std::vector<Height> corners = sum.kinksBetween(path.bottom, path.top);
    corners.insert(corners.begin(), path.bottom);
    corners.push_back(path.top);
    const auto known = [&](std::size_t piece) { return sum.knows(corners[piece] + (corners[piece + 1] - corners[piece]) / 2); };
    while (corners.size() > 1 && !known(corners.size() - 2))
        corners.pop_back();
    while (corners.size() > 1 && !known(0))
        corners.erase(corners.begin());
    return corners;
}

void shapeWarnings(Warnings& out, const PullSum& sum, const std::vector<Height>& corners)
{
    const Crossings path(corners, [&](Height h) { return sum.sides(h); });
    if (const auto h = path.firstAbove([](const BothSides& s) { return (s.difference() - unevenShare * s.size()).si(); })) {
        const BothSides just = sum.sides(std::min(*h + metres(hair), corners.back()));
        out.add(Code::SidesUneven, just.left > just.right ? Side::Left : Side::Right, h);
    }
    const double steady = 1e-9 * std::abs(sum.total(corners.front()).si());
    if (const auto h = path.firstAbove([&](const BothSides& s) { return -s.slope.si() - steady; }))
        out.add(Code::NotRising, Side::Both, h);
    if (const auto h = path.firstAbove([](const BothSides& s) { return (s.alongFloor - alongShare * s.size()).si(); }))
        out.add(Code::PulledForward, Side::Both, h);
    if (const auto h = path.firstAbove([](const BothSides& s) { return (-s.alongFloor - alongShare * s.size()).si(); }))
        out.add(Code::PulledBack, Side::Both, h);
}

void limitWarnings(Warnings& out, const Limits& limits, const PullSum& sum, const std::vector<Height>& corners)
{
    if (!limits.cap && !limits.safetyRating)
        return;
    const Crossings path(corners, [&](Height h) { return sum.sample(h); });
    const auto over = [&](Code code, const std::optional<Mass>& limit) {
        if (!limit)
            return;
        const auto above = [&](const CurveSample& s) {
            // the factor for pictures tells which side of the limit it is, but for a sliver
            const Force quick = s.total + s.giveOrTake - weight(*limit);
            return std::abs(quick.si()) > 2e-5 * s.u.si() ? quick.si() : (sum.at(s.height).unfavourable() - weight(*limit)).si();
        };
        if (const auto h = path.firstAbove(above))
            out.add(code, Side::Both, h);
    };
    over(Code::OverCap, limits.cap);
    over(Code::OverSafetyRating, limits.safetyRating);
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
    // what lies past the ends of a measurement is not warned about as if it were known
    if (const auto corners = knownCorners(sum, setup.path); corners.size() > 1) {
        shapeWarnings(out, sum, corners);
        limitWarnings(out, setup.limits, sum, corners);
    }
    const auto& rack = setup.path.rack;
    if (setup.limits.rackRating && rack && sum.knows(*rack) && sum.at(*rack).unfavourable() > weight(*setup.limits.rackRating))
        out.add(Code::OverRackRating, Side::Both, rack);
    if (setup.limits.sleeve && setup.platesThickness > *setup.limits.sleeve)
        out.add(Code::SleeveFull, Side::Both, std::nullopt);
    return out.sorted();
}

}
