// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/keyfile.h"
#include "core/seal/recoverycode.h"

namespace steelyard::seal {

/// A wrapping key with what a slot has to remember to get it again.
struct SlotKey {
    SlotKind kind;
    StretchCost cost;
    Salt salt;
    WrappingKey key;
};

/// A slot's key out of a new secret, with a fresh salt.
[[nodiscard]] Outcome<SlotKey> slotKeyOf(const SecretText& passphrase, const StretchCost& cost, const RandomSource& random);
[[nodiscard]] Outcome<SlotKey> slotKeyOf(const RecoveryCode& code, const StretchCost& cost, const RandomSource& random);

/// The keys of an opened vault, and the key file they came from. Changes leave it as it is and give a new one, of the next
/// generation, which counts once its file has been written.
class Keyring {
public:
    /// A new vault, with a passphrase and a recovery code from the start.
    [[nodiscard]] static Outcome<Keyring> create(const SlotKey& passphrase, const SlotKey& recovery, const RandomSource& random,
                                                 VaultNature nature = VaultNature::Own);
    /// WrongSecret where the key does not open its slot; forged where it does, and the file was not written by one who knew the
    /// vault key.
    [[nodiscard]] static Outcome<Keyring> open(const KeyFile& file, SlotKind kind, const WrappingKey& key);

    [[nodiscard]] const KeyFile& file() const { return m_file; }
    [[nodiscard]] const VaultKey& vaultKey() const { return m_vaultKey; }
    [[nodiscard]] const DataKey& dataKey() const { return m_dataKey; }
    [[nodiscard]] const DeviceIdentity& identity() const { return m_identity; }
    /// With the salt of the current database in it.
    [[nodiscard]] Outcome<SecretBytes> databaseKeyText() const;

    /// The slot of that kind replaced, or added: a new passphrase, a new recovery code.
    [[nodiscard]] Outcome<Keyring> withSlot(const SlotKey& slot, const RandomSource& random) const;
    /// Another data key and salt, for the next database file.
    [[nodiscard]] Outcome<Keyring> withFreshDataKey(const RandomSource& random) const;
    /// Another receive key, of the next epoch; the old one is still in this ring.
    [[nodiscard]] Outcome<Keyring> withFreshReceiveKey(const RandomSource& random) const;

private:
    Keyring(KeyFile file, VaultKey vaultKey, DataKey dataKey, DeviceIdentity identity);
    static Outcome<Keyring> openWith(VaultKey vaultKey, KeyFile file);
    static Outcome<Keyring> finished(const VaultKey& vaultKey, KeyFile file);

    KeyFile m_file;
    VaultKey m_vaultKey;
    DataKey m_dataKey;
    DeviceIdentity m_identity;
};

/// The vault opened by what a person knows. Costs a stretch; NoSuchSlot where the file has no slot of that kind.
[[nodiscard]] Outcome<Keyring> unlock(const KeyFile& file, const SecretText& passphrase);
[[nodiscard]] Outcome<Keyring> unlock(const KeyFile& file, const RecoveryCode& code);

}
