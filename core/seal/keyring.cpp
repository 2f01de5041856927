// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/keyring.h"

namespace steelyard::seal {

namespace {

Slot wrappedSlot(const KeyFile& file, const SlotKey& slotKey, const VaultKey& vaultKey, const RandomSource& random)
{
    Slot slot{slotKey.kind, slotKey.cost, slotKey.salt, {}};
    slot.vaultKey = wrap<VaultKey::size>(slotKey.key.view(), associatedOf(file, slot), vaultKey.view(), random);
    return slot;
}

Outcome<Done> wrapDataKey(KeyFile& file, const VaultKey& vaultKey, const RandomSource& random)
{
    const Outcome<DataKey> dataKey = DataKey::random(random);
    if (!dataKey)
        return dataKey.code();
    const Outcome<SubKey> subkey = deriveSubkey(vaultKey, Subkey::DataKeyWrap);
    if (!subkey)
        return subkey.code();
    random(file.databaseSalt);
    file.dataKey = wrap<DataKey::size>(subkey->view(), associatedOfDataKey(file), dataKey->view(), random);
    return Done{};
}

Outcome<Done> wrapIdentity(KeyFile& file, const VaultKey& vaultKey, FixedView<DeviceIdentity::storedSize> stored, const RandomSource& random)
{
    const Outcome<SubKey> subkey = deriveSubkey(vaultKey, Subkey::IdentityWrap);
    if (!subkey)
        return subkey.code();
    file.identity = wrap<DeviceIdentity::storedSize>(subkey->view(), associatedOfIdentity(file), stored, random);
    return Done{};
}

Outcome<Digest> macOf(const KeyFile& file, const VaultKey& vaultKey)
{
    const Outcome<SubKey> subkey = deriveSubkey(vaultKey, Subkey::KeyFileMac);
    if (!subkey)
        return subkey.code();
    return mac(subkey->view(), bytesUnderMac(file));
}

// Behind a MAC that holds, a wrapping that does not open was put there by one who knew the vault key, or by a fault of ours.
template <std::size_t secretSize>
Outcome<SecretBytes> unwrapped(const VaultKey& vaultKey, Subkey use, const ByteBuffer& associated, const Wrapped<secretSize>& wrapped)
{
    const Outcome<SubKey> subkey = deriveSubkey(vaultKey, use);
    if (!subkey)
        return subkey.code();
    return SecretBytes::make(secretSize, [&](ByteRoom room) -> Outcome<Done> {
        if (!unwrap<secretSize>(room.template first<secretSize>(), subkey->view(), associated, wrapped))
            return Code::KeyFileForgedRestoreBackup;
        return Done{};
    });
}

}

Outcome<SlotKey> slotKeyOf(const SecretText& passphrase, const StretchCost& cost, const RandomSource& random)
{
    Salt salt{};
    random(salt);
    Outcome<WrappingKey> key = stretch(bytesOf(passphrase.view()), salt, cost);
    if (!key)
        return key.code();
    return SlotKey{SlotKind::Passphrase, cost, salt, *std::move(key)};
}

Outcome<SlotKey> slotKeyOf(const RecoveryCode& code, const StretchCost& cost, const RandomSource& random)
{
    Salt salt{};
    random(salt);
    Outcome<WrappingKey> key = code.stretched(salt, cost);
    if (!key)
        return key.code();
    return SlotKey{SlotKind::RecoveryCode, cost, salt, *std::move(key)};
}

Keyring::Keyring(KeyFile file, VaultKey vaultKey, DataKey dataKey, DeviceIdentity identity)
    : m_file(std::move(file)), m_vaultKey(std::move(vaultKey)), m_dataKey(std::move(dataKey)), m_identity(std::move(identity))
{
}

Outcome<Keyring> Keyring::create(const SlotKey& passphrase, const SlotKey& recovery, const RandomSource& random, VaultNature nature)
{
    Outcome<VaultKey> vaultKey = VaultKey::random(random);
    if (!vaultKey)
        return vaultKey.code();
    const Outcome<SecretBytes> identity = SecretBytes::random(DeviceIdentity::storedSize, random);
    if (!identity)
        return identity.code();
    KeyFile file;
    file.vaultId = newVaultId(nature, random);
    for (const SlotKey* slotKey : {&passphrase, &recovery})
        file.slots.push_back(wrappedSlot(file, *slotKey, *vaultKey, random));
    if (const Outcome<Done> done = wrapDataKey(file, *vaultKey, random); !done)
        return done.code();
    if (const Outcome<Done> done = wrapIdentity(file, *vaultKey, identity->view().first<DeviceIdentity::storedSize>(), random); !done)
        return done.code();
    return finished(*vaultKey, std::move(file));
}

Outcome<Keyring> Keyring::open(const KeyFile& file, SlotKind kind, const WrappingKey& key)
{
    const Slot* const slot = file.slot(kind);
    if (slot == nullptr)
        return Code::NoSuchSlotUseAnother;
    Outcome<VaultKey> vaultKey = VaultKey::make([&](ByteRoom room) {
        return unwrap<VaultKey::size>(room.first<VaultKey::size>(), key.view(), associatedOf(file, *slot), slot->vaultKey);
    });
    if (!vaultKey)
        return vaultKey.code();
    return openWith(*std::move(vaultKey), file);
}

Outcome<Keyring> Keyring::openWith(VaultKey vaultKey, KeyFile file)
{
    const Outcome<Digest> expected = macOf(file, vaultKey);
    if (!expected)
        return expected.code();
    if (!sameBytes(*expected, file.mac))
        return Code::KeyFileForgedRestoreBackup;
    const Outcome<SecretBytes> dataKeyBytes
        = unwrapped(vaultKey, Subkey::DataKeyWrap, associatedOfDataKey(file), file.dataKey);
    if (!dataKeyBytes)
        return dataKeyBytes.code();
    Outcome<DataKey> dataKey = DataKey::make([&](ByteRoom room) -> Outcome<Done> {
        copyBytes(dataKeyBytes->view(), room);
        return Done{};
    });
    if (!dataKey)
        return dataKey.code();
    const Outcome<SecretBytes> stored = unwrapped(vaultKey, Subkey::IdentityWrap, associatedOfIdentity(file), file.identity);
    if (!stored)
        return stored.code();
    Outcome<DeviceIdentity> identity = DeviceIdentity::fromStored(stored->view().first<DeviceIdentity::storedSize>());
    if (!identity)
        return identity.code();
    return Keyring(std::move(file), std::move(vaultKey), *std::move(dataKey), *std::move(identity));
}

// Opens what it has just made: a ring is never handed out whose file would not open again.
Outcome<Keyring> Keyring::finished(const VaultKey& vaultKey, KeyFile file)
{
    const Outcome<Digest> digest = macOf(file, vaultKey);
    if (!digest)
        return digest.code();
    file.mac = *digest;
    Outcome<VaultKey> own = vaultKey.twin();
    if (!own)
        return own.code();
    return openWith(*std::move(own), std::move(file));
}

Outcome<SecretBytes> Keyring::databaseKeyText() const
{
    return seal::databaseKeyText(m_dataKey, m_file.databaseSalt);
}

Outcome<Keyring> Keyring::withSlot(const SlotKey& slot, const RandomSource& random) const
{
    KeyFile file = m_file;
    ++file.generationNumber;
    const auto isOld = [&slot](const Slot& old) { return old.kind == slot.kind; };
    file.slots.erase(std::remove_if(file.slots.begin(), file.slots.end(), isOld), file.slots.end());
    file.slots.push_back(wrappedSlot(file, slot, m_vaultKey, random));
    std::sort(file.slots.begin(), file.slots.end(), [](const Slot& a, const Slot& b) { return a.kind < b.kind; });
    return finished(m_vaultKey, std::move(file));
}

Outcome<Keyring> Keyring::withFreshDataKey(const RandomSource& random) const
{
    KeyFile file = m_file;
    ++file.generationNumber;
    ++file.databaseNumber;
    if (const Outcome<Done> done = wrapDataKey(file, m_vaultKey, random); !done)
        return done.code();
    return finished(m_vaultKey, std::move(file));
}

Outcome<Keyring> Keyring::withFreshReceiveKey(const RandomSource& random) const
{
    const Outcome<SecretBytes> stored = m_identity.storedWithFreshReceive(random);
    if (!stored)
        return stored.code();
    KeyFile file = m_file;
    ++file.generationNumber;
    ++file.epochNumber;
    if (const Outcome<Done> done = wrapIdentity(file, m_vaultKey, stored->view().first<DeviceIdentity::storedSize>(), random); !done)
        return done.code();
    return finished(m_vaultKey, std::move(file));
}

Outcome<Keyring> unlock(const KeyFile& file, const SecretText& passphrase)
{
    const Slot* const slot = file.slot(SlotKind::Passphrase);
    if (slot == nullptr)
        return Code::NoSuchSlotUseAnother;
    const Outcome<WrappingKey> key = stretch(bytesOf(passphrase.view()), slot->salt, slot->cost);
    if (!key)
        return key.code();
    return Keyring::open(file, SlotKind::Passphrase, *key);
}

Outcome<Keyring> unlock(const KeyFile& file, const RecoveryCode& code)
{
    const Slot* const slot = file.slot(SlotKind::RecoveryCode);
    if (slot == nullptr)
        return Code::NoSuchSlotUseAnother;
    const Outcome<WrappingKey> key = code.stretched(slot->salt, slot->cost);
    if (!key)
        return key.code();
    return Keyring::open(file, SlotKind::RecoveryCode, *key);
}

}
