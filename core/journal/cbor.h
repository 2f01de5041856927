// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/ids.h"
#include "core/journal/outcome.h"

#include <string_view>

namespace steelyard::journal {

/// The kinds of CBOR item (RFC 8949) that entries are made of; there are no others: no float, tag, or item of open length.
enum class CborType : std::uint8_t { Unsigned, Negative, Bytes, Text, Array, Map, False, True, Null };

/// An item without what is inside it. The count is the number itself, n of a negative −1 − n, the length of bytes and texts, or how
/// many items (in a map: pairs) follow.
struct CborHead {
    CborType type = CborType::Null;
    std::uint64_t count = 0;
    ByteView bytes; ///< of bytes and texts
};

/// Lists within lists go no deeper than this.
inline constexpr int deepestLevel = 16;

/// Reads items one after another, and refuses each that could have been written shorter (RFC 8949, 4.2.1) and each text that is
/// no UTF-8. It allocates nothing, whatever the counts claim.
class CborReader {
public:
    explicit CborReader(ByteView bytes) : m_bytes(bytes) {}

    [[nodiscard]] Outcome<CborHead> next();
    /// One item with all that is in it, held to the whole form: keys are unsigned, rising and so each there once.
    [[nodiscard]] Outcome<ByteView> nextWhole() { return nextWhole(deepestLevel); }
    [[nodiscard]] bool atEnd() const { return m_position == m_bytes.size(); }

private:
    Outcome<ByteView> nextWhole(int levels);

    ByteView m_bytes;
    std::size_t m_position = 0;
};

/// Whether the bytes are one item in the form that entries have, and nothing behind it.
[[nodiscard]] Outcome<Done> checkCbor(ByteView bytes);

/// The number of a head that is one and fits.
[[nodiscard]] std::optional<std::int64_t> numberOf(const CborHead& head);
/// The text of a head that is one.
[[nodiscard]] std::optional<std::string_view> textOf(const CborHead& head);

/// Writes items in their shortest form. That counts are kept and keys rise is the caller's to see to.
class CborWriter {
public:
    CborWriter& number(std::int64_t number);
    CborWriter& unsignedNumber(std::uint64_t number);
    CborWriter& bytes(ByteView bytes);
    CborWriter& text(std::string_view text);
    CborWriter& array(std::size_t count);
    CborWriter& map(std::size_t count);
    CborWriter& boolean(bool yes);
    CborWriter& null();
    /// An item that is written already.
    CborWriter& item(ByteView written);

    [[nodiscard]] const ByteBuffer& written() const& { return m_written; }
    [[nodiscard]] ByteBuffer&& written() && { return std::move(m_written); }

private:
    template <typename Encode>
    CborWriter& head(const Encode& encode);

    ByteBuffer m_written;
};

}
