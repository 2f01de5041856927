// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/putright.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"

#include <algorithm>

namespace steelyard {

namespace {

void keepRight(SeasonKeeping& keeping, const Place& place, std::chrono::sys_days day, const Content& content, const WhenTold& told)
{
    if (!content)
        return told({place.subject.id, Unfit::QuantityUnfit, std::nullopt});
    Drafting drafting(keeping);
    drafting.putRight(place, day, *content);
    keeping.keep(Deed::PutRight, place.subject.id, std::move(drafting).drafts(), told);
}

template <typename List>
auto found(const List& list, const RecordId& id)
{
    return std::find_if(list.begin(), list.end(), [&id](const auto& record) { return record.id == id; });
}

bool isThere(const SeasonBook& book, const Place& place)
{
    const RecordId& id = place.subject.id;
    switch (place.subject.kind) {
    case journal::RecordKind::Athlete: return book.athlete(id);
    case journal::RecordKind::Venue: return book.venue(id);
    case journal::RecordKind::KitItem: return book.item(id);
    case journal::RecordKind::Setup: return book.setup(id) && place.athlete == book.setup(id)->athlete;
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
    default: return false;
    }
}

}

void putBodySizeRight(SeasonKeeping& keeping, const RecordId& athlete, const BodySize& size, const WhenTold& told)
{
    const Place place = bodySizePlace(size.id, athlete);
    if (!isThere(keeping.book(), place))
        return told({size.id, Unfit::RecordUnknown, std::nullopt});
    if (!size.mass && !size.height)
        return told({size.id, Unfit::NothingMeasured, std::nullopt});
    keepRight(keeping, place, size.day, fits(size.mass) && fits(size.height) ? contentOf(size, keeping.book().settings()) : std::nullopt, told);
}

void putMeasurementRight(SeasonKeeping& keeping, const MeasurementRecord& record, const WhenTold& told)
{
    const KitRecord* known = keeping.book().item(record.item);
    if (!known || found(known->measurements, record.id) == known->measurements.end())
        return told({record.id, Unfit::RecordUnknown, std::nullopt});
    keepRight(keeping, measurementPlace(record.id), record.day, contentOf(record, keeping.book().settings()), told);
}

void takeOut(SeasonKeeping& keeping, const Place& place, const WhenTold& told)
{
    if (!isThere(keeping.book(), place))
        return told({place.subject.id, Unfit::RecordUnknown, std::nullopt});
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
