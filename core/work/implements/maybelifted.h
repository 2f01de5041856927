// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/gates/mayuse.h"
#include "core/work/implements/implementmass.h"

#include <span>
#include <variant>
#include <vector>

namespace steelyard {

/// What the thing itself, or what it is held against, says about a use of it; what stands against athlete, lift and method is the gates'.
enum class UseCode : std::uint8_t {
    MassUnknown,        ///< nobody knows what it weighs: it is given to nobody
    PressureUnknown,    ///< a keg of which nobody knows whether it holds gas
    UnderPressure,
    CapNotNamed,        ///< the coach names no lift to hold a log, stone, keg or bag against
    CapMaximumMissing,  ///< there is no maximum of the lift that is named
    CapMaximumNotPlain,
    CapMaximumOld,
    CapMayBeOver,       ///< the mass is within it, and its give-or-take reaches over
    OverCap,
    HandDoesNotFit,     ///< tried: the handle does not suit the way the lift holds it
    HandNotTried,
    CoachNote,          ///< what the coach warns of
    NotLookedOver,      ///< a tyre whose rim and wire nobody has looked at
    ReachNotAsked,      ///< whether she reaches the ground with a flat back
};

/// What would settle it.
enum class UseRemedy : std::uint8_t { FindItsMass, AskWhoBroughtIt, LetOwnerRelease, NameCap, TestNamedLift, WeighBetter, TakeLighter, TakeAnother, TryIt, Read, LookItOver, SeeHerReach };
[[nodiscard]] UseRemedy remedyFor(UseCode code);

/// One of them with its facts; what does not apply is absent.
struct UseReason {
    UseCode code = UseCode::MassUnknown;
    Permission alone = Permission::Not; ///< what it leaves by itself
    bool lookedOver = false;
    std::optional<MassGap> gap;         ///< why the mass is unknown
    std::optional<LiftId> of;           ///< that it is held against
    std::optional<std::chrono::sys_days> from; ///< day of that lift's maximum
    std::optional<double> percent;      ///< of its lowest estimate, at the unfavourable end
    std::optional<int> capPercent;
    std::optional<Mass> atMost;         ///< the load that would just do, with the same give-or-take; none where no load would
    std::string text;                   ///< what the coach noted
    bool operator==(const UseReason&) const = default;
};

/// What was looked over of one thing and lift: one of these, or a reason of the gates.
struct UseLookedOver {
    RecordId item;
    LiftId lift;
    std::variant<UseCode, ReasonKey> what;
    bool operator==(const UseLookedOver&) const = default;
};

/// The answer for one thing and one lift: as strict as the strictest of its reasons that was not looked over.
struct ImplementUse {
    LiftId lift;
    Method method = Method::Implement;
    Permission permission = Permission::Not;
    std::vector<UseReason> reasons; ///< the strictest first
    std::vector<Reason> gates;      ///< likewise
    std::optional<Error> error;     ///< why the gates could not be asked; then nothing is permitted
};

/// What the gates know of an athlete for one lift on a day, and how strong she is in it and in what it is held against.
struct UseFacts {
    LiftId lift;
    std::chrono::sys_days day{};
    GateFacts gates;
    std::optional<KnownMaximum> maximum;      ///< of the lift; of a tyre flip that of the deadlift
    std::optional<CapRule> cap;               ///< what the coach holds a load in the lift against
    std::optional<KnownMaximum> capMaximum;   ///< of the lift that this names
};
/// As the book knows it; nothing where it knows nobody of that id.
[[nodiscard]] std::optional<UseFacts> useFacts(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, std::chrono::sys_days day);

/// The method that a kind of thing is used by.
[[nodiscard]] Method methodOf(const Measured& measured);
/// The lifts that ship that a thing is used for, the usual one first (common practice, no source); none for what is no implement.
[[nodiscard]] std::vector<LiftId> liftsWith(const Measured& measured);

/// Whether an athlete may use a thing for a lift, with every reason against it: of the thing, of its cap and of the gates. Compared is
/// what is in her hands at once at its unfavourable end, `mass + give-or-take ≤ share · lowest estimate`; a tyre goes by the deadlift and
/// the coach's limit for tyres, which the gates hold it to. `load` is what is lifted with it (plates on handles included); without one it
/// is the thing by itself.
[[nodiscard]] ImplementUse implementUse(const KitItem& item, const ImplementMass& mass, const UseFacts& facts, std::span<const UseLookedOver> lookedOver,
                                        const std::optional<Estimate<Mass>>& load = {});

}
