// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/content.h"
#include "core/journal/fold.h"
#include "tests/core/journal/journaling.h"

#include <initializer_list>

namespace journaling {

/// Entries made up one by one, each later than the one before and of a device of its own; ids count up.
class Entries {
public:
    Held make(Draft draft, std::initializer_list<Held> replaces = {})
    {
        for (const Held& replaced : replaces)
            draft.replaces.push_back(replaced.id);
        ++m_count;
        Held entry;
        entry.id = entryId(m_count);
        entry.chain = {origin(m_count), 1};
        entry.sequenceNumber = 1;
        entry.body = finished(std::move(draft), Stamp{{at(1'000 * static_cast<std::int64_t>(m_count)), 0}, false, std::nullopt});
        return entry;
    }

private:
    unsigned m_count = 0;
};

inline Draft draftOf(Kind kind, Subject subject, ByteBuffer content = nullItem(), std::string part = {})
{
    Draft draft;
    draft.kind = kind;
    draft.subject = subject;
    draft.content = std::move(content);
    draft.part = std::move(part);
    return draft;
}

inline constexpr Subject chainItem{RecordKind::KitItem, RecordId{}};

inline Fold folded(const std::vector<Held>& entries)
{
    Fold fold;
    for (const Held& entry : entries)
        fold.take(entry);
    return fold;
}

inline std::vector<EntryId> headIds(const Fold& fold, const Held& like)
{
    std::vector<EntryId> ids;
    if (const Register* here = fold.find(keyOf(like.body))) {
        for (const Held& head : here->heads)
            ids.push_back(head.id);
    }
    return ids;
}

}
