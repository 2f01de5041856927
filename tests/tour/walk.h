// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDir>
#include <QSize>
#include <QStringList>

/** The walk through the app at one size, taking its pictures. */
namespace walk {

/// One of so many stretches of the way, counted from 0.
struct Stretch {
    int which = 0, of = 1;
};

/// "seen PAGE" and "taken NUMBER" on the standard output, troubles on the other; 0 without any.
[[nodiscard]] int through(const QDir& folder, const QString& form, QSize size, Stretch stretch);

/// From now on what Qt warns of is noted; what is the machine's own affair is not.
void noteWarnings();
[[nodiscard]] QStringList warnings();

}
