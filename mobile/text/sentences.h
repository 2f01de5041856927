// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/work/numberentry.h"
#include "core/work/weighup.h"

#include <QString>
#include <QStringList>

/** Sentences for the codes that core returns: what is the matter, and what to do about it. */
namespace sentences {

/** A head and what to do next. */
struct Said {
    QString head;
    QString body;
};

[[nodiscard]] Said warning(const steelyard::SetupWarning& warning, const steelyard::Setup& setup);
[[nodiscard]] Said weakAnchor(const steelyard::WeakAnchor& anchor);
/// True when it forbids the lift.
[[nodiscard]] bool forbids(steelyard::SetupWarningCode code);
[[nodiscard]] QString refusal(const steelyard::Error& error);
[[nodiscard]] QString refusal(steelyard::EntryRefusal refusal, const steelyard::EntryLimits& limits, const QString& unit);
/// An entry's name as people say it, from the engine's own name for it.
[[nodiscard]] QString entryName(const std::string& name);

struct CautionText {
    QString head;
    QStringList points;
};
[[nodiscard]] CautionText caution(const steelyard::Caution& caution);

}
