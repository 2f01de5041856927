// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/ids.h"
#include "core/journal/typed.h"

#include <map>
#include <vector>

namespace steelyard::journal {

/// One value as deterministic CBOR: content of an entry, or a part of it. A text that is no UTF-8 makes an entry that is refused.
[[nodiscard]] ByteBuffer nullItem();
[[nodiscard]] ByteBuffer textItem(std::string_view text);
[[nodiscard]] ByteBuffer numberItem(std::int64_t number);
[[nodiscard]] ByteBuffer flagItem(bool yes);
[[nodiscard]] ByteBuffer idItem(const RecordId& id);
/// [whole number of the base unit, decimal as typed, number of the unit]
[[nodiscard]] ByteBuffer quantityItem(const Typed& typed);
[[nodiscard]] ByteBuffer listItem(const std::vector<ByteBuffer>& items);

/// The value again; nothing where the bytes are something else, or have something behind them.
[[nodiscard]] bool isNull(ByteView item);
[[nodiscard]] std::optional<std::string> textIn(ByteView item);
[[nodiscard]] std::optional<std::int64_t> numberIn(ByteView item);
[[nodiscard]] std::optional<bool> flagIn(ByteView item);
[[nodiscard]] std::optional<RecordId> idIn(ByteView item);
/// Nothing too where the decimal does not come to the number, or the unit is not known here.
[[nodiscard]] std::optional<Typed> quantityIn(ByteView item);
[[nodiscard]] std::optional<std::vector<ByteBuffer>> listIn(ByteView item);

/// Puts a map together from numbered values in any order. What is absent has no key; a key put twice keeps the later value.
class MapWriter {
public:
    MapWriter& put(std::uint32_t keyNumber, ByteBuffer item);
    /// Where there is something: `map.put(3, item.length, quantityItem)`.
    template <typename Value, typename Write>
    MapWriter& put(std::uint32_t keyNumber, const std::optional<Value>& value, const Write& write)
    {
        return value ? put(keyNumber, write(*value)) : *this;
    }
    [[nodiscard]] ByteBuffer item() const;

private:
    std::map<std::uint32_t, ByteBuffer> m_items;
};

/// Takes a map apart. A key that is absent gives nothing and is no fault; one that holds another kind of value gives nothing and
/// makes `fits` false, so that a record of a newer app is not taken for one with a gap.
class MapReader {
public:
    /// Nothing where the bytes are no map in the form that entries have.
    [[nodiscard]] static std::optional<MapReader> of(ByteView item);

    [[nodiscard]] bool has(std::uint32_t keyNumber) const { return m_items.contains(keyNumber); }
    [[nodiscard]] std::vector<std::uint32_t> keyNumbers() const;
    [[nodiscard]] std::optional<std::string> text(std::uint32_t keyNumber) const { return read(keyNumber, textIn); }
    [[nodiscard]] std::optional<std::int64_t> number(std::uint32_t keyNumber) const { return read(keyNumber, numberIn); }
    [[nodiscard]] std::optional<bool> flag(std::uint32_t keyNumber) const { return read(keyNumber, flagIn); }
    [[nodiscard]] std::optional<RecordId> id(std::uint32_t keyNumber) const { return read(keyNumber, idIn); }
    [[nodiscard]] std::optional<Typed> quantity(std::uint32_t keyNumber) const { return read(keyNumber, quantityIn); }
    [[nodiscard]] std::optional<std::vector<ByteBuffer>> list(std::uint32_t keyNumber) const { return read(keyNumber, listIn); }
    [[nodiscard]] std::optional<MapReader> map(std::uint32_t keyNumber) const { return read(keyNumber, of); }
    [[nodiscard]] bool fits() const { return m_fits; }

    /// For a value that is told by other means than those above.
    template <typename Value>
    [[nodiscard]] std::optional<Value> read(std::uint32_t keyNumber, std::optional<Value> (*from)(ByteView)) const
    {
        const auto place = m_items.find(keyNumber);
        if (place == m_items.end())
            return std::nullopt;
        std::optional<Value> value = from(place->second);
        m_fits = m_fits && value.has_value();
        return value;
    }

private:
    std::map<std::uint32_t, ByteBuffer> m_items;
    mutable bool m_fits = true;
};

}
