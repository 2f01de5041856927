// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/pullparts.h"
#include "core/work/weighup.h"

namespace steelyard {

/// How a part of a number came to be known.
enum class KnownBy : std::uint8_t {
    Marked,    ///< iron by the mark on it
    Unweighed, ///< iron by a mark that nobody has put on a scale
    IronWeighed,     ///< iron by a scale, the rest by its mark
    IronPartWeighed, ///< iron by a scale, the rest by a mark that nobody has put on a scale
    Weighed,   ///< a chain on a scale
    Gauged,    ///< a chain by wire, pitch and width
    Hung,      ///< a band by known plates
    HungTwin,  ///< and its twin by the same
    Rested,    ///< a bench aid by known plates resting on it
    Taped,     ///< bar marks by tape or rack hole
};

/// One line of where a number comes from: how much it adds, and how uncertain it alone makes the number.
struct OriginLine {
    KnownBy by = KnownBy::Marked;
    RecordId item;   ///< of the kit; none for iron and marks
    Force pull, u;   ///< marks add nothing, and make uncertain all the same
    double share = 0; ///< of the number's u², 0 to 1
    bool operator==(const OriginLine&) const = default;
};

/// Which of a set-up's numbers.
enum class WhichPull : std::uint8_t { Rack, Bottom, Zone, Top, Mean };

/// A number with all that went into it.
struct Origin {
    Reading reading;
    std::vector<OriginLine> lines; ///< iron, each thing of the kit, marks
    Height from, to;               ///< the height, or the stretch that the mean is over
    bool operator==(const Origin& other) const { return lines == other.lines && from == other.from && to == other.to; }
};

/// Where a number of a set-up comes from; nothing where there is none, because a mark is missing or a pull unknown. `record` and `kit`
/// are what `answer` was worked out from.
[[nodiscard]] std::optional<Origin> originOf(const WeighedUp& answer, const SetupRecord& record, std::span<const KitItem> kit, WhichPull which);

}
