// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/units.h"
#include "core/resistance/bandfit.h"
#include "core/resistance/constant.h"
#include "core/season/recordid.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace steelyard {

enum class ChainMeasuring : std::uint8_t { Weighed, Gauged };

/// A chain as it was measured: weighed on a scale that reads in steps, or gauged by wire, pitch and inner width.
struct ChainMeasurement {
    ChainMeasuring by = ChainMeasuring::Weighed;
    std::optional<Length> length;
    std::optional<Mass> mass, scaleStep;
    std::optional<Length> wire, pitch, innerWidth;
    bool operator==(const ChainMeasurement&) const = default;
};

/// One hanging of known mass on a band; a point left out stays on record and off the fit.
struct BandHanging {
    std::optional<Mass> mass;
    std::optional<Length> length;
    bool leftOut = false;
    bool operator==(const BandHanging&) const = default;
};

/// A band as it was measured. Without a model the best one is taken.
struct BandMeasurement {
    std::optional<Length> rest;
    std::vector<BandHanging> hangings;
    std::optional<BandModel> model;
    bool operator==(const BandMeasurement&) const = default;
};

/// A thing to hang. A pair is two of a kind of which one was measured.
struct KitItem {
    RecordId id;
    std::string name;
    bool pair = true;
    std::variant<ChainMeasurement, BandMeasurement> measurement;
    bool operator==(const KitItem&) const = default;
};

}
