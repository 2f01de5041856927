// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/eccentric/release.h"
#include "tests/core/work/samples.h"

/// Set-ups whose way down is heavier, for the tests of them.
namespace releases {

using namespace steelyard;

/// Hooks of 3.2 kg and a small stock; a bench press down to 72 cm, the same each time.
inline SetupRecord byHooks()
{
    SetupRecord setup;
    setup.bar.collars = kilograms(5);
    setup.bar.trust = PlateTrust::AsMarked;
    for (const auto& [kg, count] : {std::pair{20.0, 2}, {10.0, 4}, {5.0, 4}, {2.5, 4}, {1.25, 4}})
        setup.bar.stock.push_back({{kilograms(kg), metres(0.45), metres(0.03)}, count});
    ReleasePlan plan;
    plan.asked.downPercent = 110;
    plan.hook.frame = kilograms(3.2);
    plan.hook.scaleStep = kilograms(0.1);
    plan.measures.box = metres(0.72);
    plan.measures.margin = metres(0.03);
    plan.measures.sleeveRadius = metres(0.025);
    plan.measures.lipDrop = metres(0.012);
    plan.measures.spacing = metres(1.6);
    plan.measures.grip = metres(0.8);
    plan.measures.chest = metres(0.72);
    plan.measures.throat = metres(0.60);
    setup.release = plan;
    return setup;
}

/// A bench press of somebody with 105 kg as her maximum.
inline ReleaseFacts facts()
{
    ReleaseFacts facts;
    facts.marks = samples::marks(0.72, 1.1);
    facts.alike = LiftId{6};
    facts.maximum = Uncertain<Mass>{kilograms(105), kilograms(1.5)};
    return facts;
}

}
