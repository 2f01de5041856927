// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/keg.h"
#include "core/implements/sled.h"
#include "core/implements/sledline.h"
#include "core/implements/solids.h"
#include "core/implements/tyre.h"
#include "core/implements/weighing.h"
#include "tests/probe/parts.h"

namespace steelyard::probe {

namespace {

constexpr Range share{0, 1}, slope{0, 90};

Estimate<Mass> massFrom(Fields& in, const char* key, Range range = aboveZero) { return exactly(kilograms(in.number(key, range))); }
Estimate<Length> lengthFrom(Fields& in, const char* key, Range range = aboveZero) { return exactly(metres(in.number(key, range))); }
Estimate<Density> densityFrom(Fields& in) { return exactly(Density::fromSi(in.number("density_kg_m3", aboveZero))); }
Estimate<Angle> angleFrom(Fields& in) { return exactly(Angle{in.number("angle_deg", slope) * oneDegree.radians}); }

Out inKilogramsOf(const Result<Estimate<Mass>>& mass) { return {{"kg", accepted(mass).number()}}; }

}

Out tyreMassFromEdgeOf(Fields& in)
{
    const double shown = in.number("edge_kg", aboveZero);
    const Scale scale{kilograms(in.number("scale_step_kg", notBelowZero)), in.number("scale_accuracy", share)};
    const auto lever = [&in](const char* key, const char* uKey) {
        return within(metres(in.number(key, aboveZero)), metres(in.number(uKey, notBelowZero, 0)));
    };
    const auto lift = lever("lift_point_m", "u_lift_m"), contact = lever("far_contact_m", "u_contact_m");
    const auto mass = accepted(tyreMassFromEdge({accepted(readingOf(scale, kilograms(shown))), lift, contact}));
    return {{"mass_kg", mass.number()}, {"u", mass.u().si()}};
}

Out tyreLift(Fields& in)
{
    const Estimate<Mass> mass = massFrom(in, "mass_kg");
    const Estimate<Length> diameter = lengthFrom(in, "diameter_m"), width = lengthFrom(in, "width_m");
    const auto flip = accepted(TyreFlip::of({mass, diameter, width}));
    const auto point = flip.at(angleFrom(in).value);
    if (!point)
        Fields::refuse("angle_deg", "is out of range: upright, nothing lifts it further");
    return {{"vertical_n", point->vertical.number()}, {"perpendicular_n", point->perpendicular.number()},
            {"balance_deg", flip.balance().number() / oneDegree.radians}, {"work_to_balance_j", flip.workToBalance().number()}};
}

Out logMassOf(Fields& in)
{
    const TaperedRound log{lengthFrom(in, "length_m"), lengthFrom(in, "diameter1_m"), lengthFrom(in, "diameter2_m")};
    return inKilogramsOf(logMass(log, {exactly(in.number("specific_gravity", aboveZero)), exactly(in.number("moisture_percent", notBelowZero))}));
}

Out stoneMassOf(Fields& in)
{
    const Estimate<Length> diameter = lengthFrom(in, "diameter_m");
    return inKilogramsOf(stoneMass(diameter, densityFrom(in)));
}

Out kegMass(Fields& in)
{
    const Estimate<Mass> tare = massFrom(in, "tare_kg", notBelowZero);
    const auto capacity = exactly(in.number("volume_l", aboveZero) * litre);
    const auto content = accepted(contentByFill(capacity, exactly(in.number("fill", share))));
    return inKilogramsOf(filledMass(tare, content, densityFrom(in)));
}

Out lyingCylinderVolume(Fields& in)
{
    const LyingVessel vessel{lengthFrom(in, "radius_m"), lengthFrom(in, "length_m"), lengthFrom(in, "depth_m", notBelowZero)};
    return {{"m3", accepted(contentLying(vessel)).number()}};
}

Out sledPullOf(Fields& in)
{
    const Estimate<Mass> total = massFrom(in, "mass_kg");
    const Haul haul{exactly(in.number("mu", notBelowZero)), angleFrom(in), in.oneOf<SledWay>("direction", {{"tow", SledWay::Tow}, {"push", SledWay::Push}})};
    if (locks(haul))
        Fields::refuse("angle_deg", "is out of range: a push this steep locks");
    return {{"pull_n", accepted(sledPull(total, haul)).number()}};
}

Out sledFriction(Fields& in)
{
    const TowReading reading{massFrom(in, "mass_kg"), exactly(newtons(in.number("pull_n", notBelowZero)))};
    return {{"mu", accepted(frictionFromPull(reading, angleFrom(in))).number()}};
}

Out sledLoad(Fields& in)
{
    std::vector<SledRun> runs;
    for (const auto& [total, speed] : in.pairs("points", aboveZero, aboveZero))
        runs.push_back({exactly(kilograms(total)), exactly(Speed::fromSi(speed))});
    const auto line = accepted(LoadSpeedLine::of(runs));
    const auto load = accepted(line.loadFor(in.number("speed_loss", share)));
    return {{"total_kg", load.number()}, {"u", load.u().si()}, {"degrees_of_freedom", runs.size() - 2}};
}

}
