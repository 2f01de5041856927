// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/keyring.h"
#include "core/seal/start.h"

#include <QByteArray>
#include <cstdint>
#include <map>
#include <memory>
#include <string>

namespace sealing {

using namespace steelyard::seal;

inline ByteBuffer fromHex(const QByteArray& hex)
{
    const QByteArray bytes = QByteArray::fromHex(hex);
    const ByteView view = bytesOf({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    return {view.begin(), view.end()};
}

inline QByteArray toHex(ByteView bytes)
{
    return QByteArray(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())).toHex();
}

template <std::size_t count>
ByteArray<count> arrayOf(const QByteArray& hex)
{
    ByteArray<count> array{};
    copyBytes(fromHex(hex), array);
    return array;
}

/// 0, 1, 2 … 250, 0, 1 … one byte after another: 251 is prime, so no two keys come out alike.
inline RandomSource countingRandom()
{
    return [at = std::make_shared<std::uint32_t>(0)](ByteRoom room) {
        for (std::byte& byte : room)
            byte = static_cast<std::byte>((*at)++ % 251);
    };
}

template <typename AnyKey = WrappingKey>
AnyKey filledKey(unsigned value)
{
    return *AnyKey::make([value](ByteRoom room) -> Outcome<Done> {
        std::fill(room.begin(), room.end(), static_cast<std::byte>(value));
        return Done{};
    });
}

inline SlotKey slotKey(SlotKind kind, unsigned keyValue, unsigned saltValue)
{
    Salt salt{};
    salt.fill(static_cast<std::byte>(saltValue));
    return {kind, weakestStretch, salt, filledKey(keyValue)};
}

inline SlotKey passphraseKey() { return slotKey(SlotKind::Passphrase, 0xA1, 0x11); }
inline SlotKey recoveryKey() { return slotKey(SlotKind::RecoveryCode, 0xA2, 0x12); }

inline Keyring newRing()
{
    return *Keyring::create(passphraseKey(), recoveryKey(), countingRandom());
}

inline SecretText textOf(std::string_view text)
{
    SecretText secret;
    return secret.append(text) ? std::move(secret) : SecretText();
}

/// Counts what it gives and gets, looks whether it comes back wiped, and gives nothing once its blocks are used up.
class WatchingSource : public SecretSource {
public:
    explicit WatchingSource(int blocks = 1'000'000) : m_left(blocks) { use(*this); }
    ~WatchingSource() override { useSystem(); }

    void* take(std::size_t size) override
    {
        if (m_left == 0)
            return nullptr;
        --m_left;
        void* const data = SecretSource::take(size);
        m_sizes[data] = size;
        return data;
    }
    void give(ByteRoom block) override
    {
        wiped = wiped && m_sizes.count(block.data()) == 1 && m_sizes[block.data()] == block.size()
            && std::all_of(block.begin(), block.end(), [](std::byte byte) { return byte == std::byte{}; });
        m_sizes.erase(block.data());
        ++given;
        SecretSource::give(block);
    }
    [[nodiscard]] std::size_t out() const { return m_sizes.size(); }

    bool wiped = true;
    int given = 0;

private:
    int m_left;
    std::map<void*, std::size_t> m_sizes;
};

}
