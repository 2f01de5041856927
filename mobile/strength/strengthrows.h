// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/models/rowlist.h"

/** One lift with the maximum that counts. */
struct StandingRow {
    QString lift, label, hint, value;
    bool tested = false; ///< there is a test, whatever follows from it
    bool operator==(const StandingRow&) const = default;
    static std::vector<RowRole<StandingRow>> roles()
    {
        return {{"lift", [](const StandingRow& r) { return r.lift; }},
                {"label", [](const StandingRow& r) { return r.label; }},
                {"hint", [](const StandingRow& r) { return r.hint; }},
                {"value", [](const StandingRow& r) { return r.value; }},
                {"tested", [](const StandingRow& r) { return r.tested; }}};
    }
};

/** One test of a history; the first of a day says what the day comes to. */
struct TestRow {
    QString testId, label, hint;
    QString day, range, why; ///< of the day, with the first of its tests only
    QString cut;             ///< that what stands above was under other conditions
    bool refused = false;
    bool operator==(const TestRow&) const = default;
    static std::vector<RowRole<TestRow>> roles()
    {
        return {{"testId", [](const TestRow& r) { return r.testId; }}, {"label", [](const TestRow& r) { return r.label; }},
                {"hint", [](const TestRow& r) { return r.hint; }},     {"day", [](const TestRow& r) { return r.day; }},
                {"range", [](const TestRow& r) { return r.range; }},   {"why", [](const TestRow& r) { return r.why; }},
                {"cut", [](const TestRow& r) { return r.cut; }},       {"refused", [](const TestRow& r) { return r.refused; }}};
    }
};

/** One step of a warm-up ramp, or the working set at its end. */
struct RampRow {
    QString share, load, pull, change, note;
    bool canLess = false, canMore = false;
    bool working = false;
    bool operator==(const RampRow&) const = default;
    static std::vector<RowRole<RampRow>> roles()
    {
        return {{"share", [](const RampRow& r) { return r.share; }},     {"load", [](const RampRow& r) { return r.load; }},
                {"pull", [](const RampRow& r) { return r.pull; }},       {"change", [](const RampRow& r) { return r.change; }},
                {"note", [](const RampRow& r) { return r.note; }},       {"canLess", [](const RampRow& r) { return r.canLess; }},
                {"canMore", [](const RampRow& r) { return r.canMore; }}, {"working", [](const RampRow& r) { return r.working; }}};
    }
};
