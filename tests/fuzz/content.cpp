// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/cbor.h"
#include "core/journal/clockshift.h"
#include "core/journal/content.h"
#include "tests/fuzz/target.h"

using namespace steelyard::journal;

namespace {

template <typename Value, typename Write>
void comesBack(ByteView bytes, const std::optional<Value>& value, const Write& write)
{
    if (value) {
        const ByteBuffer written = write(*value);
        fuzzing::promise(std::equal(written.begin(), written.end(), bytes.begin(), bytes.end()), "a value is written as it was read");
    }
}

void readMap(const MapReader& map)
{
    for (const std::uint32_t key : map.keyNumbers()) {
        (void)map.text(key);
        (void)map.number(key);
        (void)map.flag(key);
        (void)map.id(key);
        (void)map.quantity(key);
        (void)map.list(key);
        if (const std::optional<MapReader> inner = map.map(key))
            readMap(*inner);
    }
}

}

/// Bytes as the content of an entry: every reader on them, and what each takes written again.
void fuzzing::examine(ByteView bytes)
{
    const bool form = checkCbor(bytes).ok();
    comesBack(bytes, textIn(bytes), textItem);
    comesBack(bytes, numberIn(bytes), numberItem);
    comesBack(bytes, flagIn(bytes), flagItem);
    comesBack(bytes, idIn(bytes), idItem);
    comesBack(bytes, quantityIn(bytes), quantityItem);
    comesBack(bytes, listIn(bytes), listItem);
    comesBack(bytes, readClockShift(bytes), writeClockShift);
    if (const std::optional<MapReader> map = MapReader::of(bytes)) {
        promise(form, "a map taken has the form that entries have");
        readMap(*map);
    }
    const std::string text(reinterpret_cast<const char*>(bytes.data()), bytes.size());
    for (const Unit unit : {Unit::Pound, Unit::Minute, Unit::Kilonewton}) {
        const std::optional<Typed> quantity = typed(text, unit);
        promise(!quantity || quantityIn(quantityItem(*quantity)) == quantity, "a number typed comes back");
    }
}
