// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/secretmemory.h"

#include <cstdint>

namespace steelyard::seal {

/// A key of 32 bytes with its purpose in the type, so that no two kinds can be taken for one another.
template <typename Purpose>
class Key {
public:
    static constexpr std::size_t size = 32;

    [[nodiscard]] static Outcome<Key> make(const SecretBytes::Fill& fill)
    {
        Outcome<SecretBytes> bytes = SecretBytes::make(size, fill);
        if (!bytes)
            return bytes.code();
        Key key;
        key.m_bytes = *std::move(bytes);
        return key;
    }
    [[nodiscard]] static Outcome<Key> random(const RandomSource& source)
    {
        return make([&source](ByteRoom room) -> Outcome<Done> {
            source(room);
            return Done{};
        });
    }
    /// A second one in secret memory of its own, where two owners need it.
    [[nodiscard]] Outcome<Key> twin() const
    {
        return make([this](ByteRoom room) -> Outcome<Done> {
            copyBytes(view(), room);
            return Done{};
        });
    }
    [[nodiscard]] FixedView<size> view() const { return m_bytes.view().first<size>(); }

private:
    Key() = default;

    SecretBytes m_bytes;
};

using WrappingKey = Key<struct WrapsVaultKey>; ///< out of a passphrase, a recovery code or a device keystore
using VaultKey = Key<struct OpensVault>;
using DataKey = Key<struct OpensDatabase>;
using SubKey = Key<struct DerivedFromVaultKey>;

/// What the vault key is used for, each by a key of its own. Numbers are written down for ever and never used again.
enum class Subkey : std::uint64_t {
    DataKeyWrap = 1,
    IdentityWrap = 2,
    KeyFileMac = 3,
    WitnessMac = 4,
};

/// Key derivation by BLAKE2b with the number as salt and "SteelVlt" as personal string.
[[nodiscard]] Outcome<SubKey> deriveSubkey(const VaultKey& key, Subkey use);

/// A secret of `secretSize` bytes under XChaCha20-Poly1305 (draft-irtf-cfrg-xchacha-03) with a random nonce of 24 bytes.
template <std::size_t secretSize>
struct Wrapped {
    ByteArray<24> nonce{};
    ByteArray<secretSize + 16> text{};
    bool operator==(const Wrapped&) const = default;
};

/// Encrypts `secret` into `text`, which is 16 bytes longer; `associated` is not encrypted, but has to be the same on opening.
/// Called by wrap, whose types see to the sizes.
void wrapInto(ByteRoom text, FixedView<32> key, FixedView<24> nonce, ByteView associated, ByteView secret);

/// The secret again, or WrongSecretTypeAgain where key, nonce, associated data or text are not those it was wrapped with.
/// Called by unwrap, whose types see to the sizes.
[[nodiscard]] Outcome<Done> unwrapInto(ByteRoom secret, FixedView<32> key, FixedView<24> nonce, ByteView associated, ByteView text);

/// `secret` under `key` with a fresh nonce.
template <std::size_t secretSize>
[[nodiscard]] Wrapped<secretSize> wrap(FixedView<32> key, ByteView associated, FixedView<secretSize> secret, const RandomSource& random)
{
    Wrapped<secretSize> wrapped;
    random(wrapped.nonce);
    wrapInto(wrapped.text, key, wrapped.nonce, associated, secret);
    return wrapped;
}

/// The other way round; refused, `secret` is worth nothing.
template <std::size_t secretSize>
[[nodiscard]] Outcome<Done> unwrap(FixedRoom<secretSize> secret, FixedView<32> key, ByteView associated, const Wrapped<secretSize>& wrapped)
{
    return unwrapInto(secret, key, wrapped.nonce, associated, wrapped.text);
}

/// The raw key as the database engine takes it: 64 hexadecimal digits of key, then 32 of salt, lower case.
/// With the salt in it, a damaged salt in the file's head does no harm.
[[nodiscard]] Outcome<SecretBytes> databaseKeyText(const DataKey& key, const Salt& salt);

}
