// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/memory/canaries.h"

#include <QList>

/// What root sees of other processes.
namespace processes {

/// All processes of a session, which nothing leaves that it starts.
[[nodiscard]] QList<qint64> inSession(qint64 leader);

/// Everything that is mapped into a process, whether it may read it or not: a page that it forbade itself to read is read all the same.
[[nodiscard]] Sightings memory(qint64 process, const Canaries& canaries);

/// What a process was started with: its arguments and its surroundings, as the system shows them.
[[nodiscard]] Sightings startedWith(qint64 process, const Canaries& canaries);

}
