// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/bandfit.h"
#include "core/resistance/constant.h"
#include "core/measure/entered.h"
#include "core/season/recordid.h"

#include <chrono>
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
    std::optional<Entered<Length>> length;
    std::optional<Entered<Mass>> mass, scaleStep;
    std::optional<Entered<Length>> wire, pitch, innerWidth;
    bool operator==(const ChainMeasurement&) const = default;
};

/// One hanging of known mass on a band; a point left out stays on record and off the fit. Read on the way back, with the load taken
/// off piece by piece, a band is longer under the same mass: those are kept apart and off the fit.
struct BandHanging {
    std::optional<Entered<Mass>> mass;
    std::optional<Entered<Length>> length;
    bool leftOut = false;
    bool unloading = false;
    bool operator==(const BandHanging&) const = default;
};

/// A band as it was measured. Without a model the best one is taken.
struct BandMeasurement {
    std::optional<Entered<Length>> rest;
    std::vector<BandHanging> hangings;
    std::optional<BandModel> model;
    bool operator==(const BandMeasurement&) const = default;
};

/// What measuring an item gave.
using Measured = std::variant<ChainMeasurement, BandMeasurement>;

/// What takes a thing out of use.
enum class KitFault : std::uint8_t { WornLink, Cut, Other };

/// One look over of a thing on a day: what was found, or that it is fit to be used.
struct Inspection {
    std::optional<KitFault> fault;
    std::string note;
    std::chrono::sys_days day{};
    bool operator==(const Inspection&) const = default;
};

/// A thing to hang. A pair is two of a kind of which one was measured.
struct KitItem {
    RecordId id;
    std::string name;
    bool pair = true;
    Measured measurement;
    RecordId venue{}; ///< where it belongs; none when it was not said
    std::optional<Inspection> inspection{}; ///< the last one

    /// Until a look over finds it fit again.
    [[nodiscard]] bool isOutOfUse() const { return inspection && inspection->fault; }
    bool operator==(const KitItem&) const = default;
};

/// One measuring of an item on a day. They are added and never changed; the last one counts.
struct MeasurementRecord {
    RecordId id;
    RecordId item;
    std::chrono::sys_days day{};
    Measured measured;
    bool operator==(const MeasurementRecord&) const = default;
};

}
