// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/kettlebell.h"

#include "core/measure/conditions.h"

#include <algorithm>

namespace steelyard {

Result<Estimate<Mass>> loadedMass(const Estimate<Mass>& shell, std::span<const Estimate<Mass>> plates)
{
    if (const auto wrong = broken({{isNotNegative(shell), "shell"}}))
        return *wrong;
    Estimate<Mass> sum = shell;
    for (const Estimate<Mass>& plate : plates) {
        if (!isNotNegative(plate))
            return Error{Refusal::OutOfRange, "plates"};
        addTo(sum, plate);
    }
    if (!isPositive(sum))
        return Error{Refusal::OutOfRange, "mass"};
    return sum;
}

Result<SwingsDone> swingsDone(const Estimate<Mass>& bell, std::span<const int> reps)
{
    if (const auto wrong = broken({{isPositive(bell), "mass"}, {std::all_of(reps.begin(), reps.end(), isCount), "reps"}}))
        return *wrong;
    if (reps.empty())
        return Error{Refusal::TooFewPoints, "reps"};
    SwingsDone done;
    for (const int n : reps)
        done.reps += n;
    done.volume = times(bell, done.reps);
    const int best = *std::max_element(reps.begin(), reps.end());
    if (reps.size() > 1 && best > 0)
        done.dropOffPercent = 100.0 * (best - reps.back()) / best;
    return done;
}

}
