// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/models/rowlist.h"

#include <QStringList>

/** One place where a pull may be wanted. */
struct TargetRow {
    QString key, name, value;
    bool wanted = false;
    bool operator==(const TargetRow&) const = default;
    static std::vector<RowRole<TargetRow>> roles()
    {
        return {{"key", [](const TargetRow& r) { return r.key; }},
                {"name", [](const TargetRow& r) { return r.name; }},
                {"value", [](const TargetRow& r) { return r.value; }},
                {"wanted", [](const TargetRow& r) { return r.wanted; }}};
    }
};

/** One answer: what comes of it, how far off it is, what hangs and what changes on the bar. */
struct AnswerRow {
    QString title, off, load, why;
    QStringList hangs, changes;
    bool within = false;
    bool operator==(const AnswerRow&) const = default;
    static std::vector<RowRole<AnswerRow>> roles()
    {
        return {{"title", [](const AnswerRow& r) { return r.title; }}, {"off", [](const AnswerRow& r) { return r.off; }},
                {"load", [](const AnswerRow& r) { return r.load; }},   {"why", [](const AnswerRow& r) { return r.why; }},
                {"hangs", [](const AnswerRow& r) { return r.hangs; }},
                {"changes", [](const AnswerRow& r) { return r.changes; }}, {"within", [](const AnswerRow& r) { return r.within; }}};
    }
};
