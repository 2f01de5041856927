// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/access.h"

#include <condition_variable>
#include <deque>
#include <mutex>

namespace steelyard {

/// Where results of a vault's thread wait until a thread without an event loop takes them, one by one.
class Post {
public:
    [[nodiscard]] vault::Executor executor()
    {
        return [this](std::function<void()> work) {
            const std::lock_guard guard(m_mutex);
            m_waiting.push_back(std::move(work));
            m_wake.notify_one();
        };
    }
    /// Waits for one where none is there.
    void takeOne()
    {
        std::unique_lock guard(m_mutex);
        m_wake.wait(guard, [this] { return !m_waiting.empty(); });
        const auto work = std::move(m_waiting.front());
        m_waiting.pop_front();
        guard.unlock();
        work();
    }

private:
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::deque<std::function<void()>> m_waiting;
};

}
