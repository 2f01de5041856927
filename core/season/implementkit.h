// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/implements/fillings.h"
#include "core/implements/keg.h"
#include "core/implements/kettlebell.h"
#include "core/measure/entered.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace steelyard {

/// A whole thing as a scale showed it; where nobody has weighed it, as it is marked.
struct WholeMass {
    std::optional<Entered<Mass>> read, step;
    std::optional<Entered<Mass>> accuracy; ///< half-width of the scale's own error, from its check; none where it was not checked
    std::optional<Entered<Mass>> marked;   ///< counts where nothing was read
    bool operator==(const WholeMass&) const = default;
};

/// Something long, weighed by one end and then by the other. Without a span the hook held where it rests.
struct BothEnds {
    std::optional<Entered<Mass>> first, second;
    std::optional<Entered<Length>> span;                    ///< of the two points that it rests on
    std::optional<Entered<Length>> firstInset, secondInset; ///< how far inside them the hook held
    bool operator==(const BothEnds&) const = default;
};

enum class TyreMeasuring : std::uint8_t { Unknown, Edge, Whole };

/// One edge of a tyre just lifted: what the scale showed, and its levers from the middle.
struct TyreEdgeReading {
    std::optional<Entered<Mass>> shown;
    std::optional<Entered<Length>> liftPoint, farContact;
    bool operator==(const TyreEdgeReading&) const = default;
};

/// A tyre as it was measured: by one edge or by two that lie opposite, whole on a scale, or nobody knows.
struct TyreMeasurement {
    TyreMeasuring by = TyreMeasuring::Edge;
    bool drained = false; ///< asked: no water is left in it
    std::vector<TyreEdgeReading> edges;
    WholeMass whole{};    ///< by edges the scale's step and error alone
    std::optional<Entered<Length>> diameter, width;
    bool operator==(const TyreMeasurement&) const = default;
};

enum class LogMeasuring : std::uint8_t { Unknown, Size, Ends, Whole };

/// A log by its size and wood, by both ends on a scale, or whole.
struct LogMeasurement {
    LogMeasuring by = LogMeasuring::Size;
    bool girths = false; ///< what stands for the diameters was read round it
    std::optional<Entered<Length>> length, firstAcross, secondAcross;
    std::optional<double> gravityRatio;    ///< specific gravity at its moisture, kept to a thousandth
    std::optional<double> moisturePercent; ///< kept to a tenth
    BothEnds ends{};
    WholeMass whole{}; ///< by both ends the scale's step and error alone
    bool operator==(const LogMeasurement&) const = default;
};

/// Between which two densities something lies, in whole kg/m³; one number stands there twice.
struct DensityRange {
    int leastCount = 0, mostCount = 0;
    bool operator==(const DensityRange&) const = default;
};

enum class StoneMeasuring : std::uint8_t { Unknown, Ball, Whole };

/// A round stone by its size, or whole on a scale.
struct StoneMeasurement {
    StoneMeasuring by = StoneMeasuring::Ball;
    bool girth = false; ///< what stands for the diameter was read round it
    std::optional<Entered<Length>> across;
    std::optional<DensityRange> density;
    WholeMass whole{};
    bool operator==(const StoneMeasurement&) const = default;
};

enum class KegSort : std::uint8_t { Keg, Sandbag };
enum class KegMeasuring : std::uint8_t { Unknown, Litres, Standing, Lying, Whole };

/// A keg or a bag, part full: what it weighs empty and what is in it, by litres or by how deep it stands, or whole on a scale.
struct KegMeasurement {
    KegSort sort = KegSort::Keg;
    KegMeasuring by = KegMeasuring::Litres;
    std::optional<Entered<Mass>> empty;           ///< on a scale
    std::optional<Filling> filling;
    std::optional<DensityRange> density;          ///< of a filling that is none of those
    std::optional<Entered<Volume>> content, capacity;
    std::optional<Entered<Length>> across, length, depth; ///< inside
    WholeMass whole{};                            ///< the step and error are those of the empty one too
    KegPressure pressure = KegPressure::NotKnown; ///< of a bag it is not asked
    bool operator==(const KegMeasurement&) const = default;
};

/// A sled with its strap: how long that is and how high it hooks on.
struct SledMeasurement {
    WholeMass whole{};
    std::optional<Entered<Length>> strap;
    std::optional<Entered<Height>> hook;
    bool operator==(const SledMeasurement&) const = default;
};

enum class CarrySort : std::uint8_t { Handles, OneHandle, HexBar, Yoke, Frame };

/// What is carried by: its own mass, of a pair of handles that of one.
struct CarryMeasurement {
    CarrySort sort = CarrySort::Handles;
    WholeMass whole{};
    bool operator==(const CarryMeasurement&) const = default;
};

enum class BellSort : std::uint8_t { Kettlebell, Dumbbell };

/// A kettlebell or a dumbbell, fixed or with the masses that it can be set to. Whether it sits in the hand was tried.
struct BellMeasurement {
    BellSort sort = BellSort::Kettlebell;
    WholeMass whole{};                 ///< of a fixed one
    std::vector<Entered<Mass>> settings; ///< as marked; none of a fixed one
    std::optional<Entered<Length>> handle, window;
    HandFit oneHand = HandFit::NotTried, twoHands = HandFit::NotTried;
    std::string note;                  ///< what the coach warns of
    bool operator==(const BellMeasurement&) const = default;
};

}
