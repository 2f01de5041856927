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
    if (entry.body.kind != Kind::Added)
        return true;
    // what was put right or removed since has something newer upon it, in registers of their own, unless that was taken back
    const auto upon = [&](journal::RegisterClass holds) -> const journal::Body* {
        const journal::Register* there = book.registerOf({holds, entry.body.athlete, entry.body.subject, 0, {}});
        return there ? &there->winner()->body : nullptr;
    };
    const journal::Body* right = upon(journal::RegisterClass::Correction);
    const journal::Body* removed = upon(journal::RegisterClass::Removal);
    return (!right || (right->content == entry.body.content && right->localDay == entry.body.localDay))
        && (!removed || !journal::flagIn(removed->content).value_or(true));
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
    for (std::size_t i = 0; i < done.entries.size(); ++i)
        draftInverse(drafting, keeping.book(), done.entries[i], done.before[i]);
    keeping.keepUndone(index, std::move(drafting).drafts(), told);
}

}
