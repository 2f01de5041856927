// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/body.h"
#include "core/seal/hash.h"

namespace steelyard::journal {

using seal::Digest;
using seal::Salt;

/// The first part of an entry, of fixed size; it tells neither person, kind nor date. Layout, frozen, whole numbers high byte first:
///   0  version, 1            1  three bytes zero
///   4  incarnation, 4 bytes  8  sequence number, 8 bytes: 1, 2, 3 … without a gap in a chain
///  16  origin, 16 bytes     32  id of the previous entry, 32 bytes, zero for the first
///  64  commitment, 32 bytes: BLAKE2b-256 of salt and body
struct Header {
    static constexpr std::size_t size = 96;
    static constexpr std::uint8_t versionNumber = 1;

    ChainId chain;
    std::uint64_t sequenceNumber = 0;
    EntryId previous;
    Digest commitment{};

    bool operator==(const Header&) const = default;
};

/// The second part, which goes when the athlete is erased; the salt too, so that nobody can try out what the body was.
struct Payload {
    Salt salt{};
    ByteBuffer body; ///< verbatim, also where it is newer than this app

    bool operator==(const Payload&) const = default;
};

/// As it is stored and sent: header, then salt and body, or nothing more where those were erased.
struct Entry {
    Header header;
    std::optional<Payload> payload;

    bool operator==(const Entry&) const = default;
};

/// An entry with its body read, as it is folded and shown.
struct Held {
    EntryId id;
    ChainId chain;
    std::uint64_t sequenceNumber = 0;
    Body body;

    bool operator==(const Held&) const = default;
};

/// Where a chain ends: the next entry goes behind it. Sequence number 0 and no id before the first.
struct ChainEnd {
    ChainId chain;
    std::uint64_t sequenceNumber = 0;
    EntryId id;

    bool operator==(const ChainEnd&) const = default;
};

/// The header's 96 bytes, and what they say. Refused: another length, a sequence number of 0, a first entry with a previous one,
/// a later one without, bytes that have to be zero and are not; a newer version is told apart.
[[nodiscard]] ByteArray<Header::size> encodeHeader(const Header& header);
[[nodiscard]] Outcome<Header> decodeHeader(ByteView bytes);

/// BLAKE2b-256 of the header's bytes.
[[nodiscard]] EntryId idOf(const Header& header);

/// BLAKE2b-256 of salt and body.
[[nodiscard]] Digest commitmentTo(const Payload& payload);

/// The whole entry as bytes, and what they say: refused where header or size are not right, or the commitment does not fit.
/// The body's meaning is not looked at here, so that entries of newer apps are kept and sent on as they are.
[[nodiscard]] ByteBuffer encodeEntry(const Entry& entry);
[[nodiscard]] Outcome<Entry> decodeEntry(ByteView bytes);

/// The next entry of a chain, with a fresh salt.
[[nodiscard]] Outcome<Entry> nextEntry(const ChainEnd& end, const Body& body, const seal::RandomSource& random);

/// The end of the chain once this entry stands there.
[[nodiscard]] ChainEnd endAt(const Header& header);

/// The entry with its body read: NewerVersionUpdateApp where only a newer app can, NotAnEntryRefuse where the body was erased.
[[nodiscard]] Outcome<Held> held(const Entry& entry);

}
