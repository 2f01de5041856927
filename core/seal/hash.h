// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/bytes.h"
#include "core/seal/secretmemory.h"

namespace steelyard::seal {

using Digest = ByteArray<32>;

/// BLAKE2b with a 256-bit result (RFC 7693), fed piece by piece; with a key it is a MAC.
/// The state is secret memory, because with a key it is worth the key.
class Hasher {
public:
    [[nodiscard]] static Outcome<Hasher> make();
    [[nodiscard]] static Outcome<Hasher> withKey(FixedView<32> key);

    void add(ByteView bytes);
    /// Once only; what is added afterwards counts for nothing.
    [[nodiscard]] Digest finish();

private:
    [[nodiscard]] static Outcome<Hasher> begun(ByteView key);
    explicit Hasher(SecretBlock state) : m_state(std::move(state)) {}

    SecretBlock m_state;
};

/// BLAKE2b-256 of the whole at once.
[[nodiscard]] Digest hash(ByteView bytes);

/// Keyed BLAKE2b-256 of the whole at once.
[[nodiscard]] Digest mac(FixedView<32> key, ByteView bytes);

/// Whether both hold the same, in a time that tells nothing about where they differ. Unequal lengths are unequal.
[[nodiscard]] bool sameBytes(ByteView one, ByteView other);

}
