// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/plates.h"
#include "core/resistance/setup.h"
#include "core/season/marks.h"
#include "core/season/savedsetup.h"
#include "core/work/anchors.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace steelyard {

/// One caution of a set-up, to look over before the load counts as ready, with the mass it is about; the sentences stand in the
/// interface.
struct Caution {
    CautionCode code;
    /// Bands below: greatest pull on one anchor. Bands above and bench aid: what she holds at the bottom if they slip or tear. None when
    /// a measurement does not reach that far.
    std::optional<Mass> mass;
    bool lookedOver = false;
    bool operator==(const Caution&) const = default;
};

/// What a set-up is held to besides itself: the coach's limits, and the day by which a band's measurement is old. Without a day none is.
struct HeldTo {
    CoachLimits limits{};
    std::optional<std::chrono::sys_days> day{};
    bool operator==(const HeldTo&) const = default;
};

/// A band that hangs and was measured longer ago than the coach's limit: what makes its pull uncertain counts half as much again.
struct OldBand {
    std::string item;
    std::chrono::sys_days measuredOn{};
    bool operator==(const OldBand&) const = default;
};

/// Why a set-up is not ready; Ready when it is.
enum class Readiness : std::uint8_t {
    MarksMissing, ///< bottom or top is not entered
    Refused,      ///< an entry cannot be right: see the error
    PullUnknown,  ///< a band or an aid goes past what was measured
    NotToBeUsed,  ///< a limit is passed at the unfavourable end
    ReleaseOpen,  ///< of a heavier way down something is still wanting
    LookOver,     ///< cautions wait
    Ready,
};

/// What a set-up comes to.
struct WeighedUp {
    Readiness readiness = Readiness::MarksMissing;
    std::optional<Error> error;
    std::optional<PlateLoad> load;      ///< what hangs as plates, each side
    std::optional<LiftPath> path;       ///< with the bottom that the plates make in a floor lift
    std::optional<Setup> setup;         ///< what was worked out, for reading at other heights
    std::optional<PullCurve> curve;
    std::vector<Caution> cautions;
    std::vector<std::string> outOfUse;   ///< names of things that hang and may not be used until they are looked over
    std::vector<std::string> lentOut;    ///< and of things that hang and are with somebody else
    std::vector<WeakAnchor> weakAnchors; ///< bands whose anchor might lift: not to be used
    std::vector<OldBand> oldBands;       ///< each once
};

/// The bar's path from marks; in a floor lift the bottom is the largest plate's radius plus the blocks.
/// Refuses when bottom or top is missing, or a floor lift has no plates to stand on.
[[nodiscard]] Result<LiftPath> liftPath(const BarMarks& marks, const PlateLoad& load);

/// Of a curve that is drawn.
inline constexpr std::size_t usualSampleCount = 200;

/// Works a set-up out from what was entered: plates from the stock, things of the kit on their sides, the athlete's
/// marks. An elastic bench aid is worn once, in the middle; its help is counted from the bottom mark unless its placing says where the chest
/// is. A band anchored on the wrong side of the bar's path is refused. The second of a pair of bands stands on its twin's measurement. `lookedOver` are the cautions acknowledged for
/// just these things hung just so. A band measured longer ago than the limit
/// is uncertain by half as much again; one measured just that long ago is not. `chosen` says which plates hang where release hooks take theirs from the
/// same stock; plates that come to another load than what is wanted on the bar are passed over. Never throws anything away: what is wrong is
/// named, the rest is worked out.
[[nodiscard]] WeighedUp weighUp(const SetupRecord& record, std::span<const KitItem> kit, const BarMarks& marks,
                                std::span<const CautionCode> lookedOver, std::size_t samples = usualSampleCount, const HeldTo& heldTo = {},
                                const PlateLoad* chosen = nullptr);

}
