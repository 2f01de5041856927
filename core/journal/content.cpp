// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/content.h"

#include "core/journal/cbor.h"

#include <limits>

namespace steelyard::journal {

namespace {

/// The head of an item that has nothing in it or behind it.
std::optional<CborHead> onlyHead(ByteView item)
{
    CborReader reader(item);
    const Outcome<CborHead> head = reader.next();
    return head && reader.atEnd() ? std::optional(*head) : std::nullopt;
}

}

ByteBuffer nullItem()
{
    return CborWriter().null().written();
}

ByteBuffer textItem(std::string_view text)
{
    return CborWriter().text(text).written();
}

ByteBuffer numberItem(std::int64_t number)
{
    return CborWriter().number(number).written();
}

ByteBuffer flagItem(bool yes)
{
    return CborWriter().boolean(yes).written();
}

ByteBuffer idItem(const RecordId& id)
{
    return CborWriter().bytes(id.bytes).written();
}

ByteBuffer quantityItem(const Typed& typed)
{
    return listItem({numberItem(typed.baseNumber), textItem(typed.decimal), numberItem(static_cast<std::uint16_t>(typed.unit))});
}

ByteBuffer listItem(const std::vector<ByteBuffer>& items)
{
    CborWriter writer;
    writer.array(items.size());
    for (const ByteBuffer& item : items)
        writer.item(item);
    return writer.written();
}

bool isNull(ByteView item)
{
    const std::optional<CborHead> head = onlyHead(item);
    return head && head->type == CborType::Null;
}

std::optional<std::string> textIn(ByteView item)
{
    const std::optional<CborHead> head = onlyHead(item);
    const std::optional<std::string_view> text = head ? textOf(*head) : std::nullopt;
    return text ? std::optional<std::string>(*text) : std::nullopt;
}

std::optional<std::int64_t> numberIn(ByteView item)
{
    const std::optional<CborHead> head = onlyHead(item);
    return head ? numberOf(*head) : std::nullopt;
}

std::optional<bool> flagIn(ByteView item)
{
    const std::optional<CborHead> head = onlyHead(item);
    if (!head || (head->type != CborType::True && head->type != CborType::False))
        return std::nullopt;
    return head->type == CborType::True;
}

std::optional<RecordId> idIn(ByteView item)
{
    const std::optional<CborHead> head = onlyHead(item);
    RecordId id;
    if (!head || head->type != CborType::Bytes || head->bytes.size() != id.bytes.size())
        return std::nullopt;
    seal::copyBytes(head->bytes, id.bytes);
    return id;
}

std::optional<Typed> quantityIn(ByteView item)
{
    const std::optional<std::vector<ByteBuffer>> parts = listIn(item);
    if (!parts || parts->size() != 3)
        return std::nullopt;
    const std::optional<std::int64_t> base = numberIn((*parts)[0]), unitNumber = numberIn((*parts)[2]);
    const std::optional<std::string> decimal = textIn((*parts)[1]);
    if (!base || !decimal || !unitNumber)
        return std::nullopt;
    const std::optional<Unit> unit = unitOf(static_cast<std::uint64_t>(*unitNumber));
    std::optional<Typed> quantity = unit ? typed(*decimal, *unit) : std::nullopt;
    return quantity && quantity->baseNumber == *base ? quantity : std::nullopt;
}

std::optional<std::vector<ByteBuffer>> listIn(ByteView item)
{
    CborReader reader(item);
    const Outcome<CborHead> head = reader.next();
    if (!head || head->type != CborType::Array)
        return std::nullopt;
    std::vector<ByteBuffer> items;
    for (std::uint64_t i = 0; i < head->count; ++i) {
        const Outcome<ByteView> inner = reader.nextWhole();
        if (!inner)
            return std::nullopt;
        items.emplace_back(inner->begin(), inner->end());
    }
    return reader.atEnd() ? std::optional(std::move(items)) : std::nullopt;
}

MapWriter& MapWriter::put(std::uint32_t keyNumber, ByteBuffer item)
{
    m_items[keyNumber] = std::move(item);
    return *this;
}

ByteBuffer MapWriter::item() const
{
    CborWriter writer;
    writer.map(m_items.size());
    for (const auto& [keyNumber, item] : m_items)
        writer.unsignedNumber(keyNumber).item(item);
    return writer.written();
}

std::optional<MapReader> MapReader::of(ByteView item)
{
    if (!checkCbor(item))
        return std::nullopt;
    CborReader reader(item);
    const Outcome<CborHead> head = reader.next();
    if (!head || head->type != CborType::Map)
        return std::nullopt;
    MapReader map;
    for (std::uint64_t i = 0; i < head->count; ++i) {
        const Outcome<CborHead> key = reader.next();
        const Outcome<ByteView> value = reader.nextWhole();
        if (!key || !value || key->count > std::numeric_limits<std::uint32_t>::max())
            return std::nullopt;
        map.m_items.emplace(static_cast<std::uint32_t>(key->count), ByteBuffer(value->begin(), value->end()));
    }
    return map;
}

std::vector<std::uint32_t> MapReader::keyNumbers() const
{
    std::vector<std::uint32_t> numbers;
    for (const auto& [keyNumber, item] : m_items)
        numbers.push_back(keyNumber);
    return numbers;
}

}
