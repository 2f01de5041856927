// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/vectors/chains.h"

#include "core/journal/faults.h"

#include <algorithm>

namespace steelyard::journal {

Admission Chains::admit(const Header& header)
{
    const EntryId id = idOf(header);
    if (has(header.chain, header.sequenceNumber, id))
        return Admission::Known;
    const std::uint64_t before = header.sequenceNumber - 1;
    if (before != 0 && !has(header.chain, before, header.previous) && !planted(Fault::GapsAccepted))
        return Admission::Gap;
    Chain& chain = m_chains[header.chain];
    Place& place = chain.places[header.sequenceNumber];
    if (!place.empty() && planted(Fault::ForkOverwritten))
        return Admission::Known;
    place.emplace(id, header.previous);
    chain.tips.erase({before, header.previous});
    chain.tips.insert({header.sequenceNumber, id});
    return Admission::Taken;
}

bool Chains::has(const ChainId& chain, std::uint64_t sequenceNumber, const EntryId& id) const
{
    const auto here = m_chains.find(chain);
    if (here == m_chains.end())
        return false;
    const auto place = here->second.places.find(sequenceNumber);
    return place != here->second.places.end() && place->second.contains(id);
}

std::vector<EntryId> Chains::idsAt(const ChainId& chain, std::uint64_t sequenceNumber) const
{
    std::vector<EntryId> ids;
    const auto here = m_chains.find(chain);
    if (here == m_chains.end())
        return ids;
    if (const auto place = here->second.places.find(sequenceNumber); place != here->second.places.end()) {
        for (const auto& [id, previous] : place->second)
            ids.push_back(id);
    }
    return ids;
}

VersionVector Chains::vector() const
{
    VersionVector vector;
    for (const auto& [id, chain] : m_chains)
        vector.emplace(id, std::vector<Tip>(chain.tips.begin(), chain.tips.end()));
    return vector;
}

Standing Chains::compare(const ChainId& chain, const VersionVector& theirs) const
{
    const auto here = m_chains.find(chain);
    const auto there = theirs.find(chain);
    std::vector<Tip> ours;
    if (here != m_chains.end())
        ours.assign(here->second.tips.begin(), here->second.tips.end());
    return journal::compare(chain, ours, there == theirs.end() ? std::vector<Tip>() : there->second,
        [this](const ChainId& id, std::uint64_t sequenceNumber) { return idsAt(id, sequenceNumber); });
}

std::set<EntryId> Chains::upTo(const Chain& chain, const std::vector<Tip>& tips)
{
    std::set<EntryId> ids;
    for (const Tip& tip : tips) {
        EntryId at = tip.id;
        for (std::uint64_t number = tip.sequenceNumber; number != 0; --number) {
            const auto place = chain.places.find(number);
            if (place == chain.places.end())
                break;
            const auto entry = place->second.find(at);
            const bool stands = entry != place->second.end();
            if (planted(Fault::VectorsBySequence)) {
                for (const auto& [id, previous] : place->second)
                    ids.insert(id);
                continue;
            }
            if (!stands || !ids.insert(at).second)
                break;
            at = entry->second;
        }
    }
    return ids;
}

std::vector<EntryId> Chains::toSend(const VersionVector& theirs) const
{
    std::vector<EntryId> ids;
    for (const auto& [id, chain] : m_chains) {
        const auto there = theirs.find(id);
        const Standing standing = compare(id, theirs);
        const std::vector<Tip> tips = there == theirs.end() ? std::vector<Tip>() : there->second;
        const std::set<EntryId> theirOwn = upTo(chain, tips);
        if (standing == Standing::Equal || (standing == Standing::Behind && theirOwn.empty()))
            continue;
        for (const auto& [number, place] : chain.places) {
            for (const auto& [entry, previous] : place) {
                if (!theirOwn.contains(entry))
                    ids.push_back(entry);
            }
        }
    }
    return ids;
}

std::vector<ChainId> Chains::forked() const
{
    std::vector<ChainId> ids;
    for (const auto& [id, chain] : m_chains) {
        if (chain.tips.size() > 1)
            ids.push_back(id);
    }
    return ids;
}

}
