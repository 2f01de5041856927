// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/setup.h"

namespace steelyard {

/// What stems from one measurement, on both sides together, and how uncertain it alone makes the reading.
struct PullPart {
    SourceId source;
    PullKind kind = PullKind::Chain;
    Force pull; ///< mean over the stretch, for the origin of a mean
    Force u;
};

/// A reading taken apart: the pulls add up to its value, the standard uncertainties in quadrature to its u.
struct PullParts {
    Force iron, uIron;
    Force uMarks; ///< from reading the bar marks, by how steeply the pull rises there
    std::vector<PullPart> parts; ///< in the order of the kit's sources; parts of no shared source one by one

    [[nodiscard]] Force total() const;
    [[nodiscard]] Force u() const;
};

/// Of the pull at a height, and of the exact mean between two; refuses as `pullCurve` does, and where a pull is unknown.
[[nodiscard]] Result<PullParts> pullPartsAt(const Setup& setup, Height height);
[[nodiscard]] Result<PullParts> pullPartsOfMean(const Setup& setup, Height from, Height to);

}
