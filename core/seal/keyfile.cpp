// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/keyfile.h"

namespace steelyard::seal {

namespace {

constexpr std::array<unsigned, 8> magicValues{0x8F, 0x53, 0x59, 0x56, 0x4B, 0x0D, 0x0A, 0x1A};
constexpr std::uint16_t ourVersion = 1;
constexpr std::size_t headSize = 64;
constexpr std::size_t slotSize = 100;
constexpr std::size_t mostSlots = 3;
constexpr std::size_t tailSize = sizeof(KeyFile::dataKey) + sizeof(KeyFile::identity) + 2 * sizeof(Digest);
constexpr std::byte tagOfDataKey{40};
constexpr std::byte tagOfIdentity{41};

/// How the id of a sample vault begins: a text, and the number of its version.
constexpr ByteArray<8> sampleMark{std::byte{'S'}, std::byte{'A'}, std::byte{'M'}, std::byte{'P'}, std::byte{'L'}, std::byte{'E'}, std::byte{0}, std::byte{1}};

static_assert(tailSize == 72 + 136 + 32 + 32);

/// Puts values one behind the other.
class Writer {
public:
    void add(ByteView bytes) { m_bytes.insert(m_bytes.end(), bytes.begin(), bytes.end()); }
    template <typename Number>
    void number(Number value)
    {
        for (std::size_t shift = 0; shift < 8 * sizeof(Number); shift += 8)
            m_bytes.push_back(static_cast<std::byte>(static_cast<std::uint64_t>(value) >> shift & 0xFF));
    }
    void magic()
    {
        for (const unsigned value : magicValues)
            m_bytes.push_back(static_cast<std::byte>(value));
    }
    [[nodiscard]] ByteView view() const { return m_bytes; }
    [[nodiscard]] ByteBuffer bytes() && { return std::move(m_bytes); }

private:
    ByteBuffer m_bytes;
};

/// Takes values off the front of bytes whose number was checked before.
class Reader {
public:
    explicit Reader(ByteView bytes) : m_rest(bytes) {}

    void take(ByteRoom room)
    {
        copyBytes(m_rest, room);
        m_rest = m_rest.subspan(std::min(room.size(), m_rest.size()));
    }
    template <typename Number>
    Number number()
    {
        ByteArray<sizeof(Number)> bytes{};
        take(bytes);
        std::uint64_t value = 0;
        for (std::size_t at = sizeof(Number); at > 0; --at)
            value = value << 8 | std::to_integer<std::uint64_t>(bytes[at - 1]);
        return static_cast<Number>(value);
    }

private:
    ByteView m_rest;
};

template <std::size_t secretSize>
void write(Writer& writer, const Wrapped<secretSize>& wrapped)
{
    writer.add(wrapped.nonce);
    writer.add(wrapped.text);
}

template <std::size_t secretSize>
void read(Reader& reader, Wrapped<secretSize>& wrapped)
{
    reader.take(wrapped.nonce);
    reader.take(wrapped.text);
}

void writeStretch(Writer& writer, const Slot& slot)
{
    writer.number(static_cast<std::uint8_t>(slot.kind));
    writer.add(ByteArray<3>{});
    writer.number(slot.cost.memory.count);
    writer.number(slot.cost.passCount);
    writer.add(slot.salt);
}

Writer associatedStart(const KeyFile& file)
{
    Writer writer;
    writer.magic();
    writer.number(ourVersion);
    writer.add(file.vaultId);
    return writer;
}

/// Nothing where the slot's fixed parts do not hold.
std::optional<Slot> readSlot(Reader& reader)
{
    Slot slot;
    const auto kind = reader.number<std::uint8_t>();
    ByteArray<3> zeros{};
    reader.take(zeros);
    slot.kind = static_cast<SlotKind>(kind);
    slot.cost.memory.count = reader.number<std::uint32_t>();
    slot.cost.passCount = reader.number<std::uint32_t>();
    reader.take(slot.salt);
    read(reader, slot.vaultKey);
    if (kind < 1 || kind > mostSlots || zeros != ByteArray<3>{})
        return std::nullopt;
    if (slot.kind == SlotKind::DeviceKeystore && (slot.cost != StretchCost{} || slot.salt != Salt{}))
        return std::nullopt;
    return slot;
}

}

VaultNature natureOf(const ByteArray<16>& vaultId)
{
    return std::equal(sampleMark.begin(), sampleMark.end(), vaultId.begin()) ? VaultNature::Sample : VaultNature::Own;
}

ByteArray<16> newVaultId(VaultNature nature, const RandomSource& random)
{
    ByteArray<16> id{};
    random(id);
    if (nature == VaultNature::Sample)
        copyBytes(sampleMark, id);
    else if (natureOf(id) == VaultNature::Sample)
        id.front() = std::byte{0}; // once in 2^64 vaults
    return id;
}

const Slot* KeyFile::slot(SlotKind kind) const
{
    const auto found = std::find_if(slots.begin(), slots.end(), [kind](const Slot& slot) { return slot.kind == kind; });
    return found == slots.end() ? nullptr : &*found;
}

ByteBuffer bytesUnderMac(const KeyFile& file)
{
    std::vector<Slot> slots = file.slots;
    std::sort(slots.begin(), slots.end(), [](const Slot& a, const Slot& b) { return a.kind < b.kind; });
    Writer writer;
    writer.magic();
    writer.number(ourVersion);
    writer.number(static_cast<std::uint16_t>(slots.size()));
    writer.number(static_cast<std::uint32_t>(headSize + slots.size() * slotSize + tailSize));
    writer.add(file.vaultId);
    writer.number(file.generationNumber);
    writer.number(file.databaseNumber);
    writer.number(file.epochNumber);
    writer.add(file.databaseSalt);
    for (const Slot& slot : slots) {
        writeStretch(writer, slot);
        write(writer, slot.vaultKey);
    }
    write(writer, file.dataKey);
    write(writer, file.identity);
    return std::move(writer).bytes();
}

ByteBuffer encode(const KeyFile& file)
{
    Writer writer;
    writer.add(bytesUnderMac(file));
    writer.add(file.mac);
    const Digest checksum = hash(writer.view());
    writer.add(checksum);
    return std::move(writer).bytes();
}

Outcome<KeyFile> decode(ByteView bytes)
{
    Writer magic;
    magic.magic();
    const std::size_t fixedSize = magic.view().size() + sizeof(ourVersion) + sizeof(Digest);
    if (bytes.size() < fixedSize || bytes.size() > largestKeyFileSize)
        return Code::KeyFileDamagedRestoreBackup;
    if (!sameBytes(bytes.first(magic.view().size()), magic.view())
        || !sameBytes(hash(bytes.first(bytes.size() - sizeof(Digest))), bytes.last(sizeof(Digest))))
        return Code::KeyFileDamagedRestoreBackup;

    Reader reader(bytes.subspan(magic.view().size()));
    const auto version = reader.number<std::uint16_t>();
    if (version > ourVersion)
        return Code::KeyFileNewerUpdateApp;
    const auto slotCount = reader.number<std::uint16_t>();
    const auto size = reader.number<std::uint32_t>();
    if (version != ourVersion || slotCount < 1 || slotCount > mostSlots || size != bytes.size()
        || size != headSize + slotCount * slotSize + tailSize)
        return Code::KeyFileDamagedRestoreBackup;

    KeyFile file;
    reader.take(file.vaultId);
    file.generationNumber = reader.number<std::uint64_t>();
    file.databaseNumber = reader.number<std::uint32_t>();
    file.epochNumber = reader.number<std::uint32_t>();
    reader.take(file.databaseSalt);
    for (std::size_t at = 0; at < slotCount; ++at) {
        const std::optional<Slot> slot = readSlot(reader);
        if (!slot || (!file.slots.empty() && file.slots.back().kind >= slot->kind))
            return Code::KeyFileDamagedRestoreBackup;
        file.slots.push_back(*slot);
    }
    read(reader, file.dataKey);
    read(reader, file.identity);
    reader.take(file.mac);
    if (file.generationNumber == 0 || file.databaseNumber == 0 || file.epochNumber == 0
        || file.slots.front().kind == SlotKind::DeviceKeystore)
        return Code::KeyFileDamagedRestoreBackup;
    return file;
}

ByteBuffer associatedOf(const KeyFile& file, const Slot& slot)
{
    Writer writer = associatedStart(file);
    writeStretch(writer, slot);
    return std::move(writer).bytes();
}

ByteBuffer associatedOfDataKey(const KeyFile& file)
{
    Writer writer = associatedStart(file);
    writer.add(ByteView(&tagOfDataKey, 1));
    writer.number(file.databaseNumber);
    writer.add(file.databaseSalt);
    return std::move(writer).bytes();
}

ByteBuffer associatedOfIdentity(const KeyFile& file)
{
    Writer writer = associatedStart(file);
    writer.add(ByteView(&tagOfIdentity, 1));
    writer.number(file.epochNumber);
    return std::move(writer).bytes();
}

}
