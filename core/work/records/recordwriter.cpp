// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/recordwriter.h"

#include "core/work/records/codec.h"

namespace steelyard {

namespace {

/// What was typed, unless the quantity is another one by now.
template <typename Quantity>
std::optional<journal::Typed> asTyped(const Entered<Quantity>& entered)
{
    if (!entered.typed())
        return std::nullopt;
    const auto typed = journal::typed(entered.typed()->decimal.text(), entered.typed()->unit);
    const auto same = journal::typed(entered.quantity(), entered.typed()->unit);
    return typed && same && typed->baseNumber == same->baseNumber ? typed : std::nullopt;
}

template <typename Quantity>
Entered<Quantity> entered(const Quantity& quantity, const journal::Typed& typed)
{
    return {quantity, AsTyped{typed.decimal, typed.unit}};
}

/// As it was typed, else with the fewest decimals in the unit.
template <typename Quantity>
std::optional<journal::Typed> writtenAs(const Entered<Quantity>& entered, const WrittenIn& in, Unit unit)
{
    const auto typed = in.asTyped ? asTyped(entered) : std::nullopt;
    return typed ? typed : journal::typed(entered.quantity(), unit);
}

}

template <typename Quantity>
RecordWriter& RecordWriter::quantity(std::uint32_t keyNumber, const Entered<Quantity>& entered, Unit unit)
{
    const auto typed = writtenAs(entered, m_in, unit);
    m_written = m_written && typed;
    m_map.put(keyNumber, typed, journal::quantityItem);
    return *this;
}

RecordWriter& RecordWriter::mass(std::uint32_t keyNumber, const std::optional<Entered<Mass>>& mass)
{
    return mass ? quantity(keyNumber, *mass, unitFor(m_in.units.mass)) : *this;
}

RecordWriter& RecordWriter::lengthIn(std::uint32_t keyNumber, const std::optional<Entered<Length>>& length, bool fine)
{
    if (!length)
        return *this;
    const bool metric = m_in.units.length == LengthUnit::Centimetre;
    return quantity(keyNumber, *length, fine && metric ? Unit::Millimetre : unitFor(m_in.units.length));
}

RecordWriter& RecordWriter::volume(std::uint32_t keyNumber, const std::optional<Entered<Volume>>& volume)
{
    return volume ? quantity(keyNumber, *volume, Unit::Litre) : *this;
}

RecordWriter& RecordWriter::duration(std::uint32_t keyNumber, const std::optional<Entered<std::chrono::milliseconds>>& duration)
{
    return duration ? quantity(keyNumber, *duration, Unit::Second) : *this;
}

RecordWriter& RecordWriter::flag(std::uint32_t keyNumber, bool yes)
{
    if (yes)
        m_map.put(keyNumber, journal::flagItem(true));
    return *this;
}

RecordWriter& RecordWriter::number(std::uint32_t keyNumber, std::int64_t number)
{
    m_map.put(keyNumber, journal::numberItem(number));
    return *this;
}

RecordWriter& RecordWriter::day(std::uint32_t keyNumber, const std::optional<std::chrono::sys_days>& day)
{
    return day ? number(keyNumber, day->time_since_epoch().count()) : *this;
}

RecordWriter& RecordWriter::id(std::uint32_t keyNumber, const RecordId& id)
{
    m_map.put(keyNumber, journal::idItem(id));
    return *this;
}

RecordWriter& RecordWriter::text(std::uint32_t keyNumber, const std::string& text)
{
    m_map.put(keyNumber, journal::textItem(text));
    return *this;
}

RecordWriter& RecordWriter::part(std::uint32_t keyNumber, const std::optional<journal::ByteBuffer>& content)
{
    m_written = m_written && content;
    if (content)
        m_map.put(keyNumber, *content);
    return *this;
}

RecordWriter& RecordWriter::list(std::uint32_t keyNumber, const std::vector<std::optional<journal::ByteBuffer>>& contents)
{
    std::vector<journal::ByteBuffer> items;
    for (const auto& content : contents) {
        m_written = m_written && content;
        if (content)
            items.push_back(*content);
    }
    m_map.put(keyNumber, journal::listItem(items));
    return *this;
}

std::optional<journal::ByteBuffer> RecordWriter::content() const
{
    return m_written ? std::optional(m_map.item()) : std::nullopt;
}

std::optional<journal::ByteBuffer> RecordWriter::lengthContent(const Entered<Length>& length, const WrittenIn& in)
{
    const auto typed = writtenAs(length, in, unitFor(in.units.length));
    return typed ? std::optional(journal::quantityItem(*typed)) : std::nullopt;
}

std::optional<Entered<Mass>> RecordReader::mass(std::uint32_t keyNumber)
{
    const auto typed = m_map ? m_map->quantity(keyNumber) : std::nullopt;
    return typed ? std::optional(entered(needed(journal::massOf(*typed)), *typed)) : std::nullopt;
}

std::optional<Entered<Length>> RecordReader::length(std::uint32_t keyNumber)
{
    const auto typed = m_map ? m_map->quantity(keyNumber) : std::nullopt;
    return typed ? std::optional(entered(needed(journal::lengthOf(*typed)), *typed)) : std::nullopt;
}

std::optional<Entered<Volume>> RecordReader::volume(std::uint32_t keyNumber)
{
    const auto typed = m_map ? m_map->quantity(keyNumber) : std::nullopt;
    return typed ? std::optional(entered(needed(journal::volumeOf(*typed)), *typed)) : std::nullopt;
}

std::optional<Entered<std::chrono::milliseconds>> RecordReader::duration(std::uint32_t keyNumber)
{
    const auto typed = m_map ? m_map->quantity(keyNumber) : std::nullopt;
    return typed ? std::optional(entered(needed(journal::durationOf(*typed)), *typed)) : std::nullopt;
}

std::optional<std::chrono::sys_days> RecordReader::day(std::uint32_t keyNumber)
{
    using std::chrono::year, std::chrono::sys_days;
    constexpr sys_days first = year::min() / std::chrono::January / 1, last = year::max() / std::chrono::December / 31;
    const auto number = m_map ? m_map->number(keyNumber) : std::nullopt;
    if (!number)
        return std::nullopt;
    const bool fits = *number >= first.time_since_epoch().count() && *number <= last.time_since_epoch().count();
    return std::optional(needed(fits ? std::optional(sys_days(std::chrono::days(static_cast<int>(*number)))) : std::nullopt));
}

void RecordReader::endsAt(std::uint32_t lastKeyNumber)
{
    const auto keys = m_map ? m_map->keyNumbers() : std::vector<std::uint32_t>();
    m_read = m_read && std::all_of(keys.begin(), keys.end(), [lastKeyNumber](std::uint32_t key) { return key >= 1 && key <= lastKeyNumber; });
}

bool RecordReader::flag(std::uint32_t keyNumber)
{
    return m_map && m_map->flag(keyNumber).value_or(false);
}

}
