// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/eccentric/release.h"
#include "core/work/gates/mayuse.h"
#include "core/work/weighup.h"

#include <span>
#include <vector>

namespace steelyard {

/// For whom a set-up is, as gates see it on a day: what is known of the athlete, and how strong she is in the lift.
struct GateLifter {
    LiftId lift;
    std::chrono::sys_days day{};
    GateFacts facts;
    std::optional<KnownMaximum> maximum;  ///< of the lift
    std::optional<KnownMaximum> deadlift; ///< that a tyre goes by
    bool operator==(const GateLifter&) const = default;
};

/// As the book knows it; nothing where it knows nobody of that id, or where no lift is chosen.
[[nodiscard]] std::optional<GateLifter> gateLifter(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, std::chrono::sys_days day);

/// The methods of what hangs, in the order of their numbers, each once; plain iron where nothing hangs. What the lift brings along is
/// asked about with each of them.
[[nodiscard]] std::vector<Method> methodsHung(const SetupRecord& setup);

/// The pull where it is worst for her, at the greatest of value + give-or-take over samples and marks of the path, as the mass that weighs
/// as much. Nothing where the pull is not known along the whole path, or no curve was drawn. The place
/// is the worst of the samples, found to 1e-5 of the give-or-take; between them a smooth pull may be higher by less than it changes from one
/// to the next, and the corners are among them.
[[nodiscard]] std::optional<LoadAtWorst> loadAtWorst(const WeighedUp& weighed);

/// One reason, and each of the methods that it stands against with the same facts.
struct GateReason {
    Reason reason;
    std::vector<Method> methods;
};

/// What the gates say of a set-up: as strict as the strictest of its methods.
struct SetupGate {
    Permission permission = Permission::Permitted;
    std::vector<GateReason> reasons; ///< the strictest first, each once
    std::optional<Error> error;      ///< why it could not be asked; then nothing is permitted
};

/// Asks `mayUse` once for each method that hangs, with the load at its worst: for a heavier way down with what its plan comes to at most on
/// either way. A plan that comes to no load yet has none to be asked about, and is not ready anyway (`wantedBy`). A method's caution that a kit's caution says as well stands
/// there alone: looked over there it is looked over here, and it is not among the reasons. `lookedOver` are the keys of the others.
[[nodiscard]] SetupGate setupGate(const GateLifter& lifter, const SetupRecord& setup, const WeighedUp& weighed, const std::optional<ReleaseAnswer>& release,
                                  std::span<const ReasonKey> lookedOver);

/// The keys of a reason, one for each method it stands against.
[[nodiscard]] std::vector<ReasonKey> keysOf(const GateReason& reason);

/// What set-up and gates come to together: ready only when both say so. An entry that cannot be right is said before all else, since nobody
/// knows what hangs; what the gates forbid comes before what is not known, of the set-up and then of a heavier way down, and what waits to be looked over after it.
[[nodiscard]] Readiness gatedReadiness(Readiness setup, Permission permission, ReleaseWants wants = ReleaseWants::Nothing);

}
