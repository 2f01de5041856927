// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/keys.h"

#include <cassert>
#include <sodium.h>

namespace steelyard::seal {

static_assert(VaultKey::size == crypto_kdf_KEYBYTES);
static_assert(VaultKey::size == crypto_aead_xchacha20poly1305_ietf_KEYBYTES);
static_assert(sizeof(Wrapped<0>::nonce) == crypto_aead_xchacha20poly1305_ietf_NPUBBYTES);
static_assert(sizeof(Wrapped<0>::text) == crypto_aead_xchacha20poly1305_ietf_ABYTES);

Outcome<SubKey> deriveSubkey(const VaultKey& key, Subkey use)
{
    return SubKey::make([&](ByteRoom room) -> Outcome<Done> {
        crypto_kdf_derive_from_key(rawRoom(room), room.size(), static_cast<std::uint64_t>(use), "SteelVlt", raw(key.view()));
        return Done{};
    });
}

void wrapInto(ByteRoom text, FixedView<32> key, FixedView<24> nonce, ByteView associated, ByteView secret)
{
    assert(text.size() == secret.size() + sizeof(Wrapped<0>::text));
    crypto_aead_xchacha20poly1305_ietf_encrypt(rawRoom(text), nullptr, raw(secret), secret.size(), raw(associated),
        associated.size(), nullptr, raw(nonce), raw(key));
}

Outcome<Done> unwrapInto(ByteRoom secret, FixedView<32> key, FixedView<24> nonce, ByteView associated, ByteView text)
{
    assert(text.size() == secret.size() + sizeof(Wrapped<0>::text));
    if (crypto_aead_xchacha20poly1305_ietf_decrypt(rawRoom(secret), nullptr, nullptr, raw(text), text.size(), raw(associated),
            associated.size(), raw(nonce), raw(key)) != 0)
        return Code::WrongSecretTypeAgain;
    return Done{};
}

Outcome<SecretBytes> databaseKeyText(const DataKey& key, const Salt& salt)
{
    constexpr std::size_t keyDigits = 2 * DataKey::size;
    constexpr std::size_t saltDigits = 2 * sizeof(Salt);
    // The encoder ends each text with a zero byte; the salt's goes where no digit of the text is.
    std::array<char, saltDigits + 1> saltText{};
    sodium_bin2hex(saltText.data(), saltText.size(), raw(salt), salt.size());
    return SecretBytes::make(keyDigits + saltDigits, [&](ByteRoom room) -> Outcome<Done> {
        sodium_bin2hex(reinterpret_cast<char*>(room.data()), keyDigits + 1, raw(key.view()), DataKey::size);
        copyBytes(bytesOf({saltText.data(), saltDigits}), room.subspan(keyDigits));
        return Done{};
    });
}

}
