// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/keeplift.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"

namespace steelyard {

void keepLift(SeasonKeeping& keeping, OwnLift lift, const WhenTold& told)
{
    if (!lift.id.isNone() && !keeping.book().lift(lift.id))
        return told({lift.id, Unfit::LiftUnknown, std::nullopt});
    auto unfit = unfitName(lift.name);
    const Lift* like = shippedLift(lift.like);
    if (!unfit && lift.like != LiftId{} && !(like && like->onBar))
        unfit = Unfit::LiftUnknown;
    if (unfit)
        return told({lift.id, unfit, std::nullopt});
    if (lift.id.isNone())
        lift.id = keeping.newId();
    Drafting drafting(keeping);
    const Place place = liftPlace(lift.id);
    drafting.setText(place, field::liftNameNumber, lift.name);
    drafting.set(place, field::liftLikeNumber, like ? contentOf(lift.like) : std::nullopt);
    drafting.set(place, field::liftStartNumber, contentOf(lift.start));
    keeping.keep(Deed::LiftKept, lift.id, std::move(drafting).drafts(), told);
}

}
