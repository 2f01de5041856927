// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/cbor.h"
#include "core/journal/content.h"
#include "tests/core/journal/journaling.h"

#include <rapidcheck.h>

using namespace journaling;

class TestContents : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Bytes after RFC 8949, section 3, by hand.
    void bytes()
    {
        QCOMPARE(toHex(nullItem()), QByteArray("f6"));
        QCOMPARE(toHex(flagItem(false)), QByteArray("f4"));
        QCOMPARE(toHex(textItem("Ida")), QByteArray("63496461"));
        QCOMPARE(toHex(numberItem(-500)), QByteArray("3901f3"));
        QCOMPARE(toHex(idItem(record(0xa1))), "50" + QByteArray("a1").repeated(16));
        QCOMPARE(toHex(quantityItem(*typed("82.5", Unit::Kilogram))), QByteArray("831a04ead9a06438322e3501"));
        QCOMPARE(toHex(listItem({numberItem(1), nullItem()})), QByteArray("8201f6"));
        QCOMPARE(toHex(MapWriter().item()), QByteArray("a0"));
        QCOMPARE(toHex(MapWriter().put(300, nullItem()).put(2, flagItem(true)).item()), QByteArray("a202f519012cf6"));
    }

    void comeBack()
    {
        QVERIFY(isNull(nullItem()) && !isNull(flagItem(false)));
        QCOMPARE(*textIn(textItem("")), std::string());
        QCOMPARE(*numberIn(numberItem(INT64_MIN)), INT64_MIN);
        QVERIFY(flagIn(flagItem(true)) == true && flagIn(flagItem(false)) == false);
        QVERIFY(idIn(idItem(record(3))) == record(3));
        QVERIFY(quantityIn(quantityItem(*typed("19", Unit::Inch))) == typed("19", Unit::Inch));
        QCOMPARE(listIn(listItem({numberItem(1), listItem({})}))->size(), std::size_t(2));
    }

    void otherKindsGiveNothing()
    {
        const std::vector<ByteBuffer> items = {nullItem(), flagItem(true), textItem("x"), numberItem(1), idItem(record(1)), listItem({}),
            MapWriter().item(), quantityItem(*typed("1", Unit::Gram)), {}, fromHex("0000"), fromHex("61"), fromHex("1800")};
        const auto readers = [](const ByteBuffer& item) {
            return std::array<bool, 7>{isNull(item), flagIn(item).has_value(), textIn(item).has_value(), numberIn(item).has_value(),
                idIn(item).has_value(), listIn(item).has_value(), MapReader::of(item).has_value()};
        };
        for (std::size_t i = 0; i < items.size(); ++i) {
            const std::array<bool, 7> read = readers(items[i]);
            const std::size_t wanted = i == 7 ? 5 : i; // a quantity is a list too
            for (std::size_t k = 0; k < read.size(); ++k)
                QCOMPARE(read[k], k == wanted);
            QCOMPARE(quantityIn(items[i]).has_value(), i == 7);
        }
        QVERIFY(!idIn(CborWriter().bytes(fromHex("00")).written()));
    }

    void quantitiesAgreeWithThemselves()
    {
        const auto quantity = [](std::int64_t base, const char* decimal, std::int64_t unit) {
            return listItem({numberItem(base), textItem(decimal), numberItem(unit)});
        };
        QVERIFY(quantityIn(quantity(1'000, "1", 2)));
        QVERIFY(!quantityIn(quantity(1'001, "1", 2)));
        QVERIFY(!quantityIn(quantity(1'000, "one", 2)));
        QVERIFY(!quantityIn(quantity(1'000, "1", 99)));
        QVERIFY(!quantityIn(quantity(1'000, "1", -2)));
        QVERIFY(!quantityIn(listItem({numberItem(1'000), textItem("1")})));
    }

    void maps()
    {
        const ByteBuffer inner = MapWriter().put(1, numberItem(7)).item();
        const ByteBuffer item = MapWriter().put(9, inner).put(1, textItem("long")).put(1, textItem("Ida"))
            .put(2, quantityItem(*typed("82.5", Unit::Kilogram))).put(3, std::optional<std::string>(), textItem)
            .put(4, std::optional<bool>(false), flagItem).put(5, idItem(record(1))).put(6, listItem({nullItem()})).item();
        const MapReader map = *MapReader::of(item);
        QVERIFY((map.keyNumbers() == std::vector<std::uint32_t>{1, 2, 4, 5, 6, 9}));
        QCOMPARE(*map.text(1), std::string("Ida"));
        QVERIFY(map.quantity(2) == typed("82.5", Unit::Kilogram));
        QVERIFY(!map.has(3) && !map.text(3));
        QVERIFY(map.flag(4) == false && map.id(5) == record(1) && map.list(6)->size() == 1);
        QCOMPARE(*map.map(9)->number(1), std::int64_t(7));
        QVERIFY(map.fits());
        QVERIFY(!map.number(1) && !map.fits());
    }

    void mapsOfOtherFormsRefused()
    {
        for (const char* hex : {"f6", "a1", "a10000 00", "a201000000", "a1200 0", "a11b000000010000000000", "bf0000ff"})
            QVERIFY2(!MapReader::of(fromHex(hex)), hex);
        QVERIFY(MapReader::of(fromHex("a11affffffff00")));
    }

    void anyTextAndNumberComeBack()
    {
        QVERIFY(rc::check("a map of anything is read as it was put", [](const std::map<std::uint32_t, std::int64_t>& numbers) {
            MapWriter writer;
            for (const auto& [key, number] : numbers)
                writer.put(key, numberItem(number));
            RC_ASSERT(checkCbor(writer.item()).ok());
            const MapReader map = *MapReader::of(writer.item());
            for (const auto& [key, number] : numbers)
                RC_ASSERT(map.number(key) == number);
            RC_ASSERT(map.keyNumbers().size() == numbers.size());
        }));
    }
};

QTEST_APPLESS_MAIN(TestContents)
#include "test_contents.moc"
