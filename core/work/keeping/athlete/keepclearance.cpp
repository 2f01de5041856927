// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/athlete/keepclearance.h"

#include "core/work/keeping/athlete/aboutsomebody.h"

namespace steelyard {

namespace {

std::optional<Unfit> unfitIn(const SeasonKeeping& keeping, const Clearance& clearance, const Clearance* before)
{
    if (const auto unfit = unfitForMore(keeping, clearance.athlete))
        return unfit;
    if (clearance.lift == LiftId{} || !isMethod(clearance.method))
        return Unfit::LiftUnknown;
    if (clearance.until && *clearance.until < clearance.day)
        return Unfit::UntilBeforeDay;
    return before && before->who == clearance.who ? std::nullopt : unfitWho(keeping, clearance.who);
}

}

void keepClearance(SeasonKeeping& keeping, const Clearance& clearance, const WhenTold& told)
{
    addAbout(keeping, Deed::ClearanceKept, clearancePlace({}, clearance.athlete), clearance.day, contentOf(clearance), unfitIn(keeping, clearance, nullptr), told);
}

void putClearanceRight(SeasonKeeping& keeping, const Clearance& clearance, const WhenTold& told)
{
    const Place place = clearancePlace(clearance.id, clearance.athlete);
    const Clearance* known = keeping.book().clearance(place);
    const auto unfit = known ? unfitIn(keeping, clearance, known) : std::optional(Unfit::RecordUnknown);
    putRightAbout(keeping, place, clearance.day, contentOf(clearance), unfit, told);
}

void takeClearanceBack(SeasonKeeping& keeping, const RecordId& athlete, const LiftId& lift, Method method, const SaidSo& by, const WhenTold& told)
{
    if (const auto unfit = unfitSaidSo(keeping, by))
        return told({athlete, unfit, std::nullopt});
    Drafting drafting(keeping);
    bool known = false, standing = false;
    for (const Clearance* clearance : keeping.book().clearancesOf(athlete)) {
        const bool meant = clearance->lift == lift && clearance->method == method;
        known = known || meant;
        if (meant && !clearance->takenBack) {
            standing = true;
            drafting.set(clearancePlace(clearance->id, athlete), field::clearanceTakenBackNumber, contentOf(by));
        }
    }
    if (!standing)
        return told({athlete, known ? Unfit::AlreadySaid : Unfit::RecordUnknown, std::nullopt});
    keeping.keep(Deed::ClearanceTakenBack, athlete, std::move(drafting).drafts(), told);
}

}
