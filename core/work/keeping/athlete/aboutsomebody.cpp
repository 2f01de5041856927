// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/athlete/aboutsomebody.h"

#include "core/work/keeping/fitness.h"
#include "core/work/keeping/putright.h"

#include <algorithm>

namespace steelyard {

namespace {

bool isNamedAlready(const SeasonBook& book, const std::string& who)
{
    const auto athletes = book.athletes();
    const auto said = [&who](const auto& records) {
        return std::any_of(records.begin(), records.end(), [&who](const auto* record) { return record->who == who; });
    };
    return std::any_of(athletes.begin(), athletes.end(), [&](const Athlete* athlete) {
        return said(book.clearancesOf(athlete->id)) || said(book.statusesOf(athlete->id));
    });
}

}

std::optional<Unfit> unfitForMore(const SeasonKeeping& keeping, const RecordId& athlete)
{
    const Athlete* known = keeping.book().athlete(athlete);
    return known ? unfitForMore(*known, keeping.here().day) : std::optional(Unfit::AthleteUnknown);
}

std::optional<Unfit> unfitWho(const SeasonKeeping& keeping, const std::string& who)
{
    if (const auto unfit = unfitName(who))
        return unfit == Unfit::NameMissing ? Unfit::WhoMissing : unfit;
    return keeping.isSample() && !isNamedAlready(keeping.book(), who) ? std::optional(Unfit::SampleTakesNobody) : std::nullopt;
}

std::optional<Unfit> unfitSaidSo(const SeasonKeeping& keeping, const SaidSo& by)
{
    return by.day > keeping.here().day ? std::optional(Unfit::DayAhead) : unfitWho(keeping, by.who);
}

void addAbout(SeasonKeeping& keeping, Deed deed, Place place, std::chrono::sys_days day, const Content& content,
              const std::optional<Unfit>& unfit, const WhenTold& told)
{
    if (unfit || !content)
        return told({{}, unfit.value_or(Unfit::QuantityUnfit), std::nullopt});
    place.subject.id = keeping.newId();
    Drafting drafting(keeping);
    drafting.add(place, day, *content);
    keeping.keep(deed, place.subject.id, std::move(drafting).drafts(), told);
}

void putRightAbout(SeasonKeeping& keeping, const Place& place, std::chrono::sys_days day, const Content& content,
                   const std::optional<Unfit>& unfit, const WhenTold& told)
{
    if (unfit)
        return told({place.subject.id, unfit, std::nullopt});
    keepRight(keeping, place, day, content, told);
}

}
