// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/marks.h"
#include "core/season/setuprecord.h"

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <vector>

/** A set-up of the sample season as it stands in its file; with faults nothing else is meant. */
struct SeasonSetup {
    QString name; ///< the file's, without its ending
    QString about;
    steelyard::BarMarks marks;
    std::vector<steelyard::KitItem> kit;
    steelyard::SetupRecord setup;
    QStringList faults; ///< "file: key: what is wrong with it"
};

namespace seasonfile {

/// Reads one set-up. Strict: an unknown key, a wrong type and a name that is not in the kit are faults.
[[nodiscard]] SeasonSetup parse(const QString& name, const QByteArray& json);
/// All set-ups of the sample season that this program carries, by file name.
[[nodiscard]] std::vector<SeasonSetup> all();

}
