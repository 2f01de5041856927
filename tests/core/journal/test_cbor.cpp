// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/cbor.h"
#include "tests/core/journal/journaling.h"

#include <rapidcheck.h>

using namespace journaling;

class TestCbor : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // RFC 8949, section 4.2.1: shortest heads, keys in the order of their bytes, none twice.
    void onlyOneWayToWrite_data()
    {
        QTest::addColumn<QByteArray>("hex");
        QTest::addColumn<int>("code");
        for (const char* hex : {"1800", "1817", "190000", "1900ff", "1a0000ffff", "1b00000000ffffffff", "3800", "3817", "3900ff",
                 "5800", "580161", "59000161", "7800", "780161", "9800", "980100", "990000", "b800", "b8010000", "a201000000", "a201000100",
                 "a2181801 1700", "81 1817"})
            QTest::newRow(hex) << QByteArray(hex) << number(Code::NotDeterministicRefuse);
        QTest::newRow("something behind") << QByteArray("0000") << number(Code::TrailingBytesRefuse);
        QTest::newRow("a list and something behind") << QByteArray("80f6") << number(Code::TrailingBytesRefuse);
        QTest::newRow("nothing") << QByteArray() << number(Code::NotCborRefuse);
        QTest::newRow("a negative key") << QByteArray("a12000") << number(Code::NotOurCborRefuse);
    }
    void onlyOneWayToWrite()
    {
        QFETCH(QByteArray, hex);
        QTEST(codeOf(checkCbor(fromHex(hex))), "code");
    }

    void levelsEnd()
    {
        const auto nested = [](int levels) {
            CborWriter writer;
            for (int i = 0; i < levels; ++i)
                writer.array(1);
            return writer.null().written();
        };
        QCOMPARE(codeOf(checkCbor(nested(deepestLevel))), accepted);
        QCOMPARE(codeOf(checkCbor(nested(deepestLevel + 1))), number(Code::NotOurCborRefuse));
        QCOMPARE(codeOf(checkCbor(ByteBuffer(60'000, std::byte{0x81}))), number(Code::NotOurCborRefuse));
    }

    // RFC 3629: sequences longer than needed, surrogates, past U+10FFFF, cut off; and the ends of each range, which are right.
    void textsAreUtf8_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("code");
        for (const char* hex : {"80", "bf", "c080", "c1bf", "c2", "c2c0", "e08080", "e09fbf", "e0a0", "eda080", "edbfbf", "e1a07f",
                 "f0808080", "f08fbfbf", "f4908080", "f5808080", "ff", "f09080", "61c3"})
            QTest::newRow(hex) << QByteArray::fromHex(hex) << number(Code::NotCborRefuse);
        for (const char* hex : {"", "7f", "c280", "dfbf", "e0a080", "ed9fbf", "ee8080", "efbfbf", "f0908080", "f48fbfbf", "61c3bc62"})
            QTest::newRow(*hex ? hex : "none") << QByteArray::fromHex(hex) << accepted;
    }
    void textsAreUtf8()
    {
        QFETCH(QByteArray, text);
        QTEST(codeOf(checkCbor(CborWriter().text(text.toStdString()).written())), "code");
    }

    void numbersComeBack()
    {
        QVERIFY(rc::check("any number is read as it was written, in the fewest bytes", [] {
            const int bits = *rc::gen::inRange(0, 64);
            const auto number = static_cast<std::int64_t>(*rc::gen::arbitrary<std::uint64_t>() >> bits);
            const ByteBuffer written = CborWriter().number(number).written();
            RC_ASSERT(checkCbor(written).ok());
            RC_ASSERT(numberOf(*CborReader(written).next()) == number);
        }));
    }

    void anyBytesAreSafe()
    {
        QVERIFY(rc::check("what is taken from random bytes is written again byte for byte", [](const std::vector<std::uint8_t>& noise) {
            ByteBuffer bytes;
            for (const std::uint8_t b : noise)
                bytes.push_back(static_cast<std::byte>(b));
            CborReader reader(bytes);
            const Outcome<ByteView> item = reader.nextWhole();
            if (item)
                RC_ASSERT(checkCbor(*item).ok());
            else
                RC_ASSERT(!checkCbor(bytes).ok());
        }));
    }
};

QTEST_APPLESS_MAIN(TestCbor)
#include "test_cbor.moc"
