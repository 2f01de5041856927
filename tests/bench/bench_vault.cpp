// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/verdicts.h"
#include "tests/core/vault/vaulting.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QProcess>

#include <benchmark/benchmark.h>

namespace {

using namespace vaulting;

constexpr std::size_t entryCount = 1'000'000;
constexpr std::size_t batchSize = 20'000;
constexpr auto setKind = static_cast<journal::RecordKind>(16);

double milliseconds(std::chrono::steady_clock::duration spent)
{
    return std::chrono::duration<double, std::milli>(spent).count();
}

template <typename Work>
double timed(const Work& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return milliseconds(std::chrono::steady_clock::now() - start);
}

/// A set of lifts as an entry will say it: some numbers with their units, about 60 bytes.
journal::Draft oneSet(std::mt19937& engine, std::size_t number)
{
    journal::Draft draft = addedTo(static_cast<unsigned>(engine() % 24), 0, static_cast<int>(number / 2'000), std::string(58, 's'));
    draft.subject.kind = setKind;
    for (std::byte& byte : draft.subject.id.bytes)
        byte = static_cast<std::byte>(engine() & 0xFF);
    draft.zone = "Europe/Berlin";
    return draft;
}

/// A squad of 24 with 20 fields each, and a million sets in one chain; made once, for all that is measured on it.
class LargeVault {
public:
    static LargeVault& instance()
    {
        static LargeVault made;
        return made;
    }
    Place place;
    double bytesAnEntry = 0;

private:
    LargeVault()
    {
        (void)seal::start().ok();
        const auto vault = place.create();
        std::mt19937 engine(1);
        std::vector<journal::Draft> fields;
        for (unsigned athlete = 0; athlete < 24; ++athlete)
            for (std::uint32_t field = 0; field < 20; ++field)
                fields.push_back(fieldOf(athlete, field, "something short"));
        bool well = (*vault)->keep(fields).ok();
        const auto before = QFileInfo(place.file("vault-1.db")).size();
        for (std::size_t number = 0; number < entryCount && well; number += batchSize) {
            std::vector<journal::Draft> sets;
            for (std::size_t at = 0; at < batchSize; ++at)
                sets.push_back(oneSet(engine, number + at));
            well = (*vault)->keep(sets).ok();
        }
        bytesAnEntry = well ? static_cast<double>(QFileInfo(place.file("vault-1.db")).size() - before) / entryCount : 1e9;
    }
};

void openWithAMillionEntries(benchmark::State& state)
{
    LargeVault& large = LargeVault::instance();
    std::vector<double> spent;
    for (auto _ : state) {
        spent.push_back(timed([&] {
            const auto vault = large.place.unlock();
            const auto opened = (*vault)->opened({{journal::RecordKind::Athlete, journal::RecordKind::Setup, journal::RecordKind::KitItem}});
            if (!opened || opened->snapshot.heads.size() < 480)
                state.SkipWithError("not opened");
        }));
        state.SetIterationTime(spent.back() / 1000);
    }
    verdicts::hold("open and first snapshot at a million entries, after the key", verdicts::median(spent), 500, "ms");
    verdicts::hold("bytes an entry, with its views", large.bytesAnEntry, 400, "B");
}
BENCHMARK(openWithAMillionEntries)->Iterations(7)->UseManualTime()->Unit(benchmark::kMillisecond);

void keepInAMillionEntries(benchmark::State& state)
{
    const auto vault = LargeVault::instance().place.unlock();
    std::mt19937 engine(2);
    std::vector<double> spent;
    for (auto _ : state) {
        const std::vector<journal::Draft> drafts{oneSet(engine, 1)};
        spent.push_back(timed([&] {
            if (!(*vault)->keep(drafts))
                state.SkipWithError("not kept");
        }));
        state.SetIterationTime(spent.back() / 1000);
    }
    std::sort(spent.begin(), spent.end());
    state.counters["p95_ms"] = spent[spent.size() * 95 / 100];
    verdicts::hold("keep, at a million entries", verdicts::median(spent), 20, "ms");
}
BENCHMARK(keepInAMillionEntries)->Iterations(100)->UseManualTime()->Unit(benchmark::kMillisecond);

void onePersonsMonthOfAMillionEntries(benchmark::State& state)
{
    const auto vault = LargeVault::instance().place.unlock();
    for (auto _ : state) {
        Vault::Reading reading;
        reading.query = {{setKind}, recordId(3), std::chrono::sys_days(std::chrono::days(20'200)), std::chrono::sys_days(std::chrono::days(20'229))};
        while (true) {
            const Outcome<bool> all = (*vault)->readOn(reading, 500);
            if (!all || *all)
                break;
        }
        state.counters["records"] = static_cast<double>(reading.records.size());
    }
}
BENCHMARK(onePersonsMonthOfAMillionEntries)->Unit(benchmark::kMillisecond);

/// What unlocking costs over the stretch of the passphrase, which is made to cost something.
void unlockOverTheStretch(benchmark::State& state)
{
    (void)seal::start().ok();
    Place place;
    seal::SecretText passphrase;
    (void)passphrase.append("a squad of nine").ok();
    const auto slot = seal::slotKeyOf(passphrase, seal::weakestStretch, seededRandom(5));
    auto ring = seal::Keyring::create(*slot, slotKey(seal::SlotKind::RecoveryCode, 2), seededRandom(6));
    if (!Vault::create(place.folder(), *std::move(ring), place.surroundings))
        return state.SkipWithError("not created");
    const auto way = [&passphrase](const seal::KeyFile& file) { return seal::unlock(file, passphrase); };
    std::vector<double> over;
    for (auto _ : state) {
        const double stretch = timed([&] { benchmark::DoNotOptimize(seal::stretch(seal::bytesOf(passphrase.view()), slot->salt, slot->cost)); });
        const double unlock = timed([&] {
            const auto vault = Vault::unlock(place.folder(), way, place.surroundings);
            if (!vault || !(*vault)->opened(everything()))
                state.SkipWithError("not unlocked");
        });
        over.push_back(unlock - stretch);
        state.SetIterationTime(unlock / 1000);
    }
    verdicts::hold("unlock over its stretch", verdicts::median(over), 200, "ms");
}
BENCHMARK(unlockOverTheStretch)->Iterations(9)->UseManualTime()->Unit(benchmark::kMillisecond);

/// Milliseconds for inserting and for looking up, by one engine in a process of its own.
std::optional<std::array<double, 2>> engineTimes(const QString& program)
{
    const QTemporaryDir dir;
    QProcess process;
    process.start(QCoreApplication::applicationDirPath() + '/' + program, {dir.filePath("a.db")});
    if (!process.waitForFinished(120'000) || process.exitCode() != 0)
        return std::nullopt;
    const QList<QByteArray> said = process.readAllStandardOutput().simplified().split(' ');
    return said.size() == 2 ? std::optional(std::array{said[0].toDouble(), said[1].toDouble()}) : std::nullopt;
}

/// The same tables, rows and settings with encryption and without, in turn, so that whatever slows the machine slows both.
void sealedOverPlain(benchmark::State& state)
{
    std::vector<double> inserts, lookUps;
    for (auto _ : state) {
        const auto plain = engineTimes("steelyard_plainengine");
        const auto sealed = engineTimes("steelyard_sealedengine");
        if (!plain || !sealed) {
            verdicts::missing("encrypted over plain");
            return state.SkipWithError("an engine did not answer");
        }
        inserts.push_back((*sealed)[0] / (*plain)[0]);
        lookUps.push_back((*sealed)[1] / (*plain)[1]);
        state.counters["plain_insert_ms"] = (*plain)[0];
        state.counters["plain_lookup_ms"] = (*plain)[1];
        state.SetIterationTime((*sealed)[0] / 1000);
    }
    verdicts::hold("bulk insert, encrypted over plain", verdicts::median(inserts), 1.2, "");
    verdicts::hold("look-ups, encrypted over plain", verdicts::median(lookUps), 3, "");
}
BENCHMARK(sealedOverPlain)->Iterations(3)->UseManualTime()->Unit(benchmark::kMillisecond);

}
