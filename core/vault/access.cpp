// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/access.h"

#include "core/vault/vault.h"

#include <array>
#include <condition_variable>
#include <deque>
#include <future>
#include <mutex>
#include <thread>

namespace steelyard::vault {

namespace {

constexpr std::int64_t recordsASlice = 500;
constexpr std::int64_t entriesASlice = 2'000;

/// The places in which work waits, the most urgent first.
enum class Lane : std::uint8_t { Keep, Page, Background };
constexpr std::size_t laneCount = 3;

std::chrono::nanoseconds steadyNow()
{
    return std::chrono::steady_clock::now().time_since_epoch();
}

seal::Outcome<seal::Keyring> ringFor(const NewVault& how, const seal::RandomSource& random)
{
    const seal::Outcome<seal::StretchCost> cost = how.cost ? seal::Outcome<seal::StretchCost>(*how.cost)
        : how.nature == seal::VaultNature::Sample           ? seal::Outcome<seal::StretchCost>(seal::weakestStretch)
                                                            : seal::chooseCost(seal::timedTrial(steadyNow));
    if (!cost)
        return cost.code();
    const auto passphrase = seal::slotKeyOf(how.passphrase, *cost, random);
    if (!passphrase)
        return passphrase.code();
    const auto recovery = seal::slotKeyOf(how.recovery, *cost, random);
    if (!recovery)
        return recovery.code();
    return seal::Keyring::create(*passphrase, *recovery, random, how.nature);
}

}

/// The thread that owns the vault, and the work that waits for it.
class VaultAccess::Worker {
public:
    explicit Worker(Surroundings surroundings)
        : m_surroundings(std::move(surroundings)), m_thread([this] { run(); })
    {
    }
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;
    ~Worker()
    {
        {
            const std::lock_guard guard(m_mutex);
            m_ending = true;
        }
        m_wake.notify_one();
        m_thread.join();
    }

    template <typename Work>
    void add(Lane lane, Work work)
    {
        {
            const std::lock_guard guard(m_mutex);
            m_waiting[static_cast<std::size_t>(lane)].emplace_back(std::move(work));
        }
        m_wake.notify_one();
    }

    /// Hands a result over, moved along, since an executor takes what can be copied.
    template <typename WhenReported, typename Result>
    void report(const WhenReported& done, Result result)
    {
        if (done)
            m_surroundings.post([done, shared = std::make_shared<Result>(std::move(result))] { done(std::move(*shared)); });
    }

    /// The following are for the thread alone.
    [[nodiscard]] Outcome<Opened> take(Outcome<std::unique_ptr<Vault>> opened, const Wanted& wanted)
    {
        if (!opened)
            return opened.refusal();
        m_vault = *std::move(opened);
        ++m_openingCount;
        Outcome<Opened> read = m_vault->opened(wanted);
        if (!read)
            m_vault.reset();
        return read;
    }

    /// A read that goes on slice by slice, each behind whatever is to be kept by then.
    void read(const std::shared_ptr<Vault::Reading>& reading, Lane lane, std::uint64_t openingCount, const WhenDone<std::vector<Record>>& done)
    {
        using Result = Outcome<std::vector<Record>>;
        if (!m_vault || (openingCount != 0 && openingCount != m_openingCount))
            return report(done, Result(Code::LockedUnlockFirst));
        if (ending())
            return report(done, Result(Code::StoppedTryAgain));
        const Outcome<bool> all = m_vault->readOn(*reading, recordsASlice);
        if (!all)
            return report(done, Result(all.refusal()));
        if (*all)
            return report(done, Result(std::move(reading->records)));
        const std::lock_guard guard(m_mutex);
        m_waiting[static_cast<std::size_t>(lane)].emplace_front(
            [this, reading, lane, current = m_openingCount, done] { read(reading, lane, current, done); });
    }

    /// The same for a check of everything.
    void check(const std::shared_ptr<Store::Checking>& checking, std::uint64_t openingCount, const WhenDone<Done>& done)
    {
        if (!m_vault || (openingCount != 0 && openingCount != m_openingCount))
            return report(done, Outcome<Done>(Code::LockedUnlockFirst));
        if (ending())
            return report(done, Outcome<Done>(Code::StoppedTryAgain));
        const Outcome<bool> all = m_vault->checkOn(*checking, entriesASlice);
        if (!all)
            return report(done, Outcome<Done>(all.refusal()));
        if (*all)
            return report(done, Outcome<Done>(Done{}));
        const std::lock_guard guard(m_mutex);
        m_waiting.back().emplace_front([this, checking, current = m_openingCount, done] { check(checking, current, done); });
    }

    /// Nothing waits to be kept.
    bool idle()
    {
        const std::lock_guard guard(m_mutex);
        return m_waiting.front().empty();
    }
    std::unique_ptr<Vault>& vault() { return m_vault; }
    const Surroundings& surroundings() { return m_surroundings; }

private:
    using Task = std::packaged_task<void()>;

    void run()
    {
        while (std::optional<Task> task = next())
            (*task)();
        m_vault.reset();
    }
    /// Nothing once the end has come and nothing waits any more.
    std::optional<Task> next()
    {
        std::unique_lock guard(m_mutex);
        for (;;) {
            for (std::deque<Task>& lane : m_waiting) {
                if (lane.empty())
                    continue;
                Task task = std::move(lane.front());
                lane.pop_front();
                return task;
            }
            if (m_ending)
                return std::nullopt;
            m_wake.wait(guard);
        }
    }
    bool ending()
    {
        const std::lock_guard guard(m_mutex);
        return m_ending;
    }

    Surroundings m_surroundings;
    std::unique_ptr<Vault> m_vault;
    std::uint64_t m_openingCount = 0;
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::array<std::deque<Task>, laneCount> m_waiting;
    bool m_ending = false;
    std::thread m_thread; // last, so that everything it uses is there before it starts
};

seal::Opener byPassphrase(seal::SecretText passphrase)
{
    return [shared = std::make_shared<seal::SecretText>(std::move(passphrase))](
               const seal::KeyFile& file) { return seal::unlock(file, *shared); };
}

seal::Opener byRecoveryCode(seal::RecoveryCode code)
{
    return [shared = std::make_shared<seal::RecoveryCode>(std::move(code))](
               const seal::KeyFile& file) { return seal::unlock(file, *shared); };
}

VaultAccess::VaultAccess(Surroundings surroundings) : m_worker(std::make_unique<Worker>(std::move(surroundings))) {}

VaultAccess::~VaultAccess() = default;

void VaultAccess::look(std::filesystem::path folder, std::function<void(Look)> done)
{
    m_worker->add(Lane::Keep, [worker = m_worker.get(), folder = std::move(folder), done = std::move(done)] {
        worker->report(done, Vault::look(folder));
    });
}

void VaultAccess::create(std::filesystem::path folder, NewVault how, WhenDone<Opened> done)
{
    m_worker->add(Lane::Keep, [worker = m_worker.get(), folder = std::move(folder), how = std::move(how), done = std::move(done)] {
        using Result = Outcome<Opened>;
        if (worker->vault())
            return worker->report(done, Result(Code::OpenAlreadyLockFirst));
        if (how.passphrase.characterCount() < NewVault::fewestCharacterCount)
            return worker->report(done, Result(Code::SecretUnfitTypeAgain));
        auto ring = ringFor(how, worker->surroundings().random);
        if (!ring)
            return worker->report(done, Result(codeOf(ring.code())));
        worker->report(done, worker->take(Vault::create(folder, *std::move(ring), worker->surroundings()), how.wanted));
    });
}

void VaultAccess::unlock(std::filesystem::path folder, seal::Opener opener, Wanted wanted, WhenDone<Opened> done)
{
    m_worker->add(Lane::Keep, [worker = m_worker.get(), folder = std::move(folder), opener = std::move(opener), wanted = std::move(wanted), done = std::move(done)] {
        if (worker->vault())
            return worker->report(done, Outcome<Opened>(Code::OpenAlreadyLockFirst));
        worker->report(done, worker->take(Vault::unlock(folder, opener, worker->surroundings()), wanted));
    });
}

void VaultAccess::removeSample(std::filesystem::path folder, WhenDone<Done> done)
{
    m_worker->add(Lane::Keep, [worker = m_worker.get(), folder = std::move(folder), done = std::move(done)] {
        worker->report(done, worker->vault() ? Outcome<Done>(Code::OpenAlreadyLockFirst) : Vault::removeSample(folder, worker->surroundings()));
    });
}

void VaultAccess::keep(std::vector<journal::Draft> drafts, WhenDone<Kept> done)
{
    m_worker->add(Lane::Keep, [worker = m_worker.get(), drafts = std::move(drafts), done = std::move(done)] {
        worker->report(done, worker->vault() ? worker->vault()->keep(drafts) : Outcome<Kept>(Code::LockedUnlockFirst));
        if (worker->vault() && worker->idle())
            worker->vault()->witness();
    });
}

void VaultAccess::saveDraft(std::string key, std::optional<ByteBuffer> bytes, WhenDone<Done> done)
{
    m_worker->add(Lane::Keep, [worker = m_worker.get(), key = std::move(key), bytes = std::move(bytes), done = std::move(done)] {
        worker->report(done, worker->vault() ? worker->vault()->saveDraft(key, bytes) : Outcome<Done>(Code::LockedUnlockFirst));
    });
}

void VaultAccess::read(Query query, Urgency urgency, WhenDone<std::vector<Record>> done)
{
    const Lane lane = urgency == Urgency::Page ? Lane::Page : Lane::Background;
    auto reading = std::make_shared<Vault::Reading>();
    reading->query = std::move(query);
    m_worker->add(lane, [worker = m_worker.get(), lane, reading, done = std::move(done)] { worker->read(reading, lane, 0, done); });
}

void VaultAccess::checkAll(WhenDone<Done> done)
{
    auto checking = std::make_shared<Store::Checking>();
    m_worker->add(Lane::Background, [worker = m_worker.get(), checking, done = std::move(done)] { worker->check(checking, 0, done); });
}

void VaultAccess::lock(WhenDone<Done> done)
{
    m_worker->add(Lane::Keep, [worker = m_worker.get(), done = std::move(done)] {
        worker->vault().reset();
        worker->report(done, Outcome<Done>(Done{}));
    });
}

}
