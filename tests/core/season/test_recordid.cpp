// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/season/recordid.h"

#include "tests/core/numberedids.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>
#include <unordered_set>
#endif

using namespace steelyard;

/// Ids as text and as keys.
class RecordIdTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void asDigits();
    void noneIsNoText();
    void everyIdComesBack();
    void otherTextsAreRefused_data();
    void otherTextsAreRefused();
    void orderedAsTheirDigits();
    void neighboursHashApart();
};

void RecordIdTest::asDigits()
{
    RecordId id;
    for (std::size_t i = 0; i < id.bytes.size(); ++i)
        id.bytes[i] = static_cast<std::byte>(0x0f + 0x10 * i);
    QCOMPARE(id.hex(), std::string("0f1f2f3f4f5f6f7f8f9fafbfcfdfefff"));
    QVERIFY(RecordId::fromHex("0F1f2F3f4f5f6f7f8f9fAfbfcfdfEfFf") == id);
}

void RecordIdTest::noneIsNoText()
{
    QVERIFY(RecordId{}.isNone());
    QCOMPARE(RecordId{}.hex(), std::string());
    QVERIFY(RecordId::fromHex("") == RecordId{});
    QVERIFY(RecordId::fromHex(std::string(32, '0'))->isNone());
    QVERIFY(!numberedids::numbered(1).isNone());
}

void RecordIdTest::everyIdComesBack()
{
    const bool ok = rc::check("an id comes back from its digits", [](const std::array<std::uint8_t, 16>& bytes) {
        RecordId id;
        std::transform(bytes.begin(), bytes.end(), id.bytes.begin(), [](std::uint8_t b) { return std::byte{b}; });
        RC_ASSERT(RecordId::fromHex(id.hex()) == id);
    });
    QVERIFY(ok);
}

void RecordIdTest::otherTextsAreRefused_data()
{
    QTest::addColumn<std::string>("text");
    QTest::newRow("short") << std::string(31, '1');
    QTest::newRow("long") << std::string(33, '1');
    QTest::newRow("a letter past f") << std::string(31, '1') + 'g';
    QTest::newRow("a sign") << std::string("-") + std::string(31, '1');
    QTest::newRow("a number of before") << std::string("7");
}

void RecordIdTest::otherTextsAreRefused()
{
    QFETCH(std::string, text);
    QVERIFY(!RecordId::fromHex(text));
}

void RecordIdTest::orderedAsTheirDigits()
{
    const bool ok = rc::check("the order of ids is that of their digits", [](std::uint64_t a, std::uint64_t b) {
        const RecordId one = numberedids::numbered(a + 1), other = numberedids::numbered(b + 1);
        RC_ASSERT((one < other) == (one.hex() < other.hex()));
    });
    QVERIFY(ok);
}

void RecordIdTest::neighboursHashApart()
{
    std::unordered_set<std::size_t> seen;
    for (std::uint64_t n = 1; n <= 1000; ++n)
        seen.insert(std::hash<RecordId>{}(numberedids::numbered(n)));
    QCOMPARE(seen.size(), std::size_t(1000));
}

QTEST_APPLESS_MAIN(RecordIdTest)
#include "test_recordid.moc"
