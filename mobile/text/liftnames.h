// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/lifts.h"

#include <QString>
#include <QStringList>

/** Names of the lifts that ship, in the language spoken. */
namespace liftnames {

[[nodiscard]] QString name(const steelyard::Lift& lift);
/// Every term that the catalogues know.
[[nodiscard]] QStringList terms();

}
