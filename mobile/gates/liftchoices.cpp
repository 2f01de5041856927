// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/liftchoices.h"

#include "core/season/lifts.h"
#include "mobile/text/keepingtexts.h"

#include <algorithm>

using namespace steelyard;

QStringList LiftChoices::names(const SeasonBook& book) const
{
    QStringList list;
    for (const LiftId& lift : ids)
        list << keepingtexts::lift(lift, book);
    return list;
}

int LiftChoices::placeOf(const LiftId& lift) const
{
    const auto at = std::find(ids.begin(), ids.end(), lift);
    return at == ids.end() ? -1 : static_cast<int>(at - ids.begin());
}

LiftChoices liftChoices(const SeasonBook& book, const RecordId& athlete, std::span<const LiftId> named)
{
    LiftChoices out;
    std::vector<LiftId> others;
    const Athlete* known = book.athlete(athlete);
    const auto isNamed = [&](const LiftId& lift) { return std::find(named.begin(), named.end(), lift) != named.end(); };
    const auto add = [&](const LiftId& lift) { (isNamed(lift) || (known && known->marks.contains(lift)) ? out.ids : others).push_back(lift); };
    for (const OwnLift* own : book.lifts())
        add(LiftId::added(own->id));
    for (const Lift& lift : shippedLifts())
        add(lift.id);
    for (const LiftId& lift : named)
        if (lift != LiftId{} && out.placeOf(lift) < 0)
            out.ids.push_back(lift);
    out.herCount = static_cast<int>(out.ids.size());
    out.ids.insert(out.ids.end(), others.begin(), others.end());
    return out;
}
