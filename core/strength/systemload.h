// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/strength/onerepmax.h"

namespace steelyard {

/// The body as a load: chins and dips lift all of it, an inverted row what the feet do not bear.
struct BodyLoad {
    Uncertain<Mass> body;
    Uncertain<Mass> borneByFeet{};   ///< what a scale under the feet reads in the position of the lift
    SourceId weighing = ownSource;   ///< of the body; loads with the same weighing share its error

    /// body − borne by the feet; u in squares.
    [[nodiscard]] Uncertain<Mass> lifted() const { return {body.value - borneByFeet.value, inSquares(body.u, borneByFeet.u)}; }
};

/// What is lifted in all: the body's part and what hangs on it; below 0 the external mass is assistance (a band, a stack, a hand). u in
/// squares. Refuses masses that are not finite, a body not above 0, feet that bear less than nothing or all of it, and assistance that
/// leaves nothing to lift.
[[nodiscard]] Result<Uncertain<Mass>> systemLoad(const Uncertain<Mass>& external, const BodyLoad& body);

/// A maximum of the whole system, with how much of its u comes from weighing the body.
struct SystemMax {
    Uncertain<Mass> total;
    Mass uOfBody{};
    SourceId weighing = ownSource;
};

/// From evidence whose load was the system's, in its middle: the body's u counts by the same factor as the load. `lifted` is that load.
/// Refuses what systemLoad refuses.
[[nodiscard]] Result<SystemMax> systemMax(const OneRepMax& max, const Uncertain<Mass>& external, const BodyLoad& body);

/// What to hang on her, or take off.
struct ExternalLoad {
    Uncertain<Mass> load;      ///< below 0: assistance of so much
    bool isAssistance = false;
};

/// What to hang for a percentage of the system's maximum: `p/100·max − lifted body`. Below 0 it is assistance. The body's error counts
/// once, with its sign, where the maximum stands on the same weighing: `(p/100·uOfBody − u(body))`; else in squares (JCGM 100:2008, 5.2).
/// Refuses a maximum not above 0, percentages not above 0 or above 300, and a body as systemLoad does.
[[nodiscard]] Result<ExternalLoad> externalFor(double percent, const SystemMax& max, const BodyLoad& today);

}
