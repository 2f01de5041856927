// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/identity.h"

#include <sodium.h>

namespace steelyard::seal {

static_assert(SigningKey::seedSize == crypto_sign_SEEDBYTES && sizeof(Signature) == crypto_sign_BYTES);
static_assert(BoxKey::secretSize == crypto_box_SECRETKEYBYTES && sizeof(BoxPublicKey) == crypto_box_PUBLICKEYBYTES);

Outcome<SigningKey> SigningKey::fromSeed(FixedView<seedSize> seed)
{
    SigningKey key;
    Outcome<SecretBytes> secret = SecretBytes::make(crypto_sign_SECRETKEYBYTES, [&](ByteRoom room) -> Outcome<Done> {
        crypto_sign_seed_keypair(rawRoom(key.m_public.bytes), rawRoom(room), raw(seed));
        return Done{};
    });
    if (!secret)
        return secret.code();
    key.m_secret = *std::move(secret);
    return key;
}

Signature SigningKey::sign(ByteView message) const
{
    Signature signature{};
    crypto_sign_detached(rawRoom(signature), nullptr, raw(message), message.size(), raw(m_secret.view()));
    return signature;
}

Outcome<Done> checkSignature(const SigningPublicKey& key, ByteView message, const Signature& signature)
{
    if (crypto_sign_verify_detached(raw(signature), raw(message), message.size(), raw(key.bytes)) != 0)
        return Code::SignatureWrongRefuse;
    return Done{};
}

Outcome<BoxKey> BoxKey::fromSecret(FixedView<secretSize> secret)
{
    Outcome<SecretBytes> own = SecretBytes::copyOf(secret);
    if (!own)
        return own.code();
    BoxKey key;
    crypto_scalarmult_base(rawRoom(key.m_public.bytes), raw(secret));
    key.m_secret = *std::move(own);
    return key;
}

Outcome<SecretBytes> BoxKey::open(ByteView sealed) const
{
    if (sealed.size() < crypto_box_SEALBYTES)
        return Code::SealNotForUsRefuse;
    return SecretBytes::make(sealed.size() - crypto_box_SEALBYTES, [&](ByteRoom room) -> Outcome<Done> {
        if (crypto_box_seal_open(rawRoom(room), raw(sealed), sealed.size(), raw(m_public.bytes), raw(m_secret.view())) != 0)
            return Code::SealNotForUsRefuse;
        return Done{};
    });
}

Outcome<ByteBuffer> sealFor(const BoxPublicKey& key, ByteView message)
{
    ByteBuffer sealed(message.size() + crypto_box_SEALBYTES);
    if (crypto_box_seal(rawRoom(sealed), raw(message), message.size(), raw(key.bytes)) != 0)
        return Code::SealNotForUsRefuse;
    return sealed;
}

DeviceIdentity::DeviceIdentity(SecretBytes stored, SigningKey signing, BoxKey receive, BoxKey inbox)
    : m_stored(std::move(stored)), m_signing(std::move(signing)), m_receive(std::move(receive)), m_inbox(std::move(inbox))
{
}

Outcome<DeviceIdentity> DeviceIdentity::fromStored(FixedView<storedSize> stored)
{
    Outcome<SecretBytes> own = SecretBytes::copyOf(stored);
    if (!own)
        return own.code();
    Outcome<SigningKey> signing = SigningKey::fromSeed(stored.first<SigningKey::seedSize>());
    if (!signing)
        return signing.code();
    Outcome<BoxKey> receive = BoxKey::fromSecret(stored.subspan<SigningKey::seedSize, BoxKey::secretSize>());
    if (!receive)
        return receive.code();
    Outcome<BoxKey> inbox = BoxKey::fromSecret(stored.last<BoxKey::secretSize>());
    if (!inbox)
        return inbox.code();
    return DeviceIdentity(*std::move(own), *std::move(signing), *std::move(receive), *std::move(inbox));
}

Outcome<SecretBytes> DeviceIdentity::storedWithFreshReceive(const RandomSource& random) const
{
    return SecretBytes::make(storedSize, [&](ByteRoom room) -> Outcome<Done> {
        copyBytes(stored(), room);
        random(room.subspan(SigningKey::seedSize, BoxKey::secretSize));
        return Done{};
    });
}

}
