// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/registers.h"
#include "core/season/limits.h"

namespace steelyard {

/// The fields of records, one register each. Numbers are written down for ever and never used again.
namespace field {

inline constexpr std::uint32_t athleteNameNumber = 1, athleteSquadNumber = 2, athleteBirthYearNumber = 3, athleteAgreementNumber = 4,
                               athleteNotesNumber = 5;
/// Bar marks; the part of the register is the lift's number in decimal digits, or the 32 hexadecimal digits of one that was added.
inline constexpr std::uint32_t athleteMarksNumber = 6;
/// What a load is held against; the part is the lift that it is done with, as for marks.
inline constexpr std::uint32_t athleteCapNumber = 7;

inline constexpr std::uint32_t venueNameNumber = 1, venueNotesNumber = 2, venueLaneNumber = 3;

inline constexpr std::uint32_t itemNameNumber = 1, itemPairNumber = 2, itemVenueNumber = 3,
                               itemInspectionNumber = 4, itemBorrowedNumber = 5, itemLentNumber = 6, itemTakenToNumber = 7;
/// Said of a thing that is on a list with nothing measured yet.
inline constexpr std::uint32_t itemKindNumber = 8;

/// The lift's number, or the id of one that was added; and bar, plates and what hangs as one value, because one goes with the other.
inline constexpr std::uint32_t setupLiftNumber = 1, setupLoadNumber = 2;
/// What makes the way down heavier than the way up; taken back where nothing does.
inline constexpr std::uint32_t setupReleaseNumber = 3;

/// Its name; the number of the lift that ships and is like it; 1 from the lifter's own bottom, 2 from the floor.
inline constexpr std::uint32_t liftNameNumber = 1, liftLikeNumber = 2, liftStartNumber = 3;

/// The unit's number in the journal.
inline constexpr std::uint32_t settingsMassUnitNumber = 1, settingsLengthUnitNumber = 2;
/// The coach's own limits: percent, days, and years of age.
inline constexpr std::uint32_t settingsTyrePercentNumber = 3, settingsEccentricPercentNumber = 4, settingsMaximumAgeNumber = 5,
                               settingsBandAgeNumber = 6, settingsHoldPercentNumber = 7, settingsOfAgeNumber = 8;

/// Said of an added record, beside it: that a clearance is taken back, that a day status is lifted. Putting the record right leaves it.
inline constexpr std::uint32_t clearanceTakenBackNumber = 1, statusLiftedNumber = 1;

}

/// A limit as the whole number that is written down.
[[nodiscard]] constexpr std::int64_t limitNumber(int percent) { return percent; }
template <typename Duration>
[[nodiscard]] constexpr std::int64_t limitNumber(const Duration& limit) { return limit.count(); }

/// Each of the coach's own limits with the number of its field.
template <typename Each>
void eachLimit(const Each& each)
{
    each(field::settingsTyrePercentNumber, &CoachLimits::tyrePercent);
    each(field::settingsEccentricPercentNumber, &CoachLimits::eccentricPercent);
    each(field::settingsMaximumAgeNumber, &CoachLimits::maximumAge);
    each(field::settingsBandAgeNumber, &CoachLimits::bandAge);
    each(field::settingsHoldPercentNumber, &CoachLimits::holdPercent);
    each(field::settingsOfAgeNumber, &CoachLimits::ofAge);
}

/// A vault has one set of settings, under the same id everywhere.
inline constexpr RecordId settingsId = [] {
    RecordId id;
    id.bytes.back() = std::byte{1};
    return id;
}();

/// Where a record is written down: its kind and id, and the athlete it is about, who may be the subject.
struct Place {
    journal::Subject subject;
    std::optional<RecordId> athlete;
    bool operator==(const Place&) const = default;
    std::strong_ordering operator<=>(const Place& other) const
    {
        const std::strong_ordering order = subject <=> other.subject;
        return std::is_eq(order) ? athlete <=> other.athlete : order;
    }
};

/// The place that a register belongs to.
[[nodiscard]] inline Place placeOf(const journal::RegisterKey& key) { return {key.subject, key.athlete}; }

/// The place of each kind of record.
[[nodiscard]] inline Place athletePlace(const RecordId& id) { return {{journal::RecordKind::Athlete, id}, id}; }
[[nodiscard]] inline Place venuePlace(const RecordId& id) { return {{journal::RecordKind::Venue, id}, std::nullopt}; }
[[nodiscard]] inline Place liftPlace(const RecordId& id) { return {{journal::RecordKind::Lift, id}, std::nullopt}; }
[[nodiscard]] inline Place itemPlace(const RecordId& id) { return {{journal::RecordKind::KitItem, id}, std::nullopt}; }
[[nodiscard]] inline Place measurementPlace(const RecordId& id) { return {{journal::RecordKind::Measurement, id}, std::nullopt}; }
[[nodiscard]] inline Place settingsPlace() { return {{journal::RecordKind::VaultSettings, settingsId}, std::nullopt}; }
[[nodiscard]] inline Place setupPlace(const RecordId& id, const RecordId& athlete) { return {{journal::RecordKind::Setup, id}, athlete}; }
[[nodiscard]] inline Place isometricPullPlace(const RecordId& id, const RecordId& athlete) { return {{journal::RecordKind::IsometricPull, id}, athlete}; }
[[nodiscard]] inline Place bodySizePlace(const RecordId& id, const RecordId& athlete) { return {{journal::RecordKind::BodySize, id}, athlete}; }
[[nodiscard]] inline Place strengthTestPlace(const RecordId& id, const RecordId& athlete) { return {{journal::RecordKind::StrengthTest, id}, athlete}; }
[[nodiscard]] inline Place clearancePlace(const RecordId& id, const RecordId& athlete) { return {{journal::RecordKind::Clearance, id}, athlete}; }
[[nodiscard]] inline Place dayStatusPlace(const RecordId& id, const RecordId& athlete) { return {{journal::RecordKind::DayStatus, id}, athlete}; }
[[nodiscard]] inline Place sledSurfacePlace(const RecordId& id) { return {{journal::RecordKind::SledSurface, id}, std::nullopt}; }
[[nodiscard]] inline Place sledRunPlace(const RecordId& id, const RecordId& athlete) { return {{journal::RecordKind::SledRun, id}, athlete}; }
/// The athlete is the set-up's.
[[nodiscard]] inline Place acknowledgementPlace(const RecordId& id, const RecordId& athlete)
{
    return {{journal::RecordKind::Acknowledgement, id}, athlete};
}

}
