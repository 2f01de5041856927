// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/sample/season.h"
#endif
#include "mobile/door/appvault.h"

#include <QString>
#include <QStringList>

#include <chrono>

/** The sample season in the app: whether it is asked for, and its vault made where there is none. */
namespace samplehouse {

/// What the arguments that ask for it begin with.
inline constexpr const char* argument = "--sample";

/// "--sample" asks for it until it has been removed on this device, "--sample-again" after that too.
[[nodiscard]] bool askedFor(const QStringList& arguments);
/// From now on "--sample" asks for nothing.
void rememberRemoved();
/// The season from the files that the app carries, with what is wrong with them.
[[nodiscard]] steelyard::sample::Season carried(std::chrono::sys_days today, QStringList& faults);
/// Makes the vault where there is none, from the files that the app carries; a few seconds at the most. Empty, or what stood in the way.
[[nodiscard]] QString makeReady(const AppVault::Folders& folders, std::chrono::sys_days today);

}
