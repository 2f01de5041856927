// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/ids.h"
#include "core/season/marks.h"
#include "core/season/setuprecord.h"

#include <string>
#include <string_view>

namespace steelyard {

/// What lies on the desk and is not kept: the marks and the set-up. Looks over are not part of it: they are made anew.
struct DeskDraft {
    BarMarks marks;
    SetupRecord setup;
    bool operator==(const DeskDraft&) const = default;
};

/// The forms' bytes: deterministic CBOR lists that begin with the version, which is 1; what follows is as in the journal, in kg and cm.
///   desk   version · bar marks · load · release, where there is one
///   item   version · name · whether a pair · venue or null · measurement, with the item's id
/// Nothing where a number in it cannot be written.
[[nodiscard]] std::optional<journal::ByteBuffer> encodeDraft(const DeskDraft& desk);
[[nodiscard]] std::optional<journal::ByteBuffer> encodeDraft(const KitItem& item);

/// The form again; nothing where a newer version of the app wrote it, or it is damaged: then it is left as it is.
[[nodiscard]] std::optional<DeskDraft> deskDraftIn(journal::ByteView bytes);
[[nodiscard]] std::optional<KitItem> itemDraftIn(journal::ByteView bytes);

/// The names that drafts are saved under: "desk", "item:" with the id, and with the word of the kind for a new one: "item:chain".
inline constexpr std::string_view deskDraftName = "desk", itemDraftPrefix = "item:";
[[nodiscard]] std::string draftNameOf(const KitItem& item);

}
