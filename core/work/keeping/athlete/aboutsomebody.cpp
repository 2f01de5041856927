// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/athlete/aboutsomebody.h"

#include "core/work/keeping/fitness.h"
#include "core/work/keeping/putright.h"

#include <algorithm>
#include <map>

namespace steelyard {

namespace {

bool isNamed(const SeasonBook& book, const std::string& who)
{
    const auto names = namedAlready(book);
    return std::find(names.begin(), names.end(), who) != names.end();
}

}

std::vector<std::string> namedAlready(const SeasonBook& book)
{
    std::map<std::string, std::chrono::sys_days> lastDays;
    const auto take = [&lastDays](const auto& records) {
        for (const auto* record : records)
            if (!record->who.empty()) {
                const auto at = lastDays.try_emplace(record->who, record->day).first;
                at->second = std::max(at->second, record->day);
            }
    };
    for (const Athlete* athlete : book.athletes()) {
        take(book.clearancesOf(athlete->id));
        take(book.statusesOf(athlete->id));
    }
    std::vector<std::pair<std::string, std::chrono::sys_days>> byDay(lastDays.begin(), lastDays.end());
    std::stable_sort(byDay.begin(), byDay.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
    std::vector<std::string> names;
    for (auto& [name, day] : byDay)
        names.push_back(std::move(name));
    return names;
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
    return keeping.isSample() && !isNamed(keeping.book(), who) ? std::optional(Unfit::SampleTakesNobody) : std::nullopt;
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
