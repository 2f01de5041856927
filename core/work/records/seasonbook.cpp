// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/seasonbook.h"

#include "core/journal/content.h"
#include "core/work/records/byday.h"

#include <algorithm>
#include <utility>

namespace steelyard {

using journal::Held;
using journal::RecordKind;
using journal::RegisterClass;
using journal::RegisterKey;

namespace {

template <typename Value>
const Value* find(const std::map<RecordId, Value>& map, const RecordId& id)
{
    const auto at = map.find(id);
    return at == map.end() ? nullptr : &at->second;
}

template <typename Ranked>
auto find(const std::map<Place, Ranked>& map, const Place& place) -> decltype(&map.begin()->second.value)
{
    const auto at = map.find(place);
    return at == map.end() ? nullptr : &at->second.value;
}

/// The values that `fits` takes, sorted by `before`, and by id where that leaves it open.
template <typename Key, typename Value, typename Fits, typename Before>
std::vector<const Value*> listed(const std::map<Key, Value>& map, const Fits& fits, const Before& before)
{
    std::vector<const Value*> list;
    for (const auto& [key, value] : map)
        if (fits(value))
            list.push_back(&value);
    std::stable_sort(list.begin(), list.end(), [&before](const Value* a, const Value* b) { return before(*a, *b); });
    return list;
}

constexpr auto all = [](const auto&) { return true; };
constexpr auto byName = [](const auto& a, const auto& b) { return a.name < b.name; };
constexpr auto byItemName = [](const KitRecord& a, const KitRecord& b) { return a.item.name < b.item.name; };

}

vault::Wanted SeasonBook::wanted()
{
    return {{RecordKind::Athlete, RecordKind::Venue, RecordKind::KitItem, RecordKind::Setup, RecordKind::Measurement,
             RecordKind::Acknowledgement, RecordKind::VaultSettings, RecordKind::BodySize, RecordKind::Lift, RecordKind::IsometricPull, RecordKind::StrengthTest, RecordKind::Clearance,
             RecordKind::DayStatus, RecordKind::SledSurface, RecordKind::SledRun}};
}

void SeasonBook::load(const vault::Snapshot& snapshot)
{
    forget();
    for (const vault::Head& head : snapshot.heads)
        (void)m_fold.take(head.held);
    for (const Held& held : snapshot.added)
        (void)m_fold.take(held);
    readAll();
    m_listeners.tell();
}

void SeasonBook::take(std::span<const Held> entries)
{
    std::set<Place> changed;
    bool erased = false;
    for (const Held& entry : entries)
        if (const auto key = m_fold.take(entry)) {
            changed.insert(placeOf(*key));
            erased |= key->holds == RegisterClass::Erasure;
        }
    if (changed.empty())
        return;
    if (erased)
        readAll();
    else
        for (const Place& place : changed)
            read(place);
    m_listeners.tell();
}

void SeasonBook::clear()
{
    forget();
    m_listeners.tell();
}

std::vector<const Athlete*> SeasonBook::athletes() const
{
    return listed(m_athletes, all, byName);
}

std::vector<const Venue*> SeasonBook::venues() const
{
    return listed(m_venues, all, byName);
}

std::vector<const OwnLift*> SeasonBook::lifts() const
{
    return listed(m_lifts, all, byName);
}

std::vector<const KitRecord*> SeasonBook::kit() const
{
    return listed(m_kit, all, byItemName);
}

std::vector<const KitRecord*> SeasonBook::kitAt(const RecordId& venue) const
{
    const auto belongs = [this](const RecordId& id) { return m_venues.contains(id) ? id : RecordId{}; };
    return listed(m_kit, [&](const KitRecord& record) { return belongs(record.item.venue) == venue; }, byItemName);
}

std::vector<const SavedSetup*> SeasonBook::setupsOf(const RecordId& athlete) const
{
    return listed(m_setups, [&athlete](const SavedSetup& setup) { return setup.athlete == athlete; },
                  [](const SavedSetup& a, const SavedSetup& b) { return a.day > b.day; });
}

std::vector<const SavedSetup*> SeasonBook::setupsWith(const RecordId& item) const
{
    const auto hangs = [&item](const SavedSetup& setup) {
        return std::any_of(setup.setup.hung.begin(), setup.setup.hung.end(), [&item](const HungRecord& hung) { return hung.item == item; });
    };
    return listed(m_setups, hangs, [](const SavedSetup& a, const SavedSetup& b) { return a.day > b.day; });
}

std::vector<const Acknowledgement*> SeasonBook::acknowledgementsOf(const RecordId& setup) const
{
    return listed(m_acknowledgements, [&setup](const Acknowledgement& looked) { return looked.setup == setup; },
                  [](const Acknowledgement& a, const Acknowledgement& b) { return a.day < b.day; });
}

std::vector<const StrengthTest*> SeasonBook::testsOf(const RecordId& athlete) const
{
    return byDay(m_tests, athlete, all);
}

std::vector<const StrengthTest*> SeasonBook::testsOf(const RecordId& athlete, const LiftId& lift) const
{
    return byDay(m_tests, athlete, [&lift](const StrengthTest& test) { return test.lift == lift; });
}

std::vector<const Clearance*> SeasonBook::clearancesOf(const RecordId& athlete) const
{
    return byDay(m_clearances, athlete, all);
}

std::vector<const DayStatus*> SeasonBook::statusesOf(const RecordId& athlete) const
{
    return byDay(m_statuses, athlete, all);
}

std::vector<const SledRunTimed*> SeasonBook::runsOf(const RecordId& athlete) const
{
    return byDay(m_runs, athlete, all);
}

std::vector<const SledSurface*> SeasonBook::surfacesAt(const RecordId& venue) const
{
    const auto those = listed(m_surfaces, [&venue](const auto& ranked) { return ranked.value.venue == venue; }, [](const auto& a, const auto& b) {
        if (a.value.name != b.value.name)
            return a.value.name < b.value.name;
        return a.value.day != b.value.day ? a.value.day > b.value.day : a.rank > b.rank;
    });
    std::vector<const SledSurface*> surfaces;
    surfaces.reserve(those.size());
    for (const auto* ranked : those)
        surfaces.push_back(&ranked->value);
    return surfaces;
}

std::vector<const DayStatus*> SeasonBook::statusOn(const RecordId& athlete, std::chrono::sys_days day) const
{
    return byDay(m_statuses, athlete, [day](const DayStatus& status) { return holdsOn(status, day); });
}

const StrengthTest* SeasonBook::test(const Place& place) const
{
    return find(m_tests, place);
}

const Clearance* SeasonBook::clearance(const Place& place) const
{
    return find(m_clearances, place);
}

const DayStatus* SeasonBook::status(const Place& place) const
{
    return find(m_statuses, place);
}

const SledRunTimed* SeasonBook::run(const Place& place) const
{
    return find(m_runs, place);
}

const SledSurface* SeasonBook::surface(const RecordId& id) const
{
    const auto* ranked = find(m_surfaces, id);
    return ranked ? &ranked->value : nullptr;
}

const Athlete* SeasonBook::athlete(const RecordId& id) const
{
    return find(m_athletes, id);
}

const Venue* SeasonBook::venue(const RecordId& id) const
{
    return find(m_venues, id);
}

const KitRecord* SeasonBook::item(const RecordId& id) const
{
    return find(m_kit, id);
}

const OwnLift* SeasonBook::lift(const RecordId& id) const
{
    return find(m_lifts, id);
}

LiftStart SeasonBook::startOf(LiftId which) const
{
    const Lift* shipped = shippedLift(which);
    const OwnLift* own = lift(which.own);
    return shipped ? shipped->start : own ? own->start : LiftStart::OwnBottom;
}

const SavedSetup* SeasonBook::setup(const RecordId& id) const
{
    const auto at = std::find_if(m_setups.begin(), m_setups.end(), [&id](const auto& entry) { return entry.second.id == id; });
    return at == m_setups.end() ? nullptr : &at->second;
}

std::vector<Contested> SeasonBook::review() const
{
    std::vector<Contested> contested;
    for (const RegisterKey& key : m_fold.toReview())
        contested.push_back({key, m_fold.find(key)->heads});
    return contested;
}

std::size_t SeasonBook::unreadCount() const
{
    std::size_t count = 0;
    for (const auto& unread : m_unread)
        count += unread.second;
    return count;
}

std::optional<SeasonBook::Righted> SeasonBook::righted(const Place& place) const
{
    const journal::Register* first = m_fold.find(keyOf(RegisterClass::Record, place));
    const journal::Register* now = m_fold.find(keyOf(RegisterClass::Correction, place));
    if (!first || !now)
        return std::nullopt;
    const journal::Body &was = first->winner()->body, &is = now->winner()->body;
    if (was.content == is.content && was.localDay == is.localDay)
        return std::nullopt;
    return Righted{first->winner(), now->winner()};
}

const Held* SeasonBook::said(const Place& place, std::uint32_t fieldNumber, const std::string& part) const
{
    const journal::Register* here = m_fold.find({RegisterClass::Value, place.athlete, place.subject, fieldNumber, part});
    return here && !journal::isNull(here->winner()->body.content) ? here->winner() : nullptr;
}

std::vector<journal::EntryId> SeasonBook::headsOf(const RegisterKey& key) const
{
    std::vector<journal::EntryId> ids;
    if (const journal::Register* here = m_fold.find(key))
        for (const Held& head : here->heads)
            ids.push_back(head.id);
    return ids;
}

void SeasonBook::forget()
{
    m_fold = {};
    readAll();
}

}
