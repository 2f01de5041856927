// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/athlete/keepcap.h"

#include "core/season/method.h"
#include "core/work/records/implementcodec.h"

#include <algorithm>

namespace steelyard {

namespace {

/// A lift that ships, or one that was added and is there.
bool isLift(const SeasonBook& book, const LiftId& lift)
{
    return lift.own.isNone() ? shippedLift(lift) != nullptr : book.lift(lift.own) != nullptr;
}

std::optional<Unfit> unfitIn(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, const std::optional<CapRule>& rule)
{
    if (!book.athlete(athlete))
        return Unfit::AthleteUnknown;
    if (!isLift(book, lift) || (rule && !isLift(book, rule->of)))
        return Unfit::LiftUnknown;
    const std::vector<Method> methods = methodsOf(lift);
    const bool ofTyres = std::find(methods.begin(), methods.end(), Method::Tyre) != methods.end();
    return rule && (ofTyres || !canBeCap(*rule)) ? std::optional(Unfit::LimitUnfit) : std::nullopt;
}

}

void keepCap(SeasonKeeping& keeping, const RecordId& athlete, const LiftId& lift, const std::optional<CapRule>& rule, const WhenTold& told)
{
    if (const auto unfit = unfitIn(keeping.book(), athlete, lift, rule))
        return told({athlete, unfit, std::nullopt});
    Drafting drafting(keeping);
    drafting.set(athletePlace(athlete), field::athleteCapNumber, rule ? contentOf(*rule) : std::nullopt, partOf(lift));
    keeping.keep(Deed::CapKept, athlete, std::move(drafting).drafts(), told);
}

}
