// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/models/rowlist.h"

/** One of the people. */
struct AthleteRow {
    QString athleteId, label, hint, value;
    bool operator==(const AthleteRow&) const = default;
    static std::vector<RowRole<AthleteRow>> roles()
    {
        return {{"athleteId", [](const AthleteRow& r) { return r.athleteId; }},
                {"label", [](const AthleteRow& r) { return r.label; }},
                {"hint", [](const AthleteRow& r) { return r.hint; }},
                {"value", [](const AthleteRow& r) { return r.value; }}};
    }
};

/** A lift with what is known of it for one athlete. */
struct LiftRow {
    QString lift, label, hint, value;
    bool own = false; ///< added by the coach
    bool operator==(const LiftRow&) const = default;
    static std::vector<RowRole<LiftRow>> roles()
    {
        return {{"lift", [](const LiftRow& r) { return r.lift; }},
                {"own", [](const LiftRow& r) { return r.own; }},
                {"label", [](const LiftRow& r) { return r.label; }},
                {"hint", [](const LiftRow& r) { return r.hint; }},
                {"value", [](const LiftRow& r) { return r.value; }}};
    }
};

/** A set-up kept for an athlete. */
struct SavedRow {
    QString setupId, label, hint, value;
    bool operator==(const SavedRow&) const = default;
    static std::vector<RowRole<SavedRow>> roles()
    {
        return {{"setupId", [](const SavedRow& r) { return r.setupId; }},
                {"label", [](const SavedRow& r) { return r.label; }},
                {"hint", [](const SavedRow& r) { return r.hint; }},
                {"value", [](const SavedRow& r) { return r.value; }}};
    }
};

/** Something that was done and can be undone, or why it cannot be now. */
struct DeedRow {
    QString label, hint;
    bool undoable = false;
    bool operator==(const DeedRow&) const = default;
    static std::vector<RowRole<DeedRow>> roles()
    {
        return {{"label", [](const DeedRow& r) { return r.label; }},
                {"hint", [](const DeedRow& r) { return r.hint; }},
                {"undoable", [](const DeedRow& r) { return r.undoable; }}};
    }
};
