// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/waiting/draftkeeper.h"

#include "core/work/waiting/deskdraft.h"

namespace steelyard {

namespace {

/// Behind the name of a draft that stands beside one which cannot be read.
constexpr std::string_view beside = "/1";

}

DraftKeeper::DraftKeeper(Desk& desk, Keeper& keeper, After after)
    : m_desk(desk), m_keeper(keeper), m_after(std::move(after)), m_onDesk(desk.onChanged([this] { changed(); })),
      m_onDrafts(desk.onDraftsChanged([this] { changed(); }))
{
}

std::set<std::string> DraftKeeper::begin(const Drafts& saved)
{
    m_begun = false;
    m_unread.clear();
    m_saved.clear();
    std::optional<DeskDraft> lying;
    std::vector<KitItem> half;
    // a plain name comes before those beside it, which count where both can be read
    for (const auto& [name, bytes] : saved) {
        bool read = true;
        if (name.substr(0, name.find(beside)) == deskDraftName) {
            const auto desk = deskDraftIn(bytes);
            read = desk.has_value();
            if (desk)
                lying = desk;
        } else if (name.starts_with(itemDraftPrefix)) {
            const auto item = itemDraftIn(bytes);
            read = item.has_value();
            if (item)
                half.push_back(*item);
        } else {
            continue;
        }
        if (read)
            m_saved[name] = bytes;
        else
            m_unread.insert(name);
    }
    if (lying)
        m_desk.lay(lying->marks, lying->setup);
    for (const KitItem& item : half)
        m_desk.setDraft(item);
    m_begun = true;
    return m_unread;
}

void DraftKeeper::flush()
{
    m_waiting = false;
    if (!m_begun)
        return;
    const Drafts wanted = now();
    std::vector<std::string> gone;
    for (const auto& [name, bytes] : m_saved)
        if (!wanted.contains(name))
            gone.push_back(name);
    for (const std::string& name : gone)
        save(name, std::nullopt);
    for (const auto& [name, bytes] : wanted)
        if (const auto at = m_saved.find(name); at == m_saved.end() || at->second != bytes)
            save(name, bytes);
}

void DraftKeeper::end()
{
    m_begun = false;
    m_saved.clear();
    m_unread.clear();
}

void DraftKeeper::changed()
{
    if (!m_begun || m_waiting)
        return;
    m_waiting = true;
    m_after(delay, [this, life = std::weak_ptr(m_life)] {
        if (!life.expired() && m_waiting)
            flush();
    });
}

void DraftKeeper::save(const std::string& name, std::optional<journal::ByteBuffer> bytes)
{
    const auto before = m_saved.find(name) == m_saved.end() ? std::nullopt : std::optional(m_saved[name]);
    if (bytes)
        m_saved[name] = *bytes;
    else
        m_saved.erase(name);
    m_keeper.saveDraft(name, std::move(bytes), [this, name, before, life = std::weak_ptr(m_life)](const std::optional<vault::Refusal>& refusal) {
        if (life.expired() || !m_begun)
            return;
        if (refusal && before)
            m_saved[name] = *before;
        else if (refusal)
            m_saved.erase(name);
        if (m_trouble == refusal)
            return;
        m_trouble = refusal;
        m_listeners.tell();
    });
}

std::string DraftKeeper::freeName(const std::string& name) const
{
    std::string free = name;
    while (m_unread.contains(free))
        free += beside;
    return free;
}

DraftKeeper::Drafts DraftKeeper::now() const
{
    Drafts drafts;
    if (auto bytes = encodeDraft(DeskDraft{m_desk.marks(), m_desk.setup()}))
        drafts[freeName(std::string(deskDraftName))] = std::move(*bytes);
    for (const KitItem& item : m_desk.drafts())
        if (auto bytes = encodeDraft(item))
            drafts[freeName(draftNameOf(item))] = std::move(*bytes);
    return drafts;
}

}
