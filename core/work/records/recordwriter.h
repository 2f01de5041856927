// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/content.h"
#include "core/measure/entered.h"
#include "core/season/settings.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <utility>

namespace steelyard {

/// The numbers that the values of an enumeration have in the journal.
template <typename Value, std::size_t count>
struct Numbered {
    std::array<std::pair<Value, std::int64_t>, count> pairs;

    [[nodiscard]] std::int64_t numberOf(Value value) const
    {
        return std::find_if(pairs.begin(), pairs.end(), [value](const auto& pair) { return pair.first == value; })->second;
    }
    [[nodiscard]] std::optional<Value> valueOf(std::optional<std::int64_t> number) const
    {
        const auto at = std::find_if(pairs.begin(), pairs.end(), [number](const auto& pair) { return pair.second == number; });
        return at == pairs.end() ? std::nullopt : std::optional(at->first);
    }
};

/// The units that a record is written in where nobody typed a quantity, and whether what was typed is written as it was.
struct WrittenIn {
    WrittenIn() = default;
    WrittenIn(const VaultSettings& settings) : units(settings) {}

    /// For whoever asks what the quantities are and not how they were typed.
    [[nodiscard]] static WrittenIn plain()
    {
        WrittenIn in;
        in.asTyped = false;
        return in;
    }

    VaultSettings units;
    bool asTyped = true;
};

/// Puts a record together; a quantity that cannot be written makes all of it unwritten.
class RecordWriter {
public:
    explicit RecordWriter(const WrittenIn& in) : m_in(in) {}

    RecordWriter& mass(std::uint32_t keyNumber, const std::optional<Entered<Mass>>& mass);
    RecordWriter& length(std::uint32_t keyNumber, const std::optional<Entered<Length>>& length) { return lengthIn(keyNumber, length, false); }
    /// Wires and plates: millimetres where others are centimetres.
    RecordWriter& fine(std::uint32_t keyNumber, const std::optional<Entered<Length>>& length) { return lengthIn(keyNumber, length, true); }
    RecordWriter& volume(std::uint32_t keyNumber, const std::optional<Entered<Volume>>& volume);
    RecordWriter& duration(std::uint32_t keyNumber, const std::optional<Entered<std::chrono::milliseconds>>& duration);
    /// Written only where it is so.
    RecordWriter& flag(std::uint32_t keyNumber, bool yes);
    RecordWriter& number(std::uint32_t keyNumber, std::int64_t number);
    /// Days since 1970.
    RecordWriter& day(std::uint32_t keyNumber, const std::optional<std::chrono::sys_days>& day);
    RecordWriter& id(std::uint32_t keyNumber, const RecordId& id);
    RecordWriter& text(std::uint32_t keyNumber, const std::string& text);
    RecordWriter& part(std::uint32_t keyNumber, const std::optional<journal::ByteBuffer>& content);
    RecordWriter& list(std::uint32_t keyNumber, const std::vector<std::optional<journal::ByteBuffer>>& contents);

    [[nodiscard]] std::optional<journal::ByteBuffer> content() const;

    /// A length by itself, as a field has it.
    [[nodiscard]] static std::optional<journal::ByteBuffer> lengthContent(const Entered<Length>& length, const WrittenIn& in);

private:
    RecordWriter& lengthIn(std::uint32_t keyNumber, const std::optional<Entered<Length>>& length, bool fine);
    template <typename Quantity>
    RecordWriter& quantity(std::uint32_t keyNumber, const Entered<Quantity>& entered, Unit unit);

    WrittenIn m_in;
    journal::MapWriter m_map;
    bool m_written = true;
};

/// Takes a record apart; what is there in another form than expected makes all of it unread.
class RecordReader {
public:
    explicit RecordReader(journal::ByteView content) : m_map(journal::MapReader::of(content)) {}
    explicit RecordReader(std::optional<journal::MapReader> map) : m_map(std::move(map)) {}

    [[nodiscard]] bool is() const { return m_map.has_value(); }
    [[nodiscard]] bool has(std::uint32_t keyNumber) const { return m_map && m_map->has(keyNumber); }
    [[nodiscard]] std::optional<Entered<Mass>> mass(std::uint32_t keyNumber);
    [[nodiscard]] std::optional<Entered<Length>> length(std::uint32_t keyNumber);
    [[nodiscard]] std::optional<Entered<Volume>> volume(std::uint32_t keyNumber);
    [[nodiscard]] std::optional<Entered<std::chrono::milliseconds>> duration(std::uint32_t keyNumber);
    [[nodiscard]] Entered<Mass> neededMass(std::uint32_t keyNumber) { return needed(mass(keyNumber)); }
    [[nodiscard]] Entered<Length> neededLength(std::uint32_t keyNumber) { return needed(length(keyNumber)); }
    /// False where it is not there.
    [[nodiscard]] bool flag(std::uint32_t keyNumber);
    [[nodiscard]] std::int64_t neededNumber(std::uint32_t keyNumber) { return needed(m_map ? m_map->number(keyNumber) : std::nullopt); }
    /// Nothing, and all of it unread, for a day of no year that the calendar has (-32767 to 32767).
    [[nodiscard]] std::optional<std::chrono::sys_days> day(std::uint32_t keyNumber);
    [[nodiscard]] std::chrono::sys_days neededDay(std::uint32_t keyNumber) { return needed(day(keyNumber)); }
    [[nodiscard]] RecordId neededId(std::uint32_t keyNumber) { return needed(m_map ? m_map->id(keyNumber) : std::nullopt); }
    [[nodiscard]] std::string neededText(std::uint32_t keyNumber) { return needed(m_map ? m_map->text(keyNumber) : std::nullopt); }
    [[nodiscard]] RecordReader part(std::uint32_t keyNumber) { return RecordReader(m_map ? m_map->map(keyNumber) : std::nullopt); }
    /// Each item, a map, read by `read`; none where there is no list.
    template <typename Value>
    [[nodiscard]] std::vector<Value> list(std::uint32_t keyNumber, std::optional<Value> (*read)(RecordReader))
    {
        return eachOf<Value>(keyNumber, [read](const journal::ByteBuffer& item) { return read(RecordReader(item)); });
    }
    /// The same for items that are something else.
    template <typename Value>
    [[nodiscard]] std::vector<Value> list(std::uint32_t keyNumber, std::optional<Value> (*read)(journal::ByteView))
    {
        return eachOf<Value>(keyNumber, [read](const journal::ByteBuffer& item) { return read(item); });
    }
    /// What a function of its own reads.
    template <typename Value>
    [[nodiscard]] Value neededItem(std::uint32_t keyNumber, std::optional<Value> (*read)(journal::ByteView))
    {
        return needed(m_map ? m_map->read(keyNumber, read) : std::nullopt);
    }
    /// For a record of which half would be another one: all of it is unread where there is a key behind the last one known.
    void endsAt(std::uint32_t lastKeyNumber);
    /// The value of an enumeration by its number.
    template <typename Value, std::size_t count>
    [[nodiscard]] Value among(std::uint32_t keyNumber, const Numbered<Value, count>& values)
    {
        return needed(values.valueOf(neededNumber(keyNumber)));
    }
    template <typename Value>
    [[nodiscard]] Value needed(const std::optional<Value>& value)
    {
        m_read = m_read && value.has_value();
        return value.value_or(Value{});
    }
    /// Whether all that was asked for was there in the form expected.
    [[nodiscard]] bool fits() const { return m_map && m_read && m_map->fits(); }

private:
    template <typename Value, typename Read>
    std::vector<Value> eachOf(std::uint32_t keyNumber, const Read& read)
    {
        std::vector<Value> values;
        if (const auto items = m_map ? m_map->list(keyNumber) : std::nullopt)
            for (const journal::ByteBuffer& item : *items)
                values.push_back(needed(read(item)));
        return values;
    }

    std::optional<journal::MapReader> m_map;
    bool m_read = true;
};

/// The value, where all of it was there.
template <typename Value>
std::optional<Value> ifRead(const RecordReader& reader, Value value)
{
    return reader.fits() ? std::optional(std::move(value)) : std::nullopt;
}

}
