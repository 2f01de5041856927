// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <functional>
#include <memory>
#include <utility>
#include <vector>

namespace steelyard {

/// Ends a subscription when it goes.
class Subscription {
public:
    Subscription() = default;
    explicit Subscription(std::function<void()> end) : m_end(std::move(end)) {}
    Subscription(Subscription&& other) noexcept : m_end(std::exchange(other.m_end, nullptr)) {}
    Subscription& operator=(Subscription&& other) noexcept
    {
        if (this != &other) {
            stop();
            m_end = std::exchange(other.m_end, nullptr);
        }
        return *this;
    }
    ~Subscription() { stop(); }

private:
    void stop()
    {
        if (m_end)
            std::exchange(m_end, nullptr)();
    }

    std::function<void()> m_end;
};

/// Those who want to be told of a change. One may come or go while they are told; a subscription may outlive them.
class Listeners {
public:
    [[nodiscard]] Subscription add(std::function<void()> told)
    {
        const int id = ++m_lastId;
        m_list->emplace_back(id, std::move(told));
        return Subscription([id, weak = std::weak_ptr(m_list)] {
            if (const auto list = weak.lock())
                std::erase_if(*list, [id](const auto& l) { return l.first == id; });
        });
    }
    void tell() const
    {
        const List now = *m_list;
        for (const auto& listener : now)
            if (std::any_of(m_list->begin(), m_list->end(), [&](const auto& l) { return l.first == listener.first; }))
                listener.second();
    }

private:
    using List = std::vector<std::pair<int, std::function<void()>>>;

    int m_lastId = 0;
    std::shared_ptr<List> m_list = std::make_shared<List>();
};

}
