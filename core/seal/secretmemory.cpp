// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/secretmemory.h"

#include <atomic>
#include <sodium.h>

namespace steelyard::seal {

namespace {

SecretSource& systemSource()
{
    static SecretSource source;
    return source;
}

std::atomic<SecretSource*>& chosenSource()
{
    static std::atomic<SecretSource*> chosen = &systemSource();
    return chosen;
}

bool continuesCodePoint(std::byte byte)
{
    return (byte & std::byte{0xC0}) == std::byte{0x80};
}

}

void* SecretSource::take(std::size_t size)
{
    return sodium_init() < 0 ? nullptr : sodium_malloc(size);
}

void SecretSource::give(ByteRoom block)
{
    sodium_free(block.data());
}

SecretSource& SecretSource::current()
{
    return *chosenSource().load();
}

void SecretSource::use(SecretSource& source)
{
    chosenSource().store(&source);
}

void SecretSource::useSystem()
{
    use(systemSource());
}

SecretBlock::SecretBlock(SecretBlock&& other) noexcept
    : m_source(std::exchange(other.m_source, nullptr)), m_room(std::exchange(other.m_room, {}))
{
}

SecretBlock& SecretBlock::operator=(SecretBlock&& other) noexcept
{
    if (this != &other) {
        giveBack();
        m_source = std::exchange(other.m_source, nullptr);
        m_room = std::exchange(other.m_room, {});
    }
    return *this;
}

SecretBlock::~SecretBlock()
{
    giveBack();
}

Outcome<SecretBlock> SecretBlock::make(std::size_t size)
{
    SecretSource& source = SecretSource::current();
    void* const data = source.take(size);
    if (data == nullptr)
        return Code::MemoryRefusedCloseOthers;
    SecretBlock block;
    block.m_source = &source;
    block.m_room = ByteRoom(static_cast<std::byte*>(data), size);
    sodium_memzero(data, size);
    return block;
}

void SecretBlock::makeReadOnly()
{
    if (m_source != nullptr)
        sodium_mprotect_readonly(m_room.data());
}

void SecretBlock::giveBack()
{
    if (m_source == nullptr)
        return;
    sodium_mprotect_readwrite(m_room.data());
    sodium_memzero(m_room.data(), m_room.size());
    m_source->give(m_room);
    m_source = nullptr;
    m_room = {};
}

Outcome<SecretBytes> SecretBytes::make(std::size_t size, const Fill& fill)
{
    Outcome<SecretBlock> block = SecretBlock::make(size);
    if (!block)
        return block.code();
    if (const Outcome<Done> filled = fill(block->room()); !filled)
        return filled.code();
    block->makeReadOnly();
    SecretBytes bytes;
    bytes.m_block = *std::move(block);
    return bytes;
}

Outcome<SecretBytes> SecretBytes::copyOf(ByteView bytes)
{
    return make(bytes.size(), [bytes](ByteRoom room) -> Outcome<Done> {
        copyBytes(bytes, room);
        return Done{};
    });
}

Outcome<SecretBytes> SecretBytes::random(std::size_t size, const RandomSource& source)
{
    return make(size, [&source](ByteRoom room) -> Outcome<Done> {
        source(room);
        return Done{};
    });
}

SecretText::SecretText(SecretText&& other) noexcept
    : m_block(std::move(other.m_block)), m_size(std::exchange(other.m_size, 0))
{
}

SecretText& SecretText::operator=(SecretText&& other) noexcept
{
    if (this != &other) {
        m_block = std::move(other.m_block);
        m_size = std::exchange(other.m_size, 0);
    }
    return *this;
}

Outcome<Done> SecretText::append(std::string_view utf8)
{
    if (utf8.size() > largestSize - m_size)
        return Code::TextTooLongShorten;
    const std::size_t wanted = m_size + utf8.size();
    if (wanted > m_block.view().size()) {
        constexpr std::size_t smallest = 64;
        Outcome<SecretBlock> larger = SecretBlock::make(std::min(std::max(2 * wanted, smallest), largestSize));
        if (!larger)
            return larger.code();
        copyBytes(m_block.view().first(m_size), larger->room());
        m_block = *std::move(larger);
    }
    copyBytes(bytesOf(utf8), m_block.room().subspan(m_size));
    m_size = wanted;
    return Done{};
}

void SecretText::removeLast()
{
    const ByteRoom room = m_block.room();
    bool more = m_size > 0;
    while (more) {
        --m_size;
        more = m_size > 0 && continuesCodePoint(room[m_size]);
        sodium_memzero(&room[m_size], 1);
    }
}

void SecretText::clear()
{
    m_block = {};
    m_size = 0;
}

std::string_view SecretText::view() const
{
    return {reinterpret_cast<const char*>(m_block.view().data()), m_size};
}

std::size_t SecretText::characterCount() const
{
    const ByteView text = m_block.view().first(m_size);
    return m_size - static_cast<std::size_t>(std::count_if(text.begin(), text.end(), continuesCodePoint));
}

}
