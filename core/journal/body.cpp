// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/body.h"

#include "core/journal/cbor.h"
#include "core/journal/clockshift.h"
#include "core/journal/entry.h"

#include <algorithm>
#include <limits>

namespace steelyard::journal {

namespace {

enum Key : std::uint64_t {
    VersionKey, KindKey, WallKey, CountKey, DoubtfulKey, ReadingKey, SubjectKindKey, SubjectKey, AthleteKey, DayKey, ZoneKey,
    ReplacesKey, FieldKey, PartKey, ContentKey
};

constexpr std::size_t largestBodySize = largestEntrySize - Header::size - sizeof(Salt);

template <typename Number>
std::optional<Number> numberIn(const CborHead& head)
{
    const std::optional<std::int64_t> number = numberOf(head);
    if (!number || *number < std::numeric_limits<Number>::min() || *number > std::numeric_limits<Number>::max())
        return std::nullopt;
    return static_cast<Number>(*number);
}

std::optional<Instant> instantIn(const CborHead& head)
{
    const std::optional<std::int64_t> number = numberOf(head);
    if (!number)
        return std::nullopt;
    const Instant instant{std::chrono::milliseconds(*number)};
    return instant < earliestInstant || instant > latestInstant ? std::nullopt : std::optional(instant);
}

template <typename Id>
std::optional<Id> idIn(const CborHead& head)
{
    Id id;
    if (head.type != CborType::Bytes || head.bytes.size() != id.bytes.size())
        return std::nullopt;
    seal::copyBytes(head.bytes, id.bytes);
    return id;
}

template <typename Value>
bool put(Value& place, const std::optional<Value>& value)
{
    if (value)
        place = *value;
    return value.has_value();
}

bool readReplaces(CborReader& reader, std::uint64_t count, std::vector<EntryId>& replaces)
{
    for (std::uint64_t i = 0; i < count; ++i) {
        const Outcome<CborHead> head = reader.next();
        const std::optional<EntryId> id = head ? idIn<EntryId>(*head) : std::nullopt;
        if (!id || (!replaces.empty() && *id <= replaces.back()))
            return false;
        replaces.push_back(*id);
    }
    return count > 0;
}

/// One value of the map; nothing where the key is not known here.
std::optional<bool> readValue(CborReader& reader, std::uint64_t key, Body& body, bool& newerKind)
{
    if (key == ContentKey) {
        const Outcome<ByteView> content = reader.nextWhole();
        if (content)
            body.content.assign(content->begin(), content->end());
        return content.ok();
    }
    const Outcome<CborHead> read = reader.next();
    if (!read)
        return false;
    const CborHead& head = *read;
    switch (key) {
    case KindKey: {
        const std::optional<std::uint16_t> kind = numberIn<std::uint16_t>(head);
        newerKind = kind && *kind > static_cast<std::uint16_t>(Kind::Erased);
        body.kind = static_cast<Kind>(kind.value_or(0));
        return kind && *kind != 0;
    }
    case WallKey: return put(body.stamp.clock.wall, instantIn(head));
    case CountKey: return put(body.stamp.clock.count, numberIn<std::uint32_t>(head)) && body.stamp.clock.count != 0;
    case DoubtfulKey: return body.stamp.doubtful = head.type == CborType::True;
    case ReadingKey: return (body.stamp.reading = instantIn(head)).has_value();
    case SubjectKindKey: {
        const std::optional<std::uint16_t> kind = numberIn<std::uint16_t>(head);
        body.subject.kind = static_cast<RecordKind>(kind.value_or(0));
        return kind && *kind != 0;
    }
    case SubjectKey: return put(body.subject.id, idIn<RecordId>(head));
    case AthleteKey: return (body.athlete = idIn<RecordId>(head)).has_value();
    case DayKey: {
        const std::optional<std::int32_t> day = numberIn<std::int32_t>(head);
        body.localDay = std::chrono::sys_days(std::chrono::days(day.value_or(0)));
        return day && std::chrono::abs(body.localDay.time_since_epoch()) <= furthestDay;
    }
    case ZoneKey: return head.count != 0 && put(body.zone, std::optional<std::string>(textOf(head)));
    case ReplacesKey: return head.type == CborType::Array && readReplaces(reader, head.count, body.replaces);
    case FieldKey: return put(body.fieldNumber, numberIn<std::uint32_t>(head)) && body.fieldNumber != 0;
    case PartKey: return head.count != 0 && put(body.part, std::optional<std::string>(textOf(head)));
    default: return std::nullopt;
    }
}

std::optional<CborType> typeOfContent(const Body& body)
{
    const Outcome<CborHead> head = CborReader(body.content).next();
    return head ? std::optional(head->type) : std::nullopt;
}

bool contentFits(const Body& body)
{
    const std::optional<CborType> type = typeOfContent(body);
    switch (body.kind) {
    case Kind::Removed: return type == CborType::True || type == CborType::False;
    case Kind::TagAdded:
    case Kind::TagRemoved:
    case Kind::Erased: return type == CborType::Null;
    case Kind::ClockShifted: return readClockShift(body.content).has_value();
    default: return type.has_value();
    }
}

bool placeFits(const Body& body)
{
    const bool wholeRecord = body.fieldNumber == 0 && body.part.empty();
    switch (body.kind) {
    case Kind::FieldSet: return true;
    case Kind::Added: return wholeRecord && body.replaces.empty();
    case Kind::PutRight:
    case Kind::Removed: return wholeRecord;
    case Kind::TagAdded: return !body.part.empty();
    case Kind::TagRemoved: return !body.part.empty() && !body.replaces.empty();
    case Kind::ClockShifted: return wholeRecord && body.subject.kind == RecordKind::Chain && !body.athlete;
    case Kind::Erased: return wholeRecord && body.replaces.empty() && body.subject.kind == RecordKind::Athlete;
    }
    return false;
}

bool namesOneAthlete(const Body& body)
{
    return body.subject.kind != RecordKind::Athlete || body.athlete == body.subject.id;
}

/// The number of pairs, once the version was found to be ours.
Outcome<std::uint64_t> begin(CborReader& reader)
{
    const Outcome<CborHead> map = reader.next();
    if (!map)
        return map.code();
    if (map->type != CborType::Map || map->count == 0)
        return Code::NotAnEntryRefuse;
    const Outcome<CborHead> key = reader.next();
    if (!key)
        return key.code();
    const Outcome<CborHead> version = reader.next();
    if (!version)
        return version.code();
    if (key->type != CborType::Unsigned || key->count != VersionKey || version->type != CborType::Unsigned || version->count == 0)
        return Code::NotAnEntryRefuse;
    if (version->count > bodyVersionNumber)
        return Code::NewerVersionUpdateApp;
    return map->count;
}

}

Body finished(Draft draft, const Stamp& stamp)
{
    if (draft.subject.kind == RecordKind::Athlete && !draft.athlete)
        draft.athlete = draft.subject.id;
    std::sort(draft.replaces.begin(), draft.replaces.end());
    draft.replaces.erase(std::unique(draft.replaces.begin(), draft.replaces.end()), draft.replaces.end());
    if (draft.content.empty())
        draft.content = CborWriter().null().written();
    return Body{std::move(draft), stamp};
}

Outcome<ByteBuffer> encodeBody(const Body& body)
{
    if (!namesOneAthlete(body))
        return Code::TwoAthletesSplit;
    CborWriter pairs;
    std::size_t count = 0;
    const auto pair = [&pairs, &count](Key key) -> CborWriter& {
        ++count;
        return pairs.unsignedNumber(key);
    };
    const auto milliseconds = [](Instant instant) { return instant.time_since_epoch().count(); };
    pair(VersionKey).unsignedNumber(bodyVersionNumber);
    pair(KindKey).unsignedNumber(static_cast<std::uint16_t>(body.kind));
    pair(WallKey).number(milliseconds(body.stamp.clock.wall));
    if (body.stamp.clock.count != 0)
        pair(CountKey).unsignedNumber(body.stamp.clock.count);
    if (body.stamp.doubtful)
        pair(DoubtfulKey).boolean(true);
    if (body.stamp.reading)
        pair(ReadingKey).number(milliseconds(*body.stamp.reading));
    pair(SubjectKindKey).unsignedNumber(static_cast<std::uint16_t>(body.subject.kind));
    pair(SubjectKey).bytes(body.subject.id.bytes);
    if (body.athlete)
        pair(AthleteKey).bytes(body.athlete->bytes);
    pair(DayKey).number(body.localDay.time_since_epoch().count());
    if (!body.zone.empty())
        pair(ZoneKey).text(body.zone);
    if (!body.replaces.empty()) {
        pair(ReplacesKey).array(body.replaces.size());
        for (const EntryId& id : body.replaces)
            pairs.bytes(id.bytes);
    }
    if (body.fieldNumber != 0)
        pair(FieldKey).unsignedNumber(body.fieldNumber);
    if (!body.part.empty())
        pair(PartKey).text(body.part);
    pair(ContentKey).item(body.content);

    ByteBuffer written = CborWriter().map(count).item(pairs.written()).written();
    if (const Outcome<Body> again = decodeBody(written); !again)
        return again.code();
    return written;
}

Outcome<Body> decodeBody(ByteView bytes)
{
    if (bytes.size() > largestBodySize)
        return Code::TooLargeRefuse;
    CborReader reader(bytes);
    const Outcome<std::uint64_t> count = begin(reader);
    if (!count)
        return count.code();
    if (const Outcome<Done> form = checkCbor(bytes); !form)
        return form.code();

    Body body;
    body.kind = Kind{};
    bool newer = false;
    std::uint64_t keysSeen = 1;
    for (std::uint64_t i = 1; i < *count; ++i) {
        const Outcome<CborHead> key = reader.next();
        if (!key)
            return key.code();
        const std::optional<bool> fits = key->count <= ContentKey ? readValue(reader, key->count, body, newer) : std::nullopt;
        if (!fits)
            return Code::NewerVersionUpdateApp;
        if (!*fits)
            return Code::NotAnEntryRefuse;
        keysSeen |= UINT64_C(1) << key->count;
    }
    for (const Key needed : {KindKey, WallKey, SubjectKindKey, SubjectKey, DayKey, ContentKey}) {
        if (!(keysSeen >> needed & 1))
            return Code::NotAnEntryRefuse;
    }
    if (newer)
        return Code::NewerVersionUpdateApp;
    if (!namesOneAthlete(body))
        return Code::TwoAthletesSplit;
    if (body.stamp.reading == body.stamp.clock.wall || !placeFits(body) || !contentFits(body))
        return Code::NotAnEntryRefuse;
    return body;
}

}
