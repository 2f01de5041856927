// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/athlete/keeptest.h"

#include "core/work/keeping/athlete/aboutsomebody.h"
#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

/// More than anybody does in a test of strength; a number above is a slip of the finger.
constexpr int mostRepsOfATest = 500;

bool loadFits(const StrengthTest& test)
{
    const auto& body = test.conditions.bodyMass;
    const Mass lifted = body ? test.load.quantity() + body->quantity() : test.load.quantity();
    return fits(body) && fits(lifted) && std::isfinite(test.load.si());
}

bool repsFit(const StrengthTest& test)
{
    const bool some = test.reps >= 1 || (test.reps == 0 && test.missed);
    const bool reserve = !test.repsInReserve || (*test.repsInReserve >= 0 && *test.repsInReserve <= mostRepsOfATest);
    // a rep that was missed leaves none in reserve
    const bool agree = !(test.missed && test.repsInReserve.value_or(0) > 0);
    return some && reserve && agree && test.reps <= mostRepsOfATest;
}

bool maximumFits(const StrengthTest& test)
{
    const bool jump = !test.leastJump || (test.maximum && fits(test.leastJump));
    return jump && (!test.maximum || (test.reps == 1 && test.repsInReserve.value_or(0) == 0));
}

std::optional<Unfit> unfitIn(const SeasonKeeping& keeping, const StrengthTest& test, const StrengthTest* before)
{
    if (const auto unfit = unfitForMore(keeping, test.athlete))
        return unfit;
    const std::set<Method>& hung = test.conditions.hung;
    if (test.lift == LiftId{})
        return Unfit::LiftUnknown;
    if (!loadFits(test) || !std::all_of(hung.begin(), hung.end(), [](Method method) { return canHangInTest(method); }))
        return Unfit::QuantityUnfit;
    if (!repsFit(test) || !maximumFits(test))
        return Unfit::RepsUnfit;
    if (test.day > keeping.here().day && !(before && test.day == before->day))
        return Unfit::DayAhead;
    if (const auto unfit = unfitText(test.note, mostNotesByteCount))
        return unfit;
    const bool said = !test.note.empty() && !(before && test.note == before->note);
    return said && keeping.isSample() ? std::optional(Unfit::SampleTakesNobody) : std::nullopt;
}

}

void keepStrengthTest(SeasonKeeping& keeping, const StrengthTest& test, const WhenTold& told)
{
    const auto unfit = unfitIn(keeping, test, nullptr);
    const Content content = unfit ? std::nullopt : contentOf(test, keeping.book().settings());
    addAbout(keeping, Deed::TestKept, strengthTestPlace({}, test.athlete), test.day, content, unfit, told);
}

void putStrengthTestRight(SeasonKeeping& keeping, const StrengthTest& test, const WhenTold& told)
{
    const Place place = strengthTestPlace(test.id, test.athlete);
    const StrengthTest* known = keeping.book().test(place);
    const auto unfit = known ? unfitIn(keeping, test, known) : std::optional(Unfit::RecordUnknown);
    const Content content = unfit ? std::nullopt : contentOf(test, keeping.book().settings());
    putRightAbout(keeping, place, test.day, content, unfit, told);
}

}
