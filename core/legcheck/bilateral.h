// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/legcheck/score.h"
#include "core/measure/estimate.h"
#include "core/measure/result.h"

#include <cstdint>
#include <optional>

namespace steelyard {

/// Both legs together, and each alone, in one unit.
struct BilateralScores {
    Estimate<double> both, left, right;
};

/// What both legs together do against the sum of each alone (Howard & Enoka 1991, J Appl Physiol 70:306–316).
struct BilateralIndex {
    BilateralScores scores;   ///< as they went in; with the body where it is lifted
    Estimate<double> percent; ///< 100·both/(left + right) − 100: below 0 a deficit, above 0 a facilitation
};

/// The index with `SD(q) = q√(CVb² + (CVr²R² + CVl²L²)/S²)`, q = both/S, S = left + right, the three independent and each CV that of the
/// score used; degrees of freedom by Welch–Satterthwaite (JCGM 100:2008, G.4.1), so that CVs of a few tries widen the give-or-take.
/// Refuses scores that are not above 0.
[[nodiscard]] Result<BilateralIndex> bilateralIndex(const BilateralScores& scores);

/// External loads of a lift with both legs and with each.
struct BilateralLoads {
    Estimate<Mass> both, left, right;
};

/// What becomes of the body in a test.
enum class BodyInTest : std::uint8_t {
    NotLifted,          ///< leg press, isometrics against a belt, a seat: the external load is all
    Lifted,             ///< squat, split stance, hop, standing pull: each condition lifts all of it
    RearFootSupported,  ///< the other foot bears a share that nobody knows
};

/// The index of loads: of the external ones where the body is not lifted, else of the system, `(E2 + BM)/((ER + BM) + (EL + BM))`. External
/// alone would turn a deficit into a facilitation there. The body's error stands in all three with its sign, `|1 − 2q|/S · u(BM)`.
/// Refuses a supported rear foot, loads that are not above 0 where the body is not lifted or below 0 where it is, and a body not above 0.
[[nodiscard]] Result<BilateralIndex> bilateralIndexOfLoads(const BilateralLoads& external, const Estimate<Mass>& body, BodyInTest bodyInTest);

/// What a score says about a leg.
enum class Measured : std::uint8_t {
    Load,             ///< external, on a bar or a stack
    GrossForce,       ///< all of it, the body's weight among it: how standing pulls are compared
    NetForce,         ///< over the body's weight
    JumpHeight,
    Distance,
    Time,             ///< of hops over a distance, of a contact
    ReactiveStrength, ///< height over contact time
    Other,            ///< of the coach's own test
};

/// How one condition was tested, as far as a comparison asks.
struct TestCondition {
    Measured what = Measured::Other;
    BodyInTest body = BodyInTest::NotLifted;
    std::uint32_t methodNumber = 0; ///< the same for the same device and way of measuring
};

/// Why three conditions give no index; nothing when they do. Codes: a supported rear foot; not comparable when they were not measured the
/// same ("what is measured", "method", "body"), when the force is net of a body that is lifted ("net force": it is taken off once on one
/// side of the comparison and twice on the other, and the sign turns), and for times, which do not add up ("time").
[[nodiscard]] std::optional<Error> whyNoIndex(const TestCondition& both, const TestCondition& left, const TestCondition& right);

/// What an index comes to against its own noise.
enum class BilateralCall : std::uint8_t { Deficit, Facilitation, TooClose };

/// An index with what can be said of it.
struct BilateralVerdict {
    BilateralIndex index;
    double giveOrTakePercent = 0;        ///< half-width of the 95 % interval
    std::optional<BilateralCall> call{}; ///< none where no noise is known: nothing can be told from nothing
    /// Tries in each condition that would settle it if the index stays as it is; none where it is settled, and where it would take
    /// more than mostTriesCount: then not today.
    std::optional<int> triesNeededCount{};
};

/// Deficit or facilitation where the index is further from 0 than its give-or-take. No fixed threshold. For tries needed the uncertainty
/// shrinks by √k, and the degrees of freedom grow with the tries. Refuses fewer tries than one.
[[nodiscard]] Result<BilateralVerdict> bilateralVerdict(const BilateralIndex& index, int triesCount);

}
