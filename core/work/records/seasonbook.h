// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/fold.h"
#include "core/season/athlete.h"
#include "core/season/clearance.h"
#include "core/season/savedsetup.h"
#include "core/season/settings.h"
#include "core/season/sledrecords.h"
#include "core/season/strengthtest.h"
#include "core/season/venue.h"
#include "core/vault/snapshot.h"
#include "core/work/records/fields.h"
#include "core/work/subscription.h"

#include <map>
#include <span>
#include <vector>

namespace steelyard {

/// A thing of the kit with all that was ever measured on it, the last first; its own measurement is that one. Of a list that was copied
/// nothing may be measured yet.
struct KitRecord {
    KitItem item;
    std::vector<MeasurementRecord> measurements;
    bool operator==(const KitRecord&) const = default;
};

/// A register where several devices said different things: the winner first, then the others.
struct Contested {
    journal::RegisterKey key;
    std::vector<journal::Held> heads;
    bool operator==(const Contested&) const = default;
};

/// Everything kept, as records: athletes, venues, kit, set-ups, settings. It is folded by the journal's own fold, so that entries in
/// any order give the same; a record of which something cannot be read here shows the rest.
class SeasonBook {
public:
    /// Kinds of record to ask a vault for.
    [[nodiscard]] static vault::Wanted wanted();

    /// In place of what was there before.
    void load(const vault::Snapshot& snapshot);
    /// Entries that were kept since; told once for all of them.
    void take(std::span<const journal::Held> entries);
    /// Locked: nothing is left.
    void clear();

    /// In the order of their names.
    [[nodiscard]] std::vector<const Athlete*> athletes() const;
    [[nodiscard]] std::vector<const Venue*> venues() const;
    [[nodiscard]] std::vector<const KitRecord*> kit() const;
    /// Those that a coach added.
    [[nodiscard]] std::vector<const OwnLift*> lifts() const;
    /// Of a venue; none: those that belong to no venue that is there.
    [[nodiscard]] std::vector<const KitRecord*> kitAt(const RecordId& venue) const;
    /// Of an athlete, the last day first; and those in which an item hangs, whoever lifts them.
    [[nodiscard]] std::vector<const SavedSetup*> setupsOf(const RecordId& athlete) const;
    [[nodiscard]] std::vector<const SavedSetup*> setupsWith(const RecordId& item) const;
    [[nodiscard]] std::vector<const Acknowledgement*> acknowledgementsOf(const RecordId& setup) const;
    /// Of an athlete, the first day first, and those of one day in the order they were kept: all tests, those of a lift, clearances, and
    /// day status. One that a newer app set is among those, unread.
    [[nodiscard]] std::vector<const StrengthTest*> testsOf(const RecordId& athlete) const;
    [[nodiscard]] std::vector<const StrengthTest*> testsOf(const RecordId& athlete, const LiftId& lift) const;
    [[nodiscard]] std::vector<const Clearance*> clearancesOf(const RecordId& athlete) const;
    [[nodiscard]] std::vector<const DayStatus*> statusesOf(const RecordId& athlete) const;
    [[nodiscard]] std::vector<const SledRunTimed*> runsOf(const RecordId& athlete) const;
    /// Of a venue, by name, then the last day first; those of one day the last kept first.
    [[nodiscard]] std::vector<const SledSurface*> surfacesAt(const RecordId& venue) const;
    /// Those in force on a day.
    [[nodiscard]] std::vector<const DayStatus*> statusOn(const RecordId& athlete, std::chrono::sys_days day) const;
    [[nodiscard]] const VaultSettings& settings() const { return m_settings; }
    [[nodiscard]] const CoachLimits& limits() const { return m_limits; }

    [[nodiscard]] const Athlete* athlete(const RecordId& id) const;
    [[nodiscard]] const Venue* venue(const RecordId& id) const;
    [[nodiscard]] const KitRecord* item(const RecordId& id) const;
    [[nodiscard]] const SavedSetup* setup(const RecordId& id) const;
    [[nodiscard]] const OwnLift* lift(const RecordId& id) const;
    [[nodiscard]] const StrengthTest* test(const Place& place) const;
    [[nodiscard]] const Clearance* clearance(const Place& place) const;
    [[nodiscard]] const DayStatus* status(const Place& place) const;
    [[nodiscard]] const SledRunTimed* run(const Place& place) const;
    [[nodiscard]] const SledSurface* surface(const RecordId& id) const;
    /// Where a lift starts, of those that ship and those that were added; from the lifter's own bottom where it is not known here.
    [[nodiscard]] LiftStart startOf(LiftId which) const;

    /// What waits to be looked at.
    [[nodiscard]] std::vector<Contested> review() const;
    /// Entries that count and cannot be read here: a newer version of the app wrote them.
    [[nodiscard]] std::size_t unreadCount() const;

    /// An added record that was put right: as it was added, and as it stands now; nothing where both say the same.
    struct Righted {
        const journal::Held* first = nullptr;
        const journal::Held* now = nullptr;
    };
    [[nodiscard]] std::optional<Righted> righted(const Place& place) const;

    /// What is said in a field of a record now; nothing where it was never said, or taken back.
    [[nodiscard]] const journal::Held* said(const Place& place, std::uint32_t fieldNumber, const std::string& part = {}) const;
    /// What an entry of this register replaces: the heads that are known now.
    [[nodiscard]] std::vector<journal::EntryId> headsOf(const journal::RegisterKey& key) const;
    [[nodiscard]] const journal::Register* registerOf(const journal::RegisterKey& key) const { return m_fold.find(key); }
    [[nodiscard]] const journal::Fold& fold() const { return m_fold; }

    [[nodiscard]] Subscription onChanged(std::function<void()> told) { return m_listeners.add(std::move(told)); }

private:
    /// An added record with what orders those of one day.
    template <typename Value>
    struct Ranked {
        Value value;
        journal::Rank rank;
    };

    void forget();
    void readAll();
    void read(const Place& place);
    void readKind(const Place& place);
    void readAthlete(const Place& place);
    void readVenue(const Place& place);
    void readLift(const Place& place);
    void readItem(const RecordId& id);
    void readSetup(const Place& place);
    void readSettings();
    void readMeasurement(const Place& place);
    /// An added record of an athlete, who is read anew with it.
    template <typename Value>
    void readAdded(const Place& place, std::optional<Value> (*in)(journal::ByteView), std::map<Place, Ranked<Value>>& list);
    void readAcknowledgement(const Place& place);
    /// The same of one that has its athlete in it.
    template <typename Value>
    void readAbout(const Place& place, std::optional<Value> (*in)(journal::ByteView), std::map<Place, Ranked<Value>>& list);
    void readClearance(const Place& place);
    void readDayStatus(const Place& place);
    void readSurface(const Place& place);
    /// What is said so of a record: by each device that said something.
    [[nodiscard]] std::vector<std::optional<SaidSo>> saidSo(const Place& place, std::uint32_t fieldNumber);

    [[nodiscard]] bool removed(const Place& place) const;
    /// An added record as it counts, the correction before what was added; nothing where it is removed.
    [[nodiscard]] const journal::Held* added(const Place& place) const;
    [[nodiscard]] journal::RegisterKey keyOf(journal::RegisterClass holds, const Place& place) const { return {holds, place.athlete, place.subject, 0, {}}; }
    template <typename Value>
    [[nodiscard]] std::optional<Value> value(const journal::Held* entry, std::optional<Value> (*in)(journal::ByteView));
    template <typename Value>
    [[nodiscard]] std::optional<Ranked<Value>> addedValue(const Place& place, std::optional<Value> (*in)(journal::ByteView));
    [[nodiscard]] std::string text(const Place& place, std::uint32_t fieldNumber);
    /// Each value of a field that has a lift as its part.
    template <typename Value>
    [[nodiscard]] std::map<LiftId, Value> byLift(const Place& place, std::uint32_t fieldNumber, std::optional<Value> (*in)(journal::ByteView));

    journal::Fold m_fold;
    std::map<RecordId, Athlete> m_athletes;
    std::map<RecordId, Venue> m_venues;
    std::map<RecordId, OwnLift> m_lifts;
    std::map<RecordId, KitRecord> m_kit;
    std::map<Place, SavedSetup> m_setups;
    std::map<Place, Acknowledgement> m_acknowledgements;
    std::map<RecordId, Ranked<MeasurementRecord>> m_measurements;
    std::map<Place, Ranked<BodySize>> m_sizes;
    std::map<Place, Ranked<StrengthTest>> m_tests;
    std::map<Place, Ranked<Clearance>> m_clearances;
    std::map<Place, Ranked<DayStatus>> m_statuses;
    std::map<Place, Ranked<IsometricPull>> m_pulls;
    std::map<Place, Ranked<SledRunTimed>> m_runs;
    std::map<RecordId, Ranked<SledSurface>> m_surfaces;
    VaultSettings m_settings;
    CoachLimits m_limits;
    std::map<Place, std::size_t> m_unread;
    std::size_t m_unreadHereCount = 0;
    Listeners m_listeners;
};

}
