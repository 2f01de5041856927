// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/seal/keys.h"
#include "tests/core/seal/sealing.h"

#include <rapidcheck.h>
#include <set>

using namespace sealing;

namespace {

constexpr std::array uses{Subkey::DataKeyWrap, Subkey::IdentityWrap, Subkey::KeyFileMac, Subkey::WitnessMac};

}

class TestSealKeys : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // draft-irtf-cfrg-xchacha-03, appendix A.3.1.
    void exampleOfTheDraft()
    {
        const ByteView plain = bytesOf("Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the future, "
                                       "sunscreen would be it.");
        const ByteBuffer key = fromHex("808182838485868788898a8b8c8d8e8f909192939495969798999a9b9c9d9e9f");
        const ByteBuffer associated = fromHex("50515253c0c1c2c3c4c5c6c7");
        const RandomSource nonce = [](ByteRoom room) { copyBytes(fromHex("404142434445464748494a4b4c4d4e4f5051525354555657"), room); };
        const Wrapped<114> wrapped = wrap<114>(FixedView<32>(key), associated, plain.first<114>(), nonce);
        QCOMPARE(toHex(wrapped.text),
            QByteArray("bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb731c7f1b0b4aa6440bf3a82f4eda7e39ae64c6708c54c216"
                       "cb96b72e1213b4522f8c9ba40db5d945b11b69b982c1bb9e3f3fac2bc369488f76b2383565d3fff921f9664c97637da9768812f615c68b13"
                       "b52ec0875924c1c7987947deafd8780acf49"));
        ByteArray<114> again{};
        QVERIFY(unwrap<114>(again, FixedView<32>(key), associated, wrapped));
        QVERIFY(sameBytes(again, plain));
    }

    void anyChangeIsRefused()
    {
        const WrappingKey key = filledKey(0x31);
        const ByteBuffer associated = fromHex("0102030405");
        const ByteArray<32> secret = arrayOf<32>("5ec7e75ec7e75ec7e7");
        const Wrapped<32> wrapped = wrap<32>(key.view(), associated, FixedView<32>(secret), countingRandom());
        ByteBuffer parts(wrapped.nonce.begin(), wrapped.nonce.end());
        parts.insert(parts.end(), wrapped.text.begin(), wrapped.text.end());
        parts.insert(parts.end(), associated.begin(), associated.end());
        for (std::size_t bit = 0; bit < 8 * parts.size(); ++bit) {
            ByteBuffer changed = parts;
            changed[bit / 8] ^= std::byte{1} << bit % 8;
            Wrapped<32> other;
            copyBytes(ByteView(changed).first(24), other.nonce);
            copyBytes(ByteView(changed).subspan(24, 48), other.text);
            ByteArray<32> room{};
            const Outcome<Done> opened = unwrap<32>(room, key.view(), ByteView(changed).subspan(72), other);
            QVERIFY2(!opened, qPrintable(QString::number(bit)));
            QCOMPARE(opened.code(), Code::WrongSecretTypeAgain);
            QVERIFY(room != secret);
        }
        ByteArray<32> room{};
        QVERIFY(unwrap<32>(room, key.view(), associated, wrapped));
        QVERIFY(room == secret);
    }

    // BLAKE2b with salt and personal string in Python's hashlib: blake2b(key=…, salt=number, person=b"SteelVlt", digest_size=32).
    void subkeysAsWorkedOutElsewhere()
    {
        const VaultKey key = *VaultKey::random(countingRandom());
        const std::array<QByteArray, uses.size()> expected{
            "43e78f29068cd47519e6619c0a6f1ec8796779f3e8dea3612e4edf241396f216",
            "3fe996593298aea67bdb46bfd960d889815ac3b7b5432a9e20e1ed0dfd826b02",
            "34ca55145a45b2f7a7a6de445644af507a255dcc0a542beab1a424f3e1e3cfdf",
            "90418461f241fe11983cf6963dd6dd68c55d386b2f7dff8d3f9fbeaca12ca833",
        };
        for (std::size_t at = 0; at < uses.size(); ++at)
            QCOMPARE(toHex(deriveSubkey(key, uses[at])->view()), expected[at]);
    }

    void subkeysDiffer()
    {
        QVERIFY(rc::check("of two vault keys, all subkeys and the keys themselves differ", [] {
            std::set<QByteArray> all;
            for (int vault = 0; vault < 2; ++vault) {
                const VaultKey key = *VaultKey::random(systemRandom());
                all.insert(toHex(key.view()));
                for (const Subkey use : uses)
                    all.insert(toHex(deriveSubkey(key, use)->view()));
            }
            RC_ASSERT(all.size() == 2 * (uses.size() + 1));
        }));
    }

    void databaseKeyIsKeyThenSalt()
    {
        const DataKey key = *DataKey::random(countingRandom());
        Salt salt{};
        salt.fill(std::byte{0xE0});
        const SecretBytes text = *databaseKeyText(key, salt);
        QCOMPARE(text.size(), std::size_t(96));
        const QByteArray expected = toHex(key.view()) + toHex(salt);
        QVERIFY(sameBytes(text.view(), bytesOf(expected.toStdString())));
    }

    void twinIsItsOwn()
    {
        WatchingSource source;
        {
            Outcome<VaultKey> key = VaultKey::random(countingRandom());
            const VaultKey twin = *key->twin();
            const QByteArray before = toHex(key->view());
            QVERIFY(twin.view().data() != key->view().data());
            key = VaultKey::random(systemRandom());
            QCOMPARE(toHex(twin.view()), before);
        }
        QVERIFY(source.wiped);
        QCOMPARE(source.out(), std::size_t(0));
    }

    void refusedMemoryIsACode()
    {
        const VaultKey key = filledKey<VaultKey>(1);
        const DataKey dataKey = filledKey<DataKey>(2);
        WatchingSource source(0);
        QCOMPARE(deriveSubkey(key, Subkey::WitnessMac).code(), Code::MemoryRefusedCloseOthers);
        QCOMPARE(key.twin().code(), Code::MemoryRefusedCloseOthers);
        QCOMPARE(databaseKeyText(dataKey, Salt{}).code(), Code::MemoryRefusedCloseOthers);
    }
};

QTEST_APPLESS_MAIN(TestSealKeys)
#include "test_sealkeys.moc"
