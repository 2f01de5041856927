// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/putright.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"

#include <algorithm>

namespace steelyard {

namespace {

template <typename List>
auto found(const List& list, const RecordId& id)
{
    return std::find_if(list.begin(), list.end(), [&id](const auto& record) { return record.id == id; });
}

/// A day ahead that stood there already came from a clock that was wrong, and is no reason to leave the value wrong too.
bool movedAhead(std::chrono::sys_days day, std::chrono::sys_days before, std::chrono::sys_days today)
{
    return day > today && day != before;
}

bool isThere(const SeasonBook& book, const Place& place)
{
    const RecordId& id = place.subject.id;
    switch (place.subject.kind) {
    case journal::RecordKind::Athlete: return book.athlete(id);
    case journal::RecordKind::Venue: return book.venue(id);
    case journal::RecordKind::KitItem: return book.item(id);
    case journal::RecordKind::Lift: return book.lift(id);
    case journal::RecordKind::Setup: return book.setup(id) && place.athlete == book.setup(id)->athlete;
    case journal::RecordKind::IsometricPull: {
        const Athlete* athlete = place.athlete ? book.athlete(*place.athlete) : nullptr;
        return athlete && found(athlete->pulls, id) != athlete->pulls.end();
    }
    case journal::RecordKind::BodySize: {
        const Athlete* athlete = place.athlete ? book.athlete(*place.athlete) : nullptr;
        return athlete && found(athlete->sizes, id) != athlete->sizes.end();
    }
    case journal::RecordKind::Measurement: {
        const auto kit = book.kit();
        return std::any_of(kit.begin(), kit.end(), [&id](const KitRecord* record) {
            return found(record->measurements, id) != record->measurements.end();
        });
    }
    case journal::RecordKind::StrengthTest: return book.test(place);
    case journal::RecordKind::Clearance: return book.clearance(place);
    case journal::RecordKind::DayStatus: return book.status(place);
    case journal::RecordKind::SledRun: return book.run(place);
    case journal::RecordKind::SledSurface: return book.surface(id);
    default: return false;
    }
}

bool isOnly(const SeasonBook& book, const RecordId& measurement)
{
    const auto kit = book.kit();
    return std::any_of(kit.begin(), kit.end(), [&measurement](const KitRecord* record) {
        return record->measurements.size() == 1 && record->measurements.front().id == measurement;
    });
}

}

void keepRight(SeasonKeeping& keeping, const Place& place, std::chrono::sys_days day, const Content& content, const WhenTold& told)
{
    if (!content)
        return told({place.subject.id, Unfit::QuantityUnfit, std::nullopt});
    Drafting drafting(keeping);
    drafting.putRight(place, day, *content);
    keeping.keep(Deed::PutRight, place.subject.id, std::move(drafting).drafts(), told);
}

void putBodySizeRight(SeasonKeeping& keeping, const RecordId& athlete, const BodySize& size, const WhenTold& told)
{
    const Place place = bodySizePlace(size.id, athlete);
    if (!isThere(keeping.book(), place))
        return told({size.id, Unfit::RecordUnknown, std::nullopt});
    if (movedAhead(size.day, found(keeping.book().athlete(athlete)->sizes, size.id)->day, keeping.here().day))
        return told({size.id, Unfit::DayAhead, std::nullopt});
    if (!size.mass && !size.height)
        return told({size.id, Unfit::NothingMeasured, std::nullopt});
    keepRight(keeping, place, size.day, fits(size.mass) && fits(size.height) ? contentOf(size, keeping.book().settings()) : std::nullopt, told);
}

void putMeasurementRight(SeasonKeeping& keeping, const MeasurementRecord& record, const WhenTold& told)
{
    const KitRecord* known = keeping.book().item(record.item);
    if (!known || found(known->measurements, record.id) == known->measurements.end())
        return told({record.id, Unfit::RecordUnknown, std::nullopt});
    if (movedAhead(record.day, found(known->measurements, record.id)->day, keeping.here().day))
        return told({record.id, Unfit::DayAhead, std::nullopt});
    keepRight(keeping, measurementPlace(record.id), record.day, contentOf(record, keeping.book().settings()), told);
}

std::vector<const SavedSetup*> setupsChangedBy(const SeasonBook& book, const RecordId& item, const RecordId& measurement,
                                               const std::optional<MeasurementRecord>& right)
{
    const KitRecord* known = book.item(item);
    if (!known)
        return {};
    std::vector<MeasurementRecord> next = known->measurements;
    std::erase_if(next, [&measurement](const MeasurementRecord& record) { return record.id == measurement; });
    if (right)
        next.push_back(*right);
    // of one day the one that was added last counts
    const auto added = [&book](const MeasurementRecord& record) {
        const journal::Register* here = book.registerOf({journal::RegisterClass::Record, std::nullopt, measurementPlace(record.id).subject, 0, {}});
        return here ? journal::rankOf(*here->winner()) : journal::Rank{};
    };
    const auto last = std::max_element(next.begin(), next.end(), [&added](const MeasurementRecord& a, const MeasurementRecord& b) {
        return a.day != b.day ? a.day < b.day : added(a) < added(b);
    });
    const bool same = last != next.end() && last->measured == known->item.measurement;
    return same ? std::vector<const SavedSetup*>() : book.setupsWith(item);
}

void takeOut(SeasonKeeping& keeping, const Place& place, const WhenTold& told)
{
    if (!isThere(keeping.book(), place))
        return told({place.subject.id, Unfit::RecordUnknown, std::nullopt});
    if (place.subject.kind == journal::RecordKind::Measurement && isOnly(keeping.book(), place.subject.id))
        return told({place.subject.id, Unfit::OnlyMeasurement, std::nullopt});
    Drafting drafting(keeping);
    drafting.remove(place, true);
    keeping.keep(Deed::TakenOut, place.subject.id, std::move(drafting).drafts(), told);
}

void settle(SeasonKeeping& keeping, const Contested& contested, const journal::EntryId& chosen, const WhenTold& told)
{
    const RecordId& id = contested.key.subject.id;
    const journal::Register* now = keeping.book().registerOf(contested.key);
    const auto head = std::find_if(contested.heads.begin(), contested.heads.end(), [&chosen](const journal::Held& h) { return h.id == chosen; });
    if (!now || head == contested.heads.end())
        return told({id, Unfit::RecordUnknown, std::nullopt});
    if (now->heads != contested.heads)
        return told({id, Unfit::ChangedSince, std::nullopt});
    Drafting drafting(keeping);
    drafting.again(*head, &*head);
    keeping.keep(Deed::Settled, id, std::move(drafting).drafts(), told);
}

}
