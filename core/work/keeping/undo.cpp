// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/undo.h"

#include "core/journal/content.h"

#include <algorithm>

namespace steelyard {

using journal::Kind;

namespace {

Place placeOf(const journal::Body& body)
{
    return {body.subject, body.athlete};
}

const journal::Held* asPointer(const std::optional<journal::Held>& entry)
{
    return entry ? &*entry : nullptr;
}

bool standsYet(const SeasonBook& book, const journal::Held& entry)
{
    const journal::Register* here = book.registerOf(journal::keyOf(entry.body));
    if (!here || here->winner()->id != entry.id)
        return false;
    // what was added and put right or removed since has something newer upon it, in registers of their own
    const auto upon = [&](journal::RegisterClass holds) {
        return book.registerOf({holds, entry.body.athlete, entry.body.subject, 0, {}}) != nullptr;
    };
    return entry.body.kind != Kind::Added || !(upon(journal::RegisterClass::Correction) || upon(journal::RegisterClass::Removal));
}

void draftInverse(Drafting& drafting, const SeasonBook& book, const journal::Held& entry, const std::optional<journal::Held>& before)
{
    switch (entry.body.kind) {
    case Kind::Added: return drafting.remove(placeOf(entry.body), true);
    case Kind::Removed: return drafting.remove(placeOf(entry.body), before && journal::flagIn(before->body.content).value_or(false));
    case Kind::PutRight: {
        // before the first correction the record itself counted
        const journal::Register* added = book.registerOf({journal::RegisterClass::Record, entry.body.athlete, entry.body.subject, 0, {}});
        return drafting.again(entry, before || !added ? asPointer(before) : added->winner());
    }
    default: return drafting.again(entry, asPointer(before));
    }
}

}

bool canUndo(const SeasonKeeping& keeping, std::size_t index)
{
    if (index >= keeping.deeds().size())
        return false;
    const auto& entries = keeping.deeds()[index].entries;
    return !keeping.deeds()[index].undoing && std::all_of(entries.begin(), entries.end(), [&](const journal::Held& entry) { return standsYet(keeping.book(), entry); });
}

void undo(SeasonKeeping& keeping, std::size_t index, const WhenTold& told)
{
    if (index >= keeping.deeds().size())
        return told({{}, Unfit::NothingToUndo, std::nullopt});
    const DeedDone& done = keeping.deeds()[index];
    if (!canUndo(keeping, index))
        return told({done.id, Unfit::ChangedSince, std::nullopt});
    Drafting drafting(keeping);
    for (std::size_t i = done.entries.size(); i-- > 0;)
        draftInverse(drafting, keeping.book(), done.entries[i], done.before[i]);
    keeping.keepUndone(index, std::move(drafting).drafts(), told);
}

}
