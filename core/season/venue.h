// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/entered.h"
#include "core/season/recordid.h"

#include <optional>
#include <string>

namespace steelyard {

/// A place with its own kit.
struct Venue {
    RecordId id;
    std::string name;
    std::string notes;
    std::optional<Entered<Length>> lane{}; ///< for carries and sleds
    bool operator==(const Venue&) const = default;
};

}
