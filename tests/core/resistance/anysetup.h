// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/resistance/kit.h"

#include <rapidcheck.h>

namespace steelyard::tests {

/// A whole number of thousandths.
inline double between(int from, int to) { return *rc::gen::inRange(from, to) * 1e-3; }

inline HungItem anyItem()
{
    const auto source = static_cast<std::uint64_t>(*rc::gen::inRange(0, 4));
    switch (*rc::gen::inRange(0, 4)) {
    case 0: {
        const auto how = *rc::gen::element(ChainHanging::Straight, ChainHanging::Doubled, ChainHanging::Bunched);
        return hungChain(how, between(100, 3000), between(0, 1300), between(500, 12000), between(0, 200), source, between(0, 900), between(50, 500));
    }
    case 1: return *HungBand::of(rubberBand(source + 10, *rc::gen::arbitrary<bool>(), *rc::gen::arbitrary<bool>()),
        {*rc::gen::arbitrary<bool>(), false, metres(between(0, 300)), metres(between(-300, 300)), metres(between(0, 90))});
    case 2: return *HungBand::of(rubberBand(source + 10), {false, true, metres(between(2000, 3000)), metres(between(-300, 300)), {}});
    default: {
        HungHelp aid = benchAid(between(600, 800), {newtons(between(0, 5000)), between(0, 30), metres(between(0, 20))}, source + 20);
        aid.share = *rc::gen::element(0.5, 1.0);
        return aid;
    }
    }
}

/// A set-up with up to three things a side, each number one that could be entered.
inline Setup anySetup()
{
    Setup setup;
    setup.bar = kilograms(*rc::gen::element(7.5, 15.0, 20.0, 25.0));
    setup.collars = kilograms(between(0, 5000));
    setup.plates = kilograms(between(0, 250'000));
    setup.uIron = kilograms(between(0, 2000));
    for (auto* side : {&setup.left, &setup.right})
        for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
            side->push_back(anyItem());
    auto& path = setup.path;
    path.bottom = metres(between(100, 1000));
    path.top = path.bottom + metres(between(50, 1000));
    const auto share = [&](int from, int to) { return path.bottom + *rc::gen::inRange(from, to) / 100.0 * (path.top - path.bottom); };
    if (*rc::gen::arbitrary<bool>()) {
        path.zoneFrom = share(0, 45);
        path.zoneTo = share(55, 100);
    }
    if (*rc::gen::arbitrary<bool>())
        path.rack = metres(between(100, 2000));
    path.uMark = metres(between(0, 20));
    return setup;
}

}
