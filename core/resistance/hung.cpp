// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/hung.h"

#include <algorithm>

namespace steelyard::hung {

namespace {

template <typename... Fs>
struct Cases : Fs... {
    using Fs::operator()...;
};
template <typename... Fs>
Cases(Fs...) -> Cases<Fs...>;

double factor(const HungHelp& h) { return h.helps ? -h.share : h.share; }

/// Past its ends a measured pull is unknown; its end value stands in so that sums stay finite.
Length within(const HungHelp& h, Height bar)
{
    return std::clamp(bar - h.origin, h.pull.first(), h.pull.last());
}

/// The scale's part, the masses' and the tape's, each by how the pull answers to it. None of them was estimated from readings that
/// could be too few.
Effect helpEffect(const HungHelp& h, Force pull, Stiffness slope)
{
    const PullDoubt& doubt = h.pull.doubt();
    Effect e;
    e.source = h.pull.measurement();
    e.amount = {(factor(h) * doubt.scale).si(), doubt.massShare * pull.si(), (slope * doubt.place).si()};
    return e;
}

Effect single(SourceId source, Force amount)
{
    Effect e;
    e.source = source;
    e.amount[0] = amount.si();
    return e;
}

}

PullKind kind(const HungItem& item)
{
    return std::visit(Cases{[](const HungChain&) { return PullKind::Chain; }, [](const HungBand&) { return PullKind::Band; },
                            [](const HungHelp&) { return PullKind::Help; }},
                      item);
}

HungState stateAt(const HungItem& item, Height bar)
{
    return std::visit(Cases{[&](const HungChain& c) { return c.stateAt(bar); }, [&](const HungBand& b) { return b.stateAt(bar); },
                            [&](const HungHelp& h) {
                                HungState state;
                                state.pull = pull(item, bar);
                                state.slope = slope(item, bar);
                                const Effect effect = helpEffect(h, state.pull, state.slope);
                                for (std::size_t c = 0; c < Effect::components; ++c)
                                    state.effect[c] = newtons(effect.amount[c]);
                                state.known = knows(item, bar);
                                return state;
                            }},
                      item);
}

bool knows(const HungItem& item, Height bar)
{
    return std::visit(Cases{[](const HungChain&) { return true; }, [&](const HungBand& b) { return b.knows(bar); },
                            [&](const HungHelp& h) {
                                constexpr double hair = 1e-9;
                                const double at = (bar - h.origin).si();
                                return at >= h.pull.first().si() - hair && at <= h.pull.last().si() + hair;
                            }},
                      item);
}

Force pull(const HungItem& item, Height bar)
{
    return std::visit(Cases{[&](const HungChain& c) { return weight(c.massAt(bar)); }, [&](const HungBand& b) { return b.verticalPull(bar); },
                            [&](const HungHelp& h) { return factor(h) * h.pull.at(within(h, bar)).value_or(Force{}); }},
                      item);
}

Stiffness slope(const HungItem& item, Height bar)
{
    return std::visit(Cases{[&](const HungChain& c) { return c.massSlopeAt(bar) * standardGravity; },
                            [&](const HungBand& b) { return b.verticalSlope(bar); },
                            [&](const HungHelp& h) {
                                return factor(h) * h.pull.slopeAt(bar - h.origin).value_or(Stiffness{});
                            }},
                      item);
}

Force meanPull(const HungItem& item, Height from, Height to)
{
    return std::visit(Cases{[&](const HungChain& c) { return weight(c.meanMass(from, to)); },
                            [&](const HungBand& b) { return b.meanPull(from, to); },
                            [&](const HungHelp& h) {
                                const auto mean = h.pull.mean(within(h, from), within(h, to));
                                return mean ? factor(h) * *mean : pull(item, from);
                            }},
                      item);
}

Mass movingMass(const HungItem& item, Height bar)
{
    const auto* chain = std::get_if<HungChain>(&item);
    return chain ? chain->massAt(bar) : Mass{};
}

Effect effect(const HungItem& item, Height bar)
{
    return std::visit(Cases{[&](const HungChain& c) { return single(c.chain().measurement, weight(c.uncertaintyAt(bar))); },
                            [&](const HungBand& b) { return b.effectAt(bar); },
                            [&](const HungHelp& h) { return helpEffect(h, pull(item, bar), slope(item, bar)); }},
                      item);
}

Effect meanEffect(const HungItem& item, Height from, Height to)
{
    return std::visit(Cases{[&](const HungChain& c) { return single(c.chain().measurement, weight(c.meanUncertainty(from, to))); },
                            [&](const HungBand& b) { return b.meanEffect(from, to); },
                            [&](const HungHelp& h) {
                                // a shift of the place moves the mean by what its ends differ
                                const Stiffness slope = to > from ? (pull(item, to) - pull(item, from)) / (to - from) : Stiffness{};
                                return helpEffect(h, meanPull(item, from, to), slope);
                            }},
                      item);
}

Force meanOwnUncertainty(const HungItem& item, Height from, Height to)
{
    const auto* band = std::get_if<HungBand>(&item);
    return band ? band->meanTwinUncertainty(from, to) : Force{};
}

void appendKinks(const HungItem& item, std::vector<Height>& out)
{
    std::visit(Cases{[&](const HungChain& c) {
                         out.push_back(c.firstLinkUp());
                         out.push_back(c.lastLinkOff());
                     },
                     [&](const HungBand& b) {
                         const Height anchor = b.hang().anchorHeight;
                         out.push_back(anchor);
                         for (const auto reach : {b.reachAtRest(), b.reachKnown()}) {
                             if (reach) {
                                 out.push_back(anchor - *reach);
                                 out.push_back(anchor + *reach);
                             }
                         }
                     },
                     [&](const HungHelp& h) {
                         for (const Length knot : h.pull.knots())
                             out.push_back(h.origin + knot);
                     }},
               item);
}

}
