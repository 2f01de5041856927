// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/recordwriter.h"

#include "core/work/records/codec.h"

namespace steelyard {

RecordWriter& RecordWriter::quantity(std::uint32_t keyNumber, const std::optional<journal::Typed>& typed)
{
    m_written = m_written && typed;
    m_map.put(keyNumber, typed, journal::quantityItem);
    return *this;
}

RecordWriter& RecordWriter::mass(std::uint32_t keyNumber, const std::optional<Mass>& mass)
{
    return mass ? quantity(keyNumber, journal::typed(*mass, unitFor(m_typedIn.mass))) : *this;
}

RecordWriter& RecordWriter::lengthIn(std::uint32_t keyNumber, const std::optional<Length>& length, bool fine)
{
    if (!length)
        return *this;
    const bool metric = m_typedIn.length == LengthUnit::Centimetre;
    return quantity(keyNumber, journal::typed(*length, fine && metric ? journal::Unit::Millimetre : unitFor(m_typedIn.length)));
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

std::optional<Mass> RecordReader::mass(std::uint32_t keyNumber)
{
    const auto typed = m_map ? m_map->quantity(keyNumber) : std::nullopt;
    return typed ? std::optional(needed(journal::massOf(*typed))) : std::nullopt;
}

std::optional<Length> RecordReader::length(std::uint32_t keyNumber)
{
    const auto typed = m_map ? m_map->quantity(keyNumber) : std::nullopt;
    return typed ? std::optional(needed(journal::lengthOf(*typed))) : std::nullopt;
}

bool RecordReader::flag(std::uint32_t keyNumber)
{
    return m_map && m_map->flag(keyNumber).value_or(false);
}

}
