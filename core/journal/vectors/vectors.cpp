// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/vectors/vectors.h"

#include "core/journal/faults.h"

#include <algorithm>

namespace steelyard::journal {

Standing compare(const ChainId& chain, const std::vector<Tip>& ours, const std::vector<Tip>& theirs, const IdsAt& idsAt)
{
    bool behind = false;
    for (const Tip& tip : theirs) {
        const std::vector<EntryId> here = idsAt(chain, tip.sequenceNumber);
        if (here.empty())
            behind = true;
        else if (std::find(here.begin(), here.end(), tip.id) == here.end() && !planted(Fault::VectorsBySequence))
            return Standing::Forked;
    }
    if (behind)
        return Standing::Behind;
    return ours == theirs ? Standing::Equal : Standing::Ahead;
}

std::vector<Stretch> missing(const VersionVector& ours, const VersionVector& theirs)
{
    std::vector<Stretch> stretches;
    for (const auto& [chain, tips] : theirs) {
        const auto here = ours.find(chain);
        const std::uint64_t have = here == ours.end() || here->second.empty() ? 0 : here->second.back().sequenceNumber;
        const std::uint64_t last = tips.empty() ? 0 : tips.back().sequenceNumber;
        if (last > have)
            stretches.push_back({chain, have + 1, last});
    }
    return stretches;
}

}
