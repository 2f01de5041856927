// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/keepseason.h"

#include "core/work/implements/keepsleds.h"
#include "core/work/keeping/acknowledge.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/athlete/keepcap.h"
#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/keeping/athlete/keepisometric.h"
#include "core/work/keeping/athlete/keepstatus.h"
#include "core/work/keeping/athlete/keeptest.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/venues/keepvenuekit.h"

#include <algorithm>
#include <unordered_map>

namespace steelyard::sample {

namespace {

/// The season as a list of things to keep, each on its day.
class Keeping {
public:
    Keeping(SeasonKeeping& keeping, const Season& season) : m_keeping(keeping)
    {
        for (const SampleVenue& venue : season.venues)
            add(venue.day, Round::Venues, venue.venue.name, [this, &venue](const WhenTold& told) { keepOne(venue, told); });
        for (const SampleItem& item : season.kit) {
            for (const auto& [day, measured] : item.measurings)
                add(day, Round::Records, item.item.name, [this, &item, &measured = measured](const WhenTold& told) { keepOne(item, measured, told); });
            for (const SledSurface& surface : item.surfaces)
                add(surface.day, Round::AboutRecords, item.item.name + ", surface", [this, &surface](const WhenTold& told) {
                    SledSurface kept = surface;
                    kept.venue = keptAs(surface.venue);
                    kept.sled = keptAs(surface.sled);
                    keepSurface(m_keeping, kept, told);
                });
            if (item.loanDay)
                add(*item.loanDay, Round::AboutRecords, item.item.name + ", loan", [this, &item](const WhenTold& told) { keepLoanOf(item, told); });
        }
        for (const SamplePerson& person : season.people) {
            add(person.day, Round::Records, person.athlete.name, [this, &person](const WhenTold& told) { keepOne(person, told); });
            for (const BodySize& size : person.athlete.sizes)
                add(size.day, Round::AboutRecords, person.athlete.name + ", body size", [this, &person, &size](const WhenTold& told) {
                    keepBodySize(m_keeping, keptAs(person.athlete.id), size, told);
                });
            for (const IsometricPull& pull : person.athlete.pulls)
                add(pull.day, Round::AboutRecords, person.athlete.name + ", isometric pull", [this, &person, &pull](const WhenTold& told) {
                    keepIsometricPull(m_keeping, keptAs(person.athlete.id), pull, told);
                });
            for (const SledRunTimed& run : person.runs)
                add(run.day, Round::AboutRecords, person.athlete.name + ", run with a sled", [this, &person, &run](const WhenTold& told) {
                    SledRunTimed kept = run;
                    kept.athlete = keptAs(person.athlete.id);
                    kept.venue = keptAs(run.venue);
                    kept.sled = keptAs(run.sled);
                    keepSledRun(m_keeping, kept, told);
                });
            for (const auto& [lift, rule] : person.athlete.caps)
                add(person.day, Round::AboutRecords, person.athlete.name + ", cap", [this, &person, lift = lift, rule = rule](const WhenTold& told) {
                    keepCap(m_keeping, keptAs(person.athlete.id), lift, rule, told);
                });
            for (const StrengthTest& test : person.tests)
                add(test.day, Round::AboutRecords, person.athlete.name + ", test of strength", [this, &person, &test](const WhenTold& told) {
                    StrengthTest kept = test;
                    kept.athlete = keptAs(person.athlete.id);
                    keepStrengthTest(m_keeping, kept, told);
                });
        }
        for (const SampleSetup& setup : season.setups) {
            add(setup.saved.day, Round::AboutRecords, "set-up", [this, &setup](const WhenTold& told) { keepOne(setup, told); });
            for (const CautionCode caution : setup.lookedOver)
                add(setup.saved.day, Round::AboutSetups, "look over", [this, &setup, caution](const WhenTold& told) {
                    acknowledge(m_keeping, keptAs(setup.saved.id), caution, told);
                });
        }
        for (const Clearance& clearance : season.clearances)
            add(clearance.day, Round::AboutRecords, "clearance", [this, &clearance](const WhenTold& told) {
                Clearance kept = clearance;
                kept.athlete = keptAs(clearance.athlete);
                keepClearance(m_keeping, kept, told);
            });
        for (const DayStatus& status : season.statuses)
            add(status.day, Round::AboutRecords, "day status", [this, &status](const WhenTold& told) {
                DayStatus kept = status;
                kept.athlete = keptAs(status.athlete);
                keepDayStatus(m_keeping, kept, told);
            });
        std::stable_sort(m_deeds.begin(), m_deeds.end(), [](const OneDeed& a, const OneDeed& b) { return a.when() < b.when(); });
    }

    std::optional<NotKept> run(const Passing& passing)
    {
        std::optional<NotKept> trouble;
        for (auto at = m_deeds.begin(); at != m_deeds.end() && !trouble;) {
            passing.enter(at->day);
            std::size_t waiting = 0;
            for (const auto when = at->when(); at != m_deeds.end() && at->when() == when; ++at) {
                ++waiting;
                at->keep([&waiting, &trouble, &what = at->what](const Told& how) {
                    --waiting;
                    if (!how.kept() && !trouble)
                        trouble = NotKept{what, how};
                });
            }
            while (waiting > 0)
                passing.await();
        }
        return trouble;
    }

private:
    /// What one day's deeds name is kept by the rounds before; those of one round are asked for together.
    enum class Round : std::uint8_t { Venues, Records, AboutRecords, AboutSetups };
    struct OneDeed {
        std::chrono::sys_days day;
        Round round;
        std::string what;
        std::function<void(const WhenTold&)> keep;
        [[nodiscard]] std::pair<std::chrono::sys_days, Round> when() const { return {day, round}; }
    };

    void add(std::chrono::sys_days day, Round round, std::string what, std::function<void(const WhenTold&)> keep)
    {
        m_deeds.push_back({day, round, std::move(what), std::move(keep)});
    }
    /// None for one that was not kept yet, which the use-case then refuses.
    [[nodiscard]] RecordId keptAs(const RecordId& id) const
    {
        const auto at = m_keptAs.find(id);
        return at == m_keptAs.end() ? RecordId{} : at->second;
    }
    [[nodiscard]] WhenTold remember(const RecordId& id, const WhenTold& told)
    {
        return [this, id, told](const Told& how) {
            m_keptAs[id] = how.id;
            told(how);
        };
    }

    void keepOne(const SampleVenue& venue, const WhenTold& told)
    {
        Venue kept = venue.venue;
        kept.id = {};
        keepVenue(m_keeping, std::move(kept), remember(venue.venue.id, told));
    }
    void keepOne(const SampleItem& item, const Measured& measured, const WhenTold& told)
    {
        KitItem kept = item.item;
        kept.id = keptAs(item.item.id);
        kept.venue = keptAs(item.item.venue);
        kept.measurement = measured;
        keepKitItem(m_keeping, std::move(kept), remember(item.item.id, told));
    }
    void keepLoanOf(const SampleItem& item, const WhenTold& told)
    {
        const OnLoan& loan = item.item.lent ? *item.item.lent : *item.item.borrowed;
        keepLoan(m_keeping, keptAs(item.item.id), item.item.lent ? LoanKind::Lent : LoanKind::Borrowed, loan, told);
    }
    void keepOne(const SamplePerson& person, const WhenTold& told)
    {
        Athlete kept = person.athlete;
        kept.id = {};
        kept.sizes.clear();
        kept.pulls.clear();
        for (auto& [lift, marks] : kept.marks)
            for (std::optional<HoleRead>* hole : {&marks.holes.bottom, &marks.holes.zoneFrom, &marks.holes.zoneTo, &marks.holes.top, &marks.holes.rack})
                if (*hole && ((*hole)->rack = keptAs((*hole)->rack)).isNone())
                    return told({{}, Unfit::ItemUnknown, std::nullopt});
        keepAthlete(m_keeping, std::move(kept), remember(person.athlete.id, told));
    }
    void keepOne(const SampleSetup& setup, const WhenTold& told)
    {
        SavedSetup kept = setup.saved;
        kept.id = {};
        kept.athlete = keptAs(setup.saved.athlete);
        for (HungRecord& hung : kept.setup.hung) {
            hung.item = keptAs(hung.item);
            if (hung.item.isNone())
                return told({{}, Unfit::ItemUnknown, std::nullopt});
        }
        std::vector<std::optional<IronWeighed>*> weighed{&kept.setup.bar.barWeighed};
        for (PlatesHere& plates : kept.setup.bar.stock)
            weighed.push_back(&plates.weighed);
        for (std::optional<IronWeighed>* iron : weighed)
            if (*iron && ((*iron)->item = keptAs((*iron)->item)).isNone())
                return told({{}, Unfit::ItemUnknown, std::nullopt});
        keepSetup(m_keeping, std::move(kept), remember(setup.saved.id, told));
    }

    SeasonKeeping& m_keeping;
    std::vector<OneDeed> m_deeds;
    std::unordered_map<RecordId, RecordId> m_keptAs;
};

}

std::optional<NotKept> keepSeason(SeasonKeeping& keeping, const Season& season, const Passing& passing)
{
    return Keeping(keeping, season).run(passing);
}

}
