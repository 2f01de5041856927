// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/putright/dayeditor.h"

// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/season/settings.h"
#include "core/season/strengthtest.h"
#endif

/** A test of strength as it is typed. */
struct TestForm {
    std::optional<steelyard::Entered<steelyard::Mass>> load, body, jump;
    std::optional<int> reps, reserve;
    bool missed = false, maximum = false;
    bool helped = false; ///< the load is taken off the body
    std::set<steelyard::Method> hung;
    steelyard::RecordId setup;
    TypedDay day;
    bool isToday = true; ///< whatever the day says
    bool operator==(const TestForm&) const = default;
};

namespace testform {

/// By whom, in which lift, and which test; none is a new one.
[[nodiscard]] QString draftKey(const steelyard::RecordId& athlete, const steelyard::LiftId& lift, const steelyard::RecordId& test);
[[nodiscard]] TestForm of(const steelyard::StrengthTest& test);
/// The record, as far as it is typed; the day is `today` where it says so, and none that there is not.
[[nodiscard]] steelyard::StrengthTest test(const TestForm& form, std::chrono::sys_days today);
/// As bytes of an own version, and back; nothing where another version, or something else, wrote them.
[[nodiscard]] QByteArray bytesOf(const TestForm& form, const steelyard::VaultSettings& units);
[[nodiscard]] std::optional<TestForm> in(const QByteArray& bytes);

}
