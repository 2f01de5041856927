// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/athlete/keepisometric.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/isometriccodec.h"

namespace steelyard {

void keepIsometricPull(SeasonKeeping& keeping, const RecordId& athlete, const IsometricPull& pull, const WhenTold& told)
{
    const Athlete* known = keeping.book().athlete(athlete);
    auto unfit = known ? unfitForMore(*known, keeping.here().day) : std::optional(Unfit::AthleteUnknown);
    if (!unfit && pull.lift == LiftId{})
        unfit = Unfit::LiftUnknown;
    if (!unfit && pull.day > keeping.here().day)
        unfit = Unfit::DayAhead;
    if (unfit)
        return told({{}, unfit, std::nullopt});
    const bool fit = fits(std::optional<Length>(pull.height)) && fits(std::optional<Mass>(pull.pull)) && (!pull.scaleStep || fits(std::optional<Mass>(*pull.scaleStep)));
    const Content content = fit ? contentOf(pull, keeping.book().settings()) : std::nullopt;
    if (!content)
        return told({{}, Unfit::QuantityUnfit, std::nullopt});
    const RecordId id = keeping.newId();
    Drafting drafting(keeping);
    drafting.add(isometricPullPlace(id, athlete), pull.day, *content);
    keeping.keep(Deed::IsometricPullKept, id, std::move(drafting).drafts(), told);
}

}
