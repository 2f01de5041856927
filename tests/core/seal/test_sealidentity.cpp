// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/seal/identity.h"
#include "tests/core/seal/sealing.h"

#include <rapidcheck.h>

using namespace sealing;

class TestSealIdentity : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // RFC 8032, section 7.1, tests 1 to 3.
    void signaturesOfTheStandard_data()
    {
        QTest::addColumn<QByteArray>("seed");
        QTest::addColumn<QByteArray>("publicKey");
        QTest::addColumn<QByteArray>("message");
        QTest::addColumn<QByteArray>("signature");
        QTest::newRow("test 1") << QByteArray("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")
                                << QByteArray("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a") << QByteArray()
                                << QByteArray("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39"
                                              "701cf9b46bd25bf5f0595bbe24655141438e7a100b");
        QTest::newRow("test 2") << QByteArray("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")
                                << QByteArray("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c") << QByteArray("72")
                                << QByteArray("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f36"
                                              "13d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
        QTest::newRow("test 3") << QByteArray("c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7")
                                << QByteArray("fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025") << QByteArray("af82")
                                << QByteArray("6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f7"
                                              "60984dc6594a7c15e9716ed28dc027beceea1ec40a");
    }

    void signaturesOfTheStandard()
    {
        QFETCH(QByteArray, seed);
        QFETCH(QByteArray, publicKey);
        QFETCH(QByteArray, message);
        QFETCH(QByteArray, signature);
        const ByteArray<32> seedBytes = arrayOf<32>(seed);
        const ByteBuffer text = fromHex(message);
        const SigningKey key = *SigningKey::fromSeed(FixedView<32>(seedBytes));
        QCOMPARE(toHex(key.publicKey().bytes), publicKey);
        const Signature made = key.sign(text);
        QCOMPARE(toHex(made), signature);
        QVERIFY(checkSignature(key.publicKey(), text, made));
    }

    void anyChangeSpoilsASignature()
    {
        const SigningKey key = *SigningKey::fromSeed(FixedView<32>(arrayOf<32>("a5")));
        const ByteBuffer message = fromHex("00112233");
        const Signature good = key.sign(message);
        for (std::size_t bit = 0; bit < 8 * good.size(); ++bit) {
            Signature bad = good;
            bad[bit / 8] ^= std::byte{1} << bit % 8;
            QCOMPARE(checkSignature(key.publicKey(), message, bad).code(), Code::SignatureWrongRefuse);
        }
        QCOMPARE(checkSignature(key.publicKey(), fromHex("00112232"), good).code(), Code::SignatureWrongRefuse);
        QCOMPARE(checkSignature(SigningPublicKey{}, message, good).code(), Code::SignatureWrongRefuse);
    }

    // RFC 7748, section 6.1: Alice's private and public key.
    void publicKeyOfTheStandard()
    {
        const auto secret = arrayOf<32>("77076d0a7318a57d3c16c17251b26645df4c2f87ebc0992ab177fba51db92c2a");
        QCOMPARE(toHex(BoxKey::fromSecret(FixedView<32>(secret))->publicKey().bytes),
            QByteArray("8520f0098930a754748b7ddcb43ef75a0dbf3a0d26381af4eba4a98eaa9b4e6a"));
    }

    void sealedOpensForOneOnly()
    {
        const BoxKey ours = *BoxKey::fromSecret(FixedView<32>(arrayOf<32>("08")));
        const BoxKey theirs = *BoxKey::fromSecret(FixedView<32>(arrayOf<32>("10")));
        QVERIFY(rc::check("what is sealed for a key opens with it, and with no other", [&](const std::string& message) {
            const ByteBuffer sealed = *sealFor(ours.publicKey(), bytesOf(message));
            RC_ASSERT(sealed.size() == message.size() + 48);
            const Outcome<SecretBytes> opened = ours.open(sealed);
            RC_ASSERT(opened.ok());
            RC_ASSERT(sameBytes(opened->view(), bytesOf(message)));
            RC_ASSERT(theirs.open(sealed).code() == Code::SealNotForUsRefuse);
            RC_ASSERT(*sealFor(ours.publicKey(), bytesOf(message)) != sealed);
        }));
    }

    void damagedSealIsRefused()
    {
        const BoxKey ours = *BoxKey::fromSecret(FixedView<32>(arrayOf<32>("08")));
        const ByteBuffer sealed = *sealFor(ours.publicKey(), bytesOf("two answers"));
        for (std::size_t bit = 0; bit < 8 * sealed.size(); ++bit) {
            // The highest bit of the sender's key has no meaning to X25519 (RFC 7748, section 5), yet goes into the nonce.
            ByteBuffer bad = sealed;
            bad[bit / 8] ^= std::byte{1} << bit % 8;
            QCOMPARE(ours.open(bad).code(), Code::SealNotForUsRefuse);
        }
        for (std::size_t size = 0; size < sealed.size(); ++size)
            QCOMPARE(ours.open(ByteView(sealed).first(size)).code(), Code::SealNotForUsRefuse);
    }

    void noSealForAKeyOfNobody()
    {
        QCOMPARE(sealFor(BoxPublicKey{}, bytesOf("x")).code(), Code::SealNotForUsRefuse);
    }

    void identityIsItsThreeKeys()
    {
        const SecretBytes stored = *SecretBytes::random(DeviceIdentity::storedSize, countingRandom());
        const DeviceIdentity device = *DeviceIdentity::fromStored(stored.view().first<96>());
        QVERIFY(sameBytes(device.stored(), stored.view()));
        const DeviceIdentity next = *DeviceIdentity::fromStored(device.storedWithFreshReceive(systemRandom())->view().first<96>());
        QVERIFY(next.signing().publicKey() == device.signing().publicKey());
        QVERIFY(next.inbox().publicKey() == device.inbox().publicKey());
        QVERIFY(!(next.receive().publicKey() == device.receive().publicKey()));
        QVERIFY(!(device.receive().publicKey() == device.inbox().publicKey()));
        const ByteBuffer sealed = *sealFor(device.inbox().publicKey(), bytesOf("answer"));
        QVERIFY(next.inbox().open(sealed));
        QVERIFY(!next.receive().open(sealed));
    }

    void refusedMemoryIsACode()
    {
        const SecretBytes stored = *SecretBytes::random(DeviceIdentity::storedSize, countingRandom());
        for (int blocks = 0; blocks < 4; ++blocks) {
            WatchingSource source(blocks);
            QCOMPARE(DeviceIdentity::fromStored(stored.view().first<96>()).code(), Code::MemoryRefusedCloseOthers);
            QCOMPARE(source.out(), std::size_t(0));
            QVERIFY(source.wiped);
        }
        WatchingSource source(4);
        QVERIFY(DeviceIdentity::fromStored(stored.view().first<96>()));
    }
};

QTEST_APPLESS_MAIN(TestSealIdentity)
#include "test_sealidentity.moc"
