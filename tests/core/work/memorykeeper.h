// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"
#include "tests/core/numberedids.h"
#include "tests/core/seal/sealing.h"

#include <deque>
#include <map>

/// One device's keeping without a disk.
namespace keeping {

using namespace steelyard;

inline std::chrono::sys_days day(int year, unsigned month, unsigned dayOfMonth)
{
    return std::chrono::year_month_day(std::chrono::year(year), std::chrono::month(month), std::chrono::day(dayOfMonth));
}

/// Keeps in memory, through the journal's own stamps, chain and codec; can be told to refuse, or to answer later.
class MemoryKeeper : public Keeper {
public:
    explicit MemoryKeeper(unsigned deviceNumber = 1)
    {
        m_end.chain.origin.bytes.fill(static_cast<std::byte>(deviceNumber));
    }

    void keep(std::vector<journal::Draft> drafts, std::function<void(KeepResult)> told) override
    {
        ++askedCount;
        if (later) {
            waiting.push_back([this, drafts = std::move(drafts), told = std::move(told)] { told(kept(drafts)); });
            return;
        }
        told(kept(drafts));
    }
    void saveDraft(std::string key, std::optional<journal::ByteBuffer> bytes, std::function<void(std::optional<vault::Refusal>)> told) override
    {
        ++savedCount;
        if (!refusal && bytes)
            saved[key] = *bytes;
        else if (!refusal)
            saved.erase(key);
        if (told)
            told(refusal);
    }
    /// The answers that were held back.
    void answer()
    {
        for (auto now = std::exchange(waiting, {}); const auto& each : now)
            each();
    }
    void see(const journal::Held& entry) { m_stamper.see(entry.body.stamp.clock); }

    std::optional<vault::Refusal> refusal;
    bool later = false;
    int askedCount = 0, savedCount = 0;
    journal::Instant now{std::chrono::hours(24 * 20'000)};
    std::vector<journal::Held> entries;
    std::map<std::string, journal::ByteBuffer> saved;
    std::deque<std::function<void()>> waiting;

private:
    KeepResult kept(const std::vector<journal::Draft>& drafts)
    {
        if (refusal)
            return {{}, refusal};
        std::vector<journal::Held> made;
        journal::ChainEnd end = m_end;
        for (const journal::Draft& draft : drafts) {
            now += std::chrono::milliseconds(7);
            const auto entry = journal::nextEntry(end, journal::finished(draft, m_stamper.stamp(now)), m_random);
            // as it comes back from a disk
            const auto read = entry ? journal::decodeEntry(journal::encodeEntry(*entry)) : entry;
            const auto held = read ? journal::held(*read) : journal::Outcome<journal::Held>(read.code());
            if (!held)
                return {{}, vault::Refusal{vault::Code::DraftUnfitShorten}};
            end = journal::endAt(read->header);
            made.push_back(*held);
        }
        m_end = end;
        entries.insert(entries.end(), made.begin(), made.end());
        return {made, std::nullopt};
    }

    journal::ChainEnd m_end;
    journal::Stamper m_stamper;
    seal::RandomSource m_random = sealing::countingRandom();
};

/// A book with what keeps it, and the last answer.
struct Device {
    explicit Device(unsigned number = 1)
        : keeper(number), keeping(book, keeper, numberedids::counted(1000 * number), [this] { return Here{today, "Europe/Berlin"}; })
    {
    }
    [[nodiscard]] WhenTold told()
    {
        return [this](const Told& how) {
            last = how;
            ++toldCount;
        };
    }

    std::chrono::sys_days today = day(2026, 11, 2);
    MemoryKeeper keeper;
    SeasonBook book;
    SeasonKeeping keeping;
    Told last;
    int toldCount = 0;
};

}
