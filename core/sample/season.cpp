// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/season.h"

#include "core/sample/implementreader.h"
#include "core/sample/kitreader.h"
#include "core/sample/releasereader.h"
#include "core/work/barchanges.h"
#include "core/work/measuring/rackholes.h"

#include <algorithm>
#include <set>

namespace steelyard::sample {

namespace {

/// Ids that only have to differ within one season.
RecordId numbered(std::size_t kindIndex, std::size_t index)
{
    RecordId id;
    id.bytes[0] = static_cast<std::byte>(kindIndex + 1);
    id.bytes[14] = static_cast<std::byte>((index + 1) >> 8);
    id.bytes[15] = static_cast<std::byte>((index + 1) & 0xFF);
    return id;
}

template <typename Entry, typename Name>
const Entry* find(const std::vector<Entry>& all, const Name& is)
{
    const auto at = std::find_if(all.begin(), all.end(), is);
    return at == all.end() ? nullptr : &*at;
}

/// As the files say them, in the order of their numbers.
const std::vector<std::string>& methodWords()
{
    static const std::vector<std::string> words{"plain iron", "maximal test", "eccentric release", "chains", "bands below", "bands above", "bench aid", "machine", "overhead",
                                                "tyre", "implement", "carry", "sled", "kettlebell", "isometric test", "jumps", "throws"};
    return words;
}

/// Reads the files one after the other, each by the names that those before it gave.
class Reader {
public:
    Reader(const SeasonTexts& texts, std::chrono::sys_days today, Faults& faults) : m_texts(texts), m_today(today), m_faults(faults) {}

    Season season()
    {
        each("venues.json", "venues", [this](StrictObject& from) { readVenue(from); });
        each("kit.json", "kit", [this](StrictObject& from) { readItem(from); });
        each("squad.json", "squad", [this](StrictObject& from) { readPerson(from); });
        each("setups.json", "setups", [this](StrictObject& from) { readSetup(from); });
        each("clearances.json", "clearances", [this](StrictObject& from) { readClearance(from); });
        each("statuses.json", "statuses", [this](StrictObject& from) { readStatus(from); });
        return std::move(m_season);
    }

private:
    template <typename Read>
    void each(const std::string& file, const std::string& key, const Read& read)
    {
        const auto text = m_texts.find(file);
        if (text == m_texts.end()) {
            m_faults.push_back(file + ": is missing");
            return;
        }
        StrictObject root = StrictObject::of(text->second, file, m_faults);
        (void)root.neededText("about");
        for (StrictObject& from : root.neededList(key)) {
            read(from);
            from.finish();
        }
        root.finish();
    }
    std::chrono::sys_days dayIn(StrictObject& from)
    {
        const int ago = from.neededCount("days_ago");
        if (ago < 0)
            from.fault("days_ago", "is still to come");
        return m_today - std::chrono::days(ago);
    }
    /// A name that nobody of its kind has had before.
    std::string nameIn(StrictObject& from, bool taken(const Season&, const std::string&))
    {
        std::string name = from.neededText("name");
        if (taken(m_season, name))
            from.fault("name", "stands there twice");
        return name;
    }
    template <typename Entry>
    const Entry* named(StrictObject& from, const std::string& key, const Entry* (Season::*find)(const std::string&) const)
    {
        const std::string name = from.neededText(key);
        const Entry* entry = (m_season.*find)(name);
        if (!entry)
            from.fault(key, "\"" + name + "\" is not there");
        return entry;
    }
    LiftId liftIn(StrictObject& from, const std::string& key = "lift")
    {
        const std::string term = from.neededText(key);
        const auto lifts = shippedLifts();
        const auto at = std::find_if(lifts.begin(), lifts.end(), [&](const Lift& lift) { return lift.term == term; });
        if (at == lifts.end())
            from.fault(key, "\"" + term + "\" is no lift");
        return at == lifts.end() ? LiftId{} : at->id;
    }

    void readVenue(StrictObject& from)
    {
        SampleVenue venue;
        venue.venue.id = numbered(0, m_season.venues.size());
        venue.venue.name = nameIn(from, [](const Season& season, const std::string& name) { return season.venue(name) != nullptr; });
        venue.venue.notes = from.text("notes");
        if (const auto lane = from.length("lane_cm"))
            venue.venue.lane = *lane;
        venue.day = dayIn(from);
        venue.bar = barFrom(from.neededObject("bar"), false);
        m_season.venues.push_back(std::move(venue));
    }
    void readItem(StrictObject& from)
    {
        SampleItem item;
        item.item.id = numbered(1, m_season.kit.size());
        item.item.name = nameIn(from, [](const Season& season, const std::string& name) { return season.item(name) != nullptr; });
        item.item.pair = from.neededFlag("pair");
        item.item.venue = venueIn(from);
        for (StrictObject& measured : from.neededList("measured")) {
            const std::chrono::sys_days day = dayIn(measured);
            item.measurings.emplace_back(day, measuredFrom(measured));
            measured.finish();
        }
        if (item.measurings.empty())
            from.fault("measured", "is empty");
        else
            item.item.measurement = item.measurings.back().second;
        if (!std::is_sorted(item.measurings.begin(), item.measurings.end(), [](const auto& a, const auto& b) { return a.first < b.first; }))
            from.fault("measured", "does not begin with the earliest");
        readLoan(from, item);
        for (StrictObject& pulled : from.list("surfaces")) {
            item.surfaces.push_back(surfaceFrom(pulled, venueIn(pulled), item.item.id));
            item.surfaces.back().day = dayIn(pulled);
            pulled.finish();
        }
        m_season.kit.push_back(std::move(item));
    }
    RecordId venueIn(StrictObject& from)
    {
        const SampleVenue* venue = named(from, "venue", &Season::venue);
        return venue ? venue->venue.id : RecordId{};
    }
    /// That it belongs to somebody else, or that somebody else has it, since a day and with or without one to be back by.
    void readLoan(StrictObject& from, SampleItem& item)
    {
        if (from.has("borrowed") && from.has("lent"))
            from.fault("lent", "is borrowed too");
        for (auto& [key, loan] : {std::pair<std::string, std::optional<OnLoan>&>("borrowed", item.item.borrowed), {"lent", item.item.lent}}) {
            if (!from.has(key))
                continue;
            StrictObject loaned = from.neededObject(key);
            const std::string who = loaned.neededText("who");
            const std::chrono::sys_days day = dayIn(loaned);
            if (!item.measurings.empty() && day < item.measurings.back().first)
                loaned.fault("days_ago", "is before it was last measured");
            std::optional<std::chrono::sys_days> backBy;
            if (loaned.has("back_in_days"))
                backBy = m_today + std::chrono::days(loaned.neededCount("back_in_days"));
            loan = OnLoan{who, backBy};
            item.loanDay = day;
            loaned.finish();
        }
    }
    void readPerson(StrictObject& from)
    {
        SamplePerson person;
        Athlete& athlete = person.athlete;
        athlete.id = numbered(2, m_season.people.size());
        athlete.name = nameIn(from, [](const Season& season, const std::string& name) { return season.person(name) != nullptr; });
        athlete.squad = from.neededText("squad");
        person.day = dayIn(from);
        athlete.birthYear = std::chrono::year_month_day(m_today).year() - std::chrono::years(from.neededCount("turns"));
        if (from.has("agreement")) {
            StrictObject agreement = from.neededObject("agreement");
            athlete.agreement = GuardianAgreement{agreement.neededText("who"), dayIn(agreement)};
            agreement.finish();
        }
        athlete.notes = from.text("notes");
        for (StrictObject& marks : from.list("marks")) {
            const LiftId lift = liftIn(marks);
            athlete.marks[lift] = marksFrom(marks);
            readHoles(marks, athlete.marks[lift]);
            marks.finish();
        }
        for (StrictObject& size : from.list("sizes")) {
            athlete.sizes.push_back({{}, dayIn(size), size.mass("mass_kg"), size.length("height_cm")});
            size.finish();
        }
        for (StrictObject& pull : from.list("pulls")) {
            const LiftId lift = liftIn(pull);
            athlete.pulls.push_back({{}, dayIn(pull), lift, pull.neededLength("height_cm"), pull.neededMass("pull_kg"), pull.mass("scale_step_kg")});
            pull.finish();
        }
        for (StrictObject& test : from.list("tests")) {
            person.tests.push_back(testFrom(test));
            test.finish();
        }
        for (StrictObject& run : from.list("runs")) {
            const SampleItem* sled = named(run, "sled", &Season::item);
            person.runs.push_back(runFrom(run, venueIn(run), sled ? sled->item.id : RecordId{}));
            person.runs.back().day = dayIn(run);
            run.finish();
        }
        for (StrictObject& cap : from.list("caps")) {
            const LiftId lift = liftIn(cap);
            athlete.caps[lift] = CapRule{liftIn(cap, "against"), cap.neededCount("percent")};
            cap.finish();
        }
        m_season.people.push_back(std::move(person));
    }
    StrengthTest testFrom(StrictObject& from)
    {
        StrengthTest test;
        test.lift = liftIn(from);
        test.day = dayIn(from);
        test.load = from.neededMass("load_kg");
        test.reps = from.neededCount("reps");
        if (from.has("in_reserve"))
            test.repsInReserve = from.neededCount("in_reserve");
        test.missed = from.flag("missed", false);
        test.maximum = from.flag("tried_out", false);
        test.leastJump = from.mass("jump_kg");
        test.conditions.bodyMass = from.mass("body_kg");
        const std::vector<std::pair<std::string, Method>> words{{"chains", Method::Chains}, {"bands below", Method::BandsBelow}, {"bands above", Method::BandsAbove}, {"bench aid", Method::BenchAid}, {"machine", Method::Machine}};
        for (const std::string& hung : from.texts("hung")) {
            const auto at = std::find_if(words.begin(), words.end(), [&](const auto& word) { return word.first == hung; });
            if (at == words.end())
                from.fault("hung", "\"" + hung + "\" hangs in no test");
            else
                test.conditions.hung.insert(at->second);
        }
        return test;
    }
    /// Marks by the holes of the rack that is named there, in place of heights.
    void readHoles(StrictObject& from, BarMarks& marks)
    {
        if (!from.has("rack"))
            return;
        const SampleItem* item = named(from, "rack", &Season::item);
        const auto* rack = item ? std::get_if<RackMeasurement>(&item->item.measurement) : nullptr;
        if (item && !rack)
            from.fault("rack", "is no rack");
        const auto read = [&](const std::string& key, std::optional<Entered<Height>>& height, std::optional<HoleRead>& hole) {
            if (!from.has(key) || !rack)
                return;
            const int count = from.neededCount(key);
            if (height)
                from.fault(key, "stands there in centimetres too");
            if (const auto at = heightOfHole(*rack, count)) {
                height = *at;
                hole = HoleRead{item->item.id, count};
            } else {
                from.fault(key, "is no hole of the rack");
            }
        };
        read("bottom_hole", marks.bottom, marks.holes.bottom);
        read("zone_from_hole", marks.zoneFrom, marks.holes.zoneFrom);
        read("zone_to_hole", marks.zoneTo, marks.holes.zoneTo);
        read("top_hole", marks.top, marks.holes.top);
        read("rack_hole", marks.rack, marks.holes.rack);
    }
    /// The bar with what was weighed of it, in place of what is marked.
    void takeWeighed(StrictObject& from, BarRecord& bar)
    {
        for (const std::string& name : from.texts("iron_weighed")) {
            const SampleItem* item = m_season.item(name);
            const auto* iron = item ? std::get_if<IronMeasurement>(&item->item.measurement) : nullptr;
            const auto check = iron ? checked(*iron) : Result<IronCheck>(Error{Refusal::NotThere, "iron"});
            if (!check) {
                from.fault("iron_weighed", "\"" + name + "\" is no weighed iron");
                continue;
            }
            const KnownIron known{item->item.id, *iron, *check};
            bar = iron->sort == IronSort::Bar ? withWeighedBar(std::move(bar), known) : withWeighedPlates(std::move(bar), known);
        }
    }
    void readSetup(StrictObject& from)
    {
        SampleSetup setup;
        setup.saved.id = numbered(3, m_season.setups.size());
        if (const SamplePerson* person = named(from, "athlete", &Season::person))
            setup.saved.athlete = person->athlete.id;
        setup.saved.lift = liftIn(from);
        setup.saved.day = dayIn(from);
        if (const SampleVenue* venue = named(from, "venue", &Season::venue))
            setup.saved.setup.bar = venue->bar;
        takeWeighed(from, setup.saved.setup.bar);
        setup.saved.setup.bar.wanted = from.neededMass("wanted_kg");
        setup.saved.setup.hung = hungFrom(from.list("hung"), [this](const std::string& name) {
            const SampleItem* item = m_season.item(name);
            return item ? &item->item : nullptr;
        });
        if (from.has("release"))
            setup.saved.setup.release = releaseFrom(from.neededObject("release"));
        const std::vector<std::string> cautions{"chains", "bands below", "bands above", "bench aid", "release"};
        for (const std::string& looked : from.texts("looked_over")) {
            const auto at = std::find(cautions.begin(), cautions.end(), looked);
            if (at == cautions.end())
                from.fault("looked_over", "\"" + looked + "\" is no caution");
            else
                setup.lookedOver.push_back(static_cast<CautionCode>(at - cautions.begin()));
        }
        m_season.setups.push_back(std::move(setup));
    }

    RecordId athleteIn(StrictObject& from)
    {
        const SamplePerson* person = named(from, "athlete", &Season::person);
        return person ? person->athlete.id : RecordId{};
    }
    /// The last of so many days, the first among them; none where no number stands there.
    std::optional<std::chrono::sys_days> untilIn(StrictObject& from, std::chrono::sys_days first)
    {
        if (!from.has("for_days"))
            return std::nullopt;
        const int count = from.neededCount("for_days");
        if (count < 1)
            from.fault("for_days", "is no day");
        return first + std::chrono::days(count - 1);
    }
    template <typename Number>
    std::set<Number> numbersIn(StrictObject& from, const std::string& key, const std::vector<std::string>& words)
    {
        std::set<Number> numbers;
        for (const std::string& word : from.texts(key)) {
            const auto at = std::find(words.begin(), words.end(), word);
            if (at == words.end())
                from.fault(key, "\"" + word + "\" is not known");
            else
                numbers.insert(static_cast<Number>(at - words.begin() + 1));
        }
        return numbers;
    }
    void readClearance(StrictObject& from)
    {
        Clearance clearance;
        clearance.athlete = athleteIn(from);
        clearance.lift = liftIn(from);
        clearance.method = static_cast<Method>(from.choiceIndex("method", methodWords()) + 1);
        clearance.who = from.neededText("who");
        clearance.day = dayIn(from);
        clearance.until = untilIn(from, clearance.day);
        clearance.approvesMinor = from.flag("approves_minor", false);
        m_season.clearances.push_back(std::move(clearance));
    }
    void readStatus(StrictObject& from)
    {
        DayStatus status;
        status.athlete = athleteIn(from);
        status.who = from.neededText("who");
        status.day = dayIn(from);
        status.until = untilIn(from, status.day);
        status.fitness = static_cast<Fitness>(from.choiceIndex("fitness", {"all", "some", "none"}) + 1);
        status.notMethods = numbersIn<Method>(from, "not_methods", methodWords());
        status.notGroups = numbersIn<LiftGroup>(from, "not_groups", {"squat", "hinge", "press", "pull", "explosive", "one leg"});
        m_season.statuses.push_back(std::move(status));
    }

    const SeasonTexts& m_texts;
    std::chrono::sys_days m_today;
    Faults& m_faults;
    Season m_season;
};

}

const SampleVenue* Season::venue(const std::string& name) const
{
    return find(venues, [&](const SampleVenue& venue) { return venue.venue.name == name; });
}

const SampleItem* Season::item(const std::string& name) const
{
    return find(kit, [&](const SampleItem& item) { return item.item.name == name; });
}

const SamplePerson* Season::person(const std::string& name) const
{
    return find(people, [&](const SamplePerson& person) { return person.athlete.name == name; });
}

Season readSeason(const SeasonTexts& texts, std::chrono::sys_days today, Faults& faults)
{
    return Reader(texts, today, faults).season();
}

}
