// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/implements/sled.h"
#include "core/measure/entered.h"
#include "core/season/recordid.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace steelyard {

/// A sled pulled at a steady walk with a scale in the strap: what lay on it, and what the scale showed.
struct TowRead {
    Entered<Mass> added;
    Entered<Mass> pull; ///< as a mass, as scales show it
    bool operator==(const TowRead&) const = default;
};

/// How one sled slides on a surface of a venue, on a day. Surfaces of one name and venue are the same; the last day counts.
struct SledSurface {
    RecordId id;
    std::chrono::sys_days day{};
    RecordId venue, sled;
    std::string name;                       ///< "grass, wet"
    std::vector<TowRead> readings;          ///< at two masses or more
    std::optional<Entered<Height>> hip;     ///< height of the strap's upper end; none where it was pulled level
    std::optional<Entered<Mass>> scaleStep, scaleAccuracy;
    bool operator==(const SledSurface&) const = default;
};

/// One timed run of an athlete with a sled, on a surface of a venue.
struct SledRunTimed {
    RecordId id;
    RecordId athlete;
    std::chrono::sys_days day{};
    RecordId venue, sled;
    std::string surface;
    Entered<Mass> added; ///< on the sled, which weighs what it weighs
    Entered<Length> distance;
    Entered<std::chrono::milliseconds> time; ///< by hand
    SledWay way = SledWay::Tow;
    std::optional<Entered<Height>> hip;      ///< of her own belt; none where it was pulled level
    bool operator==(const SledRunTimed&) const = default;
};

}
