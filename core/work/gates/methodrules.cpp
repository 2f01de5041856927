// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/gates/methodrules.h"

namespace steelyard {

MethodRules rulesOf(Method method, const CoachLimits& limits)
{
    MethodRules rules;
    rules.caution = true;
    switch (method) {
    case Method::MaximalTest:
        rules.clearance = rules.minorsApproval = true;
        return rules;
    case Method::EccentricRelease:
        rules.clearance = rules.minorsApproval = true;
        rules.maximum = Asks::Needs;
        rules.capPercent = limits.eccentricCapPercent();
        return rules;
    case Method::Tyre:
        rules.minorsApproval = rules.ofDeadlift = true;
        rules.maximum = Asks::Needs;
        rules.capPercent = limits.tyreCapPercent();
        return rules;
    case Method::IsometricTest:
        rules.clearance = true;
        return rules;
    case Method::Chains:
    case Method::BandsBelow:
    case Method::BandsAbove:
    case Method::BenchAid:
    case Method::Overhead:
        rules.maximum = Asks::Wants;
        return rules;
    case Method::Implement:
    case Method::Carry:
        return rules;
    case Method::Plain:
    case Method::Machine:
    case Method::Sled:
    case Method::Kettlebell:
    case Method::Jumps:
    case Method::Throws:
        break;
    }
    rules.caution = false;
    return rules;
}

}
