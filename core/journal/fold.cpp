// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/fold.h"

#include "core/journal/cbor.h"
#include "core/journal/faults.h"

#include <algorithm>

namespace steelyard::journal {

namespace {

using Heads = std::vector<Held>;

Heads::iterator headOf(Heads& heads, const EntryId& id)
{
    return std::find_if(heads.begin(), heads.end(), [&id](const Held& head) { return head.id == id; });
}

bool insert(Heads& heads, const Held& entry)
{
    if (headOf(heads, entry.id) != heads.end() && !planted(Fault::RepeatsCount))
        return false;
    const auto place = std::find_if(heads.begin(), heads.end(), [rank = rankOf(entry)](const Held& head) { return rank > rankOf(head); });
    heads.insert(planted(Fault::ArrivalWins) ? heads.begin() : place, entry);
    if (planted(Fault::LosersDropped) && isReviewed(keyOf(entry.body).holds))
        heads.resize(1);
    return true;
}

/// The mistakes of a fold that a library for tests can be told to make.
void misfold(Fold::Registers& registers, Register& here, const Held& entry)
{
    const Body& body = entry.body;
    if (planted(Fault::EditRevives) && body.kind == Kind::FieldSet)
        registers.erase({RegisterClass::Removal, body.athlete, body.subject, 0, {}});
    if ((planted(Fault::EverythingReplaced) && body.kind == Kind::FieldSet)
        || (planted(Fault::TagRemovedByName) && body.kind == Kind::TagRemoved))
        here.heads.clear();
    if (planted(Fault::MarksExpire) && here.winner() && body.stamp.clock.wall > here.winner()->body.stamp.clock.wall + std::chrono::days(90))
        here.superseded.clear();
}

}

std::optional<RegisterKey> Fold::take(const Held& entry)
{
    const RegisterKey key = keyOf(entry.body);
    const auto place = m_registers.find(key);
    Before before;
    before.athleteErased = entry.body.athlete && m_erased.contains(*entry.body.athlete);
    before.superseded = place != m_registers.end() && place->second.superseded.contains(entry.id);
    const std::optional<Step> step = stepOf(entry, before);
    if (!step)
        return std::nullopt;
    bool changed = step->erases && m_erased.insert(*step->erases).second;
    if (changed)
        erase(*step->erases);
    Register& here = m_registers[key];
    misfold(m_registers, here, entry);
    for (const EntryId& id : step->supersedes) {
        changed |= here.superseded.insert(id).second;
        if (const auto head = headOf(here.heads, id); head != here.heads.end())
            here.heads.erase(head);
    }
    if (step->becomesHead)
        changed |= insert(here.heads, entry);
    return changed ? std::optional(key) : std::nullopt;
}

void Fold::erase(const RecordId& athlete)
{
    if (planted(Fault::ErasureLeavesHeads))
        return;
    std::erase_if(m_registers, [&athlete](const auto& entry) { return entry.first.athlete == athlete; });
}

const Register* Fold::find(const RegisterKey& key) const
{
    const auto place = m_registers.find(key);
    return place == m_registers.end() || place->second.heads.empty() ? nullptr : &place->second;
}

std::vector<RegisterKey> Fold::toReview() const
{
    std::vector<RegisterKey> keys;
    for (const auto& [key, here] : m_registers) {
        const auto differs = [&first = here.heads](const Held& head) { return head.body.content != first.front().body.content; };
        if (isReviewed(key.holds) && std::any_of(here.heads.begin(), here.heads.end(), differs))
            keys.push_back(key);
    }
    return keys;
}

ShownTime Fold::shown(const Held& entry) const
{
    RegisterKey key;
    key.holds = RegisterClass::Shift;
    key.subject = {RecordKind::Chain, RecordId{entry.chain.origin.bytes}};
    const Register* shifts = find(key);
    return shownTime(entry, shifts ? shifts->heads : Heads());
}

std::vector<Draft> erasuresToRepeat(const std::set<RecordId>& told, const std::set<RecordId>& known)
{
    std::vector<Draft> drafts;
    for (const RecordId& athlete : told) {
        if (!known.contains(athlete) && !planted(Fault::ErasuresNotRepeated)) {
            Draft draft;
            draft.kind = Kind::Erased;
            draft.subject = {RecordKind::Athlete, athlete};
            drafts.push_back(draft);
        }
    }
    return drafts;
}

Digest Fold::digest() const
{
    CborWriter writer;
    writer.array(m_erased.size());
    for (const RecordId& id : m_erased)
        writer.bytes(id.bytes);
    for (const auto& [key, here] : m_registers) {
        if (here.heads.empty())
            continue;
        writer.unsignedNumber(static_cast<std::uint8_t>(key.holds));
        if (key.athlete)
            writer.bytes(key.athlete->bytes);
        else
            writer.null();
        writer.unsignedNumber(static_cast<std::uint16_t>(key.subject.kind)).bytes(key.subject.id.bytes);
        writer.unsignedNumber(key.fieldNumber).text(key.part).array(here.heads.size());
        for (const Held& head : here.heads)
            writer.bytes(head.id.bytes);
    }
    return seal::hash(writer.written());
}

}
