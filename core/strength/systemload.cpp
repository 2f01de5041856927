// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/systemload.h"

#include "core/strength/percent.h"

#include <cmath>
#include <optional>

namespace steelyard {

namespace {

std::optional<Error> bodyFault(const BodyLoad& load)
{
    if (!load.body.isSound() || load.body.value <= Mass{})
        return Error{Refusal::OutOfRange, "body"};
    if (!load.borneByFeet.isSound() || load.borneByFeet.value < Mass{} || load.borneByFeet.value >= load.body.value)
        return Error{Refusal::OutOfRange, "borne by the feet"};
    return std::nullopt;
}

}

Result<Uncertain<Mass>> systemLoad(const Uncertain<Mass>& external, const BodyLoad& body)
{
    if (const auto wrong = bodyFault(body))
        return *wrong;
    const Uncertain<Mass> lifted = body.lifted();
    if (!external.isSound() || external.value + lifted.value <= Mass{})
        return Error{Refusal::OutOfRange, "external load"};
    return Uncertain<Mass>{external.value + lifted.value, inSquares(external.u, lifted.u)};
}

Result<SystemMax> systemMax(const OneRepMax& max, const Uncertain<Mass>& external, const BodyLoad& body)
{
    const auto load = systemLoad(external, body);
    if (!load)
        return load.error();
    if (!max.middle.isSound() || max.middle.value <= Mass{})
        return Error{Refusal::OutOfRange, "base"};
    return SystemMax{max.middle, (max.middle.value / load->value) * body.body.u, body.weighing};
}

Result<ExternalLoad> externalFor(double percent, const SystemMax& max, const BodyLoad& today)
{
    const auto wanted = percentOf(percent, max.total);
    if (!wanted)
        return wanted.error();
    if (const auto wrong = bodyFault(today))
        return *wrong;
    const Mass load = wanted->value - today.lifted().value;
    const bool isShared = max.weighing != ownSource && max.weighing == today.weighing;
    const double fromBody = percent / 100 * max.uOfBody.si(), whole = wanted->u.si();
    const double others = std::max(0.0, whole * whole - fromBody * fromBody);
    const Mass ofBody = isShared ? kilograms(fromBody - today.body.u.si()) : kilograms(std::hypot(fromBody, today.body.u.si()));
    return ExternalLoad{{load, inSquares(kilograms(std::sqrt(others)), ofBody, today.borneByFeet.u)}, load < Mass{}};
}

}
