// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/bandfit.h"
#include "core/resistance/constant.h"
#include "core/measure/entered.h"
#include "core/season/implementkit.h"
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
    std::optional<Entered<Mass>> scaleAccuracy{}; ///< half-width of the scale's own error, from its check; none where it was not checked
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

/// A known mass that rests on an elastic bench aid and nothing else, and how high above the chest it holds the bar.
struct AidReading {
    std::optional<Entered<Mass>> mass;
    std::optional<Entered<Length>> aboveChest;
    bool leftOut = false;
    bool operator==(const AidReading&) const = default;
};

/// An elastic bench aid as it was measured: what it carries by height above the chest.
struct AidMeasurement {
    std::vector<AidReading> readings;
    bool operator==(const AidMeasurement&) const = default;
};

enum class MachineMeasuring : std::uint8_t {
    Radius, ///< from the cam's axis to its cable, by the angle turned
    Pull,   ///< what it pulls, by the travel of the handle
};

/// One reading of a machine: by radius, angle and radius; by pull, travel and what the scale shows.
struct MachineReading {
    std::optional<Angle> angle;
    std::optional<Entered<Length>> radius;
    std::optional<Entered<Length>> travel;
    std::optional<Entered<Mass>> pull;
    bool operator==(const MachineReading&) const = default;
};

/// A machine with a cam as it was measured. By pull the stack that it was measured with goes with it, and the scale's step.
struct MachineMeasurement {
    MachineMeasuring by = MachineMeasuring::Radius;
    std::optional<Entered<Mass>> stack, scaleStep;
    std::vector<MachineReading> readings;
    bool operator==(const MachineMeasurement&) const = default;
};

/// A scale read with a known mass on it.
struct ScaleReading {
    std::optional<Entered<Mass>> known, read;
    bool operator==(const ScaleReading&) const = default;
};

/// A hanging scale as it was checked: what it shows empty, its step, and readings under known masses.
struct ScaleMeasurement {
    std::optional<Entered<Mass>> empty, step;
    std::vector<ScaleReading> readings;
    bool operator==(const ScaleMeasurement&) const = default;
};

enum class IronSort : std::uint8_t { Bar, Plates };

/// Iron on a scale beside the mark on it: a bar, or plates of one kind. A bar that no scale holds is weighed by its ends.
struct IronMeasurement {
    IronSort sort = IronSort::Bar;
    std::optional<Entered<Mass>> marked, read, step;
    std::optional<Entered<Mass>> accuracy; ///< half-width of the scale's own error, from its check; none where it was not checked
    int count = 1;                         ///< of the same kind, on the scale together
    std::optional<BothEnds> ends{};        ///< in place of what was read; such a bar may have no mark
    bool operator==(const IronMeasurement&) const = default;
};

/// A strap or cord that a chain or band is hung by, with its hooks.
struct LeadMeasurement {
    std::optional<Entered<Length>> length;
    std::optional<Entered<Mass>> mass;
    bool operator==(const LeadMeasurement&) const = default;
};

/// A rack: its holes by the lowest one and their distance, from the floor to the centre line of a bar that lies there; and the heights
/// that bands can be anchored at.
struct RackMeasurement {
    std::optional<Entered<Height>> firstHole;
    std::optional<Entered<Length>> spacing;
    int holeCount = 0;
    std::vector<Entered<Height>> anchors;
    bool operator==(const RackMeasurement&) const = default;
};

/// What measuring an item gave.
using Measured = std::variant<ChainMeasurement, BandMeasurement, AidMeasurement, MachineMeasurement, ScaleMeasurement, IronMeasurement,
                              LeadMeasurement, RackMeasurement, TyreMeasurement, LogMeasurement, StoneMeasurement, KegMeasurement,
                              SledMeasurement, CarryMeasurement, BellMeasurement>;

/// What sort of thing an item is; as in Measured.
enum class ItemKind : std::uint8_t { Chain, Band, Aid, Machine, Scale, Iron, Lead, Rack, Tyre, Log, Stone, Keg, Sled, Carry, Bell };
inline constexpr ItemKind lastItemKind = ItemKind::Bell;

/// Of what was measured.
[[nodiscard]] inline ItemKind kindOf(const Measured& measured) { return static_cast<ItemKind>(measured.index()); }
/// Of that kind, with nothing measured yet.
[[nodiscard]] Measured notYetMeasured(ItemKind kind);
/// Of which a bar carries two, so that they are kept as a pair unless it is said that there is one.
[[nodiscard]] inline bool comesInPairs(ItemKind kind) { return kind == ItemKind::Chain || kind == ItemKind::Band || kind == ItemKind::Lead; }
/// Lifted, carried or dragged by itself, and never hung on a bar.
[[nodiscard]] inline bool isImplement(ItemKind kind) { return kind >= ItemKind::Tyre && kind <= ItemKind::Bell; }
/// One lower-case word for each kind, written down in drafts for ever.
[[nodiscard]] std::string wordOf(ItemKind kind);

/// What takes a thing out of use.
enum class KitFault : std::uint8_t {
    WornLink, Cut, Other, BentLink, Hook, Crack, Sticky, Seam, Cable, Pin, ZeroRuns, Dropped, Collar, Buckle, Weld,
    WireShowing, Sidewall, UnderPressure, Leak, Split, HandleLoose,
};
inline constexpr KitFault lastKitFault = KitFault::HandleLoose;

/// One look over of a thing on a day: what was found, or that it is fit to be used.
struct Inspection {
    std::optional<KitFault> fault;
    std::string note;
    std::chrono::sys_days day{};
    bool operator==(const Inspection&) const = default;
};

/// A thing that is with somebody else than its owner.
struct OnLoan {
    std::string who;                                ///< whose it is, or who has it
    std::optional<std::chrono::sys_days> backBy{};  ///< none when no day was agreed
    bool operator==(const OnLoan&) const = default;
};

/// A thing to hang. A pair is two of a kind of which one was measured.
struct KitItem {
    RecordId id;
    std::string name;
    bool pair = true;
    Measured measurement;
    RecordId venue{}; ///< where it belongs; none when it was not said
    std::optional<Inspection> inspection{}; ///< the last one
    std::optional<OnLoan> borrowed{};       ///< it belongs to somebody else
    std::optional<OnLoan> lent{};           ///< somebody else has it
    RecordId takenTo{};                     ///< the venue that it is at for now, taken along from where it belongs
    std::optional<std::chrono::sys_days> measuredOn{}; ///< day of its measurement; none where that is not kept yet

    /// Until a look over finds it fit again.
    [[nodiscard]] bool isOutOfUse() const { return inspection && inspection->fault; }
    /// A thing of a list that was copied is measured where it is, and until then not at all.
    [[nodiscard]] bool isMeasured() const;
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
