// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/core/seal/sealing.h"

using namespace sealing;

namespace {

Outcome<Keyring> reopened(const Keyring& ring, const SlotKey& key)
{
    const Outcome<KeyFile> file = decode(encode(ring.file()));
    if (!file)
        return file.code();
    return Keyring::open(*file, key.kind, key.key);
}

bool sameKeys(const Keyring& one, const Keyring& other)
{
    return sameBytes(one.vaultKey().view(), other.vaultKey().view()) && sameBytes(one.dataKey().view(), other.dataKey().view())
        && sameBytes(one.identity().stored(), other.identity().stored());
}

}

class TestKeyring : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bothSlotsOpenTheSame()
    {
        const Keyring ring = newRing();
        const Outcome<Keyring> byPassphrase = reopened(ring, passphraseKey());
        const Outcome<Keyring> byCode = reopened(ring, recoveryKey());
        QVERIFY(byPassphrase && byCode);
        QVERIFY(sameKeys(*byPassphrase, ring));
        QVERIFY(sameKeys(*byCode, ring));
        QCOMPARE(ring.file().generationNumber, std::uint64_t(1));
        QVERIFY(sameBytes(ring.databaseKeyText()->view(), databaseKeyText(ring.dataKey(), ring.file().databaseSalt)->view()));
    }

    void newVaultsShareNothing()
    {
        const Keyring one = *Keyring::create(passphraseKey(), recoveryKey(), systemRandom());
        const Keyring other = *Keyring::create(passphraseKey(), recoveryKey(), systemRandom());
        QVERIFY(!sameBytes(one.vaultKey().view(), other.vaultKey().view()));
        QVERIFY(!sameBytes(one.dataKey().view(), other.dataKey().view()));
        QVERIFY(!sameBytes(one.identity().stored(), other.identity().stored()));
        QVERIFY(one.file().vaultId != other.file().vaultId);
        QVERIFY(one.file().databaseSalt != other.file().databaseSalt);
    }

    void noncesAreAllDifferent()
    {
        const KeyFile file = newRing().file();
        QVERIFY(file.slots[0].vaultKey.nonce != file.slots[1].vaultKey.nonce);
        QVERIFY(file.dataKey.nonce != file.identity.nonce);
        QVERIFY(file.slots[1].vaultKey.nonce != file.dataKey.nonce);
    }

    void passphraseChange()
    {
        const Keyring ring = newRing();
        const SlotKey fresh = slotKey(SlotKind::Passphrase, 0xB1, 0x21);
        const Keyring next = *ring.withSlot(fresh, systemRandom());
        QCOMPARE(next.file().generationNumber, std::uint64_t(2));
        QCOMPARE(next.file().slots.size(), std::size_t(2));
        QVERIFY(sameKeys(next, ring));
        QVERIFY(reopened(next, fresh));
        QVERIFY(reopened(next, recoveryKey()));
        QCOMPARE(reopened(next, passphraseKey()).code(), Code::WrongSecretTypeAgain);
        QVERIFY(reopened(ring, passphraseKey()));
        QVERIFY(next.file().slots[1] == ring.file().slots[1]);
    }

    void recoveryCodeReplaced()
    {
        const SlotKey fresh = slotKey(SlotKind::RecoveryCode, 0xB2, 0x22);
        const Keyring next = *newRing().withSlot(fresh, systemRandom());
        QVERIFY(reopened(next, fresh));
        QVERIFY(reopened(next, passphraseKey()));
        QCOMPARE(reopened(next, recoveryKey()).code(), Code::WrongSecretTypeAgain);
    }

    void deviceKeystoreAdded()
    {
        const SlotKey device{SlotKind::DeviceKeystore, {}, {}, filledKey(0xD0)};
        const Keyring next = *newRing().withSlot(device, systemRandom());
        QCOMPARE(next.file().slots.size(), std::size_t(3));
        QVERIFY(reopened(next, device));
        QVERIFY(reopened(next, passphraseKey()));
    }

    void freshDataKey()
    {
        const Keyring ring = newRing();
        const Keyring next = *ring.withFreshDataKey(systemRandom());
        QCOMPARE(next.file().databaseNumber, std::uint32_t(2));
        QCOMPARE(next.file().generationNumber, std::uint64_t(2));
        QVERIFY(!sameBytes(next.dataKey().view(), ring.dataKey().view()));
        QVERIFY(next.file().databaseSalt != ring.file().databaseSalt);
        QVERIFY(sameBytes(next.vaultKey().view(), ring.vaultKey().view()));
        QVERIFY(sameBytes(next.identity().stored(), ring.identity().stored()));
        QVERIFY(sameKeys(*reopened(next, recoveryKey()), next));
    }

    void freshReceiveKey()
    {
        const Keyring ring = newRing();
        const Keyring next = *ring.withFreshReceiveKey(systemRandom());
        QCOMPARE(next.file().epochNumber, std::uint32_t(2));
        QCOMPARE(next.file().generationNumber, std::uint64_t(2));
        QVERIFY(next.identity().signing().publicKey() == ring.identity().signing().publicKey());
        QVERIFY(next.identity().inbox().publicKey() == ring.identity().inbox().publicKey());
        QVERIFY(!(next.identity().receive().publicKey() == ring.identity().receive().publicKey()));
        QVERIFY(sameBytes(next.dataKey().view(), ring.dataKey().view()));
        QVERIFY(sameKeys(*reopened(next, passphraseKey()), next));
    }

    // Parts that open under one another's files would let an old data key or slot be put back.
    void partsOfOtherFilesAreForgery()
    {
        const Keyring ring = newRing();
        const Keyring next = *ring.withFreshDataKey(systemRandom());
        KeyFile mixed = next.file();
        mixed.dataKey = ring.file().dataKey;
        mixed.databaseSalt = ring.file().databaseSalt;
        mixed.databaseNumber = ring.file().databaseNumber;
        QCOMPARE(Keyring::open(mixed, SlotKind::Passphrase, passphraseKey().key).code(), Code::KeyFileForgedRestoreBackup);
        const Keyring stranger = *Keyring::create(passphraseKey(), recoveryKey(), systemRandom());
        KeyFile grafted = ring.file();
        grafted.slots[0] = stranger.file().slots[0];
        QCOMPARE(Keyring::open(grafted, SlotKind::Passphrase, passphraseKey().key).code(), Code::WrongSecretTypeAgain);
    }

    void unlockedByWhatAPersonKnows()
    {
        const SecretText passphrase = textOf("gr\u00FCn iron, loud chains");
        const RecoveryCode code = *RecoveryCode::generate(systemRandom());
        const Outcome<SlotKey> byPassphrase = slotKeyOf(passphrase, weakestStretch, systemRandom());
        const Outcome<SlotKey> byCode = slotKeyOf(code, weakestStretch, systemRandom());
        QVERIFY(byPassphrase && byCode);
        QVERIFY(byPassphrase->salt != byCode->salt);
        const Keyring ring = *Keyring::create(*byPassphrase, *byCode, systemRandom());
        const KeyFile file = *decode(encode(ring.file()));
        QVERIFY(sameKeys(*unlock(file, passphrase), ring));
        QVERIFY(sameKeys(*unlock(file, *RecoveryCode::parse(code.text()->view())), ring));
        QCOMPARE(unlock(file, textOf("gr\u00FCn iron, loud chain")).code(), Code::WrongSecretTypeAgain);
        QCOMPARE(unlock(file, *RecoveryCode::generate(systemRandom())).code(), Code::WrongSecretTypeAgain);
        KeyFile without = file;
        without.slots.pop_back();
        QCOMPARE(unlock(without, code).code(), Code::NoSuchSlotUseAnother);
    }

    // Whichever block of secret memory is the first not to be had, the answer is that code, and all others go back wiped.
    void refusedMemoryAnywhere()
    {
        const SlotKey passphrase = passphraseKey();
        const SlotKey recovery = recoveryKey();
        const Keyring ring = newRing();
        const std::array<std::function<Outcome<Keyring>()>, 5> operations{
            [&] { return Keyring::create(passphrase, recovery, countingRandom()); },
            [&] { return Keyring::open(ring.file(), SlotKind::Passphrase, passphrase.key); },
            [&] { return ring.withSlot(recovery, countingRandom()); },
            [&] { return ring.withFreshDataKey(countingRandom()); },
            [&] { return ring.withFreshReceiveKey(countingRandom()); },
        };
        for (const auto& operation : operations) {
            int blocks = 0;
            bool done = false;
            while (!done) {
                WatchingSource source(blocks++);
                {
                    const Outcome<Keyring> outcome = operation();
                    done = outcome.ok();
                    QVERIFY(done || outcome.code() == Code::MemoryRefusedCloseOthers);
                }
                QVERIFY(source.wiped);
                QCOMPARE(source.out(), std::size_t(0));
                QVERIFY(blocks < 100);
            }
            QVERIFY(blocks > 5);
        }
    }
};

QTEST_APPLESS_MAIN(TestKeyring)
#include "test_keyring.moc"
