// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/band.h"
#include "core/resistance/chain.h"
#include "tests/probe/parts.h"

#include <cmath>

namespace steelyard::probe {

namespace {

const char* word(BandModel model)
{
    switch (model) {
    case BandModel::Line: return "line";
    case BandModel::Quadratic: return "quadratic";
    case BandModel::Rubber: return "rubber";
    }
    return "";
}

}

Out chainMassPerMetre(Fields& in)
{
    const Length wire = metres(in.number("wire_m", aboveZero)), pitch = metres(in.number("pitch_m", aboveZero)),
                 inner = metres(in.number("inner_width_m", aboveZero));
    const auto gauged = accepted(gaugedChain(wire, pitch, inner, Density::fromSi(in.number("density_kg_m3", aboveZero))));
    return {{"kg_per_m", gauged.value.si()}, {"u", gauged.u.si()}};
}

Out chainLoad(Fields& in)
{
    const HungChain chain = chainFrom(in);
    return {{"kg", chain.massAt(metres(in.number("height_m", notBelowZero))).si()}};
}

Out chainMean(Fields& in)
{
    const HungChain chain = chainFrom(in);
    const Height bottom = metres(in.number("bottom_m", notBelowZero)), top = metres(in.number("top_m", notBelowZero));
    if (top <= bottom)
        Fields::refuse("top_m", "is out of range: not above bottom_m");
    return {{"mean_kg", chain.meanMass(bottom, top).si()},
            {"two_point_mean_kg", ((chain.massAt(bottom) + chain.massAt(top)) / 2).si()},
            {"first_link_up_m", chain.firstLinkUp().si()},
            {"last_link_off_m", chain.lastLinkOff().si()}};
}

Out bandFit(Fields& in)
{
    const BandFit fit = fitFrom(in);
    Out coefficients = Out::array();
    for (const Force c : fit.coefficients())
        coefficients.push_back(c.si());
    const auto sd = fit.residualSd();
    return {{"model", word(fit.model())},
            {"coefficients", coefficients},
            {"residual_sd", sd ? Out(sd->si()) : Out(nullptr)},
            {"aicc", orNull(fit.aiccScore())},
            {"monotone", fit.rises()}};
}

Out bandPull(Fields& in)
{
    const BandFit fit = fitFrom(in);
    const Length length = metres(in.number("length_m", notBelowZero));
    if (!fit.knows(length))
        return {{"pull_n", nullptr}, {"u", nullptr}};
    return {{"pull_n", fit.pull(length).si()}, {"u", fit.uncertainty(length).si()}};
}

Out bandHang(Fields& in)
{
    const BandFit fit = fitFrom(in);
    const Height bar = metres(in.number("bar_height_m", notBelowZero));
    const auto hung = accepted(HungBand::of({.fit = fit}, bandHangFrom(in, bar, bar)));
    if (!hung.knows(bar))
        return {{"vertical_n", nullptr}, {"along_floor_n", nullptr}, {"u", nullptr}};
    return {{"vertical_n", hung.verticalPull(bar).si()}, {"along_floor_n", hung.pullAlongFloor(bar).si()}, {"u", hung.effectAt(bar).standard()}};
}

}
