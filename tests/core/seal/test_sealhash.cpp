// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/seal/hash.h"
#include "tests/core/seal/sealing.h"

#include <rapidcheck.h>
#include <sodium.h>

using namespace sealing;

namespace {

/// Input of RFC 7693, appendix E: a Fibonacci sequence, whose high byte is taken.
ByteBuffer selfTestSequence(std::size_t length, std::uint32_t seed)
{
    std::uint32_t a = 0xDEAD4BAD * seed;
    std::uint32_t b = 1;
    ByteBuffer bytes(length);
    for (std::byte& byte : bytes) {
        const std::uint32_t next = a + b;
        a = b;
        b = next;
        byte = static_cast<std::byte>(next >> 24);
    }
    return bytes;
}

ByteBuffer anyLength(std::size_t size, const ByteBuffer& key, const ByteBuffer& input)
{
    ByteBuffer digest(size);
    crypto_generichash(rawRoom(digest), size, raw(input), input.size(), raw(key), key.size());
    return digest;
}

}

class TestSealHash : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // RFC 7693, appendix E: the hash over 48 hashes of four lengths, and its published value. Ours are those of 32 bytes.
    void selfTestOfTheStandard()
    {
        Hasher all = *Hasher::make();
        for (const std::size_t size : {20U, 32U, 48U, 64U}) {
            for (const std::size_t length : {0U, 3U, 128U, 129U, 255U, 1024U}) {
                const ByteBuffer input = selfTestSequence(length, static_cast<std::uint32_t>(length));
                const ByteBuffer key = selfTestSequence(size, static_cast<std::uint32_t>(size));
                if (size == sizeof(Digest)) {
                    all.add(hash(input));
                    all.add(mac(FixedView<32>(key), input));
                } else {
                    all.add(anyLength(size, {}, input));
                    all.add(anyLength(size, key, input));
                }
            }
        }
        QCOMPARE(toHex(all.finish()), QByteArray("c23a7800d98123bd10f506c61e29da5603d763b8bbad2e737f5e765a7bccd475"));
    }

    // Values of BLAKE2b with digest_size=32 in Python's hashlib, which follows RFC 7693.
    void knownAnswers()
    {
        QCOMPARE(toHex(hash(bytesOf("abc"))), QByteArray("bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319"));
        QCOMPARE(toHex(hash({})), QByteArray("0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8"));
    }

    void piecesMakeTheWhole()
    {
        QVERIFY(rc::check("hashed in pieces as at once, with and without a key", [](const std::vector<std::string>& pieces) {
            const WrappingKey key = *WrappingKey::random(countingRandom());
            Hasher plain = *Hasher::make();
            Hasher keyed = *Hasher::withKey(key.view());
            std::string whole;
            for (const std::string& piece : pieces) {
                plain.add(bytesOf(piece));
                keyed.add(bytesOf(piece));
                whole += piece;
            }
            RC_ASSERT(plain.finish() == hash(bytesOf(whole)));
            RC_ASSERT(keyed.finish() == mac(key.view(), bytesOf(whole)));
            RC_ASSERT(mac(key.view(), bytesOf(whole)) != hash(bytesOf(whole)));
        }));
    }

    void refusedMemoryIsACode()
    {
        WatchingSource source(0);
        QCOMPARE(Hasher::make().code(), Code::MemoryRefusedCloseOthers);
    }

    void stateIsWiped()
    {
        WatchingSource source;
        {
            Hasher hasher = *Hasher::make();
            hasher.add(bytesOf("a name"));
            QVERIFY(hasher.finish() == hash(bytesOf("a name")));
        }
        QCOMPARE(source.out(), std::size_t(0));
        QVERIFY(source.wiped);
    }

    void comparesWholeAndLength()
    {
        QVERIFY(sameBytes({}, {}));
        QVERIFY(sameBytes(bytesOf("chain"), bytesOf("chain")));
        QVERIFY(!sameBytes(bytesOf("chain"), bytesOf("chais")));
        QVERIFY(!sameBytes(bytesOf("chain"), bytesOf("xhain")));
        QVERIFY(!sameBytes(bytesOf("chain"), bytesOf("chains")));
        QVERIFY(!sameBytes(bytesOf("chain"), {}));
    }
};

QTEST_APPLESS_MAIN(TestSealHash)
#include "test_sealhash.moc"
