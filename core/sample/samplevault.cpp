// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/samplevault.h"

#include "core/seal/hash.h"
#include "core/seal/start.h"
#include "core/work/keeping/post.h"
#include "core/work/keeping/vaultkeeper.h"
#include "core/work/newids.h"

#include <atomic>

namespace steelyard::sample {

namespace {

using vault::Code;

/// Gathers what is to be kept, so that it goes onto the disk together: a batch for each wait, and not for each thing.
class GatheringKeeper : public Keeper {
public:
    explicit GatheringKeeper(Keeper& beneath) : m_beneath(beneath) {}

    void keep(std::vector<journal::Draft> drafts, std::function<void(KeepResult)> told) override
    {
        m_asked.push_back({drafts.size(), std::move(told)});
        std::move(drafts.begin(), drafts.end(), std::back_inserter(m_drafts));
    }
    void saveDraft(std::string key, std::optional<journal::ByteBuffer> bytes, std::function<void(std::optional<vault::Refusal>)> told) override
    {
        m_beneath.saveDraft(std::move(key), std::move(bytes), std::move(told));
    }
    void hand()
    {
        if (m_asked.empty())
            return;
        m_beneath.keep(std::exchange(m_drafts, {}), [asked = std::exchange(m_asked, {})](const KeepResult& result) {
            auto from = result.entries.begin();
            for (const Asked& one : asked) {
                KeepResult own{{}, result.refusal, result.reserveUsed};
                if (!result.refusal) {
                    own.entries.assign(from, from + static_cast<std::ptrdiff_t>(one.draftCount));
                    from += static_cast<std::ptrdiff_t>(one.draftCount);
                }
                one.told(std::move(own));
            }
        });
    }

private:
    struct Asked {
        std::size_t draftCount;
        std::function<void(KeepResult)> told;
    };

    Keeper& m_beneath;
    std::vector<journal::Draft> m_drafts;
    std::vector<Asked> m_asked;
};

/// The same ids each time, each as good as a random one: what is made of the same files is the same but for its keys.
NewIds seasonIds()
{
    return [next = std::uint64_t{0}]() mutable {
        const std::string seed = "Marrow Hill " + std::to_string(++next);
        RecordId id;
        seal::copyBytes(seal::hash(seal::bytesOf(seed)), id.bytes);
        return id;
    };
}

/// One vault being made.
class Making {
public:
    Making(const Site& site, std::chrono::sys_days today)
        : m_site(site), m_day(today),
          m_access({m_post.executor(), [this] { return now(); }, seal::systemRandom(), site.install}), m_keeper(m_access), m_gathering(m_keeper),
          m_keeping(m_book, m_gathering, seasonIds(), [this] { return Here{m_day.load(), "Etc/UTC"}; })
    {
    }

    std::optional<NotMade> make(const Season& season)
    {
        if (const auto refusal = created())
            return NotMade{refusal, std::nullopt};
        const auto notKept = keepSeason(m_keeping, season, {[this](std::chrono::sys_days day) { m_day = day; }, [this] { await(); }});
        if (const auto refusal = locked())
            return NotMade{refusal, std::nullopt};
        return notKept ? std::optional(NotMade{std::nullopt, notKept}) : std::nullopt;
    }

private:
    /// Asks, and waits for the answer.
    template <typename Value, typename Ask, typename Take>
    std::optional<vault::Refusal> answered(const Ask& ask, const Take& take)
    {
        bool done = false;
        std::optional<vault::Refusal> refusal;
        ask([&](vault::Outcome<Value> outcome) {
            done = true;
            if (outcome)
                take(*outcome);
            else
                refusal = outcome.refusal();
        });
        while (!done)
            m_post.takeOne();
        return refusal;
    }
    std::optional<vault::Refusal> created()
    {
        seal::SecretText secret;
        auto recovery = seal::RecoveryCode::generate(seal::systemRandom());
        if (!secret.append(passphrase) || !recovery)
            return vault::Refusal{Code::MemoryRefusedCloseOthers};
        vault::NewVault how{std::move(secret), *std::move(recovery), std::nullopt, SeasonBook::wanted(), seal::VaultNature::Sample};
        return answered<vault::Opened>([&](auto done) { m_access.create(m_site.vault, std::move(how), std::move(done)); },
                                       [this](const vault::Opened& opened) { m_book.load(opened.snapshot); });
    }
    std::optional<vault::Refusal> locked()
    {
        return answered<vault::Done>([this](auto done) { m_access.lock(std::move(done)); }, [](const vault::Done&) {});
    }
    void await()
    {
        m_gathering.hand();
        m_post.takeOne();
    }
    /// Asked on the vault's thread: in the morning, as sessions are prepared.
    journal::Instant now() const { return journal::Instant(m_day.load()) + std::chrono::hours(9); }

    Site m_site;
    std::atomic<std::chrono::sys_days> m_day;
    Post m_post;
    vault::VaultAccess m_access;
    VaultKeeper m_keeper;
    GatheringKeeper m_gathering;
    SeasonBook m_book;
    SeasonKeeping m_keeping;
};

/// Beside the place, with a name of its own.
std::filesystem::path unfinished(std::filesystem::path folder)
{
    folder += ".part";
    return folder;
}

}

std::optional<NotMade> makeSampleVault(const Site& site, const Season& season, std::chrono::sys_days today)
{
    const auto refused = [](Code code) { return NotMade{vault::Refusal{code}, std::nullopt}; };
    std::error_code trouble;
    if (std::filesystem::exists(site.vault, trouble))
        return refused(Code::VaultThereUnlockIt);
    const std::filesystem::path part = unfinished(site.vault);
    std::filesystem::remove_all(part, trouble);
    const auto notMade = Making({part, site.install}, today).make(season);
    if (!notMade)
        std::filesystem::rename(part, site.vault, trouble);
    if (!notMade && !trouble)
        return std::nullopt;
    std::error_code ignored;
    std::filesystem::remove_all(part, ignored);
    return notMade ? notMade : refused(Code::WriteFailedTryAgain);
}

}
