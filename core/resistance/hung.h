// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/resistance/band.h"
#include "core/resistance/chain.h"
#include "core/resistance/machine.h"

#include <variant>
#include <vector>

namespace steelyard {

/// A measured pull at work on the bar: its position 0 stands at `origin`; `helps` turns it against the load.
struct HungHelp {
    MeasuredPull pull;
    Height origin;     ///< the chest for an elastic bench aid
    bool helps = true;
    double share = 1;  ///< of the whole, on this side: half of an aid that is worn in the middle
};

using HungItem = std::variant<HungChain, HungBand, HungHelp>;

enum class PullKind { Iron, Chain, Band, Help };

/// The one face of anything that hangs: what a set-up asks of it. Pulls are vertical, down positive.
namespace hung {

/// Past what is known a pull is a stand-in that keeps sums finite: ask `knows` first. Means are exact, `from` below `to`.
[[nodiscard]] PullKind kind(const HungItem& item);
[[nodiscard]] HungState stateAt(const HungItem& item, Height bar);
[[nodiscard]] bool knows(const HungItem& item, Height bar);
[[nodiscard]] Force pull(const HungItem& item, Height bar);
[[nodiscard]] Stiffness slope(const HungItem& item, Height bar);
[[nodiscard]] Force meanPull(const HungItem& item, Height from, Height to);
[[nodiscard]] Mass movingMass(const HungItem& item, Height bar);
[[nodiscard]] Effect effect(const HungItem& item, Height bar);
[[nodiscard]] Effect meanEffect(const HungItem& item, Height from, Height to);
/// What no other item shares: a band standing in for its twin.
[[nodiscard]] Force meanOwnUncertainty(const HungItem& item, Height from, Height to);
/// Heights where the pull has a corner, in any order; also where knowledge ends.
void appendKinks(const HungItem& item, std::vector<Height>& out);

}

}
