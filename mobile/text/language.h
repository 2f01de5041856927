// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/subscription.h"
#endif

#include <QString>
#include <QStringList>

/** The language that the app speaks: its catalogue and its decimal sign, switched at once for all of the app. */
namespace language {

/// Codes (ISO 639-1) of what there are catalogues for, English first.
[[nodiscard]] QStringList codes();
/// What those who speak it call it; empty for a code that is none of them.
[[nodiscard]] QString ownName(const QString& code);
/// Speaks one of them. An empty code, or one that is none of them, is the device's own language, English where that is none of them.
void speak(const QString& code);
/// Code of the language spoken now.
[[nodiscard]] QString spoken();

/// Whoever shows words and numbers shows them anew then: the language is another one, or the units are.
[[nodiscard]] steelyard::Subscription onSaidOtherwise(std::function<void()> told);
void tellAnew();

}
