// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/fold.h"
#include "tests/core/vault/vaulting.h"

namespace vaulting {

/// Every register with its heads, the winner first.
using Shown = std::map<journal::RegisterKey, std::vector<journal::EntryId>>;

inline Shown shownBy(const journal::Fold& fold)
{
    Shown shown;
    for (const auto& [key, here] : fold.registers())
        for (const journal::Held& head : here.heads)
            shown[key].push_back(head.id);
    return shown;
}

/// Added records stand beside the other registers there, and by day; here they go by rank as all heads do.
inline Shown shownBy(Views& views)
{
    std::map<journal::RegisterKey, std::vector<journal::Held>> all;
    bool winnersFirst = true;
    for (const journal::RecordKind kind : everything().kinds) {
        for (const Head& head : views.heads(kind)) {
            std::vector<journal::Held>& here = all[journal::keyOf(head.held.body)];
            winnersFirst = winnersFirst && head.winner == here.empty();
            here.push_back(head.held);
        }
        for (const journal::Held& held : views.added(kind, {}, {}, 1'000'000).added)
            all[journal::keyOf(held.body)].push_back(held);
    }
    Shown shown;
    for (auto& [key, several] : all) {
        if (key.holds == journal::RegisterClass::Record)
            std::sort(several.begin(), several.end(), [](const journal::Held& a, const journal::Held& b) { return journal::rankOf(a) > journal::rankOf(b); });
        for (const journal::Held& held : several)
            shown[key].push_back(held.id);
    }
    return winnersFirst ? shown : Shown();
}

/// The fold from scratch of all entries that the journal holds.
inline Shown shownFromScratch(Database& database)
{
    journal::Fold fold;
    for (Rows rows = database.query("SELECT header || payload FROM entries WHERE payload NOT NULL"); rows.next();)
        if (const auto entry = journal::decodeEntry(rows->view(0)))
            if (const auto held = journal::held(*entry))
                fold.take(*held);
    return shownBy(fold);
}

}
