// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/clockshift.h"
#include "core/journal/content.h"
#include "tests/core/journal/entriesversion1.h"
#include "tests/core/journal/journaling.h"

using namespace journaling;

namespace {

Draft kitDraft(Kind kind = Kind::FieldSet, ByteBuffer content = nullItem())
{
    Draft draft;
    draft.kind = kind;
    draft.subject = {RecordKind::KitItem, record(0xc1)};
    draft.content = std::move(content);
    return draft;
}

Body bodyOf(const Draft& draft)
{
    return finished(draft, Stamp{{at(1795600000000), 0}, false, std::nullopt});
}

}

class TestEntryRefusals : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyBitCounts()
    {
        const ByteBuffer whole = fromHex(entriesOfVersion1[1]);
        for (std::size_t bit = 0; bit < 8 * whole.size(); ++bit) {
            ByteBuffer flipped = whole;
            flipped[bit / 8] ^= static_cast<std::byte>(1 << bit % 8);
            const Outcome<Entry> read = decodeEntry(flipped);
            const bool chained = bit / 8 >= 4 && bit / 8 < 64;
            // A header alone may say other things; then it is another entry, and what follows it does not name it.
            QVERIFY(chained ? !read || idOf(read->header) != idOf(decodeEntry(whole)->header) : !read);
        }
    }

    void everyLengthCounts()
    {
        const ByteBuffer whole = fromHex(entriesOfVersion1[1]);
        for (std::size_t size = 0; size < whole.size(); ++size)
            QVERIFY((size == Header::size) == decodeEntry(ByteView(whole).first(size)).ok());
        ByteBuffer longer = whole;
        longer.push_back({});
        QCOMPARE(codeOf(decodeEntry(longer)), number(Code::CommitmentWrongRefuse));
    }

    void headers()
    {
        const Header first{{origin(1), 1}, 1, {}, {}};
        QVERIFY(*decodeHeader(encodeHeader(first)) == first);
        QCOMPARE(codeOf(decodeHeader(encodeHeader({{origin(1), 1}, 0, {}, {}}))), number(Code::NotAnEntryRefuse));
        QCOMPARE(codeOf(decodeHeader(encodeHeader({{origin(1), 1}, 1, entryId(1), {}}))), number(Code::NotAnEntryRefuse));
        QCOMPARE(codeOf(decodeHeader(encodeHeader({{origin(1), 1}, 2, {}, {}}))), number(Code::NotAnEntryRefuse));
        QCOMPARE(codeOf(decodeHeader(encodeHeader({{origin(1), 1}, 0, entryId(1), {}}))), number(Code::NotAnEntryRefuse));
        ByteArray<Header::size> bytes = encodeHeader(first);
        bytes[0] = std::byte{2};
        QCOMPARE(codeOf(decodeHeader(bytes)), number(Code::NewerVersionUpdateApp));
        bytes[0] = std::byte{0};
        QCOMPARE(codeOf(decodeHeader(bytes)), number(Code::NotAnEntryRefuse));
    }

    void bodyBytes_data()
    {
        QTest::addColumn<QByteArray>("body");
        QTest::addColumn<int>("code");
        const QByteArray id = "50" + QByteArray(32, 'a'), other = "50" + QByteArray(32, 'b');
        const QByteArray kit = "0001010102000603" "07" + id + "0900", athlete = "0001010102000601" "07" + id;
        const QByteArray hash = "5820" + QByteArray(64, '1'), later = "5820" + QByteArray(64, '2');
        const auto row = [](const char* name, const QByteArray& body, Code code) { QTest::newRow(name) << body << number(code); };
        QTest::newRow("as it should be") << "a7" + kit + "0ef6" << accepted;
        QTest::newRow("athlete named") << "a8" + athlete + "08" + id + "09000ef6" << accepted;
        row("nothing", "", Code::NotCborRefuse);
        row("no map", "80", Code::NotAnEntryRefuse);
        row("empty map", "a0", Code::NotAnEntryRefuse);
        row("no version", "a10101", Code::NotAnEntryRefuse);
        row("version 0", "a10000", Code::NotAnEntryRefuse);
        row("cut off", "a7" + kit + "0e", Code::NotCborRefuse);
        row("behind it", "a7" + kit + "0ef600", Code::TrailingBytesRefuse);
        row("keys fall", "a8" + kit + "0ef60d6170", Code::NotDeterministicRefuse);
        row("longer than needed", "a7" + QByteArray(kit).replace("0900", "091800") + "0ef6", Code::NotDeterministicRefuse);
        row("float content", "a7" + kit + "0ef90000", Code::NotOurCborRefuse);
        row("no content", "a6" + kit, Code::NotAnEntryRefuse);
        row("no subject", "a5" "00010101020006030ef6", Code::NotAnEntryRefuse);
        row("kind 0", "a7" + QByteArray(kit).replace("00010101", "00010100") + "0ef6", Code::NotAnEntryRefuse);
        row("kind past 16 bits", "a7" + QByteArray(kit).replace("00010101", "0001011a00010000") + "0ef6", Code::NotAnEntryRefuse);
        row("subject of kind 0", "a7" + QByteArray(kit).replace("0603", "0600") + "0ef6", Code::NotAnEntryRefuse);
        row("clock a text", "a7" + QByteArray(kit).replace("0200", "0260") + "0ef6", Code::NotAnEntryRefuse);
        row("clock past bounds", "a7" + QByteArray(kit).replace("0200", "021b1000000000000001") + "0ef6", Code::NotAnEntryRefuse);
        row("day past bounds", "a7" + QByteArray(kit).replace("0900", "091a00989681") + "0ef6", Code::NotAnEntryRefuse);
        QTest::newRow("day at the bound") << "a7" + QByteArray(kit).replace("0900", "093a0098967f") + "0ef6" << accepted;
        row("clock below bounds", "a7" + QByteArray(kit).replace("0200", "023b1000000000000000") + "0ef6", Code::NotAnEntryRefuse);
        QTest::newRow("clock at the lower bound") << "a7" + QByteArray(kit).replace("0200", "023b0fffffffffffffff") + "0ef6" << accepted;
        row("count 0", "a8" + QByteArray(kit).replace("0200", "02000300") + "0ef6", Code::NotAnEntryRefuse);
        row("not doubtful", "a8" + QByteArray(kit).replace("0200", "020004f4") + "0ef6", Code::NotAnEntryRefuse);
        row("reading is the wall", "a8" + QByteArray(kit).replace("0200", "02000500") + "0ef6", Code::NotAnEntryRefuse);
        row("zone empty", "a8" + kit + "0a600ef6", Code::NotAnEntryRefuse);
        row("zone no text", "a8" + kit + "0a41610ef6", Code::NotAnEntryRefuse);
        row("replaces none", "a8" + kit + "0b800ef6", Code::NotAnEntryRefuse);
        row("replaces unsorted", "a8" + kit + "0b82" + later + hash + "0ef6", Code::NotAnEntryRefuse);
        row("replaces twice", "a8" + kit + "0b82" + hash + hash + "0ef6", Code::NotAnEntryRefuse);
        row("replaces a short id", "a8" + kit + "0b81" + id + "0ef6", Code::NotAnEntryRefuse);
        row("field 0", "a8" + kit + "0c000ef6", Code::NotAnEntryRefuse);
        row("part empty", "a8" + kit + "0d600ef6", Code::NotAnEntryRefuse);
        row("second athlete", "a8" + athlete + "08" + other + "09000ef6", Code::TwoAthletesSplit);
        row("athlete not named", "a7" + athlete + "09000ef6", Code::TwoAthletesSplit);
    }
    void bodyBytes()
    {
        QFETCH(QByteArray, body);
        const Outcome<Body> read = decodeBody(fromHex(body));
        QTEST(codeOf(read), "code");
        if (read)
            QCOMPARE(toHex(*encodeBody(*read)), body);
    }

    void whatKindsCannotSay_data()
    {
        QTest::addColumn<int>("kind");
        QTest::addColumn<int>("content");
        QTest::addColumn<int>("change");
        QTest::addColumn<int>("code");
        enum { Null, Flag, Text };
        enum { Nothing, Field, Part, Replaces, PartAndReplaces };
        const int refused = number(Code::NotAnEntryRefuse);
        const auto row = [](const char* name, Kind kind, int content, int change, int code) {
            QTest::newRow(name) << static_cast<int>(kind) << content << change << code;
        };
        row("field set", Kind::FieldSet, Text, PartAndReplaces, accepted);
        row("added", Kind::Added, Text, Nothing, accepted);
        row("added, replacing", Kind::Added, Text, Replaces, refused);
        row("added with a field", Kind::Added, Text, Field, refused);
        row("put right", Kind::PutRight, Text, Replaces, accepted);
        row("put right, a part", Kind::PutRight, Text, Part, refused);
        row("removed", Kind::Removed, Flag, Replaces, accepted);
        row("removed, no flag", Kind::Removed, Null, Nothing, refused);
        row("removed, a field", Kind::Removed, Flag, Field, refused);
        row("tag", Kind::TagAdded, Null, Part, accepted);
        row("tag without a name", Kind::TagAdded, Null, Nothing, refused);
        row("tag with content", Kind::TagAdded, Text, Part, refused);
        row("tag taken", Kind::TagRemoved, Null, PartAndReplaces, accepted);
        row("tag taken from nothing", Kind::TagRemoved, Null, Part, refused);
        row("shift of a thing", Kind::ClockShifted, Null, Nothing, refused);
        row("erasure of a thing", Kind::Erased, Null, Nothing, refused);
    }
    void whatKindsCannotSay()
    {
        QFETCH(int, kind);
        QFETCH(int, content);
        QFETCH(int, change);
        Draft draft = kitDraft(static_cast<Kind>(kind), content == 0 ? nullItem() : content == 1 ? flagItem(true) : textItem("x"));
        if (change == 1)
            draft.fieldNumber = 4;
        if (change == 2 || change == 4)
            draft.part = std::string(1, 'p');
        if (change >= 3)
            draft.replaces = {entryId(1)};
        QTEST(codeOf(encodeBody(bodyOf(draft))), "code");
    }

    void unfinishedBodies()
    {
        Body body = bodyOf(kitDraft());
        body.content.clear();
        QCOMPARE(codeOf(encodeBody(body)), number(Code::NotCborRefuse));
        body.content = fromHex("f6f6");
        QVERIFY(!encodeBody(body));
        body.content = fromHex("6180");
        QCOMPARE(codeOf(encodeBody(body)), number(Code::NotCborRefuse));
        body = bodyOf(kitDraft());
        body.replaces = {entryId(2), entryId(1)};
        QCOMPARE(codeOf(encodeBody(body)), number(Code::NotAnEntryRefuse));
        body = bodyOf(kitDraft());
        body.kind = static_cast<Kind>(99);
        QCOMPARE(codeOf(encodeBody(body)), number(Code::NewerVersionUpdateApp));
        Draft athlete = kitDraft();
        athlete.subject.kind = RecordKind::Athlete;
        athlete.athlete = record(9);
        QCOMPARE(codeOf(encodeBody(bodyOf(athlete))), number(Code::TwoAthletesSplit));
    }

    void noEntryWithoutABody()
    {
        const Payload saltAlone{{}, {}};
        const Entry entry{{{origin(1), 1}, 1, {}, commitmentTo(saltAlone)}, saltAlone};
        QCOMPARE(codeOf(decodeEntry(encodeEntry(entry))), number(Code::NotAnEntryRefuse));
    }

    void erasuresAndShiftsAreWhole()
    {
        Draft erasure = kitDraft(Kind::Erased);
        erasure.subject.kind = RecordKind::Athlete;
        QCOMPARE(codeOf(encodeBody(bodyOf(erasure))), accepted);
        erasure.replaces = {entryId(1)};
        QCOMPARE(codeOf(encodeBody(bodyOf(erasure))), number(Code::NotAnEntryRefuse));
        Draft shift = kitDraft(Kind::ClockShifted, writeClockShift({1, 2, 3, {}, {}}));
        QCOMPARE(codeOf(encodeBody(bodyOf(shift))), number(Code::NotAnEntryRefuse));
        shift.subject.kind = RecordKind::Chain;
        QCOMPARE(codeOf(encodeBody(bodyOf(shift))), accepted);
        shift.athlete = record(1);
        QCOMPARE(codeOf(encodeBody(bodyOf(shift))), number(Code::NotAnEntryRefuse));
    }

    void contentCannotEscape()
    {
        Body body = bodyOf(kitDraft());
        body.content = fromHex("f60fa0"); // a null, and then what would be one key more
        QVERIFY(!encodeBody(body));
    }

    void sizes()
    {
        const std::size_t around = encodeBody(bodyOf(kitDraft(Kind::FieldSet, textItem(std::string(60'000, 'x')))))->size() - 60'000;
        const std::size_t most = largestEntrySize - Header::size - sizeof(Salt) - around;
        const Body fits = bodyOf(kitDraft(Kind::FieldSet, textItem(std::string(most, 'x'))));
        const Entry entry = *nextEntry({{origin(1), 1}, 0, {}}, fits, countingRandom());
        QCOMPARE(encodeEntry(entry).size(), largestEntrySize);
        QVERIFY(*decodeEntry(encodeEntry(entry)) == entry);
        const Body larger = bodyOf(kitDraft(Kind::FieldSet, textItem(std::string(most + 1, 'x'))));
        QCOMPARE(codeOf(encodeBody(larger)), number(Code::TooLargeRefuse));
        QCOMPARE(codeOf(decodeEntry(ByteBuffer(largestEntrySize + 1))), number(Code::TooLargeRefuse));
    }

    void shifts()
    {
        const ClockShift shift{1, 2, 3, std::chrono::milliseconds(-5), std::chrono::days(6)};
        QVERIFY(*readClockShift(writeClockShift(shift)) == shift);
        QVERIFY(!readClockShift(writeClockShift({1, 0, 3, {}, {}})));
        QVERIFY(!readClockShift(writeClockShift({1, 4, 3, {}, {}})));
        QVERIFY(!readClockShift(writeClockShift({1, 2, 3, latestInstant.time_since_epoch() + std::chrono::milliseconds(1), {}})));
        QVERIFY(!readClockShift(writeClockShift({1, 2, 3, {}, furthestDay + std::chrono::days(1)})));
        for (const char* hex : {"f6", "a0", "a5010102020303040405", "a5010102020303040505 60", "a50101020203030404056000", "a4010102020303 0404"})
            QVERIFY(!readClockShift(fromHex(hex)));
    }
};

QTEST_APPLESS_MAIN(TestEntryRefusals)
#include "test_entryrefusals.moc"
