// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/booking/counts.h"

#include "core/measure/conditions.h"

namespace steelyard {

Result<Counts> countsOf(std::span<const CountedSet> sets)
{
    Counts counts;
    for (const CountedSet& set : sets) {
        if (!isCount(set.count))
            return Error{Refusal::OutOfRange, "count"};
        (set.limbs == Limbs::Left ? counts.countLeft : set.limbs == Limbs::Right ? counts.countRight : counts.countBoth) += set.count;
    }
    return counts;
}

Carried carriedIn(std::span<const CarryDone> carries)
{
    Carried sum;
    for (const CarryDone& carry : carries) {
        addTo(sum.left, carry.left);
        addTo(sum.right, carry.right);
        addTo(sum.whole, carry.whole);
        addTo(sum.all, carry.all);
        sum.drops += carry.drops;
    }
    return sum;
}

}
