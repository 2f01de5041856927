// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/seasonbook.h"

#include "core/work/records/codec.h"

#include <algorithm>
#include <utility>

namespace steelyard {

using journal::Held;
using journal::RecordKind;
using journal::RegisterClass;
using journal::RegisterKey;

namespace {

Place placeOf(const RegisterKey& key)
{
    return {key.subject, key.athlete};
}

std::optional<std::chrono::year> yearIn(journal::ByteView content)
{
    const auto number = journal::numberIn(content);
    const bool fits = number && *number >= int(std::chrono::year::min()) && *number <= int(std::chrono::year::max());
    return fits ? std::optional(std::chrono::year(static_cast<int>(*number))) : std::nullopt;
}

template <typename Unit>
std::optional<Unit> amongUnits(journal::ByteView content, std::initializer_list<Unit> units)
{
    const auto number = journal::numberIn(content);
    const auto at = std::find_if(units.begin(), units.end(), [&](Unit unit) { return number == static_cast<std::int64_t>(unitFor(unit)); });
    return at == units.end() ? std::nullopt : std::optional(*at);
}

std::optional<MassUnit> massUnitIn(journal::ByteView content)
{
    return amongUnits(content, {MassUnit::Kilogram, MassUnit::Pound});
}

std::optional<LengthUnit> lengthUnitIn(journal::ByteView content)
{
    return amongUnits(content, {LengthUnit::Centimetre, LengthUnit::Inch});
}

template <typename Value>
const Value* find(const std::map<RecordId, Value>& map, const RecordId& id)
{
    const auto at = map.find(id);
    return at == map.end() ? nullptr : &at->second;
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
             RecordKind::Acknowledgement, RecordKind::VaultSettings, RecordKind::BodySize, RecordKind::Lift}};
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

void SeasonBook::readAll()
{
    m_athletes.clear();
    m_venues.clear();
    m_lifts.clear();
    m_kit.clear();
    m_setups.clear();
    m_acknowledgements.clear();
    m_measurements.clear();
    m_sizes.clear();
    m_settings = {};
    m_unread.clear();
    std::set<Place> places;
    for (const auto& entry : m_fold.registers())
        places.insert(placeOf(entry.first));
    for (const Place& place : places)
        read(place);
}

void SeasonBook::read(const Place& place)
{
    // reading one record may ask for another to be read anew
    const std::size_t outer = std::exchange(m_unreadHereCount, 0);
    readKind(place);
    if (m_unreadHereCount == 0)
        m_unread.erase(place);
    else
        m_unread[place] = m_unreadHereCount;
    m_unreadHereCount = outer;
}

void SeasonBook::readKind(const Place& place)
{
    switch (place.subject.kind) {
    case RecordKind::Athlete: return readAthlete(place);
    case RecordKind::Venue: return readVenue(place);
    case RecordKind::Lift: return readLift(place);
    case RecordKind::KitItem: return readItem(place.subject.id);
    case RecordKind::Setup: return readSetup(place);
    case RecordKind::Measurement: return readMeasurement(place);
    case RecordKind::Acknowledgement: return readAcknowledgement(place);
    case RecordKind::VaultSettings: return readSettings();
    case RecordKind::BodySize: return readBodySize(place);
    case RecordKind::Chain: return;
    }
}

template <typename Value>
std::optional<Value> SeasonBook::value(const Held* entry, std::optional<Value> (*in)(journal::ByteView))
{
    std::optional<Value> value = entry ? in(entry->body.content) : std::nullopt;
    if (entry && !value)
        ++m_unreadHereCount;
    return value;
}

template <typename Value>
std::optional<SeasonBook::Ranked<Value>> SeasonBook::addedValue(const Place& place, std::optional<Value> (*in)(journal::ByteView))
{
    const Held* counts = added(place);
    std::optional<Value> read = value(counts, in);
    if (!read)
        return std::nullopt;
    read->id = place.subject.id;
    read->day = counts->body.localDay;
    const journal::Register* record = m_fold.find(keyOf(RegisterClass::Record, place));
    return Ranked<Value>{std::move(*read), journal::rankOf(record ? *record->winner() : *counts)};
}

std::string SeasonBook::text(const Place& place, std::uint32_t fieldNumber)
{
    return value(said(place, fieldNumber), journal::textIn).value_or(std::string());
}

bool SeasonBook::removed(const Place& place) const
{
    const journal::Register* here = m_fold.find(keyOf(RegisterClass::Removal, place));
    return here && journal::flagIn(here->winner()->body.content).value_or(false);
}

const Held* SeasonBook::added(const Place& place) const
{
    if (removed(place))
        return nullptr;
    for (const RegisterClass holds : {RegisterClass::Correction, RegisterClass::Record})
        if (const journal::Register* here = m_fold.find(keyOf(holds, place)))
            return here->winner();
    return nullptr;
}

SeasonBook::Marks SeasonBook::marksOf(const Place& place)
{
    Marks marks;
    const auto& registers = m_fold.registers();
    RegisterKey key{RegisterClass::Value, place.athlete, place.subject, field::athleteMarksNumber, {}};
    for (auto at = registers.lower_bound(key); at != registers.end(); ++at) {
        key.part = at->first.part;
        if (at->first != key)
            break;
        const auto lift = liftIn(key.part);
        const Held* entry = said(place, key.fieldNumber, key.part);
        if (const auto read = lift ? value(entry, marksIn) : std::nullopt)
            marks[*lift] = *read;
    }
    return marks;
}

void SeasonBook::readAthlete(const Place& place)
{
    Athlete athlete;
    athlete.id = place.subject.id;
    athlete.name = text(place, field::athleteNameNumber);
    if (athlete.name.empty() || removed(place)) {
        m_athletes.erase(athlete.id);
        return;
    }
    athlete.squad = text(place, field::athleteSquadNumber);
    athlete.birthYear = value(said(place, field::athleteBirthYearNumber), yearIn);
    athlete.agreement = value(said(place, field::athleteAgreementNumber), agreementIn);
    athlete.notes = text(place, field::athleteNotesNumber);
    athlete.marks = marksOf(place);
    std::vector<Ranked<BodySize>> sizes;
    for (const auto& [where, size] : m_sizes)
        if (where.athlete == athlete.id)
            sizes.push_back(size);
    std::sort(sizes.begin(), sizes.end(), [](const auto& a, const auto& b) {
        return a.value.day != b.value.day ? a.value.day < b.value.day : a.rank < b.rank;
    });
    for (const auto& size : sizes)
        athlete.sizes.push_back(size.value);
    m_athletes[athlete.id] = std::move(athlete);
}

void SeasonBook::readBodySize(const Place& place)
{
    if (const auto size = addedValue(place, bodySizeIn))
        m_sizes.insert_or_assign(place, *size);
    else
        m_sizes.erase(place);
    if (place.athlete)
        read(athletePlace(*place.athlete));
}

void SeasonBook::readVenue(const Place& place)
{
    Venue venue{place.subject.id, text(place, field::venueNameNumber), text(place, field::venueNotesNumber)};
    if (venue.name.empty() || removed(place))
        m_venues.erase(venue.id);
    else
        m_venues[venue.id] = std::move(venue);
}

void SeasonBook::readLift(const Place& place)
{
    OwnLift lift;
    lift.id = place.subject.id;
    lift.name = text(place, field::liftNameNumber);
    lift.like = value(said(place, field::liftLikeNumber), liftIdIn).value_or(LiftId{});
    lift.start = value(said(place, field::liftStartNumber), liftStartIn).value_or(LiftStart::OwnBottom);
    if (lift.name.empty() || removed(place))
        m_lifts.erase(lift.id);
    else
        m_lifts[lift.id] = std::move(lift);
}

void SeasonBook::readItem(const RecordId& id)
{
    const Place place = itemPlace(id);
    KitRecord record;
    record.item.id = id;
    record.item.name = text(place, field::itemNameNumber);
    std::vector<const Ranked<MeasurementRecord>*> measured;
    for (const auto& [measurement, ranked] : m_measurements)
        if (ranked.value.item == id)
            measured.push_back(&ranked);
    // a thing with nothing measured yet says what it is, one that was measured shows it
    const auto kind = value(said(place, field::itemKindNumber), itemKindIn);
    if (record.item.name.empty() || (measured.empty() && !kind) || removed(place)) {
        m_kit.erase(id);
        return;
    }
    record.item.pair = value(said(place, field::itemPairNumber), journal::flagIn).value_or(true);
    record.item.venue = value(said(place, field::itemVenueNumber), journal::idIn).value_or(RecordId{});
    record.item.inspection = value(said(place, field::itemInspectionNumber), inspectionIn);
    record.item.borrowed = value(said(place, field::itemBorrowedNumber), onLoanIn);
    record.item.lent = value(said(place, field::itemLentNumber), onLoanIn);
    record.item.takenTo = value(said(place, field::itemTakenToNumber), journal::idIn).value_or(RecordId{});
    std::sort(measured.begin(), measured.end(), [](const auto* a, const auto* b) {
        return a->value.day != b->value.day ? a->value.day > b->value.day : a->rank > b->rank;
    });
    for (const auto* ranked : measured)
        record.measurements.push_back(ranked->value);
    record.item.measurement = measured.empty() ? notYetMeasured(*kind) : record.measurements.front().measured;
    m_kit[id] = std::move(record);
}

void SeasonBook::readMeasurement(const Place& place)
{
    const RecordId& id = place.subject.id;
    std::set<RecordId> items;
    if (const auto at = m_measurements.find(id); at != m_measurements.end()) {
        items.insert(at->second.value.item);
        m_measurements.erase(at);
    }
    if (auto measured = addedValue(place, measurementIn)) {
        items.insert(measured->value.item);
        m_measurements.insert_or_assign(id, std::move(*measured));
    }
    for (const RecordId& item : items)
        read(itemPlace(item));
}

void SeasonBook::readSetup(const Place& place)
{
    const auto lift = value(said(place, field::setupLiftNumber), liftIdIn);
    const Held* entry = said(place, field::setupLoadNumber);
    auto load = value(entry, loadIn);
    if (!lift || !load || !place.athlete || removed(place))
        m_setups.erase(place);
    else
        m_setups[place] = {place.subject.id, *place.athlete, *lift, std::move(*load), entry->body.localDay};
}

void SeasonBook::readAcknowledgement(const Place& place)
{
    auto looked = addedValue(place, acknowledgementIn);
    if (!looked || !place.athlete) {
        m_acknowledgements.erase(place);
        return;
    }
    looked->value.athlete = *place.athlete;
    m_acknowledgements[place] = looked->value;
}

void SeasonBook::readSettings()
{
    const Place place = settingsPlace();
    m_settings.mass = value(said(place, field::settingsMassUnitNumber), massUnitIn).value_or(MassUnit::Kilogram);
    m_settings.length = value(said(place, field::settingsLengthUnitNumber), lengthUnitIn).value_or(LengthUnit::Centimetre);
}

}
