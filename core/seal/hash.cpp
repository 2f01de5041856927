// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/hash.h"

#include <memory>
#include <sodium.h>

namespace steelyard::seal {

namespace {

constexpr std::size_t alignment = alignof(crypto_generichash_state);

// Secret memory ends at a page and so begins anywhere, while the state wants its own alignment.
crypto_generichash_state* stateIn(ByteRoom room)
{
    void* place = room.data();
    std::size_t space = room.size();
    return static_cast<crypto_generichash_state*>(std::align(alignment, sizeof(crypto_generichash_state), place, space));
}

}

Outcome<Hasher> Hasher::make()
{
    return begun({});
}

Outcome<Hasher> Hasher::withKey(FixedView<32> key)
{
    return begun(key);
}

Outcome<Hasher> Hasher::begun(ByteView key)
{
    Outcome<SecretBlock> state = SecretBlock::make(sizeof(crypto_generichash_state) + alignment);
    if (!state)
        return state.code();
    crypto_generichash_init(stateIn(state->room()), raw(key), key.size(), sizeof(Digest));
    return Hasher(*std::move(state));
}

void Hasher::add(ByteView bytes)
{
    crypto_generichash_update(stateIn(m_state.room()), raw(bytes), bytes.size());
}

Digest Hasher::finish()
{
    Digest digest{};
    crypto_generichash_final(stateIn(m_state.room()), rawRoom(digest), digest.size());
    return digest;
}

Digest hash(ByteView bytes)
{
    Digest digest{};
    crypto_generichash(rawRoom(digest), digest.size(), raw(bytes), bytes.size(), nullptr, 0);
    return digest;
}

Digest mac(FixedView<32> key, ByteView bytes)
{
    Digest digest{};
    crypto_generichash(rawRoom(digest), digest.size(), raw(bytes), bytes.size(), raw(key), key.size());
    return digest;
}

bool sameBytes(ByteView one, ByteView other)
{
    return one.size() == other.size() && (one.empty() || sodium_memcmp(one.data(), other.data(), one.size()) == 0);
}

}
