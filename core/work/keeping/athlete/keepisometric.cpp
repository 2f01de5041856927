// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/athlete/keepisometric.h"

#include "core/work/keeping/athlete/aboutsomebody.h"
#include "core/work/keeping/fitness.h"
#include "core/work/records/isometriccodec.h"

namespace steelyard {

namespace {

std::optional<Unfit> unfitIn(const SeasonKeeping& keeping, const RecordId& athlete, const IsometricPull& pull)
{
    if (const auto unfit = unfitForMore(keeping, athlete))
        return unfit;
    if (pull.lift == LiftId{})
        return Unfit::LiftUnknown;
    if (pull.day > keeping.here().day)
        return Unfit::DayAhead;
    const bool fit = fits(pull.height.quantity()) && fits(pull.pull.quantity()) && (!pull.scaleStep || fits(pull.scaleStep->quantity()));
    return fit ? std::nullopt : std::optional(Unfit::QuantityUnfit);
}

}

void keepIsometricPull(SeasonKeeping& keeping, const RecordId& athlete, const IsometricPull& pull, const WhenTold& told)
{
    addAbout(keeping, Deed::IsometricPullKept, isometricPullPlace({}, athlete), pull.day, contentOf(pull, keeping.book().settings()), unfitIn(keeping, athlete, pull), told);
}

}
