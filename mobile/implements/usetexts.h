// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/implements/maybelifted.h"
#endif
#include "mobile/text/sentences.h"

namespace steelyard {
class SeasonBook;
}

/** What stands against somebody's use of a tyre, log, keg and the like, in words, with what would settle it. */
namespace usetexts {

/// "may use", "look over first", "not now".
[[nodiscard]] QString permission(steelyard::Permission permission);
/// Of the thing, or of what it is held against.
[[nodiscard]] sentences::Said reason(const steelyard::UseReason& reason, const steelyard::SeasonBook& book, std::chrono::sys_days today);
/// The strictest of all in a few words; empty where nothing stands against it.
[[nodiscard]] QString first(const steelyard::ImplementUse& use, const steelyard::SeasonBook& book, std::chrono::sys_days today);

}
