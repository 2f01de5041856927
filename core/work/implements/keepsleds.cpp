// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/implements/keepsleds.h"

#include "core/work/keeping/athlete/aboutsomebody.h"
#include "core/work/keeping/fitness.h"
#include "core/work/keeping/putright.h"
#include "core/work/records/implementcodec.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace steelyard {

namespace {

bool isSled(const SeasonBook& book, const RecordId& item)
{
    const KitRecord* record = book.item(item);
    return record && kindOf(record->item.measurement) == ItemKind::Sled;
}

/// What lay on it may be nothing.
bool canLieOn(const Entered<Mass>& added)
{
    return std::isfinite(added.si()) && added.si() >= 0;
}

/// Of a record of a sled at a venue.
std::optional<Unfit> unfitPlace(const SeasonKeeping& keeping, const RecordId& venue, const RecordId& sled, const std::string& surface)
{
    if (!keeping.book().venue(venue))
        return Unfit::VenueUnknown;
    if (!isSled(keeping.book(), sled))
        return Unfit::ItemUnknown;
    return unfitName(surface);
}

/// A day ahead that stood there already came from a clock that was wrong.
bool isAhead(const SeasonKeeping& keeping, std::chrono::sys_days day, std::optional<std::chrono::sys_days> before)
{
    return day > keeping.here().day && day != before;
}

std::optional<Unfit> unfitIn(const SeasonKeeping& keeping, const SledSurface& surface, const SledSurface* before)
{
    if (const auto unfit = unfitPlace(keeping, surface.venue, surface.sled, surface.name))
        return unfit;
    if (isAhead(keeping, surface.day, before ? std::optional(before->day) : std::nullopt))
        return Unfit::DayAhead;
    std::set<double> masses;
    for (const TowRead& read : surface.readings) {
        if (!canLieOn(read.added) || !fits(read.pull.quantity()))
            return Unfit::QuantityUnfit;
        masses.insert(read.added.si());
    }
    const bool rest = fits(surface.hip) && fits(surface.scaleStep)
        && (!surface.scaleAccuracy || (std::isfinite(surface.scaleAccuracy->si()) && surface.scaleAccuracy->si() >= 0));
    if (!rest)
        return Unfit::QuantityUnfit;
    return masses.size() < 2 ? std::optional(Unfit::ReadingsTooFew) : std::nullopt;
}

std::optional<Unfit> unfitIn(const SeasonKeeping& keeping, const SledRunTimed& run, const SledRunTimed* before)
{
    if (const auto unfit = unfitForMore(keeping, run.athlete))
        return unfit;
    if (const auto unfit = unfitPlace(keeping, run.venue, run.sled, run.surface))
        return unfit;
    if (isAhead(keeping, run.day, before ? std::optional(before->day) : std::nullopt))
        return Unfit::DayAhead;
    const bool fit = canLieOn(run.added) && fits(run.distance.quantity()) && run.time.quantity().count() > 0 && fits(run.hip);
    return fit ? std::nullopt : std::optional(Unfit::QuantityUnfit);
}

}

void keepSurface(SeasonKeeping& keeping, const SledSurface& surface, const WhenTold& told)
{
    const auto unfit = unfitIn(keeping, surface, nullptr);
    const Content content = unfit ? std::nullopt : contentOf(surface, keeping.book().settings());
    addAbout(keeping, Deed::SurfaceKept, sledSurfacePlace({}), surface.day, content, unfit, told);
}

void putSurfaceRight(SeasonKeeping& keeping, const SledSurface& surface, const WhenTold& told)
{
    const SledSurface* known = keeping.book().surface(surface.id);
    const auto unfit = known ? unfitIn(keeping, surface, known) : std::optional(Unfit::RecordUnknown);
    const Content content = unfit ? std::nullopt : contentOf(surface, keeping.book().settings());
    putRightAbout(keeping, sledSurfacePlace(surface.id), surface.day, content, unfit, told);
}

void keepSledRun(SeasonKeeping& keeping, const SledRunTimed& run, const WhenTold& told)
{
    const auto unfit = unfitIn(keeping, run, nullptr);
    const Content content = unfit ? std::nullopt : contentOf(run, keeping.book().settings());
    addAbout(keeping, Deed::SledRunKept, sledRunPlace({}, run.athlete), run.day, content, unfit, told);
}

void putSledRunRight(SeasonKeeping& keeping, const SledRunTimed& run, const WhenTold& told)
{
    const Place place = sledRunPlace(run.id, run.athlete);
    const SledRunTimed* known = keeping.book().run(place);
    const auto unfit = known ? unfitIn(keeping, run, known) : std::optional(Unfit::RecordUnknown);
    const Content content = unfit ? std::nullopt : contentOf(run, keeping.book().settings());
    putRightAbout(keeping, place, run.day, content, unfit, told);
}

}
