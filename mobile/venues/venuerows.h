// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/models/rowlist.h"

/** A thing of the kit that may come along to a venue, or be on its list. */
struct VenueRow {
    QString itemId, label, hint;
    bool here = false; ///< as it is chosen now
    bool turned = false; ///< which is not how it is kept
    bool operator==(const VenueRow&) const = default;
    static std::vector<RowRole<VenueRow>> roles()
    {
        return {{"itemId", [](const VenueRow& r) { return r.itemId; }},
                {"label", [](const VenueRow& r) { return r.label; }},
                {"hint", [](const VenueRow& r) { return r.hint; }},
                {"here", [](const VenueRow& r) { return r.here; }},
                {"turned", [](const VenueRow& r) { return r.turned; }}};
    }
};
