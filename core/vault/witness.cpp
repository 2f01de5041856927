// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/witness.h"

#include "core/seal/storage.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace steelyard::vault {

namespace {

constexpr std::array<const char*, 2> names{"witness.a", "witness.b"};
constexpr std::size_t headSize = 36;
constexpr std::size_t chainSize = 60;
constexpr std::size_t macSize = 32;
constexpr std::size_t largestSize = 1 << 20;
constexpr std::uint64_t magicAndVersion = 0x53595754'00000001;

/// Writes one thing behind the other.
class Pen {
public:
    void bytes(seal::ByteView view) { m_buffer.insert(m_buffer.end(), view.begin(), view.end()); }
    void number(std::uint64_t value, unsigned size)
    {
        for (unsigned at = size; at-- > 0;)
            m_buffer.push_back(static_cast<std::byte>(value >> (8 * at) & 0xFF));
    }
    [[nodiscard]] const seal::ByteBuffer& buffer() const { return m_buffer; }

private:
    seal::ByteBuffer m_buffer;
};

/// Reads the same way; the caller sees to it that there is enough.
class Finger {
public:
    explicit Finger(seal::ByteView rest) : m_rest(rest) {}
    template <std::size_t size>
    void into(seal::ByteArray<size>& array)
    {
        seal::copyBytes(m_rest.first(size), array);
        m_rest = m_rest.subspan(size);
    }
    std::uint64_t number(std::size_t size)
    {
        std::uint64_t value = 0;
        for (const std::byte byte : m_rest.first(size))
            value = value << 8 | std::to_integer<std::uint64_t>(byte);
        m_rest = m_rest.subspan(size);
        return value;
    }
    [[nodiscard]] std::size_t left() const { return m_rest.size(); }

private:
    seal::ByteView m_rest;
};

}

WitnessFiles::WitnessFiles(std::filesystem::path folder, const seal::ByteArray<16>& vaultId, seal::SubKey key)
    : m_folder(std::move(folder)), m_vaultId(vaultId), m_key(std::move(key))
{
}

std::optional<Witness> WitnessFiles::readOne(std::size_t index) const
{
    const auto bytes = seal::readWhole(m_folder / names[index], largestSize);
    if (!bytes || !*bytes || (*bytes)->size() < headSize + macSize)
        return std::nullopt;
    const seal::ByteView all(**bytes);
    const seal::ByteView said = all.first(all.size() - macSize);
    if (!seal::sameBytes(seal::mac(m_key.view(), said), all.last(macSize)))
        return std::nullopt;
    Finger finger(said);
    seal::ByteArray<16> vaultId{};
    const bool ours = finger.number(8) == magicAndVersion;
    finger.into(vaultId);
    Witness witness;
    witness.counterNumber = finger.number(8);
    const std::uint64_t count = finger.number(4);
    if (!ours || vaultId != m_vaultId || finger.left() != count * chainSize)
        return std::nullopt;
    witness.ends.resize(count);
    for (journal::ChainEnd& end : witness.ends) {
        finger.into(end.chain.origin.bytes);
        end.chain.incarnationNumber = static_cast<std::uint32_t>(finger.number(4));
        end.sequenceNumber = finger.number(8);
        finger.into(end.id.bytes);
    }
    return witness;
}

std::optional<Witness> WitnessFiles::read() const
{
    std::optional<Witness> first = readOne(0);
    std::optional<Witness> second = readOne(1);
    if (!first || (second && second->counterNumber > first->counterNumber))
        return second;
    return first;
}

Outcome<Done> WitnessFiles::write(const std::vector<journal::ChainEnd>& ends)
{
    const std::optional<Witness> first = readOne(0);
    const std::optional<Witness> second = readOne(1);
    const std::uint64_t firstCounter = first ? first->counterNumber : 0;
    const std::uint64_t secondCounter = second ? second->counterNumber : 0;
    Pen pen;
    pen.number(magicAndVersion, 8);
    pen.bytes(m_vaultId);
    pen.number(std::max(firstCounter, secondCounter) + 1, 8);
    pen.number(ends.size(), 4);
    for (const journal::ChainEnd& end : ends) {
        pen.bytes(end.chain.origin.bytes);
        pen.number(end.chain.incarnationNumber, 4);
        pen.number(end.sequenceNumber, 8);
        pen.bytes(end.id.bytes);
    }
    pen.bytes(seal::mac(m_key.view(), pen.buffer()));

    const std::filesystem::path place = m_folder / names[firstCounter <= secondCounter ? 0 : 1];
    const seal::Descriptor file(::open(place.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR));
    const auto length = static_cast<off_t>(pen.buffer().size());
    if (!file.ok() || !seal::writeAll(file, pen.buffer()) || ::ftruncate(file.get(), length) != 0 || ::fsync(file.get()) != 0)
        return codeOf(seal::codeOfWriteError(errno));
    return Done{};
}

}
