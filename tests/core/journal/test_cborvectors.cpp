// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/cbor.h"
#include "tests/core/journal/journaling.h"

using namespace journaling;

namespace {

/// Writes an item anew from what the reader says about it.
void copyItem(CborReader& reader, CborWriter& writer)
{
    const CborHead head = *reader.next();
    switch (head.type) {
    case CborType::Unsigned: writer.unsignedNumber(head.count); break;
    case CborType::Negative: writer.number(*numberOf(head)); break;
    case CborType::Bytes: writer.bytes(head.bytes); break;
    case CborType::Text: writer.text(*textOf(head)); break;
    case CborType::Array: writer.array(head.count); break;
    case CborType::Map: writer.map(head.count); break;
    case CborType::False: writer.boolean(false); break;
    case CborType::True: writer.boolean(true); break;
    case CborType::Null: writer.null(); break;
    }
    const std::uint64_t inside = head.type == CborType::Array ? head.count : head.type == CborType::Map ? 2 * head.count : 0;
    for (std::uint64_t i = 0; i < inside; ++i)
        copyItem(reader, writer);
}

constexpr Code notOurs = Code::NotOurCborRefuse;
constexpr Code openEnded = Code::NotDeterministicRefuse;

}

class TestCborVectors : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // RFC 8949, appendix A, rows of the kinds of item that entries have: taken, and written again as they were.
    void examplesTaken_data()
    {
        QTest::addColumn<QByteArray>("hex");
        for (const char* hex : {"00", "01", "0a", "17", "1818", "1819", "1864", "1903e8", "1a000f4240", "1b000000e8d4a51000",
                 "1bffffffffffffffff", "20", "29", "3863", "3903e7", "f4", "f5", "f6", "40", "4401020304", "60", "6161", "6449455446",
                 "62225c", "62c3bc", "63e6b0b4", "64f0908591", "80", "83010203", "8301820203820405",
                 "98190102030405060708090a0b0c0d0e0f101112131415161718181819", "a0", "a201020304"})
            QTest::newRow(hex) << QByteArray(hex);
    }
    void examplesTaken()
    {
        QFETCH(QByteArray, hex);
        const ByteBuffer bytes = fromHex(hex);
        QCOMPARE(codeOf(checkCbor(bytes)), accepted);
        CborReader reader(bytes);
        CborWriter writer;
        copyItem(reader, writer);
        QVERIFY(reader.atEnd());
        QCOMPARE(toHex(writer.written()), hex);
    }

    // The remaining rows of appendix A: floats, tags, simple values, texts as keys, items of open length.
    void examplesRefused_data()
    {
        QTest::addColumn<QByteArray>("hex");
        QTest::addColumn<int>("code");
        const auto rows = [](Code code, std::initializer_list<const char*> hexes) {
            for (const char* hex : hexes)
                QTest::newRow(hex) << QByteArray(hex) << number(code);
        };
        rows(notOurs, {"c249010000000000000000", "c349010000000000000000", "f90000", "f98000", "f93c00", "fb3ff199999999999a", "f93e00",
                          "f97bff", "fa47c35000", "fa7f7fffff", "fb7e37e43c8800759c", "f90001", "f90400", "f9c400", "fbc010666666666666",
                          "f97c00", "f97e00", "f9fc00", "fa7f800000", "fa7fc00000", "faff800000", "fb7ff0000000000000",
                          "fb7ff8000000000000", "fbfff0000000000000", "f7", "c074323031332d30332d32315432303a30343a30305a",
                          "c11a514b67b0", "c1fb41d452d9ec200000", "d74401020304", "d818456449455446",
                          "d82076687474703a2f2f7777772e6578616d706c652e636f6d", "a26161016162820203", "826161a161626163",
                          "a56161614161626142616361436164614461656145"});
        rows(openEnded, {"5f42010243030405ff", "7f657374726561646d696e67ff", "9fff", "9f018202039f0405ffff", "9f01820203820405ff",
                            "83018202039f0405ff", "83019f0203ff820405", "9f0102030405060708090a0b0c0d0e0f101112131415161718181819ff",
                            "bf61610161629f0203ffff", "826161bf61626163ff", "bf6346756ef563416d7421ff"});
        rows(Code::NotCborRefuse, {"f0", "f818", "f8ff"}); // simple values without a meaning, which the library does not read
    }
    void examplesRefused()
    {
        QFETCH(QByteArray, hex);
        QTEST(codeOf(checkCbor(fromHex(hex))), "code");
    }

    // -2^64 is a CBOR number, and none of ours.
    void numbersThatFit()
    {
        const auto read = [](const char* hex) { return numberOf(*CborReader(fromHex(hex)).next()); };
        QCOMPARE(codeOf(checkCbor(fromHex("3bffffffffffffffff"))), accepted);
        QVERIFY(!read("3bffffffffffffffff"));
        QVERIFY(!read("1bffffffffffffffff"));
        QCOMPARE(*read("1b7fffffffffffffff"), INT64_MAX);
        QCOMPARE(*read("3b7fffffffffffffff"), INT64_MIN);
        QVERIFY(!read("40"));
    }

    // RFC 8949, appendix F: what is not well-formed. Where an item of open length comes first, that is the reason given.
    void notWellFormed_data()
    {
        QTest::addColumn<QByteArray>("hex");
        QTest::addColumn<int>("code");
        for (const char* hex : {"18", "19", "1a", "1b", "1901", "1a0102", "1b01020304050607", "38", "58", "78", "98", "9a01ff00", "b8",
                 "d8", "f8", "f900", "fa0000", "fb000000", "41", "61", "5affffffff00", "5bffffffffffffffff010203", "7affffffff00",
                 "7b7fffffffffffffff010203", "81", "818181818181818181", "8200", "a1", "a20102", "a100", "1c", "1d", "1e", "3c", "3d",
                 "3e", "5c", "5d", "5e", "7c", "7d", "7e", "9c", "9d", "9e", "bc", "bd", "be", "dc", "dd", "de", "fc", "fd", "fe", "f800",
                 "f801", "f818", "f81f", "ff", "81ff", "8200ff", "a1ff", "a1ff00", "a100ff", "1f", "3f", "df"})
            QTest::newRow(hex) << QByteArray(hex) << number(Code::NotCborRefuse);
        for (const char* hex : {"5f4100", "7f6100", "9f", "9f0102", "bf", "bf01020102", "819f", "9f8000", "9f9f9f9f9fffffffff",
                 "9f819f819f9fffffff", "5f00ff", "5f21ff", "5f6100ff", "5f80ff", "5fa0ff", "5fc000ff", "5fe0ff", "7f4100ff",
                 "5f5f4100ffff", "7f7f6100ffff", "9f81ff", "9f829f819f9fffffffff", "bf00ff", "bf000000ff", "a2000000"})
            QTest::newRow(hex) << QByteArray(hex) << number(Code::NotDeterministicRefuse);
        QTest::newRow("c0") << QByteArray("c0") << number(notOurs);
    }
    void notWellFormed()
    {
        QFETCH(QByteArray, hex);
        QTEST(codeOf(checkCbor(fromHex(hex))), "code");
    }
};

QTEST_APPLESS_MAIN(TestCborVectors)
#include "test_cborvectors.moc"
