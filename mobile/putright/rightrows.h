// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/models/rowlist.h"

#include <QStringList>

/** Something measured on a day: what it says, and what it said at first. */
struct DatedRow {
    QString recordId, label, hint, value;
    bool operator==(const DatedRow&) const = default;
    static std::vector<RowRole<DatedRow>> roles()
    {
        return {{"recordId", [](const DatedRow& r) { return r.recordId; }},
                {"label", [](const DatedRow& r) { return r.label; }},
                {"hint", [](const DatedRow& r) { return r.hint; }},
                {"value", [](const DatedRow& r) { return r.value; }}};
    }
};

/** Something of which several devices said different things: what it is, each answer, and when and where each was given. */
struct ContestedRow {
    QString what;
    QStringList answers, given;
    bool operator==(const ContestedRow&) const = default;
    static std::vector<RowRole<ContestedRow>> roles()
    {
        return {{"what", [](const ContestedRow& r) { return r.what; }},
                {"answers", [](const ContestedRow& r) { return r.answers; }},
                {"given", [](const ContestedRow& r) { return r.given; }}};
    }
};
