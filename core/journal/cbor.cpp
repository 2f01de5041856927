// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/cbor.h"

#include <cbor.h>

namespace steelyard::journal {

namespace {

struct Seen {
    std::optional<CborHead> head;
    Code refused = Code::NotOurCborRefuse;
};

void saw(void* seen, CborType type, std::uint64_t count, ByteView bytes = {})
{
    static_cast<Seen*>(seen)->head = CborHead{type, count, bytes};
}

void refuse(void* seen, Code code)
{
    static_cast<Seen*>(seen)->refused = code;
}

template <typename Number>
void sawUnsigned(void* seen, Number number)
{
    saw(seen, CborType::Unsigned, number);
}

template <typename Number>
void sawNegative(void* seen, Number number)
{
    saw(seen, CborType::Negative, number);
}

ByteView viewOf(cbor_data data, std::size_t length)
{
    return {reinterpret_cast<const std::byte*>(data), length};
}

void openEnded(void* seen)
{
    refuse(seen, Code::NotDeterministicRefuse);
}

cbor_callbacks makeCallbacks()
{
    cbor_callbacks calls = cbor_empty_callbacks;
    calls.uint8 = sawUnsigned<std::uint8_t>;
    calls.uint16 = sawUnsigned<std::uint16_t>;
    calls.uint32 = sawUnsigned<std::uint32_t>;
    calls.uint64 = sawUnsigned<std::uint64_t>;
    calls.negint8 = sawNegative<std::uint8_t>;
    calls.negint16 = sawNegative<std::uint16_t>;
    calls.negint32 = sawNegative<std::uint32_t>;
    calls.negint64 = sawNegative<std::uint64_t>;
    calls.byte_string = [](void* seen, cbor_data data, auto length) { saw(seen, CborType::Bytes, length, viewOf(data, length)); };
    calls.string = [](void* seen, cbor_data data, auto length) { saw(seen, CborType::Text, length, viewOf(data, length)); };
    calls.array_start = [](void* seen, auto count) { saw(seen, CborType::Array, count); };
    calls.map_start = [](void* seen, auto count) { saw(seen, CborType::Map, count); };
    calls.boolean = [](void* seen, bool yes) { saw(seen, yes ? CborType::True : CborType::False, 0); };
    calls.null = [](void* seen) { saw(seen, CborType::Null, 0); };
    calls.byte_string_start = openEnded;
    calls.string_start = openEnded;
    calls.indef_array_start = openEnded;
    calls.indef_map_start = openEnded;
    calls.indef_break = [](void* seen) { refuse(seen, Code::NotCborRefuse); };
    return calls;
}

std::size_t shortestSize(const CborHead& head)
{
    if (head.type >= CborType::False || head.count < 24)
        return 1;
    return head.count <= 0xff ? 2 : head.count <= 0xffff ? 3 : head.count <= 0xffffffff ? 5 : 9;
}

/// RFC 3629, the table of its section 4: no sequence longer than needed, no surrogate, nothing above U+10FFFF.
bool isUtf8(ByteView bytes)
{
    const auto at = [bytes](std::size_t i) { return std::to_integer<unsigned>(bytes[i]); };
    for (std::size_t i = 0; i < bytes.size();) {
        const unsigned first = at(i++);
        if (first < 0x80)
            continue;
        const std::size_t more = first >= 0xf0 ? 3 : first >= 0xe0 ? 2 : 1;
        if (first < 0xc2 || first > 0xf4 || bytes.size() - i < more)
            return false;
        const unsigned lowest = first == 0xe0 ? 0xa0 : first == 0xf0 ? 0x90 : 0x80;
        const unsigned highest = first == 0xed ? 0x9f : first == 0xf4 ? 0x8f : 0xbf;
        if (at(i) < lowest || at(i) > highest)
            return false;
        for (std::size_t k = 1; k < more; ++k) {
            if (at(i + k) >> 6 != 2)
                return false;
        }
        i += more;
    }
    return true;
}

}

Outcome<CborHead> CborReader::next()
{
    static const cbor_callbacks calls = makeCallbacks();
    const ByteView rest = m_bytes.subspan(m_position);
    Seen seen;
    const cbor_decoder_result result = cbor_stream_decode(seal::raw(rest), rest.size(), &calls, &seen);
    if (result.status != CBOR_DECODER_FINISHED)
        return Code::NotCborRefuse;
    if (!seen.head)
        return seen.refused;
    if (result.read - seen.head->bytes.size() != shortestSize(*seen.head))
        return Code::NotDeterministicRefuse;
    if (seen.head->type == CborType::Text && !isUtf8(seen.head->bytes))
        return Code::NotCborRefuse;
    m_position += result.read;
    return *seen.head;
}

Outcome<ByteView> CborReader::nextWhole(int levels)
{
    const std::size_t start = m_position;
    const Outcome<CborHead> head = next();
    if (!head)
        return head.code();
    const bool map = head->type == CborType::Map;
    if (map || head->type == CborType::Array) {
        if (levels == 0)
            return Code::NotOurCborRefuse;
        std::optional<std::uint64_t> before;
        for (std::uint64_t i = 0; i < head->count; ++i) {
            if (map) {
                const Outcome<CborHead> key = next();
                if (!key)
                    return key.code();
                if (key->type != CborType::Unsigned)
                    return Code::NotOurCborRefuse;
                if (before && key->count <= *before)
                    return Code::NotDeterministicRefuse;
                before = key->count;
            }
            if (const Outcome<ByteView> inner = nextWhole(levels - 1); !inner)
                return inner.code();
        }
    }
    return m_bytes.subspan(start, m_position - start);
}

Outcome<Done> checkCbor(ByteView bytes)
{
    CborReader reader(bytes);
    if (const Outcome<ByteView> item = reader.nextWhole(); !item)
        return item.code();
    if (!reader.atEnd())
        return Code::TrailingBytesRefuse;
    return Done{};
}

std::optional<std::int64_t> numberOf(const CborHead& head)
{
    constexpr std::uint64_t highest = INT64_MAX;
    if (head.count > highest)
        return std::nullopt;
    if (head.type == CborType::Unsigned)
        return static_cast<std::int64_t>(head.count);
    if (head.type == CborType::Negative)
        return -1 - static_cast<std::int64_t>(head.count);
    return std::nullopt;
}

std::optional<std::string_view> textOf(const CborHead& head)
{
    if (head.type != CborType::Text)
        return std::nullopt;
    return std::string_view(reinterpret_cast<const char*>(head.bytes.data()), head.bytes.size());
}

template <typename Encode>
CborWriter& CborWriter::head(const Encode& encode)
{
    constexpr std::size_t longestHead = 9;
    const std::size_t before = m_written.size();
    m_written.resize(before + longestHead);
    const std::size_t size = encode(seal::rawRoom(seal::ByteRoom(m_written).subspan(before)), longestHead);
    m_written.resize(before + size);
    return *this;
}

CborWriter& CborWriter::number(std::int64_t number)
{
    if (number >= 0)
        return unsignedNumber(static_cast<std::uint64_t>(number));
    return head([number](unsigned char* room, std::size_t size) { return cbor_encode_negint(static_cast<std::uint64_t>(-1 - number), room, size); });
}

CborWriter& CborWriter::unsignedNumber(std::uint64_t number)
{
    return head([number](unsigned char* room, std::size_t size) { return cbor_encode_uint(number, room, size); });
}

CborWriter& CborWriter::bytes(ByteView bytes)
{
    head([bytes](unsigned char* room, std::size_t size) { return cbor_encode_bytestring_start(bytes.size(), room, size); });
    return item(bytes);
}

CborWriter& CborWriter::text(std::string_view text)
{
    head([text](unsigned char* room, std::size_t size) { return cbor_encode_string_start(text.size(), room, size); });
    return item(seal::bytesOf(text));
}

CborWriter& CborWriter::array(std::size_t count)
{
    return head([count](unsigned char* room, std::size_t size) { return cbor_encode_array_start(count, room, size); });
}

CborWriter& CborWriter::map(std::size_t count)
{
    return head([count](unsigned char* room, std::size_t size) { return cbor_encode_map_start(count, room, size); });
}

CborWriter& CborWriter::boolean(bool yes)
{
    return head([yes](unsigned char* room, std::size_t size) { return cbor_encode_bool(yes, room, size); });
}

CborWriter& CborWriter::null()
{
    return head([](unsigned char* room, std::size_t size) { return cbor_encode_null(room, size); });
}

CborWriter& CborWriter::item(ByteView written)
{
    m_written.insert(m_written.end(), written.begin(), written.end());
    return *this;
}

}
