// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"
#include "core/season/releaseplan.h"

#include <variant>
#include <vector>

namespace steelyard {

enum class ChainHangingWay : std::uint8_t { Straight, Doubled, Bunched };

/// How a chain was hung, as entered.
struct ChainPlacing {
    ChainHangingWay way = ChainHangingWay::Straight;
    Entered<Length> lead;
    Entered<Mass> leadMass;
    Entered<Length> bunch = metres(0.30);
    bool operator==(const ChainPlacing&) const = default;
};

/// How a band was hung, as entered; `handle` is the thickness of what a doubled band goes round.
struct BandPlacing {
    bool doubled = false;
    bool above = false;
    Entered<Height> anchorHeight;
    Entered<Length> offset;
    Entered<Length> handle;
    std::optional<Entered<Mass>> heldBy; ///< what holds the anchor down by its weight; absent when it is bolted
    bool operator==(const BandPlacing&) const = default;
};

/// How an elastic bench aid is worn: nothing to say but where the bar touches the chest, if that is not the bottom mark.
struct AidPlacing {
    std::optional<Entered<Height>> chest;
    bool operator==(const AidPlacing&) const = default;
};

enum class HungOn : std::uint8_t { BothSides, LeftOnly, RightOnly };

using Placing = std::variant<ChainPlacing, BandPlacing, AidPlacing>;

/// As a thing of that kind hangs until somebody says otherwise; nothing for what does not hang on a bar.
[[nodiscard]] std::optional<Placing> firstPlacing(ItemKind kind);

/// One thing of the kit on the bar.
struct HungRecord {
    RecordId item;
    HungOn on = HungOn::BothSides;
    Placing placing;
    bool operator==(const HungRecord&) const = default;
};

/// Iron whose mass was taken from what a scale said: which thing of the kit it is, and the standard uncertainty of one.
struct IronWeighed {
    RecordId item;
    Entered<Mass> u;
    bool operator==(const IronWeighed&) const = default;
};

/// Plates of one type that are here, as single plates. Of weighed ones the mass is the scale's, and the mark still what is cast on them.
struct PlatesHere {
    PlateType type;
    int count = 0;
    std::optional<AsTyped> mark = std::nullopt; ///< the figure cast on them: a 45 lb plate stays one, whatever is shown in
    std::optional<IronWeighed> weighed = std::nullopt;
    bool operator==(const PlatesHere& other) const { return type == other.type && count == other.count && weighed == other.weighed; }
};

/// What the mark on plates is worth that were not weighed one by one.
enum class PlateTrust : std::uint8_t {
    AsMarked,  ///< weighed, or made to a competition standard: no give-or-take shown
    Unweighed, ///< gym plates nobody has weighed: 2 % either way (our choice)
};

/// The bar, what goes on it, and the plates to choose from.
struct BarRecord {
    Entered<Mass> bar = kilograms(20);
    bool barEntered = false; ///< until the coach says what the bar weighs, 20 kg is filled in
    Entered<Mass> collars; ///< both together
    Entered<Mass> wanted = kilograms(20); ///< total of bar, collars and plates
    PlateTrust trust = PlateTrust::Unweighed;
    std::vector<PlatesHere> stock;
    std::optional<Entered<Length>> sleeve;
    std::optional<IronWeighed> barWeighed{}; ///< where the bar's mass is a scale's
    bool operator==(const BarRecord&) const = default;
};

/// What is hung on the bar: iron, and things of the kit.
struct SetupRecord {
    BarRecord bar;
    std::vector<HungRecord> hung;
    std::optional<ReleasePlan> release{}; ///< where the way down is heavier than the way up
    bool operator==(const SetupRecord&) const = default;
};

/// The pairs a weight room usually has, to start from until the coach says what is here. Diameters and thicknesses are
/// those of common cast-iron plates: common practice, no source; 450 mm for the largest is the rule of both barbell
/// federations.
[[nodiscard]] std::vector<PlatesHere> usualStock();

}
