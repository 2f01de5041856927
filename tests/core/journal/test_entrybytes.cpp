// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/clockshift.h"
#include "core/journal/content.h"
#include "core/seal/identity.h"
#include "tests/core/journal/entriesversion1.h"
#include "tests/core/journal/journaling.h"

using namespace journaling;

namespace {

OriginId deviceOfVersion1()
{
    seal::SigningPublicKey key;
    for (std::size_t i = 0; i < key.bytes.size(); ++i)
        key.bytes[i] = static_cast<std::byte>(i);
    return OriginId::of(key);
}

Draft about(Kind kind, Subject subject, std::chrono::sys_days localDay, ByteBuffer content)
{
    Draft draft;
    draft.kind = kind;
    draft.subject = subject;
    draft.localDay = localDay;
    draft.content = std::move(content);
    return draft;
}

/// The entries that golden_entries.py spells out, said in our own types.
std::vector<Body> bodiesOfVersion1()
{
    const Stamp fitting{{at(1795600000000), 0}, false, std::nullopt};
    Draft name = about(Kind::FieldSet, {RecordKind::Athlete, record(0xa1)}, day(20782), textItem("Ida Marrow"));
    name.zone = "Europe/Berlin";
    name.fieldNumber = 1;
    Draft mark = about(Kind::FieldSet, {RecordKind::Athlete, record(0xa1)}, day(-1), quantityItem(*typed("19", Unit::Inch)));
    mark.replaces = {entryId(2), entryId(1), entryId(2)};
    mark.fieldNumber = 70000;
    mark.part = "squat";
    const Draft removed = about(Kind::Removed, {RecordKind::KitItem, record(0xc1)}, day(0), flagItem(true));
    const ByteBuffer inner = MapWriter().put(256, numberItem(-25)).put(0, nullItem()).item();
    const ByteBuffer measured = MapWriter().put(24, inner).put(1, quantityItem(*typed("225", Unit::Pound))).item();
    const Draft measurement = about(Kind::Added, {RecordKind::Measurement, record(0xc1)}, day(20782), measured);
    const ClockShift shift{2, 3, 5, std::chrono::hours(-2), std::chrono::days(-1)};
    const Draft moved = about(Kind::ClockShifted, {RecordKind::Chain, RecordId{deviceOfVersion1().bytes}}, day(20782), writeClockShift(shift));
    return {finished(name, fitting), finished(mark, {{at(1795600000000), 7}, true, at(848915200000)}),
        finished(removed, {{at(-1), 0}, false, std::nullopt}), finished(measurement, {{at(0), 4294967295}, false, std::nullopt}),
        finished(moved, fitting)};
}

}

class TestEntryBytes : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void writtenAsForEver()
    {
        const auto random = countingRandom();
        ChainEnd end{{deviceOfVersion1(), 2}, 0, {}};
        std::size_t at = 0;
        for (const Body& body : bodiesOfVersion1()) {
            const Entry entry = *nextEntry(end, body, random);
            QCOMPARE(toHex(encodeEntry(entry)), QByteArray(entriesOfVersion1[at++]));
            end = endAt(entry.header);
        }
        QCOMPARE(at, std::size(entriesOfVersion1));
        QCOMPARE(toHex(end.id.bytes), QByteArray(lastIdOfVersion1));
        QCOMPARE(QByteArray::fromStdString(end.id.hex()), QByteArray(lastIdOfVersion1));
    }

    void readForEver()
    {
        const std::vector<Body> bodies = bodiesOfVersion1();
        EntryId previous;
        for (std::size_t i = 0; i < bodies.size(); ++i) {
            const Entry entry = *decodeEntry(fromHex(entriesOfVersion1[i]));
            QCOMPARE(entry.header.sequenceNumber, std::uint64_t(i + 1));
            QCOMPARE(entry.header.chain.incarnationNumber, 2U);
            QVERIFY(entry.header.chain.origin == deviceOfVersion1());
            QVERIFY(entry.header.previous == previous);
            const Held read = *held(entry);
            QVERIFY(read.body == bodies[i]);
            QVERIFY(read.chain == entry.header.chain);
            QCOMPARE(read.sequenceNumber, entry.header.sequenceNumber);
            previous = read.id;
        }
    }

    void originIsHashOfKey()
    {
        QCOMPARE(QByteArray::fromStdString(deviceOfVersion1().hex()), QByteArray(entriesOfVersion1[0]).mid(32, 32));
    }

    void erasedEntryIsItsHeader()
    {
        Entry entry = *decodeEntry(fromHex(entriesOfVersion1[1]));
        const EntryId id = idOf(entry.header);
        entry.payload.reset();
        const ByteBuffer bytes = encodeEntry(entry);
        QCOMPARE(bytes.size(), Header::size);
        const Entry again = *decodeEntry(bytes);
        QVERIFY(again == entry);
        QVERIFY(idOf(again.header) == id);
        QCOMPARE(codeOf(held(again)), number(Code::NotAnEntryRefuse));
    }

    // A field that the newer version knows and this one does not, a kind, and a whole layout of which only the version is plain.
    void newerIsKeptAsItIs_data()
    {
        QTest::addColumn<QByteArray>("body");
        const QByteArray start = "00010101020006060750" + QByteArray(32, 'a') + "0900";
        QTest::newRow("key") << "a8" + start + "0ef60f01";
        QTest::newRow("far key") << "a8" + start + "0ef61903e801";
        QTest::newRow("kind") << "a7" + QByteArray(start).replace("00010101", "00010109") + "0ef6";
        QTest::newRow("version") << QByteArray("a20002fa47c35000c0");
    }
    void newerIsKeptAsItIs()
    {
        QFETCH(QByteArray, body);
        Payload payload{{}, fromHex(body)};
        const Entry entry{{{origin(1), 1}, 1, {}, commitmentTo(payload)}, payload};
        const Entry again = *decodeEntry(encodeEntry(entry));
        QVERIFY(again == entry);
        QCOMPARE(codeOf(held(again)), number(Code::NewerVersionUpdateApp));
    }

    void idsAreHashable()
    {
        QVERIFY(std::hash<EntryId>()(entryId(1)) != std::hash<EntryId>()(entryId(2)));
        QVERIFY(std::hash<OriginId>()(origin(1)) != std::hash<OriginId>()(origin(2)));
        QVERIFY(EntryId().isNone() && !entryId(1).isNone());
    }
};

QTEST_APPLESS_MAIN(TestEntryBytes)
#include "test_entrybytes.moc"
