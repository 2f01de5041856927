// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/core/seal/keyfileversion1.h"
#include "tests/core/seal/sealing.h"

#include <rapidcheck.h>

using namespace sealing;

namespace {

constexpr std::size_t firstSlot = 64;
constexpr std::size_t secondSlot = 164;

/// The bytes with their checksum made right again, as a forger would.
ByteBuffer withChecksum(ByteBuffer bytes)
{
    const Digest checksum = hash(ByteView(bytes).first(bytes.size() - sizeof(Digest)));
    copyBytes(checksum, ByteRoom(bytes).last(sizeof(Digest)));
    return bytes;
}

ByteBuffer changedAt(std::size_t place, unsigned value)
{
    ByteBuffer bytes = fromHex(keyFileOfVersion1);
    bytes[place] = static_cast<std::byte>(value);
    return withChecksum(bytes);
}

Outcome<Keyring> opened(ByteView bytes, const SlotKey& key)
{
    const Outcome<KeyFile> file = decode(bytes);
    if (!file)
        return file.code();
    return Keyring::open(*file, key.kind, key.key);
}

}

class TestKeyFile : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bytesOfVersion1()
    {
        QCOMPARE(toHex(encode(newRing().file())), QByteArray(keyFileOfVersion1));
        QVERIFY(opened(fromHex(keyFileOfVersion1), passphraseKey()));
        QVERIFY(opened(fromHex(keyFileOfVersion1), recoveryKey()));
    }

    void readsWhatItWrote()
    {
        QVERIFY(rc::check("any file is the same after writing and reading", [] {
            const RandomSource random = systemRandom();
            KeyFile file = newRing().file();
            file.generationNumber = *rc::gen::nonZero<std::uint64_t>();
            file.databaseNumber = *rc::gen::nonZero<std::uint32_t>();
            file.epochNumber = *rc::gen::nonZero<std::uint32_t>();
            random(file.vaultId);
            random(file.identity.text);
            random(file.mac);
            file.slots[0].cost = {{*rc::gen::arbitrary<std::uint32_t>()}, *rc::gen::arbitrary<std::uint32_t>()};
            if (*rc::gen::arbitrary<bool>())
                file.slots.push_back({SlotKind::DeviceKeystore, {}, {}, {}});
            else if (*rc::gen::arbitrary<bool>())
                file.slots.pop_back();
            const ByteBuffer bytes = encode(file);
            const Outcome<KeyFile> again = decode(bytes);
            RC_ASSERT(again.ok());
            RC_ASSERT(*again == file);
            RC_ASSERT(encode(*again) == bytes);
        }));
    }

    void slotsAreWrittenInOrder()
    {
        KeyFile file = newRing().file();
        const ByteBuffer inOrder = encode(file);
        std::swap(file.slots[0], file.slots[1]);
        QVERIFY(encode(file) == inOrder);
    }

    void everyFlippedBitIsDamage()
    {
        const ByteBuffer good = fromHex(keyFileOfVersion1);
        for (std::size_t bit = 0; bit < 8 * good.size(); ++bit) {
            ByteBuffer bad = good;
            bad[bit / 8] ^= std::byte{1} << bit % 8;
            const Outcome<KeyFile> file = decode(bad);
            QVERIFY2(!file, qPrintable(QString::number(bit)));
            QCOMPARE(file.code(), Code::KeyFileDamagedRestoreBackup);
        }
    }

    void everyTruncationAndGrowthIsDamage()
    {
        ByteBuffer bytes = fromHex(keyFileOfVersion1);
        for (std::size_t size = 0; size < bytes.size(); ++size)
            QCOMPARE(decode(ByteView(bytes).first(size)).code(), Code::KeyFileDamagedRestoreBackup);
        const ByteBuffer good = bytes;
        for (int more = 0; more < 300; ++more) {
            bytes.push_back(std::byte{});
            QCOMPARE(decode(bytes).code(), Code::KeyFileDamagedRestoreBackup);
            QCOMPARE(decode(withChecksum(bytes)).code(), Code::KeyFileDamagedRestoreBackup);
        }
        QVERIFY(decode(good));
    }

    void everyTruncationWithARightChecksumIsDamage()
    {
        const ByteBuffer good = fromHex(keyFileOfVersion1);
        for (std::size_t size = sizeof(Digest); size < good.size(); ++size) {
            const ByteView start = ByteView(good).first(size);
            QCOMPARE(decode(withChecksum({start.begin(), start.end()})).code(), Code::KeyFileDamagedRestoreBackup);
        }
    }

    void everyWrongKeyIsAWrongSecret()
    {
        const KeyFile file = *decode(fromHex(keyFileOfVersion1));
        for (std::size_t bit = 0; bit < 256; ++bit) {
            const WrappingKey wrong = *WrappingKey::make([bit](ByteRoom room) -> Outcome<Done> {
                std::fill(room.begin(), room.end(), std::byte{0xA1});
                room[bit / 8] ^= std::byte{1} << bit % 8;
                return Done{};
            });
            QCOMPARE(Keyring::open(file, SlotKind::Passphrase, wrong).code(), Code::WrongSecretTypeAgain);
        }
        QCOMPARE(Keyring::open(file, SlotKind::RecoveryCode, passphraseKey().key).code(), Code::WrongSecretTypeAgain);
        QCOMPARE(Keyring::open(file, SlotKind::DeviceKeystore, passphraseKey().key).code(), Code::NoSuchSlotUseAnother);
    }

    // A forger can make the checksum right, but neither slot opens a file of which one bit was changed.
    void everyForgedBitIsRefused()
    {
        const ByteBuffer good = fromHex(keyFileOfVersion1);
        const SlotKey passphrase = passphraseKey();
        const SlotKey recovery = recoveryKey();
        std::map<Code, int> seen;
        for (std::size_t bit = 0; bit < 8 * (good.size() - sizeof(Digest)); ++bit) {
            ByteBuffer forged = good;
            forged[bit / 8] ^= std::byte{1} << bit % 8;
            forged = withChecksum(forged);
            for (const SlotKey* key : {&passphrase, &recovery}) {
                const Outcome<Keyring> ring = opened(forged, *key);
                QVERIFY2(!ring, qPrintable(QString::number(bit)));
                ++seen[ring.code()];
                const std::size_t own = key == &passphrase ? firstSlot : secondSlot;
                const bool inOwnSlot = bit / 8 >= own && bit / 8 < own + 100;
                const bool inVaultId = bit / 8 >= 16 && bit / 8 < 32;
                if (ring.code() == Code::WrongSecretTypeAgain)
                    QVERIFY(inOwnSlot || inVaultId);
                if (ring.code() == Code::KeyFileForgedRestoreBackup)
                    QVERIFY(!inOwnSlot && !inVaultId);
            }
        }
        QCOMPARE(seen.size(), std::size_t(4));
        QVERIFY(seen[Code::KeyFileForgedRestoreBackup] > seen[Code::WrongSecretTypeAgain]);
        QCOMPARE(seen[Code::KeyFileNewerUpdateApp], 2 * 16 - 2);
        QVERIFY(seen[Code::KeyFileDamagedRestoreBackup] > 0);
    }

    void newerVersionIsSaid()
    {
        QCOMPARE(decode(changedAt(8, 2)).code(), Code::KeyFileNewerUpdateApp);
        QCOMPARE(decode(changedAt(9, 0xFF)).code(), Code::KeyFileNewerUpdateApp);
        QCOMPARE(decode(changedAt(8, 0)).code(), Code::KeyFileDamagedRestoreBackup);
        ByteBuffer longer = changedAt(8, 2);
        longer.resize(5000);
        QCOMPARE(decode(withChecksum(longer)).code(), Code::KeyFileNewerUpdateApp);
        longer.resize(largestKeyFileSize + 1);
        QCOMPARE(decode(withChecksum(longer)).code(), Code::KeyFileDamagedRestoreBackup);
    }

    void nonsenseBehindARightChecksum_data()
    {
        QTest::addColumn<unsigned>("place");
        QTest::addColumn<unsigned>("value");
        QTest::newRow("no slot") << 10U << 0U;
        QTest::newRow("four slots") << 10U << 4U;
        QTest::newRow("many slots") << 11U << 0xFFU;
        QTest::newRow("other size") << 12U << 0U;
        QTest::newRow("huge size") << 15U << 0xFFU;
        QTest::newRow("generation 0") << 32U << 0U;
        QTest::newRow("database 0") << 40U << 0U;
        QTest::newRow("epoch 0") << 44U << 0U;
        QTest::newRow("slot of kind 0") << 64U << 0U;
        QTest::newRow("slot of kind 4") << 164U << 4U;
        QTest::newRow("slots in the wrong order") << 64U << 2U;
        QTest::newRow("one kind twice") << 164U << 1U;
        QTest::newRow("keystore with a cost") << 164U << 3U;
        QTest::newRow("filled gap") << 65U << 1U;
    }

    void nonsenseBehindARightChecksum()
    {
        QFETCH(unsigned, place);
        QFETCH(unsigned, value);
        QCOMPARE(decode(changedAt(place, value)).code(), Code::KeyFileDamagedRestoreBackup);
    }

    void keystoreIsNeverTheOnlyWayIn()
    {
        KeyFile file = newRing().file();
        file.slots = {{SlotKind::DeviceKeystore, {}, {}, {}}};
        QCOMPARE(decode(encode(file)).code(), Code::KeyFileDamagedRestoreBackup);
    }

    // The cost is refused before it is spent, whatever the secret.
    void absurdCostsOfAFile()
    {
        KeyFile file = newRing().file();
        const SecretText secret = textOf("any secret at all");
        file.slots[0].cost = {{0xFFFFFFFF}, 0xFFFFFFFF};
        const Outcome<KeyFile> costly = decode(encode(file));
        QVERIFY(costly);
        QCOMPARE(unlock(*costly, secret).code(), Code::StretchTooCostlyRestoreBackup);
        file.slots[0].cost = {{8}, 1};
        QCOMPARE(unlock(*decode(encode(file)), secret).code(), Code::StretchTooWeakRestoreBackup);
    }

    void anyBytesAreTaken()
    {
        QVERIFY(rc::check("whatever the bytes, with or without a right checksum, reading ends", [](const std::vector<std::uint8_t>& noise) {
            const ByteView view = std::as_bytes(std::span(noise));
            RC_ASSERT(decode(view).code() == Code::KeyFileDamagedRestoreBackup);
            ByteBuffer bytes = fromHex(keyFileOfVersion1);
            const std::size_t at = *rc::gen::inRange<std::size_t>(10, bytes.size());
            copyBytes(view, ByteRoom(bytes).subspan(at));
            bytes.resize(*rc::gen::inRange<std::size_t>(42, bytes.size() + 1));
            const Outcome<KeyFile> file = decode(withChecksum(bytes));
            RC_ASSERT(file.ok() || file.code() == Code::KeyFileDamagedRestoreBackup);
        }));
    }
};

QTEST_APPLESS_MAIN(TestKeyFile)
#include "test_keyfile.moc"
