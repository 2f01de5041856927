// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/seasonbook.h"

#include "core/work/records/byday.h"
#include "core/work/records/codec.h"
#include "core/work/records/implementcodec.h"
#include "core/work/records/isometriccodec.h"

#include <algorithm>
#include <utility>

namespace steelyard {

using journal::Held;
using journal::RecordKind;
using journal::RegisterClass;
using journal::RegisterKey;

namespace {

std::optional<std::chrono::year> yearIn(journal::ByteView content)
{
    const auto number = journal::numberIn(content);
    const bool fits = number && *number >= int(std::chrono::year::min()) && *number <= int(std::chrono::year::max());
    return fits ? std::optional(std::chrono::year(static_cast<int>(*number))) : std::nullopt;
}

/// Nothing too for a number that such a limit cannot have.
template <typename Limit>
std::optional<Limit> limitIn(journal::ByteView content, std::optional<Limit> CoachLimits::* which)
{
    constexpr std::int64_t most = 10'000;
    const auto number = journal::numberIn(content);
    if (!number || *number < 0 || *number > most)
        return std::nullopt;
    CoachLimits limits;
    limits.*which = Limit(static_cast<int>(*number));
    return canBeLimits(limits) ? limits.*which : std::nullopt;
}

std::optional<SaidSo> lastSaid(const std::vector<std::optional<SaidSo>>& said)
{
    const auto last = std::max_element(said.begin(), said.end(), [](const auto& a, const auto& b) {
        return a.has_value() != b.has_value() ? !a : a && b && a->day < b->day;
    });
    return last == said.end() ? std::nullopt : *last;
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
    m_pulls.clear();
    m_tests.clear();
    m_clearances.clear();
    m_statuses.clear();
    m_runs.clear();
    m_surfaces.clear();
    m_settings = {};
    m_limits = {};
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
    case RecordKind::BodySize: return readAdded(place, bodySizeIn, m_sizes);
    case RecordKind::IsometricPull: return readAdded(place, isometricPullIn, m_pulls);
    case RecordKind::StrengthTest: return readAbout(place, strengthTestIn, m_tests);
    case RecordKind::Clearance: return readClearance(place);
    case RecordKind::DayStatus: return readDayStatus(place);
    case RecordKind::SledRun: return readAbout(place, sledRunIn, m_runs);
    case RecordKind::SledSurface: return readSurface(place);
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

template <typename Value>
std::map<LiftId, Value> SeasonBook::byLift(const Place& place, std::uint32_t fieldNumber, std::optional<Value> (*in)(journal::ByteView))
{
    std::map<LiftId, Value> values;
    const auto& registers = m_fold.registers();
    RegisterKey key{RegisterClass::Value, place.athlete, place.subject, fieldNumber, {}};
    for (auto at = registers.lower_bound(key); at != registers.end(); ++at) {
        key.part = at->first.part;
        if (at->first != key)
            break;
        const auto lift = liftIn(key.part);
        const Held* entry = said(place, key.fieldNumber, key.part);
        if (const auto read = lift ? value(entry, in) : std::nullopt)
            values[*lift] = *read;
    }
    return values;
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
    athlete.marks = byLift(place, field::athleteMarksNumber, marksIn);
    athlete.caps = byLift(place, field::athleteCapNumber, capRuleIn);
    const auto all = [](const auto&) { return true; };
    for (const BodySize* size : byDay(m_sizes, athlete.id, all))
        athlete.sizes.push_back(*size);
    for (const IsometricPull* pull : byDay(m_pulls, athlete.id, all))
        athlete.pulls.push_back(*pull);
    m_athletes[athlete.id] = std::move(athlete);
}

template <typename Value>
void SeasonBook::readAdded(const Place& place, std::optional<Value> (*in)(journal::ByteView), std::map<Place, Ranked<Value>>& list)
{
    if (const auto value = addedValue(place, in))
        list.insert_or_assign(place, *value);
    else
        list.erase(place);
    if (place.athlete)
        read(athletePlace(*place.athlete));
}

void SeasonBook::readVenue(const Place& place)
{
    Venue venue{place.subject.id, text(place, field::venueNameNumber), text(place, field::venueNotesNumber)};
    venue.lane = value(said(place, field::venueLaneNumber), laneIn);
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
    if (!measured.empty())
        record.item.measuredOn = record.measurements.front().day;
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
    if (!lift || !load || !place.athlete || removed(place)) {
        m_setups.erase(place);
        return;
    }
    const Held* release = said(place, field::setupReleaseNumber);
    load->release = value(release, releasePlanIn);
    const auto day = release ? std::max(entry->body.localDay, release->body.localDay) : entry->body.localDay;
    m_setups[place] = {place.subject.id, *place.athlete, *lift, std::move(*load), day};
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

template <typename Value>
void SeasonBook::readAbout(const Place& place, std::optional<Value> (*in)(journal::ByteView), std::map<Place, Ranked<Value>>& list)
{
    auto value = addedValue(place, in);
    if (!value || !place.athlete) {
        list.erase(place);
        return;
    }
    value->value.athlete = *place.athlete;
    list.insert_or_assign(place, std::move(*value));
}

std::vector<std::optional<SaidSo>> SeasonBook::saidSo(const Place& place, std::uint32_t fieldNumber)
{
    std::vector<std::optional<SaidSo>> said;
    const journal::Register* here = m_fold.find({RegisterClass::Value, place.athlete, place.subject, fieldNumber, {}});
    if (here)
        for (const Held& head : here->heads)
            said.push_back(journal::isNull(head.body.content) ? std::nullopt : std::optional(value(&head, saidSoIn).value_or(SaidSo{{}, head.body.localDay})));
    return said;
}

void SeasonBook::readClearance(const Place& place)
{
    auto clearance = addedValue(place, clearanceIn);
    if (!clearance || !place.athlete) {
        m_clearances.erase(place);
        return;
    }
    clearance->value.athlete = *place.athlete;
    // where devices disagree it is taken back until that is settled, and by the last day, because what was given before goes with it
    clearance->value.takenBack = lastSaid(saidSo(place, field::clearanceTakenBackNumber));
    m_clearances.insert_or_assign(place, std::move(*clearance));
}

void SeasonBook::readDayStatus(const Place& place)
{
    const Held* counts = added(place);
    if (!counts || !place.athlete) {
        m_statuses.erase(place);
        return;
    }
    auto status = addedValue(place, dayStatusIn);
    if (!status) {
        // what it forbids is not known, and that it forbids something must not be lost
        status = Ranked<DayStatus>{};
        status->value.id = place.subject.id;
        status->value.day = counts->body.localDay;
        status->value.unread = true;
        status->rank = journal::rankOf(*counts);
    }
    status->value.athlete = *place.athlete;
    // it is lifted once every device says so, and by the last day that one of them says
    const auto said = saidSo(place, field::statusLiftedNumber);
    if (std::all_of(said.begin(), said.end(), [](const auto& each) { return each.has_value(); }))
        status->value.lifted = lastSaid(said);
    m_statuses.insert_or_assign(place, std::move(*status));
}

void SeasonBook::readSurface(const Place& place)
{
    if (auto surface = addedValue(place, sledSurfaceIn))
        m_surfaces.insert_or_assign(place.subject.id, std::move(*surface));
    else
        m_surfaces.erase(place.subject.id);
}

void SeasonBook::readSettings()
{
    const Place place = settingsPlace();
    m_settings.mass = value(said(place, field::settingsMassUnitNumber), massUnitIn).value_or(MassUnit::Kilogram);
    m_settings.length = value(said(place, field::settingsLengthUnitNumber), lengthUnitIn).value_or(LengthUnit::Centimetre);
    eachLimit([this, &place](std::uint32_t fieldNumber, auto which) {
        const Held* entry = said(place, fieldNumber);
        m_limits.*which = entry ? limitIn(entry->body.content, which) : std::nullopt;
        if (entry && !(m_limits.*which))
            ++m_unreadHereCount;
    });
}

}
