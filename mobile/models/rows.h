// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/models/rowlist.h"

#include <QStringList>

/** One number of a form, as a row to tap. */
struct FieldRow {
    QString key, label, value, unit, hint;
    bool filledIn = false;
    bool entered = false;
    bool operator==(const FieldRow&) const = default;
    static std::vector<RowRole<FieldRow>> roles()
    {
        return {{"key", [](const FieldRow& r) { return r.key; }},     {"label", [](const FieldRow& r) { return r.label; }},
                {"value", [](const FieldRow& r) { return r.value; }}, {"unit", [](const FieldRow& r) { return r.unit; }},
                {"hint", [](const FieldRow& r) { return r.hint; }},   {"filledIn", [](const FieldRow& r) { return r.filledIn; }},
                {"entered", [](const FieldRow& r) { return r.entered; }}};
    }
};

/** A warning, or a stop. */
struct NoticeRow {
    QString head, body;
    bool stop = false;
    bool operator==(const NoticeRow&) const = default;
    static std::vector<RowRole<NoticeRow>> roles()
    {
        return {{"head", [](const NoticeRow& r) { return r.head; }},
                {"body", [](const NoticeRow& r) { return r.body; }},
                {"stop", [](const NoticeRow& r) { return r.stop; }}};
    }
};

/** A caution to look over. */
struct CautionRow {
    int code = 0;
    QString head;
    QStringList points;
    bool looked = false;
    bool operator==(const CautionRow&) const = default;
    static std::vector<RowRole<CautionRow>> roles()
    {
        return {{"code", [](const CautionRow& r) { return r.code; }},
                {"head", [](const CautionRow& r) { return r.head; }},
                {"points", [](const CautionRow& r) { return r.points; }},
                {"looked", [](const CautionRow& r) { return r.looked; }}};
    }
};

/** One thing on the bar, or in the kit. */
struct ThingRow {
    QString itemId;
    QString kind; ///< one word, as the core has it
    bool usable = true;
    bool outOfUse = false;
    QString what, how, leftPiece, rightPiece;
    bool operator==(const ThingRow&) const = default;
    static std::vector<RowRole<ThingRow>> roles()
    {
        return {{"itemId", [](const ThingRow& r) { return r.itemId; }},       {"kind", [](const ThingRow& r) { return r.kind; }},
                {"usable", [](const ThingRow& r) { return r.usable; }},       {"outOfUse", [](const ThingRow& r) { return r.outOfUse; }},
                      {"what", [](const ThingRow& r) { return r.what; }},
                {"how", [](const ThingRow& r) { return r.how; }},             {"leftPiece", [](const ThingRow& r) { return r.leftPiece; }},
                {"rightPiece", [](const ThingRow& r) { return r.rightPiece; }}};
    }
};

/** One thing of the kit that is here, with how much of it is free, and where a tap leads. */
struct KitRow {
    QString itemId;
    QString kind; ///< one word, as the core has it
    bool usable = true;
    bool outOfUse = false;
    QString what, how, free;
    QString leads; ///< "loan" or "along" where that comes before hanging, measuring or looking it over; "look" where nothing else can be done with it here
    bool operator==(const KitRow&) const = default;
    static std::vector<RowRole<KitRow>> roles()
    {
        return {{"itemId", [](const KitRow& r) { return r.itemId; }},     {"kind", [](const KitRow& r) { return r.kind; }},
                {"usable", [](const KitRow& r) { return r.usable; }},     {"outOfUse", [](const KitRow& r) { return r.outOfUse; }},
                {"what", [](const KitRow& r) { return r.what; }},         {"how", [](const KitRow& r) { return r.how; }},
                {"free", [](const KitRow& r) { return r.free; }},         {"leads", [](const KitRow& r) { return r.leads; }}};
    }
};

/** Plates of one mass and how many pairs are here. */
struct StockRow {
    QString label, pairs;
    bool canLess = false;
    bool operator==(const StockRow&) const = default;
    static std::vector<RowRole<StockRow>> roles()
    {
        return {{"label", [](const StockRow& r) { return r.label; }},
                {"pairs", [](const StockRow& r) { return r.pairs; }},
                {"canLess", [](const StockRow& r) { return r.canLess; }}};
    }
};

/** One hanging of known mass on a band. */
struct HangingRow {
    QString mass, length, note;
    bool odd = false;
    bool leftOut = false;
    bool operator==(const HangingRow&) const = default;
    static std::vector<RowRole<HangingRow>> roles()
    {
        return {{"mass", [](const HangingRow& r) { return r.mass; }},
                {"length", [](const HangingRow& r) { return r.length; }},
                {"note", [](const HangingRow& r) { return r.note; }},
                {"odd", [](const HangingRow& r) { return r.odd; }},
                {"leftOut", [](const HangingRow& r) { return r.leftOut; }}};
    }
};

/** One height of the path: what the bar pulls there, and of what it is made. */
struct HeightRow {
    QString at, pull, made;
    bool mark = false;
    bool operator==(const HeightRow&) const = default;
    static std::vector<RowRole<HeightRow>> roles()
    {
        return {{"at", [](const HeightRow& r) { return r.at; }},
                {"pull", [](const HeightRow& r) { return r.pull; }},
                {"made", [](const HeightRow& r) { return r.made; }},
                {"mark", [](const HeightRow& r) { return r.mark; }}};
    }
};

/** One part of a number: what it is, how it came to be known, what it adds and how uncertain it makes the number. */
struct OriginRow {
    QString what, how, value, shareText;
    double share = 0;
    bool operator==(const OriginRow&) const = default;
    static std::vector<RowRole<OriginRow>> roles()
    {
        return {{"what", [](const OriginRow& r) { return r.what; }},
                {"how", [](const OriginRow& r) { return r.how; }},
                {"value", [](const OriginRow& r) { return r.value; }},
                {"shareText", [](const OriginRow& r) { return r.shareText; }},
                {"share", [](const OriginRow& r) { return r.share; }}};
    }
};
