// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/clockshift.h"
#include "tests/core/journal/journaling.h"

#include <rapidcheck.h>

using namespace journaling;
using namespace std::chrono_literals;

namespace {

constexpr Instant noon{std::chrono::milliseconds(1'795'600'000'000)};

Held madeAt(std::uint64_t sequenceNumber, std::uint32_t incarnation, Instant when)
{
    Held entry;
    entry.id = entryId(static_cast<unsigned>(sequenceNumber));
    entry.chain = {origin(1), incarnation};
    entry.sequenceNumber = sequenceNumber;
    entry.body.localDay = day(20'782);
    entry.body.stamp.clock = {when, 0};
    entry.body.stamp.doubtful = true;
    return entry;
}

Held shiftOf(const ClockShift& shift, Instant when)
{
    Held entry = madeAt(9, 9, when);
    entry.body.content = writeClockShift(shift);
    return entry;
}

}

class TestClocks : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingSeenNothingDoubted()
    {
        Stamper stamper;
        const Stamp stamp = stamper.stamp(noon);
        QVERIFY(stamp == (Stamp{{noon, 0}, false, std::nullopt}));
    }

    void countsWhereTimeStandsStill()
    {
        Stamper stamper;
        (void)stamper.stamp(noon);
        QVERIFY(stamper.stamp(noon) == (Stamp{{noon, 1}, false, std::nullopt}));
        QVERIFY(stamper.stamp(noon - 5ms) == (Stamp{{noon, 2}, false, noon - 5ms}));
        QVERIFY(stamper.stamp(noon + 1ms) == (Stamp{{noon + 1ms, 0}, false, std::nullopt}));
    }

    void doubtBeginsPastTheBounds()
    {
        const auto doubtful = [](Instant now) { return Stamper(Clock{noon, 0}).stamp(now).doubtful; };
        QVERIFY(!doubtful(noon - 1min));
        QVERIFY(doubtful(noon - 1min - 1ms));
        QVERIFY(!doubtful(noon + std::chrono::days(30)));
        QVERIFY(doubtful(noon + std::chrono::days(30) + 1ms));
    }

    void seenIsTakenAsItIs()
    {
        const Instant future = noon + std::chrono::days(10'957);
        Stamper stamper;
        (void)stamper.stamp(noon);
        stamper.see({future, 41});
        stamper.see({noon - std::chrono::days(10'957), 3});
        QVERIFY(stamper.stamp(noon + 1s) == (Stamp{{future, 42}, true, noon + 1s}));
        QVERIFY(stamper.highest() == (Clock{future, 42}));
    }

    void endsOfTheRange()
    {
        Stamper full(Clock{noon, UINT32_MAX});
        QVERIFY(full.stamp(noon).clock == (Clock{noon + 1ms, 0}));
        Stamper stamper;
        QVERIFY(stamper.stamp(Instant::max()).clock.wall == latestInstant);
        QVERIFY(Stamper().stamp(Instant::min()).clock.wall == earliestInstant);
    }

    void alwaysHigher()
    {
        QVERIFY(rc::check("a stamp is above all that were seen or given, and tells the own clock", [](const std::vector<std::pair<bool, std::int64_t>>& steps) {
            Stamper stamper;
            Clock highest{earliestInstant, 0};
            for (const auto& [given, wild] : steps) {
                const Instant when = at(wild % (INT64_C(1) << 59));
                if (given) {
                    const Stamp stamp = stamper.stamp(when);
                    RC_ASSERT(stamp.clock > highest);
                    RC_ASSERT(stamp.reading.value_or(stamp.clock.wall) == when);
                    highest = stamp.clock;
                } else {
                    stamper.see({when, 5});
                    highest = std::max(highest, Clock{when, 5});
                }
            }
        }));
    }

    void shownAsTypedUnlessMoved()
    {
        Held entry = madeAt(4, 2, noon);
        QVERIFY(shownTime(entry, {}) == (ShownTime{noon, day(20'782), false, true}));
        entry.body.stamp.reading = noon - 1h;
        QVERIFY(shownTime(entry, {}).time == noon - 1h);

        const Held lower = shiftOf({2, 3, 4, 5min, std::chrono::days(1)}, noon);
        const Held higher = shiftOf({2, 4, 9, -2h, std::chrono::days(-1)}, noon + 1ms);
        const ShownTime moved{noon - 3h, day(20'781), true, false};
        QVERIFY(shownTime(entry, {lower, higher}) == moved);
        QVERIFY(shownTime(entry, {higher, lower}) == moved);
        QVERIFY(shownTime(madeAt(3, 2, noon), {lower, higher}).day == day(20'783));
        QVERIFY(!shownTime(madeAt(2, 2, noon), {lower, higher}).moved);
        QVERIFY(!shownTime(madeAt(4, 1, noon), {lower, higher}).moved);
    }
};

QTEST_APPLESS_MAIN(TestClocks)
#include "test_clocks.moc"
