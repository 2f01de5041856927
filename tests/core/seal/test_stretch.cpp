// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/core/seal/sealing.h"

#include <fstream>
#include <rapidcheck.h>
#include <sodium.h>
#include <sys/resource.h>
#include <unistd.h>

using namespace sealing;
using namespace std::chrono_literals;
using std::chrono::nanoseconds;

namespace {

/// While it lives, the process may take only so much more address space.
class TightMemory {
public:
    explicit TightMemory(rlim_t more)
    {
        getrlimit(RLIMIT_AS, &m_before);
        rlim_t pages = 0;
        std::ifstream("/proc/self/statm") >> pages;
        const rlimit tight{pages * static_cast<rlim_t>(sysconf(_SC_PAGESIZE)) + more, m_before.rlim_max};
        setrlimit(RLIMIT_AS, &tight);
    }
    TightMemory(const TightMemory&) = delete;
    TightMemory& operator=(const TightMemory&) = delete;
    ~TightMemory() { setrlimit(RLIMIT_AS, &m_before); }

private:
    rlimit m_before{};
};

/// A machine whose time is in proportion to memory times passes, up to the memory it has.
StretchTrial machine(nanoseconds atFloor, Kibibytes has = mebibytes(1024))
{
    return [=](const StretchCost& cost) -> Outcome<nanoseconds> {
        if (cost.memory.count > has.count)
            return Code::StretchRefusedCloseOthers;
        return atFloor * cost.memory.count / weakestStretch.memory.count * cost.passCount / weakestStretch.passCount;
    };
}

}

class TestStretch : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // The reference program of the authors of Argon2 (Debian package argon2):
    // printf 'fourteen stone of iron' | argon2 0123456789abcdef -id -t 3 -k 65536 -p 1 -l 32 -r
    // The vector of RFC 9106, section 5.3, has four lanes, a secret and associated data, none of which the library takes.
    void asTheReferenceProgram()
    {
        Salt salt{};
        copyBytes(bytesOf("0123456789abcdef"), salt);
        const Outcome<WrappingKey> key = stretch(bytesOf("fourteen stone of iron"), salt, weakestStretch);
        QVERIFY(key);
        QCOMPARE(toHex(key->view()), QByteArray("eedeaa1327faa324dff834ed66f9552cf1788d21dbd8c472f411a656e9256dd3"));
    }

    void everyPartCounts()
    {
        Salt salt{};
        const QByteArray first = toHex(stretch(bytesOf("iron"), salt, weakestStretch)->view());
        QVERIFY(toHex(stretch(bytesOf("irom"), salt, weakestStretch)->view()) != first);
        salt[15] = std::byte{1};
        QVERIFY(toHex(stretch(bytesOf("iron"), salt, weakestStretch)->view()) != first);
        QVERIFY(toHex(stretch(bytesOf("iron"), Salt{}, {mebibytes(64), 4})->view()) != first);
        QVERIFY(toHex(stretch(bytesOf("iron"), Salt{}, {mebibytes(65), 3})->view()) != first);
    }

    void absurdCosts_data()
    {
        QTest::addColumn<unsigned>("kib");
        QTest::addColumn<unsigned>("passes");
        QTest::addColumn<Code>("code");
        QTest::newRow("one KiB too little") << 65535U << 3U << Code::StretchTooWeakRestoreBackup;
        QTest::newRow("one pass too few") << 65536U << 2U << Code::StretchTooWeakRestoreBackup;
        QTest::newRow("nothing") << 0U << 0U << Code::StretchTooWeakRestoreBackup;
        QTest::newRow("one KiB too much") << 1048577U << 3U << Code::StretchTooCostlyRestoreBackup;
        QTest::newRow("one pass too many") << 65536U << 21U << Code::StretchTooCostlyRestoreBackup;
        QTest::newRow("all bits set") << 0xFFFFFFFFU << 0xFFFFFFFFU << Code::StretchTooCostlyRestoreBackup;
        QTest::newRow("much memory, no pass") << 0xFFFFFFFFU << 0U << Code::StretchTooCostlyRestoreBackup;
    }

    void absurdCosts()
    {
        QFETCH(unsigned, kib);
        QFETCH(unsigned, passes);
        QFETCH(Code, code);
        QCOMPARE(checkCost({{kib}, passes}).code(), code);
        WatchingSource source;
        QCOMPARE(stretch(bytesOf("iron"), Salt{}, {{kib}, passes}).code(), code);
        QCOMPARE(source.given, 0);
    }

    void boundsThemselvesAreTaken()
    {
        QVERIFY(checkCost(weakestStretch));
        QVERIFY(checkCost(costliestStretch));
    }

    void memoryNotGrantedIsACode()
    {
        Outcome<WrappingKey> refused = Code::WrongSecretTypeAgain;
        {
            const TightMemory tight(rlim_t(40) << 20);
            refused = stretch(bytesOf("iron"), Salt{}, weakestStretch);
        }
        QVERIFY(!refused);
        QCOMPARE(refused.code(), Code::StretchRefusedCloseOthers);
        QVERIFY(stretch(bytesOf("iron"), Salt{}, weakestStretch));
    }

    void secretMemoryNotGrantedIsACode()
    {
        WatchingSource source(0);
        QCOMPARE(stretch(bytesOf("iron"), Salt{}, weakestStretch).code(), Code::MemoryRefusedCloseOthers);
    }

    void costsOfMachines_data()
    {
        QTest::addColumn<qint64>("atFloorMs");
        QTest::addColumn<unsigned>("hasMib");
        QTest::addColumn<unsigned>("mib");
        QTest::addColumn<unsigned>("passes");
        QTest::newRow("floor is too slow already") << qint64(4000) << 1024U << 64U << 3U;
        QTest::newRow("floor is enough") << qint64(500) << 1024U << 64U << 3U;
        QTest::newRow("memory doubled once") << qint64(300) << 1024U << 128U << 3U;
        QTest::newRow("memory at its most") << qint64(165) << 1024U << 256U << 3U;
        QTest::newRow("passes added") << qint64(100) << 1024U << 256U << 5U;
        QTest::newRow("passes in place of memory") << qint64(165) << 64U << 64U << 12U;
        QTest::newRow("no clock to speak of") << qint64(0) << 1024U << 256U << 20U;
    }

    void costsOfMachines()
    {
        QFETCH(qint64, atFloorMs);
        QFETCH(unsigned, hasMib);
        QFETCH(unsigned, mib);
        QFETCH(unsigned, passes);
        const StretchCost cost = *chooseCost(machine(std::chrono::milliseconds(atFloorMs), mebibytes(hasMib)));
        QCOMPARE(cost.memory.count, mebibytes(mib).count);
        QCOMPARE(cost.passCount, passes);
    }

    void chosenCostsAreWithinBounds()
    {
        QVERIFY(rc::check("any machine gets a cost within bounds, in 0.5 to 1.0 s wherever it can be had", [] {
            const nanoseconds atFloor(*rc::gen::inRange<std::int64_t>(0, 3'000'000'000));
            const Kibibytes has = mebibytes(*rc::gen::inRange<std::uint32_t>(64, 2048));
            const StretchTrial trial = machine(atFloor, has);
            const Outcome<StretchCost> cost = chooseCost(trial);
            RC_ASSERT(cost.ok());
            RC_ASSERT(checkCost(*cost).ok());
            RC_ASSERT(cost->memory.count <= mostMemoryChosen.count);
            const nanoseconds time = *trial(*cost);
            RC_ASSERT(time <= 1s || *cost == weakestStretch);
            RC_ASSERT(time >= 500ms || cost->passCount == costliestStretch.passCount);
        }));
    }

    void unsteadyMachineEndsToo()
    {
        QVERIFY(rc::check("times at random, and refusals, still end within bounds", [](const std::vector<std::uint32_t>& times) {
            std::size_t at = 0;
            const Outcome<StretchCost> cost = chooseCost([&](const StretchCost&) -> Outcome<nanoseconds> {
                const std::uint32_t time = times.empty() ? 0 : times[at++ % times.size()];
                if (at > 1 && time % 7 == 0)
                    return Code::StretchRefusedCloseOthers;
                return nanoseconds(time);
            });
            RC_ASSERT(cost.ok());
            RC_ASSERT(checkCost(*cost).ok());
        }));
    }

    void stepThatTakesTooLongIsNotTaken()
    {
        const StretchCost cost = *chooseCost([](const StretchCost& asked) -> Outcome<nanoseconds> {
            return asked.memory == weakestStretch.memory ? nanoseconds(150ms) * asked.passCount : nanoseconds(1200ms);
        });
        QCOMPARE(cost.memory.count, weakestStretch.memory.count);
        QCOMPARE(cost.passCount, 4U);
    }

    void noFloorNoVault()
    {
        QCOMPARE(chooseCost(machine(1ms, mebibytes(63))).code(), Code::StretchRefusedCloseOthers);
    }

    void trialLooksTwiceAtTheClock()
    {
        nanoseconds now = 7s;
        const StretchTrial trial = timedTrial([&now] { return now += 300ms; });
        QCOMPARE(trial(weakestStretch)->count(), nanoseconds(300ms).count());
        QCOMPARE(trial({{1}, 1}).code(), Code::StretchTooWeakRestoreBackup);
    }
};

QTEST_APPLESS_MAIN(TestStretch)
#include "test_stretch.moc"
