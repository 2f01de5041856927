// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <vector>

namespace steelyard {

/// When what was let go is put back on the bar.
enum class PutBack : std::uint8_t {
    Never,       ///< within a set: its first rep alone is overloaded (common practice, no source)
    EachRep,     ///< at the top of every rep
    EachCluster, ///< while she rests between clusters
};

/// Who puts it back.
enum class PutBackBy : std::uint8_t {
    Nobody,
    Spotters, ///< one at each end, both together
    Athlete,  ///< herself, the bar in the rack
};

/// How a set with an overloaded way down is done.
struct EccentricSet {
    int reps = 1;
    std::optional<int> clusterReps;               ///< reps between two rests within the set
    std::optional<std::chrono::seconds> clusterRest;
    std::chrono::milliseconds tempoDown{3000};
    PutBack putBack = PutBack::Never;
    PutBackBy putBackBy = PutBackBy::Nobody;
    bool operator==(const EccentricSet&) const = default;
};

/// Why a set cannot be done as it is put down; nothing where it can: reps from 1 to 50; a way down of more than 0 to 30 s; clusters of at
/// least 1 rep and fewer than the set has, with their rest, which is more than 0 to 10 min, and none without the other; put back between
/// clusters only where there are any, by somebody and never by nobody; by the athlete only while the bar is in the rack, between clusters.
/// The bounds are ours and only keep out what is mistyped.
[[nodiscard]] std::optional<Error> eccentricSetFault(const EccentricSet& set);

/// Which reps are overloaded on the way down, the first being 1. Refuses as eccentricSetFault says.
[[nodiscard]] Result<std::vector<int>> overloadedReps(const EccentricSet& set);

/// What became of the reps of a set.
struct EccentricDone {
    int overloadedReps = 0; ///< overloaded on the way down, and let go
    int plainReps = 0;      ///< never overloaded
    int missedReleaseCount = 0; ///< overloaded, and one side or both stayed on: no rep as it was meant, and none to go on from
};

/// Counts a set that was done: how many reps were made, and in how many of the overloaded ones something stayed on. Refuses more reps than
/// the set has, fewer than 0, more missed releases than overloaded reps among those made, and a set as eccentricSetFault says.
[[nodiscard]] Result<EccentricDone> eccentricDone(const EccentricSet& set, int madeReps, int missedReleaseCount);

}
