// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/desk.h"
#include "core/work/keeping/keeper.h"

#include <chrono>
#include <map>
#include <set>

namespace steelyard {

/// Calls back once after a while; the app gives the system's timer, tests their own.
using After = std::function<void(std::chrono::milliseconds, std::function<void()>)>;

/// Saves what lies on the desk and is half entered, soon after each change, so that neither lock nor sudden end loses it; and lays it
/// out again. A draft that cannot be read here, as a newer version of the app wrote it, stays as it is, and ours is saved beside it.
class DraftKeeper {
public:
    /// A change is saved so long after it, with all that came in between.
    static constexpr std::chrono::milliseconds delay{250};

    using Drafts = std::map<std::string, journal::ByteBuffer>;

    /// Desk and keeper outlive it. Nothing is saved before `begin`.
    DraftKeeper(Desk& desk, Keeper& keeper, After after);
    DraftKeeper(const DraftKeeper&) = delete;
    DraftKeeper& operator=(const DraftKeeper&) = delete;

    /// The vault is open: lays out what was saved, and saves from here on. The names of what could not be read, to be told.
    [[nodiscard]] std::set<std::string> begin(const Drafts& saved);
    /// Saves at once what is not saved yet. Before a lock; what is asked of a vault first is done first.
    void flush();
    /// The vault is locked: nothing more is saved.
    void end();

    /// Why the last draft was not saved; it is tried again with the next change.
    [[nodiscard]] const std::optional<vault::Refusal>& trouble() const { return m_trouble; }
    [[nodiscard]] Subscription onTrouble(std::function<void()> told) { return m_listeners.add(std::move(told)); }

private:
    void changed();
    void save(const std::string& name, std::optional<journal::ByteBuffer> bytes);
    [[nodiscard]] std::string freeName(const std::string& name) const;
    [[nodiscard]] Drafts now() const;

    Desk& m_desk;
    Keeper& m_keeper;
    After m_after;
    bool m_begun = false;
    bool m_waiting = false;
    Drafts m_saved;
    std::set<std::string> m_unread;
    std::optional<vault::Refusal> m_trouble;
    Listeners m_listeners;
    std::shared_ptr<char> m_life = std::make_shared<char>();
    Subscription m_onDesk, m_onDrafts;
};

}
