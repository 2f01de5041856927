// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/entry.h"

#include "core/journal/faults.h"

#include <algorithm>

namespace steelyard::journal {

namespace {

constexpr std::size_t incarnationAt = 4, sequenceAt = 8, originAt = 16, previousAt = 32, commitmentAt = 64;
static_assert(commitmentAt + sizeof(Digest) == Header::size);

template <typename Number>
void putNumber(Number number, seal::ByteRoom room)
{
    for (std::size_t i = 0; i < sizeof number; ++i)
        room[i] = static_cast<std::byte>(number >> 8 * (sizeof number - 1 - i));
}

template <typename Number>
Number numberAt(ByteView bytes)
{
    Number number = 0;
    for (std::size_t i = 0; i < sizeof number; ++i)
        number = static_cast<Number>(number << 8 | std::to_integer<Number>(bytes[i]));
    return number;
}

ByteBuffer joined(std::initializer_list<ByteView> parts)
{
    std::size_t size = 0;
    for (const ByteView part : parts)
        size += part.size();
    ByteBuffer bytes(size);
    seal::ByteRoom room(bytes);
    for (const ByteView part : parts) {
        seal::copyBytes(part, room);
        room = room.subspan(part.size());
    }
    return bytes;
}

}

ByteArray<Header::size> encodeHeader(const Header& header)
{
    ByteArray<Header::size> bytes{};
    const seal::ByteRoom room(bytes);
    bytes[0] = std::byte{Header::versionNumber};
    putNumber(header.chain.incarnationNumber, room.subspan(incarnationAt));
    putNumber(header.sequenceNumber, room.subspan(sequenceAt));
    seal::copyBytes(header.chain.origin.bytes, room.subspan(originAt));
    seal::copyBytes(header.previous.bytes, room.subspan(previousAt));
    seal::copyBytes(header.commitment, room.subspan(commitmentAt));
    return bytes;
}

Outcome<Header> decodeHeader(ByteView bytes)
{
    if (bytes.empty())
        return Code::NotAnEntryRefuse;
    if (std::to_integer<std::uint8_t>(bytes[0]) > Header::versionNumber)
        return Code::NewerVersionUpdateApp;
    const auto isZero = [](std::byte b) { return b == std::byte{0}; };
    if (bytes.size() != Header::size || isZero(bytes[0]) || !std::all_of(bytes.begin() + 1, bytes.begin() + incarnationAt, isZero))
        return Code::NotAnEntryRefuse;
    Header header;
    header.chain.incarnationNumber = numberAt<std::uint32_t>(bytes.subspan(incarnationAt));
    header.sequenceNumber = numberAt<std::uint64_t>(bytes.subspan(sequenceAt));
    seal::copyBytes(bytes.subspan(originAt), header.chain.origin.bytes);
    seal::copyBytes(bytes.subspan(previousAt), header.previous.bytes);
    seal::copyBytes(bytes.subspan(commitmentAt), header.commitment);
    if (header.sequenceNumber == 0 || (header.sequenceNumber == 1) != header.previous.isNone())
        return Code::NotAnEntryRefuse;
    return header;
}

EntryId idOf(const Header& header)
{
    return {seal::hash(encodeHeader(header))};
}

Digest commitmentTo(const Payload& payload)
{
    return seal::hash(joined({payload.salt, payload.body}));
}

ByteBuffer encodeEntry(const Entry& entry)
{
    const ByteArray<Header::size> header = encodeHeader(entry.header);
    return entry.payload ? joined({header, entry.payload->salt, entry.payload->body}) : joined({header});
}

Outcome<Entry> decodeEntry(ByteView bytes)
{
    if (bytes.size() > largestEntrySize)
        return Code::TooLargeRefuse;
    const Outcome<Header> header = decodeHeader(bytes.first(std::min(bytes.size(), Header::size)));
    if (!header)
        return header.code();
    Entry entry{*header, std::nullopt};
    const ByteView rest = bytes.subspan(Header::size);
    if (rest.empty())
        return entry;
    if (rest.size() <= sizeof(Salt))
        return Code::NotAnEntryRefuse;
    Payload payload;
    seal::copyBytes(rest, payload.salt);
    payload.body.assign(rest.begin() + sizeof(Salt), rest.end());
    if (commitmentTo(payload) != header->commitment && !planted(Fault::CommitmentUnchecked))
        return Code::CommitmentWrongRefuse;
    entry.payload = std::move(payload);
    return entry;
}

Outcome<Entry> nextEntry(const ChainEnd& end, const Body& body, const seal::RandomSource& random)
{
    Outcome<ByteBuffer> bytes = encodeBody(body);
    if (!bytes)
        return bytes.code();
    Payload payload;
    random(payload.salt);
    payload.body = *std::move(bytes);
    Header header{end.chain, end.sequenceNumber + 1, end.id, commitmentTo(payload)};
    return Entry{header, std::move(payload)};
}

ChainEnd endAt(const Header& header)
{
    return {header.chain, header.sequenceNumber, idOf(header)};
}

Outcome<Held> held(const Entry& entry)
{
    if (!entry.payload)
        return Code::NotAnEntryRefuse;
    Outcome<Body> body = decodeBody(entry.payload->body);
    if (!body)
        return body.code();
    Instant& wall = body->stamp.clock.wall;
    if (planted(Fault::RefusedClocks) && wall > plantedNow + furthestAhead)
        return Code::NotAnEntryRefuse;
    if (planted(Fault::ClampedClocks))
        wall = std::min(wall, plantedNow + furthestAhead);
    return Held{idOf(entry.header), entry.header.chain, entry.header.sequenceNumber, *std::move(body)};
}

}
