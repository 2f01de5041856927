// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/eccentricload.h"
#include "core/resistance/releasehook.h"
#include "core/strength/onerepmax.h"
#include "core/strength/scaled.h"
#include "tests/probe/parts.h"

namespace steelyard::probe {

Out oneRm(Fields& in)
{
    constexpr int manyReps = 1000;
    const Mass load = kilograms(in.number("load_kg", aboveZero));
    const int reps = in.whole("reps", 1, manyReps);
    const auto formula = in.oneOf<OneRmFormula>("formula", {{"epley", OneRmFormula::Epley}, {"brzycki", OneRmFormula::Brzycki}, {"lombardi", OneRmFormula::Lombardi}, {"mayhew", OneRmFormula::Mayhew},
                                                            {"oconner", OneRmFormula::OConner}, {"wathan", OneRmFormula::Wathan}, {"lander", OneRmFormula::Lander}});
    return {{"one_rm_kg", accepted(oneRepMaxBy(formula, load, reps)).si()}};
}

Out scaledStrengthOf(Fields& in)
{
    const Uncertain<Force> force{newtons(in.number("force_n", notBelowZero)), {}};
    const Uncertain<Mass> body{kilograms(in.number("body_kg", aboveZero)), {}};
    return {{"value", accepted(scaledStrength(force, body, in.number("exponent", anySize))).ratio}};
}

Out releaseHook(Fields& in)
{
    const Mass oneRm = kilograms(in.number("one_rm_kg", aboveZero));
    constexpr Range percent{0, 300, false};
    const double eccentric = in.number("eccentric_percent", percent), concentric = in.number("concentric_percent", percent);
    const auto exactly = [&](const char* key, Range range) { return Uncertain<Length>{metres(in.number(key, range)), {}}; };
    const auto bottom = exactly("bottom_m", aboveZero), margin = exactly("margin_m", notBelowZero);
    const HookFit fit{exactly("sleeve_radius_m", aboveZero), exactly("lip_drop_m", notBelowZero)};
    const auto target = accepted(eccentricTarget(oneRm, concentric, eccentric, PercentBase::OneRepMax));
    const auto length = accepted(hookLength(bottom, margin, fit));
    const auto heights = accepted(hookHeights(length, fit));
    return {{"each_hook_kg", idealHook(target).si()}, {"hook_length_m", length.value.si()}, {"touch_m", heights.touch.value.si()}, {"free_m", heights.free.value.si()}};
}

}
