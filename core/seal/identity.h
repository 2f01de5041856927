// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/keys.h"

namespace steelyard::seal {

using Signature = ByteArray<64>;

/// What others check a device's signatures with (Ed25519, RFC 8032).
struct SigningPublicKey {
    ByteArray<32> bytes{};
    bool operator==(const SigningPublicKey&) const = default;
};

/// What others seal to (X25519).
struct BoxPublicKey {
    ByteArray<32> bytes{};
    bool operator==(const BoxPublicKey&) const = default;
};

/// Signs; made from a seed of 32 bytes.
class SigningKey {
public:
    static constexpr std::size_t seedSize = 32;

    [[nodiscard]] static Outcome<SigningKey> fromSeed(FixedView<seedSize> seed);
    [[nodiscard]] const SigningPublicKey& publicKey() const { return m_public; }
    [[nodiscard]] Signature sign(ByteView message) const;

private:
    SigningKey() = default;

    SigningPublicKey m_public;
    SecretBytes m_secret;
};

/// Done where `signature` was made over `message` with the secret half of `key`; points of small order are refused.
[[nodiscard]] Outcome<Done> checkSignature(const SigningPublicKey& key, ByteView message, const Signature& signature);

/// Opens what was sealed to its public half; made from a secret of 32 bytes.
class BoxKey {
public:
    static constexpr std::size_t secretSize = 32;

    [[nodiscard]] static Outcome<BoxKey> fromSecret(FixedView<secretSize> secret);
    [[nodiscard]] const BoxPublicKey& publicKey() const { return m_public; }
    [[nodiscard]] Outcome<SecretBytes> open(ByteView sealed) const;

private:
    BoxKey() = default;

    BoxPublicKey m_public;
    SecretBytes m_secret;
};

/// Seals so that the sender cannot open it again and is not named in it; 48 bytes longer than the message, different each time.
/// A public key that no secret belongs to is refused.
[[nodiscard]] Outcome<ByteBuffer> sealFor(const BoxPublicKey& key, ByteView message);

/// What makes a device itself towards others: it signs, receives parcels, and has an inbox for sealed answers.
/// As stored, one behind the other: signing seed, receive secret, inbox secret.
class DeviceIdentity {
public:
    static constexpr std::size_t storedSize = SigningKey::seedSize + 2 * BoxKey::secretSize;

    [[nodiscard]] static Outcome<DeviceIdentity> fromStored(FixedView<storedSize> stored);
    [[nodiscard]] FixedView<storedSize> stored() const { return m_stored.view().first<storedSize>(); }
    [[nodiscard]] const SigningKey& signing() const { return m_signing; }
    [[nodiscard]] const BoxKey& receive() const { return m_receive; }
    [[nodiscard]] const BoxKey& inbox() const { return m_inbox; }
    /// As stored, with another receive secret: what erasure and revocation call for.
    [[nodiscard]] Outcome<SecretBytes> storedWithFreshReceive(const RandomSource& random) const;

private:
    DeviceIdentity(SecretBytes stored, SigningKey signing, BoxKey receive, BoxKey inbox);

    SecretBytes m_stored;
    SigningKey m_signing;
    BoxKey m_receive;
    BoxKey m_inbox;
};

}
