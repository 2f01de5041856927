// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/probe/fields.h"

#include <nlohmann/json.hpp>
#include <span>
#include <string_view>

namespace steelyard::probe {

using Out = nlohmann::ordered_json;

/// One question the probe answers. Keys carry their unit and are required, but for those in [square brackets].
struct Function {
    const char* name;
    const char* keys;
    const char* gives;
    Out (*work)(Fields& in);
};

[[nodiscard]] std::span<const Function> functions();
[[nodiscard]] const Function* find(std::string_view name);

Out fitPolynomial(Fields& in);
Out fitPredict(Fields& in);
Out interpolateMonotone(Fields& in);
Out coverageFactor(Fields& in);
Out chainMassPerMetre(Fields& in);
Out chainLoad(Fields& in);
Out chainMean(Fields& in);
Out bandFit(Fields& in);
Out bandPull(Fields& in);
Out bandHang(Fields& in);
Out setUp(Fields& in);
Out plates(Fields& in);
Out whatToHangOf(Fields& in);
Out measuredHelp(Fields& in);
Out camTorqueOf(Fields& in);
Out oneRm(Fields& in);
Out scaledStrengthOf(Fields& in);
Out releaseHook(Fields& in);
Out tyreMassFromEdgeOf(Fields& in);
Out tyreLift(Fields& in);
Out logMassOf(Fields& in);
Out stoneMassOf(Fields& in);
Out kegMass(Fields& in);
Out lyingCylinderVolume(Fields& in);
Out sledPullOf(Fields& in);
Out sledFriction(Fields& in);
Out sledLoad(Fields& in);
Out sessionLoadOf(Fields& in);
Out bilateralIndexOf(Fields& in);
Out bilateralIndexLift(Fields& in);
Out asymmetry(Fields& in);
Out asymmetryNoise(Fields& in);
Out reliability(Fields& in);
Out kappa(Fields& in);
Out trendWordOf(Fields& in);
Out jumpHeight(Fields& in);
Out jumpForce(Fields& in);
Out isometricForce(Fields& in);

}
