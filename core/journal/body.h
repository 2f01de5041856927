// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/clocks.h"
#include "core/journal/ids.h"
#include "core/journal/outcome.h"

#include <string>
#include <vector>

namespace steelyard::journal {

/// What an entry does. Numbers are written down for ever and never used again; 9 to 15 are kept for devices admitted and revoked,
/// a hand-over begun and ended, reports accepted, and members of a group added and removed.
enum class Kind : std::uint16_t {
    FieldSet = 1,     ///< gives a field of a record its value
    Added = 2,        ///< adds a record that is never changed: a set, a measurement
    PutRight = 3,     ///< what an added record should have said
    Removed = 4,      ///< whether a record counts as removed: true or false
    TagAdded = 5,     ///< `part` is the tag
    TagRemoved = 6,   ///< takes back the adding entries that it replaces, and no others
    ClockShifted = 7, ///< moves the shown time of a stretch of a chain
    Erased = 8,       ///< an athlete's bodies go for ever, on every device
};

/// What a record is about. Numbers are written down for ever; a number unknown here is folded all the same.
enum class RecordKind : std::uint16_t {
    Athlete = 1,
    Venue = 2,
    KitItem = 3,
    Setup = 4,
    Measurement = 5,
    Acknowledgement = 6,
    VaultSettings = 7,
    BodySize = 8, ///< mass or height of an athlete at a date
    Chain = 9,    ///< the entries of a device; the id holds the bytes of its OriginId
    Lift = 10,    ///< one that a coach added
    IsometricPull = 11, ///< of an athlete in a lift at a date
    StrengthTest = 12,
    Clearance = 13, ///< that an athlete may do a method with a lift
    DayStatus = 14, ///< how much an athlete may train
    SledSurface = 15, ///< how a sled slides on a surface of a venue
    SledRun = 16, ///< of an athlete with a sled, timed
};

/// The record that an entry is about.
struct Subject {
    RecordKind kind = RecordKind::Athlete;
    RecordId id;

    constexpr bool operator==(const Subject&) const = default;
    constexpr auto operator<=>(const Subject& other) const { return std::tie(kind, id) <=> std::tie(other.kind, other.id); }
};

/// What a use-case wants kept: everything but the time, which is stamped when it is kept.
struct Draft {
    Kind kind = Kind::FieldSet;
    Subject subject;
    std::optional<RecordId> athlete;  ///< whom the record is about; the subject itself where that is an athlete
    std::chrono::sys_days localDay{}; ///< the day at the place where it happened, as typed
    std::string zone;                 ///< of that place, as "Europe/Berlin"; empty when not known
    std::vector<EntryId> replaces;    ///< the heads of the register that the writer saw
    std::uint32_t fieldNumber = 0;    ///< which field of the record; 0 where there is but one thing to say
    std::string part;                 ///< which tag, which lift; mostly empty
    ByteBuffer content;               ///< one deterministic CBOR item, opaque to the journal; empty means null

    bool operator==(const Draft&) const = default;
};

/// What an entry says.
struct Body : Draft {
    Stamp stamp;

    bool operator==(const Body&) const = default;
};

/// Version of the body's layout that is written here.
inline constexpr std::uint32_t bodyVersionNumber = 1;

/// An entry with its header, salt and body takes at most so many bytes.
inline constexpr std::size_t largestEntrySize = 65'536;

/// The draft with its time, in the one form that is written: the athlete named where the subject is one, what it replaces sorted
/// and each once, no content as null.
[[nodiscard]] Body finished(Draft draft, const Stamp& stamp);

/// The body as deterministic CBOR (RFC 8949, 4.2.1): a map with the keys
///   0 version · 1 kind · 2 clock's wall, milliseconds since 1970 · 3 clock's count, absent at 0 · 4 true where doubtful, else absent
///   5 own reading, milliseconds since 1970, absent where it is the wall · 6 subject's kind · 7 subject's id · 8 athlete's id or absent
///   9 local day, days since 1970 · 10 zone, absent when empty · 11 replaced ids, sorted, absent when none · 12 field, absent at 0
///   13 part, absent when empty · 14 content.
/// Refused where it is not in the form that `finished` gives, contradicts itself (see decodeBody) or is too large.
[[nodiscard]] Outcome<ByteBuffer> encodeBody(const Body& body);

/// The other way round. Whatever it accepts, encodeBody writes again byte for byte. Refused besides: a second athlete; an athlete's
/// record that names none or another; content that the kind cannot have; a newer version, an unknown kind or key (kept, not shown).
[[nodiscard]] Outcome<Body> decodeBody(ByteView bytes);

}
