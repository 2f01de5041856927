// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/seasonkeeping.h"

#include "core/journal/content.h"

#include <algorithm>

namespace steelyard {

using journal::Draft;
using journal::Kind;

namespace {

journal::Body unstamped(Draft draft)
{
    return journal::finished(std::move(draft), {});
}

}

SeasonKeeping::SeasonKeeping(SeasonBook& book, Keeper& keeper, NewIds newIds, std::function<Here()> here)
    : m_book(book), m_keeper(keeper), m_newIds(std::move(newIds)), m_here(std::move(here))
{
}

void SeasonKeeping::forget()
{
    m_deeds.clear();
    m_listeners.tell();
}

void SeasonKeeping::keep(Deed deed, const RecordId& id, std::vector<Draft> drafts, WhenTold told)
{
    DeedDone done{deed, id, here().day, {}, {}, false};
    for (const Draft& draft : drafts) {
        const journal::Register* now = m_book.registerOf(journal::keyOf(unstamped(draft)));
        done.before.push_back(now ? std::optional(*now->winner()) : std::nullopt);
    }
    hand(std::move(drafts), id, std::move(told), [this, done = std::move(done)](const KeepResult& result) mutable {
        done.entries = result.entries;
        m_deeds.push_front(std::move(done));
        if (m_deeds.size() > mostUndoCount)
            m_deeds.pop_back();
    });
}

void SeasonKeeping::keepUnlisted(const RecordId& id, std::vector<Draft> drafts, WhenTold told)
{
    hand(std::move(drafts), id, std::move(told), [](const KeepResult&) {});
}

void SeasonKeeping::keepUndone(std::size_t index, std::vector<Draft> drafts, WhenTold told)
{
    const journal::EntryId first = m_deeds[index].entries.front().id;
    const auto isIt = [first](const DeedDone& done) { return done.entries.front().id == first; };
    m_deeds[index].undoing = true;
    const auto answered = [this, isIt, told = std::move(told)](const Told& how) {
        if (const auto at = std::find_if(m_deeds.begin(), m_deeds.end(), isIt); at != m_deeds.end())
            at->undoing = false;
        told(how);
    };
    hand(std::move(drafts), m_deeds[index].id, answered, [this, isIt](const KeepResult& result) {
        const auto at = std::find_if(m_deeds.begin(), m_deeds.end(), isIt);
        if (at == m_deeds.end())
            return;
        const DeedDone undone = std::move(*at);
        m_deeds.erase(at);
        for (std::size_t i = 0; i < undone.before.size() && i < result.entries.size(); ++i)
            if (undone.before[i])
                standIn(undone.before[i]->id, result.entries[i]);
    });
}

void SeasonKeeping::standIn(const journal::EntryId& before, const journal::Held& same)
{
    for (DeedDone& deed : m_deeds) {
        for (journal::Held& entry : deed.entries)
            if (entry.id == before)
                entry = same;
        for (auto& entry : deed.before)
            if (entry && entry->id == before)
                entry = same;
    }
}

void SeasonKeeping::hand(std::vector<Draft> drafts, const RecordId& id, WhenTold told, std::function<void(const KeepResult&)> kept)
{
    if (drafts.empty())
        return told({id, std::nullopt, std::nullopt});
    m_keeper.keep(std::move(drafts), [this, id, life = std::weak_ptr(m_life), told = std::move(told), kept = std::move(kept)](const KeepResult& result) {
        if (life.expired())
            return;
        if (!result.refusal) {
            kept(result);
            m_book.take(result.entries);
            m_listeners.tell();
        }
        told({id, std::nullopt, result.refusal, result.reserveUsed});
    });
}

Draft Drafting::begun(Kind kind, const Place& place) const
{
    Draft draft;
    draft.kind = kind;
    draft.subject = place.subject;
    draft.athlete = place.athlete;
    draft.localDay = m_here.day;
    draft.zone = m_here.zone;
    return draft;
}

void Drafting::put(Draft draft)
{
    if (draft.kind != Kind::Added)
        draft.replaces = m_book.headsOf(journal::keyOf(unstamped(draft)));
    m_drafts.push_back(std::move(draft));
}

void Drafting::set(const Place& place, std::uint32_t fieldNumber, const std::optional<journal::ByteBuffer>& content, const std::string& part)
{
    const journal::Held* said = m_book.said(place, fieldNumber, part);
    if (said ? content == said->body.content : !content)
        return;
    Draft draft = begun(Kind::FieldSet, place);
    draft.fieldNumber = fieldNumber;
    draft.part = part;
    draft.content = content.value_or(journal::nullItem());
    put(std::move(draft));
}

void Drafting::setText(const Place& place, std::uint32_t fieldNumber, const std::string& text)
{
    set(place, fieldNumber, text.empty() ? std::nullopt : std::optional(journal::textItem(text)));
}

void Drafting::add(const Place& place, std::chrono::sys_days day, journal::ByteBuffer content)
{
    Draft draft = begun(Kind::Added, place);
    draft.localDay = day;
    draft.content = std::move(content);
    put(std::move(draft));
}

void Drafting::putRight(const Place& place, std::chrono::sys_days day, journal::ByteBuffer content)
{
    Draft draft = begun(Kind::PutRight, place);
    draft.localDay = day;
    draft.content = std::move(content);
    put(std::move(draft));
}

void Drafting::remove(const Place& place, bool removed)
{
    Draft draft = begun(Kind::Removed, place);
    draft.content = journal::flagItem(removed);
    put(std::move(draft));
}

void Drafting::again(const journal::Held& entry, const journal::Held* saying)
{
    Draft draft = static_cast<const Draft&>(entry.body);
    draft.localDay = saying ? saying->body.localDay : m_here.day;
    draft.zone = m_here.zone;
    draft.content = saying ? saying->body.content : journal::nullItem();
    put(std::move(draft));
}

}
