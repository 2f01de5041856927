// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/registers.h"

#include "core/journal/faults.h"

namespace steelyard::journal {

namespace {

RegisterClass classOf(Kind kind)
{
    switch (kind) {
    case Kind::Added: return RegisterClass::Record;
    case Kind::PutRight: return RegisterClass::Correction;
    case Kind::Removed: return RegisterClass::Removal;
    case Kind::TagAdded:
    case Kind::TagRemoved: return RegisterClass::Tag;
    case Kind::ClockShifted: return RegisterClass::Shift;
    case Kind::Erased: return RegisterClass::Erasure;
    default: return RegisterClass::Value;
    }
}

}

RegisterKey keyOf(const Body& body)
{
    return {classOf(body.kind), body.athlete, body.subject, body.fieldNumber, body.part};
}

Rank rankOf(const Held& entry)
{
    if (planted(Fault::TiesByOriginAlone))
        return {entry.body.stamp.clock, entry.chain.origin, {}};
    if (planted(Fault::CountIgnored))
        return {{entry.body.stamp.clock.wall, 0}, entry.chain.origin, entry.id};
    return {entry.body.stamp.clock, entry.chain.origin, entry.id};
}

std::optional<Step> stepOf(const Held& entry, const Before& before)
{
    const Body& body = entry.body;
    Step step{keyOf(body), false, body.replaces, std::nullopt};
    if (body.kind == Kind::Erased) {
        step.becomesHead = true;
        step.erases = body.subject.id;
        return step;
    }
    if (before.athleteErased && !planted(Fault::LateBodiesComeBack))
        return std::nullopt;
    step.becomesHead = body.kind != Kind::TagRemoved && (!before.superseded || planted(Fault::MarksIgnored));
    return step;
}

bool isReviewed(RegisterClass holds)
{
    return holds == RegisterClass::Value || holds == RegisterClass::Record || holds == RegisterClass::Correction
        || holds == RegisterClass::Removal;
}

}
