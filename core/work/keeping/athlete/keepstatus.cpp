// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/athlete/keepstatus.h"

#include "core/work/keeping/athlete/aboutsomebody.h"
#include "core/work/keeping/fitness.h"

#include <algorithm>

namespace steelyard {

namespace {

bool namesSomething(const DayStatus& status)
{
    return !status.notMethods.empty() || !status.notGroups.empty() || !status.notLifts.empty();
}

bool saysMore(const DayStatus& status)
{
    return namesSomething(status) || !status.text.empty();
}

std::optional<Unfit> unfitNames(const DayStatus& status)
{
    const bool agrees = status.fitness == Fitness::Some ? saysMore(status) : !namesSomething(status);
    if (!agrees)
        return Unfit::NothingNamed;
    const bool known = isFitness(status.fitness) && std::all_of(status.notMethods.begin(), status.notMethods.end(), isMethod)
        && std::all_of(status.notGroups.begin(), status.notGroups.end(), isLiftGroup) && !status.notLifts.contains(LiftId{});
    return known ? std::nullopt : std::optional(Unfit::LiftUnknown);
}

std::optional<Unfit> unfitIn(const SeasonKeeping& keeping, const DayStatus& status, const DayStatus* before)
{
    if (!keeping.book().athlete(status.athlete))
        return Unfit::AthleteUnknown;
    if (saysMore(status))
        if (const auto unfit = unfitForMore(keeping, status.athlete))
            return unfit;
    if (const auto unfit = unfitNames(status))
        return unfit;
    if (status.until && *status.until < status.day)
        return Unfit::UntilBeforeDay;
    if (const auto unfit = unfitText(status.text, mostNotesByteCount))
        return unfit;
    if (keeping.isSample() && !status.text.empty() && !(before && before->text == status.text))
        return Unfit::SampleTakesNobody;
    return before && before->who == status.who ? std::nullopt : unfitWho(keeping, status.who);
}

}

void keepDayStatus(SeasonKeeping& keeping, const DayStatus& status, const WhenTold& told)
{
    const auto unfit = unfitIn(keeping, status, nullptr);
    addAbout(keeping, Deed::StatusKept, dayStatusPlace({}, status.athlete), status.day, unfit ? std::nullopt : contentOf(status), unfit, told);
}

void putDayStatusRight(SeasonKeeping& keeping, const DayStatus& status, const WhenTold& told)
{
    const Place place = dayStatusPlace(status.id, status.athlete);
    const DayStatus* known = keeping.book().status(place);
    const auto unfit = known && !known->unread ? unfitIn(keeping, status, known) : std::optional(Unfit::RecordUnknown);
    putRightAbout(keeping, place, status.day, unfit ? std::nullopt : contentOf(status), unfit, told);
}

void liftDayStatus(SeasonKeeping& keeping, const RecordId& athlete, const RecordId& status, const SaidSo& by, const WhenTold& told)
{
    const Place place = dayStatusPlace(status, athlete);
    const DayStatus* known = keeping.book().status(place);
    auto unfit = known ? unfitSaidSo(keeping, by) : std::optional(Unfit::RecordUnknown);
    if (!unfit && known->lifted)
        unfit = Unfit::AlreadySaid;
    if (unfit)
        return told({status, unfit, std::nullopt});
    Drafting drafting(keeping);
    drafting.set(place, field::statusLiftedNumber, contentOf(by));
    keeping.keep(Deed::StatusLifted, status, std::move(drafting).drafts(), told);
}

}
