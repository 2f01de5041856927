// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/clockshift.h"

#include "core/journal/cbor.h"
#include "core/journal/registers.h"

#include <limits>

namespace steelyard::journal {

ByteBuffer writeClockShift(const ClockShift& shift)
{
    return CborWriter()
        .map(5)
        .unsignedNumber(1).unsignedNumber(shift.incarnationNumber)
        .unsignedNumber(2).unsignedNumber(shift.firstNumber)
        .unsignedNumber(3).unsignedNumber(shift.lastNumber)
        .unsignedNumber(4).number(shift.time.count())
        .unsignedNumber(5).number(shift.day.count())
        .written();
}

std::optional<ClockShift> readClockShift(ByteView content)
{
    CborReader reader(content);
    const Outcome<CborHead> map = reader.next();
    if (!map || map->type != CborType::Map || map->count != 5)
        return std::nullopt;
    CborHead values[5];
    for (std::uint64_t i = 0; i < 5; ++i) {
        const Outcome<CborHead> key = reader.next();
        if (!key || key->type != CborType::Unsigned || key->count != i + 1)
            return std::nullopt;
        const Outcome<CborHead> value = reader.next();
        if (!value)
            return std::nullopt;
        values[i] = *value;
    }
    const std::optional<std::int64_t> time = numberOf(values[3]), day = numberOf(values[4]);
    const std::int64_t furthest = latestInstant.time_since_epoch().count();
    const bool whole = values[0].type == CborType::Unsigned && values[1].type == CborType::Unsigned && values[2].type == CborType::Unsigned;
    if (!reader.atEnd() || !whole || values[0].count > std::numeric_limits<std::uint32_t>::max() || values[1].count == 0
        || values[2].count < values[1].count || !time || *time < -furthest || *time > furthest || !day
        || *day < -furthestDay.count() || *day > furthestDay.count())
        return std::nullopt;
    return ClockShift{static_cast<std::uint32_t>(values[0].count), values[1].count, values[2].count, std::chrono::milliseconds(*time),
        std::chrono::days(*day)};
}

ShownTime shownTime(const Held& entry, const std::vector<Held>& shifts)
{
    const Held* covering = nullptr;
    ClockShift shift;
    for (const Held& candidate : shifts) {
        const std::optional<ClockShift> read = readClockShift(candidate.body.content);
        const bool covers = read && read->incarnationNumber == entry.chain.incarnationNumber && entry.sequenceNumber >= read->firstNumber
            && entry.sequenceNumber <= read->lastNumber;
        if (covers && (!covering || rankOf(candidate) > rankOf(*covering))) {
            covering = &candidate;
            shift = *read;
        }
    }
    const Stamp& stamp = entry.body.stamp;
    return {stamp.reading.value_or(stamp.clock.wall) + shift.time, entry.body.localDay + shift.day, covering != nullptr,
        stamp.doubtful && !covering};
}

}
