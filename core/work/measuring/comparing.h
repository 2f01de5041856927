// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/kit.h"

#include <optional>

namespace steelyard {

/// Two measurements held against each other. A difference inside its give-or-take is too close to call.
struct Compared {
    Length length;     ///< of band where both were read; of chain, a metre; of a bench aid, the height over the chest
    Force first, second;
    Force difference;  ///< second minus first
    Force giveOrTake;  ///< of the difference
    [[nodiscard]] double share() const { return difference / first; }
    [[nodiscard]] bool clear() const { return difference > giveOrTake || -difference > giveOrTake; }
};

/// A band against its twin, or against itself as it was measured before, at the longest length that both know. The two fits have errors
/// of their own; the give-or-take is t95 by Welch–Satterthwaite times √(u₁²+u₂²) (JCGM 100:2008, G.4). Nothing where one has no curve.
[[nodiscard]] std::optional<Compared> compared(const BandMeasurement& first, const BandMeasurement& second);

/// A chain against another, or against itself as it was, by the weight of a metre. Two gauged the same way share the method's 3 %, which
/// then cannot tell them apart: it is counted for both all the same, on the safe side.
[[nodiscard]] std::optional<Compared> compared(const ChainMeasurement& first, const ChainMeasurement& second);

/// A bench aid against another, or against itself as it was, at the lowest height that both know. Their errors are taken as their own: when
/// the same plates were on both, that is on the safe side.
[[nodiscard]] std::optional<Compared> compared(const AidMeasurement& first, const AidMeasurement& second);

/// By what they are; nothing for two of different kinds.
[[nodiscard]] std::optional<Compared> compared(const Measured& first, const Measured& second);

/// Whether two of a kind can be held against each other.
[[nodiscard]] inline bool canCompare(ItemKind kind) { return kind == ItemKind::Chain || kind == ItemKind::Band || kind == ItemKind::Aid; }

/// Whether it can stand beside another of its kind on a bar: not what is out of use or with somebody else.
[[nodiscard]] inline bool mayPair(const KitItem& item) { return canCompare(kindOf(item.measurement)) && !item.isOutOfUse() && !item.lent; }

/// A pair that differs by more than this share on a bar pulls one side down: worth another partner (our choice).
inline constexpr double unevenPairShare = 0.05;

}
