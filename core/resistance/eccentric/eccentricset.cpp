// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/eccentric/eccentricset.h"

#include <algorithm>

namespace steelyard {

std::optional<Error> eccentricSetFault(const EccentricSet& set)
{
    constexpr int mostReps = 50;
    constexpr std::chrono::milliseconds atOnce{0}, mostDown{30'000};
    constexpr std::chrono::seconds mostRest{600};
    if (set.reps < 1 || set.reps > mostReps)
        return Error{Refusal::OutOfRange, "reps"};
    if (set.tempoDown <= atOnce || set.tempoDown > mostDown)
        return Error{Refusal::OutOfRange, "tempo down"};
    if (set.clusterReps && (*set.clusterReps < 1 || *set.clusterReps >= set.reps))
        return Error{Refusal::OutOfRange, "reps of a cluster"};
    if (set.clusterReps.has_value() != set.clusterRest.has_value())
        return Error{Refusal::NotThere, set.clusterReps ? "cluster rest" : "reps of a cluster"};
    if (set.clusterRest && (*set.clusterRest <= atOnce || *set.clusterRest > mostRest))
        return Error{Refusal::OutOfRange, "cluster rest"};
    if (set.putBack == PutBack::EachCluster && !set.clusterReps)
        return Error{Refusal::NotThere, "reps of a cluster"};
    const bool isPutBack = set.putBack != PutBack::Never, hasSomebody = set.putBackBy != PutBackBy::Nobody;
    if (isPutBack != hasSomebody || (set.putBackBy == PutBackBy::Athlete && set.putBack != PutBack::EachCluster))
        return Error{Refusal::OutOfRange, "who puts it back"};
    return std::nullopt;
}

Result<std::vector<int>> overloadedReps(const EccentricSet& set)
{
    if (const auto wrong = eccentricSetFault(set))
        return *wrong;
    const int step = set.putBack == PutBack::Never ? set.reps : set.putBack == PutBack::EachRep ? 1 : *set.clusterReps;
    std::vector<int> reps;
    for (int rep = 1; rep <= set.reps; rep += step)
        reps.push_back(rep);
    return reps;
}

Result<EccentricDone> eccentricDone(const EccentricSet& set, int madeReps, int missedReleaseCount)
{
    const auto overloaded = overloadedReps(set);
    if (!overloaded)
        return overloaded.error();
    if (madeReps < 0 || madeReps > set.reps)
        return Error{Refusal::OutOfRange, "reps"};
    const auto begun = static_cast<int>(std::count_if(overloaded->begin(), overloaded->end(), [&](int rep) { return rep <= madeReps; }));
    if (missedReleaseCount < 0 || missedReleaseCount > begun)
        return Error{Refusal::OutOfRange, "missed releases"};
    return EccentricDone{begun - missedReleaseCount, madeReps - begun, missedReleaseCount};
}

}
