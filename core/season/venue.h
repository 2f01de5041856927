// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/recordid.h"

namespace steelyard {

/// A place with its own kit.
struct Venue {
    RecordId id;
    std::string name;
    std::string notes;
    bool operator==(const Venue&) const = default;
};

}
